#include "modeler/window/panels/text_panel.h"

#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/typed_text.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/views/tints.h"

#include <QFontDatabase>
#include <QPainter>
#include <QTextBlock>

namespace roundlay::window {

class LineNumbers : public QWidget {
  public:
    explicit LineNumbers(TextPanel *panel) : QWidget(panel), panel_(panel) {}

  protected:
    void paintEvent(QPaintEvent *event) override { panel_->paint_numbers(event); }

  private:
    TextPanel *panel_;
};

TextPanel::TextPanel(Desk &desk, QWidget *parent)
    : QPlainTextEdit(parent), desk_(desk), numbers_(new LineNumbers(this)) {
    constexpr int pause_ms = 700;
    setFont(QFontDatabase::systemFont(QFontDatabase::FixedFont));
    setLineWrapMode(QPlainTextEdit::NoWrap);
    setTabChangesFocus(true);
    setUndoRedoEnabled(false); // the document's own history undoes
    setAccessibleName(tr("Text of the document"));
    pause_.setSingleShot(true);
    pause_.setInterval(pause_ms);
    connect(&pause_, &QTimer::timeout, this, &TextPanel::take);
    connect(this, &QPlainTextEdit::textChanged, this, [this] {
        if (showing_) return;
        typed_ = true;
        pause_.start();
    });
    connect(this, &QPlainTextEdit::updateRequest, this, [this](const QRect &, int by) {
        numbers_->scroll(0, by);
        numbers_->update();
    });
    connect(&desk_, &Desk::text_changed, this, &TextPanel::show_text);
    connect(&desk_, &Desk::state_changed, this, &TextPanel::mark_problems);
    place_numbers();
}

/// The letters as they stand there: the library's plain text has other blanks for some of them.
QString TextPanel::letters() const {
    return document()->toRawText().replace(QChar::ParagraphSeparator, u'\n');
}

/// Text that nobody sees is not laid out at every step of a drag.
void TextPanel::show_text() {
    if (isVisible())
        fill();
    else
        stale_ = true;
}

void TextPanel::fill() {
    stale_ = typed_ = false;
    stood_ = desk_.document().text();
    const QString now = text(stood_).replace(QStringLiteral("\r\n"), QStringLiteral("\n"));
    if (now == letters()) {
        shown_ = now;
        return;
    }
    showing_ = true;
    pause_.stop();
    const int line = textCursor().blockNumber();
    setPlainText(now);
    setTextCursor(QTextCursor(document()->findBlockByNumber(std::min(line, blockCount() - 1))));
    shown_ = letters();
    showing_ = false;
    place_numbers();
}

void TextPanel::take() {
    pause_.stop();
    if (desk_.is_open() && !desk_.dragging() && std::exchange(typed_, false))
        desk_.replace_text(tr("Edit text"), with_typed(stood_, shown_, letters()));
}

void TextPanel::focusOutEvent(QFocusEvent *event) {
    QPlainTextEdit::focusOutEvent(event);
    if (pause_.isActive()) take();
}

void TextPanel::showEvent(QShowEvent *event) {
    QPlainTextEdit::showEvent(event);
    if (stale_) fill();
    mark_problems();
}

void TextPanel::mark_problems() {
    if (!isVisible()) return;
    QList<QTextEdit::ExtraSelection> marks;
    for (const Problem &p : desk_.state()->read.problems) {
        if (p.place.line < 1) continue;
        QTextEdit::ExtraSelection mark;
        mark.format.setProperty(QTextFormat::FullWidthSelection, true);
        QColor colour = p.weight == Weight::error ? tints().error : tints().warning;
        colour.setAlphaF(0.25F);
        mark.format.setBackground(colour);
        mark.cursor = QTextCursor(document()->findBlockByNumber(p.place.line - 1));
        marks << mark;
    }
    setExtraSelections(marks);
}

void TextPanel::go_to(int line, int column) {
    if (stale_) fill();
    QTextCursor cursor(document()->findBlockByNumber(line - 1));
    cursor.movePosition(QTextCursor::Right, QTextCursor::MoveAnchor, std::max(column - 1, 0));
    setTextCursor(cursor);
    centerCursor();
    setFocus();
}

void TextPanel::place_numbers() {
    constexpr int beside = 12;
    const int wide = fontMetrics().horizontalAdvance(QString::number(std::max(blockCount(), 100))) + beside;
    setViewportMargins(wide, 0, 0, 0);
    const QRect area = contentsRect();
    numbers_->setGeometry(area.left(), area.top(), wide, area.height());
}

void TextPanel::resizeEvent(QResizeEvent *event) {
    QPlainTextEdit::resizeEvent(event);
    place_numbers();
}

void TextPanel::paint_numbers(QPaintEvent *event) {
    QPainter painter(numbers_);
    painter.fillRect(event->rect(), palette().color(QPalette::Window));
    painter.setPen(tints().faint);
    for (QTextBlock block = firstVisibleBlock(); block.isValid(); block = block.next()) {
        const QRectF place = blockBoundingGeometry(block).translated(contentOffset());
        if (place.top() > event->rect().bottom()) break;
        painter.drawText(QRectF(0, place.top(), numbers_->width() - 6, place.height()),
                         Qt::AlignRight | Qt::AlignVCenter, QString::number(block.blockNumber() + 1));
    }
}

} // namespace roundlay::window
