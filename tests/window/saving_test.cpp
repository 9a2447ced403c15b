// Saving over another's change, work of several sessions that ended badly, and reasons that go when they are
// mended.
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/finding_words.h"
#include "modeler/window/desk/recovery.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/frame/application.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/panels/message_bar.h"
#include "modeler/window/panels/text_panel.h"
#include "modeler/window/views/stand_banner.h"
#include "tests/window/support/typing.h"
#include "tests/window/support/window_test.h"

#include <QAction>
#include <QApplication>
#include <QDir>
#include <QDockWidget>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <QScrollArea>
#include <QTest>
#include <QTimer>
#include <QTranslator>
#include <functional>

using namespace roundlay;
using namespace roundlay::window;

namespace {

/// Presses the button of the question that is asked while the deed is done; empty where none is.
QString asked(const std::function<void()> &deed, const QString &button) {
    QString words;
    QTimer pressing;
    QObject::connect(&pressing, &QTimer::timeout, [&] {
        auto *box = qobject_cast<QMessageBox *>(QApplication::activeModalWidget());
        if (box == nullptr) return;
        words = box->text() + u' ' + box->informativeText();
        for (QAbstractButton *each : box->buttons())
            if (each->text().remove(u'&') == button) return each->click();
    });
    pressing.start(20);
    deed();
    return words;
}

QString status(MainWindow &window) {
    return window.findChild<QLabel *>(QStringLiteral("hint"))->text();
}

/// As a session that ended badly leaves it: nobody holds its lock any more.
void leave(const QString &folder, const QString &title) {
    Recovery session(folder);
    QVERIFY(session.keep({{}, {}, title, text_of(demo_file("one-room")), {}}));
}

} // namespace

class SavingTest : public WindowTest {
    Q_OBJECT

  private slots:
    void init();
    void saving_over_another_s_change_asks();
    void quitting_saves_over_no_change_unasked();
    void all_left_work_is_offered_one_after_the_other();
    void what_is_put_off_is_not_offered_again();
    void a_reason_goes_when_it_is_mended_data();
    void a_reason_goes_when_it_is_mended();
    void reasons_name_the_field_and_not_the_key();
    void what_is_typed_over_fields_out_of_reach_goes_nowhere();
    void fields_of_what_there_is_none_of_look_it();

  private:
    void change_on_disk(const QString &path);
    int turn_ = 0;
    QString kept_, path_;
};

void SavingTest::init() {
    const QDir own(folder_.filePath(QString::number(++turn_)));
    QVERIFY(QDir().mkpath(own.path()));
    kept_ = own.filePath(QStringLiteral("unsaved"));
    path_ = own.filePath(QStringLiteral("house.roundlay"));
    QVERIFY(QFile::copy(demo_file("one-room"), path_));
    QFile(path_).setPermissions(QFile::ReadOwner | QFile::WriteOwner);
}

void SavingTest::change_on_disk(const QString &path) {
    QFile file(path);
    QVERIFY(file.open(QIODevice::Append));
    file.write("# somebody else was here\n");
}

void SavingTest::saving_over_another_s_change_asks() {
    MainWindow window(kept_);
    window.show();
    QVERIFY(window.open(path_));
    QVERIFY(settled(window));
    QVERIFY(window.desk().edit("name", [](const Shell &s) { return named(s, "mine"); }));
    const std::string mine = window.desk().document().text();
    change_on_disk(path_);
    const std::string theirs = text_of(path_);
    QTRY_VERIFY(window.message().sentence().contains("changed on the disk"));
    const auto save = [&] { window.action("save")->trigger(); };
    QVERIFY(asked(save, "Go on working").contains("house-changed-elsewhere.roundlay"));
    QCOMPARE(text_of(path_), theirs);
    QCOMPARE(window.desk().document().text(), mine);
    QVERIFY(!asked(save, "Load theirs").isEmpty());
    QCOMPARE(window.desk().document().text(), theirs);
    window.desk().history().undo();
    QCOMPARE(window.desk().document().text(), mine);
    QVERIFY(asked(save, "none such").isEmpty()); // what is there now has been seen
    QCOMPARE(text_of(path_), mine);
    QVERIFY(window.desk().edit("name", [](const Shell &s) { return named(s, "mine again"); }));
    change_on_disk(path_);
    const std::string again = text_of(path_);
    QVERIFY(!asked(save, "Overwrite").isEmpty());
    QCOMPARE(text_of(path_), window.desk().document().text());
    QCOMPARE(text_of(QFileInfo(path_).dir().filePath("house-changed-elsewhere.roundlay")), again);
    QVERIFY(window.message().sentence().contains("house-changed-elsewhere.roundlay"));
    QVERIFY(!window.desk().unsaved());
    change_on_disk(path_); // and a second is kept beside the first
    QVERIFY(!asked(save, "Overwrite").isEmpty());
    QVERIFY(QFile::exists(QFileInfo(path_).dir().filePath("house-changed-elsewhere-2.roundlay")));
    window.close_document();
}

