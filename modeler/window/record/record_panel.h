// What was found of the chosen log: its record, typed down a wall by the keyboard alone.
#pragma once

#include "modeler/window/record/record_form.h"

#include <QWidget>
#include <string>

class QComboBox;
class QLabel;
class QPushButton;
class QScrollArea;
class QToolButton;

namespace roundlay::window {

class AtHand;
class Desk;
class HouseFields;
struct OpeningAtHand;
class Photographs;
class SurveyFields;
class WrappedLabel;

class RecordPanel : public QWidget {
    Q_OBJECT
  public:
    RecordPanel(Desk &desk, AtHand &at_hand, QWidget *parent = nullptr);

    RecordForm &form() { return *form_; }
    Photographs &photographs() { return *photographs_; }
    QString told() const; ///< over the boxes: which log, and what is wrong
    void begin_typing();  ///< in the first box of the chosen log, or of the first log there is
    /// Asks who decides, when and why, and puts it behind what was decided before.
    void decide(const std::string &tag, Decision first);
    /// Of the log at hand, by their names beside the document.
    void add_photographs(const QStringList &files);

  protected:
    void showEvent(QShowEvent *event) override;

  private:
    void fill(QWidget &inside);
    void make_head();
    QWidget *decided();
    QWidget *survey();
    QWidget *told_above();
    void refresh();
    std::optional<OpeningAtHand> chosen_opening() const;
    std::string own_state() const;
    void show_logs();
    void show_head(const LogAtHand &log);
    QString problems_of(const LogAtHand &log) const;
    void go(int step, const QString &box);
    void take(const QString &box, const RecordForm::Change &change, QWidget *field);

    Desk &desk_;
    AtHand &at_hand_;
    RecordForm *form_;
    Photographs *photographs_;
    SurveyFields *survey_;
    HouseFields *house_;
    QToolButton *survey_head_;
    QComboBox *logs_box_;
    WrappedLabel *head_, *complaint_, *decisions_;
    QPushButton *decide_, *add_;
    QScrollArea *scroll_;
    std::string tag_; ///< of the log that is shown
    bool stale_ = true;
};

} // namespace roundlay::window
