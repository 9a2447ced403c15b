#include "modeler/command_line/export_options.h"

#include "exporters/words/words.h"
#include "modeler/command_line/values.h"

#include <CLI/CLI.hpp>

#include <algorithm>

namespace roundlay {

namespace {

std::string typed_as(const ExportOption &option) {
    return "--" + std::string(option.name);
}

/// A word that nearly is one of a choice is asked after.
void check_word(const TypedOption &each) {
    const auto *choice = std::get_if<ChoiceOption>(&each.option->kind);
    if (choice == nullptr || std::holds_alternative<OptionValue>(read_option(*each.option, each.text, {})))
        return;
    std::vector<std::string> names;
    for (const OptionWord &word : choice->words)
        names.emplace_back(word.word);
    (void)one_of(choice->what, each.text, names);
}

OptionValue value_of(const TypedOption &each, UnitSystem units) {
    const auto read = read_option(*each.option, each.text, units);
    if (const auto *value = std::get_if<OptionValue>(&read)) return *value;
    throw UsageError(typed_as(*each.option) + " \"" + each.text +
                     "\": " + words_of(std::get<Said>(read), in_english(units)));
}

} // namespace

void add_export_option(CLI::App &app, TypedOptions &typed, const ExportOption &option) {
    TypedOption &into = typed.emplace_back(TypedOption{&option, {}, false});
    const auto *yes_no = std::get_if<YesNoOption>(&option.kind);
    if (yes_no != nullptr && yes_no->flag)
        app.add_flag(typed_as(option), into.flag, help_of(option));
    else
        app.add_option(typed_as(option), into.text, help_of(option))->type_name(std::string(option.typed));
}

void check_words(const TypedOptions &typed) {
    for (const TypedOption &each : typed)
        if (!each.text.empty()) check_word(each);
}

void take_options(const TypedOptions &typed, UnitSystem units, ExportOptions &options) {
    for (const TypedOption &each : typed)
        if (each.flag)
            each.option->set(options, {1});
        else if (!each.text.empty())
            each.option->set(options, value_of(each, units));
}

} // namespace roundlay
