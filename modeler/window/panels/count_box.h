// How many there are, typed or stepped.
//
// The library's box drops a digit that would lead past its bounds, without a word. Here all that is typed
// stays, and what is out of bounds is told like that of any other field.
#pragma once

#include <QSpinBox>

namespace roundlay::window {

class CountBox : public QSpinBox {
    Q_OBJECT
  public:
    CountBox(int low, int high, QWidget *parent = nullptr);

    int count() const { return count_; } ///< the last that is within bounds
    void show_count(int count);          ///< by the program; what is typed and not taken stays
    void let_go();                       ///< forgets what was typed and not taken
    const QString &complaint() const { return complaint_; }
    void stepBy(int steps) override;

  signals:
    void counted(int count); ///< by the person
    void complained(const QString &sentence);

  protected:
    StepEnabled stepEnabled() const override;

  private:
    void take(int typed);
    void complain(const QString &sentence);

    int low_, high_, count_;
    QString complaint_;
};

} // namespace roundlay::window
