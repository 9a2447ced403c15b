#include "exporters/machines/changes.h"

#include "exporters/machining/operations.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h"
#include "kernel/shell/finding.h"
#include "kernel/stock/lifted.h"
#include "kernel/trade/weight.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>

namespace roundlay::machines {

namespace {

struct Change {
    Said what;
    Shell shell;
};

/// What has a notch of its own is changed too: one odd corner would keep its logs from the machine.
template <typename Do> void each_notch(Shell &shell, Do &&change) {
    change(shell.notch);
    for (CornerNotch &corner : shell.corners)
        change(corner.notch);
}

void forget_own_tails(Shell &shell) {
    for (OwnLog &log : shell.own_logs)
        log.notch.kind = {}, log.notch.slope = {}, log.notch.along = {}, log.notch.across = {};
}

std::optional<double> nearest_drill(const Machine &machine, double wanted) {
    std::optional<double> best;
    for (const Tool &tool : machine.tools)
        if (tool.shape == ToolShape::drill &&
            (!best || std::abs(tool.diameter - wanted) < std::abs(*best - wanted)))
            best = tool.diameter;
    return best;
}

void add_bores(std::vector<Change> &all, const Machine &machine, const Shell &shell) {
    const auto drill = nearest_drill(machine, shell.pegs.diameter.mm());
    if (!drill) return;
    Change change{said("pegs and bores of %1", in_mm(*drill)), shell};
    change.shell.pegs.diameter = Length::mm(*drill);
    for (StatedBore &bore : change.shell.bores)
        bore.diameter = Length::mm(*drill);
    if (change.shell != shell) all.push_back(std::move(change));
}

void add_boring_in_place(std::vector<Change> &all, const Shell &shell) {
    if (!shell.pegs.wanted || shell.pegs.bored == PegBoring::in_place) return;
    Change change{said("pegs that are bored in place, as each log is laid"), shell};
    change.shell.pegs.bored = PegBoring::in_place;
    change.shell.pegs.draw = {};
    all.push_back(std::move(change));
}

void add_slopes(std::vector<Change> &all, const Machine &machine, const Shell &shell) {
    if (shell.notch.kind == NotchKind::saddle) return;
    if (machine.tilt > 0) {
        const int run = static_cast<int>(std::ceil(1 / std::tan(machine.tilt * std::numbers::pi / 180)));
        const Slope slope = Slope::rise_per_run(1.0 / run);
        Change change{said("tails that slope by 1:%1", run), shell};
        each_notch(change.shell, [&](NotchRule &notch) { notch.slope = std::min(notch.slope, slope); });
        if (change.shell != shell) all.push_back(std::move(change));
    }
    Change level{said("level laps instead of tails, held by pegs alone"), shell};
    each_notch(level.shell, [](NotchRule &notch) { notch.kind = NotchKind::square_lap; });
    forget_own_tails(level.shell);
    if (level.shell != shell) all.push_back(std::move(level));
}

void add_grooves(std::vector<Change> &all, const Machine &machine, const Shell &shell) {
    if (!(shell.trim.spline_depth.mm() > 0)) return;
    std::optional<double> thinnest;
    for (const Tool &tool : machine.tools)
        if (tool.shape == ToolShape::flat && (!thinnest || tool.diameter < *thinnest))
            thinnest = tool.diameter;
    if (!thinnest || *thinnest <= shell.trim.spline_width.mm()) return;
    Change change{said("grooves for splines %1 wide", in_mm(*thinnest)), shell};
    change.shell.trim.spline_width = Length::mm(*thinnest);
    all.push_back(std::move(change));
}

void add_pockets(std::vector<Change> &all, const Shell &shell) {
    Change change{said("plain pockets for the joists"), shell};
    for (Floor &floor : change.shell.floors)
        floor.pocket = PocketKind::square;
    if (change.shell != shell) all.push_back(std::move(change));
}

std::vector<Change> to_try(const Machine &machine, const Shell &shell) {
    std::vector<Change> all;
    add_bores(all, machine, shell);
    add_boring_in_place(all, shell);
    add_slopes(all, machine, shell);
    add_grooves(all, machine, shell);
    add_pockets(all, shell);
    return all;
}

} // namespace

std::vector<ModelMaking> makings_of(const Machine &machine, const Shell &shell, const Layout &layout) {
    std::vector<ModelMaking> all;
    const Bodies bodies = bodies_of(layout);
    for (const Index<Model> model : layout.models.indices()) {
        ModelMaking one;
        one.list = machining::operations_of(layout, model, bodies[model]);
        const Blank &size = one.list.stock.stock.size;
        const Piece &piece = layout.pieces[layout.models[model].pieces.front()];
        const WeightEstimate weight =
            weigh(size.length * size.width * size.height, weighed_wood(shell, piece));
        one.weighed = weight.known;
        one.making =
            making_of(machine, one.list, weight.known ? std::optional(weight.high_kg) : std::nullopt);
        all.push_back(std::move(one));
    }
    return all;
}

std::map<std::string, Said> changes_that_help(const Machine &machine, const Shell &shell,
                                              const std::vector<ModelMaking> &now) {
    std::set<std::string> wanted;
    for (const ModelMaking &model : now)
        if (model.making.verdict == Verdict::not_made && model.making.against.empty())
            wanted.insert(model.list.tag);
    std::map<std::string, Said> help;
    if (wanted.empty()) return help;
    for (const Change &change : to_try(machine, shell)) {
        if (help.size() == wanted.size()) break;
        const Layout layout = lay_out(change.shell);
        if (has_errors(layout.findings)) continue;
        for (const ModelMaking &model : makings_of(machine, change.shell, layout))
            if (model.making.verdict != Verdict::not_made)
                for (const std::string &tag : model.list.pieces)
                    if (wanted.contains(tag)) help.emplace(tag, change.what);
    }
    return help;
}

} // namespace roundlay::machines
