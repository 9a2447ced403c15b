#include "kernel/layout/floor_plan.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/footprint.h"
#include "kernel/layout/no_wood.h"
#include "kernel/layout/text.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

/// Wood or air that is left beside a joist, at least. Common practice, no source.
constexpr double least_beside = 25;

/// A trimmer's, and a trimmed joist's, end is as high as this part of the least high joist: the rest is
/// notched away under it. A quarter is the deepest end notch of IRC R502.8.1 (second-hand).
constexpr double notched_part = 0.75;

/// A housing for a trimmer takes at most this part of the width of the joist that carries it. Common
/// practice, no source.
constexpr double deepest_housing = 0.4;

struct Hole {
    double left = 0, right = 0, near = 0, away = 0;
    bool joist_left = true, joist_right = true; ///< else the room's own side is its edge
    bool trims_near = true, trims_away = true;  ///< else the wall is
};

class Planner {
  public:
    Planner(const Shell &shell, Layout &layout, std::size_t index, FloorPlan &plan)
        : layout_(layout), index_(index), floor_(shell.floors[index]), plan_(plan), room_(plan.place) {}

    bool plan() {
        if (!find_room() || !find_bays() || !check_sizes()) return false;
        for (const FloorOpening &o : floor_.openings)
            if (!add_hole(o)) return false;
        const std::vector<double> places = joist_places();
        if (places.empty()) return refuse("spacing", said("no joist fits between the sides of the room"));
        if (!add_beams(places)) return false;
        add_joists(places);
        add_trimmers();
        share_load();
        return rest_on_beams() && good_;
    }

  private:
    bool refuse(const std::string &key, Said what, std::optional<Said> advice = {}) {
        return say_of(Weight::error, key, std::move(what), std::move(advice));
    }
    /// True where it can be cut all the same.
    bool say_of(Weight weight, const std::string &key, Said what, std::optional<Said> advice) {
        layout_.findings.push_back({weight,
                                    "floor-does-not-fit",
                                    {about::Floor{floor_.name}},
                                    std::move(what),
                                    std::move(advice),
                                    subject("floor", index_, key)});
        return weight != Weight::error;
    }

    bool find_room() {
        const auto room =
            room_between(layout_, wall_named(layout_, floor_.from), wall_named(layout_, floor_.to));
        if (!room)
            return refuse(
                "to",
                said("walls %1 and %2 do not face each other: joists lie square between two parallel walls",
                     floor_.from, floor_.to));
        room_ = *room;
        room_.name = floor_.name;
        plan_.tail = floor_.tail.ratio();
        room_.level = floor_.level.mm();
        return true;
    }

    /// Walls along the joists divide the room into bays; any other wall in it is in the way.
    bool find_bays() {
        double from = 0;
        std::vector<std::pair<double, double>> walls;
        for (std::size_t w = 0; w < layout_.walls.size(); ++w) {
            if (static_cast<int>(w) == room_.from || static_cast<int>(w) == room_.to) continue;
            const Box3 box = seen_from_room(layout_.walls[w]);
            if (!stands_in_room(layout_.walls[w])) continue;
            const bool along = std::abs(cross(flat(layout_.walls[w].frame.x), flat(room_.frame.y))) < 1e-9;
            if (!along || box.low.y > tolerance::clear || box.high.y < room_.depth - tolerance::clear)
                return refuse("to",
                              said("wall %1 stands in the room between walls %2 and %3",
                                   layout_.walls[w].name, floor_.from, floor_.to),
                              said("state a floor to each side of it"));
            walls.emplace_back(box.low.x, box.high.x);
        }
        std::sort(walls.begin(), walls.end());
        for (const auto &[low, high] : walls) {
            bays_.emplace_back(from, low);
            from = high;
        }
        bays_.emplace_back(from, room_.width);
        return true;
    }

