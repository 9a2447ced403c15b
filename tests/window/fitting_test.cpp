// What is added fits its wall or its room, as small as these ask, or is refused with the reason.
#include "kernel/design/opening_edits.h"
#include "kernel/document/document.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/frame/new_shell.h"
#include "tests/window/support/window.h"

#include <QAction>
#include <QTemporaryDir>
#include <QTest>

using namespace roundlay;
using namespace roundlay::window;

class FittingTest : public QObject {
    Q_OBJECT

  private slots:
    void what_fits_nowhere_says_why();

  private:
    QTemporaryDir folder_;
    QString kept() const { return folder_.filePath(QStringLiteral("unsaved")); }
};

void FittingTest::what_fits_nowhere_says_why() {
    MainWindow window(kept());
    window.show();
    Shell one = *shell_of(usual_shell(Shape::rectangle, UnitSystem::metric));
    one.rounds.height.reset();
    one.rounds.count = 1;
    window.begin(one, "Sill logs");
    QVERIFY(settled(window));
    QString why;
    connect(&window.desk(), &Desk::refused, &window, [&](const QString &words) { why = words; });
    window.selection().choose_wall("A");
    window.action("add_door")->trigger();
    QVERIFY(settled(window));
    QVERIFY2(why.contains("wall A") && why.contains("high"), qPrintable(why));
    // A wall that is full.
    Shell full = *shell_of(usual_shell(Shape::rectangle, UnitSystem::metric));
    Opening wide = usual_opening(OpeningKind::window, "A", UnitSystem::metric);
    wide.name = "long light";
    wide.width = full.walls[0].length - Length::mm(900);
    wide.from_left = Length::mm(450);
    wide.sill = Length();
    wide.height = Length::mm(2600);
    full.openings = {wide};
    window.desk().begin("Full", write_document(full));
    QVERIFY(settled(window));
    window.selection().choose_wall("A");
    window.action("add_window")->trigger();
    QVERIFY(settled(window));
    QVERIFY2(why.contains("long light"), qPrintable(why));
    window.close_document();
}

int main(int argc, char **argv) {
    const TestProgram program(argc, argv);
    FittingTest test;
    return QTest::qExec(&test, argc, argv);
}

#include "fitting_test.moc"
