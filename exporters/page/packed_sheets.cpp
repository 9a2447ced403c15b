#include "exporters/page/parts.h"
#include "exporters/page/phrases.h"
#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/svg/base64.h"

#include <nlohmann/json.hpp>

#include <cmath>
#include <map>

namespace roundlay {

namespace {

using Json = nlohmann::ordered_json;
using namespace sheets;

constexpr double steps_in_mm = 10; // a tenth of a millimetre is thinner than the thinnest line

long long steps(double mm) {
    return std::llround(mm * steps_in_mm);
}

/// One path of SVG in whole steps: from one point to the next by how far it is.
class Strokes {
  public:
    explicit Strokes(double height) : height_(height) {}

    void add(const std::vector<Vec2> &points, bool closed) {
        long long x = 0, y = 0;
        for (std::size_t i = 0; i < points.size(); ++i) {
            const long long to_x = steps(points[i].x), to_y = steps(height_ - points[i].y);
            if (i == 0)
                text += "M" + std::to_string(to_x) + " " + std::to_string(to_y);
            else
                text += (i == 1 ? "l" : " ") + std::to_string(to_x - x) + " " + std::to_string(to_y - y);
            x = to_x, y = to_y;
        }
        if (closed) text += "z";
    }

    void add(const Circle &circle) {
        const long long r = steps(circle.radius);
        const std::string round = "a" + std::to_string(r) + " " + std::to_string(r) + " 0 1 0 ";
        text += "M" + std::to_string(steps(circle.centre.x) - r) + " " +
                std::to_string(steps(height_ - circle.centre.y));
        text += round + std::to_string(2 * r) + " 0" + round + std::to_string(-2 * r) + " 0z";
    }

    void add(const Arc &arc) {
        constexpr double chord = 6, whole = 360; // degrees
        const double sweep = std::fmod(std::fmod(arc.to - arc.from, whole) + whole, whole);
        const int chords = std::max(1, static_cast<int>(std::ceil(sweep / chord)));
        std::vector<Vec2> points;
        for (int i = 0; i <= chords; ++i) {
            const double a = (arc.from + sweep * i / chords) * std::numbers::pi / 180;
            points.push_back(arc.centre + arc.radius * Vec2{std::cos(a), std::sin(a)});
        }
        add(points, false);
    }

    std::string text;

  private:
    double height_;
};

/// One sheet. Lines of a kind that follow one another without an area between them are one path.
class Drawn {
  public:
    Drawn(const Sheet &sheet, Phrases &phrases) : sheet_(sheet), phrases_(phrases) {}

    Json json() {
        for (const Item &item : sheet_.items)
            std::visit([this](const auto &it) { draw(it); }, item);
        finish_lines();
        return {{"t", phrases_(sheet_.title)},
                {"w", steps(sheet_.size.width)},
                {"h", steps(sheet_.size.height)},
                {"d", areas_and_lines_},
                {"x", texts_}};
    }

  private:
    double y(double up) const { return sheet_.size.height - up; }

    Strokes &lines_of(Line line) { return lines_.try_emplace(line, sheet_.size.height).first->second; }

    void finish_lines() {
        for (const auto &[line, strokes] : lines_)
            areas_and_lines_.push_back(Json::array({static_cast<int>(line), strokes.text}));
        lines_.clear();
    }

    void draw(const Path &path) {
        if (path.points.size() > 1) lines_of(path.line).add(path.points, path.closed);
    }
    void draw(const Circle &circle) { lines_of(circle.line).add(circle); }
    void draw(const Arc &arc) { lines_of(arc.line).add(arc); }

    void draw(const Fill &fill) {
        finish_lines();
        Strokes rings(sheet_.size.height);
        for (const auto &ring : fill.rings)
            rings.add(ring, true);
        constexpr double percent = 100;
        areas_and_lines_.push_back(Json::array({"g", std::lround(fill.grey * percent), rings.text}));
    }

    void draw(const Text &text) {
        if (text.words.empty()) return;
        const Vec2 start = start_of(text);
        texts_.push_back(Json::array({phrases_(text.words), steps(start.x), steps(y(start.y)),
                                      steps(em_of(text.height, text.bold)),
                                      steps(text_width(text.words, text.height, text.bold)),
                                      text.bold ? 1 : 0, std::lround(-text.turn)}));
    }

    void draw(const Picture &picture) {
        finish_lines();
        areas_and_lines_.push_back(
            Json::array({"p", steps(picture.box.x0), steps(y(picture.box.y1)), steps(picture.box.width()),
                         steps(picture.box.height()), base64(picture.png)}));
    }

    void draw(const Link &) {} // the page shows no other sheets

    const Sheet &sheet_;
    Phrases &phrases_;
    std::map<Line, Strokes> lines_;
    Json areas_and_lines_ = Json::array(), texts_ = Json::array();
};

Json styles() {
    Json all = Json::array();
    for (const Line line : all_lines) {
        const LineStyle style = style_of(line);
        Json dashes = Json::array();
        for (const double dash : style.dashes)
            dashes.push_back(steps(dash));
        all.push_back(Json::array({style.width * steps_in_mm, dashes}));
    }
    return all;
}

} // namespace

std::string packed_sheets(const Yard &yard) {
    Phrases phrases;
    Json models = Json::array();
    for (const auto &sheets : yard.sheets) {
        Json of_model = Json::array();
        if (sheets)
            for (const Sheet &sheet : *sheets)
                of_model.push_back(Drawn(sheet, phrases).json());
        models.push_back(std::move(of_model));
    }
    const Json all{{"lines", styles()}, {"models", std::move(models)}, {"words", phrases.all()}};
    return all.dump(-1, ' ', false, Json::error_handler_t::replace);
}

} // namespace roundlay
