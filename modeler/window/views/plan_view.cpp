#include "modeler/window/views/plan_view.h"

#include "kernel/design/round_figures.h"
#include "kernel/design/shell_edits.h"
#include "kernel/shell/partition_edit.h"
#include "kernel/shell/plan_edit.h"
#include "modeler/window/desk/faults.h"
#include "modeler/window/desk/notch_words.h"
#include "modeler/window/desk/snap.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/views/footprint.h"
#include "modeler/window/views/marks.h"
#include "modeler/window/views/plan_places.h"
#include "modeler/window/views/stand_banner.h"
#include "modeler/window/views/tints.h"
#include "modeler/window/views/view_keys.h"

#include <QKeyEvent>
#include <algorithm>
#include <cmath>

namespace roundlay::window {

namespace {

QString notch_words(const Shell &shell, const CornerPlace &corner, const Layout &layout) {
    NotchRule notch = shell.notch;
    for (const CornerNotch &own : shell.corners)
        if (own.first == place(layout, corner.ends).name && own.second == place(layout, corner.starts).name)
            notch = own.notch;
    const QString kind = notch_word(notch.kind);
    if (takes_slope(notch.kind)) return PlanView::tr("%1, %2").arg(kind, text(print_slope(notch.slope)));
    if (notch.kind != NotchKind::stated) return kind;
    return PlanView::tr("stated: along %1, across %2")
        .arg(text(print_slope(notch.along)), text(print_slope(notch.across)));
}

} // namespace

PlanView::PlanView(Desk &desk, Selection &selection, QWidget *parent)
    : DrawingView(parent), desk_(desk), selection_(selection) {
    setAccessibleName(tr("Plan"));
    setAccessibleDescription(
        tr("Walls from above. Page Up and Page Down choose a wall, arrow keys move it."));
    new StandBanner(desk_, this, StandBanner::Shows::as_stated);
    connect(&desk_, &Desk::began, this, [this] {
        dragged_ = partition_ = -1;
        footprints_.clear();
        from_.clear();
        draw_partition(false);
    });
    connect(&desk_, &Desk::state_changed, this, [this] {
        footprints_ = desk_.drawn() ? footprints(*desk_.drawn()) : decltype(footprints_)();
        say_why();
        update();
    });
    connect(&selection_, &Selection::changed, this, QOverload<>::of(&QWidget::update));
}

UnitSystem PlanView::units() const {
    return desk_.units();
}

bool PlanView::is_old() const {
    return desk_.drawn_is_old();
}

/// While a hand moves something where it does not fit.
void PlanView::say_why() {
    if (dragged_ < 0 && partition_ < 0) return;
    if (const QString why = why_not(*desk_.state()); !why.isEmpty()) emit hinted(why);
}

std::vector<LegendEntry> PlanView::legend() const {
    const auto plain = [](const QColor &fill, const QString &words) {
        return LegendEntry{fill, tints().wood_edge, Qt::NoBrush, {}, words};
    };
    return {plain(tints().wood, tr("wall")),
            plain(tints().end_grain, tr("wall in the elevation")),
            plain(tints().accent_soft, tr("window")),
            plain(tints().paper, tr("door")),
            plain(tints().hollow, tr("timber of a floor")),
            chosen_entry(),
            fault_entry()};
}

void PlanView::press(Vec2 at, Qt::KeyboardModifiers keys) {
    if (draws_) return from_.empty() ? press_to_draw(at, keys) : press_to_end(at, keys);
    if (const auto corner = corner_at(at)) {
        selection_.choose_corner(layout_of(desk_)->corners[*corner].name);
        return emit corner_pressed();
    }
    if (const int opening = opening_at(at); opening >= 0)
        return selection_.choose_opening(shell_of(desk_), opening);
    const auto wall = wall_at(at);
    if (!wall) {
        const auto timber = timber_at(at);
        return timber ? selection_.choose_piece(*layout_of(desk_), *timber) : selection_.clear();
    }
    selection_.choose_wall(place(*layout_of(desk_), *wall).name);
    const int outer = count_of(shell_of(desk_).walls), grabbed = wall->number();
    grabbed < outer ? grab_wall(*wall, at) : grab_partition(grabbed - outer, at);
}

void PlanView::grab_wall(Index<WallPlace> wall, Vec2 at) {
    const Shell &shell = shell_of(desk_);
    const std::size_t before = (wall.at() + shell.walls.size() - 1) % shell.walls.size();
    const auto probe = wall_moved(shell, wall.at(), Length::mm(1));
    if (!probe) return;
    before_length_ = shell.walls[before].length.mm();
    grows_ = probe->walls[before].length.mm() > before_length_ ? 1 : -1;
    outward_ = flat(-place(*layout_of(desk_), wall).frame.y);
    grabbed_ = at;
    dragged_ = wall.number();
    emit hinted(tr("Drag, or type the length of wall %1").arg(text(shell.walls[before].name)));
}

/// A partition slides along the wall that it starts in.
void PlanView::grab_partition(int partition, Vec2 at) {
    const Shell &shell = shell_of(desk_);
    const Partition &p = shell.partitions[static_cast<std::size_t>(partition)];
    for (const WallPlace &w : layout_of(desk_)->walls)
        if (w.name == p.from) outward_ = flat(w.frame.x);
    before_length_ = p.from_left.mm();
    grows_ = 1;
    grabbed_ = at;
    partition_ = partition;
    emit hinted(tr("Drag, or type how far from the left of wall %1").arg(text(p.from)));
}

void PlanView::hover(Vec2 at) {
    if (draws_) return hover_to_draw(at);
    const auto corner = corner_at(at);
    hover_corner(corner);
    const int opening = corner ? -1 : opening_at(at);
    const auto wall = corner || opening >= 0 ? std::nullopt : wall_at(at);
    setCursor(corner || opening >= 0 ? Qt::PointingHandCursor : wall ? Qt::SizeAllCursor : Qt::ArrowCursor);
    if (corner) {
        const Layout &layout = *layout_of(desk_);
        const CornerPlace &c = layout.corners[*corner];
        emit hinted(tr("Corner %1: %2").arg(text(c.name), notch_words(shell_of(desk_), c, layout)));
    } else if (opening >= 0) {
        emit hinted(text(shell_of(desk_).openings[static_cast<std::size_t>(opening)].name));
    } else if (wall) {
        emit hinted(tr("Wall %1").arg(text(place(*layout_of(desk_), *wall).name)));
    } else {
        const auto timber = timber_at(at);
        emit hinted(timber ? text(layout_of(desk_)->pieces[*timber].tag) : QString());
    }
}

void PlanView::drag(Vec2 at, Qt::KeyboardModifiers keys) {
    if (!from_.empty()) return drag_drawn(at, keys);
    const double outward = dot(at - grabbed_, outward_);
    if (partition_ >= 0) return drag_partition(before_length_ + outward, keys);
    std::vector<double> lengths;
    if (!lets_go(keys))
        for (const Wall &wall : shell_of(desk_).walls)
            lengths.push_back(wall.length.mm());
    const double grid = lets_go(keys) ? 1 : grid_step(units());
    const double wanted = snapped(before_length_ + grows_ * outward, lengths, reach(), grid).at;
    move_wall(grows_ * (wanted - before_length_), false);
}

/// It comes to rest level with the others.
void PlanView::drag_partition(double along, Qt::KeyboardModifiers keys) {
    const Shell &shell = shell_of(desk_);
    const bool free = lets_go(keys);
    std::vector<double> places;
    for (const Partition &p : shell.partitions)
        if (!free && p.name != shell.partitions[static_cast<std::size_t>(partition_)].name)
            places.push_back(p.from_left.mm());
    move_partition(partition_, snapped(along, places, reach(), free ? 1 : grid_step(units())).at, false);
}

void PlanView::move_wall(double outward, bool as_edit) {
    const std::size_t wall = dragged_ >= 0 ? static_cast<std::size_t>(dragged_) : chosen_wall()->at();
    const Desk::ShellEdit change = [wall, outward](const Shell &s) {
        return wall_moved(s, wall, Length::mm(outward));
    };
    if (as_edit)
        desk_.edit(tr("Move wall"), change);
    else
        desk_.show(change);
}

void PlanView::move_partition(int partition, double from_left, bool as_edit) {
    const Desk::ShellEdit change = [partition, from_left](const Shell &s) {
        return partition_moved(s, static_cast<std::size_t>(partition), Length::mm(from_left));
    };
    if (as_edit)
        desk_.edit(tr("Move partition"), change);
    else
        desk_.show(change);
}

void PlanView::add_partition() {
    const StatePtr &state = desk_.standing();
    if (!state) return;
    const std::string wall = selection_.wall();
    const auto name = std::make_shared<std::string>();
    desk_.search(
        tr("Add partition"),
        [wall, name](const Shell &s) {
            auto next = with_fitting_partition(s, wall);
            if (next) *name = next.shell->partitions.back().name;
            return next;
        },
        this,
        [this, name](const QString &why) {
            if (why.isEmpty()) selection_.choose_wall(*name);
        });
}

void PlanView::hover_corner(std::optional<Index<CornerPlace>> corner) {
    const std::string name = corner ? layout_of(desk_)->corners[*corner].name : std::string();
    if (name != hovered_) emit corner_hovered(hovered_ = name);
}

int PlanView::chosen_partition() const {
    const StatePtr &state = desk_.drawn();
    for (int i = 0; state && i < static_cast<int>(state->job.shell.partitions.size()); ++i)
        if (selection_.is_wall(state->job.shell.partitions[static_cast<std::size_t>(i)].name)) return i;
    return -1;
}

void PlanView::remove_chosen() {
    const int partition = chosen_partition();
    if (partition < 0) return;
    const std::string name = shell_of(desk_).partitions[static_cast<std::size_t>(partition)].name;
    selection_.clear();
    desk_.edit(tr("Remove partition"),
               [&](const Shell &s) { return std::optional(without_partition(s, name)); });
}

void PlanView::release() {
    if (!from_.empty()) return let_go_of_drawn();
    const QString deed = partition_ >= 0 ? tr("Move partition") : tr("Move wall");
    dragged_ = partition_ = -1;
    desk_.settle(deed);
}

void PlanView::give_up() {
    dragged_ = partition_ = -1;
    from_.clear();
    desk_.cancel();
    draw_partition(false);
    update();
}

void PlanView::take_typed(Length length) {
    if (!is_dragging()) return;
    if (!from_.empty()) {
        draw_to(length.mm());
        return finish_drawing();
    }
    if (partition_ >= 0)
        move_partition(partition_, length.mm(), false);
    else
        move_wall(grows_ * (length.mm() - before_length_), false);
    release();
}

std::optional<Index<WallPlace>> PlanView::chosen_wall() const {
    const Layout *layout = layout_of(desk_);
    if (layout == nullptr) return std::nullopt;
    for (const auto i : layout->walls.indices())
        if (selection_.is_wall(place(*layout, i).name)) return i;
    return std::nullopt;
}

void PlanView::nudge(int steps) {
    const StatePtr &state = desk_.drawn();
    const auto wall = chosen_wall();
    if (const int partition = chosen_partition(); partition >= 0) {
        const Partition &p = state->job.shell.partitions[static_cast<std::size_t>(partition)];
        return move_partition(partition, p.from_left.mm() + steps * grid_step(units()), true);
    }
    if (wall && wall->at() < state->job.shell.walls.size()) move_wall(steps * grid_step(units()), true);
}

bool PlanView::choose_next(int step) {
    const Layout *layout = layout_of(desk_);
    if (layout == nullptr) return true;
    const int count = count_of(layout->walls), before_all = step > 0 ? -1 : 0;
    const auto chosen = chosen_wall();
    const int next = ((chosen ? chosen->number() : before_all) + step + count) % count;
    selection_.choose_wall(place(*layout, Index<WallPlace>(next)).name);
    return true;
}

void PlanView::leaveEvent(QEvent *event) {
    DrawingView::leaveEvent(event);
    hover_corner(std::nullopt);
}

void PlanView::keyPressEvent(QKeyEvent *event) {
    constexpr int many = 10;
    const int steps = event->modifiers() & Qt::ShiftModifier ? many : 1;
    if (event->key() == Qt::Key_Escape && draws_ && !is_dragging()) return draw_partition(false);
    switch (event->key()) {
    case Qt::Key_Up:
    case Qt::Key_Right:
        return nudge(steps);
    case Qt::Key_Down:
    case Qt::Key_Left:
        return nudge(-steps);
    default:
        DrawingView::keyPressEvent(event);
    }
}

} // namespace roundlay::window