    /// What encloses a wall in the room's own frame.
    Box3 seen_from_room(const WallPlace &wall) const {
        Box3 box{{1e300, 1e300, 0}, {-1e300, -1e300, 0}};
        for (const Vec2 c :
             {Vec2{0, 0}, Vec2{wall.length, 0}, Vec2{wall.length, wall.thickness}, Vec2{0, wall.thickness}}) {
            const Vec3 p = room_.frame.to_local(wall.frame.to_world({c.x, c.y, 0}));
            box.low = {std::min(box.low.x, p.x), std::min(box.low.y, p.y), 0};
            box.high = {std::max(box.high.x, p.x), std::max(box.high.y, p.y), 0};
        }
        return box;
    }

    bool stands_in_room(const WallPlace &wall) const {
        return in_each_others_way({room_.frame, room_.width, room_.depth, 0, 1},
                                  {wall.frame, wall.length, wall.thickness, 0, 1}, tolerance::clear);
    }

    /// The bay that holds a stretch across the room whole; nothing where a wall stands in it.
    const std::pair<double, double> *bay_of(double from, double to) const {
        for (const auto &bay : bays_)
            if (from >= bay.first - tolerance::weld && to <= bay.second + tolerance::weld) return &bay;
        return nullptr;
    }

    bool check_sizes() {
        const double thinnest = std::min(thickness(room_.from), thickness(room_.to));
        const double most = thinnest - least_beside;
        const auto weigh = [](bool cut) { return cut ? Weight::warning : Weight::error; };
        if (floor_.bearing.mm() > most &&
            !say_of(weigh(floor_.bearing.mm() <= thinnest - no_wood), "bearing",
                    said("a bearing of %1 does not leave %2 of a wall %3 thick", in_mm(floor_.bearing.mm()),
                         in_mm(least_beside), in_mm(thinnest)),
                    said("%1 at most would", in_mm(most))))
            return false;
        if (floor_.spacing.mm() < joist_width() + least_beside &&
            !say_of(weigh(floor_.spacing.mm() > widest() + tolerance::clear), "spacing",
                    said("joists %1 wide do not lie %2 apart on centre", in_mm(joist_width()),
                         in_mm(floor_.spacing.mm())),
                    said("%1 at least", in_mm(joist_width() + least_beside))))
            return false;
        const double neck = joist_width() - 2 * floor_.tail.ratio() * floor_.bearing.mm();
        if (floor_.pocket == PocketKind::tailed && neck < std::min(joist_width(), tip_width()) / 2 &&
            !say_of(weigh(neck - joist_width() + std::min(joist_width(), tip_width()) >= no_wood), "tail",
                    said("the tailed ends leave only %1 of a joist %2 wide at the wall",
                         in_mm(std::max(0.0, neck)), in_mm(joist_width())),
                    said("a smaller tail or bearing leaves half of it")))
            return false;
        if (floor_.first && floor_.first->mm() < joist_width() / 2)
            return refuse(
                "first",
                said("the first joist, %1 from the room's side, lies in the wall", in_mm(floor_.first->mm())),
                said("%1 at least", in_mm(joist_width() / 2)));
        return true;
    }

    double thickness(int wall) const { return layout_.walls[static_cast<std::size_t>(wall)].thickness; }
    double joist_width() const { return floor_.joist.width.mm(); }
    double tip_width() const { return floor_.tip_width.value_or(floor_.joist.width).mm(); }
    double tip_height() const { return floor_.tip_height.value_or(floor_.joist.height).mm(); }
    double widest() const { return std::max(joist_width(), tip_width()); }
    Vec2 world(Vec2 p) const { return flat(room_.frame.to_world({p.x, p.y, 0})); }

