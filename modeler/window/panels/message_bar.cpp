#include "modeler/window/panels/message_bar.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace roundlay::window {

MessageBar::MessageBar(QWidget *parent)
    : QFrame(parent), label_(new QLabel), whole_(new QHBoxLayout(this)), row_(new QHBoxLayout) {
    setFrameShape(QFrame::StyledPanel);
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::ToolTipBase);
    label_->setWordWrap(true);
    label_->setTextFormat(Qt::PlainText);
    label_->setMinimumSize(1, label_->fontMetrics().height()); // the window need not grow for a long sentence
    whole_->addWidget(label_, 1);
    whole_->addLayout(row_);
    hide();
}

void MessageBar::say(const QString &sentence, const Answers &answers) {
    for (QWidget *button : buttons_)
        button->deleteLater();
    buttons_.clear();
    answers_ = answers;
    label_->setText(sentence);
    setAccessibleName(sentence);
    for (std::size_t i = 0; i < answers.size(); ++i) {
        auto *button = new QPushButton(answers[i].first);
        connect(button, &QPushButton::clicked, this, [this, i] { answer(static_cast<int>(i)); });
        row_->addWidget(button);
        buttons_.push_back(button);
    }
    show();
}

/// Where beside the buttons there is no room for words, they stand above them.
void MessageBar::resizeEvent(QResizeEvent *event) {
    constexpr int letters = 32;
    const int room = width() - row_->sizeHint().width();
    whole_->setDirection(room < letters * fontMetrics().averageCharWidth() ? QBoxLayout::TopToBottom
                                                                           : QBoxLayout::LeftToRight);
    QFrame::resizeEvent(event);
}

QString MessageBar::sentence() const {
    return isHidden() ? QString() : label_->text();
}

void MessageBar::answer(int number) {
    const auto deed = answers_[static_cast<std::size_t>(number)].second;
    hide();
    if (deed) deed();
}

} // namespace roundlay::window
