#include "modeler/window/views/elevation_view.h"

#include "kernel/design/round_figures.h"
#include "kernel/geometry/ring.h"
#include "kernel/measure/tidied.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/faults.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/snap.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/views/record_marks.h"
#include "modeler/window/views/stand_banner.h"
#include "modeler/window/views/tints.h"
#include "modeler/window/views/view_keys.h"

#include <QKeyEvent>
#include <algorithm>
#include <cmath>

namespace roundlay::window {

namespace {

constexpr double smallest = 60; // mm: an opening that a hand can still take hold of

bool holds(const sheets::Rect &r, Vec2 p) {
    return p.x >= r.x0 && p.x <= r.x1 && p.y >= r.y0 && p.y <= r.y1;
}

Desk::ShellEdit opening_set(int opening, const sheets::Rect &box) {
    return [opening, box](const Shell &shell) -> std::optional<Shell> {
        if (opening < 0 || opening >= static_cast<int>(shell.openings.size())) return {};
        Shell next = shell;
        Opening &o = next.openings[static_cast<std::size_t>(opening)];
        o.from_left = tidied(Length::mm(box.x0));
        o.sill = tidied(Length::mm(box.y0));
        o.width = tidied(Length::mm(box.width()));
        o.height = tidied(Length::mm(box.height()));
        return next;
    };
}

} // namespace

ElevationView::ElevationView(Desk &desk, Selection &selection, QWidget *parent)
    : DrawingView(parent), desk_(desk), selection_(selection) {
    setAccessibleName(tr("Elevation"));
    setAccessibleDescription(tr("The chosen wall from outside. Page Up and Page Down choose an opening, "
                                "arrow keys move it, with Ctrl they size it."));
    new StandBanner(desk_, this, StandBanner::Shows::as_stated);
    connect(&desk_, &Desk::began, this, [this] {
        dragged_ = -1;
        refresh();
    });
    connect(&desk_, &Desk::state_changed, this, &ElevationView::refresh);
    connect(&selection_, &Selection::changed, this, &ElevationView::refresh);
}

UnitSystem ElevationView::units() const {
    return desk_.units();
}

void ElevationView::refresh() {
    scene_ = desk_.drawn() ? elevation_of(*desk_.drawn(), selection_.wall()) : ElevationScene();
    look_at_record();
    update();
    if (const QString why = why_not(*desk_.state()); dragged_ >= 0 && !why.isEmpty()) emit hinted(why);
}

void ElevationView::set_colouring(Colouring colouring) {
    colouring_ = colouring;
    refresh();
}

/// Only of logs that are cut: a plan that cannot be built has none.
void ElevationView::look_at_record() {
    const StatePtr &state = desk_.drawn();
    marks_ = {};
    zones_.clear();
    if (!state || !is_of_record(colouring_) || scene_.shapes.empty()) return;
    if (colouring_ != Colouring::condition) {
        marks_ = marked_pieces(*state->job.record, state->job, colouring_);
        return;
    }
    PlacedZones zones = placed_zones(state->job);
    zones_ = zone_areas(state->job.layout, zones, *scene_.wall);
    marks_ = std::move(zones.whole);
}

bool ElevationView::is_old() const {
    return desk_.drawn_is_old();
}

Chosen ElevationView::thing_at(Vec2 at) const {
    if (const auto *hole = hole_at(at)) return {Chosen::Kind::opening, {}, hole->opening};
    if (const auto piece = piece_at(at))
        return {Chosen::Kind::piece, desk_.drawn()->job.layout.pieces[*piece].tag, -1};
    if (!scene_.wall) return {};
    return {Chosen::Kind::wall, selection_.wall(), -1};
}

Chosen ElevationView::chosen_thing() const {
    return selection_.chosen();
}

std::vector<LegendEntry> ElevationView::legend() const {
    const auto plain = [](const QColor &fill, const QString &words) {
        return LegendEntry{fill, tints().wood_edge, Qt::NoBrush, {}, words};
    };
    if (is_of_record(colouring_)) {
        std::vector<LegendEntry> entries = record_legend(colouring_);
        entries.push_back(chosen_entry());
        entries.push_back(fault_entry());
        return entries;
    }
    return {plain(tints().wood, tr("log")),
            plain(tints().island, tr("island between openings")),
            plain(tints().end_grain, tr("end of a crossing log, header log")),
            {tints().paper, tints().faint, Qt::BDiagPattern, tints().faint, tr("space to settle")},
            plain(tints().accent_soft, tr("window")),
            plain(tints().hollow, tr("door")),
            chosen_entry(),
            fault_entry()};
}

sheets::Rect ElevationView::content() const {
    if (!scene_.wall) return sheets::Rect::nothing();
    constexpr double beside = 150, above = 350;
    return {-beside, -above, scene_.length + beside, scene_.height + beside};
}

const ElevationScene::Hole *ElevationView::hole_at(Vec2 at) const {
    for (const auto &hole : scene_.holes)
        if (holds(hole.box.grown(reach()), at)) return &hole;
    return nullptr;
}

/// In a seam the log that is nearest: seams are as thin as a line, and no hand means one.
std::optional<Index<Piece>> ElevationView::piece_at(Vec2 at) const {
    constexpr double widest_seam = 60; // mm
    const double step = std::max(1 / scale(), 1.0), most = std::min(reach(), widest_seam);
    auto piece = piece_right_at(at);
    for (double away = step; !piece && away <= most; away += step) {
        const auto below = piece_right_at({at.x, at.y - away}), above = piece_right_at({at.x, at.y + away});
        piece = below ? below : above;
    }
    return piece;
}

std::optional<Index<Piece>> ElevationView::piece_right_at(Vec2 at) const {
    for (auto shape = scene_.shapes.rbegin(); shape != scene_.shapes.rend(); ++shape) // the foremost first
        for (const auto &ring : shape->rings)
            if (is_inside(ring, at)) return shape->piece;
    return std::nullopt;
}

const ElevationScene::Hole *ElevationView::chosen_hole() const {
    for (const auto &hole : scene_.holes)
        if (selection_.is_opening(hole.opening)) return &hole;
    return nullptr;
}

ElevationView::Hold ElevationView::hold_at(const sheets::Rect &box, Vec2 at) const {
    const auto near = [this](double a, double b) { return std::abs(a - b) <= reach(); };
    Hold hold{near(at.x, box.x0), near(at.x, box.x1), near(at.y, box.y0), near(at.y, box.y1)};
    if (!hold.any()) hold = {true, true, true, true};
    return hold;
}

void ElevationView::press(Vec2 at, Qt::KeyboardModifiers) {
    if (!desk_.drawn()) return;
    if (const auto *hole = hole_at(at)) {
        dragged_ = hole->opening;
        before_ = hole->box;
        hold_ = hold_at(hole->box, at);
        grabbed_ = at;
        selection_.choose_opening(desk_.drawn()->job.shell, dragged_);
        emit hinted(tr("Drag; type an exact length; Shift or Alt lets go of the round lines"));
        return;
    }
    if (const auto piece = piece_at(at))
        selection_.choose_piece(desk_.drawn()->job.layout, *piece);
    else
        selection_.clear();
    pressed_ = spot_at(at);
}

void ElevationView::hover(Vec2 at) {
    const auto *hole = hole_at(at);
    Qt::CursorShape shape = Qt::ArrowCursor;
    QString words;
    if (hole != nullptr) {
        const Hold hold = hold_at(hole->box, at);
        const bool across = hold.left || hold.right, up = hold.low || hold.high;
        const bool rising = (hold.left && hold.low) || (hold.right && hold.high);
        shape = hold.whole()   ? Qt::SizeAllCursor
                : across && up ? (rising ? Qt::SizeBDiagCursor : Qt::SizeFDiagCursor)
                : across       ? Qt::SizeHorCursor
                               : Qt::SizeVerCursor;
        words = text(hole->name);
    } else if (const auto piece = piece_at(at)) {
        words = text(desk_.drawn()->job.layout.pieces[*piece].tag);
    }
    setCursor(shape);
    emit hinted(words);
}

double ElevationView::snap_across(double at, double alternative, Qt::KeyboardModifiers keys) const {
    if (lets_go(keys)) return to_shown(at, units());
    std::vector<double> lines;
    for (const auto &hole : scene_.holes)
        if (hole.opening != dragged_) lines.insert(lines.end(), {hole.box.x0, hole.box.x1});
    lines.push_back(scene_.length / 2 - (alternative - at) / 2); // the opening's middle in the wall's
    return snapped(at, lines, reach(), grid_step(units())).at;
}

double ElevationView::snap_up(double at, double alternative, Qt::KeyboardModifiers keys) const {
    if (lets_go(keys)) return to_shown(at, units());
    std::vector<double> lines = scene_.round_lines;
    lines.insert(lines.end(), scene_.faces.begin(), scene_.faces.end());
    const Snapped own = snapped(at, lines, reach(), grid_step(units()));
    const Snapped other = snapped(alternative, lines, reach(), grid_step(units()));
    return !own.on_line && other.on_line ? other.at - (alternative - at) : own.at;
}

void ElevationView::drag(Vec2 at, Qt::KeyboardModifiers keys) {
    const Vec2 by = at - grabbed_;
    sheets::Rect box = before_;
    if (hold_.whole()) {
        // A hand that goes along the wall shakes a little: the sill stays, and the place in one that goes up.
        constexpr double shake = 0.25;
        const bool along = std::abs(by.y) <= shake * std::abs(by.x),
                   upright = std::abs(by.x) <= shake * std::abs(by.y);
        box = box.moved({upright ? 0 : by.x, along ? 0 : by.y});
        box = box.moved({upright ? 0 : snap_across(box.x0, box.x1, keys) - box.x0,
                         along ? 0 : snap_up(box.y0, box.y1, keys) - box.y0});
        box = box.moved({0, std::max(0.0, -box.y0)});
    } else {
        if (hold_.left) box.x0 = std::min(snap_across(box.x0 + by.x, box.x0 + by.x, keys), box.x1 - smallest);
        if (hold_.right)
            box.x1 = std::max(snap_across(box.x1 + by.x, box.x1 + by.x, keys), box.x0 + smallest);
        if (hold_.low)
            box.y0 = std::clamp(snap_up(box.y0 + by.y, box.y0 + by.y, keys), 0.0, box.y1 - smallest);
        if (hold_.high) box.y1 = std::max(snap_up(box.y1 + by.y, box.y1 + by.y, keys), box.y0 + smallest);
    }
    show_box(box);
}

void ElevationView::show_box(const sheets::Rect &box) {
    desk_.show(opening_set(dragged_, box));
}

void ElevationView::release() {
    const bool whole = hold_.whole();
    dragged_ = -1;
    desk_.settle(whole ? tr("Move opening") : tr("Size opening"));
    update();
}

void ElevationView::give_up() {
    dragged_ = -1;
    desk_.cancel();
}

/// A typed length is the place from the left while moving, else the size that is being changed.
void ElevationView::take_typed(Length length) {
    if (dragged_ < 0) return;
    sheets::Rect box = before_;
    const double mm = length.mm();
    if (hold_.whole())
        box = box.moved({mm - box.x0, 0});
    else if (hold_.left)
        box.x0 = box.x1 - mm;
    else if (hold_.right)
        box.x1 = box.x0 + mm;
    else if (hold_.low)
        box.y0 = box.y1 - mm;
    else
        box.y1 = box.y0 + mm;
    show_box(box);
    release();
}

/// From what the text states now, not from what is drawn: keys can come faster than layouts.
void ElevationView::nudge(double across, double up, bool size) {
    if (chosen_hole() == nullptr) return;
    const auto at = static_cast<std::size_t>(selection_.chosen().opening);
    desk_.edit(size ? tr("Size opening") : tr("Move opening"),
               [&](const Shell &shell) -> std::optional<Shell> {
                   if (at >= shell.openings.size()) return {};
                   Shell next = shell;
                   Opening &o = next.openings[at];
                   if (size) {
                       o.width = tidied(std::max(o.width + Length::mm(across), Length::mm(smallest)));
                       o.height = tidied(std::max(o.height + Length::mm(up), Length::mm(smallest)));
                   } else {
                       o.from_left = tidied(o.from_left + Length::mm(across));
                       o.sill = tidied(std::max(o.sill + Length::mm(up), Length()));
                   }
                   return next;
               });
}

bool ElevationView::choose_next(int step) {
    if (scene_.holes.empty()) return true;
    const int count = static_cast<int>(scene_.holes.size());
    int at = step > 0 ? -1 : 0;
    for (int i = 0; i < count; ++i)
        if (selection_.is_opening(scene_.holes[static_cast<std::size_t>(i)].opening)) at = i;
    const auto &next = scene_.holes[static_cast<std::size_t>((at + step + count) % count)];
    selection_.choose_opening(desk_.drawn()->job.shell, next.opening);
    return true;
}

void ElevationView::keyPressEvent(QKeyEvent *event) {
    constexpr int many = 10;
    const double step = grid_step(units()) * (event->modifiers() & Qt::ShiftModifier ? many : 1);
    const bool size = event->modifiers() & Qt::ControlModifier;
    switch (event->key()) {
    case Qt::Key_Left:
        return nudge(-step, 0, size);
    case Qt::Key_Right:
        return nudge(step, 0, size);
    case Qt::Key_Up:
        return nudge(0, step, size);
    case Qt::Key_Down:
        return nudge(0, -step, size);
    default:
        DrawingView::keyPressEvent(event);
    }
}

} // namespace roundlay::window
