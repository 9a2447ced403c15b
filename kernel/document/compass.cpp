#include "kernel/document/compass.h"

#include "kernel/measure/spelling.h"

#include <array>
#include <charconv>
#include <vector>

namespace roundlay {

namespace {

constexpr double full_turn = 360, quarter_turn = 90;

struct Point {
    std::string_view word; ///< without a hyphen
    std::string_view spelled;
    double degrees;
};
constexpr std::array<Point, 8> points{{{"east", "east", 0},
                                       {"northeast", "north-east", 45},
                                       {"north", "north", 90},
                                       {"northwest", "north-west", 135},
                                       {"west", "west", 180},
                                       {"southwest", "south-west", 225},
                                       {"south", "south", 270},
                                       {"southeast", "south-east", 315}}};

std::optional<double> point(std::string_view word) {
    for (const Point &p : points)
        if (p.word == word) return p.degrees;
    return std::nullopt;
}

/// Lower-case words; the degree sign counts as the word "deg"; hyphens and underscores join.
std::vector<std::string> words_of(std::string_view text) {
    std::vector<std::string> words(1);
    for (std::size_t at = 0; at < text.size(); ++at) {
        const char c = text[at];
        if (text.substr(at, 2) == "\u00b0") {
            words.insert(words.end(), {"deg", ""});
            ++at;
        } else if (c == ' ' || c == '\t') {
            words.emplace_back();
        } else if ((c != '-' && c != '_') || words.back().empty()) {
            words.back() += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        }
    }
    std::erase(words, "");
    return words;
}

std::optional<double> angle_of(const std::string &word) {
    double angle = 0;
    const char *end = word.data() + word.size();
    const auto read = std::from_chars(word.data(), end, angle, std::chars_format::fixed);
    if (read.ec != std::errc() || read.ptr != end || !(angle >= 0 && angle < full_turn)) return std::nullopt;
    return angle;
}

double within_a_turn(double degrees) {
    return degrees < 0 ? degrees + full_turn : degrees >= full_turn ? degrees - full_turn : degrees;
}

/// `30 deg north of east`: from the second quarter point toward the first.
std::optional<double> turned(double angle, std::string_view toward, std::string_view from) {
    const auto goal = point(toward), base = point(from);
    if (!goal || !base) return std::nullopt;
    const double between = within_a_turn(*goal - *base);
    if (between == quarter_turn) return within_a_turn(*base + angle);
    if (between == full_turn - quarter_turn) return within_a_turn(*base - angle);
    return std::nullopt;
}

} // namespace

std::optional<double> parse_heading(std::string_view text) {
    std::vector<std::string> words = words_of(text);
    if (words.size() == 1) return point(words[0]);
    if (words.size() == 2) return point(words[0] + words[1]); // `north west`
    const bool degrees =
        words.size() == 5 && (words[1] == "deg" || words[1] == "degrees") && words[3] == "of";
    const auto angle = degrees ? angle_of(words[0]) : std::nullopt;
    return angle ? turned(*angle, words[2], words[4]) : std::nullopt;
}

std::string spell_heading(double degrees) {
    for (const Point &p : points)
        if (p.degrees == degrees) return std::string(p.spelled);
    return spell_number(degrees) + " deg north of east";
}

} // namespace roundlay
