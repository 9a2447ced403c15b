#include "kernel/layout/pieces/wood_difference.h"

#include "kernel/layout/cuts/asked.h"
#include "kernel/layout/cuts/numbers.h"
#include "kernel/layout/pieces/hewn_faces.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

/// Bores aside: pegs are bored for where a rule puts them, which lists tell one by one.
CutNumbers shape_without_bores(const Piece &piece) {
    CutNumbers shape;
    put_numbers(shape, piece.blank);
    for (const Cut &cut : piece.cuts)
        if (!bore_of(cut)) put_numbers(shape, cut);
    return shape;
}

std::optional<double> most_of_cuts(const Piece &was, const Piece &is) {
    const CutNumbers a = shape_without_bores(was), b = shape_without_bores(is);
    if (a.kinds != b.kinds || a.numbers.size() != b.numbers.size()) return {};
    double most = 0;
    for (std::size_t i = 0; i < a.numbers.size(); ++i)
        most = std::max(most, std::abs(b.numbers[i] - a.numbers[i]));
    return most;
}

struct Section {
    double height = 0, width = 0;
};

Section section_at(const HewnFaces &faces, double x) {
    return {faces.highest(x) - faces.lowest(x), faces.innermost(x) - faces.outermost(x)};
}

} // namespace

double WoodDifference::most() const {
    double all = cuts.value_or(0);
    for (const double each :
         {length, height_datum, height_far, width_datum, width_far, shoulder_datum, shoulder_far})
        all = std::max(all, std::abs(each));
    return all;
}

WoodDifference wood_difference(const Piece &was, const Piece &is) {
    const HewnFaces old = hewn_faces(was), now = hewn_faces(is);
    const Section old_datum = section_at(old, 0), now_datum = section_at(now, 0),
                  old_far = section_at(old, was.blank.length), now_far = section_at(now, is.blank.length);
    WoodDifference differs;
    differs.length = is.blank.length - was.blank.length;
    differs.height_datum = now_datum.height - old_datum.height;
    differs.height_far = now_far.height - old_far.height;
    differs.width_datum = now_datum.width - old_datum.width;
    differs.width_far = now_far.width - old_far.width;
    differs.shoulder_datum = is.datum.shoulder - was.datum.shoulder;
    differs.shoulder_far = (is.blank.length - is.far.shoulder) - (was.blank.length - was.far.shoulder);
    differs.cuts = most_of_cuts(was, is);
    return differs;
}

} // namespace roundlay
