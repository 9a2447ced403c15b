// What goes wrong inside the program ends nowhere: it is told and noted, the document is as it was, the
// window goes on.
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/mishaps.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/workshop.h"
#include "modeler/window/frame/export_dialog.h"
#include "modeler/window/frame/save_picture.h"
#include "modeler/window/panels/message_bar.h"
#include "modeler/window/views/sheet_view.h"
#include "tests/window/support/window_test.h"

#include <QDir>
#include <QFile>
#include <QSignalSpy>
#include <QTest>
#include <QTimer>
#include <new>
#include <stdexcept>

using namespace roundlay;
using namespace roundlay::window;

namespace {

/// What the log says by now.
QString noted() {
    QFile file(mishap_log());
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

using Throwing = std::pair<const char *, std::function<void()>>; ///< what is told of it, and how it is thrown

const std::vector<Throwing> &all_that_can_be_thrown() {
    static const std::vector<Throwing> all{
        {"alloc", [] { throw std::bad_alloc(); }},
        {"a plank is missing", [] { throw std::runtime_error("a plank is missing"); }},
        {"not known what", [] { throw 7; }}}; // nobody should, somebody might
    return all;
}

} // namespace

class MishapsTest : public WindowTest {
    Q_OBJECT

  private slots:
    void what_an_event_throws_is_told_and_the_work_is_kept();
    void what_the_workshop_throws_is_told_and_the_next_edit_is_worked_out();
    void what_an_export_throws_is_its_result();
    void what_drawing_a_picture_throws_is_why_there_is_none();
    void what_drawing_a_sheet_throws_is_told_and_the_next_is_drawn();
    void the_log_does_not_grow_for_ever();
};

void MishapsTest::what_an_event_throws_is_told_and_the_work_is_kept() {
    MainWindow window(kept());
    QVERIFY(shown(window, a_room(), "Made"));
    const std::string text = window.desk().document().text();
    QTimer::singleShot(0, [] { throw std::runtime_error("a plank is missing"); });
    QTRY_VERIFY(window.message().sentence().contains("a plank is missing"));
    QVERIFY(
        window.message().sentence().contains(QDir::toNativeSeparators(mishap_log()))); // where it is noted
    QVERIFY(noted().contains("a plank is missing"));
    QCOMPARE(window.desk().document().text(), text);
    const QDir folder(kept());
    QCOMPARE(folder.entryList({"*.unsaved"}).size(), 1);
    window.message().answer(1);
    QTimer::singleShot(0, [] { throw 7; }); // nobody should, somebody might
    QTRY_VERIFY(!window.message().sentence().isEmpty());
    // An edit whose function throws changes nothing.
    QTimer::singleShot(0, [&] {
        window.desk().edit("bad", [](const Shell &) -> std::optional<Shell> { throw std::bad_alloc(); });
    });
    QTRY_VERIFY(window.message().sentence().contains("alloc"));
    QCOMPARE(window.desk().document().text(), text);
    QVERIFY(window.desk().edit("name", [](const Shell &s) { return named(s, "goes on"); }));
    QVERIFY(settled(window));
    window.close_document();
}

void MishapsTest::what_the_workshop_throws_is_told_and_the_next_edit_is_worked_out() {
    ModelCache cache;
    const auto throws = [](const Document &, quint64, ModelCache &) -> StatePtr {
        throw std::out_of_range("vector::at");
    };
    const StatePtr failed = worked_out_safely(throws, Document("x", "y"), 7, cache);
    QCOMPARE(failed->revision, quint64(7));
    QCOMPARE(failed->document.text(), std::string("x"));
    QCOMPARE(failed->failure, std::string("vector::at"));
    QVERIFY(!failed->stands());
    // In its own thread: the second order is worked out although the first threw.
    Workshop workshop([&](const Document &document, quint64 revision, ModelCache &models) {
        if (revision == 1) throw std::runtime_error("first");
        return worked_out(document, revision, models);
    });
    std::vector<StatePtr> states;
    connect(
        &workshop, &Workshop::worked, this, [&](const StatePtr &s) { states.push_back(s); },
        Qt::QueuedConnection);
    workshop.ask_for(Document(text_of(demo_file("one-room")), "one"), 1);
    QTRY_COMPARE(states.size(), std::size_t(1));
    QCOMPARE(states[0]->failure, std::string("first"));
    QVERIFY(noted().contains("working the document out: first"));
    workshop.ask_for(Document(text_of(demo_file("one-room")), "one"), 2);
    QTRY_COMPARE(states.size(), std::size_t(2));
    QVERIFY(states[1]->stands() && states[1]->failure.empty());
}

void MishapsTest::what_an_export_throws_is_its_result() {
    MainWindow window(kept());
    window.begin_demo(0);
    QVERIFY(settled(window));
    for (const auto &[told, throw_it] : all_that_can_be_thrown()) {
        QFile::remove(mishap_log());
        const auto exporting = [&](const ExportJob &, const std::vector<const Exporter *> &,
                                   const std::filesystem::path &, Progress &,
                                   IfThere) -> ExportDialog::Outcome {
            throw_it();
            return ExportFailure{};
        };
        ExportDialog dialog(window.desk().state()->job, folder_.filePath("export"), nullptr, exporting);
        QSignalSpy ended(&dialog, &ExportDialog::ended);
        dialog.start();
        QTRY_COMPARE(ended.size(), 1);
        QVERIFY(!dialog.succeeded() && !dialog.is_running());
        QVERIFY2(dialog.result().contains(told), qPrintable(dialog.result()));
        QVERIFY(dialog.result().contains(QDir::toNativeSeparators(mishap_log())));
        QVERIFY2(noted().contains(told), qPrintable(noted()));
        dialog.start(); // again, as a person would
        QTRY_COMPARE(ended.size(), 2);
    }
    window.close_document();
}

void MishapsTest::what_drawing_a_picture_throws_is_why_there_is_none() {
    QWidget parent;
    for (const auto &[told, throw_it] : all_that_can_be_thrown()) {
        const auto drawn = drawn_aside(
            [&]() -> Drawn<Picture> {
                throw_it();
                return Picture{};
            },
            &parent);
        const auto *failure = std::get_if<PictureFailure>(&drawn);
        QVERIFY(failure != nullptr);
        QVERIFY2(QString::fromStdString(failure->message).contains(told), failure->message.c_str());
        QVERIFY(noted().contains(told));
    }
}

void MishapsTest::what_drawing_a_sheet_throws_is_told_and_the_next_is_drawn() {
    MainWindow window(kept());
    window.resize(1300, 800);
    QVERIFY(shown_demo(window, 0));
    raise(window, "sheet");
    int turn = 0;
    for (const auto &[told, throw_it] : all_that_can_be_thrown()) {
        window.sheet().draw_by([&](const ExportJob &, Index<Model>) -> std::vector<sheets::Sheet> {
            throw_it();
            return {};
        });
        const Layout &layout = window.desk().standing()->job.layout;
        window.selection().choose_piece(layout, Index<Piece>(turn++));
        QTRY_VERIFY(window.message().sentence().contains(told));
        QVERIFY2(window.sheet().words().contains("could not be drawn"), qPrintable(window.sheet().words()));
        QVERIFY(noted().contains(told));
        window.message().answer(1);
        window.sheet().draw_by(sheets_of);
        window.selection().choose_piece(layout, Index<Piece>(turn++));
        QTRY_VERIFY(window.sheet().pages() > 0);
        QVERIFY(window.sheet().words().isEmpty());
    }
    window.close_document();
}

void MishapsTest::the_log_does_not_grow_for_ever() {
    QFile::remove(mishap_log());
    const QString much(1 << 16, u'x');
    for (int i = 0; i < 12; ++i)
        note_mishap("writing much", much);
    QVERIFY(QFileInfo(mishap_log()).size() < (1 << 19));
    QVERIFY(QFileInfo(mishap_log() + ".old").exists());
    note_mishap("writing", "the last of all");
    QVERIFY(noted().endsWith("writing: the last of all\n"));
}

int main(int argc, char **argv) {
    return run_test<MishapsTest>(argc, argv);
}

#include "mishaps_test.moc"
