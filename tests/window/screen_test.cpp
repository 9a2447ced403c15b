// The window and its dialogs on the screen there is, however small. Run on several.
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/frame/export_dialog.h"
#include "modeler/window/frame/new_shell.h"
#include "modeler/window/frame/recent.h"
#include "modeler/window/frame/start_page.h"
#include "modeler/window/panels/cut_list_panel.h"
#include "tests/window/support/sight.h"
#include "tests/window/support/window_test.h"

#include <QAction>
#include <QApplication>
#include <QCheckBox>
#include <QDockWidget>
#include <QFile>
#include <QLabel>
#include <QListWidget>
#include <QScreen>
#include <QScrollBar>
#include <QTableView>
#include <QTest>
#include <QTimer>

using namespace roundlay;
using namespace roundlay::window;

class ScreenTest : public WindowTest {
    Q_OBJECT

  private slots:
    void the_window_with_a_document_fits_its_screen();
    void the_dialogs_fit_their_screen();
    void what_an_export_says_can_be_read();
    void the_cut_list_has_room_for_its_rows();
    void the_start_page_scrolls_only_where_it_must();

  private:
    void look_at_dialog(MainWindow &window, const QString &action);
};

/// Run on a screen of 1366 x 768 as well, and on the same at twice the size.
void ScreenTest::the_window_with_a_document_fits_its_screen() {
    MainWindow window(kept());
    const QSize room = QGuiApplication::primaryScreen()->availableGeometry().size();
    QVERIFY(shown_demo(window, 1));
    for (const char *dock : {"shell", "joint", "floors", "log", "plan"}) {
        raise(window, dock);
        const QString size =
            QStringLiteral("%1: %2 x %3").arg(QLatin1String(dock)).arg(window.width()).arg(window.height());
        QVERIFY2(window.width() <= room.width() && window.height() <= room.height(), qPrintable(size));
        QVERIFY2(window.minimumSizeHint().boundedTo(room) == window.minimumSizeHint(), qPrintable(size));
    }
    for (const char *dock : {"elevation", "cut_list", "sheet", "text", "findings"}) {
        raise(window, dock); // also where they wait in the menu
        QTest::qWait(100);
        const QString size =
            QStringLiteral("%1: %2 x %3").arg(QLatin1String(dock)).arg(window.width()).arg(window.height());
        QVERIFY2(window.width() <= room.width() && window.height() <= room.height(), qPrintable(size));
        QVERIFY2(window.minimumSizeHint().boundedTo(room) == window.minimumSizeHint(), qPrintable(size));
    }
    keep_picture(window, QStringLiteral("fits-%1-%2").arg(room.width()).arg(room.height()));
    NewShellDialog fresh(UnitSystem::imperial, &window);
    ExportDialog exporting(window.desk().state()->job, "export", &window);
    for (QDialog *dialog : std::initializer_list<QDialog *>{&fresh, &exporting}) {
        dialog->show();
        QTest::qWait(50);
        const QString size = QStringLiteral("%1 x %2").arg(dialog->width()).arg(dialog->height());
        QVERIFY2(dialog->width() <= room.width() && dialog->height() <= room.height(),
                 qPrintable(dialog->windowTitle() + size));
        keep_picture(*dialog,
                     QStringLiteral("fits-%1-%2").arg(room.width()).arg(dialog == &fresh ? "new" : "export"));
        dialog->hide();
    }
    window.close_document();
}

/// Not larger than there is room, and nothing in it asks for more.
void ScreenTest::look_at_dialog(MainWindow &window, const QString &action) {
    constexpr int until_shown = 400;
    const QSize room = QGuiApplication::primaryScreen()->availableGeometry().size();
    QSize size, least;
    QTimer::singleShot(until_shown, &window, [&] {
        QWidget *dialog = QApplication::activeModalWidget();
        if (dialog == nullptr) return;
        size = dialog->size(), least = dialog->minimumSizeHint();
        keep_picture(*dialog, QStringLiteral("fits-%1-%2").arg(room.width()).arg(action));
        dialog->close();
    });
    window.action(action)->trigger();
    QTRY_VERIFY2(!size.isEmpty(), qPrintable(action + QStringLiteral(" opens no dialog")));
    const QString words = QStringLiteral("%1: %2 x %3, at least %4 x %5")
                              .arg(action)
                              .arg(size.width())
                              .arg(size.height())
                              .arg(least.width())
                              .arg(least.height());
    QVERIFY2(size.boundedTo(room) == size && least.boundedTo(room) == least, qPrintable(words));
}

