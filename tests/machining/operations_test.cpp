// The list of operations of a piece, read by somebody who knows only its file, makes the solid of its STEP
// file.
#include "exporters/machining/operation_files.h"
#include "exporters/machining/operation_words.h"
#include "exporters/machining/operations.h"
#include "exporters/step/step.h"
#include "kernel/document/document.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h"
#include "tests/machining/support/rebuilt.h"
#include "tests/support/any_mends.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"
#include "tests/support/thrown_away.h"

#include <rapidcheck.h>

#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <map>

using namespace roundlay;

namespace {

constexpr double same_volume = 1e-9; ///< of the piece's
/// STEP has the curves in which round surfaces meet as polynomials within 1e-7 mm (curve_fit), and the
/// booleans have their own: along the arrises of a waned log that comes to a little more.
constexpr double same_round_volume = 5e-9;

struct Counts {
    int pieces = 0, by_name = 0, unnamed = 0, faces = 0, shared = 0;
    double off_flat = 0, off_round = 0, off_told = 0; ///< relative volume: from STEP, and from what is told
    std::map<std::string, int> kinds;
    std::string words() const {
        std::string text = std::to_string(pieces) + " pieces, " + std::to_string(by_name) + " by name (" +
                           std::to_string(faces) + " faces, " + std::to_string(shared) +
                           " of them by two operations), " + std::to_string(unnamed) + " without names;";
        for (const auto &[kind, times] : kinds)
            text += " " + kind + " " + std::to_string(times);
        char off[120];
        std::snprintf(off, sizeof off,
                      "; volume off by %.1e at most of flat ones, %.1e of round ones, %.1e from the told",
                      off_flat, off_round, off_told);
        return text + off;
    }
};

/// What is against a piece; empty where its list makes its solid.
std::string held(const Shell &shell, const Layout &layout, Index<Model> model, const Body &body,
                 Counts &counts) {
    const Piece &piece = layout.pieces[layout.models[model].pieces.front()];
    const auto list = machining::operations_of(layout, model, body);
    const std::string json = machining::operations_json(list, shell.name, Voice());
    const auto rebuilt = operations_check::rebuilt_from(json);
    StepOptions options;
    options.seconds = 0;
    const auto step = operations_check::read_step(write_piece_step(shell, layout, piece, body, options));
    const double is = operations_check::volume_of(rebuilt.solid, rebuilt.round),
                 was = operations_check::volume_of(step.solid, rebuilt.round);
    const double off = std::abs(is - was) / was, off_told = std::abs(is - rebuilt.told.value_or(is)) / was;
    ++counts.pieces;
    for (const auto &operation : list.operations)
        ++counts.kinds[machining::key_of(operation.kind)];
    double &most = rebuilt.round ? counts.off_round : counts.off_flat;
    most = std::max(most, off), counts.off_told = std::max(counts.off_told, off_told);
    std::string wrong;
    if (off > (rebuilt.round ? same_round_volume : same_volume))
        wrong = "volume " + std::to_string(is) + " for " + std::to_string(was) + "\n";
    if (off_told > (rebuilt.round ? same_round_volume : same_volume))
        wrong += "told " + std::to_string(*rebuilt.told) + " for " + std::to_string(is) + "\n";
    if (rebuilt.told.has_value() != rebuilt.names_faces) wrong += "told volume";
    if (!rebuilt.names_faces) return ++counts.unnamed, wrong;
    ++counts.by_name;
    counts.faces += static_cast<int>(step.faces.size());
    for (const std::string &each : operations_check::differences(rebuilt, step, counts.shared))
        wrong += each + "\n";
    return wrong.empty() ? wrong : piece.tag + ": " + wrong;
}

/// A round piece takes a second: of a shell a few in every run, all where ROUNDLAY_THOROUGH asks for them.
std::vector<Index<Model>> some_of(const Layout &layout) {
    std::vector<Index<Model>> all;
    for (const auto model : layout.models.indices())
        all.push_back(model);
    constexpr std::size_t few = 6;
    if (std::getenv("ROUNDLAY_THOROUGH") || all.size() <= few) return all;
    const std::size_t every = all.size() / few, first = *rc::gen::inRange<std::size_t>(0, every);
    std::vector<Index<Model>> some;
    for (std::size_t i = first; i < all.size(); i += every)
        some.push_back(all[i]);
    return some;
}

Shell any_of_all() {
    switch (*rc::gen::element(0, 1, 2, 3, 4, 5, 6, 7, 8)) { // evenly, at whatever size
    case 0:
        return test::any_tapered_shell();
    case 1:
    case 2:
        return test::any_fitted_shell();
    case 3:
        return test::any_stepped_shell();
    case 4:
        return test::any_waned_shell();
    case 5:
        return test::any_saddle_shell();
    case 6:
        return test::any_stepped_saddle_shell();
    default:
        return test::any_family_shell();
    }
}

} // namespace

TEST_CASE("Operations make the solids of every piece of the demos, face by face by name") {
    Counts counts;
    for (const auto &entry : std::filesystem::directory_iterator(ROUNDLAY_DEMOS)) {
        if (entry.path().extension() != ".roundlay") continue;
        const auto read = read_document_file(entry.path());
        REQUIRE(read.shell);
        const Layout layout = lay_out(*read.shell);
        const Bodies bodies = bodies_of(layout);
        REQUIRE_FALSE(layout.models.empty());
        for (const auto model : layout.models.indices()) {
            INFO(entry.path().filename());
            CHECK(held(*read.shell, layout, model, bodies[model], counts) == "");
        }
    }
    std::printf("demos: %s\n", counts.words().c_str());
    CHECK(counts.by_name > 100);
}

TEST_CASE("Operations make the solids of random shells of every kind") {
    test::ThrownAway thrown(test::refusals());
    Counts counts;
    CHECK(rc::check([&] {
        const Shell whole = any_of_all();
        const Layout unmended = lay_out(whole);
        thrown.discard_refused(unmended.findings);
        test::MendsDrawn told;
        const bool mended = *rc::gen::element(false, false, true);
        const Shell shell = mended ? test::with_any_mends(whole, unmended, 3, told) : whole;
        const Layout layout = lay_out(shell);
        const Bodies bodies = bodies_of(layout);
        for (const auto model : some_of(layout)) {
            const std::string wrong = held(shell, layout, model, bodies[model], counts);
            if (!wrong.empty()) RC_FAIL(wrong);
        }
    }));
    std::printf("%s; %s\n", counts.words().c_str(), thrown.words().c_str());
    CHECK(counts.pieces > 20);
}
