#include "exporters/print/print.h"
#include "kernel/layout/cuts/match.h"
#include "kernel/layout/cuts/region.h"
#include "kernel/layout/wood/round_flats.h"

#include <algorithm>

namespace roundlay {

namespace {

/// As body_of cuts, but every plane lies deeper in the wood.
class Easer {
  public:
    Easer(const Blank &blank, double in, bool with_bores) : blank_(blank), in_(in), with_bores_(with_bores) {
        body.cells = {box_cell({{in, in, in}, {blank.length - in, blank.width - in, blank.height - in}})};
    }

    void operator()(const FaceCut &cut) { take(region_of(cut)); }
    void operator()(const SeamCut &cut) { take(region_of(cut, blank_)); }
    void operator()(const BoxCut &cut) { take(region_of(cut)); }
    void operator()(const PocketCut &cut) { take(region_of(cut, blank_)); }
    void operator()(const CheekCut &cut) { take(region_of(cut, blank_)); }
    void operator()(const MendCut &cut) { take(region_of(cut, blank_)); }
    void operator()(const RoundCut &cut) {
        body.rounds.push_back(surface_of(cut));
        for (Plane flat : flats_of(cut, count_of(body.rounds))) {
            flat.offset -= in_;
            for (Cell &cell : body.cells)
                cell = clipped(cell, flat);
        }
        std::erase_if(body.cells, [](const Cell &cell) { return cell.empty(); });
    }
    void operator()(const ScopeCut &cut) {
        body.rounds.push_back(surface_of(cut));
        take(region_of(cut, blank_.length, count_of(body.rounds)));
    }
    /// Carved by whoever makes the mesh: it then opens past the faces, wherever they lie now.
    void operator()(const Bore &cut) {
        if (!with_bores_) return;
        constexpr double past = 5;
        Bore bore = cut;
        bore.diameter += 2 * in_;
        const bool foot = bore.through || !bore.from_top, head = bore.through || bore.from_top;
        bore.z_from -= foot ? past + in_ : in_;
        bore.z_to += head ? past + in_ : in_;
        body.bores.push_back(bore);
    }

    Body body;

  private:
    void take(std::vector<Plane> region) {
        for (Plane &plane : region)
            plane.offset += in_;
        body.cells = without(std::move(body.cells), region);
    }

    Blank blank_;
    double in_;
    bool with_bores_;
};

bool is_long_groove(const Cut &cut) {
    return match(
        cut, [](const ScopeCut &scope) { return scope.use == ScopeUse::groove; },
        giving<FaceCut, RoundCut, SeamCut, BoxCut, PocketCut, CheekCut, MendCut, Bore>(false));
}

} // namespace

Body eased(const Piece &piece, double in, bool with_bores) {
    Easer easer(piece.blank, in, with_bores);
    for (const bool grooves : {false, true}) // last, as body_of cuts them
        for (const Cut &cut : piece.cuts)
            if (is_long_groove(cut) == grooves) match(cut, easer);
    Body &body = easer.body;
    body.hewn = border_of(body.cells);
    body.bores_clear = body.bores.empty();
    body.volume = volume(body.hewn);
    return std::move(body);
}

} // namespace roundlay
