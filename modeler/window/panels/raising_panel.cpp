#include "modeler/window/panels/raising_panel.h"

#include "exporters/lists/cut_list.h"
#include "exporters/lists/progress_words.h"
#include "exporters/registry/shared_order.h"
#include "kernel/trade/weight.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/finding_words.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/panels/field_row.h"
#include "modeler/window/panels/lift_model.h"
#include "modeler/window/panels/scrolled.h"
#include "modeler/window/panels/wrapped_label.h"
#include "modeler/window/views/stand_banner.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLineEdit>
#include <QMouseEvent>
#include <QScrollArea>
#include <QStyledItemDelegate>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>

namespace roundlay::window {

namespace {

QStringList words_of(const std::vector<TickProblem> &problems, UnitSystem units) {
    QStringList all;
    for (const TickProblem &problem : problems)
        all << in_words(problem.what, units);
    return all;
}

std::vector<std::string> states_of(const State &state) {
    std::vector<std::string> names;
    for (const HouseState &each : state.read.states)
        names.push_back(each.name);
    return names;
}

/// A cell that is nothing but its box: a click anywhere in it ticks.
class TickCell : public QStyledItemDelegate {
  public:
    using QStyledItemDelegate::QStyledItemDelegate;
    bool editorEvent(QEvent *event, QAbstractItemModel *model, const QStyleOptionViewItem &option,
                     const QModelIndex &index) override {
        if (event->type() != QEvent::MouseButtonRelease) return false; // a key ticks by the panel's own way
        const auto *mouse = static_cast<const QMouseEvent *>(event);
        if (mouse->button() != Qt::LeftButton || mouse->modifiers() != Qt::NoModifier ||
            !option.rect.contains(mouse->position().toPoint()))
            return false;
        const bool ticked = index.data(Qt::CheckStateRole).toInt() == Qt::Checked;
        return model->setData(index, ticked ? Qt::Unchecked : Qt::Checked, Qt::CheckStateRole);
    }
};

} // namespace

RaisingPanel::RaisingPanel(Desk &desk, Selection &selection, QWidget *parent)
    : QWidget(parent), desk_(desk), selection_(selection), which_(new QComboBox), by_(new QLineEdit),
      on_(new QLineEdit), table_(new QTableView), model_(new LiftModel(this)), said_(new WrappedLabel),
      left_(new WrappedLabel), basis_(new WrappedLabel) {
    table_->setParent(this); // before all others: it gets the keyboard when the panel comes
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(4, 4, 4, 4);
    new StandBanner(desk_, column, StandBanner::Shows::as_stood);
    column->addLayout(choices());
    make_table();
    column->addWidget(table_, 1);
    column->addWidget(said_);
    column->addWidget(left_);
    column->addWidget(made_below());
    said_->setObjectName(QStringLiteral("raising_said"));
    left_->setObjectName(QStringLiteral("raising_left"));
    said_->hide();
    connect(&desk_, &Desk::began, this, [this] {
        is_chosen_ = false;
        say({});
    });
    connect(&desk_, &Desk::state_changed, this, &RaisingPanel::refresh);
    connect(&desk_, &Desk::order_known, this, &RaisingPanel::refresh);
    connect(&desk_, &Desk::text_changed, this, [this] {
        say({});
        refresh();
    });
    connect(&selection_, &Selection::changed, this, &RaisingPanel::follow_selection);
}

/// What is done to the lifts, and what a tick says of who did it.
QLayout *RaisingPanel::choices() {
    which_->addItems({tr("raising"), tr("taking down")});
    which_->setObjectName(QStringLiteral("raising_which"));
    which_->setAccessibleName(tr("Raising or taking down"));
    by_->setObjectName(QStringLiteral("raising_by"));
    by_->setPlaceholderText(tr("Done by"));
    by_->setAccessibleName(tr("Who did it"));
    by_->setToolTip(tr("Who did it: kept with what is ticked from now on"));
    on_->setObjectName(QStringLiteral("raising_on"));
    on_->setPlaceholderText(tr("On, in any words"));
    on_->setAccessibleName(tr("When it was done"));
    on_->setToolTip(tr("When it was done, in any words: kept with what is ticked from now on"));
    auto *row = new QHBoxLayout;
    row->addWidget(which_);
    row->addWidget(by_, 1);
    row->addWidget(on_, 1);
    connect(which_, &QComboBox::activated, this, [this] { is_chosen_ = true; });
    connect(which_, &QComboBox::currentIndexChanged, this, &RaisingPanel::refresh);
    return row;
}

void RaisingPanel::make_table() {
    constexpr int above_and_below = 6, least_rows = 3;
    table_->setModel(model_);
    table_->setObjectName(QStringLiteral("raising_table"));
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::ExtendedSelection);
    table_->setAlternatingRowColors(true);
    table_->setTabKeyNavigation(false);
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + above_and_below);
    table_->horizontalHeader()->setStretchLastSection(true);
    table_->setAccessibleName(tr("Lifts"));
    table_->setAccessibleDescription(tr(
        "Space ticks the lift as up, or as down; on a box of another column what that column says. It takes "
        "the tick back where there is one."));
    table_->setMinimumHeight(table_->horizontalHeader()->sizeHint().height() +
                             least_rows * table_->verticalHeader()->defaultSectionSize());
    for (int column = LiftModel::first_tick; column < LiftModel::waits_for; ++column)
        table_->setItemDelegateForColumn(column, new TickCell(table_));
    table_->installEventFilter(this);
    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &RaisingPanel::choose_row);
    connect(model_, &LiftModel::asked_to_tick, this,
            [this](int row, int deed, bool on) { tick({row}, static_cast<Deed>(deed), on); });
}

