// Partitions that a hand draws in the plan.
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/shell_edits.h"
#include "modeler/window/desk/snap.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/views/plan_places.h"
#include "modeler/window/views/plan_view.h"
#include "modeler/window/views/tints.h"

#include <QPainter>

namespace roundlay::window {

void PlanView::draw_partition(bool on) {
    preview_.clear();
    if (on == draws_) return;
    draws_ = on && desk_.standing() != nullptr;
    setCursor(draws_ ? Qt::CrossCursor : Qt::ArrowCursor);
    if (draws_) setFocus();
    emit hinted(
        draws_ ? tr("Press on the wall where the partition starts, and drag; digits type how far from its "
                    "left; Escape leaves")
               : QString());
    emit drawing_changed(draws_);
    update();
}

/// From the wall's left, at the middle of the wall, level with another partition, or on the grid.
double PlanView::place_along(const std::string &wall, Vec2 at, Qt::KeyboardModifiers keys) const {
    std::vector<double> places;
    double along = 0;
    for (const WallPlace &w : layout_of(desk_)->walls) {
        if (w.name != wall) continue;
        along = w.frame.to_local({at.x, at.y, 0}).x;
        places.push_back(w.length / 2);
        for (const Partition &p : desk_.standing()->job.shell.partitions)
            if (p.from == wall) places.push_back(p.from_left.mm());
    }
    if (keys & Qt::AltModifier) return to_shown(along, units());
    return snapped(along, places, reach(), grid_step(units())).at;
}

void PlanView::hover_to_draw(Vec2 at) {
    preview_.clear();
    const int wall = wall_at(at);
    const Shell &shell = desk_.standing()->job.shell;
    if (wall >= 0 && wall < static_cast<int>(shell.walls.size())) {
        const std::string &name = place(*layout_of(desk_), wall).name;
        const double along = place_along(name, at, {});
        if (const auto next = with_partition_there(shell, name, Length::mm(along))) {
            const Layout layout = lay_out(*next);
            const WallPlace &w = layout.walls.back();
            preview_ = {on_wall(w, 0, 0), on_wall(w, w.length, 0), on_wall(w, w.length, w.thickness),
                        on_wall(w, 0, w.thickness)};
        }
        emit hinted(
            tr("A partition %1 from the left of wall %2").arg(length_text(along, units()), text(name)));
    }
    update();
}

void PlanView::paint_preview(QPainter &painter) const {
    if (preview_.empty() || !from_.empty()) return;
    QPolygonF outline;
    for (const Vec2 p : preview_)
        outline << to_screen(p);
    painter.setPen(QPen(tints().accent, 1.5, Qt::DashLine));
    painter.setBrush(tints().accent_soft);
    painter.drawPolygon(outline);
}

void PlanView::press_to_draw(Vec2 at) {
    const int wall = wall_at(at);
    if (wall < 0 || wall >= static_cast<int>(desk_.standing()->job.shell.walls.size())) return;
    from_ = place(*layout_of(desk_), wall).name;
    draw_to(place_along(from_, at, {}));
}

void PlanView::drag_drawn(Vec2 at, Qt::KeyboardModifiers keys) {
    draw_to(place_along(from_, at, keys));
}

/// Where the layout does not take it, it stays where it was last.
void PlanView::draw_to(double from_left) {
    desk_.show([&](const Shell &shell) { return with_partition_there(shell, from_, Length::mm(from_left)); });
    emit hinted(
        tr("A partition %1 from the left of wall %2").arg(length_text(from_left, units()), text(from_)));
}

void PlanView::finish_drawing() {
    from_.clear();
    desk_.settle(tr("Draw partition"));
    draw_partition(false);
    const ReadResult now = desk_.document().read();
    if (now.shell && !now.shell->partitions.empty())
        selection_.choose_wall(now.shell->partitions.back().name);
}

} // namespace roundlay::window
