#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/finding_words.h"
#include "modeler/window/desk/floor_edits.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/panels/floor_panel.h"
#include "modeler/window/panels/length_edit.h"

#include <QLabel>

namespace roundlay::window {

void FloorPanel::add_floor() {
    std::size_t count = 0;
    const bool done = edit(tr("Add floor"), [&](const Shell &shell) {
        count = shell.floors.size();
        return with_fitting_floor(shell);
    });
    if (done) floor_ = static_cast<int>(count);
    const auto &shell = desk_.state()->read.shell;
    if (done || !shell) return;
    const auto against = against_any_floor(*shell);
    const QString why =
        against
            ? sentence_text(*against, shell->units)
            : tr("No height is left for another floor: floors over one another keep %1 between their tops")
                  .arg(length_text(least_between_floors(shell->units), shell->units));
    emit desk_.refused(why);
    complaint_->setText(why);
}

void FloorPanel::remove_floor() {
    edit(tr("Remove floor"), [this](const Shell &shell) { return without_floor(shell, chosen()); });
}

void FloorPanel::add_beam() {
    std::size_t count = 0;
    const bool done = edit(tr("Add beam"), [&](const Shell &shell) {
        if (chosen() < shell.floors.size()) count = shell.floors[chosen()].beams.size();
        return with_fitting_beam(shell, chosen());
    });
    if (done) beam_ = static_cast<int>(count);
}

void FloorPanel::remove_beam() {
    edit(tr("Remove beam"), [this](const Shell &shell) {
        return with_floor(shell, chosen(), [this](Floor &floor) {
            if (beam_ < static_cast<int>(floor.beams.size())) floor.beams.erase(floor.beams.begin() + beam_);
        });
    });
}

void FloorPanel::add_opening() {
    std::size_t count = 0;
    const bool done = edit(tr("Add floor opening"), [&](const Shell &shell) {
        if (chosen() < shell.floors.size()) count = shell.floors[chosen()].openings.size();
        return with_fitting_floor_opening(shell, chosen());
    });
    if (done) opening_ = static_cast<int>(count);
}

void FloorPanel::remove_opening() {
    edit(tr("Remove floor opening"), [this](const Shell &shell) {
        return with_floor(shell, chosen(), [this](Floor &floor) {
            if (opening_ < static_cast<int>(floor.openings.size()))
                floor.openings.erase(floor.openings.begin() + opening_);
        });
    });
}

/// What was typed of one floor, beam or opening and not taken is not typed of the next.
void FloorPanel::let_go() {
    for (MeasureEdit *edit : findChildren<MeasureEdit *>())
        edit->let_go();
}

/// Says why where the desk refuses.
bool FloorPanel::edit(const QString &name, const ShellEdit &change) {
    QString why;
    const auto listening =
        connect(&desk_, &Desk::refused, this, [&why](const QString &words) { why = words; });
    const bool done = desk_.edit(name, change);
    disconnect(listening);
    if (!done) refresh(); // what was chosen is not what is
    complaint_->setText(why);
    return done;
}

void FloorPanel::change(const Change &change) {
    const auto &shell = desk_.state()->read.shell;
    if (!shell || chosen() >= shell->floors.size()) return;
    edit(tr("Change floor %1").arg(text(shell->floors[chosen()].name)),
         [&](const Shell &now) { return with_floor(now, chosen(), change); });
}

/// A joist that is chosen in a view brings its floor here.
void FloorPanel::follow_selection() {
    if (!desk_.standing() || selection_.chosen().kind != Chosen::Kind::piece) return;
    const Layout &layout = desk_.standing()->job.layout;
    const int piece = piece_tagged(layout, selection_.chosen().name);
    const int timber = piece < 0 ? -1 : layout.pieces[static_cast<std::size_t>(piece)].timber;
    if (timber < 0) return;
    let_go();
    floor_ = layout.timbers[static_cast<std::size_t>(timber)].floor;
    refresh();
}

} // namespace roundlay::window
