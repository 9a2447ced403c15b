// The cut list as tables that are sorted, filtered and copied to a spreadsheet.
#pragma once

#include <QWidget>

class QComboBox;
class QLabel;
class QLayout;
class QLineEdit;
class QScrollArea;
class QTableView;

namespace roundlay::window {

class Desk;
class Selection;
class TableModel;
class TableOrder;

class CutListPanel : public QWidget {
    Q_OBJECT
  public:
    CutListPanel(Desk &desk, Selection &selection, QWidget *parent = nullptr);

    QTableView *table() const { return table_; }
    QLineEdit *filter() const { return filter_; }
    void copy() const; ///< the chosen rows, else all that are shown; with a header, cells parted by tabs

  protected:
    void showEvent(QShowEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;

  private:
    QLayout *choices();
    void make_table();
    void make_totals();
    bool is_low() const; ///< the screen
    void refresh();
    int height_of_rows(int rows) const;
    void share_height();
    void follow_selection();
    void choose_row();
    int tag_column() const;

    Desk &desk_;
    Selection &selection_;
    QComboBox *which_;
    QLineEdit *filter_;
    QTableView *table_;
    QLabel *totals_;
    QScrollArea *below_; ///< the totals, as far as the table leaves them room
    TableModel *model_;
    TableOrder *order_;
    bool following_ = false;
};

} // namespace roundlay::window
