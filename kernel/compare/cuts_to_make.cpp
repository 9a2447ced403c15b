#include "kernel/compare/cuts_to_make.h"

#include "kernel/compare/nearly_alike.h"
#include "kernel/layout/cuts/asked.h"
#include "kernel/layout/cuts/moved.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace roundlay {

namespace {

const Piece *only_one(const Layout &layout, std::string Piece::*by, const std::string &value) {
    const Piece *found = nullptr;
    for (const Piece &piece : layout.pieces) {
        if (piece.*by != value) continue;
        if (found) return nullptr;
        found = &piece;
    }
    return found;
}

/// What is written on a log goes with it; its tag is of its place.
const Piece *as_it_was(const Layout &found, const Piece &now) {
    if (!now.mark.empty())
        if (const Piece *same = only_one(found, &Piece::mark, now.mark)) return same;
    const Piece *there = only_one(found, &Piece::tag, now.tag);
    return there && (now.mark.empty() || there->mark.empty() || there->mark == now.mark) ? there : nullptr;
}

CutNumbers numbers_of(const Cut &cut) {
    CutNumbers numbers;
    put_numbers(numbers, cut);
    return numbers;
}

class Held {
  public:
    Held(const Piece &was, const Piece &is)
        : was_(was), is_(is), origin_(was.tag == is.tag ? was.frame.to_local(is.frame.origin) : Vec3{}) {}

    bool has(const Cut &cut) const {
        if (is_mend(cut)) return false;
        if (const Bore *bore = bore_of(cut)) return has_hole(*bore);
        const CutNumbers own = numbers_of(cut);
        return std::ranges::any_of(was_.cuts, [&](const Cut &each) {
            return !is_mend(each) &&
                   nearly_alike(numbers_of(moved(each, origin_, was_.blank, is_.blank)), own);
        });
    }

  private:
    /// A mend may have shortened it.
    bool has_hole(const Bore &bore) const {
        const auto near = [](double a, double b) { return std::abs(a - b) <= hair; };
        return std::ranges::any_of(was_.cuts, [&](const Cut &each) {
            const Cut here = moved(each, origin_, was_.blank, is_.blank);
            const Bore *was = bore_of(here);
            return was && near(was->x, bore.x) && near(was->y, bore.y) &&
                   near(was->diameter, bore.diameter) && was->z_from <= bore.z_from + hair &&
                   was->z_to >= bore.z_to - hair;
        });
    }

    static constexpr double hair = 0.02; ///< mm, as nearly_alike
    const Piece &was_, &is_;
    Vec3 origin_; ///< of the piece now, in its frame as it was: a log that lies elsewhere now has its cuts
                  ///< where it had them
};

std::vector<bool> all_cuts(const Piece &piece) {
    return std::vector<bool>(piece.cuts.size(), true);
}

} // namespace

Indexed<CutsToMake, Piece> cuts_to_make(const Layout &found, const Layout &now) {
    Indexed<CutsToMake, Piece> all;
    for (const Piece &piece : now.pieces) {
        if (!is_old_wood(piece)) {
            all.push_back(all_cuts(piece));
            continue;
        }
        const Piece *was = as_it_was(found, piece);
        if (!was) {
            all.push_back({});
            continue;
        }
        std::vector<bool> make = all_cuts(piece);
        const Held held(*was, piece);
        std::transform(piece.cuts.begin(), piece.cuts.end(), make.begin(),
                       [&](const Cut &cut) { return !held.has(cut); });
        all.push_back(std::move(make));
    }
    return all;
}

} // namespace roundlay