    bool add_hole(const FloorOpening &o) {
        Hole h{o.from_left.mm(), (o.from_left + o.width).mm(), o.from_wall.mm(),
               (o.from_wall + o.length).mm()};
        const Amount name = o.name.empty() ? Amount(said("a floor opening")) : Amount(o.name);
        if (h.right > room_.width + tolerance::clear || h.away > room_.depth + tolerance::clear)
            return refuse("opening", said("%1 reaches out of the room, which is %2 by %3", name,
                                          in_mm(room_.width), in_mm(room_.depth)));
        const double joist = widest() + least_beside, trimmer = joist_width() + least_beside;
        h.joist_left = h.left >= joist;
        h.joist_right = room_.width - h.right >= joist;
        h.trims_near = h.near >= trimmer;
        h.trims_away = room_.depth - h.away >= trimmer;
        const double beside = std::min(joist, h.left), behind = std::min(joist, room_.width - h.right);
        if (!bay_of(h.left - beside, h.right + behind))
            return refuse("opening", said("%1 meets a wall that stands in the room", name),
                          said("keep %1 away from it", in_mm(joist)));
        const auto at_side = [](double room) { return room < tolerance::clear; };
        if ((!h.joist_left && !at_side(h.left)) || (!h.joist_right && !at_side(room_.width - h.right)) ||
            (!h.trims_near && !at_side(h.near)) || (!h.trims_away && !at_side(room_.depth - h.away)))
            return refuse("opening", said("%1 leaves no room for a joist or trimmer beside it", name),
                          said("let it reach the wall, or keep %1 away from it", in_mm(joist)));
        for (const Hole &other : holes_)
            if (h.left - 2 * joist < other.right && other.left < h.right + 2 * joist && h.near < other.away &&
                other.near < h.away)
                return refuse("opening", said("%1 comes too near another opening of this floor", name));
        holes_.push_back(h);
        return true;
    }

    /// Joists beside openings come first; those of the rule keep clear of them.
    std::vector<double> joist_places() const {
        std::vector<double> places;
        for (const Hole &h : holes_) {
            if (h.joist_left) places.push_back(h.left - widest() / 2);
            if (h.joist_right) places.push_back(h.right + widest() / 2);
        }
        const std::vector<double> beside = places;
        const double last = room_.width - widest() / 2 - least_beside;
        for (double x = floor_.first.value_or(floor_.spacing).mm(); x <= last; x += floor_.spacing.mm()) {
            const bool crowded = std::any_of(beside.begin(), beside.end(), [&](double b) {
                return std::abs(b - x) < widest() + least_beside;
            });
            if (!crowded && bay_of(x - widest() / 2, x + widest() / 2)) places.push_back(x);
        }
        std::sort(places.begin(), places.end());
        return places;
    }

    /// A joist's line is cut by the openings that it would cross.
    void add_joists(const std::vector<double> &places) {
        int number = 0;
        for (const double x : places) {
            std::vector<const Hole *> crossed;
            for (const Hole &h : holes_)
                if (x > h.left - widest() / 2 + tolerance::clear &&
                    x < h.right + widest() / 2 - tolerance::clear)
                    crossed.push_back(&h);
            std::sort(crossed.begin(), crossed.end(),
                      [](const Hole *a, const Hole *b) { return a->near < b->near; });
            double from = 0;
            const Hole *before = nullptr;
            for (const Hole *h : crossed) {
                if (before || h->trims_near) add_joist(x, from, h->near - joist_width(), before, h, number);
                from = h->away + joist_width();
                before = h;
            }
            if (!before || before->trims_away) add_joist(x, from, room_.depth, before, nullptr, number);
            ++number;
        }
    }

