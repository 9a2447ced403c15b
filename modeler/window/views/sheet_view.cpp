#include "modeler/window/views/sheet_view.h"

#include "exporters/registry/paper.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/mishaps.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/views/legend.h"
#include "modeler/window/views/sheet_painter.h"
#include "modeler/window/views/stand_banner.h"
#include "modeler/window/views/tints.h"
#include "modeler/window/views/view_keys.h"

#include <QContextMenuEvent>
#include <QKeyEvent>
#include <QPainter>
#include <QPromise>
#include <QThreadPool>
#include <algorithm>
#include <cmath>

namespace roundlay::window {

std::vector<sheets::Sheet> sheets_of(const ExportJob &job, Index<Model> model) {
    return *cut_sheet_of(job, model);
}

SheetView::SheetView(Desk &desk, Selection &selection, QWidget *parent)
    : QWidget(parent), desk_(desk), selection_(selection) {
    setFocusPolicy(Qt::StrongFocus);
    setMinimumSize(160, 120);
    setAccessibleName(tr("Cut sheet"));
    setAccessibleDescription(tr("The cut sheet of the chosen log. Page Up and Page Down turn its pages."));
    new StandBanner(desk_, this, StandBanner::Shows::as_stood);
    connect(&desk_, &Desk::state_changed, this, &SheetView::refresh);
    connect(&selection_, &Selection::changed, this, &SheetView::refresh);
    connect(&drawing_, &QFutureWatcher<Drawn>::finished, this, &SheetView::take);
}

SheetView::~SheetView() {
    drawing_.waitForFinished();
}

/// Drawn aside; while one is being drawn only the newest wish is remembered.
void SheetView::refresh() {
    if (!isVisible()) return;
    const StatePtr state = desk_.standing();
    const auto chosen = state && selection_.chosen().kind == Chosen::Kind::piece
                            ? piece_tagged(state->job.layout, selection_.chosen().name)
                            : std::nullopt;
    if (!chosen) {
        pages_.clear();
        tag_.clear();
        again_ = is_drawing_; // what comes is nobody's any more
        return update();
    }
    again_ = is_drawing_;
    update();
    if (again_) return;
    is_drawing_ = true;
    auto promise = std::make_shared<QPromise<Drawn>>();
    drawing_.setFuture(promise->future());
    promise->start();
    QThreadPool::globalInstance()->start([promise, state, piece = *chosen, draw = draw_] {
        Drawn drawn;
        drawn.failure = what_it_throws(QStringLiteral("drawing a cut sheet"), [&] {
            const Piece &p = state->job.layout.pieces[piece];
            drawn.tag = text(p.tag);
            drawn.pages = draw(state->job, p.model);
        });
        promise->addResult(std::move(drawn));
        promise->finish();
    });
}

void SheetView::take() {
    is_drawing_ = false;
    if (drawing_.future().resultCount() == 0) return;
    Drawn drawn = drawing_.result();
    if (drawn.tag != tag_) page_ = 0;
    tag_ = drawn.tag;
    failed_ = drawn.failure.has_value();
    if (failed_) emit failed(*drawn.failure);
    pages_ = std::move(drawn.pages);
    page_ = std::clamp(page_, 0, std::max(pages() - 1, 0));
    update();
    if (again_) refresh();
}

QString SheetView::words() const {
    if (!pages_.empty()) return {};
    const Chosen &chosen = selection_.chosen();
    if (failed_ && !is_drawing_ && text(chosen.name) == tag_)
        return tr("The cut sheet of %1 could not be drawn.").arg(tag_);
    return is_drawing_ && chosen.kind == Chosen::Kind::piece
               ? tr("Drawing the cut sheet of %1").arg(text(chosen.name))
               : tr("Choose a log to see its cut sheet.");
}

void SheetView::turn_page(int by) {
    page_ = std::clamp(page_ + by, 0, std::max(pages() - 1, 0));
    update();
}

/// Above the line that tells which of several sheets it is.
QRectF SheetView::room_of_sheet() const {
    const int line = pages() > 1 ? fontMetrics().height() + 2 : 0;
    return QRectF(rect()).adjusted(0, 0, 0, -line);
}

void SheetView::paint_page(QPainter &painter, const QRectF &room) {
    constexpr double margin = 12;
    const sheets::Sheet &sheet = pages_[static_cast<std::size_t>(page_)];
    const double fit = std::min((room.width() - 2 * margin) / sheet.size.width,
                                (room.height() - 2 * margin) / sheet.size.height);
    const double scale = std::max(fit * zoom_, 0.01);
    painter.save();
    painter.setClipRect(room);
    painter.translate(room.center() + offset_ - scale / 2 * QPointF(sheet.size.width, sheet.size.height));
    painter.scale(scale, scale);
    painter.fillRect(QRectF(0, 0, sheet.size.width, sheet.size.height), Qt::white);
    paint_sheet(painter, sheet);
    painter.restore();
}

void SheetView::paintEvent(QPaintEvent *) {
    constexpr int beside = 12;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), palette().color(QPalette::Window).darker(tints().dark ? 125 : 106));
    if (pages_.empty()) {
        painter.setPen(tints().faint);
        painter.drawText(rect(), Qt::AlignCenter | Qt::TextWordWrap, words());
        return;
    }
    paint_page(painter, room_of_sheet());
    if (desk_.standing_is_old()) wash(painter, rect());
    if (pages() < 2) return;
    painter.setPen(tints().ink);
    painter.drawText(rect().adjusted(beside, 0, -beside, -1), Qt::AlignRight | Qt::AlignBottom,
                     tr("Sheet %1 of %2: Page Up, Page Down").arg(page_ + 1).arg(pages()));
}