/// What the weights and the order rest on: it scrolls where there is little room.
QWidget *RaisingPanel::made_below() {
    constexpr int lines = 2;
    auto *inside = new QWidget;
    auto *column = new QVBoxLayout(inside);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(basis_);
    column->addStretch(1);
    basis_->setObjectName(QStringLiteral("raising_basis"));
    basis_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    QScrollArea *area = scrolled(inside);
    area->setAccessibleName(tr("What weights and order rest on"));
    area->setFixedHeight(lines * fontMetrics().lineSpacing() + 4);
    return area;
}

Deed RaisingPanel::deed() const {
    return which_->currentIndex() == 0 ? Deed::up : Deed::down;
}

void RaisingPanel::showEvent(QShowEvent *event) {
    QWidget::showEvent(event);
    desk_.want_order(true);
    refresh();
}

void RaisingPanel::hideEvent(QHideEvent *event) {
    QWidget::hideEvent(event);
    desk_.want_order(false);
}

void RaisingPanel::say(const QString &words) {
    said_->setText(words);
    said_->setVisible(!words.isEmpty());
    if (!words.isEmpty()) write_in_red(*said_);
}

/// Ticks are read off the text as it is now, so that none waits until the shell is worked out anew.
Record RaisingPanel::record() const {
    const ReadPtr now = desk_.reading();
    return now->shell ? now->record : desk_.standing()->read.record;
}

void RaisingPanel::refresh() {
    if (!isVisible() || desk_.dragging()) return;
    const StatePtr &state = desk_.standing();
    if (!state) {
        model_->show({}, deed());
        left_->clear();
        basis_->clear();
        return;
    }
    if (!state->job.order->is_known()) { // it comes soon; until then what was known is better than nothing
        if (model_->rows().empty()) left_->setText(tr("The order is being worked out."));
        return;
    }
    const Site site = site_of(state->job, record());
    if (!is_chosen_) {
        is_chosen_ = true;
        const QSignalBlocker quiet(which_);
        which_->setCurrentIndex(deed_at_hand(site.ticked) == Deed::up ? 0 : 1);
    }
    show_rows(*state, site);
    tell_basis(*state);
}

void RaisingPanel::show_rows(const State &state, const Site &site) {
    const ExportJob &job = state.job;
    following_ = true;
    const bool other_heading = deed() != model_->deed(); // of another length
    model_->show(lift_rows(job, site, deed()), deed());
    if (other_heading) fit_columns();
    const std::vector<LiftRow> &rows = model_->rows();
    if (!table_->currentIndex().isValid() && !rows.empty()) {
        const auto next = std::ranges::find(rows, true, &LiftRow::is_next);
        const auto at = next == rows.end() ? 0 : next - rows.begin();
        table_->setCurrentIndex(model_->index(static_cast<int>(at), LiftModel::tag));
    }
    following_ = false;
    const Voice voice({language(), job.shell.units});
    QString words = text(progress_words(voice, job.shell, job.layout, job.bodies, site, deed()).front());
    if (const std::string gone = gone_words(voice, job.layout, site.ticked, deed()); !gone.empty())
        words += u' ' + text(gone);
    left_->setText(words);
    follow_selection();
}

/// Once for each shell: ticks change nothing of it.
void RaisingPanel::tell_basis(const State &state) {
    const ExportJob &job = state.job;
    if (basis_of_ == job.order) return;
    basis_of_ = job.order;
    const CutList list = collect_cut_list(job.shell, job.layout, volumes_of(job.bodies), language());
    QString words = text(order_caution(list.voice)) + QStringLiteral("\n");
    if (list.weights_known) words += text(list.voice.word(weight_caution)) + QStringLiteral("\n");
    basis_->setText(words + text(list.weight_basis));
    fit_columns();
}

