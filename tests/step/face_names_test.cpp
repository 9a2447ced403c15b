// Names of faces in STEP files: each says which cut made the face, and taking that cut away proves it.
#include "exporters/step/step.h"
#include "kernel/boundary/face_words.h"
#include "kernel/boundary/made_by.h"
#include "kernel/layout/cuts/asked.h"
#include "kernel/layout/fastenings/cut_marks.h"
#include "kernel/layout/lay_out.h"
#include "tests/step/samples.h"
#include "tests/support/any_kind.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"
#include "tests/support/thrown_away.h"

#include <rapidcheck.h>

#include <algorithm>
#include <cstdio>
#include <map>
#include <set>

using namespace roundlay;

namespace {

/// A place just outside a plane face, near the middle of its longest straight edge.
std::optional<Vec3> outside(const Boundary &border, const BoundaryFace &face) {
    double longest = 0;
    std::optional<Vec3> place;
    for (const EdgeUse &use : face.loops.front()) {
        const BoundaryEdge &edge = border.edges[std::size_t(use.edge)];
        if (!edge.is_line()) continue;
        Vec3 from = border.vertices[std::size_t(edge.from)], to = border.vertices[std::size_t(edge.to)];
        if (!use.forward) std::swap(from, to);
        if (length(to - from) <= longest) continue;
        longest = length(to - from);
        const Vec3 in = unit(cross(face.plane.normal, to - from));
        place = 0.5 * (from + to) + 0.02 * in + 0.02 * face.plane.normal;
    }
    return place;
}

bool has_wood(const Piece &piece, Vec3 at) {
    return std::ranges::any_of(body_of(piece).cells, [&](const Cell &cell) {
        return std::ranges::all_of(cell.faces,
                                   [&](const auto &face) { return face.plane.distance(at) < 1e-6; });
    });
}

Piece less(const Piece &piece, std::size_t cut) {
    Piece without = piece;
    without.cuts.erase(without.cuts.begin() + std::ptrdiff_t(cut));
    return without;
}

/// Wood stands outside the face as soon as the cut is left out, unless another cut takes it too.
bool is_proved(const Piece &piece, std::size_t cut, Vec3 at) {
    if (has_wood(less(piece, cut), at)) return true;
    for (std::size_t other = 0; other < piece.cuts.size(); ++other) {
        if (other == cut) continue;
        Piece alone = piece;
        alone.cuts = {piece.cuts[other]};
        if (!bore_of(piece.cuts[other]) && !has_wood(alone, at)) return true;
    }
    return false;
}

struct Counts {
    int faces = 0, by_cut = 0, proved = 0, blank = 0, bores = 0, rounds = 0;
};

void check(const Piece &piece, Counts &counts) {
    const Body body = body_of(piece);
    const auto border = boundary_of(body);
    if (!border) return; // the library's way, without names
    const std::vector<MadeBy> made = made_by(piece, *border);
    const std::vector<std::string> names = face_names(piece, *border, true);
    RC_ASSERT(made.size() == border->faces.size());
    std::size_t i = 0;
    for (const BoundaryFace &face : border->faces) {
        const MadeBy &by = made[i];
        RC_ASSERT(!names[i++].empty());
        ++counts.faces;
        if (face.bore || by.part == FacePart::bottom) {
            RC_ASSERT(by.cut.has_value() && bore_of(piece.cuts[*by.cut]) != nullptr);
            ++counts.bores;
        } else if (face.round) {
            RC_ASSERT(by.cut.has_value());
            RC_ASSERT((by.part == FacePart::wane || by.part == FacePart::scope));
            ++counts.rounds;
        } else if (const auto at = outside(*border, face)) {
            if (!by.cut) {
                RC_ASSERT(at->x < 0 || at->x > piece.blank.length || at->y < 0 || at->y > piece.blank.width ||
                          at->z < 0 || at->z > piece.blank.height);
                ++counts.blank;
                continue;
            }
            ++counts.by_cut;
            if (is_proved(piece, *by.cut, *at))
                ++counts.proved;
            else
                RC_FAIL(piece.tag + ": face \"" + names[i - 1] + "\" stays without that cut");
        }
    }
}

} // namespace

