// A list of the exporters as Qt's views take it.
#pragma once

#include "exporters/lists/table.h"

#include <QAbstractTableModel>
#include <QSortFilterProxyModel>

namespace roundlay::window {

class TableModel : public QAbstractTableModel {
    Q_OBJECT
  public:
    using QAbstractTableModel::QAbstractTableModel;

    void show(Table table); ///< columns without a title are left out
    const Table &table() const { return table_; }

    int rowCount(const QModelIndex &parent = {}) const override;
    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  private:
    const Entry &entry(const QModelIndex &index) const;

    Table table_;
    std::vector<std::size_t> shown_;
};

/// Sorts lengths by their size and numbers by value; filters over all columns.
class TableOrder : public QSortFilterProxyModel {
    Q_OBJECT
  public:
    explicit TableOrder(QObject *parent = nullptr);

  protected:
    bool lessThan(const QModelIndex &a, const QModelIndex &b) const override;
};

} // namespace roundlay::window
