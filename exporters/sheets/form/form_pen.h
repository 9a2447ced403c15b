// Boxes to be filled in by hand, each with what is known of its number already.
#pragma once

#include "exporters/sheets/drawing/sheet.h"
#include "exporters/sheets/drawing/words.h"
#include "kernel/record/noted_length.h"

#include <optional>
#include <string>
#include <vector>

namespace roundlay::sheets {

// Letters and figures of a hand in gloves are about 4 mm high: our choice, no source.
inline constexpr double hand_height = 4;
inline constexpr double box_height = 7.6;    ///< of a box for one line of them
inline constexpr double print_line = 3.7;    ///< of one printed line of 2.5 mm, with its air
inline constexpr double off_the_line = 0.45; ///< of a figure under the lower edge of its box
inline constexpr double size_width = 28;     ///< of a box for a height or a width: 0.11.15, 11 15/16
inline constexpr double place_width = 34;    ///< of a box for a length along a log: 33' 11 1/2"

// Layers of the boxes, for who looks whether a hand finds room in them.
inline constexpr const char *size_box = "box of a size";
inline constexpr const char *place_box = "box of a place";
inline constexpr const char *words_box = "box of words";
inline constexpr const char *tick_box = "box to tick";

/// What is printed of one number.
struct Known {
    std::string noted;    ///< in the box, as it was written
    std::string proposed; ///< small, under it
};

/// As the record has it, else as a rule proposes it. What another measure contradicts is to be taken again.
Known known(const NotedLength &noted, const std::optional<double> &by_rule, const Words &words);
Known known(const NotedLength *noted, const std::optional<double> &by_rule, const Words &words);

class FormPen {
  public:
    FormPen(std::vector<Item> &items, const Words &words) : items_(items), words_(words) {}

    const Words &words() const { return words_; }

    /// A small line of print whose line of 3.7 mm begins there; as much of the words as fits the width.
    void print(Vec2 lower_left, double width, const std::string &words, bool bold = false);
    void print_right(Vec2 lower_right, double width, const std::string &words);
    void large(Vec2 at, const std::string &words); ///< bold, 4.5 mm, its line beginning there
    /// In as many lines as it takes, downward from the upper left corner; gives its height.
    double paragraph(Vec2 upper_left, double width, const std::string &words, bool bold = false);

    /// A tag at the head of a row, as large as it fits beside the boxes; what does not fit stands over the
    /// row, whole, in so many printed lines: the room that is left below them comes back.
    static std::size_t lines_over(const Words &words, const std::string &tag, double width, double row_width);
    Rect tag(const Rect &row, double width, const std::string &tag);

    /// A box for a number or words; in its corner the letter that its key figure calls it by ("": none).
    void box(const Rect &box, const char *layer, const std::string &letter, const Known &known = {});

    /// Squares with words behind them, in rows over one another within one box's height.
    struct Tick {
        std::string words;
        bool ticked = false;
    };
    void ticks(const Rect &room, const std::vector<std::vector<Tick>> &rows);
    /// How wide such rows are.
    static double width_of(const std::vector<std::vector<Tick>> &rows);

    void line(Vec2 from, Vec2 to, Line kind);

  private:
    bool put(const std::vector<Text> &texts, const Rect &box);
    void noted(const Rect &box, const std::string &words);

    std::vector<Item> &items_;
    const Words &words_;
};

/// As much of the words as fits, with … where some are left out.
std::string shortened(const std::string &words, double width, double height, bool bold = false);

} // namespace roundlay::sheets
