// Field forms: a hand finds room in every box, nothing runs into anything, and what is known is printed.

#include "exporters/sheets/form/form.h"
#include "exporters/sheets/form/form_pen.h"
#include "exporters/sheets/pdf/pdf.h"
#include "kernel/record/check_record.h"
#include "kernel/survey/survey.h"
#include "tests/document/any_statement.h"
#include "tests/sheets/support/checks.h"
#include "tests/sheets/support/form_pages.h"
#include "tests/sheets/support/hand.h"
#include "tests/sheets/support/run.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <algorithm>

using namespace roundlay;
using namespace roundlay::sheets;
using namespace roundlay::test;

namespace {

/// Lines and areas outside the frame; texts are the clashes' own question.
std::string beyond_frame(const std::vector<Sheet> &sheets) {
    std::string found;
    for (const Sheet &sheet : sheets)
        for (const Item &item : sheet.items)
            if (const Rect box = bounds(item); !box.empty() && !sheet.drawing.grown(1e-6).holds(box))
                found += sheet.title + ": an item at " + std::to_string(box.x0) + ", " +
                         std::to_string(box.y0) + "\n";
    return found;
}

/// Long tags, long words, many pegs and zones: on logs where the plan has them, and on some where it has
/// none.
Record any_record_of(const Layout &layout) {
    Record record = with_logs_to_measure({}, layout), drawn = any_record();
    std::vector<FoundLog> logs;
    for (FoundLog &log : record.logs) {
        if (drawn.logs.empty() || *rc::gen::inRange(0, 3) > 0) continue;
        FoundLog found = drawn.logs[*rc::gen::inRange<std::size_t>(0, drawn.logs.size())];
        found.tag = *rc::gen::inRange(0, 4) == 0 ? log.tag + " with a name that nobody would write on a tag"
                                                 : "T " + log.tag;
        found.place = log.place;
        for (std::size_t i = 0; i < std::min(found.ends.size(), log.ends.size()); ++i)
            found.ends[i].corner = log.ends[i].corner;
        logs.push_back(found);
    }
    drawn.logs.insert(drawn.logs.end(), logs.begin(), logs.end());
    return drawn;
}

Rect box_of_path(const Path &path) {
    return bounds(Item(path));
}

/// What a hand may have to write into a box of that layer: dotted notes in sixteenths, inches and their
/// parts, millimetres, metres; words count by their letters, as broad as digits.
std::vector<std::string> samples(const std::string &layer) {
    if (layer == size_box) return {"0.11.15", "11 15/16", "1234", "-3.10.1"};
    if (layer == place_box) return {"33.11.15", "33' 11 1/2\"", "12345", "10.345"};
    if (layer == words_box) return {"12345"};
    return {};
}

constexpr double at_least = 4; ///< mm: figures of cold hands

/// Where a hand begins to write: right of the letter in the box's corner.
Vec2 pen_at(const Rect &box, const Sheet &sheet) {
    double left = box.x0 + 0.8;
    for (const Item &item : sheet.items)
        if (const Text *text = std::get_if<Text>(&item); text && text->role == Role::mark)
            if (const Rect letter = bounds(item); box.holds(letter)) left = std::max(left, letter.x1 + 0.6);
    return {left, box.centre().y - at_least / 2};
}

bool is_filled(const Rect &box, const Sheet &sheet) {
    return std::ranges::any_of(sheet.items, [&](const Item &item) {
        const Text *text = std::get_if<Text>(&item);
        return text && text->role == Role::cell && box.holds(bounds(item));
    });
}

struct FilledBox {
    Rect box;
    std::string layer;
};

std::vector<FilledBox> boxes_on(const Sheet &sheet) {
    std::vector<FilledBox> all;
    for (const Item &item : sheet.items)
        if (const Path *path = std::get_if<Path>(&item); path && path->layer.starts_with("box "))
            all.push_back({box_of_path(*path), path->layer});
    return all;
}

/// Writes into each empty box what may come there; tells boxes where it does not fit.
std::string too_small(const Sheet &sheet, Sheet &filled) {
    std::string found;
    for (const FilledBox &b : boxes_on(sheet)) {
        if (is_filled(b.box, sheet)) continue;
        for (const std::string &sample : samples(b.layer)) {
            Rect ink = Rect::nothing();
            const auto strokes = written_by_hand(sample, pen_at(b.box, sheet), at_least);
            for (const auto &[from, to] : strokes)
                ink = joined(joined(ink, from), to);
            if (!b.box.grown(-0.5).holds(ink))
                found += sheet.title + ": " + b.layer + " holds no " + sample + "\n";
        }
        if (samples(b.layer).empty()) continue;
        for (const auto &[from, to] :
             written_by_hand(samples(b.layer).front(), pen_at(b.box, sheet), at_least))
            filled.items.emplace_back(Path{{from, to}, false, Line::strong, ""});
    }
    return found;
}

} // namespace

