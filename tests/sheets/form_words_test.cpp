// Field forms: what they print of what is known, and propose.

#include "exporters/sheets/form/form.h"
#include "exporters/sheets/form/proposed.h"
#include "kernel/document/document.h"
#include "kernel/layout/pieces/hewn_faces.h"
#include "kernel/survey/survey.h"
#include "tests/sheets/support/checks.h"
#include "tests/sheets/support/form_pages.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <algorithm>
#include <map>

using namespace roundlay;
using namespace roundlay::sheets;
using namespace roundlay::test;

namespace {

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
                              "0.2.0", "4.6.0 m", "8.6.0", "R. Hale", "its end in SE"}) {
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
    for (const Sheet &sheet : all) {
        std::string words = texts_of(sheet);
        std::ranges::replace(words, '\n', ' '); // lines break anywhere
        CHECK(words.find("proposed by the plan") != std::string::npos);
    }
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
