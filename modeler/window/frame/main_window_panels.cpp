// Where the panels stand, how they are put back and gone through, and what is remembered of it.
#include "modeler/window/frame/main_window.h"
#include "modeler/window/panels/cut_list_panel.h"
#include "modeler/window/panels/findings_panel.h"
#include "modeler/window/panels/floor_panel.h"
#include "modeler/window/panels/log_panel.h"
#include "modeler/window/panels/message_bar.h"
#include "modeler/window/panels/raising_panel.h"
#include "modeler/window/panels/shell_panel.h"
#include "modeler/window/panels/text_panel.h"
#include "modeler/window/record/faces_view.h"
#include "modeler/window/record/record_panel.h"
#include "modeler/window/views/elevation_view.h"
#include "modeler/window/views/joint_page.h"
#include "modeler/window/views/plan_view.h"
#include "modeler/window/views/sheet_view.h"

#include <QApplication>
#include <QDockWidget>
#include <QLayout>
#include <QScreen>
#include <QSettings>
#include <QStackedWidget>
#include <algorithm>

namespace roundlay::window {

namespace {

constexpr QSize usual_size(1360, 860), frame_of_the_desktop(16, 56);
constexpr int panels_version = 3;
const QString geometry_key = QStringLiteral("window/geometry"), panels_key = QStringLiteral("window/panels");

bool takes_keyboard(const QWidget &widget) {
    return widget.isVisible() && widget.isEnabled() && (widget.focusPolicy() & Qt::TabFocus) != 0 &&
           widget.focusProxy() == nullptr;
}

/// Too low for panels below one another.
bool is_low(const QScreen &screen) {
    constexpr int least_for_all = 560; // pixels
    return screen.availableGeometry().height() < least_for_all;
}

/// On a screen that is too low for all of them; shown for a moment they would make the window larger than it.
bool waits_in_the_menu(const QDockWidget &dock) {
    if (!is_low(*dock.screen())) return false;
    for (const char *name : {"elevation", "faces", "cut_list", "raising", "sheet", "text", "findings"})
        if (dock.objectName() == QLatin1String(name)) return true;
    return false;
}

/// What had the keyboard there last, else what comes first.
QWidget *way_into(QWidget &place) {
    if (takes_keyboard(place)) return &place;
    if (QWidget *last = place.focusWidget(); last != nullptr && takes_keyboard(*last)) return last;
    for (QWidget *w = place.nextInFocusChain(); w != &place; w = w->nextInFocusChain())
        if (place.isAncestorOf(w) && takes_keyboard(*w)) return w;
    return nullptr;
}

} // namespace

QDockWidget *MainWindow::dock(const QString &name, const QString &title, QWidget *content,
                              Qt::DockWidgetArea area) {
    auto *made = new QDockWidget(title, this);
    made->setObjectName(name);
    made->setWidget(content);
    addDockWidget(area, made);
    docks_.push_back(made);
    // What is behind another panel takes no key and does no work, and keeps its place.
    QSizePolicy policy = content->sizePolicy();
    policy.setRetainSizeWhenHidden(true);
    content->setSizePolicy(policy);
    connect(made, &QDockWidget::visibilityChanged, content, &QWidget::setVisible);
    return made;
}

void MainWindow::make_docks() {
    setCorner(Qt::BottomRightCorner, Qt::RightDockWidgetArea);
    QDockWidget *plan = dock(QStringLiteral("plan"), tr("Plan"), plan_, Qt::LeftDockWidgetArea);
    QDockWidget *shell = dock(QStringLiteral("shell"), tr("Shell"), shell_, Qt::LeftDockWidgetArea);
    QDockWidget *floors = dock(QStringLiteral("floors"), tr("Floors"), floors_, Qt::LeftDockWidgetArea);
    QDockWidget *elevation =
        dock(QStringLiteral("elevation"), tr("Elevation"), elevation_, Qt::BottomDockWidgetArea);
    QDockWidget *faces = dock(QStringLiteral("faces"), tr("Faces"), faces_, Qt::BottomDockWidgetArea);
    QDockWidget *list = dock(QStringLiteral("cut_list"), tr("Cut list"), cut_list_, Qt::BottomDockWidgetArea);
    QDockWidget *raising = dock(QStringLiteral("raising"), tr("Raising"), raising_, Qt::BottomDockWidgetArea);
    QDockWidget *sheet = dock(QStringLiteral("sheet"), tr("Cut sheet"), sheet_, Qt::BottomDockWidgetArea);
    QDockWidget *text = dock(QStringLiteral("text"), tr("Text"), text_, Qt::BottomDockWidgetArea);
    QDockWidget *log = dock(QStringLiteral("log"), tr("Chosen"), log_, Qt::RightDockWidgetArea);
    QDockWidget *record = dock(QStringLiteral("record"), tr("Record"), record_, Qt::RightDockWidgetArea);
    QDockWidget *joint = dock(QStringLiteral("joint"), tr("Joint"), joint_, Qt::RightDockWidgetArea);
    QDockWidget *findings =
        dock(QStringLiteral("findings"), tr("Findings"), findings_, Qt::RightDockWidgetArea);
    tabifyDockWidget(plan, shell);
    tabifyDockWidget(shell, floors);
    tabifyDockWidget(elevation, faces);
    tabifyDockWidget(faces, list);
    tabifyDockWidget(list, raising);
    tabifyDockWidget(raising, sheet);
    tabifyDockWidget(sheet, text);
    splitDockWidget(log, findings, Qt::Vertical); // before the tabs: a tab cannot be split off
    tabifyDockWidget(log, record);
    tabifyDockWidget(record, joint);
    if (is_low(*screen())) // one at a time, beside the model
        for (QDockWidget *dock : {elevation, faces, list, raising, sheet, text, findings})
            tabifyDockWidget(floors, dock);
    raise_usual_panels();
    usual_panels_ = saveState(panels_version);
}

void MainWindow::raise_usual_panels() {
    for (const char *name : {"plan", "elevation", "log"})
        findChild<QDockWidget *>(QLatin1String(name))->raise();
}

/// Sizes to begin with, in shares of the window.
void MainWindow::arrange() {
    constexpr double left = 0.26, right = 0.23, low = 0.38, findings = 0.26;
    const auto docked = [this](const char *name) { return findChild<QDockWidget *>(QLatin1String(name)); };
    resizeDocks({docked("plan"), docked("log")},
                {static_cast<int>(width() * left), static_cast<int>(width() * right)}, Qt::Horizontal);
    resizeDocks({docked("elevation"), docked("findings")},
                {static_cast<int>(height() * low), static_cast<int>(height() * findings)}, Qt::Vertical);
}

/// With a document they stand as they did last, without one there are none.
void MainWindow::show_panels(bool on) {
    if (!on && are_panels_shown_) panels_ = saveState(panels_version);
    for (QDockWidget *dock : docks_)
        dock->setVisible(on && !waits_in_the_menu(*dock));
    are_panels_shown_ = on;
    if (!on) return;
    if (panels_.isEmpty() || !restoreState(panels_, panels_version)) arrange();
}

void MainWindow::put_panels_back() {
    restoreState(usual_panels_, panels_version);
    for (QDockWidget *dock : docks_)
        dock->setVisible(!waits_in_the_menu(*dock));
    arrange();
    raise_usual_panels();
}

/// Never larger than the screen it is on.
void MainWindow::restore_size() {
    const QSize room = screen()->availableGeometry().size() - frame_of_the_desktop;
    layout()->invalidate();
    layout()->activate(); // as small as the panels let it be now, not while they were put in
    resize(usual_size.boundedTo(room));
    restoreGeometry(QSettings().value(geometry_key).toByteArray());
    panels_ = QSettings().value(panels_key).toByteArray();
}

void MainWindow::remember_size() const {
    QSettings().setValue(geometry_key, saveGeometry());
    if (!panels_.isEmpty()) QSettings().setValue(panels_key, panels_);
}

/// What is closed, or behind another panel, comes to the front with the keyboard; what is seen goes.
void MainWindow::show_or_close(QDockWidget &dock) {
    const bool comes = dock.isHidden() || !dock.widget()->isVisible();
    dock.setVisible(comes);
    action(QStringLiteral("panel_") + dock.objectName())->setChecked(comes);
    if (!comes) return;
    dock.raise();
    QTimer::singleShot(0, &dock, [&dock] {
        if (QWidget *way = way_into(*dock.widget())) way->setFocus(Qt::ShortcutFocusReason);
    });
}

void MainWindow::bring_to_front(const QString &panel) {
    auto *dock = findChild<QDockWidget *>(panel);
    dock->show();
    dock->raise();
}

void MainWindow::next_panel(int step) {
    std::vector<QWidget *> places;
    if (message_->isVisible()) places.push_back(message_);
    places.push_back(pages_);
    for (QDockWidget *dock : docks_)
        if (dock->widget()->isVisible()) places.push_back(dock->widget());
    const QWidget *focus = QApplication::focusWidget();
    const int count = static_cast<int>(places.size());
    int now = 0;
    for (int i = 0; i < count; ++i)
        if (const QWidget *place = places[static_cast<std::size_t>(i)];
            place == focus || (focus != nullptr && place->isAncestorOf(focus)))
            now = i;
    for (int i = 1; i <= count; ++i) {
        QWidget *place = places[static_cast<std::size_t>((now + step * i + count * count) % count)];
        if (QWidget *way = way_into(*place)) return way->setFocus(Qt::ShortcutFocusReason);
    }
}

} // namespace roundlay::window
