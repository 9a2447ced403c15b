#include "modeler/window/views/scene_view.h"

#include "exporters/picture/picture.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/views/tints.h"

#include <QElapsedTimer>
#include <QOpenGLContext>
#include <QOpenGLFunctions>
#include <QPainter>
#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

namespace roundlay::window {

namespace {

constexpr int stands_still_ms = 180, hover_ms = 40;
constexpr double closest = 100, farthest = 500'000; // mm of picture height

std::array<double, 3> channels(const QColor &c) {
    return {c.redF(), c.greenF(), c.blueF()};
}

/// Lies over the view: letters that a painter sets inside the graphics context come out broken beside a
/// renderer of its own.
class LabelLayer : public QWidget {
  public:
    LabelLayer(QWidget *view, std::function<void(QPainter &)> paint)
        : QWidget(view), paint_(std::move(paint)) {
        setAttribute(Qt::WA_TransparentForMouseEvents);
    }

  protected:
    void paintEvent(QPaintEvent *) override {
        QPainter painter(this);
        paint_(painter);
    }

  private:
    std::function<void(QPainter &)> paint_;
};

} // namespace

SceneView::SceneView(QWidget *parent) : QOpenGLWidget(parent) {
    layer_ = new LabelLayer(this, [this](QPainter &painter) { paint_labels(painter); });
    legend_ = new Legend(this);
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setMinimumSize(200, 110); // the lowest screens have room for little more
    still_.setSingleShot(true);
    still_.setInterval(stands_still_ms);
    connect(&still_, &QTimer::timeout, this, [this] {
        moving_ = false;
        follow_with_light();
        update();
    });
    hover_.setSingleShot(true);
    hover_.setInterval(hover_ms);
    connect(&hover_, &QTimer::timeout, this, [this] {
        const int id = id_under(last_);
        if (id == hovered_) return;
        hovered_ = id;
        emit hovered(id);
        update();
    });
}

SceneView::~SceneView() {
    let_go();
}

void SceneView::let_go() {
    if (!renderer_) return;
    makeCurrent();
    renderer_.reset();
    doneCurrent();
}

void SceneView::initializeGL() {
    connect(context(), &QOpenGLContext::aboutToBeDestroyed, this, &SceneView::let_go, Qt::DirectConnection);
    auto made = Renderer::create();
    if (const auto *failure = std::get_if<PictureFailure>(&made)) {
        emit failed(text(failure->message));
        return;
    }
    renderer_ = std::move(std::get<0>(made));
    fresh_ = true;
}

QSize SceneView::pixels() const {
    return {static_cast<int>(std::lround(width() * devicePixelRatioF())),
            static_cast<int>(std::lround(height() * devicePixelRatioF()))};
}

double SceneView::aspect() const {
    return static_cast<double>(std::max(width(), 1)) / std::max(height(), 1);
}

Look SceneView::look() const {
    Look look = is_in_haste() ? hasty_look(haste_) : Look();
    look.section = section_;
    look.hovered = hovered_;
    look.edge_width = devicePixelRatioF();
    look.light_azimuth = light_azimuth_;
    if (tints().dark) {
        look.background_low = channels(QColor("#1b211f"));
        look.background_high = channels(QColor("#39433f"));
    }
    return look;
}

void SceneView::paintGL() {
    if (!renderer_) return;
    QElapsedTimer timer;
    timer.start();
    if (fresh_) renderer_->show(scene_);
    fresh_ = false;
    const QSize size = pixels();
    renderer_->draw(camera_, look(), size.width(), size.height(), defaultFramebufferObject());
    if (is_in_haste()) context()->functions()->glFinish(); // else only the asking would be timed
    constexpr double per_ms = 1e6;
    last_frame_ms_ = static_cast<double>(timer.nsecsElapsed()) / per_ms;
    if (is_in_haste()) keep_up();
    layer_->setVisible(!labels_.empty() || !handles_.empty() || washed_);
    layer_->resize(QWidget::size());
    layer_->update();
}

void SceneView::set_scene(Scene scene) {
    scene_ = std::move(scene);
    box_ = bounds(scene_);
    fresh_ = true;
    if (!aimed_ && !scene_.instances.empty()) aim();
    update();
}

void SceneView::fit_next_scene() {
    untouched_ = true;
    aimed_ = false;
    aim_.reset();
}

void SceneView::fit_untouched() {
    if (untouched_ && !aim_ && !scene_.instances.empty()) aim();
}

/// What is drawn last stays until it is drawn with all there is.
void SceneView::set_hurried(bool on) {
    if (hurried_ == on) return;
    hurried_ = on;
    if (!on) still_.start();
}

void SceneView::aim() {
    const bool corner = view_ == View::south_east || view_ == View::north_east || view_ == View::north_west ||
                        view_ == View::south_west;
    camera_ = looking_at(aim_.value_or(box_), view_, aspect(),
                         corner || aim_ ? Projection::perspective : Projection::parallel);
    light_azimuth_ = light_azimuth_for(camera_);
    aimed_ = true;
    update();
}

void SceneView::resizeEvent(QResizeEvent *event) {
    QOpenGLWidget::resizeEvent(event);
    if (untouched_ && !scene_.instances.empty()) aim();
}

void SceneView::set_labels(std::vector<Label> labels) {
    labels_ = std::move(labels);
    update();
}

void SceneView::set_washed(bool on) {
    if (washed_ == on) return;
    washed_ = on;
    update();
}

std::function<Drawn<Picture>()> SceneView::picture_now(QSize size) const {
    Look still = still_look();
    const Look now = look();
    still.section = now.section;
    still.light_azimuth = now.light_azimuth;
    still.background_low = now.background_low;
    still.background_high = now.background_high;
    return [scene = scene_, camera = camera_, still, size] {
        return render_picture(scene, camera, size.width(), size.height(), still);
    };
}

void SceneView::set_section(std::optional<Plane> section) {
    section_ = section;
    stirred();
}

void SceneView::set_view(View view) {
    view_ = view;
    moved();
    fit_next_scene();
    aim();
}

void SceneView::look_at(const Box3 &box, View view) {
    view_ = view;
    moved();
    untouched_ = true;
    aim_ = box;
    aim();
}

void SceneView::keep_in_sight(const Box3 &box) {
    aim_ = box;
    if (untouched_) aim();
}

void SceneView::set_projection(Projection projection) {
    camera_.projection = projection;
    moved();
}

void SceneView::fit() {
    camera_ = fitted(camera_, box_, aspect());
    moved();
}

void SceneView::orbit(double azimuth, double elevation) {
    camera_ = orbited(camera_, azimuth, elevation);
    moved();
}

void SceneView::pan(double right, double up) {
    const Vec3 back = unit(camera_.eye - camera_.target), across = unit(cross(camera_.up, back)),
               upward = cross(back, across);
    const double mm = camera_.view_height / std::max(height(), 1);
    const Vec3 by = (-right * mm) * across + (-up * mm) * upward;
    camera_.eye = camera_.eye + by;
    camera_.target = camera_.target + by;
    moved();
}

/// What lies under the pointer stays under it.
void SceneView::zoom(double factor, QPointF at) {
    const double next = std::clamp(camera_.view_height / factor, closest, farthest);
    const double by = camera_.view_height / next;
    const double right = at.x() - width() / 2.0, up = height() / 2.0 - at.y();
    const Vec3 away = camera_.eye - camera_.target;
    pan(-right * (1 - 1 / by), -up * (1 - 1 / by));
    camera_.view_height = next;
    camera_.eye = camera_.target + (1 / by) * away;
    moved();
}

void SceneView::moved() {
    untouched_ = false;
    stirred();
}

/// Two frames that come late, one after the other, are followed by ones that show less.
void SceneView::keep_up() {
    constexpr double late = 16; // ms: what is painted beside it takes as much again
    const double before = std::exchange(last_hasty_ms_, last_frame_ms_);
    if (before <= late || last_frame_ms_ <= late) return;
    haste_ = std::min(haste_ + 1, most_haste);
    last_hasty_ms_ = 0;
}

/// Drawn in haste until it stands still.
void SceneView::stirred() {
    constexpr double early = 8; // ms: there was time for more
    if (!moving_ && last_hasty_ms_ > 0 && last_hasty_ms_ < early) haste_ = std::max(haste_ - 1, 0);
    moving_ = true;
    still_.start();
    update();
}

/// Casting the shell's shadow anew takes longer than a frame may, so the sun stands still while the hand
/// moves, and after turns that do not need it.
void SceneView::follow_with_light() {
    constexpr double enough = 0.7; // radians
    const double wanted = light_azimuth_for(camera_);
    if (std::abs(std::remainder(wanted - light_azimuth_, 2 * std::numbers::pi)) > enough)
        light_azimuth_ = wanted;
}

int SceneView::id_under(QPointF at) {
    if (!renderer_ || scene_.instances.empty()) return -1;
    makeCurrent();
    const QSize size = pixels();
    const double ratio = devicePixelRatioF();
    const auto picked = renderer_->pick(camera_, look(), size.width(), size.height(),
                                        static_cast<int>(at.x() * ratio), static_cast<int>(at.y() * ratio));
    doneCurrent();
    return picked ? picked->id : -1;
}

QString SceneView::driver() const {
    return renderer_ ? text(renderer_->driver()) : QString();
}

} // namespace roundlay::window
