// The dialog of exports: stopped halfway, and sparing files that are not its own.
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/frame/export_dialog.h"
#include "modeler/window/frame/new_shell.h"
#include "modeler/window/panels/message_bar.h"
#include "modeler/window/views/model_page.h"
#include "modeler/window/views/plan_view.h"
#include "tests/window/support/window_test.h"

#include <QAction>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QDir>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSet>
#include <QTest>
#include <QTimer>

using namespace roundlay;
using namespace roundlay::window;

class ExportDialogTest : public WindowTest {
    Q_OBJECT

  private slots:
    void an_export_is_stopped_and_leaves_nothing();
    void an_export_spares_a_persons_own_files_until_told();
    void an_export_spares_the_files_of_another_document_until_told();
    void it_says_which_state_it_exports_and_each_has_a_folder();
    void it_exports_chosen_pieces_alone();
};

void ExportDialogTest::an_export_is_stopped_and_leaves_nothing() {
    MainWindow window(kept());
    window.begin_demo(1);
    QVERIFY(settled(window));
    const QString to = folder_.filePath("stopped");
    ExportDialog dialog(window.desk().state()->job, to);
    dialog.show();
    QPushButton *start = nullptr;
    for (QPushButton *button : dialog.findChildren<QPushButton *>())
        if (button->isDefault()) start = button;
    QVERIFY(start != nullptr && start->isEnabled());
    const auto boxes = dialog.findChildren<QCheckBox *>();
    for (QCheckBox *box : boxes)
        box->setChecked(false);
    QVERIFY(!start->isEnabled()); // nothing is chosen
    for (QCheckBox *box : boxes)
        box->setChecked(box->objectName() != "router"); // which must be told more before
    start->click();
    QVERIFY(dialog.is_running());
    QTest::qWait(100);
    QTest::keyClick(&dialog, Qt::Key_Escape); // the first stops, only a second would close
    QTRY_VERIFY_WITH_TIMEOUT(!dialog.is_running(), 20'000);
    QVERIFY(dialog.isVisible() && !dialog.succeeded());
    QVERIFY(dialog.result().startsWith("stopped"));
    QVERIFY(!QFile::exists(to + "/manifest.json"));
    QTest::keyClick(&dialog, Qt::Key_Escape);
    QVERIFY(!dialog.isVisible());
    window.close_document();
}

void ExportDialogTest::an_export_spares_a_persons_own_files_until_told() {
    MainWindow window(kept());
    window.begin_demo(1);
    QVERIFY(settled(window));
    const QString to = folder_.filePath("spared");
    QVERIFY(QDir().mkpath(to));
    const QString own = written("spared/totals.csv", "mine");
    ExportDialog dialog(window.desk().state()->job, to);
    dialog.show();
    QCheckBox *replace = nullptr;
    for (QCheckBox *box : dialog.findChildren<QCheckBox *>()) {
        if (box->text() == "&Replace those files") replace = box;
        box->setChecked(box->text().startsWith("list"));
    }
    QVERIFY(replace != nullptr && !replace->isVisible());
    const auto run = [&] {
        dialog.start();
        return QTest::qWaitFor([&] { return !dialog.is_running(); }, 20'000);
    };
    QVERIFY(run() && !dialog.succeeded());
    QVERIFY(dialog.result().contains("totals.csv") && replace->isVisible() && !replace->isChecked());
    QFile file(own);
    QVERIFY(file.open(QIODevice::ReadOnly) && file.readAll() == "mine");
    replace->setChecked(true);
    QVERIFY(run() && dialog.succeeded() && !replace->isVisible());
    QFile replaced(own);
    QVERIFY(replaced.open(QIODevice::ReadOnly) && replaced.readAll() != "mine");
    window.close_document();
}

void ExportDialogTest::an_export_spares_the_files_of_another_document_until_told() {
    MainWindow window(kept());
    window.begin_demo(1);
    QVERIFY(settled(window));
    const QString to = folder_.filePath("another");
    ExportJob job = window.desk().state()->job;
    for (const bool other : {false, true}) {
        if (other) job.document = "barn.roundlay", job.document_sha256 = "0", job.shell.name = "Barn";
        ExportDialog dialog(job, to);
        dialog.show();
        QCheckBox *replace = nullptr;
        for (QCheckBox *box : dialog.findChildren<QCheckBox *>()) {
            if (box->text() == "&Replace those files") replace = box;
            box->setChecked(box->text().startsWith("list"));
        }
        QVERIFY(replace != nullptr);
        const auto run = [&] {
            dialog.start();
            return QTest::qWaitFor([&] { return !dialog.is_running(); }, 20'000);
        };
        QVERIFY(run());
        QCOMPARE(dialog.succeeded(), !other);
        QCOMPARE(replace->isVisible(), other);
        if (!other) continue;
        QVERIFY(dialog.result().contains("another document"));
        replace->setChecked(true);
        QVERIFY(run() && dialog.succeeded());
    }
    window.close_document();
}

void ExportDialogTest::it_says_which_state_it_exports_and_each_has_a_folder() {
    MainWindow window(kept());
    Shell shell = a_room();
    QVERIFY(shown(window, shell, "Old house"));
    QStringList folders, words;
    const auto look = [&] {
        QTimer::singleShot(100, &window, [&] {
            auto *dialog = qobject_cast<ExportDialog *>(QApplication::activeModalWidget());
            if (dialog == nullptr) return;
            const auto *told = dialog->findChild<QLabel *>("exported_state");
            folders << dialog->folder();
            words << (told != nullptr ? told->text() : QString());
            dialog->close();
        });
        window.action("export")->trigger();
    };
    look(); // of a house that has but one
    window.action("begin_record")->trigger();
    QVERIFY(settled(window));
    for (const char *state : {"as found", "as it shall stand"}) {
        window.desk().see(state);
        QVERIFY(settled(window));
        look();
    }
    QCOMPARE(folders.size(), qsizetype(3));
    QVERIFY(words[0].isEmpty());
    QVERIFY2(words[1].contains("as found"), qPrintable(words[1]));
    QVERIFY2(words[2].contains("as it shall stand"), qPrintable(words[2]));
    QCOMPARE(QSet<QString>(folders.begin(), folders.end()).size(), qsizetype(3));
    QVERIFY2(folders[1].contains("as-found"), qPrintable(folders[1]));
    window.close_document();
}

void ExportDialogTest::it_exports_chosen_pieces_alone() {
    MainWindow window(kept());
    window.begin_demo(1);
    QVERIFY(settled(window));
    const QString to = folder_.filePath("some");
    ExportDialog dialog(window.desk().state()->job, to);
    dialog.show();
    auto *pieces = dialog.findChild<QComboBox *>("pieces");
    auto *tags = dialog.findChild<QLineEdit *>("tags");
    QPushButton *start = nullptr;
    for (QPushButton *button : dialog.findChildren<QPushButton *>())
        if (button->isDefault()) start = button;
    QVERIFY(pieces != nullptr && tags != nullptr && start != nullptr);
    QCheckBox *picture = nullptr;
    for (QCheckBox *box : dialog.findChildren<QCheckBox *>()) {
        box->setChecked(box->text().startsWith("STEP") || box->text().startsWith("picture"));
        if (box->text().startsWith("picture")) picture = box;
    }
    QVERIFY(picture != nullptr && picture->isEnabled() && !tags->isEnabled());
    pieces->setCurrentIndex(pieces->count() - 1);
    QVERIFY(!picture->isEnabled()); // it shows the whole shell
    QVERIFY(tags->isEnabled() && !start->isEnabled());
    const auto run = [&] {
        dialog.start();
        return QTest::qWaitFor([&] { return !dialog.is_running(); }, 20'000);
    };
    tags->setText("A-02-1, A-0");
    QVERIFY(start->isEnabled() && run() && !dialog.succeeded());
    QVERIFY2(dialog.result().contains("A-0"), qPrintable(dialog.result()));
    tags->setText(" A-02-1 ");
    QVERIFY(run() && dialog.succeeded());
    QCOMPARE(QDir(to + "/pieces").entryList(QDir::Files).size(), qsizetype(1));
    QVERIFY(!QFile::exists(to + "/shell.step") && !QFile::exists(to + "/picture.png"));
    pieces->setCurrentIndex(2); // mended: a new house has none
    QVERIFY(run());
    QVERIFY2(dialog.result().contains("no piece"), qPrintable(dialog.result()));
    window.close_document();
}

int main(int argc, char **argv) {
    return run_test<ExportDialogTest>(argc, argv);
}

#include "export_dialog_test.moc"
