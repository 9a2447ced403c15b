#include "tests/window/support/sight.h"

#include "modeler/window/panels/length_edit.h"

#include <QLabel>
#include <QScrollArea>
#include <algorithm>

namespace roundlay::window {

QList<LengthEdit *> seen_lengths(const QWidget &dialog) {
    QList<LengthEdit *> seen;
    for (LengthEdit *edit : dialog.findChildren<LengthEdit *>())
        if (edit->isVisible()) seen << edit;
    std::sort(seen.begin(), seen.end(),
              [](const LengthEdit *a, const LengthEdit *b) { return a->y() < b->y(); });
    return seen;
}

QString covered(const QWidget &form) {
    QList<QWidget *> parts;
    for (QWidget *part : form.findChildren<QWidget *>(Qt::FindDirectChildrenOnly))
        if (part->isVisible()) parts << part;
    for (const QWidget *a : parts) {
        const auto *label = qobject_cast<const QLabel *>(a);
        const int least = label != nullptr && label->wordWrap() ? label->heightForWidth(a->width())
                                                                : a->minimumSizeHint().height();
        if (a->height() < least)
            return QStringLiteral("%1 %2 is %3 high and needs %4")
                .arg(a->metaObject()->className(), a->accessibleName())
                .arg(a->height())
                .arg(least);
        for (const QWidget *b : parts)
            if (a != b && a->geometry().intersects(b->geometry()))
                return a->metaObject()->className() + QStringLiteral(" over ") + b->metaObject()->className();
    }
    return {};
}

bool in_sight(const QWidget &widget) {
    for (QWidget *at = widget.parentWidget(); at != nullptr; at = at->parentWidget())
        if (const auto *area = qobject_cast<QScrollArea *>(at))
            return area->viewport()->rect().contains(
                QRect(widget.mapTo(area->viewport(), QPoint()), widget.size()));
    return widget.isVisible();
}

} // namespace roundlay::window
