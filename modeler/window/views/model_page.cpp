#include "modeler/window/views/model_page.h"

#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/views/gl_probe.h"
#include "modeler/window/views/play_icon.h"
#include "modeler/window/views/reasons_page.h"
#include "modeler/window/views/scene_view.h"
#include "modeler/window/views/stand_banner.h"
#include "modeler/window/views/zone_skins.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QSlider>
#include <QToolButton>
#include <QVBoxLayout>

namespace roundlay::window {

namespace {

constexpr int slider_steps = 100;
constexpr int play_ms = 70; // for each piece

enum Section { none, from_south, from_east, from_above };

} // namespace

ModelPage::ModelPage(Desk &desk, Selection &selection, QWidget *parent)
    : QWidget(parent), desk_(desk), selection_(selection) {
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    if (const auto why = why_no_model_view()) {
        use_no_view(*why);
        column->addWidget(instead_, 1);
    } else {
        make_view(column);
    }
    reasons_ = new ReasonsPage(desk_, this);
    reasons_->hide();
    column->addWidget(reasons_, 1);
    column->addWidget(controls());
    playing_.setInterval(play_ms);
    connect(&playing_, &QTimer::timeout, this, &ModelPage::raise_one_more);
    connect(&desk_, &Desk::began, this, [this] {
        if (view_ != nullptr) view_->fit_next_scene();
        choose_page();
    });
    connect(&desk_, &Desk::state_changed, this, &ModelPage::show_state);
    connect(&desk_, &Desk::models_changed, this, &ModelPage::refresh);
    connect(&selection_, &Selection::changed, this, &ModelPage::refresh);
}

ModelPage::~ModelPage() = default;

void ModelPage::make_view(QVBoxLayout *column) {
    view_ = new SceneView(this);
    view_->setAccessibleName(tr("Model"));
    view_->setAccessibleDescription(
        tr("The shell in space. Arrow keys turn it, with Shift they move it, plus and minus zoom."));
    column->addWidget(view_, 1);
    new StandBanner(desk_, view_, StandBanner::Shows::as_stood);
    connect(view_, &SceneView::failed, this, [this, column](const QString &sentence) {
        view_->hide();
        use_no_view(sentence);
        column->insertWidget(0, instead_, 1);
    });
    connect(view_, &SceneView::picked, this, [this](int id) {
        if (id >= 0 && desk_.standing())
            selection_.choose_piece(desk_.standing()->job.layout, Index<Piece>(id));
        else
            selection_.clear();
    });
    connect(view_, &SceneView::hovered, this, [this](int id) { emit hinted(text(thing_of(id).name)); });
    connect(view_, &SceneView::asked_for_menu, this, [this](int id, const QPoint &on_screen) {
        emit asked_for_menu(id == SceneView::by_keyboard ? selection_.chosen() : thing_of(id), on_screen);
    });
}

Chosen ModelPage::thing_of(int id) const {
    if (id < 0 || id >= pieces()) return {};
    return {Chosen::Kind::piece, desk_.standing()->job.layout.pieces[Index<Piece>(id)].tag, -1};
}

/// The model, a sentence where this machine draws none, or why there has never been one.
void ModelPage::choose_page() {
    const bool reasons = !desk_.standing() && reasons_->has_reasons();
    reasons_->setVisible(reasons);
    QWidget *usual = instead_ != nullptr ? static_cast<QWidget *>(instead_) : view_;
    usual->setVisible(!reasons);
}

void ModelPage::use_no_view(const QString &sentence) {
    constexpr int margin = 40;
    instead_ = new QLabel(sentence, this);
    instead_->setObjectName(QStringLiteral("no-model"));
    instead_->setWordWrap(true);
    instead_->setAlignment(Qt::AlignCenter);
    instead_->setMargin(margin);
}

QSlider *ModelPage::slider(const QString &name, int most) {
    constexpr int least_width = 40;
    auto *made = new QSlider(Qt::Horizontal);
    made->setRange(0, most);
    made->setAccessibleName(name);
    made->setToolTip(name);
    made->setMinimumWidth(least_width);
    return made;
}

namespace {

/// A field with its name in front of it.
void add_labelled(QBoxLayout &row, const QString &words, QWidget *field, int stretch) {
    auto *label = new QLabel(words);
    label->setBuddy(field);
    row.addWidget(label);
    row.addWidget(field, stretch);
}

/// Cut short where there is little room.
QComboBox *choice(const QString &name, const QStringList &items) {
    auto *box = new QComboBox;
    box->addItems(items);
    box->setAccessibleName(name);
    box->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    box->setMinimumWidth(box->minimumSizeHint().width() / 2);
    return box;
}

} // namespace

QBoxLayout *ModelPage::raise_controls() {
    auto *row = new QHBoxLayout;
    spread_ = slider(tr("Spread apart"), slider_steps);
    add_labelled(*row, tr("S&pread"), spread_, 1);
    raise_ = slider(tr("Raise: how many pieces stand"), 1);
    raise_->setValue(1);
    add_labelled(*row, tr("&Raise"), raise_, 2);
    play_ = new QToolButton;
    play_->setCheckable(true);
    play_->setIcon(play_icon(false));
    play_->setAccessibleName(tr("Play the raise"));
    play_->setToolTip(tr("Play the raise"));
    row->addWidget(play_);
    return row;
}

QBoxLayout *ModelPage::section_controls() {
    auto *row = new QHBoxLayout;
    section_ = choice(tr("Section plane"),
                      {tr("no section"), tr("from the south"), tr("from the east"), tr("from above")});
    add_labelled(*row, tr("S&ection"), section_, 0);
    cut_ = slider(tr("Place of the section"), slider_steps);
    cut_->setValue(slider_steps / 2);
    cut_->setEnabled(false);
    row->addWidget(cut_, 1);
    return row;
}

QBoxLayout *ModelPage::colour_controls() {
    auto *row = new QHBoxLayout;
    colouring_ = choice(tr("Colour"),
                        {tr("by wall"), tr("by finding"), tr("by equal pieces"), tr("by kept and new"),
                         tr("by condition"), tr("by decision"), tr("by certainty"), tr("by what is up")});
    add_labelled(*row, tr("&Colour"), colouring_, 0);
    labels_ = new QCheckBox(tr("&Tags"));
    row->addWidget(labels_);
    return row;
}

void ModelPage::connect_controls() {
    connect(spread_, &QSlider::valueChanged, this, [this] {
        refresh();
        if (view_ != nullptr) view_->fit_untouched();
    });
    connect(raise_, &QSlider::valueChanged, this, &ModelPage::refresh);
    connect(play_, &QToolButton::toggled, this, &ModelPage::play);
    connect(section_, &QComboBox::currentIndexChanged, this, &ModelPage::show_section);
    connect(cut_, &QSlider::valueChanged, this, &ModelPage::show_section);
    connect(colouring_, &QComboBox::currentIndexChanged, this, &ModelPage::refresh);
    connect(colouring_, &QComboBox::currentIndexChanged, this,
            [this](int at) { emit coloured(static_cast<Colouring>(at)); });
    connect(labels_, &QCheckBox::toggled, this, &ModelPage::refresh);
}

QWidget *ModelPage::controls() {
    auto *bar = new QWidget(this);
    bar_ = new QBoxLayout(QBoxLayout::LeftToRight, bar);
    bar_->setContentsMargins(8, 4, 8, 4);
    bar_->addLayout(raise_controls(), 3);
    right_ = new QBoxLayout(QBoxLayout::LeftToRight);
    bar_->addLayout(right_, 2);
    right_->addLayout(section_controls(), 1);
    right_->addLayout(colour_controls());
    connect_controls();
    constexpr int slack = 100; // pixels, for the sliders
    bar->setEnabled(view_ != nullptr);
    whole_ = bar->sizeHint().width() + slack;
    right_whole_ =
        right_->sizeHint().width() + bar_->contentsMargins().left() + bar_->contentsMargins().right();
    bar->setMinimumWidth(1); // the window may be narrower than all the words of its controls
    return bar;
}

/// Where there is little room the fields stand in two rows, or three, and keep their names.
void ModelPage::resizeEvent(QResizeEvent *) {
    right_->setDirection(width() >= right_whole_ ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    bar_->setDirection(width() >= whole_ ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
}

int ModelPage::pieces() const {
    return desk_.standing() ? static_cast<int>(desk_.standing()->job.layout.pieces.size()) : 0;
}

/// A raise that stood whole stands whole again, however many pieces there are now.
void ModelPage::show_state() {
    const bool whole = raise_->value() == raise_->maximum();
    const QSignalBlocker quiet(raise_);
    raise_->setMaximum(std::max(pieces(), 1));
    if (whole) raise_->setValue(raise_->maximum());
    choose_page();
    refresh();
    if (view_ == nullptr || desk_.dragging()) return;
    const Box3 now = bounds(view_->scene());
    const bool same = now.low.x == seen_.low.x && now.low.y == seen_.low.y && now.low.z == seen_.low.z &&
                      now.high.x == seen_.high.x && now.high.y == seen_.high.y && now.high.z == seen_.high.z;
    seen_ = now;
    if (!same) view_->fit_untouched();
}

void ModelPage::refresh() {
    if (view_ == nullptr) return;
    const StatePtr &state = desk_.standing();
    if (!state) {
        view_->set_labels({});
        view_->set_washed(false);
        return view_->set_scene({});
    }
    SceneOptions options;
    options.explode = static_cast<double>(spread_->value()) / slider_steps;
    options.raised_up_to = raise_->value() == raise_->maximum() ? -1 : raise_->value();
    Scene scene = scene_of(state->job.layout, state->models, options);
    const auto colouring = static_cast<Colouring>(colouring_->currentIndex());
    const ZoneSkins *zones = skins(colouring);
    colour(scene, *state, colouring, selection_.chosen(), zones);
    put_labels(scene);
    if (zones != nullptr) add_skins(scene, *zones);
    view_->legend_panel().tell(legend_of(*state, colouring));
    view_->set_washed(desk_.standing_is_old());
    view_->set_hurried(desk_.dragging());
    view_->set_scene(std::move(scene));
}

/// Cut out once for a state, not at each step of a spread or a choice.
const ZoneSkins *ModelPage::skins(Colouring colouring) {
    if (colouring != Colouring::condition) return nullptr;
    const StatePtr &state = desk_.standing();
    if (skins_of_ != state) {
        skins_ = std::make_unique<ZoneSkins>(zone_skins(*state));
        skins_of_ = state;
    }
    return skins_.get();
}

/// On the chosen logs, or on all; over a chosen corner its name.
void ModelPage::put_labels(const Scene &scene) {
    std::vector<SceneView::Label> labels;
    const double top = bounds(scene).high.z;
    for (const CornerPlace &c : desk_.standing()->job.layout.corners)
        if (const Vec3 at{c.centre.x, c.centre.y, top}; selection_.is_corner(c.name))
            labels.push_back({at, at, tr("corner %1").arg(text(c.name))});
    for (const Instance &instance : scene.instances) {
        const Piece &piece = desk_.standing()->job.layout.pieces[Index<Piece>(instance.id)];
        if (!instance.visible || (!labels_->isChecked() && !selection_.is_piece(piece.tag))) continue;
        const double up = piece.blank.height / 2;
        labels.push_back({instance.frame.to_world({0, 0, up}),
                          instance.frame.to_world({piece.blank.length, 0, up}), text(piece.tag)});
    }
    view_->set_labels(std::move(labels));
}

void ModelPage::show_section() {
    cut_->setEnabled(section_->currentIndex() != none);
    if (view_ == nullptr) return;
    const Box3 box = bounds(view_->scene());
    const double part = static_cast<double>(cut_->value()) / slider_steps;
    const auto at = [part](double low, double high) { return low + part * (high - low); };
    std::optional<Plane> plane;
    if (section_->currentIndex() == from_south) plane = Plane{{0, -1, 0}, -at(box.low.y, box.high.y)};
    if (section_->currentIndex() == from_east) plane = Plane{{1, 0, 0}, at(box.low.x, box.high.x)};
    if (section_->currentIndex() == from_above) plane = Plane{{0, 0, 1}, at(box.low.z, box.high.z)};
    view_->set_section(plane);
}

void ModelPage::play(bool on) {
    if (on == playing_.isActive()) return;
    play_->setChecked(on);
    play_->setIcon(play_icon(on));
    if (!on) return playing_.stop();
    if (raise_->value() == raise_->maximum()) raise_->setValue(0);
    playing_.start();
}

void ModelPage::raise_one_more() {
    raise_->setValue(raise_->value() + 1);
    if (raise_->value() == raise_->maximum()) play(false);
}

void ModelPage::set_colouring(Colouring colouring) {
    colouring_->setCurrentIndex(static_cast<int>(colouring));
}

void ModelPage::show_labels(bool on) {
    labels_->setChecked(on);
}

} // namespace roundlay::window
