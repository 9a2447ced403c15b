// Partitions that a hand draws in the plan.
#include "kernel/design/round_figures.h"
#include "kernel/design/shell_edits.h"
#include "kernel/design/stated_plan.h"
#include "kernel/layout/lay_out.h"
#include "kernel/shell/partition_edit.h"
#include "modeler/window/desk/faults.h"
#include "modeler/window/desk/finding_words.h"
#include "modeler/window/desk/snap.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/views/plan_places.h"
#include "modeler/window/views/plan_view.h"
#include "modeler/window/views/tints.h"
#include "modeler/window/views/view_keys.h"

#include <QPainter>

namespace roundlay::window {

namespace {

std::vector<Vec2> outline_of(const WallPlace &w) {
    return {on_wall(w, 0, 0), on_wall(w, w.length, 0), on_wall(w, w.length, w.thickness),
            on_wall(w, 0, w.thickness)};
}

/// What layout says against it, first of all.
QString why_it_does_not_fit(const Shell &shell) {
    for (const Finding &finding : lay_out_to_try(shell).findings)
        if (finding.weight == Weight::error) return sentence_text(finding, shell.units);
    return PlanView::tr("it does not fit there");
}

} // namespace

void PlanView::draw_partition(bool on) {
    draft_ = {};
    if (on == draws_) return;
    draws_ = on && desk_.standing() != nullptr;
    setCursor(draws_ ? Qt::CrossCursor : Qt::ArrowCursor);
    if (draws_) setFocus();
    emit hinted(
        draws_ ? tr("Click on the wall where the partition starts, then on the one where it ends; or drag "
                    "it. Digits type how far from the wall's left; Escape leaves")
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
        for (const Partition &p : shell_of(desk_).partitions)
            if (p.from == wall) places.push_back(p.from_left.mm());
    }
    if (lets_go(keys)) return to_shown(along, units());
    return snapped(along, places, reach(), grid_step(units())).at;
}

/// From the shell as it was before the drawing began.
PlanView::Draft PlanView::draft_at(const std::string &wall, double from_left, const std::string &to) const {
    Draft draft;
    const auto drawn = from_.empty() ? std::optional(shell_of(desk_)) : desk_.before_drag();
    if (!drawn) return draft;
    const auto stated = with_partition(*drawn, wall, Length::mm(from_left), to);
    if (!stated) {
        draft.why = tr("no wall lies across from wall %1 there").arg(text(wall));
        return draft;
    }
    draft.to = stated->partitions.back().to;
    draft.outline = outline_of(stated_plan(*stated).walls.back());
    draft.shell = with_partition_there(*drawn, wall, Length::mm(from_left), to);
    if (!draft.shell) draft.why = why_it_does_not_fit(*stated);
    return draft;
}

void PlanView::show_draft(const Draft &draft, const std::string &wall, double from_left) {
    draft_ = draft;
    const QString place =
        tr("A partition %1 from the left of wall %2").arg(length_text(from_left, units()), text(wall));
    if (!draft.why.isEmpty())
        emit hinted(tr("%1 does not fit: %2").arg(place, draft.why));
    else if (from_.empty())
        emit hinted(place);
    else
        emit hinted(tr("%1, up to wall %2").arg(place, text(draft.to)));
    update();
}

/// Partitions start in outer walls.
std::optional<Index<WallPlace>> PlanView::outer_wall_at(Vec2 at) const {
    const auto wall = wall_at(at);
    return wall && wall->at() < shell_of(desk_).walls.size() ? wall : std::nullopt;
}

void PlanView::hover_to_draw(Vec2 at) {
    if (!from_.empty()) return; // one end stands; the other is where the next click says
    const auto wall = outer_wall_at(at);
    if (!wall) {
        draft_ = {};
        return update();
    }
    const std::string name = place(*layout_of(desk_), *wall).name;
    const double along = place_along(name, at, {});
    show_draft(draft_at(name, along), name, along);
}

/// What fits is seen as a wall already; what does not stays an outline.
void PlanView::paint_preview(QPainter &painter) const {
    const bool fits = draft_.shell.has_value();
    if (draft_.outline.empty() || (fits && !from_.empty())) return;
    QPolygonF outline;
    for (const Vec2 p : draft_.outline)
        outline << to_screen(p);
    const QColor &colour = fits ? tints().accent : tints().error;
    painter.setPen(QPen(colour, 1.5, Qt::DashLine));
    painter.setBrush(fits ? QBrush(tints().accent_soft) : QBrush(colour, Qt::DiagCrossPattern));
    painter.drawPolygon(outline);
}

/// Why it does not fit, at the foot of the plan: in the status line there is seldom room for it.
void PlanView::paint_why(QPainter &painter) const {
    constexpr int away = 8, around = 6, wraps = Qt::AlignLeft | Qt::TextWordWrap;
    if (draft_.why.isEmpty()) return;
    const QRect room = rect().adjusted(away + around, 0, -away - around, 0);
    QRect words = painter.fontMetrics().boundingRect(room, wraps, draft_.why);
    words.moveBottomLeft({room.left(), height() - away - around});
    painter.setPen(QPen(tints().error, 1));
    painter.setBrush(tints().paper);
    painter.drawRect(words.adjusted(-around, -around, around, around));
    painter.setPen(tints().ink);
    painter.drawText(words, wraps, draft_.why);
}

void PlanView::press_to_draw(Vec2 at, Qt::KeyboardModifiers keys) {
    const auto wall = outer_wall_at(at);
    if (!wall) return emit hinted(tr("A partition starts in an outer wall: click on one; Escape leaves"));
    const std::string name = place(*layout_of(desk_), *wall).name;
    desk_.show([](const Shell &shell) { return std::optional(shell); }); // from here on it can be given up
    from_ = name;
    dragged_far_ = false;
    draw_to(place_along(from_, at, keys));
}

/// The one that is being drawn, which stands in the plan where it fits.
bool PlanView::is_drawn(const std::string &partition) const {
    return draft_.shell && draft_.shell->partitions.back().name == partition;
}

/// On the wall where it ends or in the room before it; on the first wall it starts elsewhere.
void PlanView::press_to_end(Vec2 at, Qt::KeyboardModifiers keys) {
    const auto wall = wall_at(at);
    const std::string name = wall ? place(*layout_of(desk_), *wall).name : std::string();
    if (name == from_) return draw_to(place_along(from_, at, keys));
    const auto start = wall_named(*layout_of(desk_), from_);
    const bool ahead = start && place(*layout_of(desk_), *start).frame.to_local({at.x, at.y, 0}).y > 0;
    const bool own = wall && wall->at() >= shell_of(desk_).walls.size();
    if (own && ahead && !is_drawn(name)) draw_to(from_left_, name); // it ends there and does not run through
    if ((wall && !own && name != draft_.to) || !ahead)
        return emit hinted(
            tr("Square to wall %1 it ends in wall %2: click there, or on wall %1 to start elsewhere")
                .arg(text(from_), text(draft_.to)));
    finish_drawing();
}

void PlanView::drag_drawn(Vec2 at, Qt::KeyboardModifiers keys) {
    if (!dragged_far_ && !went_far()) return; // still a click
    dragged_far_ = true;
    draw_to(place_along(from_, at, keys));
}

/// Where the layout does not take it, it is outlined, and the hint says why.
void PlanView::draw_to(double from_left, const std::string &to) {
    from_left_ = from_left;
    const Draft draft = draft_at(from_, from_left, to);
    desk_.show([&](const Shell &shell) { return std::optional(draft.shell.value_or(shell)); });
    show_draft(draft, from_, from_left);
}

/// A press without a drag was the first of two clicks.
void PlanView::let_go_of_drawn() {
    if (dragged_far_) finish_drawing();
}

/// What does not fit is not done: it goes on being drawn, with the reason in sight.
void PlanView::finish_drawing() {
    dragged_far_ = false;
    if (!draft_.shell) return show_draft(draft_, from_, from_left_);
    const std::string name = draft_.shell->partitions.back().name;
    from_.clear();
    desk_.settle(tr("Draw partition"));
    draw_partition(false);
    selection_.choose_wall(name);
}

} // namespace roundlay::window
