// A test of the window with the second demo open in it.
#pragma once

#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "tests/window/support/window_test.h"

#include <QDockWidget>
#include <memory>

namespace roundlay::window {

class DemoTest : public WindowTest {
  protected:
    void open_demo() {
        window_ = std::make_unique<MainWindow>(kept());
        window_->show();
        window_->begin_demo(1);
        QVERIFY(settled(*window_));
        QTest::qWait(300);
    }
    void choose(const char *tag) {
        const Layout &layout = window_->desk().standing()->job.layout;
        window_->selection().choose_piece(layout, *piece_tagged(layout, tag));
    }
    void raise(const char *dock) {
        window_->findChild<QDockWidget *>(QLatin1String(dock))->raise();
        QTest::qWait(150);
    }

    std::unique_ptr<MainWindow> window_;
};

} // namespace roundlay::window
