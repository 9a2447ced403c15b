#include "modeler/window/frame/start_page.h"

#include <QCommandLinkButton>
#include <QFileInfo>
#include <QIcon>
#include <QLabel>
#include <QListWidget>
#include <QVBoxLayout>

namespace roundlay::window {

std::vector<Demo> demos() {
    return {
        {StartPage::tr("One room of five rounds, for teaching"), QStringLiteral(":/demos/one-room.roundlay")},
        {StartPage::tr("L-shaped house of thirteen rounds"), QStringLiteral(":/demos/ell-house.roundlay")},
        {StartPage::tr("Long house with an inset porch"), QStringLiteral(":/demos/long-house.roundlay")}};
}

StartPage::StartPage(QWidget *parent) : QWidget(parent), recent_(new QListWidget) {
    constexpr int column_width = 560, icon_size = 96;
    auto *icon = new QLabel;
    icon->setPixmap(QIcon(QStringLiteral(":/roundlay.svg")).pixmap(icon_size, icon_size));
    auto *title = new QLabel(tr("A shell of hewn logs, from the plan to the last peg"));
    QFont large = title->font();
    large.setPointSizeF(large.pointSizeF() * 1.5);
    title->setFont(large);
    title->setWordWrap(true);
    auto *column = new QVBoxLayout;
    column->addStretch(1);
    column->addWidget(icon);
    column->addWidget(title);
    const auto link = [&](const QString &words, const QString &more) {
        auto *button = new QCommandLinkButton(words, more);
        button->setAccessibleName(words);
        column->addWidget(button);
        return button;
    };
    connect(link(tr("New shell"), tr("From a shape, with sizes in metres or in feet and inches")),
            &QCommandLinkButton::clicked, this, &StartPage::asked_for_new);
    connect(link(tr("Open a document"), tr("Or drag one into the window")), &QCommandLinkButton::clicked,
            this, &StartPage::asked_for_open);
    int number = 0;
    for (const Demo &demo : demos())
        connect(link(demo.name, tr("A demo to look at and to change")), &QCommandLinkButton::clicked, this,
                [this, n = number++] { emit asked_for_demo(n); });
    auto *recent_label = new QLabel(tr("&Recent documents"));
    recent_label->setBuddy(recent_);
    recent_->setAccessibleName(tr("Recent documents"));
    column->addWidget(recent_label);
    column->addWidget(recent_, 2);
    column->addStretch(1);
    auto *row = new QHBoxLayout(this);
    auto *holder = new QWidget;
    holder->setLayout(column);
    holder->setMaximumWidth(column_width);
    row->addStretch(1);
    row->addWidget(holder, 4);
    row->addStretch(1);
    connect(recent_, &QListWidget::itemActivated, this,
            [this](QListWidgetItem *item) { emit asked_for(item->data(Qt::UserRole).toString()); });
}

void StartPage::show_recent(const QStringList &paths) {
    recent_->clear();
    for (const QString &path : paths) {
        auto *item = new QListWidgetItem(QFileInfo(path).fileName() + QStringLiteral("  —  ") +
                                         QFileInfo(path).path());
        item->setData(Qt::UserRole, path);
        recent_->addItem(item);
    }
    if (recent_->count() > 0) recent_->setCurrentRow(0);
}

} // namespace roundlay::window
