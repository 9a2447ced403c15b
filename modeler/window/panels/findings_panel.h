// What is wrong with the text and what the checks found, heaviest first; each leads to its place.
#pragma once

#include "kernel/document/problem.h"

#include <QWidget>

class QTreeWidget;
class QTreeWidgetItem;

namespace roundlay::window {

class Desk;
class Selection;

class FindingsPanel : public QWidget {
    Q_OBJECT
  public:
    FindingsPanel(Desk &desk, Selection &selection, QWidget *parent = nullptr);

    QTreeWidget *tree() const { return tree_; }
    int count() const;
    void
    point_to(const std::vector<int> &findings); ///< indices into State::job.findings: their lines are chosen

  signals:
    void asked_for_text(int line, int column); ///< where a problem or a finding's statement stands
    void counted(int errors, int warnings);

  protected:
    void resizeEvent(QResizeEvent *event) override;

  private:
    void share_width();
    void refresh();
    void go_to(QTreeWidgetItem *item);
    void add(Weight weight, const QString &words, const QString &place, int line, int column, int finding);

    Desk &desk_;
    Selection &selection_;
    QTreeWidget *tree_;
    int weights_[3] = {};
};

} // namespace roundlay::window
