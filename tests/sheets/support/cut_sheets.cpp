#include "tests/sheets/support/cut_sheets.h"

#include "exporters/sheets/cut_sheet/features.h"
#include "exporters/sheets/drawing/clash.h"
#include "kernel/document/document.h"
#include "tests/sheets/support/checks.h"
#include "tests/sheets/support/log.h"

namespace roundlay::test {

using namespace sheets;

std::optional<WeightNote> some_weight(const Piece &, const Body &body) {
    return WeightNote{body.volume * 6e-7, body.volume * 8e-7, "eastern hemlock, green, from heart to sap."};
}

CutSheetOptions options_for(std::optional<Paper> paper) {
    CutSheetOptions options;
    options.paper = paper;
    options.fields.owner = "Larch Hollow";
    options.fields.date = "2026-11-25";
    options.weight = some_weight;
    return options;
}

std::vector<Sheet> sheets_of(const Piece &piece, const CutSheetOptions &options, UnitSystem units) {
    Shell shell;
    shell.units = units;
    const Layout layout = test::layout_of(piece);
    return cut_sheet(shell, layout, layout.models.front(), body_of(piece), options);
}

bool says(const std::vector<Sheet> &sheets, const std::string &words) {
    for (const Sheet &sheet : sheets)
        for (const Item &item : sheet.items)
            if (const Text *text = std::get_if<Text>(&item);
                text && text->words.find(words) != std::string::npos)
                return true;
    return false;
}

std::map<std::string, int> dimensions_on(const std::vector<Sheet> &sheets, const Words &words) {
    std::map<std::string, int> all;
    for (const Sheet &sheet : sheets)
        for (const Item &item : sheet.items) {
            const Text *text = std::get_if<Text>(&item);
            if (text && text->role == Role::dimension && text->words != words.length(0) &&
                text->words != "LL")
                ++all[text->words];
        }
    return all;
}

std::map<std::string, int> dimensions_of(const Piece &piece, const Words &words) {
    const Features f = features_of(piece, words.system());
    std::map<std::string, int> all;
    const auto add = [&](double mm) {
        if (words.length(mm) != words.length(0)) ++all[words.length(mm)];
    };
    for (const Station &s : stations_of(f))
        add(s.x);
    for (const auto &levels : {levels_of(f), log_heights(f)})
        for (const Level &l : levels)
            if (words.level(l.height) != words.length(0)) ++all[words.level(l.height)];
    for (const End end : {End::datum, End::far})
        if (const auto width = log_width(f, end)) add(*width);
    add(piece.blank.length);
    return all;
}

std::string compared(const std::map<std::string, int> &found, const std::map<std::string, int> &wanted) {
    std::string text;
    for (const auto &[number, count] : wanted)
        if (!found.contains(number) || found.at(number) != count)
            text += number + " wanted " + std::to_string(count) + ", found " +
                    std::to_string(found.contains(number) ? found.at(number) : 0) + "\n";
    for (const auto &[number, count] : found)
        if (!wanted.contains(number))
            text += number + " found " + std::to_string(count) + " but not wanted\n";
    return text;
}

} // namespace roundlay::test
