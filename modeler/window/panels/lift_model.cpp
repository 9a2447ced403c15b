#include "modeler/window/panels/lift_model.h"

#include "modeler/window/views/tints.h"

#include <QFont>
#include <algorithm>

namespace roundlay::window {

namespace {

const QString next_sign = QStringLiteral("▶ ");

bool stand_alike(const std::vector<LiftRow> &a, const std::vector<LiftRow> &b) {
    return std::ranges::equal(a, b, {}, &LiftRow::tag, &LiftRow::tag);
}

} // namespace

void LiftModel::show(std::vector<LiftRow> rows, Deed deed) {
    const bool same = deed == deed_ && stand_alike(rows, rows_);
    if (same && rows == rows_) return;
    if (!same) beginResetModel();
    rows_ = std::move(rows);
    deed_ = deed;
    if (!same) return endResetModel();
    if (!rows_.empty()) emit dataChanged(index(0, 0), index(rowCount() - 1, columns - 1));
}

std::optional<Deed> LiftModel::deed_of(int column) const {
    if (column < first_tick || column >= waits_for) return {};
    return all_deeds[static_cast<std::size_t>(column - first_tick)];
}

int LiftModel::rowCount(const QModelIndex &parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int LiftModel::columnCount(const QModelIndex &parent) const {
    return parent.isValid() ? 0 : static_cast<int>(columns);
}

QString LiftModel::words(const LiftRow &row, int column) const {
    switch (column) {
    case number:
        return (row.is_next ? next_sign : QString()) + QString::number(row.number);
    case tag:
        return row.tag;
    case turn:
        return row.turn;
    case weight:
        return row.weight;
    case waits_for:
        return row.waits_for;
    default:
        return {};
    }
}

QString LiftModel::hint(const LiftRow &row, int column) const {
    const auto deed = deed_of(column);
    if (!deed) return words(row, column);
    const auto at = static_cast<std::size_t>(*deed);
    const QString said = row.ticked[at] ? tr("%1 is ticked as %2").arg(row.tag, deed_word(*deed))
                                        : tr("%1 is not ticked as %2").arg(row.tag, deed_word(*deed));
    return row.who[at].isEmpty() ? said : said + QStringLiteral(": ") + row.who[at];
}

QVariant LiftModel::data(const QModelIndex &index, int role) const {
    const LiftRow &row = rows_[static_cast<std::size_t>(index.row())];
    const auto deed = deed_of(index.column());
    if (role == Qt::DisplayRole && !deed) return words(row, index.column());
    if (role == Qt::ToolTipRole || (role == Qt::AccessibleTextRole && deed)) return hint(row, index.column());
    if (role == Qt::CheckStateRole && deed)
        return row.ticked[static_cast<std::size_t>(*deed)] ? Qt::Checked : Qt::Unchecked;
    if (role == Qt::TextAlignmentRole && index.column() == number)
        return QVariant(Qt::AlignRight | Qt::AlignVCenter);
    if (role == Qt::ForegroundRole && row.may == May::done) return tints().faint;
    if (role == Qt::FontRole && row.is_next) {
        QFont bold;
        bold.setBold(true);
        return bold;
    }
    return {};
}

QVariant LiftModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::ToolTipRole && section == weight)
        return tr("Estimated, of the whole lift. What else hangs on the hook is not in it.");
    if (role != Qt::DisplayRole) return {};
    if (const auto deed = deed_of(section)) return deed_word(*deed);
    switch (section) {
    case number:
        return tr("no.");
    case tag:
        return tr("tag");
    case turn:
        return deed_ == Deed::up ? tr("may go up") : tr("may come down");
    case weight:
        return tr("weight, estimated");
    default:
        return tr("waits for");
    }
}

Qt::ItemFlags LiftModel::flags(const QModelIndex &index) const {
    const Qt::ItemFlags usual = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
    return index.isValid() && deed_of(index.column()) ? usual | Qt::ItemIsUserCheckable : usual;
}

/// The document says what is ticked: the box follows it.
bool LiftModel::setData(const QModelIndex &index, const QVariant &value, int role) {
    const auto deed = deed_of(index.column());
    if (role != Qt::CheckStateRole || !deed) return false;
    emit asked_to_tick(index.row(), static_cast<int>(*deed), value.toInt() == Qt::Checked);
    return true;
}

} // namespace roundlay::window
