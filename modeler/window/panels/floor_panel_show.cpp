#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/panels/field_row.h"
#include "modeler/window/panels/floor_panel.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/panels/species_choice.h"

#include <QComboBox>
#include <QLabel>
#include <QSignalBlocker>
#include <QToolButton>

namespace roundlay::window {

namespace {

/// What stands in the box and which is chosen, without a word to whoever listens.
void list_in(QComboBox &box, const QStringList &words, int chosen) {
    const QSignalBlocker quiet(&box);
    QStringList now;
    for (int i = 0; i < box.count(); ++i)
        now << box.itemText(i);
    if (now != words) {
        box.clear();
        box.addItems(words);
    }
    box.setCurrentIndex(chosen);
}

/// Empty and out of reach where there is nothing that it could be of; `nothing` says so.
void show_length(LengthEdit &edit, bool any, Length length, UnitSystem units, const QString &nothing) {
    edit.setEnabled(any);
    edit.setPlaceholderText(any ? QString() : nothing);
    edit.set_length(any ? std::optional(length) : std::nullopt, units);
}

} // namespace

void FloorPanel::list_floors(const Shell &shell) {
    QStringList words;
    for (const Floor &floor : shell.floors)
        words << tr("%1: %2 to %3").arg(text(floor.name), text(floor.from), text(floor.to));
    list_in(*floors_.box, words, floor_);
    QStringList walls;
    for (const Wall &wall : shell.walls)
        walls << text(wall.name);
    for (const Partition &partition : shell.partitions)
        walls << text(partition.name);
    for (QComboBox *box : {from_, to_})
        list_in(*box, walls, -1);
}

/// What nobody sees is not brought up to date at every step of a drag.
void FloorPanel::showEvent(QShowEvent *event) {
    QScrollArea::showEvent(event);
    refresh();
}

void FloorPanel::refresh() {
    if (!isVisible()) return;
    write_in_red(*complaint_);
    complaint_->clear();
    const auto &shell = desk_.state()->read.shell;
    put_in_reach(*this, *fields_, shell.has_value());
    if (!shell) return;
    floor_ = std::clamp(floor_, 0, std::max(static_cast<int>(shell->floors.size()) - 1, 0));
    list_floors(*shell);
    const bool any = !shell->floors.empty();
    all_->setVisible(any);
    floors_.less->setEnabled(any);
    if (any) show_floor(shell->floors[chosen()], shell->units);
}

void FloorPanel::show_floor(const Floor &floor, UnitSystem units) {
    name_->set_name(text(floor.name));
    from_->setCurrentIndex(from_->findText(text(floor.from)));
    to_->setCurrentIndex(to_->findText(text(floor.to)));
    level_->set_length(floor.level, units);
    spacing_->set_length(floor.spacing, units);
    first_->set_length(floor.first, units);
    width_->set_length(floor.joist.width, units);
    height_->set_length(floor.joist.height, units);
    tip_width_->set_length(floor.tip_width, units);
    tip_height_->set_length(floor.tip_height, units);
    bearing_->set_length(floor.bearing, units);
    pocket_->setCurrentIndex(static_cast<int>(floor.pocket));
    fabric_->setCurrentIndex(floor.fabric ? static_cast<int>(*floor.fabric) + 1 : 0);
    show_species(*species_, floor.species);
    tail_->set_slope(floor.tail);
    tail_->setEnabled(floor.pocket == PocketKind::tailed);
    live_->set_load(floor.live_load, units);
    dead_->set_load(floor.dead_load, units);
    show_beams(floor, units);
    show_openings(floor, units);
}

void FloorPanel::show_beams(const Floor &floor, UnitSystem units) {
    const int count = static_cast<int>(floor.beams.size());
    beam_ = std::clamp(beam_, 0, std::max(count - 1, 0));
    QStringList words;
    for (int i = 0; i < count; ++i)
        words << tr("Beam %1").arg(i + 1);
    list_in(*beams_.box, words, count == 0 ? -1 : beam_);
    beams_.less->setEnabled(count > 0);
    const Beam beam = count == 0 ? Beam() : floor.beams[static_cast<std::size_t>(beam_)];
    const auto show = [&](LengthEdit *edit, Length length) {
        show_length(*edit, count > 0, length, units, tr("no beam yet: +"));
    };
    show(beam_at_, beam.from_wall);
    show(beam_width_, beam.size.width);
    show(beam_height_, beam.size.height);
}

void FloorPanel::show_openings(const Floor &floor, UnitSystem units) {
    const int count = static_cast<int>(floor.openings.size());
    opening_ = std::clamp(opening_, 0, std::max(count - 1, 0));
    QStringList words;
    for (int i = 0; i < count; ++i) {
        const std::string &name = floor.openings[static_cast<std::size_t>(i)].name;
        words << (name.empty() ? tr("Opening %1").arg(i + 1) : text(name));
    }
    list_in(*openings_.box, words, count == 0 ? -1 : opening_);
    openings_.less->setEnabled(count > 0);
    const FloorOpening opening =
        count == 0 ? FloorOpening() : floor.openings[static_cast<std::size_t>(opening_)];
    opening_name_->setEnabled(count > 0);
    opening_name_->set_name(text(opening.name));
    const auto show = [&](LengthEdit *edit, Length length) {
        show_length(*edit, count > 0, length, units, tr("no opening yet: +"));
    };
    opening_name_->setPlaceholderText(count > 0 ? QString() : tr("no opening yet: +"));
    show(opening_left_, opening.from_left);
    show(opening_wall_, opening.from_wall);
    show(opening_width_, opening.width);
    show(opening_length_, opening.length);
}

} // namespace roundlay::window
