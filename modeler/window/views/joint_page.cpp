#include "modeler/window/views/joint_page.h"

#include "kernel/layout/corners/notch.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/notch_words.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/panels/field_row.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/panels/scrolled.h"
#include "modeler/window/views/gl_probe.h"
#include "modeler/window/views/joint_handles.h"
#include "modeler/window/views/play_icon.h"
#include "modeler/window/views/scene_view.h"
#include "modeler/window/views/stand_banner.h"
#include "modeler/window/views/view_keys.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QScrollArea>
#include <QSlider>
#include <QToolButton>

namespace roundlay::window {

namespace {

constexpr int most_lift = 100;
constexpr int rounds_shown = 4;
constexpr double kept = 800;   // mm of the logs behind the corner, along the diagonal
constexpr double around = 380; // mm on either side of the corner that are looked at
constexpr int lift_every_ms = 30, lift_step = 2;

/// From the corner toward the middle between its two walls, of length 1.
Vec2 inward_of(const Layout &layout, const CornerPlace &corner) {
    const auto away = [&](Index<WallPlace> wall) {
        const WallPlace &w = wall_of(layout, wall);
        const Vec3 middle = w.frame.to_world({w.length / 2, w.thickness / 2, 0});
        const Vec2 way = Vec2{middle.x, middle.y} - corner.centre;
        return (1 / std::max(length(way), 1.0)) * way;
    };
    const Vec2 sum = away(corner.ends) + away(corner.starts);
    return length(sum) < 1e-6 ? Vec2{1, 0} : (1 / length(sum)) * sum;
}

/// The logs' ends look at whoever stands there.
View view_along(Vec2 inward) {
    if (inward.x > 0) return inward.y > 0 ? View::south_west : View::north_west;
    return inward.y > 0 ? View::south_east : View::north_east;
}

bool is_at(const Piece &piece, const CornerPlace &corner) {
    return !piece.timber &&
           (piece.datum.at == corner.name || piece.far.at == corner.name || piece.wall == corner.runs_on);
}

} // namespace

JointPage::JointPage(Desk &desk, Selection &selection, QWidget *parent)
    : QWidget(parent), desk_(desk), selection_(selection) {
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    if (!why_no_model_view()) {
        make_view();
        column->addWidget(view_, 1);
    } else {
        column->addStretch(1);
    }
    auto *low = scrolled(fields()); // the window may be lower than all the fields
    low->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    low->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
    column->addWidget(low);
    playing_.setInterval(lift_every_ms);
    connect_fields();
    connect(&desk_, &Desk::began, this, &JointPage::begin);
    connect(&desk_, &Desk::state_changed, this, &JointPage::refresh);
    connect(&desk_, &Desk::models_changed, this, &JointPage::refresh);
    connect(&selection_, &Selection::changed, this, &JointPage::follow_selection);
}

void JointPage::begin() {
    shown_.clear();
    peeped_.clear();
    dragging_ = false;
    refresh();
}

/// What was typed of one corner and not taken is not typed of the next.
void JointPage::follow_selection() {
    for (SlopeEdit *edit : {slope_, along_, across_})
        edit->let_go();
    refresh();
}

void JointPage::make_view() {
    view_ = new SceneView(this);
    constexpr int least_height = 110; // the fields below it have their room too
    view_->setMinimumHeight(least_height);
    view_->setAccessibleName(tr("Joint"));
    view_->setAccessibleDescription(tr("The logs of one corner, lifted apart"));
    connect(view_, &SceneView::picked, this, [this](int id) {
        if (id >= 0 && desk_.standing())
            selection_.choose_piece(desk_.standing()->job.layout, Index<Piece>(id));
    });
    new StandBanner(desk_, view_, StandBanner::Shows::as_stood);
    connect(view_, &SceneView::asked_for_menu, this,
            [this](int id, const QPoint &on_screen) { emit asked_for_menu(thing_under(id), on_screen); });
    connect_handles();
}

/// What the menu is about: by the keyboard, what is chosen.
Chosen JointPage::thing_under(int id) const {
    if (id >= 0 && desk_.standing())
        return {Chosen::Kind::piece, desk_.standing()->job.layout.pieces[Index<Piece>(id)].tag, -1};
    if (id != SceneView::by_keyboard) return {Chosen::Kind::corner, corner_name(), -1};
    return selection_.chosen();
}

SlopeEdit *JointPage::slope_field(QFormLayout *form, const QString &label) {
    auto *edit = new SlopeEdit;
    add_field(*form, label, *edit);
    connect(edit, &SlopeEdit::committed, this,
            [this, edit] { commit(*edit, desk_, [this] { take_slopes(); }); });
    return edit;
}

QWidget *JointPage::fields() {
    constexpr int lines = 3; // its words come and go, the view stays
    auto *box = fields_ = new QWidget(this);
    form_ = new QFormLayout(box);
    form_->setContentsMargins(8, 4, 8, 8);
    title_ = new QLabel;
    title_->setWordWrap(true);
    title_->setAlignment(Qt::AlignTop);
    title_->setMinimumHeight(lines * title_->fontMetrics().lineSpacing());
    corners_ = new QComboBox;
    scope_ = new QComboBox;
    scope_->addItems({tr("this corner"), tr("the whole shell"), tr("the chosen log")});
    kind_ = new QComboBox;
    kind_->addItems(notch_words());
    form_->addRow(tr("C&orner"), corners_);
    form_->addRow(tr("&Lift"), lift_row());
    form_->addRow(tr("&Change"), scope_);
    form_->addRow(tr("&Notch"), kind_);
    slope_ = slope_field(form_, tr("S&lope"));
    slope_->setObjectName(QStringLiteral("joint_slope"));
    along_ = slope_field(form_, tr("&Along the log"));
    across_ = slope_field(form_, tr("Ac&ross it"));
    form_->addRow(title_);
    return box;
}

QWidget *JointPage::lift_row() {
    auto *row = new QWidget;
    auto *line = new QHBoxLayout(row);
    line->setContentsMargins(0, 0, 0, 0);
    lift_ = new QSlider(Qt::Horizontal);
    lift_->setRange(0, most_lift);
    lift_->setValue(most_lift / 3);
    lift_->setAccessibleName(tr("Lift the logs apart"));
    play_ = new QToolButton;
    play_->setCheckable(true);
    play_->setIcon(play_icon(false));
    play_->setAccessibleName(tr("Lift the logs apart by itself"));
    play_->setToolTip(tr("Lift the logs apart by itself"));
    line->addWidget(lift_, 1);
    line->addWidget(play_);
    row->setFocusProxy(lift_);
    return row;
}

void JointPage::connect_fields() {
    connect(corners_, &QComboBox::activated, this,
            [this] { selection_.choose_corner(corners_->currentText().toStdString()); });
    connect(scope_, &QComboBox::activated, this, &JointPage::refresh);
    connect(lift_, &QSlider::valueChanged, this, &JointPage::refresh);
    connect(kind_, &QComboBox::activated, this, &JointPage::take_kind);
    connect(play_, &QToolButton::toggled, this, &JointPage::lift_apart);
    connect(&playing_, &QTimer::timeout, this, [this] {
        lift_->setValue(lift_->value() + lift_step);
        if (lift_->value() == lift_->maximum()) lift_apart(false);
    });
}

void JointPage::lift_apart(bool on) {
    play_->setChecked(on);
    play_->setIcon(play_icon(on));
    if (!on) return playing_.stop();
    if (lift_->value() == lift_->maximum()) lift_->setValue(0);
    playing_.start();
}

void JointPage::peep(const std::string &corner) {
    if (!isVisible() || dragging_) return;
    peeped_ = corner;
    refresh();
}

const std::string &JointPage::corner_name() const {
    return peeped_.empty() ? selection_.corner() : peeped_;
}

std::optional<Index<CornerPlace>> JointPage::corner() const {
    if (!desk_.standing()) return std::nullopt;
    const auto &corners = desk_.standing()->job.layout.corners;
    for (const auto i : corners.indices())
        if (corners[i].name == corner_name()) return i;
    return std::nullopt;
}

std::optional<Index<Piece>> JointPage::chosen_log() const {
    if (!corner() || selection_.chosen().kind != Chosen::Kind::piece) return std::nullopt;
    const Layout &layout = desk_.standing()->job.layout;
    const auto piece = piece_tagged(layout, selection_.chosen().name);
    const CornerPlace &c = layout.corners[*corner()];
    return piece && is_at(layout.pieces[*piece], c) ? piece : std::nullopt;
}

/// The lowest, else those about the chosen log.
int JointPage::first_round() const {
    const auto log = chosen_log();
    if (!log) return 1;
    const int round = desk_.standing()->job.layout.pieces[*log].round;
    return round <= rounds_shown ? 1 : round - rounds_shown / 2;
}

bool JointPage::is_shown(const Piece &piece, const CornerPlace &corner) const {
    return is_at(piece, corner) && piece.round >= first_ && piece.round < first_ + rounds_shown;
}

/// The chosen log, else the highest that is shown and has a seam above it.
std::optional<Index<Piece>> JointPage::held_log() const {
    const Layout &layout = desk_.standing()->job.layout;
    const CornerPlace &c = layout.corners[*corner()];
    const auto chosen = chosen_log();
    if (chosen && tail_hold(layout, c, *chosen)) return chosen;
    std::optional<Index<Piece>> best;
    double height = -1;
    for (const auto i : layout.pieces.indices()) {
        const Piece &p = layout.pieces[i];
        if (!is_shown(p, c) || p.frame.origin.z <= height || !tail_hold(layout, c, i)) continue;
        best = i;
        height = p.frame.origin.z;
    }
    return best;
}

double JointPage::lift() const {
    return static_cast<double>(lift_->value()) / most_lift * desk_.standing()->job.layout.pitch;
}

/// Going up the corner the two walls' logs alternate.
double JointPage::lifted(Index<Piece> piece) const {
    const Layout &layout = desk_.standing()->job.layout;
    const Piece &p = layout.pieces[piece];
    const int order = 2 * (p.round - first_) + (wall_of(layout, p.wall).starts_full ? 0 : -1);
    return std::max(order, 0) * lift();
}

/// What nobody sees is not brought up to date at every step of a drag.
void JointPage::showEvent(QShowEvent *event) {
    QWidget::showEvent(event);
    refresh();
}

void JointPage::refresh() {
    if (!isVisible()) return;
    const auto at = corner();
    fields_->setEnabled(at && desk_.state()->read.shell); // else an edit would do nothing
    if (!at) return show_nothing();
    show_notch();
    if (view_ == nullptr) return;
    const CornerPlace &c = desk_.standing()->job.layout.corners[*at];
    first_ = first_round();
    show_view(c);
    show_handles(c);
}

void JointPage::show_nothing() {
    corners_->clear();
    kind_->setCurrentIndex(-1);
    for (SlopeEdit *edit : {slope_, along_, across_})
        edit->blank();
    title_->clear();
    if (view_ == nullptr) return;
    view_->set_scene({});
    view_->set_handles({}, {});
}

void JointPage::show_view(const CornerPlace &c) {
    const State &state = *desk_.standing();
    const Layout &layout = state.job.layout;
    Scene scene = scene_of(layout, state.models);
    std::erase_if(scene.instances, [&](const Instance &i) {
        const Piece &p = layout.pieces[Index<Piece>(i.id)];
        return !is_shown(p, c);
    });
    for (Instance &i : scene.instances)
        i.frame.origin = i.frame.origin + Vec3{0, 0, lifted(Index<Piece>(i.id))};
    for (Instance &i : scene.instances)
        i.marked = selection_.is_piece(layout.pieces[Index<Piece>(i.id)].tag);
    view_->set_hurried(desk_.dragging());
    view_->set_washed(desk_.standing_is_old() && !dragging_);
    view_->set_scene(std::move(scene));
    const Vec2 inward = inward_of(layout, c);
    const Vec3 middle{c.centre.x, c.centre.y, (first_ - 1) * layout.pitch};
    view_->set_section(Plane{{inward.x, inward.y, 0}, dot(inward, c.centre) + kept});
    const double top = rounds_shown * (layout.pitch + 2 * lift());
    const Box3 box{middle - Vec3{around, around, 0}, middle + Vec3{around, around, top}};
    if (shown_ == c.name) return view_->keep_in_sight(box);
    shown_ = c.name;
    view_->look_at(box, view_along(inward));
}

void JointPage::show_handles(const CornerPlace &c) {
    const Layout &layout = desk_.standing()->job.layout;
    const auto log = held_log();
    const KindOfNotch &kind = kind_of(rule().kind);
    handle_is_along_.clear();
    if (!log || kind.slopes == NotchSlopes::level || kind.slopes == NotchSlopes::none)
        return view_->set_handles({}, {});
    TailHold hold = *tail_hold(layout, c, *log);
    const Vec3 up{0, 0, lifted(*log)};
    for (Vec3 &p : hold.outline)
        p = p + up;
    along_arm_ = hold.along_arm;
    across_arm_ = hold.across_arm;
    const TailTop top = tail_top(rule());
    std::vector<SceneView::Handle> handles;
    const auto add = [&](bool along, Vec3 at, double slope) {
        handles.push_back({at + up, text(print_slope(Slope::rise_per_run(slope)))});
        handle_is_along_.push_back(along);
    };
    if (kind.slopes == NotchSlopes::stated || kind.along != 0) add(true, hold.along, top.along);
    if (kind.slopes == NotchSlopes::stated || kind.across != 0) add(false, hold.across, top.across);
    view_->set_handles(std::move(handles), std::move(hold.outline));
}

} // namespace roundlay::window
