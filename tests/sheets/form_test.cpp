// Field forms: a hand finds room in every box, nothing runs into anything, and what is known is printed.

#include "exporters/sheets/drawing/block.h"
#include "exporters/sheets/drawing/clash.h"
#include "exporters/sheets/form/form.h"
#include "exporters/sheets/form/form_pen.h"
#include "exporters/sheets/form/proposed.h"
#include "exporters/sheets/pdf/pdf.h"
#include "kernel/document/document.h"
#include "kernel/layout/pieces/hewn_faces.h"
#include "kernel/record/check_record.h"
#include "kernel/survey/survey.h"
#include "tests/document/any_statement.h"
#include "tests/sheets/support/checks.h"
#include "tests/sheets/support/hand.h"
#include "tests/sheets/support/run.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <algorithm>
#include <map>

using namespace roundlay;
using namespace roundlay::sheets;
using namespace roundlay::test;

namespace {

std::vector<Sheet> forms_of(const LaidShell &s, const Record &record, const SheetOptions &options) {
    return composed(form_set(s.layout, std::make_shared<const Record>(record)),
                    {s.shell, s.layout, s.bodies, options});
}

SheetOptions options_on(Paper paper, Language language) {
    SheetOptions options = full_options(paper);
    options.fields.language = language;
    return options;
}

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

std::string texts_of(const Sheet &sheet) {
    std::string all;
    for (const Item &item : sheet.items)
        if (const Text *text = std::get_if<Text>(&item)) all += text->words + "\n";
    return all;
}

bool prints(const std::vector<Sheet> &sheets, const std::string &words) {
    return std::ranges::any_of(sheets, [&](const Sheet &s) {
        return ("\n" + texts_of(s)).find("\n" + words + "\n") != std::string::npos;
    });
}

std::vector<Sheet> form_of(const std::vector<Sheet> &all, const std::string &what) {
    std::vector<Sheet> some;
    for (const Sheet &sheet : all)
        if (sheet.subject == "Field form, " + what) some.push_back(sheet);
    return some;
}

/// How much wood stands over a place of the log, by its cells: told apart from how forms find it.
double wood_over(const Body &body, double x, double y) {
    double low = 1e9, high = -1e9;
    for (const Cell &cell : body.cells) {
        double from = -1e9, to = 1e9;
        bool there = true;
        for (const CellFace &face : cell.faces) {
            const Vec3 n = face.plane.normal;
            const double rest = face.plane.offset - n.x * x - n.y * y;
            if (std::abs(n.z) < 1e-9)
                there = there && rest > -1e-7;
            else if (n.z > 0)
                to = std::min(to, rest / n.z);
            else
                from = std::max(from, rest / n.z);
        }
        if (there && from < to) low = std::min(low, from), high = std::max(high, to);
    }
    return std::max(0.0, high - low);
}

Record recorded_house() {
    const std::string text = R"(
[record]
by = "R. Hale"
denominator = 4

[[record.wall]]
wall = "B"
read_from = "inside"

[[record.corner]]
name = "SE"
walls = ["A", "B"]
level = "-0.3.2"

[[found]]
tag = "South sill"
wall = "A"
round = 2
piece = 2
length = "16.2.1"
butt = "SE"
finish_outside = "hewn"
marks = ["III"]
end = [
  { corner = "SE", height = "0.11.2", width = { note = "0.7.3", is = "contradicted" }, end_inside = "0.10.1", gap = "0.0.1" },
  { corner = "door", height = { note = "0.10.0", is = "proposed" } },
]
zone = [ { what = "rotten", from = "14.0.0", to = "16.2.1", faces = ["top"], depth = "0.2.0" } ]
peg = [ { at = "4.6.0", state = "missing" }, { at = "8.6.0", state = "found" } ]

[[found]]
tag = "loft 3"
species = "pine"
)";
    const std::string path = std::string(ROUNDLAY_ROOT) + "/models-demo/one-room.roundlay";
    const auto shell = read_document_text(path);
    const ReadResult read = read_document(std::get<std::string>(shell) + text, "house");
    for (const Problem &problem : read.problems)
        UNSCOPED_INFO(to_text(problem));
    REQUIRE(read.shell);
    REQUIRE(read.record.logs.size() == 2);
    return read.record;
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

TEST_CASE("Every log is on the form of its wall and of the corners that it ends in", "[form]") {
    for (const std::string &name : all_demo_names) {
        const LaidShell shell = demo(name);
        const auto sheets = forms_of(shell, {}, options_on(Paper::a4, Language::english));
        std::map<std::string, std::vector<Sheet>> by;
        for (const Sheet &sheet : sheets)
            by[sheet.subject].push_back(sheet);
        for (const Piece &piece : shell.layout.pieces) {
            INFO(name << ": " << piece.tag);
            if (piece.timber) {
                CHECK(prints(by["Field form, Floor " +
                                shell.layout.floors[shell.layout.timbers[*piece.timber].floor].name],
                             piece.tag));
                continue;
            }
            CHECK(prints(by["Field form, Wall " + shell.layout.walls[piece.wall].name], piece.tag));
            for (const PieceEnd &end : {piece.datum, piece.far})
                if (end.kind == EndKind::corner) CHECK(prints(by["Field form, Corner " + end.at], piece.tag));
        }
    }
}

TEST_CASE("What was noted stands in its box, what is proposed under it, what is contradicted asks again",
          "[form]") {
    const Record record = recorded_house();
    const LaidShell shell = demo("one-room");
    const auto all = forms_of(shell, record, options_on(Paper::letter, Language::english));
    const auto wall = form_of(all, "Wall A"), corner = form_of(all, "Corner SE");
    for (const char *words : {"South sill", "16.2.1", "0.11.2", "≠ 0.7.3", "0.10.0", "hewn", "III", "14.0.0",
                              "0.2.0", "4.6.0", "8.6.0", "R. Hale", "its end in SE"}) {
        INFO(words);
        CHECK(prints(wall, words));
    }
    CHECK_FALSE(prints(wall, "0.7.3"));
    CHECK_FALSE(prints(wall, "A-02-2")); // the log that was found lies there
    CHECK(prints(wall, "tag, proposed"));
    for (const char *words : {"South sill", "0.10.1", "0.0.1", "-0.3.2"}) {
        INFO(words);
        CHECK(prints(corner, words));
    }
    CHECK(form_of(all, "Corner AB").empty()); // the record calls it otherwise
    const auto elsewhere = form_of(all, "Logs that the plan does not have");
    CHECK(prints(elsewhere, "loft 3"));
    for (const Sheet &sheet : all)
        CHECK(texts_of(sheet).find("proposed by the plan") != std::string::npos);
}

TEST_CASE("A wall that is read from inside is drawn and asked for from inside", "[form]") {
    const LaidShell shell = demo("one-room");
    const auto place = [&](const std::vector<Sheet> &sheets, const std::string &words) {
        for (const Item &item : sheets.front().items)
            if (const Text *text = std::get_if<Text>(&item); text && text->words == words) return text->at.x;
        FAIL(words);
        return 0.0;
    };
    const auto inside =
        form_of(forms_of(shell, recorded_house(), options_on(Paper::a4, Language::english)), "Wall B");
    const auto outside = form_of(forms_of(shell, {}, options_on(Paper::a4, Language::english)), "Wall B");
    CHECK(place(outside, "AB") < place(outside, "BC"));
    CHECK(place(inside, "SE") > place(inside, "BC"));
    CHECK(texts_of(inside.front()).find("seen from inside") != std::string::npos);
    CHECK(texts_of(outside.front()).find("seen from outside") != std::string::npos);
    // left and right are nobody's names on a form
    for (const Sheet &sheet : inside)
        for (const char *side : {" left", " right"})
            CHECK(texts_of(sheet).find(side) == std::string::npos);
}

TEST_CASE("Tail heights, log heights and widths that are proposed are those of the wood", "[form]") {
    CHECK(counterexample(shells_to_draw(40), [] {
              const LaidShell shell = laid(any_of_all_shells());
              RC_PRE(!shell.layout.pieces.empty());
              for (const Piece &piece : shell.layout.pieces) {
                  const Body &body = shell.bodies[piece.model];
                  if (!body.rounds.empty()) continue; // flats stand for round surfaces there
                  for (const End end : {End::datum, End::far}) {
                      const ProposedEnd p = proposed_end(shell.layout, piece, end);
                      if (!p.tail) continue;
                      const double in = end == End::datum ? 0.01 : -0.01; // toward the middle of the log
                      const HewnFaces f = hewn_faces(piece);
                      const auto check = [&](const TailPlace &place, double way, bool outside) {
                          const double x = place.x + way;
                          const double y = outside ? f.outermost(x) + 1e-4 : f.innermost(x) - 1e-4;
                          const double wood = wood_over(body, x, y);
                          if (std::abs(wood - place.tall()) > 0.01)
                              RC_FAIL(piece.tag + " at " + std::to_string(place.x) + " of " +
                                      std::to_string(piece.blank.length) +
                                      (outside ? " outside " : " inside ") + std::to_string(place.low) +
                                      " to " + std::to_string(place.high) + " has " + std::to_string(wood));
                      };
                      check(p.tail->shoulder_outside, -in, true);
                      check(p.tail->shoulder_inside, -in, false);
                      check(p.tail->end_outside, in, true);
                      check(p.tail->end_inside, in, false);
                  }
              }
          }) == "");
}

TEST_CASE("A full dovetail by hand: its heights, length, overhang and jambs as forms propose them",
          "[form]") {
    // models-demo/one-room: logs 7 1/2 by 8 in, a 16 ft wall; half of the slope of each seam over 8 in.
    const LaidShell shell = demo("one-room");
    const auto all = forms_of(shell, {}, options_on(Paper::letter, Language::english));
    const auto corner = form_of(all, "Corner AB"), wall = form_of(all, "Wall A");
    CHECK(prints(corner, "2 1/2\""));
    CHECK(prints(corner, "6 1/2\""));
    CHECK(prints(wall, "16' 0\""));
    CHECK(prints(wall, "14' 8\"")); // 16 ft less two walls of 8 in
    CHECK(prints(wall, "door, jamb towards DA"));
    CHECK(prints(wall, "7 1/2\""));
}

TEST_CASE("On round logs and partitions forms say what there is to measure", "[form]") {
    const auto all = forms_of(demo("round-cabin"), {}, options_on(Paper::a4, Language::english));
    CHECK(prints(form_of(all, "Corner AB"), "no tail: its notch is scribed to the log below"));
    CHECK(prints(form_of(all, "Corner AP"), "runs on past the corner"));
    bool from_a_quarter = false;
    for (const Sheet &sheet : form_of(all, "Wall P"))
        from_a_quarter = from_a_quarter || texts_of(sheet).find("seen from the ") != std::string::npos;
    CHECK(from_a_quarter);
}
