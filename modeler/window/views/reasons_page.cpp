#include "modeler/window/views/reasons_page.h"

#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/faults.h"

namespace roundlay::window {

ReasonsPage::ReasonsPage(const Desk &desk, QWidget *parent) : QTextBrowser(parent), desk_(desk) {
    constexpr double margin = 24; // pixels
    setOpenLinks(false);
    setFrameShape(QFrame::NoFrame);
    setAccessibleName(tr("Why this document cannot be built"));
    document()->setDocumentMargin(margin);
    connect(&desk, &Desk::state_changed, this, &ReasonsPage::refresh);
    connect(&desk, &Desk::began, this, &ReasonsPage::refresh);
    connect(this, &QTextBrowser::anchorClicked, this, [this](const QUrl &url) {
        const QStringList place = url.toString().split(u':');
        emit asked_for_text(place.value(1).toInt(), place.value(2).toInt());
    });
}

void ReasonsPage::refresh() {
    const auto reasons = desk_.is_open() ? reasons_against(*desk_.state()) : std::vector<Reason>();
    reasons_ = reasons.size();
    QString list;
    for (const Reason &reason : reasons) {
        const QString place = reason.line > 0
                                  ? QStringLiteral("<a href='line:%1:%2'>%3</a>: ")
                                        .arg(QString::number(reason.line), QString::number(reason.column),
                                             tr("line %1").arg(reason.line).toHtmlEscaped())
                                  : QString();
        const QString what =
            reason.place.isEmpty() ? reason.words : reason.place + QStringLiteral(": ") + reason.words;
        list += QStringLiteral("<li style='margin-bottom:6px'>%1%2</li>").arg(place, what.toHtmlEscaped());
    }
    setHtml(QStringLiteral("<h2>%1</h2><p>%2</p><ol>%3</ol>")
                .arg(tr("This document cannot be built yet").toHtmlEscaped(),
                     tr("Put right what stands here, in the Text panel or in another editor; each line leads "
                        "to its "
                        "place. The shell comes up by itself as soon as it can be built.")
                         .toHtmlEscaped(),
                     list));
}

} // namespace roundlay::window
