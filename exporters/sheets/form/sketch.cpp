#include "exporters/sheets/form/sketch.h"

#include "exporters/sheets/drawing/beside.h"
#include "exporters/sheets/drawing/text.h"
#include "kernel/layout/openings/openings.h"
#include "kernel/survey/survey.h"

#include <algorithm>
#include <map>

namespace roundlay::sheets {
namespace {

constexpr double end_grain = 0.86, sawn = 0.7; ///< greys
constexpr double air = 0.4;
constexpr double near_end = 25; ///< on paper: from a log's end to that of the wall, to lead a line over

/// The part of a stroke between two upright lines; nothing where it lies beside them.
std::optional<std::pair<Vec2, Vec2>> within(Vec2 a, Vec2 b, double low, double high) {
    if (a.x > b.x) std::swap(a, b);
    if (b.x < low || a.x > high) return {};
    const auto at = [&](double x) { return Vec2{x, a.y + (b.y - a.y) * (x - a.x) / (b.x - a.x)}; };
    const Vec2 from = a.x < low ? at(low) : a, to = b.x > high ? at(high) : b;
    return std::pair(from, to);
}

class Drawer {
  public:
    Drawer(const SketchWanted &wanted, const WallStretch &stretch, const Scale &scale)
        : w_(wanted), wall_(wanted.layout.walls.at(wanted.wall)), stretch_(stretch), k_(scale.ratio),
          mirrored_(wanted.side == WallSide::inside), low_(std::min(x(stretch.from), x(stretch.to))),
          high_(std::max(x(stretch.from), x(stretch.to))) {}

    Sketch draw(const std::string &caption) {
        add_wood();
        wood_ = bounds(board_.items());
        add_breaks();
        add_foundation();
        add_openings();
        add_tags();
        add_corners();
        add_caption(caption);
        return {{bounds(board_.items()), std::move(board_).finished()}, without_tag_};
    }

  private:
    double x(double along) const { return (mirrored_ ? -along : along) * k_; }
    Vec2 paper(Vec2 flat) const { return k_ * flat; }

    void add_wood() {
        for (const GreyFace &grey : w_.seen.greys) {
            Fill fill{{}, grey.sawn_through ? sawn : end_grain};
            bool inside = true;
            for (const auto &ring : grey.rings) {
                fill.rings.emplace_back();
                for (const Vec2 p : ring) {
                    fill.rings.back().push_back(paper(p));
                    inside = inside && paper(p).x > low_ && paper(p).x < high_;
                }
            }
            if (inside) board_.add(fill);
        }
        for (const Stretch &s : w_.seen.edges)
            if (const auto part = within(paper(s.from), paper(s.to), low_, high_))
                board_.add(Path{{part->first, part->second}, false, Line::visible, ""});
    }

    /// Where it goes on on another sheet.
    void add_breaks() {
        const double top = bounds(board_.items()).y1;
        const bool left = mirrored_ ? stretch_.whole_at_to : stretch_.whole_at_from,
                   right = mirrored_ ? stretch_.whole_at_from : stretch_.whole_at_to;
        for (const auto &[whole, at] : {std::pair(left, low_), std::pair(right, high_)})
            if (!whole) board_.add(Path{{{at, -2}, {at, top + 2}}, false, Line::centre, ""});
    }

    /// Its top, up and down over its steps.
    void add_foundation() {
        std::vector<double> turns{low_, high_};
        for (const StepPlace &step : w_.layout.steps)
            if (step.wall == w_.wall)
                for (const double at : {x(step.from), x(step.to)})
                    if (at > low_ && at < high_) turns.push_back(at);
        std::ranges::sort(turns);
        std::vector<Vec2> line;
        for (std::size_t i = 1; i < turns.size(); ++i) {
            const double top = foundation_at((turns[i - 1] + turns[i]) / 2);
            line.insert(line.end(), {{turns[i - 1], top}, {turns[i], top}});
        }
        board_.add(Path{std::move(line), false, Line::strong, ""});
    }

    double foundation_at(double at) const {
        for (const StepPlace &step : w_.layout.steps)
            if (step.wall == w_.wall && (at > x(step.from)) != (at > x(step.to))) return step.rise * k_;
        return 0;
    }

    Rect hole_of(const Opening &opening) const {
        const double a = x(opening.from_left.mm()), b = x((opening.from_left + opening.width).mm());
        return {std::max(low_, std::min(a, b)), opening.sill.mm() * k_, std::min(high_, std::max(a, b)),
                (opening.sill + opening.height).mm() * k_};
    }

    /// By their names, where they have room; ends of logs are told by them.
    void add_openings() {
        for (std::size_t i = 0; i < w_.shell.openings.size(); ++i) {
            const Opening &opening = w_.shell.openings[i];
            if (opening.wall != wall_.name) continue;
            const Rect hole = hole_of(opening);
            if (hole.width() < 2) continue;
            holes_.push_back(hole);
            const std::string name = w_.words.name(name_of(w_.shell, i));
            std::vector<std::string> lines = wrapped(name, hole.width() - 2, least_lettering);
            double y = hole.centre().y + (static_cast<double>(lines.size()) - 2) * 1.9;
            for (const std::string &line : lines) {
                Text text = lettered(line, {hole.centre().x, y}, least_lettering, false, Role::mark);
                text.across = Across::middle;
                if (!line.empty() && hole.holds(box_of(text)) && board_.is_free(box_of(text), true))
                    board_.add(text);
                y -= 3.8;
            }
        }
    }

