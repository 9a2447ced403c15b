// Work that a crash left behind is offered, once, to whom it belongs.
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/recovery.h"
#include "modeler/window/panels/message_bar.h"
#include "tests/window/support/window_test.h"

#include <QAction>
#include <QTest>

using namespace roundlay;
using namespace roundlay::window;

class LeftWorkTest : public WindowTest {
    Q_OBJECT

  private slots:
    void left_work_is_offered_when_its_very_file_is_opened();
    void left_work_that_reached_the_disk_is_not_offered();
    void a_file_changed_since_the_crash_is_told_of();

  private:
    int turn_ = 0;
    QString kept_;
    void init() { kept_ = folder_.filePath(QStringLiteral("unsaved-%1").arg(++turn_)); }
};

namespace {

/// As a session that ended badly leaves it: nobody holds its lock any more.
void leave(const QString &folder, const QString &path, const std::string &text,
           const std::optional<std::string> &on_disk) {
    Recovery session(folder);
    QVERIFY(session.keep({{}, path, "left", text, on_disk}));
}

} // namespace

void LeftWorkTest::left_work_is_offered_when_its_very_file_is_opened() {
    init();
    const QString path = copy_of("one-room"), other = copy_of("ell-house");
    const std::string before = text_of(path), left = before + "# typed before the crash\n";
    leave(kept_, path, left, before);
    MainWindow window(kept_);
    QVERIFY(window.open(other));
    QVERIFY(window.message().sentence().isEmpty()); // it is none of that file's business
    QVERIFY(window.open(path));
    QVERIFY(!window.message().sentence().isEmpty());
    window.message().answer(0);
    QVERIFY(settled(window));
    QCOMPARE(window.desk().document().text(), left);
    QVERIFY(window.desk().unsaved());
    QCOMPARE(window.desk().path(), path);
    window.action("save")->trigger();
    QCOMPARE(text_of(path), left);
    QVERIFY(Recovery(kept_).left_behind().empty());
    window.close_document();
}

void LeftWorkTest::left_work_that_reached_the_disk_is_not_offered() {
    init();
    const QString path = copy_of("one-room");
    leave(kept_, path, text_of(path), {});
    MainWindow window(kept_);
    QVERIFY(window.open(path));
    QVERIFY(window.message().sentence().isEmpty());
    QVERIFY(Recovery(kept_).left_behind().empty());
}

void LeftWorkTest::a_file_changed_since_the_crash_is_told_of() {
    init();
    const QString path = copy_of("one-room");
    leave(kept_, path, text_of(path) + "# typed before the crash\n", "what it held then");
    MainWindow window(kept_);
    window.offer_recovery();
    window.message().answer(0);
    QVERIFY(settled(window));
    QVERIFY(window.message().sentence().contains("changed on the disk"));
    window.close_document();
}

int main(int argc, char **argv) {
    return run_test<LeftWorkTest>(argc, argv);
}

#include "left_work_test.moc"
