#include "modeler/window/panels/floor_panel.h"

#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/panels/field_row.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/panels/scrolled.h"
#include "modeler/window/panels/species_choice.h"
#include "modeler/window/panels/wrapped_label.h"
#include "modeler/window/views/stand_banner.h"

#include <QComboBox>
#include <QFormLayout>
#include <QGroupBox>
#include <QLabel>
#include <QToolButton>

namespace roundlay::window {

namespace {

QString plain(QString label) {
    return label.remove(u'&');
}

} // namespace

FloorPanel::FloorPanel(Desk &desk, Selection &selection, QWidget *parent)
    : QScrollArea(parent), desk_(desk), selection_(selection), name_(new NameEdit),
      complaint_(new WrappedLabel) {
    setWidgetResizable(true);
    setAccessibleName(tr("Floors"));
    setFrameShape(QFrame::NoFrame);
    auto *content = new QWidget;
    auto *column = new QVBoxLayout(content);
    new StandBanner(desk_, column, StandBanner::Shows::fields);
    fields_ = new QWidget;
    make_fields();
    column->addWidget(fields_);
    column->addStretch(1);
    for (QFormLayout *each : content->findChildren<QFormLayout *>())
        each->setRowWrapPolicy(QFormLayout::WrapLongRows);
    setWidget(content);
    keep_narrow(*this, *content);
    connect_choosers();
    connect(&desk_, &Desk::began, this, &FloorPanel::begin);
    connect(&desk_, &Desk::state_changed, this, &FloorPanel::refresh);
    connect(&selection_, &Selection::changed, this, &FloorPanel::follow_selection);
}

/// Which floor, and all of the one that is chosen.
void FloorPanel::make_fields() {
    auto *fields = new QVBoxLayout(fields_);
    fields->setContentsMargins(0, 0, 0, 0);
    auto *form = new QFormLayout;
    floors_ = chooser(form, tr("&Floor"), tr("Add a floor"), tr("Remove the floor"));
    form->addRow(complaint_);
    fields->addLayout(form);
    all_ = new QWidget;
    auto *inner = new QVBoxLayout(all_);
    inner->setContentsMargins(0, 0, 0, 0);
    auto *joists = new QFormLayout;
    make_joists(joists);
    make_joist_ends(joists);
    make_wood(joists);
    inner->addLayout(joists);
    inner->addWidget(beams_box());
    inner->addWidget(openings_box());
    fields->addWidget(all_);
}

/// Another document: nothing is known until what it says is read.
void FloorPanel::begin() {
    floor_ = beam_ = opening_ = 0;
    put_in_reach(*this, *fields_, false);
    blank_fields(*this);
    for (QComboBox *box : {floors_.box, beams_.box, openings_.box, from_, to_})
        box->clear();
    all_->setVisible(false);
    complaint_->clear();
}

FloorPanel::Chooser FloorPanel::chooser(QFormLayout *form, const QString &label, const QString &more,
                                        const QString &less) {
    Chooser made;
    auto *row = new QHBoxLayout;
    made.box = new QComboBox;
    made.box->setAccessibleName(plain(label));
    made.box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    row->addWidget(made.box, 1);
    made.more = sign_button(QStringLiteral("+"), more);
    made.less = sign_button(QStringLiteral("−"), less);
    row->addWidget(made.more);
    row->addWidget(made.less);
    auto *name = new QLabel(label);
    name->setBuddy(made.box);
    form->addRow(name, row);
    return made;
}

void FloorPanel::take_from(QFormLayout *form, const QString &label, MeasureEdit *edit, const Change &set) {
    add_field(*form, label, *edit);
    connect(edit, &MeasureEdit::committed, this, [this, edit, set] {
        commit(*edit, desk_, [&] { change(set); });
        complaint_->clear(); // it is told beside the field
    });
}

LengthEdit *FloorPanel::length_field(QFormLayout *form, const QString &name, const QString &label,
                                     const std::function<void(Floor &, LengthEdit &)> &set) {
    auto *edit = new LengthEdit;
    edit->setObjectName(name);
    take_from(form, label, edit, [edit, set](Floor &floor) { set(floor, *edit); });
    return edit;
}

LengthEdit *FloorPanel::joist_field(QFormLayout *form, const QString &name, const QString &label,
                                    Length Floor::*part) {
    return length_field(form, name, label,
                        [part](Floor &floor, LengthEdit &edit) { floor.*part = edit.length(); });
}

LengthEdit *FloorPanel::optional_field(QFormLayout *form, const char *name, const QString &label,
                                       const QString &when_empty, std::optional<Length> Floor::*part) {
    auto *edit = length_field(form, QLatin1String(name), label,
                              [part](Floor &floor, LengthEdit &e) { floor.*part = e.stated(); });
    edit->set_optional(true);
    edit->setPlaceholderText(when_empty);
    return edit;
}

LengthEdit *FloorPanel::beam_field(QFormLayout *form, const QString &name, const QString &label,
                                   const std::function<Length &(Beam &)> &part) {
    return length_field(form, name, label, [this, part](Floor &floor, LengthEdit &edit) {
        const auto at = static_cast<std::size_t>(beam_);
        if (at < floor.beams.size()) part(floor.beams[at]) = edit.length();
    });
}

LengthEdit *FloorPanel::opening_field(QFormLayout *form, const QString &name, const QString &label,
                                      Length FloorOpening::*part) {
    return length_field(form, name, label, [this, part](Floor &floor, LengthEdit &edit) {
        const auto at = static_cast<std::size_t>(opening_);
        if (at < floor.openings.size()) floor.openings[at].*part = edit.length();
    });
}

QComboBox *FloorPanel::wall_field(QFormLayout *form, const QString &label, std::string Floor::*part) {
    auto *box = new QComboBox;
    box->setAccessibleName(plain(label));
    form->addRow(label, box);
    connect(box, &QComboBox::activated, this, [this, box, part] {
        change([box, part](Floor &floor) { floor.*part = box->currentText().toStdString(); });
    });
    return box;
}

LoadEdit *FloorPanel::load_field(QFormLayout *form, const QString &name, const QString &label,
                                 std::optional<double> Floor::*part) {
    auto *edit = new LoadEdit;
    edit->setObjectName(name);
    edit->setPlaceholderText(tr("no screen of spans"));
    take_from(form, label, edit, [edit, part](Floor &floor) { floor.*part = edit->load(); });
    return edit;
}

void FloorPanel::make_joists(QFormLayout *form) {
    take_from(form, tr("Na&me"), name_, [this](Floor &floor) { floor.name = name_->name().toStdString(); });
    from_ = wall_field(form, tr("Joists fro&m wall"), &Floor::from);
    to_ = wall_field(form, tr("to &wall"), &Floor::to);
    level_ = joist_field(form, QStringLiteral("level"), tr("Le&vel of their tops"), &Floor::level);
    spacing_ = joist_field(form, QStringLiteral("spacing"), tr("&Spacing"), &Floor::spacing);
    first_ = optional_field(form, "first", tr("First s&pace"), tr("as the spacing"), &Floor::first);
    width_ = length_field(form, QStringLiteral("joist_width"), tr("Joist w&idth"),
                          [](Floor &floor, LengthEdit &e) { floor.joist.width = e.length(); });
    height_ = length_field(form, QStringLiteral("joist_height"), tr("Joist &height"),
                           [](Floor &floor, LengthEdit &e) { floor.joist.height = e.length(); });
    tip_width_ =
        optional_field(form, "tip_width", tr("Width at the tip"), tr("as the butt"), &Floor::tip_width);
    tip_height_ =
        optional_field(form, "tip_height", tr("Height at the tip"), tr("as the butt"), &Floor::tip_height);
}

void FloorPanel::make_joist_ends(QFormLayout *form) {
    bearing_ = joist_field(form, QStringLiteral("bearing"), tr("&Bearing"), &Floor::bearing);
    pocket_ = new QComboBox;
    pocket_->addItems({tr("square"), tr("tailed")});
    pocket_->setAccessibleName(tr("Pocket"));
    form->addRow(tr("Poc&ket"), pocket_);
    tail_ = new SlopeEdit;
    take_from(form, tr("Each &cheek widens by"), tail_,
              [this](Floor &floor) { floor.tail = tail_->slope(); });
    live_ = load_field(form, QStringLiteral("live_load"), tr("&Live load"), &Floor::live_load);
    dead_ = load_field(form, QStringLiteral("dead_load"), tr("&Dead load"), &Floor::dead_load);
    connect(pocket_, &QComboBox::activated, this, [this](int kind) {
        change([kind](Floor &floor) { floor.pocket = static_cast<PocketKind>(kind); });
    });
}

/// Of joists that were found, and of another wood than the walls.
void FloorPanel::make_wood(QFormLayout *form) {
    fabric_ = new QComboBox;
    fabric_->addItems({tr("not stated"), tr("new"), tr("kept"), tr("patched"), tr("replacement")});
    fabric_->setObjectName(QStringLiteral("floor_fabric"));
    fabric_->setAccessibleName(tr("Fabric"));
    form->addRow(tr("Fabric"), fabric_);
    connect(fabric_, &QComboBox::activated, this, [this](int row) {
        change([row](Floor &floor) {
            floor.fabric = row > 0 ? std::optional(static_cast<Fabric>(row - 1)) : std::nullopt;
        });
    });
    species_ = new QComboBox;
    species_->addItem(tr("as the shell"));
    add_species(*species_);
    species_->setObjectName(QStringLiteral("floor_species"));
    species_->setAccessibleName(tr("Wood"));
    form->addRow(tr("Wood"), species_);
    connect(species_, &QComboBox::activated, this, [this] {
        const std::string species = species_->currentData().toString().toStdString();
        change([species](Floor &floor) { floor.species = species; });
    });
}

QGroupBox *FloorPanel::beams_box() {
    auto *box = new QGroupBox(tr("Beams below the joists"));
    auto *form = new QFormLayout(box);
    beams_ = chooser(form, tr("B&eam"), tr("Add a beam"), tr("Remove the beam"));
    beam_at_ = beam_field(form, QStringLiteral("beam_at"), tr("From wall, to its middle"),
                          [](Beam &b) -> Length & { return b.from_wall; });
    beam_width_ = beam_field(form, QStringLiteral("beam_width"), tr("Beam width"),
                             [](Beam &b) -> Length & { return b.size.width; });
    beam_height_ = beam_field(form, QStringLiteral("beam_height"), tr("Beam height"),
                              [](Beam &b) -> Length & { return b.size.height; });
    return box;
}

QGroupBox *FloorPanel::openings_box() {
    auto *box = new QGroupBox(tr("Openings for stairs and hatches"));
    auto *form = new QFormLayout(box);
    openings_ = chooser(form, tr("&Opening"), tr("Add an opening"), tr("Remove the opening"));
    opening_name_ = new NameEdit;
    opening_name_->setAccessibleName(tr("Name of the opening"));
    take_from(form, tr("Name"), opening_name_, [this](Floor &floor) {
        const auto at = static_cast<std::size_t>(opening_);
        if (at < floor.openings.size()) floor.openings[at].name = opening_name_->name().toStdString();
    });
    opening_left_ =
        opening_field(form, QStringLiteral("opening_left"), tr("From the left"), &FloorOpening::from_left);
    opening_wall_ =
        opening_field(form, QStringLiteral("opening_wall"), tr("From the wall"), &FloorOpening::from_wall);
    opening_width_ = opening_field(form, QStringLiteral("opening_width"), tr("Width"), &FloorOpening::width);
    opening_length_ =
        opening_field(form, QStringLiteral("opening_length"), tr("Length"), &FloorOpening::length);
    return box;
}

void FloorPanel::connect_choosers() {
    const auto follow = [this](const Chooser &chooser, int &index) {
        connect(chooser.box, &QComboBox::activated, this, [this, &index](int chosen) {
            index = chosen;
            let_go();
            refresh();
        });
    };
    follow(floors_, floor_);
    follow(beams_, beam_);
    follow(openings_, opening_);
    connect(floors_.more, &QToolButton::clicked, this, &FloorPanel::add_floor);
    connect(floors_.less, &QToolButton::clicked, this, &FloorPanel::remove_floor);
    connect(beams_.more, &QToolButton::clicked, this, &FloorPanel::add_beam);
    connect(beams_.less, &QToolButton::clicked, this, &FloorPanel::remove_beam);
    connect(openings_.more, &QToolButton::clicked, this, &FloorPanel::add_opening);
    connect(openings_.less, &QToolButton::clicked, this, &FloorPanel::remove_opening);
}

LengthEdit *FloorPanel::field(const QString &name) const {
    return findChild<LengthEdit *>(name);
}

} // namespace roundlay::window
