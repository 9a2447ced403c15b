#include "kernel/document/document.h"
#include "kernel/document/lay_over.h"
#include "kernel/document/limits.h"
#include "kernel/document/read_record.h"
#include "kernel/document/read_states.h"
#include "kernel/document/read_table.h"
#include "kernel/measure/spelling.h"

#include <algorithm>

namespace roundlay {

namespace {

constexpr const char *version_expected = "roundlay = 1 at the top of the document";

void read_version(Reading &reading, TableReader &document) {
    document.require("roundlay", version_expected);
    double version = limits::version;
    constexpr double newest_imaginable = 1e6;
    if (document.number("roundlay", version, 1, true, newest_imaginable, version_expected) &&
        version > limits::version)
        reading.error(document.place_of("roundlay"),
                      "the document is written in version " + spell_number(version) +
                          " of the format, which is newer than this program",
                      version_expected);
}

/// What a document says that is parsed, without its states.
ReadResult read_parsed(Reading &reading) {
    TableReader document(reading, &reading.text().root(), "", {1, 1, 0});
    Shell shell;
    Record record;
    read_version(reading, document);
    for (const format::Section &section : format::sections())
        read_section(reading, document, section, section.of_record ? static_cast<void *>(&record) : &shell,
                     shell);
    check_record(reading, record, shell);
    document.knows("state");
    document.finish();
    ReadResult result{std::move(shell), reading.take_problems(), reading.take_places(), std::move(record)};
    if (has_errors(result.problems)) result.shell.reset(), result.record = {};
    return result;
}

/// Reads the document as it is in one of its states. The text is one that could be parsed before.
class StateReading {
  public:
    StateReading(std::string_view text, std::string file, const DeclaredStates &states)
        : text_(text), file_(std::move(file)), states_(states) {}

    /// Problems where its changes cannot be made, and then nothing else.
    std::variant<ReadResult, Problems> read(std::size_t state) const {
        auto parsed = parse_text(text_, file_);
        toml::table root = std::get<ParsedText>(std::move(parsed)).take_root();
        Problems problems = lay_all_over(root, state);
        if (!problems.empty()) return problems;
        const ParsedText merged(text_, std::move(root));
        Reading reading(merged, file_);
        return read_parsed(reading);
    }

  private:
    Problems lay_all_over(toml::table &root, std::size_t state) const {
        const Lines lines(text_);
        Problems problems;
        toml::table document = std::move(root);
        for (const std::size_t each : states_.up_to(state)) {
            const LayingOver laying{states_.all[each].name, states_.base_of(each),
                                    [&](const toml::node &at, std::string message, std::string expected) {
                                        const auto begin = at.source().begin;
                                        problems.push_back(
                                            {Weight::error, file_,
                                             lines.place_at(lines.offset_of(begin.line, begin.column)),
                                             std::move(message), std::move(expected)});
                                    }};
            lay_over(document, *document.get("state")->as_array()->get(each)->as_table(), laying);
        }
        root = std::move(document);
        return problems;
    }

    std::string_view text_;
    std::string file_;
    const DeclaredStates &states_;
};

bool is_told(const Problems &problems, const Problem &problem) {
    return std::ranges::any_of(problems, [&](const Problem &other) {
        return other.place == problem.place && other.message == problem.message;
    });
}

/// What is wrong in the states that were not asked for, and which of them cannot be read.
void look_into_states(const StateReading &read, const DeclaredStates &states, ReadResult &result) {
    Problems told = result.problems;
    for (std::size_t i = 0; i < states.all.size(); ++i) {
        const auto other = read.read(i);
        const ReadResult *made = std::get_if<ReadResult>(&other);
        result.states[i + 1].readable = made && made->shell;
        for (Problem problem : made ? made->problems : std::get<Problems>(other)) {
            if (is_told(told, problem)) continue;
            told.push_back(problem);
            problem.weight = Weight::warning;
            if (made)
                problem.message =
                    "in state " + quoted_for_message(states.all[i].name) + ": " + problem.message;
            result.problems.push_back(std::move(problem));
        }
    }
    std::ranges::stable_sort(result.problems, {},
                             [](const Problem &problem) { return problem.place.offset; });
}

/// Of those that it stands on, itself among them, the last one that is measured.
std::optional<std::size_t> measured_under(const DeclaredStates &states, std::size_t state) {
    std::optional<std::size_t> last;
    for (const std::size_t each : states.up_to(state))
        if (states.all[each].measured) last = each;
    return last;
}

/// The first of those that it stands on, itself among them, that is put level.
std::optional<std::size_t> levelled_under(const DeclaredStates &states, std::size_t state) {
    for (const std::size_t each : states.up_to(state))
        if (states.all[each].levelled) return each;
    return {};
}

std::optional<Shell> shell_of(const StateReading &read, std::size_t state) {
    const auto made = read.read(state);
    const auto *result = std::get_if<ReadResult>(&made);
    return result ? result->shell : std::nullopt;
}

ReadResult read_asked(const StateReading &read, const DeclaredStates &states, std::size_t state) {
    auto made = read.read(state);
    if (auto *problems = std::get_if<Problems>(&made)) return {std::nullopt, std::move(*problems), {}};
    auto result = std::get<ReadResult>(std::move(made));
    const auto measured = result.shell ? measured_under(states, state) : std::nullopt;
    if (measured == state) result.measured_on = result.shell;
    if (!measured || measured == state) return result;
    result.measured_on = shell_of(read, *measured);
    if (const auto levelled = levelled_under(states, state)) {
        const auto below = states.index_of(states.all[*levelled].on); // it stands on one: checked
        if (below) result.levelled_on = shell_of(read, *below);
    }
    return result;
}

Problem no_state(const std::string &file, const std::string &name, const std::vector<std::string> &names) {
    std::string expected;
    for (const std::string &each : names)
        if (!each.empty())
            expected += (expected.empty() ? "one of the states " : ", ") + quoted_for_message(each);
    return {Weight::error,
            file,
            {},
            "there is no state " + quoted_for_message(name) + did_you_mean(name, names),
            expected.empty() ? "a document with states: [[state]]" : expected};
}

} // namespace

ReadResult read_document(std::string_view text, const std::string &file, const std::string &state) {
    const auto parsed = parse_text(text, file);
    if (const auto *problem = std::get_if<Problem>(&parsed)) return {std::nullopt, {*problem}, {}};
    Reading reading(std::get<ParsedText>(parsed), file);
    const auto states = read_states(reading);
    const auto asked = states ? states->index_of(state) : std::nullopt;
    if (states && !state.empty() && !asked && state != states->own)
        return {std::nullopt, {no_state(file, state, states->names())}, {}};
    if (!states || states->all.empty()) return read_parsed(reading);
    const StateReading other(text, file, *states);
    ReadResult result = asked ? read_asked(other, *states, *asked) : read_parsed(reading);
    result.states = states->all;
    HouseState own;
    own.name = states->own;
    result.states.insert(result.states.begin(), own);
    if (!asked && result.shell) look_into_states(other, *states, result);
    return result;
}

} // namespace roundlay
