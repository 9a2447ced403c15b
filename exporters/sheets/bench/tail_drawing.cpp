#include "exporters/sheets/bench/tail_drawing.h"

#include "exporters/sheets/drawing/board.h"
#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/pattern/patterns.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace roundlay::sheets {
namespace {

constexpr double lettering = 2.5, between_faces = 26, over_faces = 5, hatch = 2.2;

/// Where the straight x + y = c runs through a convex polygon.
std::optional<std::pair<Vec2, Vec2>> through(const std::vector<Vec2> &polygon, double c) {
    std::vector<Vec2> hits;
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const Vec2 a = polygon[i], b = polygon[(i + 1) % polygon.size()];
        const double da = a.x + a.y - c, db = b.x + b.y - c;
        if ((da < 0) == (db < 0)) continue;
        const double t = da / (da - db);
        hits.push_back(a + t * (b - a));
    }
    if (hits.size() < 2) return std::nullopt;
    return std::pair{hits[0], hits[1]};
}

void add_hatch(Board &board, const std::vector<Vec2> &polygon) {
    double least = 1e9, most = -1e9;
    for (const Vec2 &p : polygon) {
        least = std::min(least, p.x + p.y);
        most = std::max(most, p.x + p.y);
    }
    for (double c = std::ceil(least / hatch) * hatch; c < most; c += hatch)
        if (const auto line = through(polygon, c))
            board.add(Path{{line->first, line->second}, false, Line::dimension, ""});
}

/// One face of the joint, its log's end on the left or on the right.
class Face {
  public:
    Face(Board &board, const Joint &joint, const Words &words, double scale, bool outside)
        : board_(board), joint_(joint), words_(words), scale_(scale), outside_(outside),
          mirrored_(outside == (joint.end == End::far)) {}

    void draw(Vec2 origin) {
        origin_ = origin;
        std::vector<Vec2> ring;
        for (const Vec2 &p : outline_of(joint_, outside_))
            ring.push_back(on_paper(p));
        board_.add(Path{ring, true, Line::visible, ""});
        add_level_line();
        for (const JointCut &cut : joint_.cuts)
            add_waste(cut);
        for (const JointCut &cut : joint_.cuts)
            add_heights(cut);
    }

    /// Of the outline, from the face's own zero.
    Rect extent() const {
        Rect all = Rect::nothing();
        for (const Vec2 &p : outline_of(joint_, outside_))
            all = joined(all, scale_ * p);
        return all;
    }

  private:
    Vec2 on_paper(Vec2 p) const { return origin_ + scale_ * p; }
    /// x from the end of the log.
    Vec2 at(double x, double z) const { return on_paper({mirrored_ ? -x : x, z}); }
    double near_x(const JointCut &cut) const { return outside_ ? cut.near.outside : cut.near.inside; }
    double far_x(const JointCut &cut) const { return outside_ ? cut.far.outside : cut.far.inside; }
    double near_z(const JointCut &cut) const { return outside_ ? cut.outside_near : cut.inside_near; }
    double far_z(const JointCut &cut) const { return outside_ ? cut.outside_far : cut.inside_far; }

    void add_level_line() {
        const double start = outside_ ? joint_.starts.outside : joint_.starts.inside;
        const Vec2 a = at(start, joint_.line.at(start)), b = at(joint_.length, joint_.line.at(joint_.length));
        board_.add(Path{{a, b}, false, Line::centre, ""});
        Text text = lettered(words_.say("LL"), b, lettering, false, Role::caption);
        text.upright = Upright::middle;
        text.across = b.x > a.x ? Across::left : Across::right;
        text.at = {b.x + (b.x > a.x ? 1.2 : -1.2), b.y};
        board_.add(text);
    }

    /// Between the seam and the face that it is cut from.
    void add_waste(const JointCut &cut) {
        const HewnFace &face = cut.side == Side::top ? joint_.top : joint_.under;
        const double a = near_x(cut), b = far_x(cut);
        const std::vector<Vec2> ring{at(a, near_z(cut)), at(b, far_z(cut)), at(b, face.at(b)),
                                     at(a, face.at(a))};
        add_hatch(board_, ring);
        board_.add(Path{ring, true, Line::blank, ""});
    }

    /// Outside the wood at the end, in the log at the shoulder.
    void add_heights(const JointCut &cut) {
        const double way = mirrored_ ? -1 : 1;
        put(near_x(cut), near_z(cut), -way);
        put(far_x(cut), far_z(cut), joint_.within || !mirrored_ ? 1 : -1);
    }

    void put(double x, double z, double way) {
        Text text = lettered(words_.level(z - joint_.line.at(x)), {}, lettering, false, Role::dimension);
        text.upright = Upright::middle;
        text.across = way > 0 ? Across::left : Across::right;
        const Vec2 p = at(x, z);
        std::vector<Vec2> places;
        for (const double off : {1.2, 2.4, 4.0, 6.0, 9.0, 12.0, 16.0, 20.0})
            for (const double up : {0.0, 1.6, -1.6, 3.0, -3.0, 4.6, -4.6, 6.5, -6.5, 9.0, -9.0})
                places.push_back({p.x + way * off, p.y + up});
        if (!board_.put(text, places)) {
            text.at = places.front();
            board_.add(text);
        }
    }

    Board &board_;
    const Joint &joint_;
    const Words &words_;
    double scale_;
    bool outside_, mirrored_;
    Vec2 origin_{};
};

void add_name(Board &board, const std::string &words, Vec2 at) {
    board.add(lettered(words, at, lettering, true, Role::caption));
}

} // namespace

Block tail_drawing(const Joint &joint, const Words &words, double scale) {
    Board board;
    double x = 0, top = 0;
    for (const bool outside : {true, false}) {
        Face face(board, joint, words, scale, outside);
        const Rect extent = face.extent();
        top = std::max(top, extent.y1);
        add_name(board, outside ? words.say("Outside") : words.say("Inside, as it stands"),
                 {x, extent.y1 + over_faces - 3});
        face.draw({x - extent.x0, 0}); // its numbers find places beside its name
        x += extent.width() + between_faces;
        const std::vector<Vec2> end = outside ? end_outline_of(joint) : std::vector<Vec2>{};
        if (end.empty()) continue;
        Rect room = Rect::nothing();
        std::vector<Vec2> ring;
        for (const Vec2 &p : end)
            ring.push_back({x + scale * p.x, scale * p.y}), room = joined(room, ring.back());
        board.add(Path{ring, true, Line::visible, ""});
        add_name(board,
                 joint.end == End::datum ? words.say("End, outside on the right")
                                         : words.say("End, outside on the left"),
                 {x, room.y1 + over_faces - 3});
        x = room.x1 + between_faces;
    }
    board.add(lettered(joint.name, {0, top + over_faces + 2}, 5, true, Role::caption));
    std::vector<Item> items = std::move(board).finished();
    return {bounds(items).grown(3), items};
}

} // namespace roundlay::sheets
