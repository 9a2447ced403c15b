// One of a few words. Gone through by the keyboard it is taken when the keys rest: each word that is passed
// is no edit.
#pragma once

#include <QComboBox>
#include <QTimer>

namespace roundlay::window {

class ChoiceEdit : public QComboBox {
    Q_OBJECT
  public:
    explicit ChoiceEdit(QWidget *parent = nullptr);

    void finish();               ///< takes what the keys came to
    void show_choice(int index); ///< by the program; what the keys have come to goes on
    void let_go() { pause_.stop(); }

  signals:
    void chosen(int index); ///< by the person

  protected:
    void keyPressEvent(QKeyEvent *event) override;
    void focusOutEvent(QFocusEvent *event) override;

  private:
    bool is_meant_for_others(const QKeyEvent &event);

    QTimer pause_;
    QString typed_; ///< without a rest
    bool by_keys_ = false;
    int shown_ = -1;
};

} // namespace roundlay::window
