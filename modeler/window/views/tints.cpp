#include "modeler/window/views/tints.h"

#include <QApplication>
#include <QPainter>
#include <QProxyStyle>
#include <QStyleFactory>
#include <QStyleOption>

namespace roundlay::window {

namespace {

const Tints light{{"#fbf9f4"}, {"#24302b"}, {"#7d857f"}, {"#e6e1d5"}, {"#e2c898"},
                  {"#8a6a3f"}, {"#c79f68"}, {"#d9a66a"}, {"#f3f6f4"}, {"#0f7a63"},
                  {"#cfe9e0"}, {"#c9761a"}, {"#b3322b"}, {"#3f7d3a"}, false};
const Tints dark{{"#1e2422"}, {"#e5e8e2"}, {"#8f9892"}, {"#2f3734"}, {"#8d7247"},
                 {"#d8bb85"}, {"#6f5734"}, {"#a5763c"}, {"#28302d"}, {"#4fc3a1"},
                 {"#24463c"}, {"#e39a45"}, {"#e2736b"}, {"#7fbf78"}, true};

bool wears_dark = false;
bool system_is_dark = false;
bool system_known = false;

QPalette palette_of(const Tints &t) {
    const QColor base = t.dark ? QColor("#232a28") : QColor("#ffffff");
    const QColor window = t.dark ? QColor("#2a322f") : QColor("#f1eee6");
    QPalette p(t.dark ? QColor("#343e3a") : QColor("#e7e2d6"), window);
    p.setColor(QPalette::WindowText, t.ink);
    p.setColor(QPalette::Text, t.ink);
    p.setColor(QPalette::ButtonText, t.ink);
    p.setColor(QPalette::Base, base);
    p.setColor(QPalette::AlternateBase, t.dark ? QColor("#29312e") : QColor("#f7f4ed"));
    p.setColor(QPalette::ToolTipBase, t.paper);
    p.setColor(QPalette::ToolTipText, t.ink);
    p.setColor(QPalette::PlaceholderText, t.faint);
    p.setColor(QPalette::Highlight, t.accent);
    p.setColor(QPalette::HighlightedText, t.dark ? QColor("#10201b") : QColor("#ffffff"));
    p.setColor(QPalette::Link, t.accent);
    p.setColor(QPalette::LinkVisited, t.accent);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        p.setColor(QPalette::Disabled, role, t.faint);
    p.setColor(QPalette::Disabled, QPalette::Base, window); // a field that takes nothing is no white paper
    return p;
}

/// The library draws the edges of its boxes darker than the ground, which nobody sees on a dark one.
class Edged : public QProxyStyle {
  public:
    Edged() : QProxyStyle(QStyleFactory::create(QStringLiteral("Fusion"))) {}

    void drawPrimitive(PrimitiveElement element, const QStyleOption *option, QPainter *painter,
                       const QWidget *widget) const override {
        QProxyStyle::drawPrimitive(element, option, painter, widget);
        const bool box = element == PE_IndicatorCheckBox, round = element == PE_IndicatorRadioButton;
        if (!wears_dark || (!box && !round)) return;
        painter->save();
        painter->setPen(tints().faint);
        painter->setBrush(Qt::NoBrush);
        if (round) painter->setRenderHint(QPainter::Antialiasing);
        const QRectF edge = QRectF(option->rect).adjusted(0.5, 0.5, -0.5, -0.5);
        box ? painter->drawRect(edge) : painter->drawEllipse(edge);
        painter->restore();
    }
};

} // namespace

const Tints &tints() {
    return wears_dark ? dark : light;
}

void wear(Appearance appearance) {
    constexpr int middle = 128;
    if (!system_known) system_is_dark = QApplication::palette().color(QPalette::Window).lightness() < middle;
    system_known = true;
    wears_dark = appearance == Appearance::dark || (appearance == Appearance::system && system_is_dark);
    QApplication::setStyle(new Edged);
    QApplication::setPalette(palette_of(tints()));
}

} // namespace roundlay::window
