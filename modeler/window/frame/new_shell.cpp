#include "modeler/window/frame/new_shell.h"

#include "kernel/document/length_bounds.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/layout.h"
#include "kernel/shell/shapes.h"
#include "modeler/window/desk/notch_words.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/frame/new_shell_words.h"
#include "modeler/window/panels/count_box.h"
#include "modeler/window/panels/field_row.h"
#include "modeler/window/panels/form_rows.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/panels/species_choice.h"
#include "modeler/window/panels/wrapped_label.h"
#include "modeler/window/views/plan_sketch.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <QScreen>
#include <QScrollArea>
#include <QShortcut>
#include <QStyle>

namespace roundlay::window {

namespace {

/// As they stand in the form. Stated slopes come later, at the joint.
std::vector<NotchKind> kinds_to_begin_with() {
    std::vector<NotchKind> kinds;
    for (const KindOfNotch &each : all_kinds_of_notch)
        if (each.slopes != NotchSlopes::stated) kinds.push_back(each.kind);
    return kinds;
}

} // namespace

NewShellDialog::NewShellDialog(UnitSystem units, QWidget *parent)
    : QDialog(parent), shape_(new QComboBox), units_(new QComboBox), kind_(new QComboBox),
      species_(new QComboBox), name_(new QLineEdit(tr("New shell"))), width_(new LengthEdit),
      depth_(new LengthEdit), part_width_(new LengthEdit), part_depth_(new LengthEdit),
      from_left_(new LengthEdit), thickness_(new LengthEdit), pitch_(new LengthEdit), gap_(new LengthEdit),
      overhang_(new LengthEdit), part_width_label_(new QLabel), part_depth_label_(new QLabel),
      thickness_label_(new QLabel), answer_(new QLabel), bare_(new WrappedLabel),
      rounds_(new CountBox(1, limits::rounds)), sketch_(new PlanSketch),
      slanted_(new QCheckBox(tr("Sl&anted walls"))), drawing_hint_(new QLabel) {
    constexpr int usual_rounds = 11;
    constexpr int beneath = 130; // pixels for the answer and the buttons
    constexpr QSize usual(860, 540);
    setWindowTitle(tr("New shell"));
    rounds_->show_count(usual_rounds);
    units_->addItems({tr("metric"), tr("feet and inches")});
    units_->setCurrentIndex(units == UnitSystem::metric ? 0 : 1);
    fill_choices();
    answer_->setWordWrap(true);
    answer_->setMinimumHeight(answer_->fontMetrics().height() * 2);
    auto *row = new QHBoxLayout(this);
    row->addLayout(left_side());
    row->addLayout(drawing_side(), 1);
    make_->setDefault(true); // only now: before it is in the dialog nobody hears it
    connect_fields();
    start_over();
    const QSize room = screen()->availableGeometry().size();
    resize(QSize(width(), form_->sizeHint().height() + beneath).expandedTo(usual).boundedTo(room * 9 / 10));
}

void NewShellDialog::fill_choices() {
    shape_->addItems(
        {tr("Rectangle"), tr("L"), tr("Inset porch"), tr("T"), tr("U"), tr("Cross"), tr("Drawn by hand")});
    for (const NotchKind kind : kinds_to_begin_with())
        kind_->addItem(kind == NotchKind::saddle ? tr("round, scoped over one another with saddles")
                                                 : tr("hewn, %1").arg(notch_word(kind)));
    add_species(*species_);
    species_->setCurrentIndex(species_->findData(text(begun_in(UnitSystem::metric).wood.species)));
    for (QComboBox *box : {kind_, species_}) { // the longest words do not decide how wide the form is
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        box->setMinimumContentsLength(20);
    }
}

void NewShellDialog::connect_fields() {
    connect(shape_, &QComboBox::currentIndexChanged, this, [this] {
        for (LengthEdit *part : {part_width_, part_depth_, from_left_})
            typed_.remove(part); // of another shape these are other parts
        start_over();
    });
    for (QComboBox *box : {units_, kind_})
        connect(box, &QComboBox::currentIndexChanged, this, &NewShellDialog::start_over);
    connect(species_, &QComboBox::currentIndexChanged, this, &NewShellDialog::check);
    connect(rounds_, &CountBox::counted, this, &NewShellDialog::check);
    connect(rounds_, &CountBox::complained, this, &NewShellDialog::check);
    connect(name_, &QLineEdit::textChanged, this, &NewShellDialog::check);
    connect(sketch_, &PlanSketch::changed, this, &NewShellDialog::check);
    connect(slanted_, &QCheckBox::toggled, sketch_, &PlanSketch::slant);
    connect(new QShortcut(QKeySequence(QStringLiteral("F1")), this), &QShortcut::activated, this,
            &NewShellDialog::asked_for_keys);
    for (LengthEdit *edit : fields()) {
        connect(edit, &MeasureEdit::committed, this, [this, edit] { take(*edit); });
        connect(edit, &MeasureEdit::complained, this, &NewShellDialog::check);
    }
}

bool NewShellDialog::is_wall(const LengthEdit *edit) const {
    return QList<const LengthEdit *>{width_, depth_, part_width_, part_depth_, from_left_}.contains(edit);
}

void NewShellDialog::take(LengthEdit &edit) {
    const bool from_nothing = &edit == gap_ || &edit == overhang_;
    const LengthBounds &taken = is_wall(&edit) ? bounds::long_size
                                : from_nothing ? bounds::short_gap
                                               : bounds::short_size;
    const QString why = out_of_bounds(edit.accessibleName(), edit.length(), taken, units());
    if (!why.isEmpty()) return edit.refuse(why);
    typed_.insert(&edit);
    show_doubts();
    check();
}

void NewShellDialog::show_doubts() {
    for (LengthEdit *edit : fields())
        if (is_wall(edit)) edit->doubt(doubt_of_wall(edit->length(), units()));
}

QList<LengthEdit *> NewShellDialog::fields() const {
    return {width_, depth_, part_width_, part_depth_, from_left_, thickness_, pitch_, gap_, overhang_};
}

QLayout *NewShellDialog::left_side() {
    auto *inside = new QWidget;
    make_form(inside);
    auto *scroll = new QScrollArea; // the screen may be lower than the form
    scroll->setWidget(inside);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus);
    constexpr double most = 0.5; // of the screen: the sketch has its room too
    scroll->setMinimumWidth(
        std::min(inside->minimumSizeHint().width() + style()->pixelMetric(QStyle::PM_ScrollBarExtent),
                 static_cast<int>(most * screen()->availableGeometry().width())));
    auto *buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    make_ = buttons->addButton(tr("&Make it"), QDialogButtonBox::AcceptRole);
    connect(buttons, &QDialogButtonBox::accepted, this, &NewShellDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &NewShellDialog::reject);
    auto *column = new QVBoxLayout;
    column->addWidget(scroll, 1);
    column->addWidget(answer_);
    column->addWidget(buttons);
    return column;
}

