// The document's own text, as the person wrote it. Typing here is an edit like any other.
#pragma once

#include <QPlainTextEdit>
#include <QTimer>

namespace roundlay::window {

class Desk;

class TextPanel : public QPlainTextEdit {
    Q_OBJECT
  public:
    TextPanel(Desk &desk, QWidget *parent = nullptr);

    void go_to(int line, int column);
    void take(); ///< what was typed becomes the document's text now

  protected:
    void resizeEvent(QResizeEvent *event) override;
    void focusOutEvent(QFocusEvent *event) override;

  private:
    friend class LineNumbers;
    void show_text();
    void mark_problems();
    void place_numbers();
    void paint_numbers(QPaintEvent *event);

    Desk &desk_;
    QTimer pause_;
    QWidget *numbers_;
    bool showing_ = false;
};

} // namespace roundlay::window
