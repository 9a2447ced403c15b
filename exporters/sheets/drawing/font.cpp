#include "exporters/sheets/drawing/font.h"

#include <ft2build.h>
#include FT_FREETYPE_H

#include <algorithm>
#include <array>
#include <memory>
#include <stdexcept>
#include <unordered_map>

namespace roundlay::sheets {
namespace {

constexpr char32_t replacement_sign = 0xFFFD;

// Set letter by letter these would come out in the wrong order or the wrong shapes.
struct Range {
    char32_t first, last;
};
constexpr std::array<Range, 4> needs_shaping{{
    {0x0590, 0x08FF}, // Hebrew, Arabic, Syriac, Thaana, N'Ko and their supplements
    {0x0900, 0x109F}, // the scripts of India, Thai, Lao, Tibetan, Myanmar
    {0x1780, 0x18AF}, // Khmer, Mongolian
    {0xFB1D, 0xFEFC}, // presentation forms of Hebrew and Arabic
}};

bool is_shaped(char32_t letter) {
    return std::any_of(needs_shaping.begin(), needs_shaping.end(),
                       [&](Range r) { return r.first <= letter && letter <= r.last; });
}

constexpr char32_t plain_letters = 128; ///< of ASCII: nearly all that is written

struct Metrics {
    std::unordered_map<char32_t, Glyph> glyphs;
    std::array<Glyph, plain_letters> plain; ///< the same for the letters that are looked up most
    Glyph stand_in;
    double capital = 0;
};

void must(FT_Error error) {
    if (error != 0) throw std::logic_error("the font inside the program cannot be read");
}

Glyph measured(FT_Face face, FT_UInt index) {
    must(FT_Load_Glyph(face, index, FT_LOAD_NO_SCALE));
    const FT_Glyph_Metrics &m = face->glyph->metrics;
    const double em = face->units_per_EM;
    Glyph g;
    g.index = index;
    g.advance = static_cast<double>(m.horiAdvance) / em;
    g.left = static_cast<double>(m.horiBearingX) / em;
    g.top = static_cast<double>(m.horiBearingY) / em;
    g.right = m.width > 0 ? static_cast<double>(m.horiBearingX + m.width) / em : g.left - 1;
    g.bottom = static_cast<double>(m.horiBearingY - m.height) / em;
    return g;
}

const Glyph &glyph_in(const Metrics &all, char32_t letter) {
    if (is_shaped(letter)) return all.stand_in;
    const auto found = all.glyphs.find(letter);
    return found == all.glyphs.end() ? all.stand_in : found->second;
}

Metrics read_metrics(Font font) {
    FT_Library library = nullptr;
    must(FT_Init_FreeType(&library));
    const std::unique_ptr<FT_LibraryRec_, decltype(&FT_Done_FreeType)> keep(library, &FT_Done_FreeType);
    const auto bytes = font_file(font);
    FT_Face face = nullptr;
    must(FT_New_Memory_Face(library, bytes.data(), static_cast<FT_Long>(bytes.size()), 0, &face));

    Metrics all;
    FT_UInt index = 0;
    for (FT_ULong code = FT_Get_First_Char(face, &index); index != 0;
         code = FT_Get_Next_Char(face, code, &index))
        all.glyphs.emplace(static_cast<char32_t>(code), measured(face, index));
    all.stand_in = all.glyphs.at(replacement_sign);
    all.stand_in.stands_in = true;
    for (char32_t code = 0; code < plain_letters; ++code)
        all.plain[code] = glyph_in(all, code);
    all.capital = all.glyphs.at(U'H').top;
    return all;
}

const Metrics &metrics(Font font) {
    static const Metrics regular = read_metrics(Font::regular);
    static const Metrics bold = read_metrics(Font::bold);
    return font == Font::bold ? bold : regular;
}

} // namespace

const Glyph &glyph_of(Font font, char32_t letter) {
    const Metrics &all = metrics(font);
    return letter < plain_letters ? all.plain[letter] : glyph_in(all, letter);
}

double advance_of(Font font, std::string_view words, double before) {
    const Metrics &all = metrics(font);
    double sum = before;
    while (!words.empty()) {
        const char32_t letter = next_letter(words).code;
        sum += (letter < plain_letters ? all.plain[letter] : glyph_in(all, letter)).advance;
    }
    return sum;
}

double capital_height(Font font) {
    return metrics(font).capital;
}

std::vector<char32_t> letters_missing(std::string_view words) {
    std::vector<char32_t> missing;
    for (const Letter &letter : letters_of(words)) {
        const bool known = std::find(missing.begin(), missing.end(), letter.code) != missing.end();
        if (!known && glyph_of(Font::regular, letter.code).stands_in) missing.push_back(letter.code);
    }
    return missing;
}

} // namespace roundlay::sheets
