// What is done with what lies under the pointer: menus by mouse and by key.
#include "kernel/shell/shapes.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/frame/new_shell.h"
#include "modeler/window/frame/piece_export.h"
#include "modeler/window/frame/print.h"
#include "modeler/window/frame/save_picture.h"
#include "modeler/window/panels/log_panel.h"
#include "modeler/window/views/elevation_view.h"
#include "modeler/window/views/joint_page.h"
#include "modeler/window/views/model_page.h"
#include "modeler/window/views/plan_view.h"
#include "modeler/window/views/scene_view.h"
#include "modeler/window/views/sheet_view.h"
#include "tests/window/support/demo_test.h"

#include <QAction>
#include <QApplication>
#include <QLabel>
#include <QMenu>
#include <QTest>

using namespace roundlay;
using namespace roundlay::window;

namespace {

QStringList entries(const QMenu &menu) {
    QStringList names;
    for (const QAction *action : menu.actions())
        if (!action->objectName().isEmpty()) names << action->objectName();
    return names;
}

/// The menu that is open now; null where there is none.
QMenu *opened() {
    auto *menu = qobject_cast<QMenu *>(QApplication::activePopupWidget());
    return menu != nullptr && menu->objectName() == QStringLiteral("thing") ? menu : nullptr;
}

QMenu *by_mouse(QWidget &view, QPointF at) {
    QTest::mouseClick(&view, Qt::RightButton, Qt::NoModifier, at.toPoint());
    return opened();
}

QMenu *by_key(QWidget &view, Qt::Key key, Qt::KeyboardModifiers keys = Qt::NoModifier) {
    QTest::keyClick(&view, key, keys);
    return opened();
}

} // namespace

class ThingsTest : public DemoTest {
    Q_OBJECT

  private slots:
    void init() { open_demo(); }
    void cleanup() { window_.reset(); }
    void the_right_button_opens_a_menu_in_every_view();
    void an_opening_is_put_where_the_menu_was_opened();
    void the_menu_key_opens_the_menu_of_what_is_chosen();
    void what_the_menu_offers_is_done_to_the_thing();
    void dragging_with_the_right_button_moves_and_opens_no_menu();
};

void ThingsTest::the_right_button_opens_a_menu_in_every_view() {
    PlanView &plan = window_->plan();
    const WallPlace &a = window_->desk().standing()->job.layout.walls.front();
    const Vec3 on_a = a.frame.to_world({a.length / 2, a.thickness / 2, 0});
    QMenu *menu = by_mouse(plan, plan.to_screen({on_a.x, on_a.y}));
    QVERIFY(menu != nullptr);
    QVERIFY(entries(*menu).contains("thing_elevation") || entries(*menu).contains("thing_log"));
    menu->close();
    const Vec2 corner = window_->desk().standing()->job.layout.corners.front().centre;
    menu = by_mouse(plan, plan.to_screen(corner));
    QVERIFY(menu != nullptr && entries(*menu).contains("thing_joint"));
    menu->close();
    ElevationView &elevation = window_->elevation();
    menu = by_mouse(elevation, elevation.to_screen({1000, 130}));
    QVERIFY(menu != nullptr && entries(*menu).contains("thing_sheet") &&
            entries(*menu).contains("thing_export"));
    menu->close();
    SceneView &model = *window_->model().view();
    menu = by_mouse(model, QPointF(model.width() / 2.0, model.height() / 2.0));
    QVERIFY(menu != nullptr && entries(*menu).contains("thing_save_picture"));
    menu->close();
    choose("A-01-1");
    raise("joint");
    menu = by_mouse(*window_->joint().view(), QPointF(3, window_->joint().view()->height() - 3.0));
    QVERIFY(menu != nullptr && entries(*menu).contains("thing_joint"));
    menu->close();
    raise("sheet");
    QContextMenuEvent asked(QContextMenuEvent::Mouse, {20, 20}, window_->sheet().mapToGlobal(QPoint(20, 20)));
    QApplication::sendEvent(&window_->sheet(), &asked);
    QVERIFY(opened() != nullptr && entries(*opened()).contains("thing_print"));
    keep_picture(*window_, "things-menu");
    opened()->close();
}

