#include "exporters/sheets/pdf/canvas.h"

#include "exporters/sheets/drawing/text.h"

#include <algorithm>
#include <numbers>
#include <vector>

namespace roundlay::sheets::pdf {
namespace {

constexpr double radians(double degrees) {
    return degrees * std::numbers::pi / 180;
}

struct Run {
    std::string utf8;
    std::vector<cairo_glyph_t> glyphs;
    std::vector<cairo_text_cluster_t> clusters;
};

/// One glyph for each letter and no ligature: so every letter is found by whoever searches the paper.
Run run_of(const Text &text) {
    const Font font = text.bold ? Font::bold : Font::regular;
    const double em = em_of(text.height, text.bold);
    Run run;
    double x = 0;
    for (const Letter &letter : letters_of(text.words)) {
        const Glyph &glyph = glyph_of(font, letter.code);
        run.utf8 += letter.bytes;
        run.glyphs.push_back({glyph.index, x, 0});
        run.clusters.push_back({static_cast<int>(letter.bytes.size()), 1});
        x += glyph.advance * em;
    }
    return run;
}

struct PngSource {
    const std::string &bytes;
    std::size_t read = 0;
};

cairo_status_t read_png(void *closure, unsigned char *to, unsigned int count) {
    auto &source = *static_cast<PngSource *>(closure);
    if (source.read + count > source.bytes.size()) return CAIRO_STATUS_READ_ERROR;
    std::copy_n(source.bytes.begin() + static_cast<std::ptrdiff_t>(source.read), count, to);
    source.read += count;
    return CAIRO_STATUS_SUCCESS;
}

} // namespace

Canvas::Canvas(cairo_t *context, const CarriedFonts &fonts) : context_(context), fonts_(fonts) {
    cairo_set_line_cap(context_, CAIRO_LINE_CAP_ROUND);
    cairo_set_line_join(context_, CAIRO_LINE_JOIN_ROUND);
    const Held<cairo_font_options_t> options(cairo_font_options_create());
    cairo_font_options_set_hint_style(options.get(), CAIRO_HINT_STYLE_NONE);
    cairo_font_options_set_hint_metrics(options.get(), CAIRO_HINT_METRICS_OFF);
    cairo_set_font_options(context_, options.get());
}

void Canvas::page(const Sheet &sheet) {
    height_ = sheet.size.height;
    for (const Item &item : sheet.items)
        std::visit([this](const auto &it) { draw(it); }, item);
    stroke_gathered();
}

void Canvas::pen(Line line) {
    const LineStyle style = style_of(line);
    cairo_set_source_rgb(context_, 0, 0, 0);
    cairo_set_line_width(context_, style.width);
    cairo_set_line_cap(context_, style.dashes.empty() ? CAIRO_LINE_CAP_ROUND : CAIRO_LINE_CAP_BUTT);
    cairo_set_dash(context_, style.dashes.data(), static_cast<int>(style.dashes.size()), 0);
}

void Canvas::stroke_gathered() {
    for (const auto &[line, strokes] : gathered_)
        stroke(line, strokes);
    gathered_.clear();
}

void Canvas::stroke(Line line, const std::vector<Stroke> &strokes) {
    constexpr std::size_t most_at_once = 500; // small printers have little room for one stroke
    pen(line);
    std::size_t traced = 0;
    for (const Stroke &one : strokes) {
        std::visit([this](const auto *it) { trace(*it); }, one);
        if (++traced % most_at_once == 0) cairo_stroke(context_);
    }
    cairo_stroke(context_);
}

void Canvas::trace(const Path &path) {
    cairo_new_sub_path(context_);
    for (const Vec2 p : path.points)
        cairo_line_to(context_, p.x, y(p.y));
    if (path.closed) cairo_close_path(context_);
}

void Canvas::trace(const Circle &circle) {
    cairo_new_sub_path(context_);
    cairo_arc(context_, circle.centre.x, y(circle.centre.y), circle.radius, 0, 2 * std::numbers::pi);
    cairo_close_path(context_);
}

void Canvas::trace(const Arc &arc) {
    cairo_new_sub_path(context_);
    cairo_arc_negative(context_, arc.centre.x, y(arc.centre.y), arc.radius, -radians(arc.from),
                       -radians(arc.to));
}

void Canvas::draw(const Fill &fill) {
    stroke_gathered();
    cairo_set_source_rgb(context_, fill.grey, fill.grey, fill.grey);
    for (const auto &ring : fill.rings) {
        cairo_new_sub_path(context_);
        for (const Vec2 p : ring)
            cairo_line_to(context_, p.x, y(p.y));
        cairo_close_path(context_);
    }
    cairo_set_fill_rule(context_, CAIRO_FILL_RULE_EVEN_ODD);
    cairo_fill(context_);
}

void Canvas::draw(const Text &text) {
    const Run run = run_of(text);
    if (run.glyphs.empty()) return;
    const Vec2 start = start_of(text);
    cairo_save(context_);
    cairo_set_source_rgb(context_, 0, 0, 0);
    cairo_translate(context_, start.x, y(start.y));
    cairo_rotate(context_, -radians(text.turn));
    cairo_set_font_face(context_, fonts_.face(text.bold ? Font::bold : Font::regular));
    cairo_set_font_size(context_, em_of(text.height, text.bold));
    cairo_show_text_glyphs(context_, run.utf8.data(), static_cast<int>(run.utf8.size()), run.glyphs.data(),
                           static_cast<int>(run.glyphs.size()), run.clusters.data(),
                           static_cast<int>(run.clusters.size()), cairo_text_cluster_flags_t{});
    cairo_restore(context_);
}

void Canvas::draw(const Picture &picture) {
    stroke_gathered();
    PngSource source{picture.png};
    const Held<cairo_surface_t> image(cairo_image_surface_create_from_png_stream(&read_png, &source));
    if (cairo_surface_status(image.get()) != CAIRO_STATUS_SUCCESS) return;
    cairo_save(context_);
    cairo_translate(context_, picture.box.x0, y(picture.box.y1));
    cairo_scale(context_, picture.box.width() / cairo_image_surface_get_width(image.get()),
                picture.box.height() / cairo_image_surface_get_height(image.get()));
    cairo_set_source_surface(context_, image.get(), 0, 0);
    cairo_paint(context_);
    cairo_restore(context_);
}

} // namespace roundlay::sheets::pdf
