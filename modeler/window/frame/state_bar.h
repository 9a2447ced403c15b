// Which state of the house is seen, and where edits go while it is.
#pragma once

#include <QWidget>

class QComboBox;
class QLabel;

namespace roundlay::window {

class Desk;

/// Over the views; away where a document has but one state.
class StateBar : public QWidget {
    Q_OBJECT
  public:
    explicit StateBar(Desk &desk, QWidget *parent = nullptr);

    QComboBox &states() { return *states_; }
    QString told() const; ///< where edits go

  private:
    void refresh();

    Desk &desk_;
    QComboBox *states_;
    QLabel *words_;
};

} // namespace roundlay::window
