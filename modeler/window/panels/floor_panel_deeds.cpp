#include "kernel/design/floor_edits.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/panels/floor_panel.h"
#include "modeler/window/panels/length_edit.h"

#include <QLabel>

namespace roundlay::window {

namespace {

template <typename Part> int last_of(const std::vector<Part> &all) {
    return static_cast<int>(all.size()) - 1;
}

} // namespace

/// As they are stated now, before anything is worked out of it.
std::vector<Floor> FloorPanel::floors_of_text() const {
    const auto shell = desk_.document().read().shell;
    return shell ? shell->floors : std::vector<Floor>();
}

void FloorPanel::add_floor() {
    search(tr("Add floor"), with_fitting_floor, [this] { floor_ = last_of(floors_of_text()); });
}

void FloorPanel::remove_floor() {
    edit(tr("Remove floor"), [this](const Shell &shell) { return without_floor(shell, chosen()); });
}

void FloorPanel::add_beam() {
    search(
        tr("Add beam"), [floor = chosen()](const Shell &shell) { return with_fitting_beam(shell, floor); },
        [this] {
            if (const auto floors = floors_of_text(); chosen() < floors.size())
                beam_ = last_of(floors[chosen()].beams);
        });
}

void FloorPanel::remove_beam() {
    edit(tr("Remove beam"), [this](const Shell &shell) {
        return with_floor(shell, chosen(), [this](Floor &floor) {
            if (beam_ < static_cast<int>(floor.beams.size())) floor.beams.erase(floor.beams.begin() + beam_);
        });
    });
}

void FloorPanel::add_opening() {
    search(
        tr("Add floor opening"),
        [floor = chosen(), called = tr("stair").toStdString()](const Shell &shell) {
            return with_fitting_floor_opening(shell, floor, called);
        },
        [this] {
            if (const auto floors = floors_of_text(); chosen() < floors.size())
                opening_ = last_of(floors[chosen()].openings);
        });
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

/// The same with what is looked for aside; `made` where it is found.
void FloorPanel::search(const QString &name, const ShellEdit &change, const std::function<void()> &made) {
    desk_.search(name, change, this, [this, made](const QString &why) {
        if (why.isEmpty())
            made();
        else
            refresh(); // what was chosen is not what is
        complaint_->setText(why);
    });
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
    const auto piece = piece_tagged(layout, selection_.chosen().name);
    const auto timber = piece ? layout.pieces[*piece].timber : std::nullopt;
    if (!timber) return;
    let_go();
    floor_ = layout.timbers[*timber].floor.number();
    refresh();
}

} // namespace roundlay::window
