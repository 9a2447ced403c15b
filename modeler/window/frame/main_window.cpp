#include "modeler/window/frame/main_window.h"

#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/recovery.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/frame/application.h"
#include "modeler/window/frame/demo_files.h"
#include "modeler/window/frame/field_keys.h"
#include "modeler/window/frame/field_letters.h"
#include "modeler/window/frame/start_page.h"
#include "modeler/window/frame/state_bar.h"
#include "modeler/window/panels/cut_list_panel.h"
#include "modeler/window/panels/findings_panel.h"
#include "modeler/window/panels/floor_panel.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/panels/log_panel.h"
#include "modeler/window/panels/message_bar.h"
#include "modeler/window/panels/raising_panel.h"
#include "modeler/window/panels/scrolled.h"
#include "modeler/window/panels/shell_panel.h"
#include "modeler/window/panels/text_panel.h"
#include "modeler/window/record/at_hand.h"
#include "modeler/window/record/faces_view.h"
#include "modeler/window/record/record_panel.h"
#include "modeler/window/views/elevation_view.h"
#include "modeler/window/views/joint_page.h"
#include "modeler/window/views/model_page.h"
#include "modeler/window/views/plan_view.h"
#include "modeler/window/views/sheet_view.h"

#include <QDockWidget>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QScrollArea>
#include <QStackedWidget>
#include <QStatusBar>
#include <QVBoxLayout>

