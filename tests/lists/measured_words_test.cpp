// Every measure of the lists' cuts against the wood that is there when it is marked: the blank with its long
// faces hewn, cut across at that place.
#include "exporters/lists/cut_words.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/body.h"
#include "kernel/layout/wood/interference.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"
#include "tests/support/thrown_away.h"

#include <rapidcheck.h>

#include <algorithm>
#include <cmath>
#include <regex>

using namespace roundlay;
using namespace roundlay::test;

namespace {

std::string said(double mm) {
    return print_length(Length::mm(mm), {});
}

std::string said(double left, double right) {
    const std::string a = said(std::max(0.0, left)), b = said(std::max(0.0, right));
    return a == b ? a : a + " (left) to " + b + " (right)";
}

/// Nothing but hewn.
Body hewn_log(const Piece &piece) {
    Piece log = piece;
    std::erase_if(log.cuts, [](const Cut &cut) {
        const FaceCut *face = std::get_if<FaceCut>(&cut);
        return face == nullptr || face->face == LogFace::datum_end || face->face == LogFace::far_end;
    });
    return body_of(log);
}

/// What a saw square across the log leaves to be measured.
Box3 section_at(const Body &log, double x) {
    constexpr double thin = 1e-3;
    Box3 all{{1e9, 1e9, 1e9}, {-1e9, -1e9, -1e9}};
    for (const Cell &cell : log.cells) {
        const Cell slice = clipped(clipped(cell, {{-1, 0, 0}, thin - x}), {{1, 0, 0}, x + thin});
        if (slice.empty()) continue;
        const Box3 box = bounds(slice);
        all.low = {x, std::min(all.low.y, box.low.y), std::min(all.low.z, box.low.z)};
        all.high = {x, std::max(all.high.y, box.high.y), std::max(all.high.z, box.high.z)};
    }
    return all;
}

/// What the words must begin with.
std::string wanted_words(const Piece &piece, const Body &log, const BoxCut &cut) {
    const double from = std::max(0.0, cut.box.low.x), to = std::min(piece.blank.length, cut.box.high.x);
    const Box3 a = section_at(log, from), b = section_at(log, to);
    const auto up = [&](double z) { return said(z - a.low.z, z - b.low.z); };
    const auto inner = [&](const Box3 &s) { return cut.box.low.z + cut.fall * (s.high.y - cut.fall_from); };
    switch (cut.use) {
    case BoxUse::sill:
        return "sill cut " + said(a.high.z - inner(a), b.high.z - inner(b)) + " deep from the top";
    case BoxUse::header:
        return "header cut " + up(cut.box.high.z) + " up from the underside";
    case BoxUse::through:
        return "opening cut " + up(cut.box.low.z) + " up to " + up(cut.box.high.z) + " over the underside";
    case BoxUse::step:
        return "cut level " + up(cut.box.high.z) + " up from the underside";
    case BoxUse::seat:
        return "seat " + up(cut.box.high.z) + " up from the underside";
    case BoxUse::groove:
        break;
    }
    return "groove ";
}

std::string wanted_words(const Piece &piece, const Body &log, const PocketCut &cut) {
    const Box3 s = section_at(log, cut.x);
    const bool inside = cut.y_face > cut.y_back;
    const double depth = inside ? s.high.y - cut.y_back : cut.y_back - s.low.y;
    return said(2 * cut.half_at_back) + " wide, " + said(depth) + " into the " + side_word(piece, inside) +
           " face, ";
}

bool has(const std::vector<std::string> &all, const std::string &words) {
    return std::any_of(all.begin(), all.end(),
                       [&](const std::string &w) { return w.find(words) != std::string::npos; });
}

/// A bore's depth begins in the wood that is there where it is bored.
bool begins_in_wood(const Body &body, const Bore &bore) {
    double low = 1e9, high = -1e9;
    for (const Cell &cell : body.cells) {
        constexpr double thin = 0.5;
        Cell core = cell;
        for (const Plane &side : {Plane{{1, 0, 0}, bore.x + thin}, Plane{{-1, 0, 0}, thin - bore.x},
                                  Plane{{0, 1, 0}, bore.y + thin}, Plane{{0, -1, 0}, thin - bore.y}})
            core = clipped(core, side);
        if (core.empty()) continue;
        low = std::min(low, bounds(core).low.z);
        high = std::max(high, bounds(core).high.z);
    }
    const double open = bore.from_top ? bore.z_to : bore.z_from, wood = bore.from_top ? high : low;
    return std::abs(open - wood) < 0.2; // it opens in a face that may slope by 1:8 over this core
}

std::string wrong_measures(const Piece &piece) {
    const Body log = hewn_log(piece), body = body_of(piece);
    const std::vector<std::string> words = cut_words(piece, {});
    std::string wrong;
    for (const Cut &cut : piece.cuts) {
        std::string wanted;
        if (const BoxCut *box = std::get_if<BoxCut>(&cut)) wanted = wanted_words(piece, log, *box);
        if (const PocketCut *pocket = std::get_if<PocketCut>(&cut))
            wanted = wanted_words(piece, log, *pocket);
        if (!wanted.empty() && !has(words, wanted)) {
            wrong += piece.tag + ": '" + wanted + "' is not said in";
            for (const std::string &w : words)
                wrong += "\n    " + w;
            wrong += "\n";
        }
        if (const Bore *bore = std::get_if<Bore>(&cut);
            bore && !bore->through && !begins_in_wood(body, *bore))
            wrong += piece.tag + ": a bore at " + said(bore->x) + " is measured from where no wood is\n";
    }
    return wrong;
}

/// The lower log's axis over both side faces of this one.
std::string wanted_place(const Piece &piece, const ScopeCut &cut) {
    const auto at = [&](double y) { return said(cut.at.x + cut.along.x / cut.along.y * (y - cut.at.y)); };
    const std::string outside = at(0), inside = at(piece.blank.width);
    return outside == inside ? outside : outside + " (outside) / " + inside + " (inside)";
}

bool tapers(const Layout &layout) {
    for (const Piece &piece : layout.pieces)
        for (const Cut &cut : piece.cuts)
            if (const FaceCut *face = std::get_if<FaceCut>(&cut); face && face->face == LogFace::top)
                return true;
    return false;
}

Shell bay() {
    Shell shell = plain_shell();
    shell.walls = bay_plan(Length::mm(9000), Length::mm(6000), Length::mm(3000), Length::mm(1800),
                           Length::mm(2000), 45);
    return shell;
}

} // namespace

