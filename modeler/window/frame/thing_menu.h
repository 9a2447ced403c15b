// What can be done with a thing that lies under the pointer, or is chosen: in every view the same menu.
#pragma once

#include "modeler/window/desk/selection.h"

#include <QMenu>
#include <functional>

namespace roundlay::window {

class Legend;
class MainWindow;

/// Whoever shows it keeps it until the next one is shown. It may not delete itself as it hides: a dialog that
/// it opens has a loop of its own, and when that ends the menu is still at work on the key that chose it.
class ThingMenu : public QMenu {
    Q_OBJECT
  public:
    /// `legend` is that of the view where it opens; null where that has none. On a wall `spot` says where.
    ThingMenu(MainWindow &window, Chosen thing, Legend *legend, Spot spot = {});

  private:
    void begin();
    void for_spot();
    void for_piece();
    void for_record();
    void for_wall();
    void for_corner();
    void for_opening();
    void for_findings();
    void for_views(Legend *legend);
    void deed(const QString &name, const QString &words, const std::function<void()> &what);
    void also(const char *action, bool to_the_thing); ///< one of the window's own
    void choose();
    void raise(const char *dock);
    void raise_panel(const char *dock);

    MainWindow &window_;
    Chosen thing_;
    Spot spot_; ///< on a wall, where the menu opened
};

} // namespace roundlay::window
