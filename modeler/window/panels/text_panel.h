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
    void showEvent(QShowEvent *event) override;

  private:
    friend class LineNumbers;
    void show_text();
    void fill();
    QString letters() const;
    void mark_problems();
    void place_numbers();
    void paint_numbers(QPaintEvent *event);

    Desk &desk_;
    QTimer pause_;
    QWidget *numbers_;
    std::string stood_; ///< the document that is shown,
    QString shown_;     ///< and what is shown of it
    bool showing_ = false;
    bool stale_ = false; ///< changed while nobody looked
    bool typed_ = false; ///< by hand, and not taken yet
};

} // namespace roundlay::window
