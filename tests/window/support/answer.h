// Questions that the window asks, answered while a test goes on.
#pragma once

#include "modeler/window/desk/desk.h"
#include "modeler/window/frame/application.h"
#include "modeler/window/panels/message_bar.h"

#include <QAbstractButton>
#include <QMessageBox>
#include <QTest>
#include <QTimer>

namespace roundlay::window {

/// Answers the question about unsaved work, if one is asked while the deed is done; then closes what is left.
class Answer : public QObject {
  public:
    explicit Answer(QMessageBox::ButtonRole role) : role_(role) { startTimer(20); }
    int asked() const { return asked_; }
    int dialogs() const { return dialogs_; } ///< others, that were closed

  protected:
    void timerEvent(QTimerEvent *) override {
        QWidget *dialog = QApplication::activeModalWidget();
        auto *box = qobject_cast<QMessageBox *>(dialog);
        if (box == nullptr) {
            if (dialog == nullptr) return;
            ++dialogs_;
            dialog->close();
            return;
        }
        ++asked_;
        for (QAbstractButton *button : box->buttons())
            if (box->buttonRole(button) == role_) return button->click();
    }

  private:
    QMessageBox::ButtonRole role_;
    int asked_ = 0, dialogs_ = 0;
};

} // namespace roundlay::window
