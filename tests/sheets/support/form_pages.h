// Forms laid out whole, and what is printed on them.
#pragma once

#include "exporters/sheets/form/form.h"
#include "exporters/sheets/set/subject.h"
#include "tests/sheets/support/checks.h"
#include "tests/support/shells.h"

#include <algorithm>
#include <memory>
#include <string>
#include <vector>

namespace roundlay::test {

inline std::vector<sheets::Sheet> forms_of(const LaidShell &s, const Record &record,
                                           const sheets::SheetOptions &options) {
    return sheets::composed(sheets::form_set(s.layout, std::make_shared<const Record>(record)),
                            {s.shell, s.layout, s.bodies, options});
}

inline sheets::SheetOptions options_on(sheets::Paper paper, Language language) {
    sheets::SheetOptions options = full_options(paper);
    options.fields.language = language;
    return options;
}

inline std::string texts_of(const sheets::Sheet &sheet) {
    std::string all;
    for (const sheets::Item &item : sheet.items)
        if (const sheets::Text *text = std::get_if<sheets::Text>(&item)) all += text->words + "\n";
    return all;
}

inline bool prints(const std::vector<sheets::Sheet> &sheets, const std::string &words) {
    return std::ranges::any_of(sheets, [&](const sheets::Sheet &s) {
        return ("\n" + texts_of(s)).find("\n" + words + "\n") != std::string::npos;
    });
}

inline std::vector<sheets::Sheet> form_of(const std::vector<sheets::Sheet> &all, const std::string &what) {
    std::vector<sheets::Sheet> some;
    for (const sheets::Sheet &sheet : all)
        if (sheet.subject == "Field form, " + what) some.push_back(sheet);
    return some;
}

} // namespace roundlay::test
