// The program's own lettering: DejaVu Sans, carried inside the program, so that a machine without fonts
// still gives right paper. All measures in parts of the em.
#pragma once

#include <span>
#include <string_view>
#include <vector>

namespace roundlay::sheets {

enum class Font { regular, bold };

/// The font file as it was when the program was built.
std::span<const unsigned char> font_file(Font font);

struct Glyph {
    unsigned index = 0;                              ///< in the font file
    double advance = 0;                              ///< to the next letter
    double left = 0, bottom = 0, right = 0, top = 0; ///< ink; left > right where there is none (a space)
    bool stands_in = false; ///< the font lacks the letter: this is the replacement sign
};

/// Letters that the font lacks, and those of scripts that must be shaped or run from right to left,
/// come back as the replacement sign U+FFFD.
const Glyph &glyph_of(Font font, char32_t letter);

double capital_height(Font font);

/// One letter as it is drawn and the bytes it stands for.
struct Letter {
    char32_t code = 0;
    std::string_view bytes; ///< valid UTF-8; of the words it was read from, which must outlive it
};

/// Takes the first letter off words that are not empty. Broken UTF-8 becomes U+FFFD, a control character
/// becomes a space. Never fails.
Letter next_letter(std::string_view &words);

/// All letters, as above.
std::vector<Letter> letters_of(std::string_view words);

/// Sum of the letters' advances, added one by one to `before`: what comes of a text whose beginning is
/// measured already.
double advance_of(Font font, std::string_view words, double before = 0);

/// The letters in the words that are drawn as the replacement sign, each once, in order.
std::vector<char32_t> letters_missing(std::string_view words);

} // namespace roundlay::sheets