void SheetView::zoom(double factor, QPointF at) {
    constexpr double most = 30;
    const double next = std::clamp(zoom_ * factor, 1.0, most);
    const QPointF from_middle = at - room_of_sheet().center() - offset_;
    offset_ -= from_middle * (next / zoom_ - 1);
    zoom_ = next;
    if (zoom_ <= 1) offset_ = {};
    update();
}

void SheetView::wheelEvent(QWheelEvent *event) {
    constexpr double per_notch = 1.2, notch = 120;
    zoom(std::pow(per_notch, event->angleDelta().y() / notch), event->position());
}

void SheetView::mousePressEvent(QMouseEvent *event) {
    last_ = event->position();
}

void SheetView::mouseMoveEvent(QMouseEvent *event) {
    offset_ += event->position() - last_;
    last_ = event->position();
    update();
}

void SheetView::mouseDoubleClickEvent(QMouseEvent *) {
    show_whole_sheet();
}

void SheetView::show_whole_sheet() {
    zoom_ = 1;
    offset_ = {};
    update();
}

/// Of the log whose sheet is seen; by mouse and by key alike.
void SheetView::contextMenuEvent(QContextMenuEvent *event) {
    const bool key = event->reason() == QContextMenuEvent::Keyboard;
    emit asked_for_menu(selection_.chosen(), key ? mapToGlobal(rect().center()) : event->globalPos());
    event->accept();
}

void SheetView::keyPressEvent(QKeyEvent *event) {
    if (is_menu_key(*event)) return emit asked_for_menu(selection_.chosen(), mapToGlobal(rect().center()));
    if (event->key() == Qt::Key_PageDown) return turn_page(1);
    if (event->key() == Qt::Key_PageUp) return turn_page(-1);
    const auto zoom_in = [this](double factor) { zoom(factor, QRectF(rect()).center()); };
    if (!zoom_by_key(*event, zoom_in, [this] { show_whole_sheet(); })) QWidget::keyPressEvent(event);
}

void SheetView::showEvent(QShowEvent *event) {
    QWidget::showEvent(event);
    refresh();
}

} // namespace roundlay::window
