#include "modeler/window/panels/log_panel.h"

#include "kernel/shell/plan_edit.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/shell_edits.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/panels/log_words.h"
#include "modeler/window/views/tints.h"

#include <QComboBox>
#include <QFormLayout>
#include <QGroupBox>
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>

namespace roundlay::window {

LogPanel::LogPanel(Desk &desk, Selection &selection, QWidget *parent)
    : QWidget(parent), desk_(desk), selection_(selection), title_(new QLabel), words_(new QLabel),
      complaint_(new QLabel), log_(log_box()), opening_(opening_box()), wall_(new QGroupBox(tr("Wall"))) {
    auto *form = new QFormLayout(wall_);
    wall_length_ = length_field(form, QStringLiteral("wall_length"), tr("&Length outside"), false);
    connect(wall_length_, &LengthEdit::committed, this, &LogPanel::take_wall);
    QFont large = title_->font();
    large.setPointSizeF(large.pointSizeF() * 1.3);
    large.setBold(true);
    title_->setFont(large);
    words_->setWordWrap(true);
    words_->setAlignment(Qt::AlignTop);
    words_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    words_->setAccessibleName(tr("Numbers of what is chosen"));
    complaint_->setWordWrap(true);
    auto *inside = new QWidget;
    auto *column = new QVBoxLayout(inside);
    for (QWidget *part : std::initializer_list<QWidget *>{title_, complaint_, opening_, wall_, log_, words_})
        column->addWidget(part);
    column->addStretch(1);
    auto *scroll = new QScrollArea;
    scroll->setWidget(inside);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    auto *whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(scroll);
    connect(&desk_, &Desk::state_changed, this, &LogPanel::refresh);
    connect(&selection_, &Selection::changed, this, &LogPanel::refresh);
    refresh();
}

LengthEdit *LogPanel::length_field(QFormLayout *form, const QString &name, const QString &label,
                                   bool optional) {
    auto *edit = new LengthEdit;
    edit->setObjectName(name);
    edit->set_optional(optional);
    edit->setAccessibleName(QString(label).remove(u'&'));
    if (optional) edit->setPlaceholderText(tr("as the wall"));
    form->addRow(label, edit);
    connect(edit, &MeasureEdit::complained, complaint_, &QLabel::setText);
    return edit;
}

QGroupBox *LogPanel::log_box() {
    auto *box = new QGroupBox(tr("Of its own, for the whole log"));
    auto *form = new QFormLayout(box);
    butt_height_ = length_field(form, QStringLiteral("butt_height"), tr("&Butt height"), true);
    tip_height_ = length_field(form, QStringLiteral("tip_height"), tr("&Tip height"), true);
    butt_width_ = length_field(form, QStringLiteral("butt_width"), tr("Butt &width"), true);
    tip_width_ = length_field(form, QStringLiteral("tip_width"), tr("Tip wi&dth"), true);
    butt_ = new QComboBox;
    butt_->addItems({tr("by turns"), tr("left"), tr("right")});
    butt_->setAccessibleName(tr("Where the butt lies"));
    form->addRow(tr("Butt l&ies"), butt_);
    diameter_ = length_field(form, QStringLiteral("diameter"), tr("Stick a&cross"), true);
    diameter_->setPlaceholderText(tr("not stated"));
    add_record(form);
    for (LengthEdit *edit : {butt_height_, tip_height_, butt_width_, tip_width_, diameter_, bow_})
        connect(edit, &LengthEdit::committed, this, &LogPanel::take_log);
    for (QComboBox *choice : {butt_, finish_, fabric_})
        connect(choice, &QComboBox::activated, this, &LogPanel::take_log);
    connect(mark_, &QLineEdit::editingFinished, this, [this] {
        if (mark_->isModified()) take_log();
    });
    return box;
}

/// What is recorded of the log rather than worked out. The words stand in the order of Finish and Fabric.
void LogPanel::add_record(QFormLayout *form) {
    finish_ = new QComboBox;
    finish_->addItems({tr("as the shell"), tr("hewn"), tr("sawn"), tr("peeled")});
    finish_->setAccessibleName(tr("Finish"));
    form->addRow(tr("&Finish"), finish_);
    fabric_ = new QComboBox;
    fabric_->addItems({tr("newly cut"), tr("kept"), tr("patched"), tr("replacement")});
    fabric_->setAccessibleName(tr("Fabric"));
    fabric_->setObjectName(QStringLiteral("fabric"));
    form->addRow(tr("F&abric"), fabric_);
    bow_ = length_field(form, QStringLiteral("bow"), tr("B&ow"), true);
    bow_->setPlaceholderText(tr("straight"));
    mark_ = new QLineEdit;
    mark_->setObjectName(QStringLiteral("mark"));
    mark_->setAccessibleName(tr("Mark on the log"));
    form->addRow(tr("Mar&k"), mark_);
}

QGroupBox *LogPanel::opening_box() {
    auto *box = new QGroupBox(tr("Opening"));
    auto *form = new QFormLayout(box);
    name_ = new QLineEdit;
    name_->setObjectName(QStringLiteral("name"));
    form->addRow(tr("&Name"), name_);
    kind_ = new QComboBox;
    kind_->addItems({tr("door"), tr("window")});
    form->addRow(tr("&Kind"), kind_);
    from_left_ = length_field(form, QStringLiteral("from_left"), tr("From the &left"), false);
    sill_ = length_field(form, QStringLiteral("sill"), tr("&Sill"), false);
    width_ = length_field(form, QStringLiteral("width"), tr("&Width"), false);
    height_ = length_field(form, QStringLiteral("height"), tr("&Height"), false);
    for (LengthEdit *edit : {from_left_, sill_, width_, height_})
        connect(edit, &LengthEdit::committed, this, &LogPanel::take_opening);
    connect(kind_, &QComboBox::activated, this, &LogPanel::take_opening);
    connect(name_, &QLineEdit::editingFinished, this, &LogPanel::take_name);
    return box;
}

LengthEdit *LogPanel::field(const QString &object_name) const {
    return findChild<LengthEdit *>(object_name);
}

QString LogPanel::words() const {
    return words_->text();
}

void LogPanel::refresh() {
    QPalette red = palette();
    red.setColor(QPalette::WindowText, tints().error);
    complaint_->setPalette(red);
    const Chosen &chosen = selection_.chosen();
    const StatePtr &state = desk_.standing();
    const int piece =
        state && chosen.kind == Chosen::Kind::piece ? piece_tagged(state->job.layout, chosen.name) : -1;
    // A floor's timbers have their sizes from the floor.
    const bool of_wall =
        piece >= 0 && state->job.layout.pieces[static_cast<std::size_t>(piece)].timber < 0;
    log_->setVisible(of_wall);
    opening_->setVisible(state && chosen.kind == Chosen::Kind::opening);
    wall_->setVisible(state && chosen.kind == Chosen::Kind::wall);
    words_->clear();
    title_->setText(tr("Nothing chosen"));
    if (piece >= 0)
        show_log(piece);
    else if (opening_->isVisibleTo(this))
        show_opening();
    else if (wall_->isVisibleTo(this))
        show_wall();
    else if (state && chosen.kind == Chosen::Kind::corner)
        title_->setText(tr("Corner %1").arg(text(chosen.name)));
    else
        words_->setText(tr("Choose a log, an opening, a wall or a corner in any view."));
}

void LogPanel::show_log(int piece) {
    const State &state = *desk_.standing();
    const Piece &p = state.job.layout.pieces[static_cast<std::size_t>(piece)];
    title_->setText(text(p.tag));
    if (!desk_.dragging()) words_->setText(words_of_piece(state, piece));
    const LogSizes sizes =
        sizes_of(state.job.shell, state.job.layout.walls[static_cast<std::size_t>(p.wall)].name, p.round);
    const UnitSystem units = desk_.units();
    butt_height_->set_length(sizes.butt_height, units);
    tip_height_->set_length(sizes.tip_height, units);
    butt_width_->set_length(sizes.butt_width, units);
    tip_width_->set_length(sizes.tip_width, units);
    butt_->setCurrentIndex(!sizes.butt ? 0 : *sizes.butt == LogEnd::left ? 1 : 2);
    const OwnLog own = own_log(state.job.shell, state.job.layout.walls[static_cast<std::size_t>(p.wall)].name, p.round);
    diameter_->set_length(sizes.diameter, units);
    finish_->setCurrentIndex(sizes.finish ? 1 + static_cast<int>(*sizes.finish) : 0);
    fabric_->setCurrentIndex(own.fabric ? static_cast<int>(*own.fabric) : 0);
    bow_->set_length(own.bow == Length() ? std::optional<Length>() : own.bow, units);
    if (!mark_->isModified()) mark_->setText(text(own.mark));
}

void LogPanel::show_opening() {
    const auto &stated = desk_.state()->read.shell; // also what cannot be built
    const auto &openings = stated ? stated->openings : desk_.standing()->job.shell.openings;
    const auto at = static_cast<std::size_t>(selection_.chosen().opening);
    if (at >= openings.size()) return;
    const Opening &o = openings[at];
    title_->setText(o.name.empty() ? tr("Opening in wall %1").arg(text(o.wall)) : text(o.name));
    if (!name_->isModified()) name_->setText(text(o.name));
    kind_->setCurrentIndex(o.kind == OpeningKind::door ? 0 : 1);
    const UnitSystem units = desk_.units();
    from_left_->set_length(o.from_left, units);
    sill_->set_length(o.sill, units);
    width_->set_length(o.width, units);
    height_->set_length(o.height, units);
}

void LogPanel::show_wall() {
    title_->setText(tr("Wall %1").arg(text(selection_.chosen().name)));
    for (const WallPlace &w : desk_.standing()->job.layout.walls)
        if (w.name == selection_.chosen().name) wall_length_->set_length(Length::mm(w.length), desk_.units());
}

void LogPanel::take_log() {
    if (!desk_.standing()) return;
    const Layout &layout = desk_.standing()->job.layout;
    const int piece = piece_tagged(layout, selection_.chosen().name);
    if (piece < 0) return;
    const Piece &p = layout.pieces[static_cast<std::size_t>(piece)];
    if (p.timber >= 0) return;
    const std::string wall = layout.walls[static_cast<std::size_t>(p.wall)].name;
    mark_->setModified(false);
    desk_.edit(tr("State log %1").arg(text(p.tag)), [&](const Shell &shell) {
        OwnLog log = own_log(shell, wall, p.round);
        take_fields(log);
        return std::optional(with_own_log(shell, log));
    });
}

/// What has no field stays as stated.
void LogPanel::take_fields(OwnLog &log) const {
    LogSizes &sizes = log.sizes;
    sizes.butt_height = butt_height_->stated();
    sizes.tip_height = tip_height_->stated();
    sizes.butt_width = butt_width_->stated();
    sizes.tip_width = tip_width_->stated();
    sizes.diameter = diameter_->stated();
    sizes.butt.reset();
    if (butt_->currentIndex() > 0) sizes.butt = butt_->currentIndex() == 1 ? LogEnd::left : LogEnd::right;
    sizes.finish.reset();
    if (finish_->currentIndex() > 0) sizes.finish = static_cast<Finish>(finish_->currentIndex() - 1);
    if (fabric_->currentIndex() > 0)
        log.fabric = static_cast<Fabric>(fabric_->currentIndex());
    else if (log.fabric != Fabric::newly_cut) // stated or not, it is the same
        log.fabric.reset();
    log.bow = bow_->stated().value_or(Length());
    log.mark = mark_->text().toStdString();
}

void LogPanel::take_opening() {
    const int at = selection_.chosen().opening;
    desk_.edit(tr("Change opening"), [&](const Shell &shell) -> std::optional<Shell> {
        if (at < 0 || at >= static_cast<int>(shell.openings.size())) return {};
        Shell next = shell;
        Opening &o = next.openings[static_cast<std::size_t>(at)];
        o.kind = kind_->currentIndex() == 0 ? OpeningKind::door : OpeningKind::window;
        o.from_left = from_left_->length();
        o.sill = sill_->length();
        o.width = width_->length();
        o.height = height_->length();
        return next;
    });
}

void LogPanel::take_name() {
    const int at = selection_.chosen().opening;
    if (!name_->isModified() || at < 0) return;
    name_->setModified(false);
    desk_.edit(tr("Name opening"), [&](const Shell &shell) -> std::optional<Shell> {
        if (at >= static_cast<int>(shell.openings.size())) return {};
        Shell next = shell;
        next.openings[static_cast<std::size_t>(at)].name = name_->text().toStdString();
        return next;
    });
}

void LogPanel::take_wall() {
    const std::string name = selection_.chosen().name;
    const Length length = wall_length_->length();
    desk_.edit(tr("Size wall"), [&](const Shell &shell) -> std::optional<Shell> {
        for (std::size_t i = 0; i < shell.walls.size(); ++i)
            if (shell.walls[i].name == name) return wall_lengthened(shell, i, length);
        return {};
    });
}

} // namespace roundlay::window