/// The sketch, and under it what a hand needs that draws there.
QLayout *NewShellDialog::drawing_side() {
    slanted_->setObjectName(QStringLiteral("slanted"));
    slanted_->setToolTip(
        tr("Walls in any direction. Without it they run along the compass, unless Shift is held."));
    drawing_hint_->setObjectName(QStringLiteral("drawing_hint"));
    drawing_hint_->setWordWrap(true);
    auto *column = new QVBoxLayout;
    column->addWidget(sketch_, 1);
    column->addWidget(slanted_);
    column->addWidget(drawing_hint_);
    return column;
}

void NewShellDialog::make_form(QWidget *inside) {
    form_ = new QFormLayout(inside);
    form_->setRowWrapPolicy(QFormLayout::WrapLongRows);
    form_->addRow(tr("&Name"), name_);
    form_->addRow(tr("&Shape"), shape_);
    form_->addRow(tr("&Units"), units_);
    form_->addRow(bare_);
    add_field(*form_, tr("&Width, west to east"), *width_);
    add_field(*form_, tr("&Depth, south to north"), *depth_);
    add_field(*form_, part_width_label_, *part_width_);
    add_field(*form_, part_depth_label_, *part_depth_);
    add_field(*form_, tr("From the &left corner"), *from_left_);
    form_->addRow(tr("L&ogs and notches"), kind_);
    form_->addRow(tr("W&ood"), species_);
    add_field(*form_, thickness_label_, *thickness_);
    add_field(*form_, tr("&Rounds"), *rounds_);
    add_field(*form_, tr("&Pitch"), *pitch_);
    add_field(*form_, tr("&Gap"), *gap_);
    add_field(*form_, tr("O&verhang of the ends"), *overhang_);
}

void NewShellDialog::choose(Shape shape) {
    shape_->setCurrentIndex(static_cast<int>(shape));
    if (shape == Shape::drawn) sketch_->setFocus();
}

NotchKind NewShellDialog::notch() const {
    return kinds_to_begin_with()[static_cast<std::size_t>(std::max(kind_->currentIndex(), 0))];
}

UnitSystem NewShellDialog::units() const {
    return units_->currentIndex() == 0 ? UnitSystem::metric : UnitSystem::imperial;
}

void NewShellDialog::show_labels(Shape shape) {
    const bool parts = shape != Shape::rectangle && shape != Shape::drawn,
               wide = parts && shape != Shape::cross, placed = wide && shape != Shape::ell;
    part_width_label_->setText(shape == Shape::ell     ? tr("Width of the wing, at its north end")
                               : shape == Shape::inset ? tr("Width of the recess")
                               : shape == Shape::tee   ? tr("Width of the wing")
                                                       : tr("Width of the court"));
    part_depth_label_->setText(shape == Shape::ell     ? tr("Depth of the main part, at its east end")
                               : shape == Shape::inset ? tr("Depth of the recess")
                               : shape == Shape::tee   ? tr("Depth of the wing")
                               : shape == Shape::cross ? tr("How far the arms stand out")
                                                       : tr("Depth of the court"));
    const bool round = notch() == NotchKind::saddle;
    thickness_label_->setText(round ? tr("&Diameter of the logs") : tr("&Thickness"));
    part_width_->setAccessibleName(part_width_label_->text());
    part_depth_->setAccessibleName(part_depth_label_->text());
    thickness_->setAccessibleName(thickness_label_->text().remove(u'&'));
    show_row(*form_, *width_, shape != Shape::drawn);
    show_row(*form_, *depth_, shape != Shape::drawn);
    show_row(*form_, *part_width_, wide);
    show_row(*form_, *part_depth_, parts);
    show_row(*form_, *from_left_, placed);
    show_row(*form_, *gap_, !round); // their spacing is the pitch alone
    slanted_->setVisible(shape == Shape::drawn);
    drawing_hint_->setVisible(shape == Shape::drawn);
}

