#include "tests/fuzz/check_document.h"

#include "kernel/document/edit.h"
#include "kernel/measure/character.h"

#include <array>

namespace roundlay::test {

bool is_one_printed_line(std::string_view text) {
    for (std::size_t length = 0; !text.empty(); text.remove_prefix(length)) {
        length = character_length(text);
        if (length == 0 || (length == 1 && text.front() < ' ') || text.front() == 0x7f) return false;
    }
    return true;
}

namespace {

std::optional<std::string> check_problems(const ReadResult &result, std::size_t size) {
    if (result.shell.has_value() == has_errors(result.problems))
        return "a shell and errors at once, or neither";
    for (const Problem &problem : result.problems) {
        if (problem.message.empty()) return "a problem without words";
        if (problem.place.offset > size) return "a problem outside the text: " + to_text(problem);
        if (problem.place.line > 0 && problem.place.column < 1)
            return "a problem without a column: " + to_text(problem);
        if (!is_one_printed_line(to_text(problem)))
            return "a problem that cannot be printed: " + to_text(problem);
    }
    return std::nullopt;
}

std::optional<std::string> check_written(const Shell &shell, const Record &record) {
    const std::string text = write_document(shell, record);
    const ReadResult again = read_document(text, "written");
    if (!again.shell)
        return "what was read cannot be written: " + to_text(again.problems.front()) + "\n" + text;
    // Lengths and slopes that nobody could have typed are written as the nearest that somebody could: from
    // then on they stay.
    if (again.record != record) return "the record reads otherwise:\n" + text;
    if (*again.shell != shell && write_document(*again.shell, again.record) != text)
        return "what was written reads otherwise:\n" + text;
    return std::nullopt;
}

/// An edit that is given out leaves TOML, and states what was asked for.
std::optional<std::string> check_edits(const Document &document) {
    constexpr std::array<const char *, 6> paths{"roundlay",       "shell.thickness", "rounds.count",
                                                "wall[0].length", "opening[1].note", "new.key"};
    for (const char *path : paths) {
        const auto edited = document.with(path, "7");
        const auto *given = std::get_if<Document>(&edited);
        if (!given) continue;
        const auto again = given->with(path, "7");
        if (!std::holds_alternative<Document>(again) || std::get<Document>(again).text() != given->text())
            return std::string("an edit that does not hold: ") + path;
        if (std::holds_alternative<Problem>(given->without(path)) &&
            !std::holds_alternative<Problem>(document.without(path)))
            return std::string("what was there to take out is no longer: ") + path;
    }
    document.with_entry("opening", {{"name", "\"x\""}});
    document.without("opening[0]");
    document.without("pegs");
    return std::nullopt;
}

} // namespace

std::optional<std::string> broken_promise(std::string_view bytes) {
    const Document document(std::string(bytes), "fuzz");
    const ReadResult result = document.read();
    if (auto broken = check_problems(result, bytes.size())) return broken;
    if (result.shell)
        if (auto broken = check_written(*result.shell, result.record)) return broken;
    return check_edits(document);
}

} // namespace roundlay::test
