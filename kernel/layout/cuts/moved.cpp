#include "kernel/layout/cuts/moved.h"

#include "kernel/layout/cuts/match.h"

namespace roundlay {

namespace {

struct Moved {
    Vec3 origin;
    const Blank &was, &now;

    Plane plane(const Plane &p) const { return {p.normal, p.offset - dot(p.normal, origin), p.round}; }
    /// Of what is stated on the middle of the blank's width and leans by `skew` across it.
    double on_middle(double x, double skew) const {
        return x + skew * (origin.y + now.width / 2 - was.width / 2) - origin.x;
    }
    /// Of a line along the log, at that x of the other piece.
    Vec3 on_line(Vec3 from, Vec3 to, double x) const {
        const double run = to.x - from.x;
        const Vec3 there = run == 0 ? from : from + ((x + origin.x - from.x) / run) * (to - from);
        return there - origin;
    }

    Cut operator()(FaceCut cut) const {
        cut.plane = plane(cut.plane);
        return cut;
    }
    Cut operator()(RoundCut cut) const {
        const Vec3 from = cut.from, to = cut.to;
        cut.from = on_line(from, to, 0), cut.to = on_line(from, to, now.length);
        return cut;
    }
    Cut operator()(SeamCut cut) const {
        cut.x_from = on_middle(cut.x_from, cut.skew), cut.x_to = on_middle(cut.x_to, cut.skew);
        cut.seam = plane(cut.seam);
        return cut;
    }
    Cut operator()(ScopeCut cut) const {
        cut.at = cut.at - origin;
        cut.x_from -= origin.x, cut.x_to -= origin.x;
        return cut;
    }
    Cut operator()(BoxCut cut) const {
        cut.box = {cut.box.low - origin, cut.box.high - origin};
        cut.fall_from -= origin.y;
        return cut;
    }
    Cut operator()(PocketCut cut) const {
        cut.x -= origin.x, cut.y_face -= origin.y, cut.y_back -= origin.y, cut.z_top -= origin.z;
        cut.bed = plane(cut.bed);
        return cut;
    }
    Cut operator()(CheekCut cut) const {
        cut.x_from -= origin.x, cut.x_to -= origin.x;
        cut.plane = plane(cut.plane);
        return cut;
    }
    Cut operator()(MendCut cut) const {
        const bool side = cut.face == LogFace::outside || cut.face == LogFace::inside;
        const double across = side ? origin.z : origin.y;
        cut.x_from -= origin.x, cut.x_to -= origin.x, cut.low -= across, cut.high -= across;
        cut.bed = plane(cut.bed);
        return cut;
    }
    Cut operator()(Bore cut) const {
        cut.x -= origin.x, cut.y -= origin.y, cut.z_from -= origin.z, cut.z_to -= origin.z;
        return cut;
    }
};

struct Call {
    const std::string &tag;
    void operator()(SeamCut &cut) const { cut.other = tag; }
    void operator()(ScopeCut &cut) const { cut.other = tag; }
    void operator()(PocketCut &cut) const { cut.holds = tag; }
    void operator()(BoxCut &cut) const { cut.opening = tag; }
    void operator()(MendCut &cut) const { cut.piece = tag; }
    // These have no neighbour.
    void operator()(FaceCut &) const {}
    void operator()(RoundCut &) const {}
    void operator()(CheekCut &) const {}
    void operator()(Bore &) const {}
};

} // namespace

Cut moved(const Cut &cut, Vec3 origin, const Blank &was, const Blank &now) {
    return match(cut, Moved{origin, was, now});
}

void call_neighbour(Cut &cut, const std::string &tag) {
    std::visit(Call{tag}, cut);
}

} // namespace roundlay
