#include "modeler/window/panels/table_model.h"

#include "kernel/measure/measure.h"
#include "modeler/window/desk/words.h"

#include <optional>

namespace roundlay::window {

namespace {

QString words_of(const Entry &entry) {
    if (const auto *words = std::get_if<std::string>(&entry)) return text(*words);
    if (const auto *number = std::get_if<Number>(&entry)) return text(number->digits);
    QStringList all;
    for (const std::string &item : std::get<std::vector<std::string>>(entry))
        all << text(item);
    return all.join(u' ');
}

/// What the words measure, if they do: a number as such or a length in any spelling.
std::optional<double> amount(const QString &words) {
    bool is_number = false;
    const double number = words.toDouble(&is_number);
    if (is_number) return number;
    const auto length = parse_length(words.toStdString());
    if (const auto *found = std::get_if<Length>(&length)) return found->mm();
    return {};
}

} // namespace

void TableModel::show(Table table) {
    beginResetModel();
    table_ = std::move(table);
    shown_.clear();
    for (std::size_t i = 0; i < table_.columns.size(); ++i)
        if (!table_.columns[i].title.empty()) shown_.push_back(i);
    endResetModel();
}

int TableModel::rowCount(const QModelIndex &parent) const {
    return parent.isValid() ? 0 : static_cast<int>(table_.rows.size());
}

int TableModel::columnCount(const QModelIndex &parent) const {
    return parent.isValid() ? 0 : static_cast<int>(shown_.size());
}

const Entry &TableModel::entry(const QModelIndex &index) const {
    return table_
        .rows[static_cast<std::size_t>(index.row())][shown_[static_cast<std::size_t>(index.column())]];
}

QVariant TableModel::data(const QModelIndex &index, int role) const {
    if (role == Qt::DisplayRole || role == Qt::ToolTipRole) return words_of(entry(index));
    const bool number = std::holds_alternative<Number>(entry(index));
    if (role == Qt::TextAlignmentRole && number) return QVariant(Qt::AlignRight | Qt::AlignVCenter);
    return {};
}

QVariant TableModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role != Qt::DisplayRole || orientation != Qt::Horizontal) return {};
    const std::string &title = table_.columns[shown_[static_cast<std::size_t>(section)]].title;
    return text(title);
}

TableOrder::TableOrder(QObject *parent) : QSortFilterProxyModel(parent) {
    setFilterKeyColumn(-1);
    setFilterCaseSensitivity(Qt::CaseInsensitive);
}

bool TableOrder::lessThan(const QModelIndex &a, const QModelIndex &b) const {
    const QString left = a.data().toString(), right = b.data().toString();
    const auto x = amount(left), y = amount(right);
    if (x && y) return *x < *y;
    return QString::localeAwareCompare(left, right) < 0;
}

} // namespace roundlay::window
