#include "modeler/window/panels/cut_list_panel.h"

#include "exporters/lists/tables.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/finding_words.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/panels/table_model.h"
#include "modeler/window/views/stand_banner.h"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScreen>
#include <QScrollArea>
#include <QScrollBar>
#include <QTableView>

namespace roundlay::window {

namespace {

enum Which { by_piece, by_model, to_order, pegs, totals };

Table table_of(const CutList &list, int which) {
    switch (which) {
    case by_model:
        return model_table(list);
    case to_order:
        return order_table(list);
    case pegs:
        return peg_table(list);
    case totals:
        return total_table(list);
    default:
        return piece_table(list);
    }
}

QString total_words(const CutList &list) {
    const Totals &sums = list.totals;
    QString words = CutListPanel::tr("%1 pieces, %2 distinct, %3")
                        .arg(sums.pieces)
                        .arg(sums.models)
                        .arg(volume_text(sums.finished, list.units));
    if (!list.totals.weights_known())
        words += QStringLiteral("\n") + CutListPanel::tr("Weight: %1").arg(text(list.not_weighed)) +
                 QStringLiteral("\n") + text(list.weight_basis);
    else
        words += CutListPanel::tr(", estimated %1").arg(weight_text(sums.low_kg, sums.high_kg, list.units)) +
                 QStringLiteral("\n") + text(list.voice.word(weight_caution)) + QStringLiteral("\n") +
                 text(list.weight_basis);
    return words;
}

} // namespace

CutListPanel::CutListPanel(Desk &desk, Selection &selection, QWidget *parent)
    : QWidget(parent), desk_(desk), selection_(selection), which_(new QComboBox), filter_(new QLineEdit),
      table_(new QTableView), totals_(new QLabel), below_(new QScrollArea), model_(new TableModel(this)),
      order_(new TableOrder(this)) {
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(4, 4, 4, 4);
    new StandBanner(desk_, column, StandBanner::Shows::as_stood);
    column->addLayout(choices());
    make_table();
    column->addWidget(table_, 1);
    make_totals();
    column->addWidget(below_);
    connect(&desk_, &Desk::state_changed, this, &CutListPanel::refresh);
    connect(&selection_, &Selection::changed, this, &CutListPanel::follow_selection);
}

/// Which list, and what of it.
QLayout *CutListPanel::choices() {
    which_->addItems(
        {tr("every piece"), tr("distinct pieces"), tr("sticks to order"), tr("pegs"), tr("totals")});
    which_->setAccessibleName(tr("Which list"));
    filter_->setPlaceholderText(tr("Filter: part of a tag, a kind, a size"));
    filter_->setAccessibleName(tr("Filter the list"));
    filter_->setClearButtonEnabled(true);
    auto *copy_button = new QPushButton(tr("&Copy"));
    copy_button->setToolTip(tr("Copy the list for a spreadsheet"));
    auto *row = new QHBoxLayout;
    row->addWidget(which_);
    row->addWidget(filter_, 1);
    row->addWidget(copy_button);
    connect(which_, &QComboBox::currentIndexChanged, this, &CutListPanel::refresh);
    connect(filter_, &QLineEdit::textChanged, order_, &QSortFilterProxyModel::setFilterFixedString);
    connect(copy_button, &QPushButton::clicked, this, &CutListPanel::copy);
    return row;
}

void CutListPanel::make_table() {
    order_->setSourceModel(model_);
    table_->setModel(order_);
    table_->setSortingEnabled(true);
    table_->sortByColumn(-1, Qt::AscendingOrder);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setAlternatingRowColors(true);
    table_->setTabKeyNavigation(false);
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 6);
    table_->setAccessibleName(tr("Cut list"));
    table_->setMinimumHeight(height_of_rows(is_low() ? 2 : 5));
    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &CutListPanel::choose_row);
}