void ThingsTest::an_opening_is_put_where_the_menu_was_opened() {
    const auto done = [&](QWidget &view, QPointF at, const char *what) {
        QMenu *menu = by_mouse(view, at);
        if (menu == nullptr) return false;
        for (QAction *action : menu->actions())
            if (action->objectName() == QLatin1String(what)) {
                menu->close();
                action->trigger();
                return settled(*window_);
            }
        menu->close();
        return false;
    };
    const auto last = [&] { return window_->desk().state()->read.shell->openings.back(); };
    const auto *hint = window_->findChild<QLabel *>("hint");
    window_->begin(*shell_of(usual_shell(Shape::rectangle, UnitSystem::imperial)), "Put");
    QVERIFY(settled(*window_));
    QTest::qWait(200);
    const auto middle = [&] { return (last().from_left + last().width / 2).mm(); };
    // In the plan, of a wall that runs from left to right and of one that runs the other way.
    PlanView &plan = window_->plan();
    for (const char *wall : {"A", "C"})
        for (const double along : {2000.0, 5000.0}) {
            const Layout &layout = window_->desk().standing()->job.layout;
            const WallPlace &w = layout.walls[*wall_named(layout, wall)];
            const Vec3 at = w.frame.to_world({along, w.thickness / 2, 0});
            QVERIFY(done(plan, plan.to_screen({at.x, at.y}), "thing_add_window_here"));
            QCOMPARE(last().wall, std::string(wall));
            QVERIFY2(std::abs(middle() - along) < 1 / plan.scale() + 13,
                     qPrintable(QString::number(middle())));
            QVERIFY(hint->text().contains(text(last().name)) && !hint->text().contains("nearest"));
            hover(plan, {2, 2});
            QVERIFY(hint->text().contains(text(last().name))); // it stays to be read
            QVERIFY(!has_error(*window_));
        }
    // On one that stands there: beside it, and that is said.
    ElevationView &elevation = window_->elevation();
    window_->selection().choose_wall("A");
    const auto box = elevation.scene().holes.front().box;
    QVERIFY(done(elevation, elevation.to_screen({box.x1 + 150, box.centre().y}), "thing_add_window_here"));
    QVERIFY(hint->text().contains("nearest") && middle() > box.x1 + 460);
    QVERIFY(!has_error(*window_));
    // In the elevation the height is the hand's too; a door stands on the foundation.
    window_->selection().choose_wall("B");
    QVERIFY(done(elevation, elevation.to_screen({3000, 1400}), "thing_add_window_here"));
    QVERIFY(std::abs(middle() - 3000) < 1 / elevation.scale() + 13);
    QVERIFY(std::abs((last().sill + last().height / 2).mm() - 1400) < 140); // on the nearest seams
    QVERIFY(done(elevation, elevation.to_screen({5000, 1400}), "thing_add_door_here"));
    QVERIFY(last().kind == OpeningKind::door && last().sill == Length());
    // A step of the foundation.
    window_->selection().choose_wall("D");
    QVERIFY(done(elevation, elevation.to_screen({2500, 400}), "thing_add_step_here"));
    const auto &steps = window_->desk().state()->read.shell->steps;
    QVERIFY(steps.size() == 1 && steps[0].wall == "D" && !has_error(*window_));
    QVERIFY(std::abs((steps[0].from_left + steps[0].width / 2).mm() - 2500) < 1 / elevation.scale() + 60);
    QVERIFY(window_->selection().is_wall("D") && window_->log().isVisible());
    keep_picture(*window_, "openings-where-pointed");
    window_->close_document();
}

void ThingsTest::the_menu_key_opens_the_menu_of_what_is_chosen() {
    choose("A-02-1");
    raise("sheet");
    raise("joint");
    for (QWidget *view :
         {static_cast<QWidget *>(&window_->plan()), static_cast<QWidget *>(window_->model().view()),
          static_cast<QWidget *>(window_->joint().view()), static_cast<QWidget *>(&window_->sheet())}) {
        for (const auto &[key, keys] :
             {std::pair(Qt::Key_Menu, Qt::NoModifier), std::pair(Qt::Key_F10, Qt::ShiftModifier)}) {
            QMenu *menu = by_key(*view, key, keys);
            QVERIFY2(menu != nullptr, qPrintable(view->accessibleName()));
            QVERIFY(menu->actions().first()->text().contains("A-02-1"));
            QTest::keyClick(menu, Qt::Key_Escape);
            QVERIFY(opened() == nullptr);
        }
        QContextMenuEvent asked(QContextMenuEvent::Keyboard, {1, 1},
                                view->mapToGlobal(QPoint(1, 1))); // as a desktop sends it for the key
        QApplication::sendEvent(view, &asked);
        QVERIFY2(opened() != nullptr, qPrintable(view->accessibleName()));
        opened()->close();
    }
}

void ThingsTest::what_the_menu_offers_is_done_to_the_thing() {
    ElevationView &elevation = window_->elevation();
    const auto offer = [&](const char *name) {
        QAction *action = opened()->findChild<QAction *>(QLatin1String(name));
        action->trigger();
        opened()->close();
    };
    window_->selection().choose_wall("A");
    const QPointF on_log = elevation.to_screen({1000, 130});
    QVERIFY(by_mouse(elevation, on_log) != nullptr);
    QVERIFY(window_->selection().is_wall("A")); // looking at the menu chooses nothing
    offer("thing_sheet");
    QCOMPARE(window_->selection().chosen().name, std::string("A-01-1"));
    QTRY_COMPARE_WITH_TIMEOUT(window_->sheet().tag(), QString("A-01-1"), 60'000);
    window_->selection().choose_wall("B");
    PlanView &plan = window_->plan();
    const WallPlace &a = window_->desk().standing()->job.layout.walls.front();
    const Vec3 on_a = a.frame.to_world({600, a.thickness / 2, 0});
    QVERIFY(by_mouse(plan, plan.to_screen({on_a.x, on_a.y})) != nullptr);
    const std::size_t before = window_->desk().standing()->job.shell.openings.size();
    offer("thing_add_window_here");
    QVERIFY(settled(*window_));
    const auto &openings = window_->desk().standing()->job.shell.openings;
    QCOMPARE(openings.size(), before + 1);
    QCOMPARE(openings.back().wall, std::string("A")); // not the wall that was chosen before
    window_->desk().history().undo();
    window_->desk().history().setClean();
}

void ThingsTest::dragging_with_the_right_button_moves_and_opens_no_menu() {
    PlanView &plan = window_->plan();
    const QPoint from(60, 60), to(110, 80);
    const Vec2 held = plan.to_sheet(from);
    QTest::mousePress(&plan, Qt::RightButton, Qt::NoModifier, from);
    QMouseEvent moved(QEvent::MouseMove, to, plan.mapToGlobal(to), Qt::NoButton, Qt::RightButton,
                      Qt::NoModifier);
    QApplication::sendEvent(&plan, &moved);
    QTest::mouseRelease(&plan, Qt::RightButton, Qt::NoModifier, to);
    QVERIFY(opened() == nullptr);
    QVERIFY(length(plan.to_sheet(to) - held) < 1e-6);
}

int main(int argc, char **argv) {
    return run_test<ThingsTest>(argc, argv);
}

#include "things_test.moc"