    Rect face_of(const Piece &piece) const {
        const Vec3 origin = wall_.frame.to_local(piece.frame.origin);
        const double a = x(origin.x), b = x(origin.x + piece.blank.length), z = origin.z * k_;
        return {std::max(low_, std::min(a, b)), z, std::min(high_, std::max(a, b)),
                z + piece.blank.height * k_};
    }

    void add_tags() {
        std::vector<Index<Piece>> all;
        for (const auto i : w_.layout.pieces.indices())
            if (is_log_of(w_.layout.pieces[i], w_.wall) && face_of(w_.layout.pieces[i]).width() > 1)
                all.push_back(i);
        std::ranges::stable_sort(all, {},
                                 [&](Index<Piece> i) { return face_of(w_.layout.pieces[i]).width(); });
        for (const Index<Piece> i : all) {
            const Rect face = face_of(w_.layout.pieces[i]);
            const std::string tag = form_tag(w_.logs, i, w_.layout);
            if (!put_in(face, tag, 3.5) && !put_in(face, tag, least_lettering) &&
                !put_in_opening(face, tag) && !put_past_end(face, tag))
                without_tag_.push_back(tag);
        }
    }

    Text tag_text(const std::string &tag, double height) const {
        Text text = lettered(tag, {}, height, false, Role::mark);
        text.across = Across::middle;
        text.upright = Upright::middle;
        return text;
    }

    bool put_in(const Rect &face, const std::string &tag, double height) {
        if (face.height() < height + 2 * air) return false;
        std::vector<Vec2> places;
        const double half = text_width(tag, height) / 2 + 0.5, tall = height / 2 + air;
        for (const double part : {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.45, 0.55, 0.35, 0.65})
            for (const double y : {face.centre().y, face.y0 + tall, face.y1 - tall}) {
                const double at = face.x0 + part * face.width();
                const Rect box{at - half, y - tall, at + half, y + tall};
                if (at - half < face.x0 || at + half > face.x1) continue;
                if (std::ranges::none_of(holes_, [&](const Rect &hole) { return hole.overlaps(box); }))
                    places.push_back({at, y});
            }
        return board_.put(tag_text(tag, height), places, 0.3);
    }

    /// Of a log too low for its tag, that lies at an end of what is shown: past that end, with a line that
    /// leads to it.
    bool put_past_end(const Rect &face, const std::string &tag) {
        const double half = text_width(tag, least_lettering) / 2, y = face.centre().y;
        const Rect wood = wood_;
        for (const double side : {-1.0, 1.0}) {
            const double end = side > 0 ? wood.x1 : wood.x0, edge = side > 0 ? face.x1 : face.x0;
            if (std::abs(end - edge) > near_end) continue;
            for (const double up : {0.0, 1.5, -1.5, 3.0, -3.0}) {
                Text text = tag_text(tag, least_lettering);
                text.at = {end + side * (4 + half), y + up};
                if (!board_.is_free(box_of(text).grown(0.2), true)) continue;
                board_.add(text);
                board_.add(
                    thin_leader({{edge - side * 1.5, y}, {end + side * 1.5, y}, {end + side * 3.6, y + up}}));
                return true;
            }
        }
        return false;
    }

    /// In the opening next to a short piece.
    bool put_in_opening(const Rect &face, const std::string &tag) {
        return put_beside(board_, face, tag_text(tag, least_lettering),
                          [&](const Rect &box) {
                              return std::ranges::any_of(
                                  holes_, [&](const Rect &hole) { return hole.holds(box.grown(0.3)); });
                          })
            .has_value();
    }

    /// Under the wall, where the others meet it.
    void add_corners() {
        const double under = bounds(board_.items()).y0 - 1.5;
        for (const WallMeeting &meeting : wall_.meetings) {
            const double at = x((meeting.low + meeting.high) / 2);
            if (at < low_ || at > high_) continue;
            Text text = lettered(corner_name_of(meeting), {at, under}, 3.5, true, Role::mark);
            text.across = Across::middle;
            text.upright = Upright::top;
            for (int i = 0; i < 12 && !board_.is_free(box_of(text).grown(0.5), true); ++i)
                text.at.y -= 4.5;
            board_.add(text);
        }
    }

    std::string corner_name_of(const WallMeeting &meeting) const;

    void add_caption(const std::string &caption) {
        const Rect drawn = bounds(board_.items());
        board_.add(lettered(caption, {drawn.x0, drawn.y1 + 2.5}, 3.5, true, Role::caption));
    }

    const SketchWanted &w_;
    const WallPlace &wall_;
    WallStretch stretch_;
    double k_;
    bool mirrored_;
    double low_, high_; ///< of the stretch, on paper
    Board board_;
    std::vector<Rect> holes_;
    Rect wood_ = Rect::nothing(); ///< what is drawn of the logs
    std::vector<std::string> without_tag_;
};

std::string Drawer::corner_name_of(const WallMeeting &meeting) const {
    return corner_name(w_.record, w_.layout, w_.layout.corners[meeting.corner].name);
}

} // namespace

WallStretch all_of(const SketchWanted &wanted) {
    const WallPlace &wall = wanted.layout.walls.at(wanted.wall);
    WallStretch all{0, wall.length, true, true};
    const double way = wanted.side == WallSide::inside ? -1 : 1;
    for (const Stretch &s : wanted.seen.edges)
        for (const double at : {way * s.from.x, way * s.to.x}) {
            all.from = std::min(all.from, at);
            all.to = std::max(all.to, at);
        }
    return all;
}

Sketch sketch_of(const SketchWanted &wanted, const WallStretch &stretch, const Scale &scale,
                 const std::string &caption) {
    return Drawer(wanted, stretch, scale).draw(caption);
}

} // namespace roundlay::sheets
