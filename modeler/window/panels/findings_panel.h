// What is wrong with the text and what the checks found, heaviest first; each leads to its place.
#pragma once

#include "kernel/document/problem.h"

#include <QWidget>
#include <optional>
#include <vector>

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
    struct Line {
        Weight weight = Weight::note;
        QString words, place;
        int line = 0, column = 0; ///< in the text
        int finding = -1;         ///< index into State::job.findings
        bool operator==(const Line &) const = default;
    };
    std::vector<Line> lines() const;
    void share_width();
    void refresh();
    void go_to(QTreeWidgetItem *item);
    void add(const Line &line);

    Desk &desk_;
    Selection &selection_;
    QTreeWidget *tree_;
    std::optional<std::vector<Line>> shown_;
    int weights_[3] = {};
};

} // namespace roundlay::window
