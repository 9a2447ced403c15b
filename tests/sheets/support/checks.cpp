#include "tests/sheets/support/checks.h"

#include "exporters/sheets/book/book.h"
#include "exporters/sheets/cut_sheet/cut_sheet.h"
#include "exporters/sheets/drawing/clash.h"
#include "exporters/sheets/schedule/schedules.h"
#include "exporters/sheets/tag/tags.h"
#include "kernel/document/document.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <algorithm>
#include <cstdlib>
#include <sstream>
#include <stdexcept>

namespace roundlay::test {

using namespace sheets;

std::string all_clashes(const std::vector<Sheet> &sheets) {
    std::string text;
    for (const Sheet &sheet : sheets)
        for (const Clash &clash : clashes(sheet))
            text += sheet.chapter + "/" + sheet.title + ": " + described(clash) + "\n";
    return text;
}

std::set<std::string> words_on(const std::vector<Sheet> &sheets, const std::string &chapter) {
    std::set<std::string> words;
    for (const Sheet &sheet : sheets)
        for (const Item &item : sheet.items)
            if (const Text *text = std::get_if<Text>(&item); text && sheet.chapter == chapter)
                words.insert(text->words);
    return words;
}

double area_of(const std::vector<Vec2> &ring) {
    double twice = 0;
    for (std::size_t i = 0; i < ring.size(); ++i)
        twice += cross(ring[i], ring[(i + 1) % ring.size()]);
    return twice / 2;
}

SheetOptions full_options(std::optional<Paper> paper) {
    SheetOptions options;
    options.paper = paper;
    options.fields.owner = "Larch Hollow";
    options.fields.date = "2026-11-25";
    options.weight = [](const Piece &, const Body &body) {
        return std::optional<WeightNote>(
            WeightNote{body.volume * 6e-7, body.volume * 8e-7, "eastern hemlock, green, from heart to sap."});
    };
    return options;
}

LaidShell laid(const Shell &shell) {
    LaidShell all{shell, lay_out(shell), {}};
    all.bodies = bodies_of(all.layout);
    return all;
}

LaidShell demo(const std::string &name) {
    const auto read = read_document_file(std::string(ROUNDLAY_ROOT) + "/models-demo/" + name + ".roundlay");
    if (!read.shell) throw std::runtime_error("cannot read " + name);
    return laid(*read.shell);
}

Book whole_book(const LaidShell &s, const SheetOptions &options, std::size_t most_models) {
    SheetSet set = drawing_set(s.layout);
    set.push_back(schedule_subject());
    for (const auto model : Indices<Model>(std::min(most_models, s.layout.models.size())))
        set.push_back(cut_sheet_subject(s.layout, model));
    for (Subject &subject :
         SheetSet{packing_subject(), tag_subject(), template_subject(), full_size_pole_subject()})
        set.push_back(std::move(subject));
    std::vector<Sheet> all = composed(set, {s.shell, s.layout, s.bodies, options});
    BookWords words;
    const bool french = options.fields.language == Language::french;
    words.facts = {{french ? "Murs" : "Walls", std::to_string(s.layout.walls.size())},
                   {french ? "Pièces" : "Logs", std::to_string(s.layout.pieces.size())}};
    words.cautions = {
        french ? "Le code local et un professionnel agréé décident ; rien ici n’approuve quoi que ce soit."
               : "Local code and a licensed professional decide; nothing here is an approval of anything."};
    Book book = bound_book(s.shell, options, words, std::move(all));
    book.created = 1700000000;
    return book;
}

Shell any_of_all_shells() {
    switch (*rc::gen::inRange(0, 8)) {
    case 7:
        return any_stepped_saddle_shell();
    case 4:
        return any_stepped_shell();
    case 5:
        return any_waned_shell();
    case 6:
        return any_saddle_shell();
    case 1:
        return any_tapered_shell();
    case 2:
        return any_family_shell();
    case 3:
        return any_fitted_shell();
    default:
        return any_shell();
    }
}

std::string counterexample(int times, const std::function<void()> &property) {
    rc::detail::TestParams params = rc::detail::configuration().testParams;
    params.maxSuccess = times;
    const auto result = rc::detail::checkTestable([&] { property(); }, rc::detail::TestMetadata{}, params);
    std::ostringstream told;
    rc::detail::printResultMessage(result, told);
    return result.is<rc::detail::SuccessResult>() ? "" : told.str() + "seed " + std::to_string(params.seed);
}

int shells_to_draw(int few) {
    const char *wanted = std::getenv("ROUNDLAY_SHELLS");
    return wanted == nullptr ? few : std::max(1, std::atoi(wanted));
}

} // namespace roundlay::test
