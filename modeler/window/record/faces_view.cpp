#include "modeler/window/record/faces_view.h"

#include "kernel/record/places.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/snap.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/record/at_hand.h"
#include "modeler/window/record/found_words.h"

#include <QKeyEvent>
#include <QMenu>
#include <QMouseEvent>
#include <algorithm>
#include <cmath>

namespace roundlay::window {

namespace {

// Round the log: outside, over the top, inside, under.
constexpr FoundFace unrolled[] = {FoundFace::outside, FoundFace::top, FoundFace::inside, FoundFace::under};
constexpr double beside = 76, above = 22, below = 8, between = 4; // pixels

double known(const NotedLength &number) {
    return number.value && number.certainty != Certainty::contradicted ? number.value->mm() : 0;
}

/// From end to end of the plan's log, however many openings part it.
double length_of(const LogAtHand &log, const Layout &layout) {
    if (const double noted = known(log.found.length); noted > 0) return noted;
    if (log.pieces.empty()) return 0;
    const Piece &first = layout.pieces[log.pieces.front()], &last = layout.pieces[log.pieces.back()];
    const Vec3 way = last.frame.to_world({last.blank.length, 0, 0}) - first.frame.to_world({0, 0, 0});
    return std::hypot(way.x, way.y);
}

} // namespace

FacesView::FacesView(Desk &desk, AtHand &at_hand, QWidget *parent)
    : QWidget(parent), desk_(desk), at_hand_(at_hand) {
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setMinimumSize(160, 110);
    setAccessibleName(tr("Faces of the log"));
    setAccessibleDescription(
        tr("The four faces of the log, unrolled, with the zones of its wood. Drag along a "
           "face to draw one; by the keyboard they are typed in the panel Record."));
    connect(&at_hand_, &AtHand::changed, this, &FacesView::refresh);
}

void FacesView::showEvent(QShowEvent *event) {
    QWidget::showEvent(event);
    if (stale_) refresh();
}

void FacesView::refresh() {
    stale_ = !isVisible();
    if (stale_) return;
    const LogAtHand *log = at_hand_.log();
    if (!log || !log_ || log->found.tag != log_->found.tag) drawn_.reset(), dragging_ = false;
    log_ = log ? std::optional(*log) : std::nullopt;
    length_ = height_ = width_ = 0;
    if (log_) {
        const Layout none, &layout = desk_.standing() ? desk_.standing()->job.layout : none;
        length_ = length_of(*log_, layout);
        for (const FoundEnd &end : log_->found.ends) {
            height_ = std::max(height_, known(end.height));
            width_ = std::max(width_, known(end.width));
        }
        const bool planned = !log_->pieces.empty();
        if (height_ == 0 && planned) height_ = layout.pieces[log_->pieces.front()].blank.height;
        if (width_ == 0 && planned) width_ = layout.pieces[log_->pieces.front()].blank.width;
    }
    update();
}

QString FacesView::why_not() const {
    if (!log_) return tr("Choose a log in any view: its faces are drawn here.");
    if (length_ <= 0)
        return tr("Nobody knows how long log %1 is: type its length over all in the panel Record.")
            .arg(text(log_->found.tag));
    const std::string &zero = log_->found.zero;
    if (lacks_zero(log_->found))
        return tr("Places along log %1 are noted, and not from which corner: say in the panel Record from "
                  "which.")
            .arg(text(log_->found.tag));
    if (!zero.empty() && zero != log_->ends[0].name && zero != log_->ends[1].name)
        return tr("Log %1 is measured from %2, which is none of its ends: say in the panel Record from "
                  "which.")
            .arg(text(log_->found.tag), text(zero));
    return {};
}

bool FacesView::from_right() const {
    return !log_->found.zero.empty() && log_->found.zero == log_->ends[1].name;
}

/// As high as each face is wide, in shares of what there is.
QRectF FacesView::strip(FoundFace face) const {
    const auto wide = [this](FoundFace each) {
        const bool upright = each == FoundFace::outside || each == FoundFace::inside;
        const double size = upright ? height_ : width_;
        return size > 0 ? size : 1;
    };
    double all = 0, over = 0;
    for (const FoundFace each : unrolled)
        all += wide(each);
    for (const FoundFace each : unrolled) {
        if (each == face) break;
        over += wide(each);
    }
    const double room = std::max(40.0, height() - above - below - 3 * between);
    const auto at = std::ranges::find(unrolled, face) - std::begin(unrolled);
    return {beside, above + static_cast<double>(at) * between + room * over / all,
            std::max(40.0, width() - 2 * beside / 2 - beside / 2), room * wide(face) / all};
}

QPointF FacesView::place_of(FoundFace face, double along) const {
    const QRectF box = strip(face);
    return {box.left() + box.width() * along / std::max(length_, 1.0), box.center().y()};
}

double FacesView::along_at(double x) const {
    const QRectF box = strip(FoundFace::outside);
    return std::clamp((x - box.left()) / box.width() * length_, 0.0, length_);
}

std::optional<FoundFace> FacesView::face_at(QPointF at) const {
    for (const FoundFace face : unrolled)
        if (strip(face).adjusted(0, -between / 2, 0, between / 2).contains(at)) return face;
    return {};
}

/// On a face that it is on; where nobody said on which, on all. Where it begins or ends nobody said: the
/// log's end.
QRectF FacesView::zone_rect(const ConditionZone &zone, FoundFace face) const {
    const bool on = zone.faces.empty() || std::ranges::find(zone.faces, face) != zone.faces.end();
    if (!on) return {};
    double from = zone.from.value ? zone.from.value->mm() : 0,
           to = zone.to.value ? zone.to.value->mm() : length_;
    if (from_right()) from = length_ - from, to = length_ - to;
    const QRectF box = strip(face);
    const double a = place_of(face, std::clamp(std::min(from, to), 0.0, length_)).x(),
                 b = place_of(face, std::clamp(std::max(from, to), 0.0, length_)).x();
    return {a, box.top(), std::max(2.0, b - a), box.height()};
}

/// The last one lies on top.
std::optional<std::size_t> FacesView::zone_at(QPointF at) const {
    const auto face = face_at(at);
    if (!face || !log_) return {};
    for (std::size_t i = log_->found.zones.size(); i-- > 0;)
        if (zone_rect(log_->found.zones[i], *face).contains(at)) return i;
    return {};
}

void FacesView::mousePressEvent(QMouseEvent *event) {
    if (!why_not().isEmpty()) return;
    const auto face = face_at(event->position());
    if (!face) return;
    if (event->button() == Qt::RightButton) {
        if (const auto zone = zone_at(event->position())) ask_about(*zone, event->globalPosition().toPoint());
        return;
    }
    const double at = along_at(event->position().x());
    drawn_ = Drawn{*face, at, at};
    dragging_ = true;
    update();
}

/// From the log's zero, to what a hand can draw: never finer than its trembling.
std::pair<double, double> FacesView::dimensions_of(const Drawn &drawn) const {
    const double grid = desk_.units() == UnitSystem::metric ? 10 : Length::inches(0.5).mm();
    const auto told = [&](double along) {
        return std::round((from_right() ? length_ - along : along) / grid) * grid;
    };
    const double a = told(drawn.from), b = told(drawn.to);
    return {std::min(a, b), std::max(a, b)};
}

void FacesView::mouseMoveEvent(QMouseEvent *event) {
    if (dragging_ && drawn_) {
        drawn_->to = along_at(event->position().x());
        const auto [from, to] = dimensions_of(*drawn_);
        emit hinted(tr("%1, from %2 to %3, measured from %4")
                        .arg(face_word(drawn_->face), length_text(from, desk_.units()),
                             length_text(to, desk_.units()), text(log_->ends[from_right() ? 1 : 0].name)));
        return update();
    }
    const auto zone = why_not().isEmpty() ? zone_at(event->position()) : std::nullopt;
    emit hinted(zone ? tr("%1. The right button changes it or takes it out.")
                           .arg(soundness_word(log_->found.zones[*zone].what))
                     : tr("Drag along a face to draw a zone of its wood."));
}

void FacesView::mouseReleaseEvent(QMouseEvent *event) {
    if (!std::exchange(dragging_, false) || !drawn_) return;
    constexpr double click = 5; // pixels
    const double wide =
        std::abs(place_of(drawn_->face, drawn_->to).x() - place_of(drawn_->face, drawn_->from).x());
    if (wide >= click) return ask_what(event->globalPosition().toPoint());
    drawn_.reset();
    update();
    if (const auto zone = zone_at(event->position())) ask_about(*zone, event->globalPosition().toPoint());
}

void FacesView::keyPressEvent(QKeyEvent *event) {
    if (event->key() != Qt::Key_Escape || !drawn_) return QWidget::keyPressEvent(event);
    drawn_.reset();
    dragging_ = false;
    update();
}

/// It stays until the next one: what is chosen in it may ask something, and it is at work until that is done.
QMenu *FacesView::new_menu(const char *name) {
    if (menu_) menu_->deleteLater();
    menu_ = new QMenu(this);
    menu_->setObjectName(QLatin1String(name));
    return menu_;
}

void FacesView::ask_what(const QPoint &on_screen) {
    QMenu *menu = new_menu("zone_what");
    for (const Soundness what : all_soundnesses) {
        QAction *made = menu->addAction(soundness_word(what));
        made->setObjectName(QStringLiteral("zone_what_%1").arg(static_cast<int>(what)));
        connect(made, &QAction::triggered, this, [this, drawn = *drawn_, what] { add_zone(drawn, what); });
    }
    connect(menu, &QMenu::aboutToHide, this, [this] {
        drawn_.reset();
        update();
    });
    menu->popup(on_screen);
}

/// A stretch drawn by hand is no measure: its numbers are proposed until somebody measures.
void FacesView::add_zone(const Drawn &drawn, Soundness what) {
    if (!log_) return;
    const auto noted = [&](double mm) {
        NotedLength number;
        number.written = length_text(mm, desk_.units()).toStdString();
        number.certainty = Certainty::proposed;
        return number;
    };
    const auto [from, to] = dimensions_of(drawn);
    ConditionZone zone;
    zone.what = what;
    zone.faces = {drawn.face};
    zone.from = noted(from), zone.to = noted(to);
    const std::string zero = log_->ends[0].name;
    const bool made =
        at_hand_.edit(tr("Draw a zone on log %1").arg(text(log_->found.tag)), *log_, [&](FoundLog &log) {
            if (log.zero.empty()) log.zero = zero;
            log.zones.push_back(zone);
        });
    if (made)
        emit told(tr("%1 drawn by hand on the face %2, from %3 to %4: proposed, until somebody measures it")
                      .arg(soundness_word(what), face_word(drawn.face), text(zone.from.written),
                           text(zone.to.written)));
}

void FacesView::ask_about(std::size_t zone, const QPoint &on_screen) {
    QMenu *menu = new_menu("zone_about");
    const auto deed = [&](const QString &name, const QString &words, const AtHand::Change &change) {
        QAction *made = menu->addAction(words);
        made->setObjectName(name);
        connect(made, &QAction::triggered, this, [this, change] {
            if (log_) at_hand_.edit(tr("Change a zone of log %1").arg(text(log_->found.tag)), *log_, change);
        });
        return made;
    };
    for (const Soundness what : all_soundnesses) {
        QAction *made = deed(QStringLiteral("zone_is_%1").arg(static_cast<int>(what)), soundness_word(what),
                             [zone, what](FoundLog &log) {
                                 if (zone < log.zones.size()) log.zones[zone].what = what;
                             });
        made->setCheckable(true);
        made->setChecked(log_->found.zones[zone].what == what);
    }
    menu->addSeparator();
    deed(QStringLiteral("zone_out"), tr("&Take the zone out"), [zone](FoundLog &log) {
        if (zone < log.zones.size()) log.zones.erase(log.zones.begin() + static_cast<std::ptrdiff_t>(zone));
    });
    menu->popup(on_screen);
}

} // namespace roundlay::window
