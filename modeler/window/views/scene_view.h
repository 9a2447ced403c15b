// A scene in three dimensions that is turned, moved and zoomed by mouse, touchpad and keyboard.
#pragma once

#include "exporters/picture/camera.h"
#include "exporters/picture/renderer.h"
#include "modeler/window/views/legend.h"

#include <QImage>
#include <QOpenGLWidget>
#include <QTimer>
#include <functional>
#include <memory>

namespace roundlay {
struct Picture;
}

namespace roundlay::window {

class SceneView : public QOpenGLWidget {
    Q_OBJECT
  public:
    /// On the log, or above it with a line to it where the log would vanish under its tag.
    struct Label {
        Vec3 from, to; ///< the ends of what it names
        QString words;
    };

    /// A point that a hand drags up and down.
    struct Handle {
        Vec3 at;
        QString words;
    };

    static constexpr int by_keyboard = -2;

    explicit SceneView(QWidget *parent = nullptr);
    ~SceneView() override;

    void set_scene(Scene scene); ///< the camera stays; before a hand moved it, it fits what there is
    void fit_next_scene();       ///< as if no hand had moved the camera
    void fit_untouched();        ///< everything again, unless a hand has moved the camera
    void set_hurried(bool on);   ///< while something changes: frames are drawn as those of a moving camera
    void set_labels(std::vector<Label> labels);
    void set_handles(std::vector<Handle> handles, std::vector<Vec3> outline); ///< drawn over all
    const std::vector<Handle> &handles() const { return handles_; }
    QPointF on_screen(Vec3 world) const;
    void set_washed(bool on); ///< what is seen does not hold any more
    Legend &legend_panel() { return *legend_; }
    /// What is seen now with section, in so many pixels; its tags come on top afterwards. May take seconds,
    /// and may run in any thread.
    std::function<Drawn<Picture>()> picture_now(QSize size) const;
    /// With its legend and the caption too, while the legend is on.
    QImage with_tags(const Picture &picture, const QString &caption = {}) const;
    int labels_in_sight() const; ///< that found a place and are not cut away
    void set_section(std::optional<Plane> section);
    void set_view(View view);
    void look_at(const Box3 &box, View view); ///< a part of the scene, in the middle
    void keep_in_sight(const Box3 &box);      ///< of the same side; a camera that a hand moved stays
    void set_projection(Projection projection);
    void fit();
    void orbit(double azimuth, double elevation);
    void pan(double right, double up); ///< pixels
    void zoom(double factor, QPointF at);

    const Camera &camera() const { return camera_; }
    const Scene &scene() const { return scene_; }
    QString driver() const;
    double last_frame_ms() const { return last_frame_ms_; }
    int haste() const {
        return haste_;
    } ///< 0 to most_haste: what frames of a moving picture leave out to be in time

  signals:
    void picked(int id); ///< -1 = nothing
    void hovered(int id);
    /// The right button without a drag, -1 = over nothing; or the menu key: by_keyboard.
    void asked_for_menu(int id, const QPoint &on_screen);
    void failed(const QString &sentence);
    void handle_moved(int handle, double up, Qt::KeyboardModifiers keys); ///< mm since it was taken hold of
    void handle_released();
    void handle_given_up();

  protected:
    void initializeGL() override;
    void paintGL() override;
    void mousePressEvent(QMouseEvent *event) override;
    void mouseMoveEvent(QMouseEvent *event) override;
    void mouseReleaseEvent(QMouseEvent *event) override;
    void mouseDoubleClickEvent(QMouseEvent *event) override;
    void wheelEvent(QWheelEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;
    void contextMenuEvent(QContextMenuEvent *event) override;
    bool event(QEvent *event) override;

    void resizeEvent(QResizeEvent *event) override;

  private:
    void let_go();
    void moved();
    void follow_with_light();
    void stirred();
    bool is_in_haste() const { return moving_ || hurried_; }
    void keep_up();
    void aim();
    Matrix4 clip(double aspect) const;
    QPointF on_picture(Vec3 world, QSizeF size) const;
    std::optional<std::pair<Vec3, Vec3>> not_cut_away(const Label &label) const;
    int handle_at(QPointF at) const;
    void drag_handle(QPointF to, Qt::KeyboardModifiers keys);
    void paint_handles(QPainter &painter) const;
    void paint_tags(QPainter &painter, QSizeF size) const;
    bool draw_label(QPainter &painter, const Label &label, QSizeF size, std::vector<QRectF> &taken) const;
    double aspect() const;
    QSize pixels() const;
    int id_under(QPointF at);
    void paint_labels(QPainter &painter) const;
    Look look() const;
    bool turn_by_key(int key, bool shift);

    std::unique_ptr<Renderer> renderer_;
    Scene scene_;
    Box3 box_; ///< of the scene
    std::vector<Label> labels_;
    std::vector<Handle> handles_;
    std::vector<Vec3> outline_; ///< of what the handles change
    int held_ = -1;             ///< handle
    QWidget *layer_ = nullptr;  ///< that shows the labels
    Camera camera_;
    View view_ = View::south_east;
    std::optional<Plane> section_;
    bool fresh_ = false;      ///< the scene is not shown to the renderer yet
    bool aimed_ = false;      ///< at a scene, once
    bool untouched_ = true;   ///< no hand has moved the camera since it was aimed
    std::optional<Box3> aim_; ///< what it looks at; nothing = everything
    bool moving_ = false, hurried_ = false, washed_ = false;
    Legend *legend_;
    double light_azimuth_ = 0; ///< radians, see Look
    int hovered_ = -1;
    QPointF last_, pressed_;
    QTimer still_, hover_;
    double last_frame_ms_ = 0, last_hasty_ms_ = 0;
    int haste_ = 0;
};

} // namespace roundlay::window