namespace roundlay::window {

namespace {

constexpr int keep_after_ms = 300;

} // namespace

MainWindow::MainWindow(const QString &recovery_folder, QWidget *parent)
    : QMainWindow(parent), desk_(std::make_unique<Desk>()), selection_(new Selection(this)),
      at_hand_(new AtHand(*desk_, *selection_, this)),
      recovery_(
          std::make_unique<Recovery>(recovery_folder.isEmpty() ? Recovery::usual_folder() : recovery_folder)),
      demo_files_(std::make_unique<DemoFiles>()) {
    setObjectName(QStringLiteral("roundlay"));
    setAcceptDrops(true);
    setDockOptions(AnimatedDocks | AllowTabbedDocks | AllowNestedDocks);
    make_views();
    make_docks();
    make_menus();
    for (const QWidget *part : findChildren<QDockWidget *>())
        leave_letters_to(*menuBar(), *part);
    leave_letters_to(*menuBar(), *pages_);
    connect_views();
    keeping_.setSingleShot(true);
    keeping_.setInterval(keep_after_ms);
    connect(&keeping_, &QTimer::timeout, this, &MainWindow::keep_aside);
    restore_size();
    new FieldKeys(*this);
    show_document();
}

MainWindow::~MainWindow() {
    let_go_of_typed(); // a field that loses the keyboard later would still commit it
    desk_->disconnect(this);
    desk_->history().disconnect(this);
}

void MainWindow::make_views() {
    model_ = new ModelPage(*desk_, *selection_);
    plan_ = new PlanView(*desk_, *selection_);
    elevation_ = new ElevationView(*desk_, *selection_);
    joint_ = new JointPage(*desk_, *selection_);
    sheet_ = new SheetView(*desk_, *selection_);
    findings_ = new FindingsPanel(*desk_, *selection_);
    cut_list_ = new CutListPanel(*desk_, *selection_);
    log_ = new LogPanel(*desk_, *selection_);
    shell_ = new ShellPanel(*desk_);
    floors_ = new FloorPanel(*desk_, *selection_);
    text_ = new TextPanel(*desk_);
    record_ = new RecordPanel(*desk_, *at_hand_);
    faces_ = new FacesView(*desk_, *at_hand_);
    raising_ = new RaisingPanel(*desk_, *selection_);
    make_centre();
    make_status();
}

/// The start page, or the model; over it what is told.
void MainWindow::make_centre() {
    start_ = new StartPage;
    message_ = new MessageBar;
    states_ = new StateBar(*desk_);
    pages_ = new QStackedWidget;
    pages_->addWidget(scrolled(start_)); // the window may be lower than all that can be begun with
    pages_->addWidget(model_);
    auto *centre = new QWidget;
    auto *column = new QVBoxLayout(centre);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(message_);
    column->addWidget(states_);
    column->addWidget(pages_, 1);
    setCentralWidget(centre);
}

void MainWindow::make_status() {
    hint_ = new QLabel;
    hint_->setObjectName(QStringLiteral("hint"));
    told_.setSingleShot(true);
    summary_ = new QLabel;
    summary_->setObjectName(QStringLiteral("summary"));
    statusBar()->addWidget(hint_, 1);
    statusBar()->addPermanentWidget(summary_);
}

void MainWindow::connect_desk() {
    connect(desk_.get(), &Desk::began, this, &MainWindow::let_go_of_typed); // it was of another document
    connect(desk_.get(), &Desk::began, this, &MainWindow::drop_menu);       // so was this
    connect(desk_.get(), &Desk::file_changed, this, &MainWindow::show_document);
    connect(desk_.get(), &Desk::state_changed, this, &MainWindow::show_state);
    connect(desk_.get(), &Desk::text_changed, this, [this] {
        if (!desk_->dragging()) keeping_.start();
    });
    connect(&desk_->history(), &QUndoStack::indexChanged, this, [this] { keeping_.start(); });
    connect(desk_.get(), &Desk::disk_changed, this, &MainWindow::tell_changed_on_disk);
    connect(desk_.get(), &Desk::failed, this, &MainWindow::tell_failure);
}

void MainWindow::connect_views() {
    connect_desk();
    connect(sheet_, &SheetView::failed, this, &MainWindow::tell_failure);
    if (auto *program = qobject_cast<Application *>(QCoreApplication::instance()))
        connect(program, &Application::failed, this, &MainWindow::tell_failure);
    connect_refusals();
    connect(plan_, &PlanView::hinted, this, &MainWindow::hint);
    connect(plan_, &PlanView::corner_pressed, this,
            [this] { findChild<QDockWidget *>(QStringLiteral("joint"))->raise(); });
    connect(plan_, &PlanView::corner_hovered, joint_, &JointPage::peep);
    connect(elevation_, &ElevationView::hinted, this, &MainWindow::hint);
    connect(elevation_, &ElevationView::told, this, &MainWindow::tell);
    connect(faces_, &FacesView::hinted, this, &MainWindow::hint);
    connect(faces_, &FacesView::told, this, &MainWindow::tell);
    connect(&record_->form(), &RecordForm::dropped, this, &MainWindow::tell_dropped);
    connect(model_, &ModelPage::hinted, this, &MainWindow::hint);
    connect(model_, &ModelPage::coloured, elevation_, &ElevationView::set_colouring);
    connect(joint_, &JointPage::hinted, this, &MainWindow::hint);
    connect(findings_, &FindingsPanel::asked_for_text, this, &MainWindow::go_to_text);
    connect_menus();
    connect(selection_, &Selection::changed, this, [this] { enable_actions(); });
    connect(start_, &StartPage::asked_for_new, this, &MainWindow::ask_new);
    connect(start_, &StartPage::asked_for_open, this, &MainWindow::ask_open);
    connect(start_, &StartPage::asked_for_demo, this, &MainWindow::begin_demo);
    connect(start_, &StartPage::asked_for, this, &MainWindow::open);
}

/// A reason stands in the status line only while there is something to mend.
void MainWindow::connect_refusals() {
    connect(desk_.get(), &Desk::refused, this, [this](const QString &why) {
        refusal_ = why;
        tell(why);
    });
    const auto forget = [this] {
        if (!refusal_.isEmpty() && hint_->text() == refusal_) hint_->clear(), told_.stop();
        refusal_.clear();
    };
    connect(desk_.get(), &Desk::text_changed, this, forget);
    connect(desk_.get(), &Desk::began, hint_, &QLabel::clear);
    const QString looking = tr("Looking for the nearest place that fits");
    connect(desk_.get(), &Desk::searching, this, [this, looking] { hint_->setText(looking); });
    connect(desk_.get(), &Desk::searched, this, [this, looking] {
        if (hint_->text() == looking) hint_->clear();
    });
    for (const MeasureEdit *edit : findChildren<MeasureEdit *>()) {
        connect(edit, &MeasureEdit::mended, this, forget);
        if (!record_->form().isAncestorOf(edit)) // which tells of its own
            connect(edit, &MeasureEdit::dropped, this,
                    [this, edit](const QString &typed) { tell_dropped(edit->accessibleName(), typed); });
    }
    connect(&told_, &QTimer::timeout, this, [this] { // what was done is no news for ever
        if (hint_->text() == told_words_ && told_words_ != refusal_) hint_->clear();
    });
}

void MainWindow::show_document() {
    const bool open = desk_->is_open();
    const bool began = open && pages_->currentIndex() == 0;
    if (open)
        setWindowTitle(tr("%1[*] — roundlay").arg(desk_->title()));
    else
        setWindowTitle(QStringLiteral("roundlay"));
    setWindowModified(desk_->unsaved());
    setWindowFilePath(desk_->path());
    pages_->setCurrentIndex(open ? 1 : 0);
    if (began || !open) show_panels(open);
    show_recent();
    enable_actions();
}

namespace {

/// How long it took is told when the hand rests: words that change at every step of a drag would have the
/// whole window laid out and painted once more.
QString summary_of(const State &state, bool dragging) {
    if (!state.failure.empty()) return MainWindow::tr("Not worked out: something went wrong inside");
    if (has_errors(state.read.problems) || has_errors(state.job.findings))
        return MainWindow::tr("Cannot be built: see the findings");
    if (!state.stands()) return {};
    if (dragging)
        return MainWindow::tr("%1 pieces, %2 rounds")
            .arg(state.job.layout.pieces.size())
            .arg(state.job.layout.rounds);
    return MainWindow::tr("%1 pieces, %2 rounds, worked out in %3 ms")
        .arg(state.job.layout.pieces.size())
        .arg(state.job.layout.rounds)
        .arg(state.times.all(), 0, 'f', 0);
}

} // namespace

void MainWindow::show_summary(const QString &words) {
    if (summary_->text() == words) return;
    summary_->setText(words);
    statusBar()->layout()->invalidate(); // it does not always look again by itself
    statusBar()->layout()->activate();
}

void MainWindow::show_state() {
    const State &state = *desk_->state();
    if (desk_->drawn()) selection_->hold_to(desk_->drawn()->job.shell, desk_->drawn()->drawn());
    show_summary(desk_->is_open() ? summary_of(state, desk_->dragging()) : QString());
    enable_actions();
}

} // namespace roundlay::window
