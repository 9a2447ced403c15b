// Over a view: that what is seen cannot be built, or is no more what the text says, and why.
#pragma once

#include <QFrame>

class QBoxLayout;

namespace roundlay::window {

class Desk;

class StandBanner : public QFrame {
    Q_OBJECT
  public:
    /// What its view shows while the shell does not stand.
    enum class Shows {
        as_stated, ///< what is stated, as far as it can be read
        as_stood,  ///< the shell as it last stood
        fields     ///< what is stated, and nothing that is worked out from it
    };
    /// Lies along the upper edge of the view, while there is something to say.
    StandBanner(const Desk &desk, QWidget *view, Shows shows);
    /// Takes room of its own in a column, where it would cover fields that mend what is wrong.
    StandBanner(const Desk &desk, QBoxLayout *column, Shows shows);

    bool hasHeightForWidth() const override { return in_column_; }
    int heightForWidth(int width) const override;
    QSize sizeHint() const override;

    const QString &words() const { return words_; } ///< empty while it is hidden

  signals:
    void asked_why(); ///< pressed

  protected:
    bool eventFilter(QObject *view, QEvent *event) override;
    void paintEvent(QPaintEvent *) override;
    void mousePressEvent(QMouseEvent *) override { emit asked_why(); }

  private:
    void listen();
    void refresh();
    void lay_along_the_edge();
    QString sentence() const;

    const Desk &desk_;
    Shows shows_;
    QString words_;
    bool in_column_ = false;
};

/// Over what is drawn but does not hold any more.
void wash(QPainter &painter, const QRect &rect);

} // namespace roundlay::window
