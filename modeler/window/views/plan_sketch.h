// A sheet on which a plan is drawn, corner by corner; it also shows plans of given shapes.
#pragma once

#include "kernel/shell/drawn_plan.h"
#include "modeler/window/views/drawing_view.h"

namespace roundlay::window {

class WayEdit;

class PlanSketch : public DrawingView {
    Q_OBJECT
  public:
    explicit PlanSketch(QWidget *parent = nullptr);

    void slant(bool on); ///< walls in any direction, not along the compass alone
    QString what_to_type() const override;

    void set_units(UnitSystem units);
    /// To be looked at only.
    void show_plan(std::vector<Vec2> corners);
    /// To be drawn; what was drawn before is there again.
    void draw();
    const std::vector<PlanPoint> &corners() const { return drawn_; }
    /// Of what is drawn, or was and can be taken back: it took some time.
    bool holds_work() const;
    bool is_closed() const { return closed_; }

    /// The next corner, there or where it snaps to; on the first one it closes the figure.
    void add_corner(Vec2 at, Qt::KeyboardModifiers keys = Qt::NoModifier);
    /// Back to the first corner, at right angles: with one more corner where it takes one.
    void close_figure();
    void take_back(); ///< the last corner
    void clear();

  signals:
    void changed(); ///< corners or whether they are closed

  protected:
    sheets::Rect content() const override;
    void paint(QPainter &painter) override;
    void press(Vec2 at, Qt::KeyboardModifiers keys) override;
    void hover(Vec2 at) override;
    void drag(Vec2 at, Qt::KeyboardModifiers) override { hover(at); }
    void release() override {}
    void give_up() override { clear(); }
    bool is_dragging() const override { return drawing_ && !closed_ && !drawn_.empty(); }
    void take_typed(Length length) override;
    QString why_not_typed(Length length) const override;
    UnitSystem units() const override { return units_; }
    void keyPressEvent(QKeyEvent *event) override;

  private:
    PlanSketch(QWidget *parent, WayEdit *typed);
    std::vector<Vec2> outline() const;
    Vec2 way_to(Vec2 by, Qt::KeyboardModifiers keys) const;
    Vec2 typed_way() const;
    Vec2 snapped_corner(Vec2 at, Qt::KeyboardModifiers keys) const;
    double snapped_along(Vec2 from, Vec2 way, double length) const;
    void put(Vec2 corner);
    void paint_grid(QPainter &painter) const;
    void paint_walls(QPainter &painter) const;
    void paint_length(QPainter &painter, Vec2 from, Vec2 to, bool with_way = false) const;

    UnitSystem units_ = UnitSystem::metric;
    std::vector<Vec2> shown_;
    std::vector<PlanPoint> drawn_, cleared_;
    bool drawing_ = false, closed_ = false, slants_ = false;
    const WayEdit *typed_;
    Vec2 next_; ///< where the pointer would put a corner
};

} // namespace roundlay::window
