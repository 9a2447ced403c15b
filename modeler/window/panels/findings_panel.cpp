#include "modeler/window/panels/findings_panel.h"

#include "kernel/layout/pieces/finding_pieces.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/finding_words.h"
#include "modeler/window/desk/problem_words.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/views/tints.h"

#include <QHeaderView>
#include <QStyledItemDelegate>
#include <QTreeWidget>
#include <QVBoxLayout>
#include <algorithm>

namespace roundlay::window {

namespace {

enum Data { line_role = Qt::UserRole, column_role, finding_role };

QString group_name(Weight weight) {
    switch (weight) {
    case Weight::error:
        return FindingsPanel::tr("Cannot be built");
    case Weight::warning:
        return FindingsPanel::tr("To decide");
    case Weight::note:
        break;
    }
    return FindingsPanel::tr("Worth knowing");
}

QColor group_colour(Weight weight) {
    if (weight == Weight::note) return tints().ink;
    return weight == Weight::error ? tints().error : tints().warning;
}

/// As high as its words are at the width of their column.
class Wrapped : public QStyledItemDelegate {
  public:
    explicit Wrapped(QTreeWidget *tree) : QStyledItemDelegate(tree), tree_(tree) {}
    QSize sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const override {
        constexpr int beside = 8, beneath = 4, endless = 10'000;
        if (!index.parent().isValid())
            return QStyledItemDelegate::sizeHint(option, index); // goes through all columns
        const int set_in = index.column() == 0 ? tree_->indentation() : 0;
        const int width = std::max(tree_->header()->sectionSize(index.column()) - beside - set_in, 1);
        const QRect words = option.fontMetrics.boundingRect(QRect(0, 0, width, endless), Qt::TextWordWrap,
                                                            index.data().toString());
        return {width, std::max(words.height(), option.fontMetrics.height()) + beneath};
    }

