// What the tests of the window share.
#pragma once

#include "modeler/window/frame/main_window.h"

#include <QImage>
#include <QPointF>
#include <QString>

class QApplication;

namespace roundlay {
struct Vec2;
}

namespace roundlay::window {

class DrawingView;

/// Settings and files of the test's own, an application in the window's dress.
class TestProgram {
  public:
    TestProgram(int &argc, char **argv);
    ~TestProgram();

  private:
    std::unique_ptr<QApplication> application_;
};

QString demo_file(const QString &name);
std::string text_of(const QString &path);

/// Waits until what is shown is what the text says. False after a minute.
bool settled(MainWindow &window);

/// Shows the window with that shell, or that demo, in it, and waits as `settled` does.
bool shown(MainWindow &window, const Shell &shell, const QString &title);
bool shown_demo(MainWindow &window, int demo);

const Shell &shell(MainWindow &window);      ///< the one that stands
const Shell &as_written(MainWindow &window); ///< the one that the text states, whether it stands or not
bool has_error(MainWindow &window);          ///< what the text says now

/// Shows that panel before all that share its place.
void raise(MainWindow &window, const char *dock);

/// A plain room in millimetres.
Shell a_room();
/// With a door 1 m wide in wall A, 2 m from its left.
Shell a_room_with_a_door();
Shell named(const Shell &shell, const char *name);

void press(QWidget &widget, QPointF at);
void move(QWidget &widget, QPointF to, Qt::KeyboardModifiers keys = Qt::NoModifier);
void hover(QWidget &widget, QPointF at); ///< no button is down
void release(QWidget &widget, QPointF at);
void click(DrawingView &view, Vec2 at);
void drag(DrawingView &view, Vec2 from, Vec2 to); ///< in steps, as a hand does

/// Light and dark alone, as eyes see that tell no colours apart.
QImage greys(QWidget &view);

/// What the screen shows of the window, into the folder of screenshots; fails where that shows nothing or
/// cannot be saved.
void keep_picture(QWidget &window, const QString &name);

/// While it lives, every dialog that opens is closed again.
class DialogCloser : public QObject {
  public:
    DialogCloser();
    int closed() const { return closed_; }

  protected:
    void timerEvent(QTimerEvent *event) override;

  private:
    int closed_ = 0;
};

} // namespace roundlay::window