void CutListPanel::make_totals() {
    totals_->setWordWrap(true);
    below_->setWidget(totals_);
    below_->setWidgetResizable(true);
    below_->setFrameShape(QFrame::NoFrame);
    below_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    below_->setAccessibleName(tr("Totals"));
    totals_->setAlignment(Qt::AlignTop);
    totals_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    below_->setMinimumHeight((is_low() ? 1 : 2) * totals_->fontMetrics().lineSpacing());
}

/// There all panels take turns.
bool CutListPanel::is_low() const {
    return screen()->availableGeometry().height() < 560;
}

void CutListPanel::showEvent(QShowEvent *event) {
    QWidget::showEvent(event);
    refresh();
}

int CutListPanel::height_of_rows(int rows) const {
    return table_->horizontalHeader()->sizeHint().height() +
           rows * table_->verticalHeader()->defaultSectionSize() +
           table_->horizontalScrollBar()->sizeHint().height() + 2 * table_->frameWidth();
}

/// The list is what people come for: what is said of the weights scrolls where there is little room.
void CutListPanel::share_height() {
    constexpr int most_rows = 8;
    const int all =
        totals_->text().isEmpty()
            ? 0
            : totals_->heightForWidth(below_->width() - below_->verticalScrollBar()->sizeHint().width());
    const int room = height() - (table_->y() + height_of_rows(most_rows));
    below_->setMaximumHeight(std::max(std::min(room, all), below_->minimumHeight()));
}

void CutListPanel::resizeEvent(QResizeEvent *event) {
    QWidget::resizeEvent(event);
    share_height();
}

void CutListPanel::refresh() {
    if (!isVisible() || desk_.dragging()) return; // numbers nobody reads while a hand drags
    following_ = true;
    if (const StatePtr &state = desk_.standing()) {
        const CutList list =
            collect_cut_list(state->job.shell, state->job.layout, volumes_of(state->job.bodies), language());
        model_->show(table_of(list, which_->currentIndex()));
        totals_->setText(total_words(list));
    } else {
        model_->show({});
        totals_->clear();
    }
    table_->resizeColumnsToContents();
    share_height();
    following_ = false;
    follow_selection();
}

int CutListPanel::tag_column() const {
    constexpr int first = 0;
    return which_->currentIndex() == by_piece || which_->currentIndex() == by_model ? first : -1;
}

void CutListPanel::follow_selection() {
    if (following_ || tag_column() < 0 || selection_.chosen().kind != Chosen::Kind::piece) return;
    const QString tag = text(selection_.chosen().name);
    const auto found =
        order_->match(order_->index(0, tag_column()), Qt::DisplayRole, tag, 1, Qt::MatchExactly);
    if (found.isEmpty()) return;
    following_ = true;
    table_->setCurrentIndex(found.front());
    table_->scrollTo(found.front());
    following_ = false;
}

void CutListPanel::choose_row() {
    if (following_ || tag_column() < 0 || !desk_.standing()) return;
    const QModelIndex row = table_->currentIndex();
    const std::string tag = order_->index(row.row(), tag_column()).data().toString().toStdString();
    const Layout &layout = desk_.standing()->job.layout;
    if (const auto piece = piece_tagged(layout, tag)) {
        following_ = true;
        selection_.choose_piece(layout, *piece);
        following_ = false;
    }
}

void CutListPanel::copy() const {
    QStringList lines, header;
    for (int column = 0; column < order_->columnCount(); ++column)
        header << order_->headerData(column, Qt::Horizontal).toString();
    lines << header.join(u'\t');
    const auto chosen = table_->selectionModel()->selectedRows();
    for (int row = 0; row < order_->rowCount(); ++row) {
        if (chosen.size() > 1 && !table_->selectionModel()->isRowSelected(row, {})) continue;
        QStringList cells;
        for (int column = 0; column < order_->columnCount(); ++column)
            cells << order_->index(row, column).data().toString();
        lines << cells.join(u'\t');
    }
    QApplication::clipboard()->setText(lines.join(u'\n') + u'\n');
}

} // namespace roundlay::window
