// The four faces of a log, unrolled: zones of its wood drawn where they lie, and by hand.
#pragma once

#include "modeler/window/record/log_at_hand.h"

#include <QPointer>
#include <QWidget>
#include <optional>

class QMenu;

class QMenu;

namespace roundlay::window {

class AtHand;
class Desk;

class FacesView : public QWidget {
    Q_OBJECT
  public:
    FacesView(Desk &desk, AtHand &at_hand, QWidget *parent = nullptr);

    /// Pixels of a place along the log, mm from its left end as it is drawn, on a face.
    QPointF place_of(FoundFace face, double along) const;

  signals:
    void hinted(const QString &words);
    void told(const QString &words); ///< what was drawn

  protected:
    void paintEvent(QPaintEvent *event) override;
    void mousePressEvent(QMouseEvent *event) override;
    void mouseMoveEvent(QMouseEvent *event) override;
    void mouseReleaseEvent(QMouseEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;
    void showEvent(QShowEvent *event) override;

  private:
    struct Drawn { ///< by hand, until it is said what it is
        FoundFace face{};
        double from = 0, to = 0; ///< mm from the left end
    };
    void refresh();
    QRectF strip(FoundFace face) const;
    double along_at(double x) const;
    std::optional<FoundFace> face_at(QPointF at) const;
    std::optional<std::size_t> zone_at(QPointF at) const;
    QRectF zone_rect(const ConditionZone &zone, FoundFace face) const;
    void paint_face(class QPainter &painter, FoundFace face) const;
    void paint_zone(class QPainter &painter, const ConditionZone &zone, FoundFace face) const;
    QMenu *new_menu(const char *name);
    void ask_what(const QPoint &on_screen);
    void ask_about(std::size_t zone, const QPoint &on_screen);
    std::pair<double, double> dimensions_of(const Drawn &drawn) const; ///< mm from the log's zero, in order
    void add_zone(const Drawn &drawn, Soundness what);
    QString why_not() const; ///< nothing can be drawn; empty: it can
    bool from_right() const; ///< its running dimensions start at the end that is drawn on the right

    Desk &desk_;
    AtHand &at_hand_;
    std::optional<LogAtHand> log_;
    double length_ = 0, height_ = 0, width_ = 0; ///< mm; 0: nobody knows
    std::optional<Drawn> drawn_;
    QPointer<QMenu> menu_; ///< that was shown last
    bool dragging_ = false;
    bool stale_ = true;
};

} // namespace roundlay::window
