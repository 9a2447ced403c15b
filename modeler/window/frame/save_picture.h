// What the model view shows now, as a PNG of a stated size.
#pragma once

#include "exporters/picture/picture.h"

#include <QDialog>
#include <QSize>
#include <functional>
#include <optional>

namespace roundlay::window {

class CountBox;
class SceneView;

/// Draws in a thread of its own, with a sign that it does; what is thrown there comes back as a failure.
Drawn<Picture> drawn_aside(const std::function<Drawn<Picture>()> &draw, QWidget *parent);

class PictureSizeDialog : public QDialog {
    Q_OBJECT
  public:
    /// `view` says the shape that is proposed.
    explicit PictureSizeDialog(QSize view, QWidget *parent = nullptr);

    QSize size_in_pixels() const;

  private:
    CountBox *width_, *height_;
};

/// Draws it aside, with a sign that it does. A returned text is a sentence that says why it could not be.
std::optional<QString> write_picture(const SceneView &view, QSize size, const QString &path, QWidget *parent,
                                     const QString &caption = {});

/// Asks for size and file, and says what became of it. `caption` stands on it while the legend is on.
void save_picture(const SceneView &view, const QString &name, const QString &caption, QWidget *parent);

} // namespace roundlay::window