    void add_joist(double x, double from, double to, const Hole *before, const Hole *behind, int number) {
        PlannedTimber t;
        t.use = before || behind ? TimberUse::trimmed : TimberUse::joist;
        t.from = {x, before ? from : 0};
        t.to = {x, to};
        t.datum = before ? trimmer_end() : wall_end(room_.from);
        t.far = behind ? trimmer_end() : wall_end(room_.to);
        t.top = room_.level;
        const bool butt_at_datum = butt_lies_at_datum(number);
        t.width_from = butt_at_datum ? joist_width() : tip_width();
        t.width_to = butt_at_datum ? tip_width() : joist_width();
        t.height_from = butt_at_datum ? floor_.joist.height.mm() : tip_height();
        t.height_to = butt_at_datum ? tip_height() : floor_.joist.height.mm();
        ends_at_.push_back({before, behind});
        plan_.timbers.push_back(t);
    }

    /// Toward the longer span where beams divide it; else turn about.
    bool butt_lies_at_datum(int number) const {
        if (floor_.beams.empty()) return number % 2 == 0;
        double first = room_.depth, last = 0;
        for (const Beam &b : floor_.beams) {
            first = std::min(first, b.from_wall.mm());
            last = std::max(last, b.from_wall.mm());
        }
        if (std::abs(first - (room_.depth - last)) < tolerance::clear) return number % 2 == 0;
        return first > room_.depth - last;
    }

    TimberEnd wall_end(int wall) const {
        TimberEnd end;
        end.wall = wall;
        end.bearing = floor_.bearing.mm();
        end.tailed = floor_.pocket == PocketKind::tailed;
        return end;
    }
    TimberEnd trimmer_end() const {
        TimberEnd end;
        end.bearing = std::min(floor_.bearing.mm(), deepest_housing * joist_width());
        end.height = notched_part * std::min(floor_.joist.height.mm(), tip_height());
        return end;
    }

    /// The wall that a timber along x of the floor ends in, at that side of the room.
    std::optional<WallFace> side_wall(double x, double y, int way) const {
        const Vec2 toward = static_cast<double>(way) * flat(room_.frame.x);
        return first_face(layout_, world({x, y}), toward);
    }

    bool add_beams(const std::vector<double> &joists) {
        const auto carried = bays_with(joists);
        for (const Beam &b : floor_.beams)
            if (!add_beam(b, carried)) return false;
        return true;
    }

    /// The bays in which a joist lies: in a strip too narrow for one, as between a partition and a wing's
    /// wall, there is nothing for a beam to carry.
    std::vector<std::pair<double, double>> bays_with(const std::vector<double> &joists) const {
        std::vector<std::pair<double, double>> carried;
        for (const auto &bay : bays_)
            if (std::any_of(joists.begin(), joists.end(),
                            [&](double x) { return x > bay.first && x < bay.second; }))
                carried.push_back(bay);
        return carried;
    }

    bool add_beam(const Beam &b, const std::vector<std::pair<double, double>> &bays) {
        const double y = b.from_wall.mm(), half = b.size.width.mm() / 2;
        if (y < half + least_beside || y > room_.depth - half - least_beside)
            return refuse("beam", said("a beam %1 from wall %2 lies in a wall", in_mm(y), floor_.from),
                          said("between %1 and %2 it fits", in_mm(half + least_beside),
                               in_mm(room_.depth - half - least_beside)));
        for (const Hole &h : holes_)
            if (y + half > h.near - widest() && y - half < h.away + widest())
                return refuse("beam", said("a beam %1 from wall %2 crosses a floor opening or its trimmers",
                                           in_mm(y), floor_.from));
        for (std::size_t i = 0; i < bays.size(); ++i) {
            const bool shared_left = i > 0 && next_to(bays[i - 1], bays[i]);
            const bool shared_right = i + 1 < bays.size() && next_to(bays[i], bays[i + 1]);
            if (!add_beam_in(bays[i], b, y, shared_left, shared_right)) return false;
        }
        return true;
    }

    /// Whether one wall alone stands between two bays, so that the beams of both lie in it.
    bool next_to(const std::pair<double, double> &bay, const std::pair<double, double> &next) const {
        return std::none_of(bays_.begin(), bays_.end(),
                            [&](const auto &b) { return b.first > bay.first && b.first < next.first; });
    }

