#include "modeler/window/frame/piece_export.h"

#include "exporters/files/safe_file.h"
#include "exporters/registry/one_piece.h"
#include "modeler/window/desk/kernel_words.h"
#include "modeler/window/desk/mishaps.h"
#include "modeler/window/desk/words.h"

#include <QCoreApplication>
#include <QFileDialog>
#include <QGuiApplication>
#include <QMessageBox>

namespace roundlay::window {

namespace {

class Words {
    Q_DECLARE_TR_FUNCTIONS(PieceExport)
};

/// A sign that the program is at work, while it lives.
class WaitingPointer {
  public:
    WaitingPointer() { QGuiApplication::setOverrideCursor(Qt::WaitCursor); }
    ~WaitingPointer() { QGuiApplication::restoreOverrideCursor(); }
    WaitingPointer(const WaitingPointer &) = delete;
    WaitingPointer &operator=(const WaitingPointer &) = delete;
};

} // namespace

std::optional<QString> write_piece(const ExportJob &job, Index<Piece> piece, const QString &path) {
    const bool paper = path.endsWith(QStringLiteral(".pdf"), Qt::CaseInsensitive);
    std::optional<QString> why;
    const auto what = what_it_throws(QStringLiteral("exporting one log"), [&] {
        const std::string bytes = paper ? one_piece_pdf(job, piece) : one_piece_step(job, piece);
        if (const auto error = write_file(path.toStdString(), bytes)) why = kernel_words(error->message);
    });
    return what ? what : why;
}

void export_piece(const ExportJob &job, Index<Piece> piece, QWidget *parent) {
    const Piece &p = job.layout.pieces[piece];
    const QString step = Words::tr("STEP, the piece as a solid (*.step)"),
                  pdf = Words::tr("PDF, its cut sheet (*.pdf)");
    QString kind = step;
    QString path = QFileDialog::getSaveFileName(parent, Words::tr("Export log %1").arg(text(p.tag)),
                                                text(safe_file_name(p.tag)) + QStringLiteral(".step"),
                                                step + QStringLiteral(";;") + pdf, &kind);
    if (path.isEmpty()) return;
    if (kind == pdf && path.endsWith(QStringLiteral(".step"))) // the name proposed for the other kind
        path = path.chopped(5) + QStringLiteral(".pdf");
    const auto failure = [&] {
        const WaitingPointer sign;
        return write_piece(job, piece, path);
    }();
    if (failure) QMessageBox::warning(parent, Words::tr("Export"), *failure);
}

} // namespace roundlay::window
