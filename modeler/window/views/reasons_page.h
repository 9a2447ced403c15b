// Instead of a model that was never there: why a document cannot be built, line by line, and what to do.
#pragma once

#include <QTextBrowser>

namespace roundlay::window {

class Desk;

class ReasonsPage : public QTextBrowser {
    Q_OBJECT
  public:
    explicit ReasonsPage(const Desk &desk, QWidget *parent = nullptr);

    bool has_reasons() const { return reasons_ > 0; }

  signals:
    void asked_for_text(int line, int column);

  private:
    void refresh();

    const Desk &desk_;
    std::size_t reasons_ = 0;
};

} // namespace roundlay::window
