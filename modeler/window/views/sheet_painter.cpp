#include "modeler/window/views/sheet_painter.h"

#include "exporters/sheets/drawing/font.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/views/ring_path.h"

#include <QFontDatabase>
#include <QPainter>
#include <QPainterPath>

namespace roundlay::window {

namespace {

/// Fonts smaller than a pixel are not laid out well: letters are set at this size and scaled to millimetres.
constexpr double setting_size = 100;

/// The sheets' own lettering, whatever the machine has.
const QString &family() {
    static const QString name = [] {
        QString found;
        for (const sheets::Font font : {sheets::Font::regular, sheets::Font::bold}) {
            const auto bytes = sheets::font_file(font);
            const int id = QFontDatabase::addApplicationFontFromData(QByteArray(
                reinterpret_cast<const char *>(bytes.data()), static_cast<qsizetype>(bytes.size())));
            if (const auto names = QFontDatabase::applicationFontFamilies(id);
                found.isEmpty() && !names.isEmpty())
                found = names.front();
        }
        return found;
    }();
    return name;
}

class SheetPainter {
  public:
    SheetPainter(QPainter &painter, double height) : painter_(painter), height_(height) {}

    void operator()(const sheets::Path &path) {
        QPolygonF line;
        for (const Vec2 &p : path.points)
            line << at(p);
        stroke(path.line);
        if (path.closed)
            painter_.drawPolygon(line);
        else
            painter_.drawPolyline(line);
    }

    void operator()(const sheets::Circle &c) {
        stroke(c.line);
        painter_.drawEllipse(at(c.centre), c.radius, c.radius);
    }

    void operator()(const sheets::Arc &a) {
        constexpr double parts = 16; // of a degree, as the library counts
        stroke(a.line);
        const QPointF middle = at(a.centre);
        const QRectF box(middle.x() - a.radius, middle.y() - a.radius, 2 * a.radius, 2 * a.radius);
        const double sweep = a.to < a.from ? a.to - a.from + 360 : a.to - a.from;
        painter_.drawArc(box, static_cast<int>(a.from * parts), static_cast<int>(sweep * parts));
    }

    void operator()(const sheets::Fill &fill) {
        const auto grey = static_cast<float>(fill.grey);
        painter_.fillPath(ring_path(fill.rings, [this](Vec2 p) { return at(p); }),
                          QColor::fromRgbF(grey, grey, grey));
    }

    void operator()(const sheets::Text &t) {
        QFont font(family());
        font.setPixelSize(static_cast<int>(setting_size));
        font.setBold(t.bold);
        const QFontMetricsF metrics(font);
        const double capital = sheets::capital_height(t.bold ? sheets::Font::bold : sheets::Font::regular);
        const double scale = t.height / (capital * setting_size);
        const QString words = text(t.words);
        const double width = metrics.horizontalAdvance(words), up = capital * setting_size;
        const double dx = t.across == sheets::Across::left     ? 0
                          : t.across == sheets::Across::middle ? -width / 2
                                                               : -width;
        const double dy = t.upright == sheets::Upright::baseline ? 0
                          : t.upright == sheets::Upright::middle ? up / 2
                                                                 : up;
        painter_.save();
        painter_.translate(at(t.at));
        painter_.rotate(-t.turn);
        painter_.scale(scale, scale);
        painter_.setPen(Qt::black);
        painter_.setFont(font);
        painter_.drawText(QPointF(dx, dy), words);
        painter_.restore();
    }

    void operator()(const sheets::Picture &picture) {
        const QImage image = QImage::fromData(reinterpret_cast<const uchar *>(picture.png.data()),
                                              static_cast<int>(picture.png.size()));
        const sheets::Rect &box = picture.box;
        painter_.drawImage(QRectF(at({box.x0, box.y1}), at({box.x1, box.y0})), image);
    }

    void operator()(const sheets::Link &) {} // nothing to be seen

  private:
    QPointF at(Vec2 p) const { return {p.x, height_ - p.y}; }

    void stroke(sheets::Line line) {
        const sheets::LineStyle style = sheets::style_of(line);
        QPen pen(Qt::black, style.width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin);
        if (!style.dashes.empty()) {
            QList<qreal> dashes; // in widths of the pen
            for (const double part : style.dashes)
                dashes << part / style.width;
            pen.setDashPattern(dashes);
        }
        painter_.setPen(pen);
        painter_.setBrush(Qt::NoBrush);
    }

    QPainter &painter_;
    double height_;
};

} // namespace

void paint_sheet(QPainter &painter, const sheets::Sheet &sheet) {
    SheetPainter paint(painter, sheet.size.height);
    for (const sheets::Item &item : sheet.items)
        std::visit(paint, item);
}

} // namespace roundlay::window
