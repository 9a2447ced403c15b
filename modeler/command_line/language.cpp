#include "modeler/command_line/language.h"

#include "modeler/command_line/values.h"

#include <cstdlib>
#include <sstream>

namespace roundlay {

namespace {

/// Empty counts as not set.
std::string environment(const char *name) {
    const char *value = std::getenv(name);
    return value ? value : "";
}

std::string locale_of_messages() {
    for (const char *name : {"LC_ALL", "LC_MESSAGES", "LANG"})
        if (std::string locale = environment(name); !locale.empty()) return locale;
    return "C";
}

bool is_plain(const std::string &locale) {
    const std::string name = locale.substr(0, locale.find('.'));
    return name == "C" || name == "POSIX";
}

Language of_environment() {
    const std::string locale = locale_of_messages();
    if (is_plain(locale)) return Language::english;
    std::istringstream wanted(environment("LANGUAGE"));
    for (std::string each; std::getline(wanted, each, ':');)
        if (const auto language = language_tagged(each)) return *language;
    return language_tagged(locale).value_or(Language::english);
}

} // namespace

Language language_value(const std::string &typed) {
    if (typed.empty()) return of_environment();
    return *language_tagged(one_of("language", typed, {"en", "fr"}));
}

} // namespace roundlay