void SavingTest::quitting_saves_over_no_change_unasked() {
    MainWindow window(kept_);
    window.show();
    QVERIFY(window.open(path_));
    QVERIFY(settled(window));
    QVERIFY(window.desk().edit("name", [](const Shell &s) { return named(s, "mine"); }));
    change_on_disk(path_);
    const std::string theirs = text_of(path_);
    QTRY_VERIFY(!window.message().sentence().isEmpty());
    QStringList questions;
    QTimer answering;
    connect(&answering, &QTimer::timeout, this, [&] {
        auto *box = qobject_cast<QMessageBox *>(QApplication::activeModalWidget());
        if (box == nullptr) return;
        questions << box->text();
        const auto role = questions.size() == 1 ? QMessageBox::AcceptRole : QMessageBox::RejectRole;
        for (QAbstractButton *button : box->buttons())
            if (box->buttonRole(button) == role) return button->click();
    });
    answering.start(20);
    window.action("quit")->trigger();
    QCOMPARE(questions.size(), qsizetype(2));
    QVERIFY(questions.back().contains("changed on the disk"));
    QVERIFY(window.isVisible() && window.desk().unsaved());
    QCOMPARE(text_of(path_), theirs);
    answering.stop();
    window.close_document();
}

void SavingTest::all_left_work_is_offered_one_after_the_other() {
    for (const char *title : {"first", "second", "third"})
        leave(kept_, title);
    MainWindow window(kept_);
    window.show();
    window.offer_recovery();
    QStringList offered;
    for (int i = 0; i < 3; ++i) {
        const QString sentence = window.message().sentence();
        for (const char *title : {"first", "second", "third"})
            if (sentence.contains(QLatin1String(title))) offered << QLatin1String(title);
        window.message().answer(0);
        QVERIFY(settled(window));
        QCOMPARE(window.desk().title(), offered.back());
        QVERIFY(window.save_to(QFileInfo(path_).dir().filePath(QStringLiteral("%1.roundlay").arg(i))));
    }
    QVERIFY(window.message().sentence().isEmpty());
    offered.sort();
    QCOMPARE(offered, QStringList({"first", "second", "third"}));
    QVERIFY(Recovery(kept_).left_behind().empty());
    window.close_document();
}

void SavingTest::what_is_put_off_is_not_offered_again() {
    leave(kept_, "first");
    leave(kept_, "second");
    MainWindow window(kept_);
    window.show();
    window.offer_recovery();
    window.message().answer(0);
    QVERIFY(!window.message().sentence().isEmpty());
    window.message().answer(2);
    QVERIFY(window.save_to(QFileInfo(path_).dir().filePath("saved.roundlay")));
    QVERIFY(window.message().sentence().isEmpty());
    QCOMPARE(Recovery(kept_).left_behind().size(), std::size_t(1));
    window.close_document();
}

void SavingTest::a_reason_goes_when_it_is_mended_data() {
    QTest::addColumn<QString>("how");
    for (const char *how :
         {"a value that is taken", "the old value", "undo", "another document", "no document"})
        QTest::newRow(how) << QString(how);
}