TEST_CASE("boxes, pockets and bores of tapered logs are measured from faces that are there") {
    int laid = 0, tapered = 0, boxes = 0, pockets = 0;
    ThrownAway thrown(refusals());
    CHECK(rc::check([&] {
        const Layout layout =
            lay_out(*rc::gen::element(0, 1) == 0 ? any_tapered_shell() : any_fitted_shell());
        thrown.discard_refused(layout.findings);
        ++laid;
        tapered += tapers(layout) ? 1 : 0;
        for (const Model &model : layout.models) {
            const Piece &piece = layout.pieces[model.pieces.front()];
            for (const Cut &cut : piece.cuts) {
                boxes += std::holds_alternative<BoxCut>(cut) ? 1 : 0;
                pockets += std::holds_alternative<PocketCut>(cut) ? 1 : 0;
            }
            const std::string wrong = wrong_measures(piece);
            if (!wrong.empty()) RC_FAIL(wrong);
        }
    }));
    INFO(thrown.words());
    CHECK_FALSE(thrown.too_many());
    CHECK(laid >= 50);
    CHECK(tapered >= 20);
    CHECK(boxes >= 100);
    CHECK(pockets >= 50);
}

TEST_CASE("saddles are said where the log below passes, at a slant on both side faces") {
    int saddles = 0, slanting = 0;
    std::string wrong;
    for (const double turn : {0.0, 30.0, 45.0}) {
        Shell shell = round_shell();
        if (turn > 0)
            shell.walls = bay_plan(Length::mm(9000), Length::mm(6000), Length::mm(3000), Length::mm(1800),
                                   Length::mm(2000), turn);
        const Layout layout = lay_out(shell);
        REQUIRE_FALSE(layout.pieces.empty());
        for (const Piece &piece : layout.pieces)
            for (const Cut &cut : piece.cuts) {
                const ScopeCut *scope = std::get_if<ScopeCut>(&cut);
                if (scope == nullptr || scope->use != ScopeUse::saddle) continue;
                ++saddles;
                slanting += std::abs(scope->along.x) > 0.1 ? 1 : 0;
                const std::string wanted = " at " + wanted_place(piece, *scope) + " over " + scope->other;
                if (!has(cut_words(piece, {}), wanted)) wrong += piece.tag + wanted + "\n";
            }
    }
    CHECK(wrong == "");
    CHECK(saddles > 60);
    CHECK(slanting > 20);
}

// By hand: 45 degrees between walls of 200 mm and logs that end in one another's faces: an end runs 200 mm
// aslant.
TEST_CASE("slanting ends and shoulders are said on both side faces") {
    const Layout layout = lay_out(bay());
    REQUIRE_FALSE(layout.pieces.empty());
    int slanting = 0;
    for (const Piece &piece : layout.pieces)
        for (const std::string &words : cut_words(piece, {})) {
            const std::regex slant(
                R"((left|right) end sawn at a slant, ([\d.]+) mm \(outside\) / ([\d.]+) mm \(inside\) off .*)");
            std::smatch found;
            if (!std::regex_match(words, found, slant)) continue;
            ++slanting;
            CHECK(std::abs(std::stod(found[2]) - std::stod(found[3])) == Approx(200).margin(1));
        }
    CHECK(slanting > 20);
}

// By hand: a round log of 240 mm over one of 240, 210 mm apart: its groove is 30 mm high over its lowest
// line.
TEST_CASE("of a round log heights are over its lowest line, which is snapped first: it has no underside") {
    const Layout layout = lay_out(round_shell());
    REQUIRE_FALSE(layout.pieces.empty());
    bool said_groove = false;
    for (const Piece &piece : layout.pieces) {
        if (piece.round == 1) continue; // hewn flat to lie on the foundation
        CHECK(cut_words(piece, {}).front().starts_with(
            "snap the lowest line and mark every cut from it before the first cut"));
        for (const std::string &words : cut_words(piece, {})) {
            INFO(words);
            CHECK(words.find("underside") == std::string::npos);
            said_groove =
                said_groove || words == "long groove of radius 120 mm, its top 30 mm over the lowest line";
        }
    }
    CHECK(said_groove);
}
