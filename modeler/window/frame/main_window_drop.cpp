// Files that are dropped into the window: one document is opened, anything else is refused with a sentence.
#include "exporters/files/safe_file.h"
#include "kernel/document/document.h"
#include "kernel/document/limits.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/frame/main_window.h"
#include "modeler/window/panels/message_bar.h"

#include <QDropEvent>
#include <QFileInfo>
#include <QMimeData>
#include <QRegularExpression>

namespace roundlay::window {

namespace {

/// By its name, else by the statement that every document begins with.
bool is_document(const QFileInfo &file) {
    if (file.fileName().endsWith(text(document_extension), Qt::CaseInsensitive)) return true;
    const auto bytes = read_file(file.filePath().toStdString(), limits::bytes);
    const auto *found = std::get_if<std::string>(&bytes);
    static const QRegularExpression version(QStringLiteral(R"(^\s*roundlay\s*=)"),
                                            QRegularExpression::MultilineOption);
    return found != nullptr && version.match(text(*found)).hasMatch();
}

/// Why that cannot be opened; empty where it can.
QString why_not(const QMimeData &dropped) {
    const auto urls = dropped.urls();
    if (urls.size() != 1) return MainWindow::tr("Drop one roundlay document at a time.");
    if (!urls.front().isLocalFile())
        return MainWindow::tr("Only a file of this computer can be dropped here: save it first.");
    const QFileInfo file(urls.front().toLocalFile());
    if (file.isDir())
        return MainWindow::tr("%1 is a folder: drop the document that lies in it.").arg(file.fileName());
    if (is_document(file)) return {};
    return MainWindow::tr("%1 is no roundlay document: the name of one ends in %2.")
        .arg(file.fileName(), text(document_extension));
}

/// The file is neither copied nor moved: the nearest to that is a link.
void take_as_link(QDropEvent &event) {
    event.setDropAction(event.possibleActions() & Qt::LinkAction ? Qt::LinkAction : Qt::CopyAction);
    event.accept();
}

} // namespace

void MainWindow::dragEnterEvent(QDragEnterEvent *event) {
    const QString why = why_not(*event->mimeData());
    if (why.isEmpty()) return take_as_link(*event);
    message_->say(why, {{tr("Close"), {}}}); // what is not taken is never dropped: now or not at all
    event->ignore();
}

void MainWindow::dragMoveEvent(QDragMoveEvent *event) {
    take_as_link(*event);
}

void MainWindow::dropEvent(QDropEvent *event) {
    const QString why = why_not(*event->mimeData());
    if (!why.isEmpty()) {
        message_->say(why, {{tr("Close"), {}}});
        return event->ignore();
    }
    const QString path = event->mimeData()->urls().front().toLocalFile();
    take_as_link(*event);
    if (may_leave()) open(path);
}

} // namespace roundlay::window
