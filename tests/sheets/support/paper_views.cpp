#include "tests/sheets/support/paper_views.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>
#include <tuple>

namespace roundlay::test {

PaperViews::PaperViews(const std::vector<PaperWord> &words, double length, double height)
    : words_(words), length_(length), height_(height) {
    scale_ = scale();
    find_stretches();
    read_marks();
}

const PaperWord &PaperViews::find(const std::string &text) const {
    for (const PaperWord &w : words_)
        if (w.text == text) return w;
    throw std::runtime_error("the paper does not say " + text);
}

/// "1:10" or `3/4" = 1'` under the word Scale in the title block.
double PaperViews::scale() const {
    const PaperWord &name = find("Scale");
    for (const PaperWord &w : words_) {
        if (w.page != name.page || w.y0 < name.y0 + 1 || std::abs(w.x0 - name.x0) > 3) continue;
        if (w.text.starts_with("1:")) return 1 / std::stod(w.text.substr(2));
        if (w.is_length()) return w.mm() / (12 * 25.4);
    }
    throw std::runtime_error("no scale in the title block");
}

/// Each begins with the word Top, or Under in first angle, in the column of captions.
void PaperViews::find_stretches() {
    const auto captions = [&](const char *name) {
        std::vector<PaperWord> all;
        for (const PaperWord &w : words_)
            if (w.text == name && w.x0 < 30 && !w.upright && w.y1 - w.y0 > 5) all.push_back(w);
        std::sort(all.begin(), all.end(), [](const PaperWord &a, const PaperWord &b) {
            return std::tuple(a.page, a.y0) < std::tuple(b.page, b.y0);
        });
        return all;
    };
    const std::vector<PaperWord> tops = captions("Top"), unders = captions("Under");
    if (tops.empty() || unders.size() != tops.size()) throw std::runtime_error("no views on the paper");
    const bool third = std::tuple(tops[0].page, tops[0].y0) < std::tuple(unders[0].page, unders[0].y0);
    for (const PaperWord &first : third ? tops : unders) {
        const double y0 = first.y0 - 3;
        if (!stretches_.empty() && stretches_.back().page == first.page) stretches_.back().y1 = y0;
        stretches_.push_back({first.page, y0, 1000, -1000, 1000});
    }
}

void PaperViews::read_marks() {
    for (std::size_t s = 0; s < stretches_.size(); ++s)
        for (const PaperWord &w : words_) {
            if (!w.upright || !w.is_length() || !stretches_[s].has(w)) continue;
            if (w.mm() == 0) stretches_[s].datum_x = w.x();
            if (w.mm() == length_) stretches_[s].far_x = w.x();
            marks_.push_back({s, w.x(), w.mm()});
        }
}

PaperViews::Row PaperViews::row(std::size_t stretch, bool outside) const {
    const Stretch &s = stretches_[stretch];
    const std::string log = outside ? "Outside" : "Inside", timber = outside ? "Right" : "Left";
    const double capital = 3.5, em = capital / (1493.0 / 2048), descent = 0.236 * em;
    for (const PaperWord &w : words_) {
        if ((w.text != log && w.text != timber) || !s.has(w) || w.x0 > 30 || w.y1 - w.y0 < 5) continue;
        const double top = w.y1 - descent - capital + (outside ? 9 : 0);
        return {top, top + height_ * scale_};
    }
    throw std::runtime_error("no view " + log);
}

/// Level numbers at the height of the row, or led out of it where bores take the room.
std::vector<PaperWord> PaperViews::near(std::size_t stretch, const Row &row) const {
    constexpr double beside_row = 8;
    std::vector<PaperWord> all;
    for (const PaperWord &w : words_)
        if (stretches_[stretch].has(w) && w.is_length() && !w.upright && w.y() > row.top - beside_row &&
            w.y() < row.bottom + beside_row)
            all.push_back(w);
    return all;
}

namespace {

/// Numbers of heights stand off the cut that they belong to at one of these distances; the number of a place,
/// from which that is measured, may itself be pushed aside a little by its neighbours.
bool is_offset(double away) {
    constexpr double offsets[] = {3.2, 4.6, 6.4, 9, 12, 16, 21}, rounding = 0.75;
    return std::any_of(std::begin(offsets), std::end(offsets),
                       [&](double offset) { return std::abs(away - offset) < rounding; });
}

} // namespace

/// A running dimension's number may be pushed aside by its
/// neighbours: where a place stands on paper is told by all that are near.
void PaperViews::add_beside(std::vector<double> &all, double x, bool outside, int side) const {
    constexpr double near_by = 200;
    for (const Mark &mark : marks_) {
        const double way = (x - mark.value) * scale_, at = mark.x + way;
        if (std::abs(way) > near_by) continue;
        for (const PaperWord &w : near(mark.stretch, row(mark.stretch, outside)))
            if (is_offset(side > 0 ? w.x0 - at : at - w.x1)) all.push_back(w.mm());
    }
}

/// Beside the row, past the end of the log.
void PaperViews::add_off_end(std::vector<double> &all, bool outside, int side) const {
    const std::size_t stretch = side > 0 ? stretches_.size() - 1 : 0;
    const Stretch &s = stretches_[stretch];
    for (const PaperWord &w : near(stretch, row(stretch, outside))) {
        const double past = side > 0 ? w.x0 - s.far_x : s.datum_x - w.x1;
        if (past > 0.5 && past < 20) all.push_back(w.mm());
    }
}

std::vector<double> PaperViews::heights(const PaperPlace &place, bool outside, int side) const {
    std::vector<double> all;
    const double x = outside ? place.outside : place.inside, wood = side < 0 ? x : length_ - x;
    add_beside(all, x, outside, side);
    constexpr double no_room = 45; // of paper: with more beside it a number stands in the wood
    if (wood * scale_ < no_room) add_off_end(all, outside, side);
    std::sort(all.begin(), all.end());
    all.erase(std::unique(all.begin(), all.end()), all.end());
    return all;
}

} // namespace roundlay::test
