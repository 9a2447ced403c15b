#include "modeler/window/desk/words.h"
#include "modeler/window/record/faces_view.h"
#include "modeler/window/record/found_words.h"
#include "modeler/window/record/note_edit.h"
#include "modeler/window/views/record_marks.h"
#include "modeler/window/views/tints.h"

#include <QPainter>
#include <algorithm>

namespace roundlay::window {

void FacesView::paintEvent(QPaintEvent *) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), tints().paper);
    painter.setPen(tints().ink);
    if (const QString why = why_not(); !why.isEmpty()) {
        painter.drawText(rect().adjusted(12, 8, -12, -8), Qt::AlignCenter | Qt::TextWordWrap, why);
        return;
    }
    const QRectF first = strip(FoundFace::outside);
    const QRectF head(first.left(), 2, first.width(), first.top() - 4);
    const auto named = [&](int end) {
        const QString name = text(log_->ends[end].name);
        const bool zero = from_right() == (end == 1);
        return zero ? tr("%1, measured from here").arg(name) : name;
    };
    painter.drawText(head, Qt::AlignLeft | Qt::AlignVCenter, named(0));
    painter.drawText(head, Qt::AlignRight | Qt::AlignVCenter, named(1));
    QFont bold = painter.font();
    bold.setBold(true);
    const QFont plain = painter.font();
    painter.setFont(bold);
    painter.drawText(head, Qt::AlignCenter, text(log_->found.tag));
    painter.setFont(plain);
    for (const FoundFace face : all_faces)
        paint_face(painter, face);
}

void FacesView::paint_face(QPainter &painter, FoundFace face) const {
    const QRectF box = strip(face);
    painter.setPen(QPen(tints().wood_edge, 1));
    painter.setBrush(tints().wood);
    painter.drawRect(box);
    painter.setPen(tints().ink);
    painter.drawText(QRectF(2, box.top(), box.left() - 8, box.height()), Qt::AlignRight | Qt::AlignVCenter,
                     face_word(face));
    for (const ConditionZone &zone : log_->found.zones)
        paint_zone(painter, zone, face);
    if (!drawn_ || drawn_->face != face) return;
    const double a = place_of(face, drawn_->from).x(), b = place_of(face, drawn_->to).x();
    painter.setPen(QPen(tints().accent, 2, Qt::DashLine));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(std::min(a, b), box.top(), std::abs(b - a), box.height()));
}

/// In a dashed outline where nobody said on which face it is.
void FacesView::paint_zone(QPainter &painter, const ConditionZone &zone, FoundFace face) const {
    const QRectF box = zone_rect(zone, face);
    if (box.isEmpty()) return;
    const RecordMark mark = soundness_mark(zone.what);
    painter.setPen(Qt::NoPen);
    painter.setBrush(mark.fill);
    painter.drawRect(box);
    painter.setPen(QPen(tints().ink, 1, zone.faces.empty() ? Qt::DashLine : Qt::SolidLine));
    painter.setBrush(QBrush(mark.lines, mark.pattern));
    painter.drawRect(box);
    QString words = soundness_word(zone.what);
    if (zone.depth.is_taken()) words += QStringLiteral(", ") + text(zone.depth.written);
    if (!sign_of(zone.from).isEmpty()) words.prepend(sign_of(zone.from) + u' ');
    const QRectF size = painter.fontMetrics().boundingRect(words).adjusted(-3, -1, 3, 1);
    QRectF paper(QPointF(), size.size());
    paper.moveCenter(box.center());
    paper.moveLeft(std::clamp(paper.left(), strip(face).left(),
                              std::max(strip(face).left(), strip(face).right() - paper.width())));
    QColor ground = tints().paper;
    ground.setAlphaF(0.88F);
    painter.fillRect(paper, ground);
    painter.setPen(tints().ink);
    painter.drawText(paper, Qt::AlignCenter, words);
}

} // namespace roundlay::window
