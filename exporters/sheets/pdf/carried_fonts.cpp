#include "exporters/sheets/pdf/canvas.h"

#include <ft2build.h>
#include FT_FREETYPE_H

#include <cairo-ft.h>

#include <stdexcept>

namespace roundlay::sheets::pdf {
namespace {

struct OpenFont {
    FT_Library library = nullptr;
    FT_Face face = nullptr;

    explicit OpenFont(Font font) {
        const auto bytes = font_file(font);
        if (FT_Init_FreeType(&library) != 0 ||
            FT_New_Memory_Face(library, bytes.data(), static_cast<FT_Long>(bytes.size()), 0, &face) != 0)
            throw std::runtime_error("PDF: the font inside the program cannot be read");
    }
    ~OpenFont() {
        FT_Done_Face(face);
        FT_Done_FreeType(library);
    }
    OpenFont(const OpenFont &) = delete;
    OpenFont &operator=(const OpenFont &) = delete;
};

// cairo keeps fonts in a cache beyond the life of our own pointer: the FreeType face belongs to cairo's.
Held<cairo_font_face_t> make(Font font) {
    static const cairo_user_data_key_t key{};
    auto open = std::make_unique<OpenFont>(font);
    Held<cairo_font_face_t> held(cairo_ft_font_face_create_for_ft_face(open->face, FT_LOAD_NO_HINTING));
    const auto close = [](void *font_data) { delete static_cast<OpenFont *>(font_data); };
    if (cairo_font_face_set_user_data(held.get(), &key, open.get(), close) != CAIRO_STATUS_SUCCESS)
        throw std::runtime_error("PDF: no memory for the font");
    open.release();
    return held;
}

} // namespace

CarriedFonts::CarriedFonts() : regular_(make(Font::regular)), bold_(make(Font::bold)) {}

cairo_font_face_t *CarriedFonts::face(Font font) const {
    return font == Font::bold ? bold_.get() : regular_.get();
}

} // namespace roundlay::sheets::pdf
