// Openings that come into the elevation and go.
#include "kernel/design/opening_edits.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/finding_words.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/views/elevation_view.h"

#include <memory>

namespace roundlay::window {

namespace {

/// Where it is, and whether that is where the hand wanted it.
QString put_words(const NewOpening &made) {
    const PlacedOpening &placed = *made.placed;
    const Opening &o = placed.shell.openings.back();
    QString place = ElevationView::tr("%1: %2 from the left of wall %3, its sill %4 up")
                        .arg(text(o.name), length_text(o.from_left.mm(), placed.shell.units), text(o.wall),
                             length_text(o.sill.mm(), placed.shell.units));
    if (!made.as_usual)
        place += ElevationView::tr(", %1 wide and %2 high: no larger one of the usual shape fits")
                     .arg(length_text(o.width.mm(), placed.shell.units),
                          length_text(o.height.mm(), placed.shell.units));
    if (!placed.where_wanted)
        place =
            ElevationView::tr("%1. It did not fit where it was wanted; this is the nearest place that does")
                .arg(place);
    if (placed.remaining.empty()) return place;
    return ElevationView::tr("%1. To look at there: %2")
        .arg(place, sentence_text(placed.remaining.front(), placed.shell.units));
}

} // namespace

void ElevationView::double_click(Vec2 at) {
    if (dragged_ >= 0) give_up();
    if (const Spot spot = spot_at(at); !spot.wall.empty()) add_at(OpeningKind::window, spot);
}

Spot ElevationView::spot_at(Vec2 at) const {
    const bool on_wall =
        scene_.wall && at.x >= 0 && at.x <= scene_.length && at.y >= 0 && at.y <= scene_.height;
    return on_wall && hole_at(at) == nullptr ? Spot{selection_.wall(), at.x, at.y} : Spot{};
}

void ElevationView::add(OpeningKind kind) {
    if (pressed_.wall == selection_.wall() && !pressed_.wall.empty()) return add_at(kind, pressed_);
    add(kind, scene_.length / 2);
}

void ElevationView::add(OpeningKind kind, double middle) {
    if (scene_.wall) add_at(kind, {selection_.wall(), middle, {}});
}

void ElevationView::add_at(OpeningKind kind, const Spot &spot) {
    if (!desk_.drawn() || spot.wall.empty()) return;
    const bool door = kind == OpeningKind::door;
    const auto made = std::make_shared<NewOpening>();
    desk_.search(
        door ? tr("Add door") : tr("Add window"),
        [kind, spot, made, called = (door ? tr("door") : tr("window")).toStdString()](const Shell &shell) {
            *made = with_new_opening(shell, kind, spot.wall, {spot.along, spot.up, called});
            return made->placed ? Fitted(made->placed->shell) : Fitted(made->why);
        },
        this,
        [this, made](const QString &why) {
            if (!why.isEmpty()) return; // the desk says why
            const Shell &now = made->placed->shell;
            selection_.choose_opening(now, static_cast<int>(now.openings.size()) - 1);
            emit told(put_words(*made));
        });
}

void ElevationView::remove_chosen() {
    const int opening = selection_.chosen().opening;
    if (opening < 0) return;
    selection_.clear();
    desk_.edit(tr("Remove opening"), [opening](const Shell &shell) -> std::optional<Shell> {
        if (opening >= static_cast<int>(shell.openings.size())) return {};
        Shell next = shell;
        next.openings.erase(next.openings.begin() + opening);
        return next;
    });
}

} // namespace roundlay::window