TEST_CASE("Forms of the demos: nothing runs into anything, and each box takes figures of 4 mm", "[form]") {
    for (const std::string &name : all_demo_names)
        for (const Paper paper : {Paper::a4, Paper::letter})
            for (const Language language : {Language::english, Language::french}) {
                if (name == "long-house" && paper == Paper::letter && language == Language::english) continue;
                LaidShell shell = demo(name);
                shell.shell.units = paper == Paper::letter ? UnitSystem::imperial : UnitSystem::metric;
                const std::vector<Sheet> sheets = forms_of(shell, {}, options_on(paper, language));
                INFO(name << " on " << name_of(paper) << " in " << tag_of(language));
                CHECK(all_clashes(sheets) == "");
                CHECK(beyond_frame(sheets) == "");
                std::vector<Sheet> filled = sheets;
                std::string small;
                for (std::size_t i = 0; i < sheets.size(); ++i)
                    small += too_small(sheets[i], filled[i]);
                CHECK(small == "");
                CHECK(all_clashes(filled) == "");
            }
}

TEST_CASE("Forms of any shell and record: nothing runs into anything or leaves the frame", "[form]") {
    CHECK(counterexample(shells_to_draw(12), [] {
              LaidShell shell = laid(any_of_all_shells());
              RC_PRE(!shell.layout.pieces.empty());
              shell.shell.units = *rc::gen::arbitrary<bool>() ? UnitSystem::metric : UnitSystem::imperial;
              const auto language = *rc::gen::arbitrary<bool>() ? Language::english : Language::french;
              const auto paper = *rc::gen::arbitrary<bool>() ? Paper::a4 : Paper::letter;
              Record record = any_record_of(shell.layout);
              read_numbers(record);
              const auto sheets = forms_of(shell, record, options_on(paper, language));
              std::string wrong = all_clashes(sheets) + beyond_frame(sheets);
              std::vector<Sheet> filled = sheets;
              for (std::size_t i = 0; i < sheets.size(); ++i)
                  wrong += too_small(sheets[i], filled[i]);
              wrong += all_clashes(filled);
              if (!wrong.empty()) RC_FAIL(wrong);
          }) == "");
}

TEST_CASE("An empty box is white on the printed page, as far as figures of 4 mm go", "[form][pdf]") {
    constexpr int dpi = 100;
    const auto sheets = forms_of(demo("one-room"), {}, options_on(Paper::a4, Language::english));
    Book book;
    book.sheets = {sheets[1], sheets.back()};
    const std::string pdf = write_pdf(book);
    int looked = 0;
    for (std::size_t page = 0; page < book.sheets.size(); ++page) {
        const Sheet &sheet = book.sheets[page];
        const GreyImage image = page_image(pdf, static_cast<int>(page) + 1, dpi);
        for (const FilledBox &b : boxes_on(sheet)) {
            if (samples(b.layer).empty()) continue;
            const Vec2 at = pen_at(b.box, sheet);
            for (const auto &[from, to] : written_by_hand(samples(b.layer)[0], at, at_least)) {
                const auto px = [&](double mm) { return static_cast<int>(mm / 25.4 * dpi); };
                CHECK_FALSE(image.dark(px(from.x), px(sheet.size.height - from.y)));
                CHECK_FALSE(image.dark(px(to.x), px(sheet.size.height - to.y)));
                ++looked;
            }
        }
    }
    CHECK(looked > 500);
}