void SavingTest::a_reason_goes_when_it_is_mended() {
    QFETCH(QString, how);
    MainWindow window(kept_);
    put_up(window);
    MeasureEdit &edit = field_in(window, "shell", "overhang");
    enter(edit, "4 in"); // something to undo
    QVERIFY(settled(window));
    enter(edit, "9 m");
    QVERIFY(!status(window).isEmpty());
    if (how == "a value that is taken") enter(edit, "3 in");
    if (how == "the old value") QTest::keyClick(&edit, Qt::Key_Escape);
    if (how == "undo") window.desk().history().undo();
    if (how == "another document") window.begin(a_room(), "Other");
    if (how == "no document") window.close_document();
    QVERIFY2(status(window).isEmpty(), qPrintable(status(window)));
    window.close_document();
}

/// The keys are the format's, for who edits the text (FORMAT.md).
void SavingTest::reasons_name_the_field_and_not_the_key() {
    for (const char *language : {"en", "fr"}) {
        const auto words = own_translator(QLocale(language));
        if (words) QApplication::installTranslator(words.get());
        MainWindow window(kept_);
        put_up(window);
        window.selection().choose_opening(*window.desk().state()->read.shell, 0);
        for (const auto &[dock, field, wrong] :
             {std::tuple("log", "from_left", "-1 m"), std::tuple("shell", "least_tail", "-1 in"),
              std::tuple("floors", "live_load", "2000"), std::tuple("floors", "joist_width", "-4 in")}) {
            MeasureEdit &edit = field_in(window, dock, field);
            enter(edit, wrong);
            QVERIFY2(!edit.complaint().isEmpty(), field);
            QVERIFY2(!edit.complaint().contains(u'_') && !edit.complaint().startsWith(u'"'),
                     qPrintable(edit.complaint()));
            QVERIFY2(!status(window).contains(u'_'), qPrintable(status(window)));
        }
        window.close_document();
        if (words) QApplication::removeTranslator(words.get());
    }
    Finding finding;
    finding.what = said("no live_load is stated, so its timbers are not screened for span");
    QVERIFY(message_text(finding, UnitSystem::metric).contains("Live load"));
    QVERIFY(!message_text(finding, UnitSystem::metric).contains(u'_'));
}

void SavingTest::what_is_typed_over_fields_out_of_reach_goes_nowhere() {
    for (const char *dock : {"shell", "floors"}) {
        MainWindow window(kept_);
        put_up(window);
        raise(window, "text");
        raise(window, dock);
        window.desk().replace_text("spoilt", "bad =\n" + window.desk().document().text());
        QVERIFY(settled(window));
        const std::string before = window.desk().document().text();
        window.text_panel().setFocus();
        QVERIFY(window.text_panel().hasFocus());
        auto *field = window.findChild<QDockWidget *>(QLatin1String(dock))->findChild<MeasureEdit *>();
        QVERIFY(!field->isEnabled());
        QTest::mouseClick(field, Qt::LeftButton);
        QVERIFY(!window.text_panel().hasFocus());
        QTest::keyClicks(QApplication::focusWidget(), "12 in");
        window.text_panel().take();
        QCOMPARE(window.desk().document().text(), before);
        auto *banner = window.findChild<QDockWidget *>(QLatin1String(dock))->findChild<StandBanner *>();
        QVERIFY(banner != nullptr && banner->isVisible() && !banner->words().isEmpty()); // says why
        QVERIFY(banner->isEnabled());
        window.close_document();
    }
}

void SavingTest::fields_of_what_there_is_none_of_look_it() {
    MainWindow window(kept_);
    put_up(window);
    const MeasureEdit &live = field_in(window, "floors", "level");
    for (const char *name : {"beam_at", "beam_width", "opening_left", "opening_width"}) {
        MeasureEdit &edit = field_in(window, "floors", name);
        if (edit.isEnabled()) continue;
        QVERIFY2(!edit.placeholderText().isEmpty(), name);
        QVERIFY(edit.palette().color(QPalette::Disabled, QPalette::Base) !=
                live.palette().color(QPalette::Active, QPalette::Base));
    }
    QVERIFY(!field_in(window, "floors", "beam_at").isEnabled() ||
            !field_in(window, "floors", "opening_left").isEnabled());
    window.close_document();
}

int main(int argc, char **argv) {
    return run_test<SavingTest>(argc, argv);
}

#include "saving_test.moc"