  private:
    QTreeWidget *tree_;
};

} // namespace

/// Places are as wide as they are, but never so that their sentences are left a thin strip: then they wrap.
void FindingsPanel::share_width() {
    constexpr int beside = 16;
    constexpr double most = 0.4;
    int widest = tree_->fontMetrics().horizontalAdvance(tree_->headerItem()->text(0)) + beside;
    for (QTreeWidgetItemIterator it(tree_); *it != nullptr; ++it)
        if ((*it)->parent() != nullptr)
            widest = std::max(widest, tree_->fontMetrics().horizontalAdvance((*it)->text(0)) + beside +
                                          tree_->indentation());
    tree_->header()->resizeSection(0, std::min(widest, static_cast<int>(most * tree_->viewport()->width())));
}

void FindingsPanel::resizeEvent(QResizeEvent *event) {
    QWidget::resizeEvent(event);
    share_width();
}

FindingsPanel::FindingsPanel(Desk &desk, Selection &selection, QWidget *parent)
    : QWidget(parent), desk_(desk), selection_(selection), tree_(new QTreeWidget) {
    tree_->setColumnCount(2);
    tree_->setHeaderLabels({tr("Where"), tr("What")});
    tree_->setWordWrap(true);
    tree_->setRootIsDecorated(false);
    tree_->setAccessibleName(tr("Findings"));
    tree_->header()->setStretchLastSection(true);
    for (const int column : {0, 1})
        tree_->setItemDelegateForColumn(column, new Wrapped(tree_));
    // Sentences wrap at the width there is; the tree does not look again by itself when that changes.
    connect(tree_->header(), &QHeaderView::sectionResized, this, [this] { tree_->doItemsLayout(); });
    auto *whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(tree_);
    connect(tree_, &QTreeWidget::itemActivated, this, &FindingsPanel::go_to);
    connect(tree_, &QTreeWidget::itemClicked, this, &FindingsPanel::go_to);
    connect(&desk_, &Desk::state_changed, this, &FindingsPanel::refresh);
}

int FindingsPanel::count() const {
    int all = 0;
    for (int i = 0; i < tree_->topLevelItemCount(); ++i)
        all += tree_->topLevelItem(i)->childCount();
    return all;
}

void FindingsPanel::add(const Line &line) {
    QTreeWidgetItem *group = nullptr;
    for (int i = 0; i < tree_->topLevelItemCount(); ++i)
        if (tree_->topLevelItem(i)->text(0) == group_name(line.weight)) group = tree_->topLevelItem(i);
    if (group == nullptr) {
        group = new QTreeWidgetItem(tree_, {group_name(line.weight)});
        group->setFirstColumnSpanned(true);
        group->setForeground(0, group_colour(line.weight));
        group->setExpanded(true);
        QFont bold = tree_->font();
        bold.setBold(true);
        group->setFont(0, bold);
    }
    auto *item = new QTreeWidgetItem(group, {line.place, line.words});
    item->setData(0, line_role, line.line);
    item->setData(0, column_role, line.column);
    item->setData(0, finding_role, line.finding);
    item->setToolTip(1, line.words);
    ++weights_[static_cast<int>(line.weight)];
}

std::vector<FindingsPanel::Line> FindingsPanel::lines() const {
    const State &state = *desk_.state();
    std::vector<Line> all;
    for (const Problem &p : state.read.problems)
        all.push_back(
            {p.weight, problem_text(p), tr("line %1").arg(p.place.line), p.place.line, p.place.column, -1});
    for (const Weight weight : {Weight::error, Weight::warning, Weight::note})
        for (std::size_t i = 0; i < state.job.findings.size(); ++i) {
            const Finding &f = state.job.findings[i];
            if (f.weight != weight) continue;
            const auto place = state.read.places.locate(f.subject);
            const UnitSystem units = state.job.shell.units;
            all.push_back({weight, message_text(f, units), place_text(f, units), place ? place->line : 0,
                           place ? place->column : 0, static_cast<int>(i)});
        }
    return all;
}

/// Most edits change no finding: what is told already stays, with what is chosen of it.
void FindingsPanel::refresh() {
    std::vector<Line> now = lines();
    if (shown_ == now) return;
    tree_->clear();
    std::fill(std::begin(weights_), std::end(weights_), 0);
    for (const Line &line : now)
        add(line);
    shown_ = std::move(now);
    if (tree_->topLevelItemCount() == 0) {
        auto *nothing = new QTreeWidgetItem(tree_, {tr("Nothing is in the way of this shell.")});
        nothing->setFirstColumnSpanned(true);
        nothing->setForeground(0, tints().faint);
    }
    share_width();
    emit counted(weights_[0], weights_[1]);
}

void FindingsPanel::point_to(const std::vector<int> &findings) {
    tree_->setSelectionMode(QAbstractItemView::ExtendedSelection);
    tree_->clearSelection();
    for (QTreeWidgetItemIterator it(tree_); *it != nullptr; ++it) {
        QTreeWidgetItem *item = *it;
        const QVariant finding = item->data(0, finding_role);
        if (!finding.isValid() ||
            std::find(findings.begin(), findings.end(), finding.toInt()) == findings.end())
            continue;
        if (tree_->selectedItems().isEmpty()) tree_->setCurrentItem(item);
        item->setSelected(true);
    }
}

/// To the pieces it is about where there are any, else to the statement.
void FindingsPanel::go_to(QTreeWidgetItem *item) {
    if (item->parent() == nullptr) return;
    const int finding = item->data(0, finding_role).toInt();
    const State &state = *desk_.state();
    if (finding >= 0 && finding < static_cast<int>(state.job.findings.size())) {
        const Finding &f = state.job.findings[static_cast<std::size_t>(finding)];
        for (const CornerPlace &corner : state.job.layout.corners)
            if (is_corner(f.about, corner.name)) return selection_.choose_corner(corner.name);
        const auto pieces = pieces_of(f, state.job.shell, state.job.layout);
        if (!pieces.empty()) return selection_.choose_piece(state.job.layout, pieces.front());
        for (std::size_t i = 0; i < state.job.shell.openings.size(); ++i)
            if (f.subject.starts_with("opening[" + std::to_string(i) + "]"))
                return selection_.choose_opening(state.job.shell, static_cast<int>(i));
    }
    if (const int line = item->data(0, line_role).toInt(); line > 0)
        emit asked_for_text(line, item->data(0, column_role).toInt());
}

} // namespace roundlay::window
