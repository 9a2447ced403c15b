// Sentences over several lines, in a form.
//
// A form of the library that holds hidden rows gives too little height to the rows around a label whose
// height depends on its width. This one asks for the height that it needs at the width that it has, as a
// plain label asks for one line.
#pragma once

#include <QLabel>

namespace roundlay::window {

class WrappedLabel : public QLabel {
    Q_OBJECT
  public:
    explicit WrappedLabel(const QString &sentence = {}, QWidget *parent = nullptr);

    bool hasHeightForWidth() const override { return false; }
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

  protected:
    void resizeEvent(QResizeEvent *event) override;
};

/// A path as it is shown: lines may break at its slashes.
QString breakable(QString sentence);

/// For what a dialog has come to say: as high as all that is in it asks for, on the screen that it is on.
void make_room(QWidget &dialog);

} // namespace roundlay::window
