#include "modeler/window/panels/log_panel.h"

#include "kernel/shell/plan_edit.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/shell_edits.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/panels/log_fields.h"
#include "modeler/window/panels/log_words.h"
#include "modeler/window/views/tints.h"

#include <QComboBox>
#include <QFormLayout>
#include <QGroupBox>
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>

namespace roundlay::window {

namespace {

bool is_log(const Layout &layout, int piece) {
    return layout.pieces[static_cast<std::size_t>(piece)].timber < 0;
}

} // namespace

LogPanel::LogPanel(Desk &desk, Selection &selection, QWidget *parent)
    : QWidget(parent), desk_(desk), selection_(selection), title_(new QLabel), words_(new QLabel),
      complaint_(new QLabel), log_(new LogFields), opening_(opening_box()), wall_(new QGroupBox(tr("Wall"))) {
    auto *form = new QFormLayout(wall_);
    wall_length_ = length_field(form, QStringLiteral("wall_length"), tr("&Length outside"));
    connect(wall_length_, &LengthEdit::committed, this, &LogPanel::take_wall);
    QFont large = title_->font();
    large.setPointSizeF(large.pointSizeF() * 1.3);
    large.setBold(true);
    title_->setFont(large);
    connect(log_, &LogFields::stated, this, &LogPanel::take_log);
    connect(log_, &LogFields::complained, complaint_, &QLabel::setText);
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
    scroll->setAccessibleName(tr("What is chosen"));
    auto *whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(scroll);
    connect(&desk_, &Desk::state_changed, this, &LogPanel::refresh);
    connect(&selection_, &Selection::changed, this, &LogPanel::refresh);
    refresh();
}

LengthEdit *LogPanel::length_field(QFormLayout *form, const QString &name, const QString &label) {
    auto *edit = new LengthEdit;
    edit->setObjectName(name);
    edit->setAccessibleName(QString(label).remove(u'&'));
    form->addRow(label, edit);
    connect(edit, &MeasureEdit::complained, complaint_, &QLabel::setText);
    return edit;
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
    from_left_ = length_field(form, QStringLiteral("from_left"), tr("From the &left"));
    sill_ = length_field(form, QStringLiteral("sill"), tr("&Sill"));
    width_ = length_field(form, QStringLiteral("width"), tr("&Width"));
    height_ = length_field(form, QStringLiteral("height"), tr("&Height"));
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
    log_->setVisible(piece >= 0 && is_log(state->job.layout, piece)); // a floor's timber states nothing alone
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
        show_corner();
    else
        words_->setText(tr("Choose a log, an opening, a wall or a corner in any view."));
}

void LogPanel::show_log(int piece) {
    const State &state = *desk_.standing();
    const Piece &p = state.job.layout.pieces[static_cast<std::size_t>(piece)];
    title_->setText(text(p.tag));
    if (!desk_.dragging()) words_->setText(words_of_piece(state, piece));
    if (!is_log(state.job.layout, piece)) return;
    const std::string &wall = state.job.layout.walls[static_cast<std::size_t>(p.wall)].name;
    log_->show_log(own_log(state.job.shell, wall, p.round), desk_.units());
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
    if (desk_.is_current()) words_->setText(words_of_opening(*desk_.standing(), static_cast<int>(at)));
}

void LogPanel::show_corner() {
    title_->setText(tr("Corner %1").arg(text(selection_.chosen().name)));
    words_->setText(tr("Its notch is seen, and changed, in the panel Joint."));
}

void LogPanel::show_wall() {
    title_->setText(tr("Wall %1").arg(text(selection_.chosen().name)));
    for (const WallPlace &w : desk_.standing()->job.layout.walls)
        if (w.name == selection_.chosen().name) wall_length_->set_length(Length::mm(w.length), desk_.units());
    const auto &outside = desk_.standing()->job.shell.walls;
    wall_length_->setEnabled(std::any_of(outside.begin(), outside.end(), [&](const Wall &w) {
        return w.name == selection_.chosen().name; // a partition is as long as its place asks
    }));
}

void LogPanel::take_log() {
    if (!desk_.standing()) return;
    const Layout &layout = desk_.standing()->job.layout;
    const int piece = piece_tagged(layout, selection_.chosen().name);
    if (piece < 0) return;
    if (!is_log(layout, piece)) return;
    const Piece &p = layout.pieces[static_cast<std::size_t>(piece)];
    const std::string wall = layout.walls[static_cast<std::size_t>(p.wall)].name;
    desk_.edit(tr("State log %1").arg(text(p.tag)), [&](const Shell &shell) {
        return std::optional(with_own_log(shell, log_->stated_over(own_log(shell, wall, p.round))));
    });
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