    bool add_beam_in(const std::pair<double, double> &bay, const Beam &b, double y, bool shared_left,
                     bool shared_right) {
        const double middle = (bay.first + bay.second) / 2;
        const auto left = side_wall(middle, y, -1), right = side_wall(middle, y, 1);
        if (!left || !right)
            return refuse("beam", said("no wall square to the beam carries its %1 end",
                                       left ? said("right") : said("left")));
        PlannedTimber t;
        t.use = TimberUse::beam;
        t.from = {middle - left->distance, y};
        t.to = {middle + right->distance, y};
        t.datum = beam_end(*left, shared_left);
        t.far = beam_end(*right, shared_right);
        t.load_width = half_way(y);
        t.width_from = t.width_to = b.size.width.mm();
        t.height_from = t.height_to = b.size.height.mm();
        plan_.timbers.push_back(t);
        ends_at_.push_back({});
        return true;
    }

    /// Half of the way from a beam to what carries the joists before and behind it.
    double half_way(double y) const {
        double before = 0, behind = room_.depth;
        for (const Beam &b : floor_.beams) {
            if (b.from_wall.mm() < y) before = std::max(before, b.from_wall.mm());
            if (b.from_wall.mm() > y) behind = std::min(behind, b.from_wall.mm());
        }
        return (behind - before) / 2;
    }

    /// In a wall between two bays the beam of the other bay lies in the same log from behind.
    TimberEnd beam_end(const WallFace &face, bool shared = false) const {
        TimberEnd end;
        end.wall = face.wall;
        const double most = thickness(face.wall) - least_beside;
        end.bearing = std::min(floor_.bearing.mm(), shared ? most / 2 : most);
        return end;
    }

    /// The full joist whose side stands at x, to carry a trimmer's end.
    int joist_beside(double x) const {
        for (std::size_t i = 0; i < plan_.timbers.size(); ++i)
            if (plan_.timbers[i].use == TimberUse::joist &&
                std::abs(plan_.timbers[i].from.x - x) < tolerance::clear)
                return static_cast<int>(i);
        return -1;
    }

    void add_trimmers() {
        for (const Hole &h : holes_) {
            if (h.trims_near) add_trimmer(h, h.near - joist_width() / 2, true);
            if (h.trims_away) add_trimmer(h, h.away + joist_width() / 2, false);
        }
        put_carriers_first();
    }

    void add_trimmer(const Hole &h, double y, bool near) {
        PlannedTimber t;
        t.use = TimberUse::trimmer;
        t.from = {h.left, y};
        t.to = {h.right, y};
        if (!set_trimmer_end(t.datum, h.joist_left, h.left - widest() / 2, y, -1, t.from) ||
            !set_trimmer_end(t.far, h.joist_right, h.right + widest() / 2, y, 1, t.to)) {
            good_ = refuse("opening", said("nothing carries the trimmer at the opening's %1 end",
                                           near ? said("near") : said("far")));
            return;
        }
        t.width_from = t.width_to = joist_width();
        t.height_from = t.height_to = std::min(floor_.joist.height.mm(), tip_height());
        t.top = room_.level;
        const int index = static_cast<int>(plan_.timbers.size());
        t.load_width = (near ? h.near : room_.depth - h.away) / 2;
        for (std::size_t i = 0; i < ends_at_.size(); ++i) {
            PlannedTimber &joist = plan_.timbers[i];
            if (near && ends_at_[i].behind == &h) joist.far.carrier = index;
            if (!near && ends_at_[i].before == &h) joist.datum.carrier = index;
        }
        plan_.timbers.push_back(t);
    }

