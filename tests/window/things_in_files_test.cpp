// What is chosen, put into a file or on paper: a picture, one sheet, one piece.
#include "exporters/registry/paper.h"
#include "exporters/sheets/cut_sheet/cut_sheet.h"
#include "kernel/shell/shapes.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/frame/new_shell.h"
#include "modeler/window/frame/piece_export.h"
#include "modeler/window/frame/print.h"
#include "modeler/window/frame/save_picture.h"
#include "modeler/window/panels/findings_panel.h"
#include "modeler/window/panels/log_panel.h"
#include "modeler/window/views/joint_page.h"
#include "modeler/window/views/model_page.h"
#include "modeler/window/views/scene_view.h"
#include "modeler/window/views/sheet_view.h"
#include "tests/window/support/demo_test.h"

#include <QAction>
#include <QLabel>
#include <QPrinter>
#include <QProgressDialog>
#include <QRegularExpression>
#include <QSpinBox>
#include <QTest>

using namespace roundlay;
using namespace roundlay::window;

namespace {

QByteArray bytes_of(const QString &path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

qsizetype pages_of(const QByteArray &pdf) {
    static const QRegularExpression page(QStringLiteral("/Type\\s*/Page\\b(?!s)"));
    qsizetype count = 0;
    for (auto it = page.globalMatch(QString::fromLatin1(pdf)); it.hasNext(); it.next())
        ++count;
    return count;
}

} // namespace

class ThingsInFilesTest : public DemoTest {
    Q_OBJECT

  private slots:
    void init() { open_demo(); }
    void cleanup() { window_.reset(); }
    void a_picture_has_the_stated_size_and_shows_the_model();
    void one_sheet_is_printed_and_a_long_print_can_be_stopped();
    void a_sheet_in_a_file_is_called_after_shell_and_log();
    void one_piece_is_exported();
    void the_sheet_that_is_seen_is_the_sheet_of_the_files();
};

void ThingsInFilesTest::a_picture_has_the_stated_size_and_shows_the_model() {
    PictureSizeDialog dialog({800, 400});
    QCOMPARE(dialog.size_in_pixels(), QSize(1600, 800)); // the view's own shape
    const auto boxes = dialog.findChildren<QSpinBox *>();
    QCOMPARE(boxes.size(), qsizetype(2));
    boxes[0]->setValue(500);
    boxes[1]->setValue(310);
    const SceneView &view = *window_->model().view();
    const QString path = folder_.filePath("model.png");
    QVERIFY(!write_picture(view, dialog.size_in_pixels(), path, window_.get()));
    const QImage plain(path);
    QCOMPARE(plain.size(), QSize(500, 310));
    QVERIFY(plain.pixel(250, 170) != plain.pixel(2, 2)); // wood in the middle, sky in the corner
    window_->model().show_labels(true);
    QVERIFY(!write_picture(view, {500, 310}, path, window_.get()));
    QVERIFY(QImage(path) != plain); // with its tags
    window_->show_legend(true);
    QVERIFY(!write_picture(view, {500, 310}, path, window_.get()));
    const QImage uncalled(path);
    QVERIFY(!write_picture(view, {500, 310}, path, window_.get(), "Old house, as found"));
    const QImage called(path);
    QVERIFY(called.copy(0, 0, 250, 60) != uncalled.copy(0, 0, 250, 60)); // which house, in which state
    window_->show_legend(false);
    QVERIFY(!write_picture(view, {500, 310}, path, window_.get()));
    const QRect low(0, 155, 250, 155);
    QVERIFY(QImage(path).copy(low) != uncalled.copy(low)); // the legend goes with the picture
    boxes[0]->setValue(1);
    QVERIFY(dialog.size_in_pixels() == QSize(500, 310)); // nobody would see anything
    const auto why = write_picture(view, {50, 31}, folder_.filePath("nowhere/model.png"), window_.get());
    QVERIFY(why && !why->isEmpty());
}

void ThingsInFilesTest::one_sheet_is_printed_and_a_long_print_can_be_stopped() {
    const ExportJob &job = window_->desk().standing()->job;
    const auto print_to = [](const QString &path, const std::vector<sheets::Sheet> &all, bool stop) {
        QPrinter printer(QPrinter::HighResolution);
        printer.setOutputFormat(QPrinter::PdfFormat);
        printer.setOutputFileName(path);
        QProgressDialog progress;
        QObject::connect(&progress, &QProgressDialog::canceled, &progress, [] {});
        if (stop) progress.cancel();
        return print_sheets(printer, all, progress);
    };
    const auto one = sheets_of(job, Index<Model>(0));
    QVERIFY(!one.empty());
    const QString path = folder_.filePath("one.pdf");
    QVERIFY(print_to(path, one, false));
    QCOMPARE(pages_of(bytes_of(path)), static_cast<qsizetype>(one.size()));
    auto several = one;
    for (const int model : {1, 2})
        for (const auto &sheet : sheets_of(job, Index<Model>(model)))
            several.push_back(sheet);
    const QString stopped = folder_.filePath("stopped.pdf");
    QVERIFY(!print_to(stopped, several, true));
    QVERIFY(pages_of(bytes_of(stopped)) <= 1); // not even the second sheet
    choose("A-01-1");
    QVERIFY(window_->action("print_sheet")->isEnabled());
    window_->selection().clear();
    QVERIFY(!window_->action("print_sheet")->isEnabled());
}

void ThingsInFilesTest::a_sheet_in_a_file_is_called_after_shell_and_log() {
    QPrinter printer(QPrinter::HighResolution);
    name_sheets(printer, "Farm / house C-02-1");
    QVERIFY2(printer.docName().contains("C-02-1") && printer.docName().startsWith("Farm"),
             qPrintable(printer.docName()));
    QVERIFY2(!printer.docName().contains('/'), qPrintable(printer.docName()));
}

void ThingsInFilesTest::one_piece_is_exported() {
    const ExportJob &job = window_->desk().standing()->job;
    const auto piece = piece_tagged(job.layout, "B-03-1");
    QVERIFY(piece);
    const QString step = folder_.filePath("log.step"), pdf = folder_.filePath("log.pdf");
    QVERIFY(!write_piece(job, *piece, step));
    QVERIFY(bytes_of(step).startsWith("ISO-10303-21;") && bytes_of(step).contains("'B-03-1'"));
    QVERIFY(!write_piece(job, *piece, pdf));
    QVERIFY(bytes_of(pdf).startsWith("%PDF-") && bytes_of(pdf).size() > 5000);
    QVERIFY(write_piece(job, *piece, folder_.filePath("nowhere/log.step")));
}

void ThingsInFilesTest::the_sheet_that_is_seen_is_the_sheet_of_the_files() {
    raise("sheet");
    choose("A-01-1");
    QTRY_COMPARE_WITH_TIMEOUT(window_->sheet().tag(), QString("A-01-1"), 60'000);
    const ExportJob &job = window_->desk().standing()->job;
    const std::size_t model = job.layout.pieces[*piece_tagged(job.layout, "A-01-1")].model.at();
    const auto files = sheets_of(job, sheets::cut_sheet_set(job.layout), "cut sheets", Progress::none());
    QVERIFY(!window_->sheet().drawn().empty());
    QVERIFY(window_->sheet().drawn() == *files.at(model));
    QCOMPARE(job.composed->compositions(),
             static_cast<int>(job.layout.models.size())); // not the seen one twice
}

int main(int argc, char **argv) {
    return run_test<ThingsInFilesTest>(argc, argv);
}

#include "things_in_files_test.moc"