void RaisingPanel::fit_columns() {
    table_->resizeColumnsToContents();
    constexpr double for_bold = 1.2; // the next lift, whichever comes to be it
    for (const int column : {LiftModel::number, LiftModel::tag, LiftModel::turn, LiftModel::weight})
        table_->setColumnWidth(column, static_cast<int>(for_bold * table_->columnWidth(column)));
}

void RaisingPanel::follow_selection() {
    if (following_ || !isVisible() || selection_.chosen().kind != Chosen::Kind::piece) return;
    const std::vector<LiftRow> &rows = model_->rows();
    const auto found = std::ranges::find(rows, text(selection_.chosen().name), &LiftRow::tag);
    const QModelIndex now = table_->currentIndex();
    if (found == rows.end() || found - rows.begin() == now.row()) return;
    following_ = true;
    const int column = now.isValid() ? now.column() : static_cast<int>(LiftModel::tag);
    table_->setCurrentIndex(model_->index(static_cast<int>(found - rows.begin()), column));
    table_->scrollTo(table_->currentIndex());
    following_ = false;
}

void RaisingPanel::choose_row() {
    const QModelIndex now = table_->currentIndex();
    if (following_ || !now.isValid() || !desk_.standing()) return;
    const Layout &layout = desk_.standing()->job.layout;
    const QString &tag = model_->rows()[static_cast<std::size_t>(now.row())].tag;
    if (const auto piece = piece_tagged(layout, tag.toStdString())) {
        following_ = true;
        selection_.choose_piece(layout, *piece);
        following_ = false;
    }
}

bool RaisingPanel::eventFilter(QObject *table, QEvent *event) {
    if (table == table_ && event->type() == QEvent::KeyPress &&
        static_cast<const QKeyEvent *>(event)->key() == Qt::Key_Space) {
        press_space();
        return true;
    }
    return QWidget::eventFilter(table, event);
}

/// All rows that are chosen, as the one with the keyboard is.
void RaisingPanel::press_space() {
    const QModelIndex now = table_->currentIndex();
    if (!now.isValid()) return;
    const Deed what = model_->deed_of(now.column()).value_or(deed());
    std::vector<int> rows;
    for (const QModelIndex &row : table_->selectionModel()->selectedRows())
        rows.push_back(row.row());
    if (std::ranges::find(rows, now.row()) == rows.end()) rows = {now.row()};
    std::ranges::sort(rows);
    const LiftRow &row = model_->rows()[static_cast<std::size_t>(now.row())];
    tick(rows, what, !row.ticked[static_cast<std::size_t>(what)]);
}

/// Of what is done to a log with its new wood the log is ticked, whichever of them is meant.
Done RaisingPanel::asked(const std::vector<int> &rows, Deed deed) const {
    const State &state = *desk_.standing();
    Done done{deed, {}, {}, by_->text().trimmed().toStdString(), on_->text().trimmed().toStdString(), {}};
    if (!state.read.states.empty()) done.state = state.job.shell.state;
    for (const int row : rows) {
        const std::string name = model_->rows()[static_cast<std::size_t>(row)].tag.toStdString();
        for (const Index<Piece> piece : pieces_called(state.job.layout, name, deed)) {
            const std::string &tag = state.job.layout.pieces[piece].tag;
            if (std::ranges::find(done.pieces, tag) == done.pieces.end()) done.pieces.push_back(tag);
        }
    }
    return done;
}

QStringList RaisingPanel::problems() const {
    const State &state = *desk_.standing();
    return words_of(tick_problems(record(), state.job.shell, state.job.layout, raising_order_of(state.job),
                                  states_of(state)),
                    state.job.shell.units);
}

/// A tick that cannot be is taken, for whoever ticks it sees the house; what speaks against it is said.
void RaisingPanel::tick(const std::vector<int> &rows, Deed deed, bool on) {
    if (!desk_.standing() || !desk_.standing()->job.order->is_known()) return;
    const Done done = asked(rows, deed);
    if (done.pieces.empty()) return;
    const QStringList before = problems();
    const QString what = done.pieces.size() == 1 ? text(done.pieces.front())
                                                 : tr("%n pieces", "", static_cast<int>(done.pieces.size()));
    const QString name =
        (on ? tr("Tick %1: %2") : tr("Take back the tick of %1: %2")).arg(what, deed_word(deed));
    QString refused;
    const auto hearing = connect(&desk_, &Desk::refused, this, [&](const QString &why) { refused = why; });
    desk_.edit_record(name, [&](const Record &now) {
        Record next = now;
        on ? roundlay::tick(next.done, done) : take_back(next.done, done);
        return std::optional(next);
    });
    disconnect(hearing);
    if (!refused.isEmpty()) return say(refused);
    QStringList now = problems();
    for (const QString &known : before)
        now.removeOne(known);
    say(now.join(u'\n'));
}

} // namespace roundlay::window
