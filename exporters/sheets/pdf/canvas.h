// The one place of this room that sees cairo.
#pragma once

#include "exporters/sheets/drawing/font.h"
#include "exporters/sheets/drawing/sheet.h"

#include <cairo.h>

#include <map>
#include <memory>
#include <string>
#include <variant>
#include <vector>

namespace roundlay::sheets::pdf {

struct Release {
    void operator()(cairo_surface_t *p) const { cairo_surface_destroy(p); }
    void operator()(cairo_t *p) const { cairo_destroy(p); }
    void operator()(cairo_font_face_t *p) const { cairo_font_face_destroy(p); }
    void operator()(cairo_font_options_t *p) const { cairo_font_options_destroy(p); }
};
template <typename T> using Held = std::unique_ptr<T, Release>;

/// The carried font as cairo knows it. Outlives every surface drawn with it.
class CarriedFonts {
  public:
    CarriedFonts();
    cairo_font_face_t *face(Font font) const;

  private:
    Held<cairo_font_face_t> regular_, bold_;
};

/// Draws items on pages. Paper millimetres, y upward, are turned into cairo's own here and nowhere else.
class Canvas {
  public:
    Canvas(cairo_t *context, const CarriedFonts &fonts);
    void page(const Sheet &sheet);

  private:
    void draw(const Path &path) { gather(path.line, path); }
    void draw(const Circle &circle) { gather(circle.line, circle); }
    void draw(const Arc &arc) { gather(arc.line, arc); }
    void draw(const Fill &fill);
    void draw(const Text &text);
    void draw(const Picture &picture);
    void draw(const Link &) {} ///< added when the file is finished

    using Stroke = std::variant<const Path *, const Circle *, const Arc *>;
    template <typename Kind> void gather(Line line, const Kind &kind) { gathered_[line].push_back(&kind); }
    void stroke_gathered();
    void stroke(Line line, const std::vector<Stroke> &strokes);
    void trace(const Path &path);
    void trace(const Circle &circle);
    void trace(const Arc &arc);
    void pen(Line line);
    double y(double up) const { return height_ - up; }

    cairo_t *context_;
    const CarriedFonts &fonts_;
    double height_ = 0; ///< of the current sheet

    /// What is still to be stroked, until something that would cover it. Lines and letters are all black, so
    /// that nobody sees which of them came first; and one stroke of many lines takes a small part of the time
    /// and of the room of as many strokes.
    std::map<Line, std::vector<Stroke>> gathered_;
};

} // namespace roundlay::sheets::pdf
