#include "modeler/window/record/photographs.h"

#include "modeler/window/panels/wrapped_label.h"

#include <QDir>
#include <QFileInfo>
#include <QImageReader>
#include <QLabel>
#include <QVBoxLayout>

namespace roundlay::window {

namespace {

constexpr QSize largest(220, 165); // pixels

} // namespace

Photographs::Photographs(QWidget *parent) : QWidget(parent), column_(new QVBoxLayout(this)) {
    column_->setContentsMargins(8, 0, 0, 4);
}

/// A picture that was looked at before is read again only where its file changed.
const Photographs::Known &Photographs::looked_at(const QString &path) {
    constexpr int most_kept = 200;
    const QFileInfo file(path);
    if (known_.size() > most_kept) known_.clear();
    Known &known = known_[path];
    if (known.changed.isValid() && known.changed == file.lastModified()) return known;
    known = {file.lastModified(), {}, {}};
    if (!file.isFile()) {
        known.why_not = tr("is not there: it was moved or renamed, or the name is mistyped");
        return known;
    }
    QImageReader reader(path);
    reader.setAutoTransform(true);
    const QSize size = reader.size();
    if (size.isValid() && (size.width() > largest.width() || size.height() > largest.height()))
        reader.setScaledSize(size.scaled(largest, Qt::KeepAspectRatio));
    const QImage image = reader.read();
    if (image.isNull())
        known.why_not = tr("cannot be shown: it is no picture that this program reads");
    else
        known.picture =
            QPixmap::fromImage(image.scaled(image.size().boundedTo(largest), Qt::KeepAspectRatio));
    return known;
}

void Photographs::add(const QString &name, const QString &folder) {
    const bool whole = QDir::isAbsolutePath(name);
    if (!whole && folder.isEmpty()) {
        told_ << tr("%1: seen once the document is saved beside its photographs").arg(name);
        return column_->addWidget(new WrappedLabel(breakable(told_.back())));
    }
    const QString path = whole ? name : QDir(folder).filePath(name);
    const Known &known = looked_at(path);
    if (known.picture.isNull()) {
        told_ << tr("%1 %2 (looked for in %3)").arg(name, known.why_not, QFileInfo(path).path());
        return column_->addWidget(new WrappedLabel(breakable(told_.back())));
    }
    ++seen_;
    told_ << name;
    auto *picture = new QLabel;
    picture->setPixmap(known.picture);
    picture->setAccessibleName(tr("Photograph %1").arg(name));
    picture->setToolTip(path);
    column_->addWidget(picture);
    column_->addWidget(new WrappedLabel(breakable(name)));
}

void Photographs::show_files(const QStringList &names, const QString &folder) {
    const bool all_there = seen_ == names.size();
    if (names == names_ && folder == folder_ && all_there) return;
    names_ = names;
    folder_ = folder;
    told_.clear();
    seen_ = 0;
    while (QLayoutItem *item = column_->takeAt(0)) {
        if (item->widget() != nullptr) item->widget()->deleteLater(), item->widget()->hide();
        delete item;
    }
    for (const QString &name : names)
        add(name, folder);
    setVisible(!names.isEmpty());
}

} // namespace roundlay::window
