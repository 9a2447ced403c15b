#include "modeler/window/views/joint_page.h"

#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/shell_edits.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/views/gl_probe.h"
#include "modeler/window/views/scene_view.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QSlider>

namespace roundlay::window {

namespace {

constexpr int most_lift = 100;
constexpr int rounds_shown = 4;

NotchRule notch_of(const Shell &shell, const std::string &first, const std::string &second) {
    for (const CornerNotch &corner : shell.corners)
        if (corner.first == first && corner.second == second) return corner.notch;
    return shell.notch;
}

constexpr double kept = 800;   // mm of the logs behind the corner, along the diagonal
constexpr double around = 450; // mm on either side of the corner that are looked at

/// From the corner toward the middle between its two walls, of length 1.
Vec2 inward_of(const Layout &layout, const CornerPlace &corner) {
    const auto away = [&](int wall) {
        const WallPlace &w = layout.walls[static_cast<std::size_t>(wall)];
        const Vec3 middle = w.frame.to_world({w.length / 2, w.thickness / 2, 0});
        const Vec2 way = Vec2{middle.x, middle.y} - corner.centre;
        return (1 / length(way)) * way;
    };
    const Vec2 sum = away(corner.ends) + away(corner.starts);
    return (1 / length(sum)) * sum;
}

/// The logs' ends look at whoever stands there.
View view_along(Vec2 inward) {
    if (inward.x > 0) return inward.y > 0 ? View::south_west : View::north_west;
    return inward.y > 0 ? View::south_east : View::north_east;
}

} // namespace

JointPage::JointPage(Desk &desk, Selection &selection, QWidget *parent)
    : QWidget(parent), desk_(desk), selection_(selection) {
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    if (!why_no_model_view()) {
        view_ = new SceneView(this);
        view_->setAccessibleName(tr("Joint"));
        view_->setAccessibleDescription(tr("The logs of one corner, lifted apart"));
        column->addWidget(view_, 1);
        connect(view_, &SceneView::picked, this, [this](int id) {
            if (id >= 0 && desk_.standing()) selection_.choose_piece(desk_.standing()->job.layout, id);
        });
    } else {
        column->addStretch(1);
    }
    column->addWidget(fields());
    connect(&desk_, &Desk::state_changed, this, &JointPage::refresh);
    connect(&selection_, &Selection::changed, this, &JointPage::refresh);
}

QWidget *JointPage::fields() {
    auto *box = new QWidget(this);
    auto *form = new QFormLayout(box);
    form->setContentsMargins(8, 4, 8, 8);
    corners_ = new QComboBox;
    kind_ = new QComboBox;
    kind_->addItems({tr("full dovetail"), tr("half dovetail"), tr("square lap"), tr("stated")});
    slope_ = new SlopeEdit;
    slope_->setAccessibleName(tr("Slope"));
    lift_ = new QSlider(Qt::Horizontal);
    lift_->setRange(0, most_lift);
    lift_->setValue(most_lift / 3);
    lift_->setAccessibleName(tr("Lift the logs apart"));
    title_ = new QLabel;
    title_->setWordWrap(true);
    title_->setAlignment(Qt::AlignTop);
    title_->setMinimumHeight(2 *
                             title_->fontMetrics().lineSpacing()); // its words come and go, the view stays
    form->addRow(tr("C&orner"), corners_);
    form->addRow(tr("&Lift"), lift_);
    form->addRow(tr("&Notch"), kind_);
    form->addRow(tr("S&lope"), slope_);
    form->addRow(title_);
    connect(corners_, &QComboBox::activated, this,
            [this] { selection_.choose_corner(corners_->currentText().toStdString()); });
    connect(lift_, &QSlider::valueChanged, this, &JointPage::refresh);
    connect(kind_, &QComboBox::activated, this, &JointPage::take_notch);
    connect(slope_, &SlopeEdit::committed, this, &JointPage::take_notch);
    connect(slope_, &MeasureEdit::complained, title_, &QLabel::setText);
    return box;
}

int JointPage::corner() const {
    if (!desk_.standing()) return -1;
    const auto &corners = desk_.standing()->job.layout.corners;
    for (std::size_t i = 0; i < corners.size(); ++i)
        if (corners[i].name == selection_.corner()) return static_cast<int>(i);
    return -1;
}

void JointPage::refresh() {
    const int at = corner();
    if (at < 0) {
        if (view_ != nullptr) view_->set_scene({});
        return;
    }
    show_notch();
    if (view_ == nullptr) return;
    const State &state = *desk_.standing();
    const Layout &layout = state.job.layout;
    const CornerPlace &c = layout.corners[static_cast<std::size_t>(at)];
    Scene scene = scene_of(layout, state.models);
    const double lift = static_cast<double>(lift_->value()) / most_lift * layout.pitch;
    std::erase_if(scene.instances, [&](const Instance &i) {
        const Piece &p = layout.pieces[static_cast<std::size_t>(i.id)];
        return p.timber >= 0 || p.round > rounds_shown || (p.datum.at != c.name && p.far.at != c.name);
    });
    for (Instance &i : scene.instances) {
        const Piece &p = layout.pieces[static_cast<std::size_t>(i.id)];
        // Going up the corner the two walls' logs alternate.
        const double order =
            2 * (p.round - 1) + (layout.walls[static_cast<std::size_t>(p.wall)].starts_full ? 0 : -1);
        i.frame.origin = i.frame.origin + (std::max(order, 0.0) * lift) * Vec3{0, 0, 1};
    }
    view_->set_hurried(desk_.dragging());
    view_->set_scene(std::move(scene));
    const Vec2 inward = inward_of(layout, c);
    const Vec3 middle{c.centre.x, c.centre.y, 0};
    view_->set_section(Plane{{inward.x, inward.y, 0}, dot(inward, c.centre) + kept});
    const double top = rounds_shown * (layout.pitch + 2 * lift);
    const Box3 box{middle - Vec3{around, around, 0}, middle + Vec3{around, around, top}};
    if (shown_ == c.name) return view_->keep_in_sight(box);
    shown_ = c.name;
    view_->look_at(box, view_along(inward));
}

void JointPage::show_notch() {
    const State &state = *desk_.standing();
    const Layout &layout = state.job.layout;
    QStringList names;
    for (const CornerPlace &c : layout.corners)
        names << text(c.name);
    QStringList now;
    for (int i = 0; i < corners_->count(); ++i)
        now << corners_->itemText(i);
    if (names != now) {
        corners_->clear();
        corners_->addItems(names);
    }
    corners_->setCurrentText(text(selection_.corner()));
    const CornerPlace &c = layout.corners[static_cast<std::size_t>(corner())];
    const NotchRule notch = notch_of(state.job.shell, layout.walls[static_cast<std::size_t>(c.ends)].name,
                                     layout.walls[static_cast<std::size_t>(c.starts)].name);
    kind_->setCurrentIndex(static_cast<int>(notch.kind));
    slope_->set_slope(notch.slope);
    slope_->setEnabled(notch.kind == NotchKind::full_dovetail || notch.kind == NotchKind::half_dovetail);
    title_->setText(c.reentrant ? tr("An inside corner: the log ends show indoors.") : QString());
}

void JointPage::take_notch() {
    const int at = corner();
    if (at < 0) return;
    const Layout &layout = desk_.standing()->job.layout;
    const CornerPlace &c = layout.corners[static_cast<std::size_t>(at)];
    const std::string first = layout.walls[static_cast<std::size_t>(c.ends)].name,
                      second = layout.walls[static_cast<std::size_t>(c.starts)].name;
    const auto kind = static_cast<NotchKind>(kind_->currentIndex());
    const Slope slope = slope_->slope();
    desk_.edit(tr("Change notch of corner %1").arg(text(c.name)), [&](const Shell &shell) {
        NotchRule notch = notch_of(shell, first, second);
        notch.kind = kind;
        if (kind != NotchKind::square_lap) notch.slope = slope;
        return std::optional(with_corner_notch(shell, first, second, notch));
    });
}

} // namespace roundlay::window
