#include "modeler/window/frame/print.h"

#include "exporters/files/safe_file.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/views/sheet_painter.h"
#include "modeler/window/views/sheet_view.h"

#include <QCoreApplication>
#include <QPageLayout>
#include <QPainter>
#include <QPrintPreviewDialog>
#include <QPrinter>
#include <QProgressDialog>
#include <QScreen>
#include <algorithm>

namespace roundlay::window {

namespace {

QPageLayout page_of(const sheets::Sheet &sheet) {
    const bool wide = sheet.size.width > sheet.size.height;
    const QSizeF upright(std::min(sheet.size.width, sheet.size.height),
                         std::max(sheet.size.width, sheet.size.height));
    return {QPageSize(upright, QPageSize::Millimeter, {}, QPageSize::FuzzyMatch),
            wide ? QPageLayout::Landscape : QPageLayout::Portrait, QMarginsF()};
}

class Words {
    Q_DECLARE_TR_FUNCTIONS(Print)
};

/// Comes up only where there is something to wait for.
void dress(QProgressDialog &progress) {
    constexpr int patience = 300; // ms
    progress.setWindowModality(Qt::WindowModal);
    progress.setMinimumDuration(patience);
}

std::vector<sheets::Sheet> sheets_wanted(const ExportJob &job, std::optional<Index<Model>> wanted,
                                         QProgressDialog &progress) {
    if (wanted != all_models) return sheets_of(job, *wanted);
    std::vector<sheets::Sheet> all;
    for (const auto model : job.layout.models.indices()) {
        progress.setValue(model.number()); // also lets the window breathe
        if (progress.wasCanceled()) return {};
        for (sheets::Sheet &sheet : sheets_of(job, model))
            all.push_back(std::move(sheet));
    }
    return all;
}

} // namespace

bool print_sheets(QPrinter &printer, const std::vector<sheets::Sheet> &all, QProgressDialog &progress) {
    constexpr double mm_per_inch_of_paper = 25.4;
    printer.setFullPage(true);
    printer.setPageLayout(page_of(all.front()));
    QPainter painter(&printer);
    const double scale =
        printer.resolution() / mm_per_inch_of_paper; // a millimetre of the sheet is one of paper
    progress.setMaximum(static_cast<int>(all.size()));
    for (std::size_t i = 0; i < all.size(); ++i) {
        progress.setValue(static_cast<int>(i));
        if (progress.wasCanceled()) {
            printer.abort();
            return false;
        }
        if (i > 0) printer.newPage();
        painter.save();
        painter.scale(scale, scale);
        paint_sheet(painter, all[i]);
        painter.restore();
    }
    painter.end(); // hands the pages over: also a wait
    progress.setValue(static_cast<int>(all.size()));
    return true;
}

void name_sheets(QPrinter &printer, const QString &name) {
    const QString plain = text(safe_file_name(name.toStdString()));
    printer.setDocName(plain); // the system's dialog makes a file's name of it
    printer.setCreator(QCoreApplication::applicationName());
}

void preview_sheets(StatePtr state, std::optional<Index<Model>> model, const QString &name, QWidget *parent) {
    constexpr QSize size(1000, 720);
    QProgressDialog drawing(Words::tr("Drawing the cut sheets"), Words::tr("Stop"), 0,
                            static_cast<int>(state->job.layout.models.size()), parent);
    dress(drawing);
    const auto all = sheets_wanted(state->job, model, drawing);
    drawing.reset();
    if (all.empty()) return;
    QPrinter printer(QPrinter::HighResolution);
    name_sheets(printer, name);
    QPrintPreviewDialog preview(&printer, parent);
    preview.setWindowTitle(model == all_models ? Words::tr("Cut sheets") : Words::tr("Cut sheet"));
    preview.resize(size.boundedTo(preview.screen()->availableGeometry().size() * 9 / 10));
    QObject::connect(&preview, &QPrintPreviewDialog::paintRequested, &preview, [&](QPrinter *to) {
        QProgressDialog painting(Words::tr("Laying out the pages"), Words::tr("Stop"), 0, 0, &preview);
        dress(painting);
        if (!print_sheets(*to, all, painting)) preview.reject();
    });
    preview.exec();
}

} // namespace roundlay::window
