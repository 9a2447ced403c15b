#include "modeler/window/frame/start_page.h"

#include "kernel/document/edit.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/layout.h"
#include "kernel/shell/shapes.h"
#include "modeler/window/panels/scrolled.h"

#include <QCommandLinkButton>
#include <QFile>
#include <QFileInfo>
#include <QIcon>
#include <QLabel>
#include <QListWidget>
#include <QPainter>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>
#include <functional>

namespace roundlay::window {

std::vector<Demo> demos() {
    const QString plain = StartPage::tr("A demo to look at and to change");
    return {
        {StartPage::tr("One room of five rounds, for teaching"), QStringLiteral(":/demos/one-room.roundlay"),
         plain},
        {StartPage::tr("L-shaped house of thirteen rounds"), QStringLiteral(":/demos/ell-house.roundlay"),
         plain},
        {StartPage::tr("Long house with an inset porch"), QStringLiteral(":/demos/long-house.roundlay"),
         plain},
        {StartPage::tr("Cabin of round logs with a partition"),
         QStringLiteral(":/demos/round-cabin.roundlay"), plain},
        {StartPage::tr("Old house that stands, with its record"),
         QStringLiteral(":/demos/old-house.roundlay"),
         StartPage::tr("A demo; to record your own, begin a new shell, then Shell › Record an old house")}};
}

namespace {

constexpr int link_icon = 28; // pixels

/// Twice as large as it is shown, for screens of many pixels.
QIcon drawn_icon(const std::function<void(QPainter &)> &draw) {
    QPixmap picture(2 * link_icon, 2 * link_icon);
    picture.fill(Qt::transparent);
    QPainter painter(&picture);
    painter.setRenderHint(QPainter::Antialiasing);
    draw(painter);
    painter.end();
    return picture;
}

QPen pen(double width) {
    return {QColor("#0f7a63"), width, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin};
}

/// The plan's outline, as a sign of what is behind a link.
QIcon outline_icon(const std::vector<Wall> &walls) {
    constexpr double margin = 4;
    Shell shell;
    shell.walls = walls;
    QPolygonF outline;
    for (const WallPlace &w : lay_out(shell).walls)
        outline << QPointF(w.frame.origin.x, -w.frame.origin.y);
    const QRectF box = outline.boundingRect();
    const double most = std::max({box.width(), box.height(), 1.0});
    const double scale = (2 * link_icon - 2 * margin) / most;
    return drawn_icon([&](QPainter &painter) {
        painter.translate(link_icon, link_icon);
        painter.scale(scale, scale);
        painter.translate(-box.center());
        painter.setPen(pen(5 / scale));
        painter.setBrush(QColor("#e2c898"));
        painter.drawPolygon(outline);
    });
}

/// A sheet with a folded corner.
QIcon sheet_icon() {
    return drawn_icon([](QPainter &painter) {
        painter.setPen(pen(5));
        painter.setBrush(QColor("#fbf9f4"));
        painter.drawPolygon(QPolygonF({{12, 6}, {34, 6}, {46, 18}, {46, 50}, {12, 50}}));
        painter.drawPolyline(QPolygonF({{34, 6}, {34, 18}, {46, 18}}));
    });
}

/// A figure that is not closed yet, with its corners.
QIcon pencil_icon() {
    return drawn_icon([](QPainter &painter) {
        painter.setPen(pen(5));
        const QPolygonF corners({{34, 10}, {8, 10}, {8, 46}, {46, 46}, {46, 28}});
        painter.drawPolyline(corners);
        painter.setPen(Qt::NoPen);
        painter.setBrush(QColor("#c9761a"));
        for (const QPointF &corner : corners)
            painter.drawEllipse(corner, 5, 5);
    });
}

QIcon demo_icon(const Demo &demo) {
    QFile file(demo.file);
    if (!file.open(QIODevice::ReadOnly)) return {};
    const ReadResult read = Document(file.readAll().toStdString(), {}).read();
    return read.shell ? outline_icon(read.shell->walls) : QIcon();
}

QCommandLinkButton *link_button(const QIcon &icon, const QString &words, const QString &more) {
    auto *button = new QCommandLinkButton(words, more);
    button->setAccessibleName(words);
    button->setIcon(icon);
    button->setIconSize({link_icon, link_icon});
    button->setAutoDefault(true); // Enter does what Space does
    return button;
}

/// Asks for a few lines, and takes what room there is.
class RecentList : public QListWidget {
  public:
    QSize sizeHint() const override { return {QListWidget::sizeHint().width(), minimumHeight()}; }
};

} // namespace

StartPage::StartPage(QWidget *parent)
    : QWidget(parent), recent_label_(new QLabel(tr("&Recent documents"))), recent_(new RecentList) {
    constexpr int column_width = 560;
    auto *holder = new QWidget;
    auto *column = new QVBoxLayout(holder);
    column->addStretch(1);
    add_title(*column);
    add_links(*column);
    add_recent(*column);
    column->addStretch(1);
    auto *scroll = scrolled(holder); // also behind a document: as high as its links no window need be
    scroll->setMaximumWidth(column_width);
    auto *row = new QHBoxLayout(this);
    row->addStretch(1);
    row->addWidget(scroll, 4);
    row->addStretch(1);
}

void StartPage::add_title(QVBoxLayout &column) {
    constexpr int icon_size = 56;
    auto *sign = new QLabel;
    sign->setPixmap(QIcon(QStringLiteral(":/roundlay.svg")).pixmap(icon_size, icon_size));
    auto *title = new QLabel(tr("A shell of hewn logs, from the plan to the last peg"));
    QFont large = title->font();
    large.setPointSizeF(large.pointSizeF() * 1.5);
    title->setFont(large);
    title->setWordWrap(true);
    column.addWidget(sign);
    column.addWidget(title);
}

void StartPage::add_links(QVBoxLayout &column) {
    const auto link = [&](const QIcon &icon, const QString &words, const QString &more) {
        auto *button = link_button(icon, words, more);
        column.addWidget(button);
        return button;
    };
    connect(link(outline_icon(rectangle_plan(Length::mm(4), Length::mm(3))), tr("New shell"),
                 tr("From a shape, with sizes in metres or in feet and inches")),
            &QCommandLinkButton::clicked, this, [this] { emit asked_for_new(false); });
    connect(link(pencil_icon(), tr("Draw a new shell"),
                 tr("Corner by corner on a sheet, with lengths typed where they matter")),
            &QCommandLinkButton::clicked, this, [this] { emit asked_for_new(true); });
    connect(link(sheet_icon(), tr("Open a document"), tr("Or drag one into the window")),
            &QCommandLinkButton::clicked, this, &StartPage::asked_for_open);
    int number = 0;
    for (const Demo &demo : demos())
        connect(link(demo_icon(demo), demo.name, demo.more), &QCommandLinkButton::clicked, this,
                [this, n = number++] { emit asked_for_demo(n); });
}

void StartPage::add_recent(QVBoxLayout &column) {
    constexpr int least = 48;
    recent_label_->setBuddy(recent_);
    recent_->setAccessibleName(tr("Recent documents"));
    recent_->setMinimumHeight(least);
    column.addWidget(recent_label_);
    column.addWidget(recent_, 2);
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
    for (QWidget *w : {static_cast<QWidget *>(recent_label_), static_cast<QWidget *>(recent_)})
        w->setVisible(recent_->count() > 0);
}

} // namespace roundlay::window
