// The plan: walls from above. A wall is dragged square to itself; the two it meets follow.
#pragma once

#include "kernel/shell/shell.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/views/drawing_view.h"

#include <QLineF>
#include <QPainterPath>
#include <optional>

namespace roundlay::window {

class Desk;
struct Faults;

class PlanView : public DrawingView {
    Q_OBJECT
  public:
    PlanView(Desk &desk, Selection &selection, QWidget *parent = nullptr);

    /// Moves the chosen wall by steps of the grid, outward or inward.
    void nudge(int steps);
    /// A partition from the middle of the wall that is shown, to be dragged where it belongs.
    void add_partition();
    /// A partition is drawn: pressed where it starts and let go where it ends, or by a click at each; Escape
    /// leaves.
    void draw_partition(bool on);
    bool is_drawing() const { return draws_; }
    /// The chosen partition goes, and what hangs on it.
    void remove_chosen();
    const std::vector<QRectF> &label_boxes() const { return taken_; } ///< on the screen, as painted last
    const std::vector<QLineF> &dimension_lines() const { return dimension_lines_; } ///< likewise
    int chosen_partition() const; ///< index into Shell::partitions; -1 where none is chosen

  signals:
    void corner_pressed();
    void corner_hovered(const std::string &name); ///< empty = none
    void drawing_changed(bool on);

  protected:
    sheets::Rect content() const override;
    void paint(QPainter &painter) override;
    void press(Vec2 at, Qt::KeyboardModifiers keys) override;
    void hover(Vec2 at) override;
    void drag(Vec2 at, Qt::KeyboardModifiers keys) override;
    void release() override;
    void give_up() override;
    bool is_dragging() const override { return dragged_ >= 0 || partition_ >= 0 || !from_.empty(); }
    void take_typed(Length length) override;
    UnitSystem units() const override;
    bool is_old() const override;
    Chosen thing_at(Vec2 at) const override;
    Chosen chosen_thing() const override { return selection_.chosen(); }
    Spot spot_at(Vec2 at) const override;
    std::vector<LegendEntry> legend() const override;
    bool choose_next(int step) override;
    void keyPressEvent(QKeyEvent *event) override;
    void leaveEvent(QEvent *event) override;

  private:
    // plan_view.cpp
    std::optional<Index<WallPlace>> wall_at(Vec2 at) const;
    std::optional<Index<CornerPlace>> corner_at(Vec2 at) const;
    int opening_at(Vec2 at) const; ///< index into Shell::openings
    std::optional<Index<Piece>> timber_at(Vec2 at) const;
    std::optional<Index<WallPlace>> chosen_wall() const;
    void move_wall(double outward, bool as_edit);
    void move_partition(int partition, double from_left, bool as_edit);
    void grab_wall(Index<WallPlace> wall, Vec2 at);
    void grab_partition(int partition, Vec2 at);
    void drag_partition(double along, Qt::KeyboardModifiers keys);
    void hover_corner(std::optional<Index<CornerPlace>> corner);
    void say_why();

    // plan_drawing.cpp
    /// A partition as it would be.
    struct Draft {
        std::optional<Shell> shell; ///< with it; nothing where it does not fit
        QString why;                ///< it does not
        std::vector<Vec2> outline;  ///< either way, as far as it can be drawn
        std::string to;             ///< the wall that it ends in
    };
    Draft draft_at(const std::string &wall, double from_left, const std::string &to = {}) const;
    void press_to_draw(Vec2 at, Qt::KeyboardModifiers keys);
    void press_to_end(Vec2 at, Qt::KeyboardModifiers keys);
    void draw_to(double from_left, const std::string &to = {});
    bool is_drawn(const std::string &partition) const;
    void drag_drawn(Vec2 at, Qt::KeyboardModifiers keys);
    double place_along(const std::string &wall, Vec2 at, Qt::KeyboardModifiers keys) const;
    std::optional<Index<WallPlace>> outer_wall_at(Vec2 at) const;
    void hover_to_draw(Vec2 at);
    void let_go_of_drawn();
    void finish_drawing();
    void show_draft(const Draft &draft, const std::string &wall, double from_left);

    // plan_paint.cpp
    QPainterPath outline(const WallPlace &wall, double from, double to) const;
    QPainterPath path_round(const std::vector<Vec2> &corners) const;
    void paint_timbers(QPainter &painter, const Faults &faults) const;
    void paint_walls(QPainter &painter, const Faults &faults) const;
    void paint_openings(QPainter &painter, const Faults &faults) const;
    void paint_gap(QPainter &painter) const;
    void paint_corners(QPainter &painter, const Faults &faults) const;
    void paint_preview(QPainter &painter) const;
    void paint_why(QPainter &painter) const;

    // plan_labels.cpp
    bool is_free(const QRectF &box) const;
    bool is_over_timber(const QLineF &line) const;
    double tails_beyond(const WallPlace &wall) const;
    QLineF length_line(const WallPlace &wall, double inward) const;
    void paint_dimensions(QPainter &painter);
    void paint_length(QPainter &painter, const WallPlace &wall);
    void draw_line(QPainter &painter, const WallPlace &wall, double inward);
    void draw_words(QPainter &painter, QPointF at, bool upright, const QString &words) const;
    void paint_name(QPainter &painter, const WallPlace &wall);

    Desk &desk_;
    Selection &selection_;
    int dragged_ = -1;         ///< of Shell::walls
    int partition_ = -1;       ///< that is dragged
    bool draws_ = false;       ///< partitions
    std::string from_;         ///< wall from which one is drawn
    double from_left_ = 0;     ///< where it starts there
    bool dragged_far_ = false; ///< the hand went on from where it pressed: it ends where that lets go
    Draft draft_;              ///< what is drawn, or what a press would draw
    std::string hovered_;      ///< corner
    Vec2 grabbed_;
    double before_length_ = 0; ///< of the wall before the dragged one; where a dragged partition starts
    double grows_ = 1;         ///< how that changes for each millimetre outward
    Vec2 outward_;
    std::vector<QRectF> taken_;             ///< by words, while labels are painted
    std::vector<QPainterPath> wall_shapes_; ///< on the screen, then too
    std::vector<QLineF> dimension_lines_;
    Indexed<std::vector<Vec2>, WallPlace> footprints_; ///< of walls, with their ends past the corners
};

} // namespace roundlay::window