    bool set_trimmer_end(TimberEnd &end, bool joist, double x, double y, int way, Vec2 &at) {
        if (!joist) {
            const double inside = at.x - way * tolerance::clear; // the opening's own side
            const auto face = side_wall(inside, y, way);
            if (!face) return false;
            end = beam_end(*face);
            at.x = inside + way * face->distance;
            return true;
        }
        end = trimmer_end();
        end.carrier = joist_beside(x);
        if (end.carrier < 0) return false;
        // A tapered joist is thinner than the widest: the trimmer reaches its side, where it is thickest
        // within its own width.
        const PlannedTimber &side = plan_.timbers[static_cast<std::size_t>(end.carrier)];
        const double half = joist_width() / 2;
        at.x = side.from.x -
               way * std::max(side.width(side.along(y - half)), side.width(side.along(y + half))) / 2;
        return true;
    }

    void put_carriers_first() {
        std::vector<int> order;
        const auto take = [&](auto wanted) {
            for (std::size_t i = 0; i < plan_.timbers.size(); ++i)
                if (wanted(plan_.timbers[i].use)) order.push_back(static_cast<int>(i));
        };
        take([](TimberUse u) { return u == TimberUse::beam; });
        take([](TimberUse u) { return u == TimberUse::joist; });
        take([](TimberUse u) { return u == TimberUse::trimmer; });
        take([](TimberUse u) { return u == TimberUse::trimmed; });
        std::vector<int> place(order.size());
        for (std::size_t i = 0; i < order.size(); ++i)
            place[static_cast<std::size_t>(order[i])] = static_cast<int>(i);
        std::vector<PlannedTimber> sorted;
        for (const int i : order)
            sorted.push_back(plan_.timbers[static_cast<std::size_t>(i)]);
        for (PlannedTimber &t : sorted)
            for (TimberEnd *end : {&t.datum, &t.far})
                if (end->carrier >= 0) end->carrier = place[static_cast<std::size_t>(end->carrier)];
        plan_.timbers = std::move(sorted);
    }

    /// Half the way to its neighbours, or to the room's side.
    void share_load() {
        for (PlannedTimber &t : plan_.timbers) {
            if (t.across()) continue;
            double left = 0, right = room_.width;
            for (const PlannedTimber &o : plan_.timbers) {
                if (o.across() || o.to.y <= t.from.y || o.from.y >= t.to.y) continue;
                if (o.from.x < t.from.x) left = std::max(left, o.from.x);
                if (o.from.x > t.from.x) right = std::min(right, o.from.x);
            }
            t.load_width = (right - left) / 2;
        }
    }

    /// A beam's top lies under the least high of the joists that it carries.
    bool rest_on_beams() {
        for (PlannedTimber &beam : plan_.timbers) {
            if (beam.use != TimberUse::beam) continue;
            double least = floor_.joist.height.mm();
            bool carries = false;
            const double half = beam.width_from / 2;
            for (PlannedTimber &t : plan_.timbers) {
                if (t.across() || t.from.y > beam.from.y - half || t.to.y < beam.from.y + half) continue;
                if (t.from.x < beam.from.x || t.from.x > beam.to.x) continue;
                t.rests.push_back(beam.from.y - t.from.y);
                for (const double y : {beam.from.y - half, beam.from.y + half})
                    least = std::min(least, t.height(t.along(y)));
                carries = true;
            }
            if (!carries) return refuse("beam", said("a beam of it carries no joist"));
            beam.top = room_.level - least;
        }
        return true;
    }

    struct Trims {
        const Hole *before = nullptr, *behind = nullptr;
    };

    Layout &layout_;
    std::size_t index_;
    const Floor &floor_;
    FloorPlan &plan_;
    FloorPlace &room_;
    std::vector<std::pair<double, double>> bays_; ///< from and to, across the room
    std::vector<Hole> holes_;
    std::vector<Trims> ends_at_; ///< by timber, while joists are added
    bool good_ = true;
};

} // namespace

bool plan_floor(const Shell &shell, Layout &layout, std::size_t floor, FloorPlan &plan) {
    return Planner(shell, layout, floor, plan).plan();
}

} // namespace roundlay