void ScreenTest::the_dialogs_fit_their_screen() {
    MainWindow window(kept());
    QVERIFY(shown_demo(window, 0));
    window.selection().choose_piece(window.desk().standing()->job.layout, Index<Piece>(0));
    for (const char *action : {"new", "export", "print_sheet", "save_picture", "shortcuts", "about"})
        look_at_dialog(window, QLatin1String(action));
    window.desk().edit(QStringLiteral("x"), [](const Shell &s) {
        Shell next = s;
        next.name = "unsaved";
        return std::optional(next);
    });
    look_at_dialog(window, QStringLiteral("close"));
    window.close_document();
}

/// The longest that it says: which files of the person's own stand in the way.
void ScreenTest::what_an_export_says_can_be_read() {
    const std::string folder =
        "/home/somebody/Documents/shells/tarnfold-hall-as-ordered-in-march/tarnfold-hall-export";
    const auto in_the_way = [&](const ExportJob &, const std::vector<const Exporter *> &,
                                const std::filesystem::path &, Progress &, IfThere) -> ExportDialog::Outcome {
        ExportFailure failure;
        failure.trouble = Trouble::in_the_way;
        failure.message =
            "files of your own stand in the way in \"" + folder +
            "\" (made by no export, or changed since): shell.step, totals.csv, picture.png and 12 "
            "more: nothing was written; move them, choose another folder, or replace them";
        return failure;
    };
    ExportDialog dialog({}, QString::fromStdString(folder), nullptr, in_the_way);
    dialog.show();
    QTest::qWait(100);
    dialog.start();
    QTRY_VERIFY(!dialog.is_running());
    QTest::qWait(100);
    const QRect room = QGuiApplication::primaryScreen()->availableGeometry();
    QVERIFY(dialog.height() <= room.height() && dialog.width() <= room.width());
    const QString wrong = covered(dialog);
    QVERIFY2(wrong.isEmpty(), qPrintable(wrong));
    for (const QWidget *part : dialog.findChildren<QWidget *>(Qt::FindDirectChildrenOnly))
        QVERIFY(!part->isVisible() || dialog.rect().contains(part->geometry()));
    keep_picture(dialog, QStringLiteral("fits-%1-in-the-way").arg(room.width()));
    // What is chosen can be reached: some of it is seen, the rest scrolls.
    QVERIFY(dialog.findChild<QCheckBox *>()->visibleRegion().boundingRect().height() > 0);
}

/// As it is arranged at first, on a screen that is not the smallest.
void ScreenTest::the_cut_list_has_room_for_its_rows() {
    MainWindow window(kept());
    const QSize room = QGuiApplication::primaryScreen()->availableGeometry().size();
    QVERIFY(shown_demo(window, 1));
    raise(window, "cut_list");
    QTest::qWait(100);
    const QTableView &table = *window.cut_list().table();
    const int rows = table.viewport()->height() / table.rowHeight(0);
    QVERIFY2(rows >= (room.height() < 560 ? 1 : 5), qPrintable(QString::number(rows)));
    QVERIFY(window.height() <= room.height());
    keep_picture(window, QStringLiteral("fits-%1-cut-list").arg(room.width()));
    window.close_document();
}

void ScreenTest::the_start_page_scrolls_only_where_it_must() {
    constexpr int high_enough = 700; // pixels: with all its links
    const QSize room = QGuiApplication::primaryScreen()->availableGeometry().size();
    MainWindow window(kept());
    for (int i = 0; i < 10; ++i) {
        const QString path = folder_.filePath(QStringLiteral("recent-%1.roundlay").arg(i));
        QFile::copy(demo_file("one-room"), path);
        remember_file(path);
    }
    window.show();
    window.close_document(); // looks at what is recent
    QTest::qWait(100);
    int bars = 0;
    const auto *page = window.findChild<StartPage *>();
    for (const QScrollBar *bar : page->findChildren<QScrollBar *>())
        if (bar->isVisible() && !qobject_cast<const QListWidget *>(bar->parentWidget()->parentWidget()))
            ++bars;
    QVERIFY2(bars == 0 || room.height() < high_enough, qPrintable(QString::number(bars)));
    keep_picture(window, QStringLiteral("fits-%1-start").arg(room.width()));
}

int main(int argc, char **argv) {
    return run_test<ScreenTest>(argc, argv);
}

#include "screen_test.moc"
