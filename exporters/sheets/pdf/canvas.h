// The one place of this room that sees cairo.
#pragma once

#include "exporters/sheets/drawing/font.h"
#include "exporters/sheets/drawing/sheet.h"

#include <cairo.h>

#include <memory>
#include <string>

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
    void draw(const Path &path);
    void draw(const Circle &circle);
    void draw(const Arc &arc);
    void draw(const Fill &fill);
    void draw(const Text &text);
    void draw(const Picture &picture);
    void draw(const Link &) {} ///< added when the file is finished
    void pen(Line line);
    double y(double up) const { return height_ - up; }

    cairo_t *context_;
    const CarriedFonts &fonts_;
    double height_ = 0; ///< of the current sheet
};

} // namespace roundlay::sheets::pdf
