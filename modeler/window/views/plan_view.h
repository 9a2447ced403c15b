// The plan: walls from above. A wall is dragged square to itself; the two it meets follow.
#pragma once

#include "modeler/window/views/drawing_view.h"

namespace roundlay {
struct WallPlace;
}

namespace roundlay::window {

class Desk;
class Selection;

class PlanView : public DrawingView {
    Q_OBJECT
  public:
    PlanView(Desk &desk, Selection &selection, QWidget *parent = nullptr);

    /// Moves the chosen wall by steps of the grid, outward or inward.
    void nudge(int steps);
    /// A partition from the middle of the wall that is shown, to be dragged where it belongs.
    void add_partition();
    /// The chosen partition goes, and what hangs on it.
    void remove_chosen();
    int chosen_partition() const; ///< index into Shell::partitions; -1 where none is chosen

  protected:
    sheets::Rect content() const override;
    void paint(QPainter &painter) override;
    void press(Vec2 at, Qt::KeyboardModifiers keys) override;
    void hover(Vec2 at) override;
    void drag(Vec2 at, Qt::KeyboardModifiers keys) override;
    void release() override;
    void give_up() override;
    bool is_dragging() const override { return dragged_ >= 0 || partition_ >= 0; }
    void take_typed(Length length) override;
    UnitSystem units() const override;
    void keyPressEvent(QKeyEvent *event) override;

  private:
    int wall_at(Vec2 at) const;
    int corner_at(Vec2 at) const;
    int timber_at(Vec2 at) const; ///< index into Layout::pieces
    int chosen_wall() const;
    void choose_next(int step);
    void move_wall(double outward, bool as_edit);
    void paint_timbers(QPainter &painter) const;
    void move_partition(int partition, double from_left, bool as_edit);
    void grab_partition(int partition, Vec2 at);
    void paint_walls(QPainter &painter) const;
    void paint_openings(QPainter &painter) const;
    void paint_dimensions(QPainter &painter) const;
    void paint_length(QPainter &painter, const WallPlace &wall, std::vector<QRectF> &taken) const;
    void paint_name(QPainter &painter, const WallPlace &wall, std::vector<QRectF> &taken) const;
    void paint_corners(QPainter &painter) const;

    Desk &desk_;
    Selection &selection_;
    int dragged_ = -1;   ///< of Shell::walls
    int partition_ = -1; ///< that is dragged
    Vec2 grabbed_;
    double before_length_ = 0; ///< of the wall before the dragged one; where a dragged partition starts
    double grows_ = 1;         ///< how that changes for each millimetre outward
    Vec2 outward_;
};

} // namespace roundlay::window
