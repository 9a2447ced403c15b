#include "exporters/sheets/svg/svg.h"

#include "exporters/sheets/drawing/font.h"
#include "exporters/sheets/drawing/number.h"
#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/svg/base64.h"

#include <cmath>
#include <numbers>

namespace roundlay::sheets {
namespace {

std::string n(double value) {
    return number_text(value);
}

/// Text as XML takes it. Letters that XML forbids do not come out of letters_of.
std::string escaped(const std::string &words) {
    std::string out;
    for (const Letter &letter : letters_of(words)) {
        switch (letter.code) {
        case U'&':
            out += "&amp;";
            break;
        case U'<':
            out += "&lt;";
            break;
        case U'>':
            out += "&gt;";
            break;
        case U'"':
            out += "&quot;";
            break;
        case 0xFFFE:
        case 0xFFFF:
            out += "\xEF\xBF\xBD";
            break;
        default:
            out += letter.bytes;
        }
    }
    return out;
}

class Writer {
  public:
    explicit Writer(const Sheet &sheet) : sheet_(sheet) {}

    std::string write() {
        head();
        for (const Item &item : sheet_.items)
            std::visit([this](const auto &it) { draw(it); }, item);
        out_ += "</svg>\n";
        return std::move(out_);
    }

  private:
    double y(double up) const { return sheet_.size.height - up; }
    std::string point(Vec2 p) const { return n(p.x) + "," + n(y(p.y)); }

    void head() {
        const std::string w = n(sheet_.size.width), h = n(sheet_.size.height);
        out_ += "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";
        out_ += "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" "
                "width=\"" +
                w + "mm\" height=\"" + h + "mm\" viewBox=\"0 0 " + w + " " + h + "\">\n";
        out_ += "<title>" + escaped(sheet_.title) + "</title>\n<style>\n";
        out_ += "path,circle{fill:none;stroke:#000;stroke-linecap:round;stroke-linejoin:round}\n";
        for (const Line line : all_lines)
            out_ += rule(line);
        out_ += "text{font-family:'DejaVu Sans',sans-serif;fill:#000;stroke:none;white-space:pre}\n";
        out_ += "</style>\n<rect width=\"" + w + "\" height=\"" + h + "\" fill=\"#fff\"/>\n";
    }

    static std::string rule(Line line) {
        const LineStyle style = style_of(line);
        std::string rule = std::string(".") + name_of(line) + "{stroke-width:" + n(style.width);
        std::string dashes;
        for (const double dash : style.dashes)
            dashes += (dashes.empty() ? "" : " ") + n(dash);
        if (!dashes.empty()) rule += ";stroke-linecap:butt;stroke-dasharray:" + dashes;
        return rule + "}\n";
    }

    static std::string class_of(Line line) { return std::string(" class=\"") + name_of(line) + "\""; }

    void draw(const Path &path) {
        if (path.points.empty()) return;
        out_ += "<path" + class_of(path.line) + " d=\"M";
        for (std::size_t i = 0; i < path.points.size(); ++i)
            out_ += (i > 0 ? " " : "") + point(path.points[i]);
        out_ += path.closed ? "Z\"/>\n" : "\"/>\n";
    }

    void draw(const Circle &circle) {
        out_ += "<circle" + class_of(circle.line) + " cx=\"" + n(circle.centre.x) + "\" cy=\"" +
                n(y(circle.centre.y)) + "\" r=\"" + n(circle.radius) + "\"/>\n";
    }

    void draw(const Arc &arc) {
        const auto at = [&](double degrees) {
            const double a = degrees * std::numbers::pi / 180;
            return arc.centre + arc.radius * Vec2{std::cos(a), std::sin(a)};
        };
        const double sweep = std::fmod(std::fmod(arc.to - arc.from, 360) + 360, 360);
        out_ += "<path" + class_of(arc.line) + " d=\"M" + point(at(arc.from)) + " A" + n(arc.radius) + " " +
                n(arc.radius) + " 0 " + (sweep > 180 ? "1" : "0") + " 0 " + point(at(arc.to)) + "\"/>\n";
    }

    void draw(const Fill &fill) {
        const std::string grey = n(fill.grey * 100) + "%";
        out_ += "<path style=\"stroke:none;fill:rgb(" + grey + "," + grey + "," + grey +
                ");fill-rule:evenodd\" d=\"";
        for (const auto &ring : fill.rings) {
            out_ += "M";
            for (const Vec2 p : ring)
                out_ += point(p) + " ";
            out_ += "Z";
        }
        out_ += "\"/>\n";
    }

    void draw(const Text &text) {
        if (text.words.empty()) return;
        const Vec2 start = start_of(text);
        out_ += "<text x=\"" + n(start.x) + "\" y=\"" + n(y(start.y)) + "\" font-size=\"" +
                n(em_of(text.height, text.bold)) + "\" textLength=\"" +
                n(text_width(text.words, text.height, text.bold)) + "\" lengthAdjust=\"spacingAndGlyphs\"";
        if (text.bold) out_ += " font-weight=\"bold\"";
        if (text.turn != 0)
            out_ += " transform=\"rotate(" + n(-text.turn) + " " + n(start.x) + " " + n(y(start.y)) + ")\"";
        out_ += ">" + escaped(text.words) + "</text>\n";
    }

    void draw(const Picture &picture) {
        out_ += "<image x=\"" + n(picture.box.x0) + "\" y=\"" + n(y(picture.box.y1)) + "\" width=\"" +
                n(picture.box.width()) + "\" height=\"" + n(picture.box.height()) +
                "\" preserveAspectRatio=\"none\" xlink:href=\"data:image/png;base64," + base64(picture.png) +
                "\"><title>" + escaped(picture.described) + "</title></image>\n";
    }

    void draw(const Link &) {} // a sheet by itself has nothing to lead to

    const Sheet &sheet_;
    std::string out_;
};

} // namespace

std::string write_svg(const Sheet &sheet) {
    return Writer(sheet).write();
}

} // namespace roundlay::sheets
