#include "modeler/window/frame/print.h"

#include "modeler/window/views/sheet_painter.h"
#include "modeler/window/views/sheet_view.h"

#include <QCoreApplication>
#include <QPageLayout>
#include <QPainter>
#include <QPrintPreviewDialog>
#include <QPrinter>
#include <QProgressDialog>
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

/// Sheets are drawn to scale: a millimetre of the sheet is a millimetre of paper.
void print_sheets(QPrinter *printer, const std::vector<sheets::Sheet> &all) {
    printer->setFullPage(true);
    printer->setPageLayout(page_of(all.front()));
    QPainter painter(printer);
    constexpr double mm_per_inch_of_paper = 25.4;
    const double scale = printer->resolution() / mm_per_inch_of_paper;
    for (const sheets::Sheet &sheet : all) {
        if (&sheet != &all.front()) printer->newPage();
        painter.save();
        painter.scale(scale, scale);
        paint_sheet(painter, sheet);
        painter.restore();
    }
}

std::vector<sheets::Sheet> all_sheets(const ExportJob &job, QProgressDialog &progress) {
    std::vector<sheets::Sheet> all;
    for (int model = 0; model < static_cast<int>(job.layout.models.size()); ++model) {
        progress.setValue(model); // also lets the window breathe
        if (progress.wasCanceled()) return {};
        for (sheets::Sheet &sheet : sheets_of(job, model))
            all.push_back(std::move(sheet));
    }
    return all;
}

} // namespace

void preview_sheets(const StatePtr &state, QWidget *parent) {
    constexpr QSize size(1000, 720);
    QProgressDialog progress(QCoreApplication::translate("Print", "Drawing the cut sheets"),
                             QCoreApplication::translate("Print", "Stop"), 0,
                             static_cast<int>(state->job.layout.models.size()), parent);
    progress.setWindowModality(Qt::WindowModal);
    const auto all = all_sheets(state->job, progress);
    progress.reset();
    if (all.empty()) return;
    QPrinter printer(QPrinter::HighResolution);
    QPrintPreviewDialog preview(&printer, parent);
    preview.setWindowTitle(QCoreApplication::translate("Print", "Cut sheets"));
    preview.resize(size);
    QObject::connect(&preview, &QPrintPreviewDialog::paintRequested, &preview,
                     [&all](QPrinter *to) { print_sheets(to, all); });
    preview.exec();
}

} // namespace roundlay::window
