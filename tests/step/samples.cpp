#include "tests/step/samples.h"

#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h"
#include "kernel/shell/shapes.h"
#include "tests/solid/hand_made.h"
#include "tests/step/hand_made_shell.h"
#include "tests/support/shells.h"

#include <algorithm>
#include <stdexcept>

namespace roundlay::test {

namespace {

Shell rectangle() {
    return hewn_shell("Birch Hollow", rectangle_plan(Length::mm(6000), Length::mm(4800)), Length::mm(200), 5,
                      Length::mm(230), Length::mm(20));
}

/// An L with a door, windows and an overhang: notched, split and stepped pieces, a re-entrant corner.
Shell with_openings() {
    Shell shell = rectangle();
    shell.walls = l_plan(Length::mm(9000), Length::mm(8000), Length::mm(4500), Length::mm(4000));
    shell.rounds.count = 11;
    shell.notch.overhang = Length::mm(150);
    shell.openings = {window("A", 2000, 0, 1000, 2000), window("A", 5000, 805, 1200, 1000),
                      window("B", 1500, 690, 900, 1100), window("F", 3000, 750, 1500, 900)};
    return shell;
}

/// Logs as they grow: thicker at the butt, so that bores open in slanted faces.
Shell tapered() {
    Shell shell = rectangle();
    shell.logs.butt_height = Length::mm(220);
    shell.logs.tip_height = Length::mm(200);
    shell.logs.tip_width = Length::mm(170);
    return shell;
}

StepSample sample(const std::string &name, const Shell &shell, const StepOptions &options = {}) {
    StepSample made{name, shell, lay_out(shell), {}, options, {}};
    if (made.layout.pieces.empty()) throw std::logic_error("sample " + name + " cannot be laid out");
    made.bodies = bodies_of(made.layout);
    return made;
}

StepSample sample(const std::string &name, const hand_made::HandMadeShell &shell) {
    return {name, shell.shell, shell.layout, shell.bodies, {}, {}};
}

/// A half-sole, a patch and a spliced end, in logs that taper.
Shell mended() {
    Shell shell = tapered();
    Mend sole;
    sole.wall = "A", sole.round = 3, sole.kind = MendKind::face, sole.face = LogSide::under;
    sole.from = Length::mm(300), sole.to = Length::mm(1300), sole.depth = Length::mm(60);
    Mend patch = sole;
    patch.round = 2, patch.kind = MendKind::let_in, patch.face = LogSide::outside;
    patch.low = Length::mm(50), patch.high = Length::mm(120);
    Mend end = sole;
    end.wall = "B", end.kind = MendKind::splice, end.face = LogSide::top;
    end.from.reset(), end.depth.reset(), end.to = Length::mm(600), end.lap = Length::mm(500);
    shell.mends = {sole, patch, end};
    return shell;
}

StepOptions by_library() {
    StepOptions options;
    options.route = StepRoute::library;
    return options;
}

/// One piece's bore runs into a pocket, so that its solid is the library's; the others are our own.
StepSample mixed() {
    StepSample made = sample("mixed", hand_made::four_walls(2, true));
    const Polyhedron hewn = hand_made::pocketed(3000, 200, 220, {{1000, 120, 60}, {1150, 200, 160}});
    made.bodies[Index<Model>(1)] =
        hand_made::body(hewn, {hand_made::through_bore(1075, 101, 220, 40)}, false);
    return made;
}

/// Names that the encoding has to spell, and one far too long.
StepSample accents() {
    Shell shell = rectangle();
    shell.name = "Bj\u00f6rkd\u00e4ng 'n\u00f6rdliche' H\u00fctte \\ \u4e38\u592a \U0001F332 ";
    for (int i = 0; i < 40; ++i)
        shell.name += "und noch l\u00e4nger ";
    shell.wood.species = "m\u00e9l\u00e8ze";
    shell.project.creator = "\u0416. O'Neil";
    shell.project.owner = "S\u00e4gewerk\n\"Nord\"";
    return sample("accents", shell);
}

StepSample otherwise(const std::string &name, const StepSample &from, StepUnit unit, StepSchema schema,
                     StepColours colours = StepColours::wall) {
    StepSample made = from;
    made.name = name;
    made.options.unit = unit, made.options.schema = schema, made.options.colours = colours;
    return made;
}

StepSample with_stock(const std::string &name, const Shell &shell, int piece) {
    StepSample made = sample(name, shell);
    made.piece = Index<Piece>(piece);
    made.options.with_stock = true;
    return made;
}

StepSample one_piece(const std::string &name, const StepSample &from, int piece) {
    StepSample made = from;
    made.name = name;
    made.piece = Index<Piece>(piece);
    return made;
}

} // namespace

std::string StepSample::write() const {
    if (!piece) return write_shell_step(shell, layout, bodies, options);
    const Piece &one = layout.pieces.at(*piece);
    return write_piece_step(shell, layout, one, bodies.at(one.model), options);
}

std::vector<StepSample> step_samples() {
    const StepSample openings = sample("openings", with_openings());
    const StepSample tapering = sample("tapered", tapered()), old_and_new = sample("old", mended());
    const StepSample library = sample("library", rectangle(), by_library());
    return {sample("rectangle", rectangle()),
            openings,
            tapering,
            otherwise("inches", tapering, StepUnit::inch, StepSchema::ap214),
            otherwise("inches-library", library, StepUnit::inch, StepSchema::ap214),
            otherwise("inches-round", sample("", round_shell()), StepUnit::inch, StepSchema::ap242),
            otherwise("ap242", openings, StepUnit::millimetre, StepSchema::ap242),
            otherwise("by-wood", old_and_new, StepUnit::millimetre, StepSchema::ap214, StepColours::wood),
            with_stock("stock", with_openings(), 0),
            with_stock("stock-tapered", tapered(), 2),
            with_stock("stock-round", round_shell(), 0),
            sample("mended", mended()),
            sample("round", round_shell()),
            library,
            sample("tapered-library", tapered(), by_library()),
            sample("alike", hand_made::four_walls(2, true)),
            mixed(),
            accents(),
            one_piece("piece", openings, 0),
            one_piece("last-piece", openings, static_cast<int>(openings.layout.pieces.size()) - 1)};
}

StepSample step_sample(const std::string &name) {
    std::vector<StepSample> all = step_samples();
    const auto found =
        std::find_if(all.begin(), all.end(), [&](const StepSample &each) { return each.name == name; });
    if (found == all.end()) throw std::logic_error("no sample " + name);
    return *found;
}

} // namespace roundlay::test
