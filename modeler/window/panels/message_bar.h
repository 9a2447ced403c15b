// One sentence over the views, with what can be done about it. Never in the way of work.
#pragma once

#include <QFrame>
#include <functional>
#include <utility>
#include <vector>

class QHBoxLayout;
class QLabel;

namespace roundlay::window {

class MessageBar : public QFrame {
    Q_OBJECT
  public:
    using Answers = std::vector<std::pair<QString, std::function<void()>>>;

    explicit MessageBar(QWidget *parent = nullptr);

    /// Replaces what stood there. Each answer is a button that also closes the bar.
    void say(const QString &sentence, const Answers &answers);
    QString sentence() const;
    void answer(int number); ///< as if that button were pressed

  protected:
    void resizeEvent(QResizeEvent *event) override;

  private:
    QLabel *label_;
    QHBoxLayout *whole_, *row_; ///< the words with the buttons, and the buttons
    std::vector<QWidget *> buttons_;
    Answers answers_;
};

} // namespace roundlay::window
