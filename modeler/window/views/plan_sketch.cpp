#include "modeler/window/views/plan_sketch.h"

#include "kernel/layout/plan/meetings.h"
#include "modeler/window/desk/snap.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/views/tints.h"
#include "modeler/window/views/view_keys.h"
#include "modeler/window/views/way_edit.h"

#include <QGuiApplication>
#include <QKeyEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>
#include <numbers>

namespace roundlay::window {

namespace {

constexpr double sheet_width = 14'000, sheet_depth = 10'000; // mm, before anything is drawn
constexpr int edge = 24;                                     // pixels
constexpr double same = 1e-6;                                // mm
constexpr double straight = 1e-6;                            // sine of an angle that no hand lays out

Vec2 flat(const PlanPoint &p) {
    return {p.east.mm(), p.north.mm()};
}

/// Walls come in round lengths: 100 mm or 4 in.
double wall_step(UnitSystem units) {
    constexpr double metric = 100, inches = 4;
    return units == UnitSystem::metric ? metric : inches * mm_per_inch;
}

/// How walls come to run at a slant.
QString slanted_words(UnitSystem units) {
    return PlanSketch::tr(
               "Walls at a slant: hold Shift, or tick Slanted walls; or type length and direction, %1, in "
               "degrees of the compass: 0 north, 90 east, 180 south, 270 west.")
        .arg(units == UnitSystem::metric ? PlanSketch::tr("4500 mm at 135")
                                         : PlanSketch::tr("14' 9\" at 135"));
}

} // namespace

PlanSketch::PlanSketch(QWidget *parent) : PlanSketch(parent, new WayEdit) {}

PlanSketch::PlanSketch(QWidget *parent, WayEdit *typed) : DrawingView(parent, typed), typed_(typed) {
    constexpr QSize least(280, 200);
    setMinimumSize(least);
    setAccessibleName(tr("Sketch of the plan"));
    set_units(units_);
}

/// Who reads feet beside a wall types feet: what a bare number means is told before.
void PlanSketch::set_units(UnitSystem units) {
    units_ = units;
    setAccessibleDescription(tr("Click corners one after another; digits type an exact length, Enter closes, "
                                "Backspace takes the last corner back. Escape clears, and Backspace brings "
                                "all of it back.") +
                             QStringLiteral("\n\n") + bare_number_words(units) + QStringLiteral("\n\n") +
                             slanted_words(units));
    update();
}

QString PlanSketch::what_to_type() const {
    return slanted_words(units_);
}

void PlanSketch::slant(bool on) {
    slants_ = on;
    if (drawing_) setFocus(); // what is typed next is a length
}

void PlanSketch::show_plan(std::vector<Vec2> corners) {
    shown_ = std::move(corners);
    drawing_ = false;
    setCursor(Qt::ArrowCursor);
    fit();
}

void PlanSketch::draw() {
    drawing_ = true;
    setCursor(Qt::CrossCursor);
    fit();
}

bool PlanSketch::holds_work() const {
    constexpr std::size_t some = 3; // corners
    return drawn_.size() >= some || (drawn_.empty() && cleared_.size() >= some);
}

std::vector<Vec2> PlanSketch::outline() const {
    if (!drawing_) return shown_;
    std::vector<Vec2> all;
    for (const PlanPoint &p : drawn_)
        all.push_back(flat(p));
    return all;
}

sheets::Rect PlanSketch::content() const {
    sheets::Rect box = sheets::Rect::nothing();
    for (const Vec2 p : outline())
        box = joined(box, p);
    if (drawing_ && !closed_) box = joined(joined(box, Vec2{0, 0}), Vec2{sheet_width, sheet_depth});
    return box;
}

/// Level with a corner that is drawn, as far as a hand reaches: a few pixels of a whole house are more than a
/// round length, and would leave it crooked. Else to the length of a wall that is drawn, or to a round
/// length.
double PlanSketch::snapped_along(Vec2 from, Vec2 way, double length) const {
    double level = 0, nearest = reach();
    for (const PlanPoint &p : drawn_) {
        const double along = dot(flat(p) - from, way), away = std::abs(along - length);
        if (along <= same || away > nearest) continue;
        level = along;
        nearest = away;
    }
    if (level > 0) return level;
    std::vector<double> lengths;
    for (std::size_t i = 0; i + 1 < drawn_.size(); ++i)
        lengths.push_back(roundlay::length(flat(drawn_[i + 1]) - flat(drawn_[i])));
    return snapped(length, lengths, reach(), wall_step(units_)).at;
}

Vec2 PlanSketch::snapped_corner(Vec2 at, Qt::KeyboardModifiers keys) const {
    const double step = wall_step(units_);
    if (drawn_.empty()) return {std::round(at.x / step) * step, std::round(at.y / step) * step};
    if (drawn_.size() > 2 && length(at - flat(drawn_.front())) <= 1.5 * reach()) return flat(drawn_.front());
    const Vec2 from = flat(drawn_.back()), by = at - from;
    if (length(by) < same) return from;
    const Vec2 way = way_to(by, keys);
    return from + snapped_along(from, way, dot(by, way)) * way;
}

/// Along the compass, or any way; there too the eight points of the compass take hold. Its length is round.
Vec2 PlanSketch::way_to(Vec2 by, Qt::KeyboardModifiers keys) const {
    const bool across = std::abs(by.x) >= std::abs(by.y);
    const Vec2 square = across ? Vec2{by.x < 0 ? -1.0 : 1.0, 0} : Vec2{0, by.y < 0 ? -1.0 : 1.0};
    if (!slants_ && !lets_go(keys)) return square;
    const double half = 1 / std::numbers::sqrt2;
    for (const Vec2 way : {square, Vec2{by.x < 0 ? -half : half, by.y < 0 ? -half : half}})
        if (std::abs(cross(way, by)) <= reach()) return way;
    return (1 / length(by)) * by;
}

void PlanSketch::put(Vec2 corner) {
    if (!drawn_.empty() && length(corner - flat(drawn_.back())) < same) return;
    if (drawn_.size() > 2 && length(corner - flat(drawn_.front())) < same)
        closed_ = true;
    else if (drawn_.size() < most_drawn_walls)
        drawn_.push_back({Length::mm(corner.x), Length::mm(corner.y)});
    next_ = corner;
    const QRect in_sight = rect().adjusted(edge, edge, -edge, -edge);
    if (closed_)
        fit();
    else if (!in_sight.contains(to_screen(corner).toPoint()))
        fit_now(); // a typed length can lead off the sheet
    update();
    emit changed();
}

void PlanSketch::add_corner(Vec2 at, Qt::KeyboardModifiers keys) {
    if (drawing_ && !closed_) put(snapped_corner(at, keys));
}

void PlanSketch::close_figure() {
    if (!drawing_ || closed_ || drawn_.size() < 3) return;
    const Vec2 first = flat(drawn_.front()), last = flat(drawn_.back()),
               before = flat(drawn_[drawn_.size() - 2]);
    const bool square = std::abs(first.x - last.x) < same || std::abs(first.y - last.y) < same;
    if (!square) { // the last wall goes on across its own direction
        const bool came_across = std::abs(last.y - before.y) < same;
        put(came_across ? Vec2{last.x, first.y} : Vec2{first.x, last.y});
    }
    put(first);
}

void PlanSketch::take_back() {
    if (!drawing_) return;
    if (drawn_.empty())
        drawn_.swap(cleared_);
    else if (!std::exchange(closed_, false))
        drawn_.pop_back();
    update();
    emit changed();
}

/// It took some time to draw: taking back goes past it.
void PlanSketch::clear() {
    if (!drawn_.empty()) cleared_ = std::exchange(drawn_, {});
    closed_ = false;
    fit();
    emit changed();
}

void PlanSketch::press(Vec2 at, Qt::KeyboardModifiers keys) {
    add_corner(at, keys);
}

void PlanSketch::hover(Vec2 at) {
    if (!drawing_ || closed_) return;
    next_ = snapped_corner(at, QGuiApplication::keyboardModifiers());
    emit hinted(drawn_.empty() ? tr("Click where the first corner shall be") : accessibleDescription());
    update();
}

/// As it is typed, else the one that the pointer shows; nothing where it shows none.
Vec2 PlanSketch::typed_way() const {
    if (const auto heading = typed_->heading()) return heading_vector(*heading);
    const Vec2 by = next_ - flat(drawn_.back());
    return length(by) < same ? Vec2{} : (1 / length(by)) * by;
}

QString PlanSketch::why_not_typed(Length typed) const {
    if (!is_dragging()) return {};
    if (typed.mm() <= 0) return tr("a wall is longer than nothing");
    const Vec2 way = typed_way();
    if (length(way) < same)
        return tr("the pointer shows no direction: move it, or type one, such as %1")
            .arg(tr("4500 mm at 135"));
    if (drawn_.size() < 2) return {};
    const Vec2 before = flat(drawn_.back()) - flat(drawn_[drawn_.size() - 2]);
    const bool back = dot(way, before) < 0 && std::abs(cross(way, before)) < straight * length(before);
    return back ? tr("there the wall would run back over the one before it") : QString();
}

void PlanSketch::take_typed(Length typed) {
    if (is_dragging()) put(flat(drawn_.back()) + typed.mm() * typed_way());
}

void PlanSketch::keyPressEvent(QKeyEvent *event) {
    if (drawing_ && (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) && is_dragging())
        return close_figure();
    if (drawing_ && (event->key() == Qt::Key_Backspace || event->matches(QKeySequence::Undo)))
        return take_back();
    DrawingView::keyPressEvent(event);
}

void PlanSketch::paint(QPainter &painter) {
    paint_grid(painter);
    paint_walls(painter);
    if (!drawing_ || !drawn_.empty()) return;
    painter.setPen(tints().faint);
    const QString words = cleared_.empty() ? accessibleDescription()
                                           : tr("Cleared. Backspace or Ctrl+Z brings back what was drawn.") +
                                                 QStringLiteral("\n\n") + accessibleDescription();
    painter.drawText(rect().adjusted(20, 20, -20, -20), Qt::AlignCenter | Qt::TextWordWrap, words);
}

void PlanSketch::paint_grid(QPainter &painter) const {
    constexpr double least_pixels = 14;
    double step = units_ == UnitSystem::metric ? 1000 : mm_per_foot;
    while (step * scale() < least_pixels)
        step *= 5;
    painter.setPen(QPen(tints().grid, 1));
    const Vec2 low = to_sheet(rect().bottomLeft()), high = to_sheet(rect().topRight());
    for (double x = std::ceil(low.x / step) * step; x < high.x; x += step)
        painter.drawLine(to_screen({x, low.y}), to_screen({x, high.y}));
    for (double y = std::ceil(low.y / step) * step; y < high.y; y += step)
        painter.drawLine(to_screen({low.x, y}), to_screen({high.x, y}));
}

void PlanSketch::paint_walls(QPainter &painter) const {
    const std::vector<Vec2> corners = outline();
    const bool closed = !drawing_ || closed_;
    QPolygonF line;
    for (const Vec2 p : corners)
        line << to_screen(p);
    painter.setPen(QPen(tints().accent, 2.5));
    painter.setBrush(closed ? tints().accent_soft : QColor(Qt::transparent));
    if (closed && line.size() > 2)
        painter.drawPolygon(line);
    else
        painter.drawPolyline(line);
    for (std::size_t i = 0; i + (closed ? 0 : 1) < corners.size(); ++i)
        paint_length(painter, corners[i], corners[(i + 1) % corners.size()]);
    if (!drawing_ || closed_) return;
    painter.setPen(QPen(tints().accent, 1.5, Qt::DashLine));
    if (!corners.empty()) painter.drawLine(to_screen(corners.back()), to_screen(next_));
    if (!corners.empty() && length(next_ - corners.back()) > same)
        paint_length(painter, corners.back(), next_, true);
    painter.setPen(QPen(tints().accent, 1.5));
    painter.setBrush(tints().paper);
    for (const Vec2 p : corners)
        painter.drawEllipse(to_screen(p), 4, 4);
    painter.drawEllipse(to_screen(next_), 3, 3);
}

/// At a slant with its direction, as it would be typed.
void PlanSketch::paint_length(QPainter &painter, Vec2 from, Vec2 to, bool with_way) const {
    const Vec2 by = to - from;
    QString words = length_text(length(by), units_);
    if (with_way && std::min(std::abs(by.x), std::abs(by.y)) > same)
        words = tr("%1 at %2")
                    .arg(words)
                    .arg(std::fmod(std::atan2(by.x, by.y) * 180 / std::numbers::pi + 360, 360), 0, 'f', 1);
    const QPointF a = to_screen(from), b = to_screen(to);
    if (QLineF(a, b).length() > painter.fontMetrics().horizontalAdvance(words) / 2)
        draw_label(painter, (a + b) / 2, words, tints().ink);
}

} // namespace roundlay::window
