#include "modeler/window/panels/floor_panel.h"

#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/floor_edits.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/views/tints.h"

#include <QComboBox>
#include <QFormLayout>
#include <QGroupBox>
#include <QLabel>
#include <QSignalBlocker>
#include <QStyle>
#include <QToolButton>

namespace roundlay::window {

namespace {

QString plain(QString label) {
    return label.remove(u'&');
}

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

/// Empty and out of reach where there is nothing that it could be of.
void show_length(LengthEdit &edit, bool any, Length length, UnitSystem units) {
    edit.setEnabled(any);
    edit.set_length(any ? std::optional(length) : std::nullopt, units);
}

} // namespace

FloorPanel::FloorPanel(Desk &desk, Selection &selection, QWidget *parent)
    : QScrollArea(parent), desk_(desk), selection_(selection), name_(new QLineEdit), complaint_(new QLabel) {
    setWidgetResizable(true);
    setAccessibleName(tr("Floors"));
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto *content = new QWidget;
    auto *column = new QVBoxLayout(content);
    auto *form = new QFormLayout;
    floors_ = chooser(form, tr("&Floor"), tr("Add a floor"), tr("Remove the floor"));
    complaint_->setWordWrap(true);
    form->addRow(complaint_);
    column->addLayout(form);
    all_ = new QWidget;
    auto *inner = new QVBoxLayout(all_);
    inner->setContentsMargins(0, 0, 0, 0);
    auto *joists = new QFormLayout;
    make_joists(joists);
    inner->addLayout(joists);
    inner->addWidget(beams_box());
    inner->addWidget(openings_box());
    column->addWidget(all_);
    column->addStretch(1);
    for (QFormLayout *each : content->findChildren<QFormLayout *>())
        each->setRowWrapPolicy(QFormLayout::WrapLongRows);
    setWidget(content);
    setMinimumWidth(content->minimumSizeHint().width() + style()->pixelMetric(QStyle::PM_ScrollBarExtent));
    connect_choosers();
    connect(&desk_, &Desk::began, this, [this] { floor_ = beam_ = opening_ = 0; });
    connect(&desk_, &Desk::state_changed, this, &FloorPanel::refresh);
    connect(&selection_, &Selection::changed, this, &FloorPanel::follow_selection);
}

FloorPanel::Chooser FloorPanel::chooser(QFormLayout *form, const QString &label, const QString &more,
                                        const QString &less) {
    Chooser made;
    auto *row = new QHBoxLayout;
    made.box = new QComboBox;
    made.box->setAccessibleName(plain(label));
    made.box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    row->addWidget(made.box, 1);
    const auto button = [&](const QString &sign, const QString &words) {
        auto *b = new QToolButton;
        b->setText(sign);
        b->setToolTip(words);
        b->setAccessibleName(words);
        row->addWidget(b);
        return b;
    };
    made.more = button(QStringLiteral("+"), more);
    made.less = button(QStringLiteral("−"), less);
    auto *name = new QLabel(label);
    name->setBuddy(made.box);
    form->addRow(name, row);
    return made;
}

LengthEdit *FloorPanel::length_field(QFormLayout *form, const QString &name, const QString &label,
                                     const std::function<void(Floor &, LengthEdit &)> &set) {
    auto *edit = new LengthEdit;
    edit->setObjectName(name);
    edit->setAccessibleName(plain(label));
    form->addRow(label, edit);
    connect(edit, &MeasureEdit::complained, complaint_, &QLabel::setText);
    connect(edit, &LengthEdit::committed, this,
            [this, edit, set] { change([edit, set](Floor &floor) { set(floor, *edit); }); });
    return edit;
}

LengthEdit *FloorPanel::joist_field(QFormLayout *form, const QString &name, const QString &label,
                                    Length Floor::*part) {
    return length_field(form, name, label,
                        [part](Floor &floor, LengthEdit &edit) { floor.*part = edit.length(); });
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

NumberEdit *FloorPanel::load_field(QFormLayout *form, const QString &label,
                                   std::optional<double> Floor::*part) {
    auto *edit = new NumberEdit;
    edit->setAccessibleName(plain(label));
    edit->setPlaceholderText(tr("no screen of spans"));
    form->addRow(label, edit);
    connect(edit, &MeasureEdit::complained, complaint_, &QLabel::setText);
    connect(edit, &NumberEdit::committed, this,
            [this, edit, part] { change([edit, part](Floor &floor) { floor.*part = edit->number(); }); });
    return edit;
}

void FloorPanel::make_joists(QFormLayout *form) {
    name_->setAccessibleName(tr("Name"));
    form->addRow(tr("Na&me"), name_);
    from_ = wall_field(form, tr("Joists fro&m wall"), &Floor::from);
    to_ = wall_field(form, tr("to &wall"), &Floor::to);
    level_ = joist_field(form, QStringLiteral("level"), tr("Le&vel of their tops"), &Floor::level);
    spacing_ = joist_field(form, QStringLiteral("spacing"), tr("&Spacing"), &Floor::spacing);
    const auto optional = [&](const char *name, const QString &label, const QString &when_empty,
                              std::optional<Length> Floor::*part) {
        auto *edit = length_field(form, QLatin1String(name), label,
                                  [part](Floor &floor, LengthEdit &e) { floor.*part = e.stated(); });
        edit->set_optional(true);
        edit->setPlaceholderText(when_empty);
        return edit;
    };
    first_ = optional("first", tr("First s&pace"), tr("as the spacing"), &Floor::first);
    width_ = length_field(form, QStringLiteral("joist_width"), tr("Joist w&idth"),
                          [](Floor &floor, LengthEdit &e) { floor.joist.width = e.length(); });
    height_ = length_field(form, QStringLiteral("joist_height"), tr("Joist &height"),
                           [](Floor &floor, LengthEdit &e) { floor.joist.height = e.length(); });
    tip_width_ = optional("tip_width", tr("Width at the tip"), tr("as the butt"), &Floor::tip_width);
    tip_height_ = optional("tip_height", tr("Height at the tip"), tr("as the butt"), &Floor::tip_height);
    bearing_ = joist_field(form, QStringLiteral("bearing"), tr("&Bearing"), &Floor::bearing);
    pocket_ = new QComboBox;
    pocket_->addItems({tr("square"), tr("tailed")});
    pocket_->setAccessibleName(tr("Pocket"));
    form->addRow(tr("Poc&ket"), pocket_);
    tail_ = new SlopeEdit;
    tail_->setAccessibleName(tr("Each cheek widens by"));
    form->addRow(tr("Each &cheek widens by"), tail_);
    live_ = load_field(form, tr("&Live load, kPa"), &Floor::live_load);
    dead_ = load_field(form, tr("&Dead load, kPa"), &Floor::dead_load);
    connect(name_, &QLineEdit::editingFinished, this, [this] {
        if (!name_->isModified()) return;
        name_->setModified(false);
        change([this](Floor &floor) { floor.name = name_->text().toStdString(); });
    });
    connect(pocket_, &QComboBox::activated, this, [this](int kind) {
        change([kind](Floor &floor) { floor.pocket = static_cast<PocketKind>(kind); });
    });
    connect(tail_, &MeasureEdit::complained, complaint_, &QLabel::setText);
    connect(tail_, &SlopeEdit::committed, this,
            [this] { change([this](Floor &floor) { floor.tail = tail_->slope(); }); });
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
    opening_name_ = new QLineEdit;
    opening_name_->setAccessibleName(tr("Name of the opening"));
    form->addRow(tr("Name"), opening_name_);
    opening_left_ =
        opening_field(form, QStringLiteral("opening_left"), tr("From the left"), &FloorOpening::from_left);
    opening_wall_ =
        opening_field(form, QStringLiteral("opening_wall"), tr("From the wall"), &FloorOpening::from_wall);
    opening_width_ = opening_field(form, QStringLiteral("opening_width"), tr("Width"), &FloorOpening::width);
    opening_length_ =
        opening_field(form, QStringLiteral("opening_length"), tr("Length"), &FloorOpening::length);
    connect(opening_name_, &QLineEdit::editingFinished, this, [this] {
        if (!opening_name_->isModified()) return;
        opening_name_->setModified(false);
        change([this](Floor &floor) {
            const auto at = static_cast<std::size_t>(opening_);
            if (at < floor.openings.size()) floor.openings[at].name = opening_name_->text().toStdString();
        });
    });
    return box;
}

void FloorPanel::connect_choosers() {
    const auto follow = [this](const Chooser &chooser, int &index) {
        connect(chooser.box, &QComboBox::activated, this, [this, &index](int chosen) {
            index = chosen;
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
    connect(&desk_, &Desk::refused, this, [this](const QString &why) {
        if (isVisible()) complaint_->setText(why);
    });
}

void FloorPanel::add_floor() {
    std::size_t count = 0;
    const bool done = desk_.edit(tr("Add floor"), [&](const Shell &shell) {
        count = shell.floors.size();
        return with_fitting_floor(shell);
    });
    if (done) floor_ = static_cast<int>(count);
}

void FloorPanel::remove_floor() {
    desk_.edit(tr("Remove floor"), [this](const Shell &shell) { return without_floor(shell, chosen()); });
}

void FloorPanel::add_beam() {
    std::size_t count = 0;
    const bool done = desk_.edit(tr("Add beam"), [&](const Shell &shell) {
        if (chosen() < shell.floors.size()) count = shell.floors[chosen()].beams.size();
        return with_fitting_beam(shell, chosen());
    });
    if (done) beam_ = static_cast<int>(count);
}

void FloorPanel::remove_beam() {
    desk_.edit(tr("Remove beam"), [this](const Shell &shell) {
        return with_floor(shell, chosen(), [this](Floor &floor) {
            if (beam_ < static_cast<int>(floor.beams.size())) floor.beams.erase(floor.beams.begin() + beam_);
        });
    });
}

void FloorPanel::add_opening() {
    std::size_t count = 0;
    const bool done = desk_.edit(tr("Add floor opening"), [&](const Shell &shell) {
        if (chosen() < shell.floors.size()) count = shell.floors[chosen()].openings.size();
        return with_fitting_floor_opening(shell, chosen());
    });
    if (done) opening_ = static_cast<int>(count);
}

void FloorPanel::remove_opening() {
    desk_.edit(tr("Remove floor opening"), [this](const Shell &shell) {
        return with_floor(shell, chosen(), [this](Floor &floor) {
            if (opening_ < static_cast<int>(floor.openings.size()))
                floor.openings.erase(floor.openings.begin() + opening_);
        });
    });
}

LengthEdit *FloorPanel::field(const QString &name) const {
    return findChild<LengthEdit *>(name);
}

void FloorPanel::change(const Change &change) {
    const auto &shell = desk_.state()->read.shell;
    if (!shell || chosen() >= shell->floors.size()) return;
    desk_.edit(tr("Change floor %1").arg(text(shell->floors[chosen()].name)),
               [&](const Shell &now) { return with_floor(now, chosen(), change); });
}

/// A joist that is chosen in a view brings its floor here.
void FloorPanel::follow_selection() {
    if (!desk_.standing() || selection_.chosen().kind != Chosen::Kind::piece) return;
    const Layout &layout = desk_.standing()->job.layout;
    const int piece = piece_tagged(layout, selection_.chosen().name);
    const int timber = piece < 0 ? -1 : layout.pieces[static_cast<std::size_t>(piece)].timber;
    if (timber < 0) return;
    floor_ = layout.timbers[static_cast<std::size_t>(timber)].floor;
    refresh();
}

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
    QPalette red = palette();
    red.setColor(QPalette::WindowText, tints().error);
    complaint_->setPalette(red);
    complaint_->clear();
    const auto &shell = desk_.state()->read.shell;
    setEnabled(shell.has_value());
    if (!shell) return;
    floor_ = std::clamp(floor_, 0, std::max(static_cast<int>(shell->floors.size()) - 1, 0));
    list_floors(*shell);
    const bool any = !shell->floors.empty();
    all_->setVisible(any);
    floors_.less->setEnabled(any);
    if (any) show_floor(shell->floors[chosen()], shell->units);
}

void FloorPanel::show_floor(const Floor &floor, UnitSystem units) {
    if (!name_->isModified()) name_->setText(text(floor.name));
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
    tail_->set_slope(floor.tail);
    tail_->setEnabled(floor.pocket == PocketKind::tailed);
    live_->set_number(floor.live_load);
    dead_->set_number(floor.dead_load);
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
    const auto show = [&](LengthEdit *edit, Length length) { show_length(*edit, count > 0, length, units); };
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
    if (!opening_name_->isModified()) opening_name_->setText(text(opening.name));
    const auto show = [&](LengthEdit *edit, Length length) { show_length(*edit, count > 0, length, units); };
    show(opening_left_, opening.from_left);
    show(opening_wall_, opening.from_wall);
    show(opening_width_, opening.width);
    show(opening_length_, opening.length);
}

} // namespace roundlay::window
