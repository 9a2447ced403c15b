#include "modeler/window/views/plan_view.h"

#include "kernel/shell/partition_edit.h"
#include "kernel/shell/plan_edit.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/shell_edits.h"
#include "modeler/window/desk/snap.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/views/plan_places.h"
#include "modeler/window/views/tints.h"

#include <QKeyEvent>
#include <QPainter>
#include <algorithm>
#include <array>
#include <cmath>

namespace roundlay::window {

namespace {

/// A timber from above.
std::array<Vec2, 4> outline_of(const Piece &piece) {
    const double length = piece.blank.length, width = piece.blank.width;
    const auto at = [&](double x, double y) { return flat(piece.frame.to_world({x, y, 0})); };
    return {at(0, 0), at(length, 0), at(length, width), at(0, width)};
}

QString notch_words(const Shell &shell, const CornerPlace &corner, const Layout &layout) {
    NotchRule notch = shell.notch;
    for (const CornerNotch &own : shell.corners)
        if (own.first == place(layout, corner.ends).name && own.second == place(layout, corner.starts).name)
            notch = own.notch;
    switch (notch.kind) {
    case NotchKind::full_dovetail:
        return PlanView::tr("full dovetail, %1").arg(text(print_slope(notch.slope)));
    case NotchKind::half_dovetail:
        return PlanView::tr("half dovetail, %1").arg(text(print_slope(notch.slope)));
    case NotchKind::square_lap:
        return PlanView::tr("square lap");
    case NotchKind::saddle:
        return PlanView::tr("saddle");
    case NotchKind::stated:
        break;
    }
    return PlanView::tr("stated: along %1, across %2")
        .arg(text(print_slope(notch.along)), text(print_slope(notch.across)));
}

} // namespace

PlanView::PlanView(Desk &desk, Selection &selection, QWidget *parent)
    : DrawingView(parent), desk_(desk), selection_(selection) {
    setAccessibleName(tr("Plan"));
    setAccessibleDescription(
        tr("Walls from above. Page Up and Page Down choose a wall, arrow keys move it."));
    connect(&desk_, &Desk::began, this, [this] {
        dragged_ = partition_ = -1;
        from_.clear();
        draw_partition(false);
    });
    connect(&desk_, &Desk::state_changed, this, QOverload<>::of(&QWidget::update));
    connect(&selection_, &Selection::changed, this, QOverload<>::of(&QWidget::update));
}

UnitSystem PlanView::units() const {
    return desk_.units();
}

sheets::Rect PlanView::content() const {
    sheets::Rect box = sheets::Rect::nothing();
    if (const Layout *layout = layout_of(desk_))
        for (const WallPlace &w : layout->walls)
            box = joined(box, flat(w.frame.origin));
    return box;
}

void PlanView::paint(QPainter &painter) {
    if (layout_of(desk_) == nullptr) return;
    paint_timbers(painter);
    paint_walls(painter);
    paint_openings(painter);
    paint_preview(painter);
    paint_corners(painter);
    paint_dimensions(painter);
}

/// Under the walls, in which their ends lie.
void PlanView::paint_timbers(QPainter &painter) const {
    const Layout &layout = *layout_of(desk_);
    for (const Timber &timber : layout.timbers) {
        const Piece &piece = layout.pieces[static_cast<std::size_t>(timber.piece)];
        QPolygonF outline;
        for (const Vec2 corner : outline_of(piece))
            outline << to_screen(corner);
        const bool chosen = selection_.is_piece(piece.tag);
        painter.setPen(QPen(chosen ? tints().accent : tints().wood_edge, chosen ? 2.5 : 0.8));
        painter.setBrush(chosen ? tints().accent_soft : tints().hollow);
        painter.drawPolygon(outline);
    }
}

void PlanView::paint_walls(QPainter &painter) const {
    const Layout &layout = *layout_of(desk_);
    for (int i = 0; i < static_cast<int>(layout.walls.size()); ++i) {
        const WallPlace &w = place(layout, i);
        QPolygonF wall;
        for (const auto &[along, inward] : {std::pair(0.0, 0.0), std::pair(w.length, 0.0),
                                            std::pair(w.length, w.thickness), std::pair(0.0, w.thickness)})
            wall << to_screen(on_wall(w, along, inward));
        const bool chosen = selection_.is_wall(w.name) || dragged_ == i;
        const bool shown = selection_.wall() == w.name;
        painter.setPen(QPen(chosen ? tints().accent : tints().wood_edge, chosen ? 2.5 : 1.2));
        painter.setBrush(shown ? tints().end_grain : tints().wood);
        painter.drawPolygon(wall);
    }
}

void PlanView::paint_openings(QPainter &painter) const {
    const StatePtr &state = desk_.standing();
    const Shell &shell = state->job.shell;
    for (std::size_t i = 0; i < shell.openings.size(); ++i) {
        const Opening &o = shell.openings[i];
        for (const WallPlace &w : state->job.layout.walls) {
            if (w.name != o.wall) continue;
            const double from = o.from_left.mm(), to = from + o.width.mm();
            QPolygonF hole;
            hole << to_screen(on_wall(w, from, 0)) << to_screen(on_wall(w, to, 0))
                 << to_screen(on_wall(w, to, w.thickness)) << to_screen(on_wall(w, from, w.thickness));
            const bool chosen = selection_.is_opening(static_cast<int>(i));
            painter.setPen(QPen(chosen ? tints().accent : tints().wood_edge, chosen ? 2.5 : 1));
            painter.setBrush(o.kind == OpeningKind::door ? tints().paper : tints().accent_soft);
            painter.drawPolygon(hole);
            if (o.kind == OpeningKind::window)
                painter.drawLine(to_screen(on_wall(w, from, w.thickness / 2)),
                                 to_screen(on_wall(w, to, w.thickness / 2)));
        }
    }
}

void PlanView::paint_corners(QPainter &painter) const {
    constexpr double dot = 4;
    for (const CornerPlace &corner : layout_of(desk_)->corners) {
        const bool chosen = selection_.is_corner(corner.name);
        painter.setPen(QPen(chosen ? tints().accent : tints().wood_edge, chosen ? 3 : 1));
        painter.setBrush(chosen ? tints().accent_soft : tints().paper);
        const double size = chosen ? dot + 2 : dot;
        painter.drawEllipse(to_screen(corner.centre), size, size);
    }
}

void PlanView::paint_dimensions(QPainter &painter) const {
    const Layout &layout = *layout_of(desk_);
    std::vector<const WallPlace *> walls;
    for (const WallPlace &w : layout.walls)
        walls.push_back(&w);
    // The wall that is shown first, then the longest: what would lie over another's length stays away.
    std::stable_sort(walls.begin(), walls.end(), [this](const WallPlace *a, const WallPlace *b) {
        const bool a_shown = selection_.wall() == a->name, b_shown = selection_.wall() == b->name;
        return a_shown != b_shown ? a_shown : a->length > b->length;
    });
    std::vector<QRectF> taken;
    for (const WallPlace *w : walls) {
        paint_length(painter, *w, taken);
        paint_name(painter, *w, taken);
    }
}

namespace {

/// True, and taken, where nothing lay there.
bool takes(std::vector<QRectF> &taken, const QRectF &box) {
    for (const QRectF &other : taken)
        if (other.intersects(box)) return false;
    taken.push_back(box);
    return true;
}

QRectF centred(QPointF middle, QSizeF size) {
    QRectF box({}, size);
    box.moveCenter(middle);
    return box;
}

} // namespace

/// Outside of the wall; along it, as lengths stand on drawings.
void PlanView::paint_length(QPainter &painter, const WallPlace &w, std::vector<QRectF> &taken) const {
    const double off = 22 / scale();
    const QPointF from = to_screen(on_wall(w, 0, -off)), to = to_screen(on_wall(w, w.length, -off));
    const QString words = length_text(w.length, desk_.units());
    const QSizeF size = painter.fontMetrics().boundingRect(words).adjusted(-5, -2, 5, 2).size();
    const bool upright = std::abs((to - from).y()) > std::abs((to - from).x());
    if (!takes(taken, centred((from + to) / 2, upright ? size.transposed() : size))) return;
    painter.setPen(QPen(tints().faint, 1));
    painter.drawLine(from, to);
    for (const double end : {0.0, w.length})
        painter.drawLine(to_screen(on_wall(w, end, -off * 0.7)), to_screen(on_wall(w, end, -off * 1.3)));
    painter.save();
    painter.translate((from + to) / 2);
    if (upright) painter.rotate(-90);
    draw_label(painter, {}, words, tints().ink);
    painter.restore();
}

void PlanView::paint_name(QPainter &painter, const WallPlace &w, std::vector<QRectF> &taken) const {
    constexpr double inside = 16; // pixels
    const QFont plain = painter.font();
    QFont bold = plain;
    bold.setBold(true);
    painter.setFont(bold);
    const QPointF at = to_screen(on_wall(w, w.length / 2, w.thickness + inside / scale()));
    const QSizeF size = painter.fontMetrics().boundingRect(text(w.name)).adjusted(-5, -2, 5, 2).size();
    if (takes(taken, centred(at, size)))
        draw_label(painter, at, text(w.name), selection_.wall() == w.name ? tints().accent : tints().ink);
    painter.setFont(plain);
}

int PlanView::wall_at(Vec2 at) const {
    const Layout *layout = layout_of(desk_);
    if (layout == nullptr) return -1;
    for (int i = 0; i < static_cast<int>(layout->walls.size()); ++i) {
        const WallPlace &w = place(*layout, i);
        const Vec3 local = w.frame.to_local({at.x, at.y, 0});
        if (local.x >= 0 && local.x <= w.length && local.y >= -reach() && local.y <= w.thickness + reach())
            return i;
    }
    return -1;
}

int PlanView::corner_at(Vec2 at) const {
    const Layout *layout = layout_of(desk_);
    if (layout == nullptr) return -1;
    for (int i = 0; i < static_cast<int>(layout->corners.size()); ++i)
        if (length(layout->corners[static_cast<std::size_t>(i)].centre - at) <= reach()) return i;
    return -1;
}

int PlanView::timber_at(Vec2 at) const {
    const Layout *layout = layout_of(desk_);
    if (layout == nullptr) return -1;
    for (const Timber &timber : layout->timbers) {
        const Piece &piece = layout->pieces[static_cast<std::size_t>(timber.piece)];
        const Vec3 local = piece.frame.to_local({at.x, at.y, piece.frame.origin.z});
        if (local.x >= 0 && local.x <= piece.blank.length && local.y >= 0 && local.y <= piece.blank.width)
            return timber.piece;
    }
    return -1;
}

void PlanView::press(Vec2 at, Qt::KeyboardModifiers) {
    if (draws_) return press_to_draw(at);
    if (const int corner = corner_at(at); corner >= 0) {
        selection_.choose_corner(layout_of(desk_)->corners[static_cast<std::size_t>(corner)].name);
        return emit corner_pressed();
    }
    const int wall = wall_at(at);
    if (wall < 0) {
        const int timber = timber_at(at);
        return timber < 0 ? selection_.clear() : selection_.choose_piece(*layout_of(desk_), timber);
    }
    const WallPlace &w = place(*layout_of(desk_), wall);
    selection_.choose_wall(w.name);
    const Shell &shell = desk_.standing()->job.shell;
    if (const int partition = wall - static_cast<int>(shell.walls.size()); partition >= 0)
        return grab_partition(partition, at);
    const std::size_t before = (static_cast<std::size_t>(wall) + shell.walls.size() - 1) % shell.walls.size();
    const auto probe = wall_moved(shell, static_cast<std::size_t>(wall), Length::mm(1));
    if (!probe) return;
    before_length_ = shell.walls[before].length.mm();
    grows_ = probe->walls[before].length.mm() > before_length_ ? 1 : -1;
    outward_ = flat(-w.frame.y);
    grabbed_ = at;
    dragged_ = wall;
    emit hinted(tr("Drag, or type the length of wall %1").arg(text(shell.walls[before].name)));
}

/// A partition slides along the wall that it starts in.
void PlanView::grab_partition(int partition, Vec2 at) {
    const Shell &shell = desk_.standing()->job.shell;
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
    hover_corner(corner_at(at));
    const int corner = corner_at(at), wall = corner < 0 ? wall_at(at) : -1;
    setCursor(corner >= 0 ? Qt::PointingHandCursor : wall >= 0 ? Qt::SizeAllCursor : Qt::ArrowCursor);
    if (corner >= 0) {
        const Layout &layout = *layout_of(desk_);
        const CornerPlace &c = layout.corners[static_cast<std::size_t>(corner)];
        emit hinted(
            tr("Corner %1: %2").arg(text(c.name), notch_words(desk_.standing()->job.shell, c, layout)));
    } else if (wall >= 0) {
        emit hinted(tr("Wall %1").arg(text(place(*layout_of(desk_), wall).name)));
    } else {
        const int timber = timber_at(at);
        emit hinted(timber < 0 ? QString()
                               : text(layout_of(desk_)->pieces[static_cast<std::size_t>(timber)].tag));
    }
}

void PlanView::drag(Vec2 at, Qt::KeyboardModifiers keys) {
    if (!from_.empty()) return drag_drawn(at, keys);
    const double outward = dot(at - grabbed_, outward_);
    if (partition_ >= 0) {
        const Shell &shell = desk_.standing()->job.shell;
        const double free = keys & Qt::AltModifier ? 1 : grid_step(units());
        std::vector<double> places;
        for (const Partition &p : shell.partitions)
            if (!(keys & Qt::AltModifier) && p.name != shell.partitions[static_cast<std::size_t>(partition_)].name)
                places.push_back(p.from_left.mm());
        return move_partition(partition_, snapped(before_length_ + outward, places, reach(), free).at, false);
    }
    std::vector<double> lengths;
    if (!(keys & Qt::AltModifier))
        for (const Wall &wall : desk_.standing()->job.shell.walls)
            lengths.push_back(wall.length.mm());
    const double grid = keys & Qt::AltModifier ? 1 : grid_step(units());
    const double wanted = snapped(before_length_ + grows_ * outward, lengths, reach(), grid).at;
    move_wall(grows_ * (wanted - before_length_), false);
}

void PlanView::move_wall(double outward, bool as_edit) {
    const auto wall = static_cast<std::size_t>(dragged_ >= 0 ? dragged_ : chosen_wall());
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
    std::string name;
    const bool done = desk_.edit(tr("Add partition"), [&](const Shell &s) {
        auto next = with_fitting_partition(s, wall);
        if (next) name = next->partitions.back().name;
        return next;
    });
    if (done) selection_.choose_wall(name);
}

void PlanView::hover_corner(int corner) {
    const std::string name =
        corner < 0 ? std::string() : layout_of(desk_)->corners[static_cast<std::size_t>(corner)].name;
    if (name != hovered_) emit corner_hovered(hovered_ = name);
}

int PlanView::chosen_partition() const {
    const StatePtr &state = desk_.standing();
    for (int i = 0; state && i < static_cast<int>(state->job.shell.partitions.size()); ++i)
        if (selection_.is_wall(state->job.shell.partitions[static_cast<std::size_t>(i)].name)) return i;
    return -1;
}

void PlanView::remove_chosen() {
    const int partition = chosen_partition();
    if (partition < 0) return;
    const std::string name = desk_.standing()->job.shell.partitions[static_cast<std::size_t>(partition)].name;
    selection_.clear();
    desk_.edit(tr("Remove partition"),
               [&](const Shell &s) { return std::optional(without_partition(s, name)); });
}

void PlanView::release() {
    if (!from_.empty()) return finish_drawing();
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
    if (!from_.empty())
        draw_to(length.mm());
    else if (partition_ >= 0)
        move_partition(partition_, length.mm(), false);
    else
        move_wall(grows_ * (length.mm() - before_length_), false);
    release();
}

int PlanView::chosen_wall() const {
    const Layout *layout = layout_of(desk_);
    for (int i = 0; layout != nullptr && i < static_cast<int>(layout->walls.size()); ++i)
        if (selection_.is_wall(place(*layout, i).name)) return i;
    return -1;
}

void PlanView::nudge(int steps) {
    const StatePtr &state = desk_.standing();
    const int wall = chosen_wall();
    if (const int partition = chosen_partition(); partition >= 0) {
        const Partition &p = state->job.shell.partitions[static_cast<std::size_t>(partition)];
        return move_partition(partition, p.from_left.mm() + steps * grid_step(units()), true);
    }
    if (wall >= 0 && wall < static_cast<int>(state->job.shell.walls.size()))
        move_wall(steps * grid_step(units()), true);
}

void PlanView::choose_next(int step) {
    const Layout *layout = layout_of(desk_);
    if (layout == nullptr) return;
    const int count = static_cast<int>(layout->walls.size());
    const int next = (std::max(chosen_wall(), step > 0 ? -1 : 0) + step + count) % count;
    selection_.choose_wall(place(*layout, next).name);
}

void PlanView::leaveEvent(QEvent *event) {
    DrawingView::leaveEvent(event);
    hover_corner(-1);
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
    case Qt::Key_PageDown:
        return choose_next(1);
    case Qt::Key_PageUp:
        return choose_next(-1);
    default:
        DrawingView::keyPressEvent(event);
    }
}

} // namespace roundlay::window
