// What the plan and the elevation share: a sheet in millimetres that is moved, zoomed and drawn on, and
// lengths typed while a hand drags.
#pragma once

#include "exporters/sheets/drawing/rect.h"
#include "kernel/measure/measure.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/views/legend.h"

#include <QWidget>

namespace roundlay::window {

class LengthEdit;

class DrawingView : public QWidget {
    Q_OBJECT
  public:
    /// `typed` is the field for what is typed while a hand draws; a length alone where there is none.
    explicit DrawingView(QWidget *parent = nullptr, LengthEdit *typed = nullptr);
    ~DrawingView() override;

    void fit(); ///< shows everything; goes on fitting until a hand moves or zooms
    void zoom(double factor, QPointF at);

    QPointF to_screen(Vec2 mm) const;
    Vec2 to_sheet(QPointF pixel) const;
    double scale() const { return scale_; } ///< pixels per millimetre
    Legend &legend_panel() { return *legend_; }

  signals:
    void hinted(const QString &words); ///< for the status line
    void told(const QString &words);   ///< what was done, there too: it stays for a while
    /// What can be done with a thing; the right button without a drag, or the menu key.
    void asked_for_menu(const Chosen &thing, const QPoint &on_screen, const Spot &spot);

  protected:
    virtual sheets::Rect content() const = 0; ///< millimetres
    virtual void paint(QPainter &painter) = 0;
    virtual void press(Vec2 at, Qt::KeyboardModifiers keys) = 0;
    virtual void hover(Vec2 at) = 0;
    virtual void drag(Vec2 at, Qt::KeyboardModifiers keys) = 0;
    virtual void release() = 0;
    virtual void give_up() = 0; ///< Escape while dragging
    virtual bool is_dragging() const = 0;
    virtual void take_typed(Length length) = 0;                ///< in place of what the drag had
    virtual QString why_not_typed(Length) const { return {}; } ///< a reason keeps the field open
    virtual QString what_to_type() const;                      ///< for the status line, while it is open
    virtual UnitSystem units() const = 0;
    virtual void double_click(Vec2) {}
    virtual bool is_old() const { return false; } ///< what is drawn does not hold any more: it is washed over

    virtual Chosen thing_at(Vec2) const { return {}; } ///< under the pointer
    virtual Chosen chosen_thing() const { return {}; }
    /// Of what Page Down and Page Up go through: 1 on, -1 back. False where they go through nothing.
    virtual bool choose_next(int) { return false; }
    virtual Spot spot_at(Vec2) const { return {}; } ///< of a wall on which something can be put
    virtual std::vector<LegendEntry> legend() const { return {}; } ///< what its colours and patterns mean

    void fit_now();        ///< also while a hand is at work
    bool went_far() const; ///< the hand from where it pressed: more than a click's trembling
    double reach() const;  ///< millimetres within which a pointer or a snap takes hold
    QRectF screen_rect(const sheets::Rect &rect) const;
    /// A label in a box, its middle at a place of the screen.
    void draw_label(QPainter &painter, QPointF at, const QString &words, const QColor &ink) const;

    void paintEvent(QPaintEvent *) override;
    void mousePressEvent(QMouseEvent *event) override;
    void mouseMoveEvent(QMouseEvent *event) override;
    void mouseReleaseEvent(QMouseEvent *event) override;
    void mouseDoubleClickEvent(QMouseEvent *event) override;
    void wheelEvent(QWheelEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;
    void resizeEvent(QResizeEvent *) override;
    void contextMenuEvent(QContextMenuEvent *event) override;
    bool event(QEvent *event) override;

  private:
    void apply_fit();
    void show_whole(const sheets::Rect &box);
    int banner_height() const; ///< of the one that lies along the upper edge; 0: there is none
    void begin_typing(const QString &first);
    void end_typing();

    double scale_ = 0.05;
    Vec2 middle_;
    bool fits_ = true;
    QPointF last_, pressed_;
    bool panning_ = false;
    Legend *legend_;
    LengthEdit *typed_;
};

} // namespace roundlay::window
