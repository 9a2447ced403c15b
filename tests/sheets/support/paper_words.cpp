#include "tests/sheets/support/paper_words.h"

#include "kernel/measure/measure.h"
#include "tests/sheets/support/run.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <regex>
#include <stdexcept>

namespace roundlay::test {
namespace {

constexpr double mm_per_point = 25.4 / 72;

bool digits(const std::string &text) {
    return !text.empty() &&
           std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

std::string without_sign(const std::string &text) {
    return !text.empty() && (text.front() == '+' || text.front() == '-') ? text.substr(1) : text;
}

std::string plain(std::string text) {
    for (const auto &[code, character] :
         {std::pair{"&quot;", "\""}, {"&apos;", "'"}, {"&#39;", "'"}, {"&amp;", "&"}})
        for (std::size_t at = text.find(code); at != std::string::npos; at = text.find(code))
            text.replace(at, std::string(code).size(), character);
    return text;
}

/// The font's line box is as high as the lettering says, whichever way the word reads.
bool is_line_height(double v) {
    constexpr double per_lettering =
        0.4523; // of the carried font's line box in points to the lettering's 1/10 mm
    return std::ranges::any_of(std::array{2.5, 3.5}, [&](double lettering) {
        return std::abs(v - per_lettering * 10 * lettering) < 0.05;
    });
}

PaperWord word_of(const std::smatch &m, int page) {
    const auto points = [&](std::size_t i) { return std::stod(m[i]); };
    PaperWord word{plain(m[5]), 0, 0, 0, 0, page, false};
    word.upright = is_line_height(points(3) - points(1)) && !is_line_height(points(4) - points(2));
    word.x0 = points(1) * mm_per_point;
    word.y0 = points(2) * mm_per_point;
    word.x1 = points(3) * mm_per_point;
    word.y1 = points(4) * mm_per_point;
    return word;
}

/// Whether the second goes on where the first of an imperial length ends: after feet, or a fraction.
bool goes_on(const PaperWord &a, const PaperWord &b) {
    static const std::regex feet("[+-]?[0-9]+'"), inches("[+-]?([0-9]+' )?[0-9]+"),
        rest("[0-9]+(\"|/[0-9]+\")?"), fraction("[0-9]+/[0-9]+\"");
    const bool fits = (std::regex_match(a.text, feet) && std::regex_match(b.text, rest)) ||
                      (std::regex_match(a.text, inches) && std::regex_match(b.text, fraction));
    if (!fits || a.page != b.page || a.upright != b.upright) return false;
    const double off = a.upright ? b.x0 - a.x0 : b.y0 - a.y0, gap = a.upright ? a.y0 - b.y1 : b.x0 - a.x1;
    const double high = a.upright ? a.x1 - a.x0 : a.y1 - a.y0;
    return std::abs(off) < 0.1 && gap > 0 && gap < 0.4 * high;
}

void join_lengths(std::vector<PaperWord> &words) {
    for (std::size_t i = 0; i < words.size();) {
        const auto next = std::find_if(words.begin(), words.end(),
                                       [&](const PaperWord &w) { return goes_on(words[i], w); });
        if (next == words.end()) {
            ++i;
            continue;
        }
        PaperWord &word = words[i];
        word.text += " " + next->text;
        word.x0 = std::min(word.x0, next->x0);
        word.x1 = std::max(word.x1, next->x1);
        word.y0 = std::min(word.y0, next->y0);
        word.y1 = std::max(word.y1, next->y1);
        const auto gone = static_cast<std::size_t>(next - words.begin());
        words.erase(next);
        if (gone < i) --i;
    }
}

} // namespace

bool PaperWord::is_count() const {
    return digits(text);
}

/// Heights from a level line have a sign.
bool PaperWord::is_length() const {
    const std::string size = without_sign(text);
    return digits(size) ||
           (!size.empty() && size.back() == '"' && std::holds_alternative<Length>(parse_length(size)));
}

int PaperWord::count() const {
    return std::stoi(text);
}

double PaperWord::mm() const {
    const std::string size = without_sign(text);
    const double mm = digits(size) ? std::stod(size) : std::get<Length>(parse_length(size)).mm();
    return text.front() == '-' ? -mm : mm;
}

std::vector<PaperWord> words_of_pdf(const std::string &pdf) {
    static const std::regex form(
        R"re(<page|<word xMin="([0-9.]+)" yMin="([0-9.]+)" xMax="([0-9.]+)" yMax="([0-9.]+)">([^<]*)</word>)re");
    const Ran ran = run_on(pdf, "pdftotext -bbox % -");
    std::vector<PaperWord> words;
    int page = 0;
    for (auto it = std::sregex_iterator(ran.out.begin(), ran.out.end(), form); it != std::sregex_iterator();
         ++it) {
        if ((*it)[0] == "<page")
            ++page;
        else
            words.push_back(word_of(*it, page));
    }
    if (words.empty()) throw std::runtime_error("no words on the paper");
    join_lengths(words);
    return words;
}

} // namespace roundlay::test
