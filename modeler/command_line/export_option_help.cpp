#include "exporters/words/words.h"
#include "kernel/measure/spelling.h"
#include "modeler/command_line/export_options.h"

namespace roundlay {

namespace {

template <typename... Visitors> struct Kinds : Visitors... { using Visitors::operator()...; };
template <typename... Visitors> Kinds(Visitors...) -> Kinds<Visitors...>; // clang 14 does not guess it

/// What can be typed, for the help.
std::string bounds_of(const OptionKind &kind) {
    constexpr std::size_t few = 3; // words that are told what they mean
    const auto in_english = [](const Said &said) { return words_of(said, {}); };
    return std::visit(Kinds{[&](const LengthsOption &k) {
                                const std::string each =
                                    spell_number(k.low) + " mm" + " to " + spell_number(k.high) + " mm";
                                const std::string bare = k.in_mm
                                                             ? "; a bare number is mm"
                                                             : "; a bare number is in the document's units";
                                return (k.count > 1 ? in_english(k.parts) + ", each " : "") + each + bare;
                            },
                            [&](const NumbersOption &k) {
                                const std::string each = spell_number(k.low) + " to " + spell_number(k.high);
                                return (k.count > 1 ? in_english(k.parts) + ", each " : "") + each;
                            },
                            [](const ScaleOption &k) {
                                return "1:" + spell_number(k.low) + " to 1:" + spell_number(k.high);
                            },
                            [&](const ChoiceOption &k) {
                                std::string words;
                                for (const OptionWord &each : k.words) {
                                    const std::string called = in_english(each.called);
                                    words += (words.empty() ? "" : ", ") + std::string(each.word);
                                    if (called != each.word && k.words.size() <= few)
                                        words += " (" + called + ")";
                                }
                                return words;
                            },
                            [](const YesNoOption &) { return std::string(); }},
                      kind);
}

} // namespace

std::string help_of(const ExportOption &option) {
    std::string help = "for ";
    for (const std::string_view exporter : option.asks)
        help += (exporter == option.asks.front() ? "" : ", ") + std::string(exporter);
    help += ": " + words_of(option.explained, {});
    if (const std::string bounds = bounds_of(option.kind); !bounds.empty()) help += ": " + bounds;
    const bool flag =
        std::holds_alternative<YesNoOption>(option.kind) && std::get<YesNoOption>(option.kind).flag;
    const std::string value = print_option(option, option.get({}), UnitSystem::metric);
    if (flag) return help;
    return help + " (else " + (value.empty() ? words_of(option.otherwise, {}) : value) + ")";
}

} // namespace roundlay