/// What the person typed stays, in whatever units; the rest are usual sizes.
void NewShellDialog::start_over() {
    const auto shape = static_cast<Shape>(shape_->currentIndex());
    const NewShell usual = usual_shell(shape, units(), notch());
    show_labels(shape);
    const Length sizes[] = {usual.width,     usual.depth, usual.part_width, usual.part_depth, usual.from_left,
                            usual.thickness, usual.pitch, usual.gap,        usual.overhang};
    const auto all = fields();
    for (qsizetype i = 0; i < all.size(); ++i)
        all[i]->set_length(typed_.contains(all[i]) ? all[i]->length() : sizes[i], units());
    show_doubts();
    bare_->setText(bare_number_words(units()));
    sketch_->set_units(units());
    drawing_hint_->setText(sketch_->what_to_type());
    if (shape == Shape::drawn) sketch_->draw();
    check();
}

/// Of a given shape; a drawn one is there already.
void NewShellDialog::show_plan(const Layout *layout) {
    if (shape_->currentIndex() == static_cast<int>(Shape::drawn)) return;
    std::vector<Vec2> corners;
    if (layout)
        for (const WallPlace &wall : layout->walls)
            corners.push_back({wall.frame.origin.x, wall.frame.origin.y});
    sketch_->show_plan(std::move(corners));
}

QString NewShellDialog::what_is_missing() const {
    if (is_wrong()) return tr("Put right first what is not taken above: it says why.");
    if (shape_->currentIndex() == static_cast<int>(Shape::drawn) && !sketch_->is_closed())
        return tr("Draw the corners and close the figure: click the first corner again, or press Enter.");
    return tr("A part must be smaller than the whole, and every size more than nothing.");
}

NewShell NewShellDialog::sizes() const {
    NewShell s;
    s.shape = static_cast<Shape>(shape_->currentIndex());
    s.units = units();
    s.width = width_->length();
    s.depth = depth_->length();
    s.part_width = part_width_->length();
    s.part_depth = part_depth_->length();
    s.from_left = from_left_->length();
    s.notch = notch();
    s.species = species_->currentData().toString().toStdString();
    s.thickness = thickness_->length();
    s.pitch = pitch_->length();
    if (s.notch != NotchKind::saddle) s.gap = gap_->length();
    s.overhang = overhang_->length();
    s.rounds = rounds_->count();
    s.name = name_->text().toStdString();
    if (sketch_->is_closed()) s.corners = sketch_->corners();
    return s;
}

void NewShellDialog::check() {
    const auto shell = shell_of(sizes());
    const Layout layout = shell ? lay_out(*shell) : Layout();
    QString words = what_is_missing();
    show_plan(shell ? &layout : nullptr);
    fits_ = false;
    if (shell && !is_wrong()) {
        words = refusal(*shell, layout);
        fits_ = words.isEmpty();
        shell_ = *shell;
        if (fits_)
            words = tr("%1 pieces in %2 rounds, %3 high")
                        .arg(layout.pieces.size())
                        .arg(layout.rounds)
                        .arg(standing_text(layout, shell->units));
    }
    answer_->setText(words);
    make_->setEnabled(fits_);
}

/// Not while something stands there that was not taken: another shell would be made than is read.
bool NewShellDialog::is_wrong() const {
    const auto all = fields();
    return !rounds_->complaint().isEmpty() || std::any_of(all.begin(), all.end(), [](const LengthEdit *edit) {
        return !edit->complaint().isEmpty();
    });
}

void NewShellDialog::accept() {
    remember_units(units());
    QDialog::accept();
}

/// What was drawn by hand took some time.
void NewShellDialog::reject() {
    if (sketch_->holds_work()) {
        QMessageBox box(QMessageBox::Warning, tr("Unsaved work"),
                        tr("The plan that was drawn is not made yet."), QMessageBox::NoButton, this);
        QPushButton *drop = box.addButton(tr("&Throw away"), QMessageBox::DestructiveRole);
        QPushButton *stay = box.addButton(tr("&Go on drawing"), QMessageBox::RejectRole);
        box.setDefaultButton(stay);
        box.setEscapeButton(stay);
        box.exec();
        if (box.clickedButton() != drop) return;
    }
    QDialog::reject();
}

} // namespace roundlay::window