TEST_CASE("Taking the cut away that a face is named by takes the face away, on shells of every kind") {
    test::ThrownAway thrown(test::refusals());
    Counts counts;
    CHECK(rc::check([&] {
        Shell shell = test::any_kind_of_shell();
        const Layout layout = lay_out(shell);
        thrown.discard_refused(layout.findings);
        for (const Model &model : layout.models)
            check(layout.pieces[model.pieces.front()], counts);
    }));
    std::printf("%d faces: %d by plane cuts, %d of blanks, %d of bores, %d round; %s\n", counts.faces,
                counts.by_cut, counts.blank, counts.bores, counts.rounds, thrown.words().c_str());
    CHECK(counts.by_cut > 100);
    CHECK(counts.bores > 20);
}

TEST_CASE("Round surfaces are named by the stick or by the log that is scoped over") {
    Counts counts;
    CHECK(rc::check([&] {
        const Layout layout = lay_out(test::round_shell());
        for (const Model &model : layout.models)
            check(layout.pieces[model.pieces.front()], counts);
        RC_ASSERT(counts.rounds > 20);
    }));
}

TEST_CASE("The names of one log's faces, read by a person") {
    const Shell shell = test::plain_shell();
    const Layout layout = lay_out(shell);
    const auto log = std::ranges::find(layout.pieces, std::string("A-02-1"), &Piece::tag);
    REQUIRE(log != layout.pieces.end());
    const auto border = boundary_of(body_of(*log));
    REQUIRE(border);
    std::multiset<std::string> names;
    for (const std::string &name : face_names(*log, *border, true))
        names.insert(name);
    CHECK(names.size() == 20); // with four pegs, two of which end in the log
    // Two tails, each with its seams to the logs over and under it and their shoulders, between four hewn
    // faces and two sawn ends.
    for (const char *once :
         {"top", "under", "outside", "inside", "datum end", "far end", "1 seam DA", "2 seam DA", "3 seam AB",
          "4 seam AB", "1 shoulder DA", "2 shoulder DA", "3 shoulder AB", "4 shoulder AB"}) {
        INFO(once);
        CHECK(names.count(once) == 1);
    }
    CHECK(names.count("P1") == 1);
}

TEST_CASE("Marks are those of the sheets: numbers in cutting order, letters from the datum end") {
    const Layout layout = lay_out(test::floored());
    for (const Piece &piece : layout.pieces) {
        const std::vector<std::string> marks = cut_marks(piece);
        REQUIRE(marks.size() == piece.cuts.size());
        int number = 0;
        std::map<std::string, int> seen;
        for (std::size_t i = 0; i < marks.size(); ++i) {
            if (is_numbered(piece.cuts[i])) CHECK(marks[i] == std::to_string(++number));
            if (!marks[i].empty()) CHECK(++seen[marks[i]] == 1);
        }
    }
}

TEST_CASE("Every face of a file that is written straight from borders has its name") {
    for (const test::StepSample &sample : test::step_samples()) {
        if (sample.options.route != StepRoute::automatic) continue;
        const bool all = std::ranges::all_of(sample.bodies,
                                             [](const Body &body) { return boundary_of(body).has_value(); });
        if (!all) continue;
        INFO(sample.name);
        const std::string text = sample.write();
        CHECK(text.find("ADVANCED_FACE('") != std::string::npos);
        CHECK(text.find("ADVANCED_FACE('',") == std::string::npos);
    }
}

namespace {

/// The names of the faces of a whole file, sorted.
std::vector<std::string> names_in(const std::string &text) {
    const std::string before = "=ADVANCED_FACE('";
    std::vector<std::string> names;
    for (std::size_t at = text.find(before); at != std::string::npos; at = text.find(before, at)) {
        at += before.size();
        names.push_back(text.substr(at, text.find("',", at) - at));
    }
    std::ranges::sort(names);
    return names;
}

std::string by_route(const test::StepSample &sample, StepRoute route) {
    StepOptions options;
    options.route = route;
    return write_shell_step(sample.shell, sample.layout, sample.bodies, options);
}

} // namespace

TEST_CASE("The library's solids have the same names on their faces as those that are written straight") {
    for (const char *name : {"rectangle", "openings", "tapered", "mended", "round"}) {
        INFO(name);
        const test::StepSample sample = test::step_sample(name);
        std::vector<std::string> straight = names_in(by_route(sample, StepRoute::automatic)),
                                 library = names_in(by_route(sample, StepRoute::library));
        CHECK(straight.size() > 6 * sample.layout.models.size() - 1);
        // the library may part a round face in two
        if (name == std::string("round"))
            for (auto *each : {&straight, &library})
                each->erase(std::unique(each->begin(), each->end()), each->end());
        CHECK(straight == library);
    }
}
