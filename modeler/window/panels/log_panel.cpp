#include "modeler/window/panels/log_panel.h"

#include "kernel/design/shell_edits.h"
#include "kernel/shell/plan_edit.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/panels/field_row.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/panels/log_fields.h"
#include "modeler/window/panels/log_words.h"
#include "modeler/window/panels/scrolled.h"
#include "modeler/window/panels/step_fields.h"
#include "modeler/window/views/stand_banner.h"

#include <QComboBox>
#include <QCoreApplication>
#include <QFormLayout>
#include <QGroupBox>
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>

namespace roundlay::window {

namespace {

bool is_log(const Layout &layout, Index<Piece> piece) {
    return roundlay::is_log(layout.pieces[piece]);
}

/// Another log lies in the same round of the same wall, beyond an opening.
bool is_parted(const Layout &layout, const Piece &piece) {
    return std::count_if(layout.pieces.begin(), layout.pieces.end(), [&](const Piece &other) {
               return roundlay::is_log(other) && other.wall == piece.wall && other.round == piece.round;
           }) > 1;
}

} // namespace

LogPanel::LogPanel(Desk &desk, Selection &selection, QWidget *parent)
    : QWidget(parent), desk_(desk), selection_(selection), title_(new QLabel), words_(new QLabel),
      log_(new LogFields), opening_(opening_box()), wall_(new QGroupBox(tr("Wall"))),
      steps_(new StepFields(desk)) {
    make_wall_fields();
    make_words();
    connect(log_, &LogFields::stated, this, &LogPanel::take_log);
    connect(log_, &LogFields::meant_another, this, &LogPanel::follow_selection);
    auto *inside = new QWidget;
    fill(*inside);
    scroll_ = scrolled(inside);
    scroll_->setFocusPolicy(Qt::StrongFocus); // by the keyboard: there is more to read than to fill in
    scroll_->setAccessibleName(tr("What is chosen"));
    auto *whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(scroll_);
    keep_narrow(*this, *inside);
    connect(&desk_, &Desk::state_changed, this, &LogPanel::refresh);
    connect(&selection_, &Selection::changed, this, &LogPanel::follow_selection);
    refresh();
}

void LogPanel::fill(QWidget &inside) {
    auto *column = new QVBoxLayout(&inside);
    for (QWidget *part : std::initializer_list<QWidget *>{title_, opening_, wall_, steps_, log_})
        column->addWidget(part);
    new StandBanner(desk_, column,
                    StandBanner::Shows::as_stood); // over the figures: the fields are as stated
    column->addWidget(words_);
    column->addStretch(1);
}

void LogPanel::make_wall_fields() {
    auto *form = new QFormLayout(wall_);
    wall_length_ = length_field(form, QStringLiteral("wall_length"), tr("&Length outside"));
    connect(wall_length_, &LengthEdit::committed, this,
            [this] { commit(*wall_length_, desk_, [this] { take_wall(); }); });
}

/// What is chosen, and its numbers.
void LogPanel::make_words() {
    QFont large = title_->font();
    large.setPointSizeF(large.pointSizeF() * 1.3);
    large.setBold(true);
    title_->setFont(large);
    words_->setWordWrap(true);
    words_->setAlignment(Qt::AlignTop);
    words_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    words_->setAccessibleName(tr("Numbers of what is chosen"));
}

LengthEdit *LogPanel::length_field(QFormLayout *form, const QString &name, const QString &label) {
    auto *edit = new LengthEdit;
    edit->setObjectName(name);
    add_field(*form, label, *edit);
    return edit;
}

QGroupBox *LogPanel::opening_box() {
    auto *box = new QGroupBox(tr("Opening"));
    auto *form = new QFormLayout(box);
    name_ = new NameEdit;
    name_->setObjectName(QStringLiteral("name"));
    add_field(*form, tr("&Name"), *name_);
    kind_ = new QComboBox;
    kind_->addItems({tr("door"), tr("window")});
    form->addRow(tr("&Kind"), kind_);
    from_left_ = length_field(form, QStringLiteral("from_left"), tr("From the &left"));
    sill_ = length_field(form, QStringLiteral("sill"), tr("&Sill"));
    width_ = length_field(form, QStringLiteral("width"), tr("&Width"));
    height_ = length_field(form, QStringLiteral("height"), tr("&Height"));
    for (LengthEdit *edit : {from_left_, sill_, width_, height_})
        connect(edit, &LengthEdit::committed, this,
                [this, edit] { commit(*edit, desk_, [this] { take_opening(); }); });
    connect(kind_, &QComboBox::activated, this, &LogPanel::take_opening);
    connect(name_, &NameEdit::committed, this, [this] { commit(*name_, desk_, [this] { take_name(); }); });
    return box;
}

LengthEdit *LogPanel::field(const QString &object_name) const {
    return findChild<LengthEdit *>(object_name);
}

QString LogPanel::words() const {
    return words_->text();
}

/// What was typed of one thing and not taken is not typed of the next.
void LogPanel::follow_selection() {
    for (MeasureEdit *edit : findChildren<MeasureEdit *>())
        edit->let_go();
    refresh();
}

const Shell &LogPanel::stated() const {
    const auto &read = desk_.state()->read.shell;
    return read ? *read : desk_.standing()->job.shell;
}

void LogPanel::refresh() {
    const Chosen &chosen = selection_.chosen();
    const StatePtr &state = desk_.standing();
    const auto piece = state && chosen.kind == Chosen::Kind::piece
                           ? piece_tagged(state->job.layout, chosen.name)
                           : std::nullopt;
    log_->setVisible(piece && is_log(state->job.layout, *piece)); // a floor's timber states nothing alone
    opening_->setVisible(state && chosen.kind == Chosen::Kind::opening);
    wall_->setVisible(state && chosen.kind == Chosen::Kind::wall);
    steps_->setVisible(wall_->isVisibleTo(this));
    words_->setForegroundRole(desk_.standing_is_old() ? QPalette::PlaceholderText : QPalette::WindowText);
    words_->setText(shown(piece));
    lay_out_now();
}

/// The library lays what scrolls out after it has painted, and then paints the whole window once more.
void LogPanel::lay_out_now() {
    for (QWidget *part : {scroll_->widget(), scroll_->viewport()})
        QCoreApplication::sendPostedEvents(part, QEvent::LayoutRequest);
}

/// Shows what is chosen in the fields, and says what there is to tell of it beneath them.
QString LogPanel::shown(std::optional<Index<Piece>> piece) {
    if (piece) return show_log(*piece);
    if (opening_->isVisibleTo(this)) return show_opening();
    if (wall_->isVisibleTo(this)) return show_wall();
    if (desk_.standing() && selection_.chosen().kind == Chosen::Kind::corner) return show_corner();
    title_->setText(tr("Nothing chosen"));
    return tr("Choose a log, an opening, a wall or a corner in any view.");
}

QString LogPanel::show_log(Index<Piece> piece) {
    const State &state = *desk_.standing();
    const Piece &p = state.job.layout.pieces[piece];
    title_->setText(text(p.tag));
    const QString words = desk_.dragging() ? QString() : words_of_piece(state, piece);
    if (!is_log(state.job.layout, piece)) return words;
    const std::string &wall = state.job.layout.walls[p.wall].name;
    const bool parted = is_parted(state.job.layout, p);
    log_->offer_parts(parted ? text(p.tag) : QString(),
                      says_something_of(stated(), {wall, p.round, p.number}));
    log_->show_log(own_log(stated(), log_place(p)), stated().logs, desk_.units(),
                   stated().notch.kind == NotchKind::saddle);
    return words;
}

LogPlace LogPanel::log_place(const Piece &piece) const {
    LogPlace place{desk_.standing()->job.layout.walls[piece.wall].name, piece.round, {}};
    if (log_->is_alone()) place.piece = piece.number;
    return place;
}

QString LogPanel::show_opening() {
    const auto &openings = stated().openings;
    const auto at = static_cast<std::size_t>(selection_.chosen().opening);
    if (at >= openings.size()) { // of a text that is not read yet
        opening_->hide();
        title_->setText(tr("Nothing chosen"));
        return {};
    }
    const Opening &o = openings[at];
    title_->setText(o.name.empty() ? tr("Opening in wall %1").arg(text(o.wall)) : text(o.name));
    name_->set_name(text(o.name));
    kind_->setCurrentIndex(o.kind == OpeningKind::door ? 0 : 1);
    const UnitSystem units = desk_.units();
    from_left_->set_length(o.from_left, units);
    sill_->set_length(o.sill, units);
    width_->set_length(o.width, units);
    height_->set_length(o.height, units);
    return desk_.is_current() ? words_of_opening(*desk_.standing(), static_cast<int>(at)) : QString();
}

QString LogPanel::show_corner() {
    title_->setText(tr("Corner %1").arg(text(selection_.chosen().name)));
    return tr("Its notch is seen, and changed, in the panel Joint.");
}

QString LogPanel::show_wall() {
    title_->setText(tr("Wall %1").arg(text(selection_.chosen().name)));
    for (const WallPlace &w : desk_.standing()->job.layout.walls)
        if (w.name == selection_.chosen().name) wall_length_->set_length(Length::mm(w.length), desk_.units());
    const auto &outside = stated().walls;
    const auto at = std::find_if(outside.begin(), outside.end(),
                                 [&](const Wall &w) { return w.name == selection_.chosen().name; });
    wall_length_->setEnabled(at != outside.end()); // a partition is as long as its place asks
    if (at != outside.end()) wall_length_->set_length(at->length, desk_.units());
    steps_->show_steps(stated(), selection_.chosen().name);
    return {};
}

void LogPanel::add_step(const std::string &wall, std::optional<double> along) {
    if (!desk_.standing()) return;
    for (const WallPlace &w : desk_.standing()->job.layout.walls)
        if (w.name == wall) {
            selection_.choose_wall(wall);
            steps_->add(along.value_or(w.length / 2));
        }
}

void LogPanel::take_log(MeasureEdit *field) {
    if (!desk_.standing()) return;
    const Layout &layout = desk_.standing()->job.layout;
    const auto piece = piece_tagged(layout, selection_.chosen().name);
    if (!piece) return;
    if (!is_log(layout, *piece)) return;
    const Piece &p = layout.pieces[*piece];
    const LogPlace place = log_place(p);
    const auto state_it = [&] {
        desk_.edit(tr("State log %1").arg(text(p.tag)), [&](const Shell &shell) {
            return std::optional(with_own_log(shell, log_->stated_over(own_log(shell, place))));
        });
    };
    if (field != nullptr) return commit(*field, desk_, state_it);
    state_it();
}

void LogPanel::edit_opening(const QString &name, const std::function<void(Opening &)> &change) {
    const int at = selection_.chosen().opening;
    desk_.edit(name, [&](const Shell &shell) -> std::optional<Shell> {
        if (at < 0 || at >= static_cast<int>(shell.openings.size())) return {};
        Shell next = shell;
        change(next.openings[static_cast<std::size_t>(at)]);
        return next;
    });
}

void LogPanel::take_opening() {
    edit_opening(tr("Change opening"), [this](Opening &o) {
        o.kind = kind_->currentIndex() == 0 ? OpeningKind::door : OpeningKind::window;
        o.from_left = from_left_->length();
        o.sill = sill_->length();
        o.width = width_->length();
        o.height = height_->length();
    });
}

void LogPanel::take_name() {
    edit_opening(tr("Name opening"), [this](Opening &o) { o.name = name_->name().toStdString(); });
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
