#include "modeler/window/frame/field_keys.h"

#include "modeler/window/frame/main_window.h"
#include "modeler/window/panels/text_panel.h"

#include <QAbstractSpinBox>
#include <QAction>
#include <QApplication>
#include <QKeyEvent>
#include <QLineEdit>
#include <algorithm>

namespace roundlay::window {

QLineEdit *line_of(QWidget *widget) {
    if (qobject_cast<QAbstractSpinBox *>(widget) != nullptr) return widget->findChild<QLineEdit *>();
    return qobject_cast<QLineEdit *>(widget);
}

FieldKeys::FieldKeys(MainWindow &window) : QObject(&window), window_(window) {
    QCoreApplication::instance()->installEventFilter(this);
}

/// What a line does to its own text by usual keys stays the line's.
bool FieldKeys::is_deed(const QKeyEvent &key) const {
    if (!(key.modifiers() & Qt::ControlModifier)) return false;
    for (const auto own :
         {QKeySequence::Copy, QKeySequence::Cut, QKeySequence::Paste, QKeySequence::SelectAll})
        if (key.matches(own)) return false;
    const QKeySequence typed(key.keyCombination());
    const auto actions = window_.findChildren<QAction *>();
    return std::any_of(actions.begin(), actions.end(), [&](const QAction *action) {
        return action->isEnabled() && action->shortcuts().contains(typed);
    });
}

bool FieldKeys::is_of(const char *action, const QKeyEvent &key) const {
    return window_.action(QLatin1String(action))->shortcuts().contains(QKeySequence(key.keyCombination()));
}

bool FieldKeys::eventFilter(QObject *object, QEvent *event) {
    if (event->type() != QEvent::ShortcutOverride) return false;
    auto *widget = qobject_cast<QWidget *>(object);
    if (widget == nullptr || widget->window() != &window_) return false;
    const QLineEdit *line = line_of(widget);
    const bool is_text = widget == &window_.text_panel();
    if (line == nullptr && !is_text) return false;
    const auto &key = *static_cast<QKeyEvent *>(event);
    const bool undo = is_of("undo", key), redo = is_of("redo", key);
    if (line != nullptr && ((undo && line->isUndoAvailable()) || (redo && line->isRedoAvailable())))
        return false;
    if (!undo && !redo && !is_deed(key)) return false;
    if (is_text) window_.text_panel().take(); // the last letters are one more edit
    event->ignore();                          // and goes on to the menu
    return true;
}

} // namespace roundlay::window
