// Floors that come, are changed and go, and what two of them may not share.
#include "kernel/design/floor_edits.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/desk/workshop.h"
#include "modeler/window/frame/new_shell.h"
#include "modeler/window/panels/cut_list_panel.h"
#include "modeler/window/panels/findings_panel.h"
#include "modeler/window/panels/floor_panel.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/panels/log_panel.h"
#include "modeler/window/panels/message_bar.h"
#include "modeler/window/views/model_page.h"
#include "modeler/window/views/plan_view.h"
#include "modeler/window/views/scene_view.h"
#include "modeler/window/views/stand_banner.h"
#include "tests/window/support/window_test.h"

#include <QAction>
#include <QLabel>
#include <QTest>

using namespace roundlay;
using namespace roundlay::window;

class FloorEditsTest : public WindowTest {
    Q_OBJECT

  private slots:
    void a_floor_comes_is_changed_and_goes();
    void a_second_floor_without_room_is_refused();
    void what_shares_wood_does_not_stand();
};

namespace {

QString banner(const QWidget &view) {
    const auto *found = view.findChild<StandBanner *>();
    return found != nullptr && !found->isHidden() ? found->words() : QString();
}

} // namespace

void FloorEditsTest::a_second_floor_without_room_is_refused() {
    MainWindow window(kept());
    window.show();
    Shell low = *shell_of(usual_shell(Shape::rectangle, UnitSystem::imperial));
    low.rounds.count = 6;
    window.begin(low, "Low");
    QVERIFY(settled(window));
    raise(window, "floors");
    window.action("add_floor")->trigger();
    QVERIFY(settled(window) && shell(window).floors.size() == 1);
    window.action("add_floor")->trigger();
    QVERIFY(settled(window) && shell(window).floors.size() == 1);
    QVERIFY(window.findChild<QLabel *>("hint")->text().contains("6' 8\" between their tops"));
    // No beam: its fields take nothing and say so.
    LengthEdit &beam = *window.floors().field("beam_width");
    QVERIFY(!beam.isEnabled() && beam.placeholderText().contains("no beam"));
    QVERIFY(beam.palette().color(QPalette::Disabled, QPalette::Base) !=
            beam.palette().color(QPalette::Active, QPalette::Base));
    keep_picture(window, "floor-without-beam");
    window.floors().add_beam();
    QVERIFY(settled(window) && beam.isEnabled() && beam.placeholderText().isEmpty());
    window.close_document();
}

/// Two floors stated at one height: all of it is laid out, and none of it can be built.
void FloorEditsTest::what_shares_wood_does_not_stand() {
    MainWindow window(kept());
    window.show();
    const Shell one =
        *with_fitting_floor(*shell_of(usual_shell(Shape::rectangle, UnitSystem::imperial))).shell;
    window.begin(one, "Shared");
    QVERIFY(settled(window) && window.desk().state()->stands());
    QVERIFY(window.desk().edit("Twice", [](const Shell &s) {
        Shell next = s;
        next.floors.push_back(next.floors[0]);
        next.floors[1].name = "G";
        return std::optional(next);
    }));
    QVERIFY(settled(window));
    QVERIFY(has_error(window) && !window.desk().state()->stands());
    QVERIFY(window.desk().standing_is_old());
    const QWidget *model = window.model().view(); // none on a machine that draws no model
    QVERIFY2(model == nullptr || banner(*model).contains("as it last stood"), "the model says nothing");
    QVERIFY2(banner(window.plan()).contains("as stated"), "the plan says nothing");
    QVERIFY(banner(window.plan()).contains("a cube of 1'"));
    QVERIFY(!window.action("export")->isEnabled());
    keep_picture(window, "shared-wood");
    window.desk().history().undo();
    QVERIFY(settled(window) && window.desk().state()->stands());
    QVERIFY(model == nullptr || banner(*model).isEmpty());
    window.desk().history().setClean();
    window.close_document();
}

void FloorEditsTest::a_floor_comes_is_changed_and_goes() {
    MainWindow window(kept());
    QVERIFY(shown(window, *shell_of(usual_shell(Shape::tee, UnitSystem::imperial)), "Floor"));
    const std::string first = window.desk().document().text();
    const auto floors = [&] { return window.desk().state()->read.shell->floors; };
    const auto undo_text = [&] { return window.desk().history().undoText(); };
    window.action("add_floor")->trigger();
    QVERIFY(settled(window));
    QCOMPARE(floors().size(), std::size_t(1));
    QVERIFY(!has_errors(window.desk().state()->job.findings));
    QVERIFY(!window.desk().standing()->job.layout.timbers.empty());
    QCOMPARE(undo_text(), QString("Add floor"));
    FloorPanel &panel = window.floors();
    const auto type = [&](const char *field, const char *words) {
        LengthEdit &edit = *panel.field(field);
        edit.selectAll();
        QTest::keyClicks(&edit, words);
        QTest::keyClick(&edit, Qt::Key_Return);
        return settled(window);
    };
    QVERIFY(type("spacing", "16 in"));
    QCOMPARE(floors()[0].spacing, Length::inches(16));
    QCOMPARE(undo_text(), QString("Change floor ") + text(floors()[0].name));
    QVERIFY(type("spacing", "now and then"));
    QCOMPARE(floors()[0].spacing, Length::inches(16));
    QVERIFY(panel.field("spacing")->complaint().contains("expected"));
    QVERIFY(type("first", "10 in"));
    QCOMPARE(floors()[0].first, std::optional(Length::inches(10)));
    QVERIFY(type("joist_height", "9 in"));
    QCOMPARE(floors()[0].joist.height, Length::inches(9));
    panel.add_beam();
    QVERIFY(settled(window));
    QCOMPARE(floors()[0].beams.size(), std::size_t(1));
    QVERIFY(type("beam_width", "10 in"));
    QCOMPARE(floors()[0].beams[0].size.width, Length::inches(10));
    panel.add_opening();
    QVERIFY(settled(window));
    QCOMPARE(floors()[0].openings.size(), std::size_t(1));
    QCOMPARE(undo_text(), QString("Add floor opening"));
    QVERIFY(type("opening_width", "40 in"));
    QCOMPARE(floors()[0].openings[0].width, Length::inches(40));
    QVERIFY(!has_errors(window.desk().state()->job.findings));
    panel.remove_opening();
    panel.remove_beam();
    QVERIFY(settled(window));
    QVERIFY(floors()[0].openings.empty() && floors()[0].beams.empty());
    panel.remove_floor();
    QVERIFY(settled(window));
    QVERIFY(floors().empty());
    while (window.desk().history().canUndo())
        window.desk().history().undo();
    QCOMPARE(window.desk().document().text(), first);
    window.close_document();
}

int main(int argc, char **argv) {
    return run_test<FloorEditsTest>(argc, argv);
}

#include "floor_edits_test.moc"
