// A tour of the window to be looked at: every view, panel and dialog, light and dark, small and large, in
// each language, on demos and on a shell that is none. Pictures stay; words that are cut off fail.
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/frame/application.h"
#include "modeler/window/frame/export_dialog.h"
#include "modeler/window/frame/new_shell.h"
#include "modeler/window/views/model_page.h"
#include "modeler/window/views/tints.h"
#include "tests/window/support/window_test.h"

#include <QAbstractButton>
#include <QAction>
#include <QApplication>
#include <QDialog>
#include <QDockWidget>
#include <QLabel>
#include <QTest>
#include <QTimer>
#include <QTranslator>
#include <algorithm>

using namespace roundlay;
using namespace roundlay::window;

namespace {

constexpr QSize small(1024, 700), large(1400, 900);

/// A T in feet, with a floor, a partition, a door and two windows.
Shell tee() {
    NewShell sizes = usual_shell(Shape::tee, UnitSystem::imperial);
    sizes.name = "Farm T";
    return *shell_of(sizes);
}

/// Labels and buttons whose words do not fit into them.
QStringList cut_off(const QWidget &window) {
    QStringList found;
    for (const QWidget *w : window.findChildren<QWidget *>()) {
        if (!w->isVisible()) continue;
        const auto *label = qobject_cast<const QLabel *>(w);
        const auto *button = qobject_cast<const QAbstractButton *>(w);
        const QString words = label != nullptr    ? label->text()
                              : button != nullptr ? button->text()
                                                  : QString();
        if (words.isEmpty() || (label != nullptr && label->wordWrap())) continue;
        if (w->width() + 1 < w->minimumSizeHint().width()) found << words;
    }
    return found;
}

} // namespace

class TourTest : public WindowTest {
    Q_OBJECT

  private slots:
    void init() { wear(Appearance::light); }
    void the_views_data();
    void the_views();
    void the_dialogs_data() { the_views_data(); }
    void the_dialogs();

  private:
    std::vector<std::unique_ptr<QTranslator>> language();
    std::unique_ptr<MainWindow> put_up();
    void look_at(MainWindow &window, const QString &name);
    void look_at_dialog(MainWindow &window, const QString &action, const QString &name);
};

void TourTest::the_views_data() {
    QTest::addColumn<QString>("language");
    QTest::addColumn<bool>("dark");
    QTest::addColumn<QSize>("size");
    QTest::newRow("en-light-small") << "en" << false << small;
    QTest::newRow("en-dark-large") << "en" << true << large;
    QTest::newRow("fr-light-large") << "fr" << false << large;
    QTest::newRow("fr-dark-small") << "fr" << true << small;
}

/// Spoken while it lives.
std::vector<std::unique_ptr<QTranslator>> TourTest::language() {
    QFETCH(QString, language);
    std::vector<std::unique_ptr<QTranslator>> all;
    if (language == QStringLiteral("en")) return all;
    all.push_back(own_translator(QLocale(language)));
    all.push_back(library_translator(QLocale(language)));
    for (const auto &translator : all)
        if (translator) QApplication::installTranslator(translator.get());
    return all;
}

/// In the appearance and the size of this turn.
std::unique_ptr<MainWindow> TourTest::put_up() {
    QFETCH(bool, dark);
    QFETCH(QSize, size);
    wear(dark ? Appearance::dark : Appearance::light);
    auto window = std::make_unique<MainWindow>(kept());
    window->resize(size);
    window->show();
    return window;
}

void TourTest::look_at(MainWindow &window, const QString &name) {
    const auto raise = [&](const char *dock) {
        auto *d = window.findChild<QDockWidget *>(QLatin1String(dock));
        d->show();
        d->raise();
    };
    const std::vector<std::vector<const char *>> turns = {{"plan", "elevation", "log"},
                                                          {"shell", "cut_list", "joint"},
                                                          {"floors", "sheet", "log"},
                                                          {"shell", "text", "joint"}};
    int number = 0;
    for (const auto &turn : turns) {
        for (const char *dock : turn)
            raise(dock);
        if (&turn == &turns[2])
            window.selection().choose_piece(window.desk().standing()->job.layout, Index<Piece>(3));
        keep_picture(window, QStringLiteral("%1-%2-%3").arg(QTest::currentDataTag(), name).arg(++number));
        QVERIFY2(cut_off(window).isEmpty(), qPrintable(cut_off(window).join(u'|')));
    }
}

void TourTest::the_views() {
    QFETCH(QSize, size);
    const auto translator = language();
    const auto up = put_up();
    MainWindow &window = *up;
    keep_picture(window, QStringLiteral("%1-start").arg(QTest::currentDataTag()));
    QVERIFY(window.open(demo_file("one-room")));
    QVERIFY(!window.save_to("/dev/full"));
    keep_picture(window, QStringLiteral("%1-message").arg(QTest::currentDataTag()));
    QVERIFY2(cut_off(window).isEmpty(), qPrintable(cut_off(window).join(u'|')));
    window.close_document();
    QVERIFY(settled(window));
    QCOMPARE(window.findChild<QLabel *>("summary")->text(), QString()); // nothing is there to be built
    keep_picture(window, QStringLiteral("%1-start-again").arg(QTest::currentDataTag()));
    for (int demo = 0; demo < 4; ++demo) {
        if (demo < 3)
            window.begin_demo(demo);
        else
            window.begin(tee(), "Farm T");
        QVERIFY(settled(window));
        QCOMPARE(window.size(), size);
        const State &state = *window.desk().standing();
        if (!state.job.shell.openings.empty()) window.selection().choose_opening(state.job.shell, 0);
        window.selection().choose_corner(state.job.layout.corners.back().name);
        if (!state.job.shell.openings.empty()) window.selection().choose_opening(state.job.shell, 0);
        look_at(window, QStringLiteral("shell%1").arg(demo));
    }
    window.close_document();
}

void TourTest::look_at_dialog(MainWindow &window, const QString &action, const QString &name) {
    constexpr int until_shown = 400;
    QStringList words;
    bool opened = false;
    QTimer::singleShot(until_shown, &window, [&] {
        QWidget *dialog = QApplication::activeModalWidget();
        if (dialog == nullptr) return;
        opened = true;
        words = cut_off(*dialog);
        keep_picture(*dialog, QStringLiteral("%1-dialog-%2").arg(QTest::currentDataTag(), name));
        dialog->close();
    });
    window.action(action)->trigger();
    QTRY_VERIFY2(opened, qPrintable(action + QStringLiteral(" opens no dialog")));
    QCOMPARE(words, QStringList());
}

void TourTest::the_dialogs() {
    const auto translator = language();
    const auto up = put_up();
    MainWindow &window = *up;
    window.begin_demo(0);
    QVERIFY(settled(window));
    window.selection().choose_piece(window.desk().standing()->job.layout, Index<Piece>(0));
    for (const char *action :
         {"new", "open", "save_as", "export", "print", "print_sheet", "save_picture", "shortcuts", "about"})
        look_at_dialog(window, QLatin1String(action), QLatin1String(action));
    window.desk().edit("x", [](const Shell &s) {
        Shell next = s;
        next.name = "unsaved";
        return std::optional(next);
    });
    look_at_dialog(window, QStringLiteral("close"), QStringLiteral("unsaved"));
    window.close_document();
}

int main(int argc, char **argv) {
    return run_test<TourTest>(argc, argv);
}

#include "tour_test.moc"
