// Lifts as Qt's views take them: each tick a box of its own.
#pragma once

#include "modeler/window/panels/lift_rows.h"

#include <QAbstractTableModel>

namespace roundlay::window {

class LiftModel : public QAbstractTableModel {
    Q_OBJECT
  public:
    enum Column : int {
        number,
        tag,
        turn,
        weight,
        first_tick,
        waits_for = first_tick + static_cast<int>(deeds),
        columns
    };

    using QAbstractTableModel::QAbstractTableModel;

    /// Where the same pieces stand in the same order, what is chosen stays so.
    void show(std::vector<LiftRow> rows, Deed deed);
    const std::vector<LiftRow> &rows() const { return rows_; }
    Deed deed() const { return deed_; }            ///< what is done to them
    std::optional<Deed> deed_of(int column) const; ///< none: the column ticks nothing

    int rowCount(const QModelIndex &parent = {}) const override;
    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex &index) const override;
    bool setData(const QModelIndex &index, const QVariant &value, int role) override;

  signals:
    void asked_to_tick(int row, int deed, bool on); ///< by a press on its box

  private:
    QString words(const LiftRow &row, int column) const;
    QString hint(const LiftRow &row, int column) const;

    std::vector<LiftRow> rows_;
    Deed deed_ = Deed::up;
};

} // namespace roundlay::window
