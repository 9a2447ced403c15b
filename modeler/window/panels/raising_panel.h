// The raise, or the taking down, as a tick list: lift by lift what it weighs, what is done, what may come
// next.
#pragma once

#include "kernel/record/done.h"

#include <QString>
#include <QWidget>
#include <memory>
#include <vector>

class QComboBox;
class QLabel;
class QLayout;
class QLineEdit;
class QScrollArea;
class QTableView;

namespace roundlay {
class SharedOrder;
struct Record;
struct Site;
} // namespace roundlay

namespace roundlay::window {

class Desk;
class LiftModel;
class Selection;
struct State;

class RaisingPanel : public QWidget {
    Q_OBJECT
  public:
    RaisingPanel(Desk &desk, Selection &selection, QWidget *parent = nullptr);

    QTableView *table() const { return table_; }
    const LiftModel &model() const { return *model_; }
    QLabel *said() const { return said_; } ///< why a tick was refused, or what speaks against it

  protected:
    void showEvent(QShowEvent *event) override;
    void hideEvent(QHideEvent *event) override;
    bool eventFilter(QObject *table, QEvent *event) override;

  private:
    QLayout *choices();
    void make_table();
    QWidget *made_below();
    Deed deed() const; ///< Deed::up or Deed::down
    void refresh();
    void show_rows(const State &state, const Site &site);
    void tell_basis(const State &state);
    void fit_columns(); ///< to what stands in them, and to their headings
    Record record() const;
    void follow_selection();
    void choose_row();
    void press_space();
    void tick(const std::vector<int> &rows, Deed deed, bool on);
    Done asked(const std::vector<int> &rows, Deed deed) const;
    QStringList problems() const; ///< with what is ticked now
    void say(const QString &words);

    Desk &desk_;
    Selection &selection_;
    QComboBox *which_;
    QLineEdit *by_, *on_;
    QTableView *table_;
    LiftModel *model_;
    QLabel *said_, *left_, *basis_;
    bool following_ = false;
    bool is_chosen_ = false;                ///< whether it is raised or taken down, for this document
    std::shared_ptr<SharedOrder> basis_of_; ///< whose lifts' weights are told what they rest on
};

} // namespace roundlay::window
