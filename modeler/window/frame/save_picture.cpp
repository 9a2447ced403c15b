#include "modeler/window/frame/save_picture.h"

#include "exporters/files/safe_file.h"
#include "modeler/window/desk/kernel_words.h"
#include "modeler/window/desk/mishaps.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/panels/count_box.h"
#include "modeler/window/panels/field_row.h"
#include "modeler/window/panels/wrapped_label.h"
#include "modeler/window/views/scene_view.h"

#include <QBuffer>
#include <QDialogButtonBox>
#include <QDir>
#include <QEventLoop>
#include <QFileDialog>
#include <QFormLayout>
#include <QFutureWatcher>
#include <QLabel>
#include <QMessageBox>
#include <QProgressDialog>
#include <QPromise>
#include <QPushButton>
#include <QThreadPool>

namespace roundlay::window {

namespace {

constexpr int least_pixels = 64, most_pixels = 8192, usual_width = 1600; // smaller shows nothing

Drawn<Picture> drawn_safely(const std::function<Drawn<Picture>()> &draw) {
    Drawn<Picture> drawn = PictureFailure{};
    const auto what = what_it_throws(QStringLiteral("drawing a picture"), [&] { drawn = draw(); });
    if (!what) return drawn;
    return PictureFailure{
        PictureSizeDialog::tr("Something went wrong inside the program: %1. It is noted in %2.")
            .arg(*what, QDir::toNativeSeparators(mishap_log()))
            .toStdString()};
}

} // namespace

/// Aside, so that the window goes on answering.
Drawn<Picture> drawn_aside(const std::function<Drawn<Picture>()> &draw, QWidget *parent) {
    QProgressDialog sign(PictureSizeDialog::tr("Drawing the picture"), {}, 0, 0, parent);
    sign.setWindowModality(Qt::WindowModal);
    sign.setMinimumDuration(0);
    sign.show();
    auto promise = std::make_shared<QPromise<Drawn<Picture>>>();
    QFutureWatcher<Drawn<Picture>> watcher;
    QEventLoop until;
    QObject::connect(&watcher, &QFutureWatcherBase::finished, &until, &QEventLoop::quit);
    watcher.setFuture(promise->future());
    promise->start();
    QThreadPool::globalInstance()->start([promise, draw] {
        promise->addResult(drawn_safely(draw));
        promise->finish();
    });
    if (!watcher.isFinished()) until.exec();
    return watcher.result();
}

PictureSizeDialog::PictureSizeDialog(QSize view, QWidget *parent)
    : QDialog(parent), width_(new CountBox(least_pixels, most_pixels)),
      height_(new CountBox(least_pixels, most_pixels)) {
    setWindowTitle(tr("Save this picture"));
    auto *form = new QFormLayout(this);
    for (CountBox *box : {width_, height_})
        box->setSuffix(tr(" pixels"));
    width_->show_count(usual_width);
    height_->show_count(
        std::clamp(usual_width * view.height() / std::max(view.width(), 1), least_pixels, most_pixels));
    add_field(*form, tr("&Width"), *width_);
    add_field(*form, tr("&Height"), *height_);
    form->addRow(new WrappedLabel(
        tr("A PNG of the model as it is seen now, with its section and its tags; while the legend "
           "is on, with the legend, the name of the house and its state too.")));
    auto *buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    QPushButton *save = buttons->addButton(tr("&Save as…"), QDialogButtonBox::AcceptRole);
    for (const CountBox *box : {width_, height_})
        connect(box, &CountBox::complained, save, [this, save] {
            save->setEnabled(width_->complaint().isEmpty() && height_->complaint().isEmpty());
        });
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    form->addRow(buttons);
}

QSize PictureSizeDialog::size_in_pixels() const {
    return {width_->count(), height_->count()};
}

std::optional<QString> write_picture(const SceneView &view, QSize size, const QString &path, QWidget *parent,
                                     const QString &caption) {
    const auto drawn = drawn_aside(view.picture_now(size), parent);
    if (const auto *failure = std::get_if<PictureFailure>(&drawn)) return kernel_words(failure->message);
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    if (!view.with_tags(std::get<Picture>(drawn), caption).save(&buffer, "PNG"))
        return PictureSizeDialog::tr("The picture could not be made into a PNG.");
    const std::string_view all(bytes.constData(), static_cast<std::size_t>(bytes.size()));
    if (const auto error = write_file(path.toStdString(), all)) return kernel_words(error->message);
    return {};
}

void save_picture(const SceneView &view, const QString &name, const QString &caption, QWidget *parent) {
    PictureSizeDialog dialog(view.QWidget::size(), parent);
    if (dialog.exec() != QDialog::Accepted) return;
    QString path = QFileDialog::getSaveFileName(
        parent, dialog.windowTitle(), text(safe_file_name(name.toStdString())) + QStringLiteral(".png"),
        PictureSizeDialog::tr("PNG picture (*.png)"));
    if (path.isEmpty()) return;
    if (!path.endsWith(QStringLiteral(".png"), Qt::CaseInsensitive)) path += QStringLiteral(".png");
    if (const auto why = write_picture(view, dialog.size_in_pixels(), path, parent, caption))
        QMessageBox::warning(parent, dialog.windowTitle(), *why);
}

} // namespace roundlay::window
