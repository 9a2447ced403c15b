// The elevation: one wall seen from outside, where openings are placed, dragged and sized.
#pragma once

#include "kernel/shell/shell.h"
#include "modeler/window/views/drawing_view.h"
#include "modeler/window/views/elevation_scene.h"
#include "modeler/window/views/elevation_zones.h"
#include "modeler/window/views/scene_colours.h"

class QPainterPath;

namespace roundlay::window {

class Desk;
class Selection;

class ElevationView : public DrawingView {
    Q_OBJECT
  public:
    ElevationView(Desk &desk, Selection &selection, QWidget *parent = nullptr);

    const ElevationScene &scene() const { return scene_; }
    /// Adds an opening with its middle there, or as near as it fits, chooses it and tells where it is.
    void add_at(OpeningKind kind, const Spot &spot);
    /// The same in the wall that is shown: where it was last pressed, else in its middle.
    void add(OpeningKind kind, double middle);
    void add(OpeningKind kind);
    void remove_chosen();
    /// Logs are marked by what their record says; by other colourings they stay plain.
    void set_colouring(Colouring colouring);

  protected:
    sheets::Rect content() const override;
    void paint(QPainter &painter) override;
    void press(Vec2 at, Qt::KeyboardModifiers keys) override;
    void hover(Vec2 at) override;
    void drag(Vec2 at, Qt::KeyboardModifiers keys) override;
    void release() override;
    void give_up() override;
    bool is_dragging() const override { return dragged_ >= 0; }
    void take_typed(Length length) override;
    UnitSystem units() const override;
    void double_click(Vec2 at) override;
    bool is_old() const override;
    Chosen thing_at(Vec2 at) const override;
    Chosen chosen_thing() const override;
    Spot spot_at(Vec2 at) const override;
    std::vector<LegendEntry> legend() const override;
    bool choose_next(int step) override;
    void keyPressEvent(QKeyEvent *event) override;

  private:
    /// Which sides of an opening the hand has hold of; all four move it.
    struct Hold {
        bool left = false, right = false, low = false, high = false;
        bool whole() const { return left && right && low && high; }
        bool any() const { return left || right || low || high; }
    };
    Hold hold_at(const sheets::Rect &box, Vec2 at) const;
    const ElevationScene::Hole *hole_at(Vec2 at) const;
    std::optional<Index<Piece>> piece_at(Vec2 at) const;
    std::optional<Index<Piece>> piece_right_at(Vec2 at) const;
    const ElevationScene::Hole *chosen_hole() const;
    void refresh();
    void look_at_record();
    void show_box(const sheets::Rect &box);
    double snap_across(double at, double alternative, Qt::KeyboardModifiers keys) const;
    double snap_up(double at, double alternative, Qt::KeyboardModifiers keys) const;
    void nudge(double across, double up, bool size);
    void paint_logs(QPainter &painter) const;
    void paint_zones(QPainter &painter, Index<Piece> piece, const QPainterPath &wood) const;
    QString caption() const;
    void paint_rounds(QPainter &painter) const;
    void paint_choice(QPainter &painter) const;
    void paint_stated_wall(QPainter &painter) const;
    void paint_stated_floor(QPainter &painter, const ElevationScene::StatedFloor &floor, bool faulty) const;
    void paint_holes(QPainter &painter) const;
    void paint_timber_ends(QPainter &painter) const;
    void paint_pegs(QPainter &painter) const;
    void paint_bores(QPainter &painter) const;
    void paint_settling(QPainter &painter, const ElevationScene::Hole &hole) const;
    void paint_grips(QPainter &painter, const QRectF &box) const;
    void draw_name(QPainter &painter, const QRectF &box, const QString &name) const;
    void paint_measures(QPainter &painter, const sheets::Rect &box) const;

    Desk &desk_;
    Selection &selection_;
    ElevationScene scene_;
    Colouring colouring_ = Colouring::wall;
    Indexed<std::size_t, Piece> marks_; ///< of each piece, where they are marked
    std::vector<ZoneArea> zones_;       ///< over them
    int dragged_ = -1;
    Hold hold_;
    Vec2 grabbed_;
    Spot pressed_; ///< on bare wall
    sheets::Rect before_;
};

} // namespace roundlay::window
