#include "kernel/layout/floors/floor_plan.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/floors/floor_bays.h"
#include "kernel/layout/floors/hole.h"
#include "kernel/layout/floors/joist_places.h"
#include "kernel/layout/floors/joist_sizes.h"
#include "kernel/layout/floors/planned_timbers.h"
#include "kernel/layout/no_wood.h"
#include "kernel/layout/text.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

/// A housing for a trimmer takes at most this part of the width of the joist that carries it. Common
/// practice, no source.
constexpr double deepest_housing = 0.4;

class Planner {
  public:
    Planner(const Shell &shell, const Plan &house, std::size_t index)
        : shell_(shell), house_(house), index_(index), floor_(shell.floors[index]), room_(plan_.place) {}

    Found<FloorPlan> planned() { return plan(), std::move(plan_); }

  private:
    bool plan() {
        if (!find_room()) return false;
        bays_ = FloorBays(house_, room_);
        if (const WallPlace *wall = bays_.in_the_way())
            return refuse("to",
                          said("wall %1 stands in the room between walls %2 and %3", wall->name, floor_.from,
                               floor_.to),
                          said("state a floor to each side of it"));
        const auto say = [this](Weight weight, const std::string &key, Said what,
                                std::optional<Said> advice) {
            return say_of(weight, key, std::move(what), std::move(advice));
        };
        if (!check_joist_sizes(shell_, floor_, std::min(thickness(room_.from), thickness(room_.to)), say))
            return false;
        bool holes_fit = true; // what is wrong with one keeps nobody from hearing of the next, nor of beams
        for (const FloorOpening &o : floor_.openings)
            holes_fit = add_hole(o) && holes_fit;
        const JoistPlaces joists = joist_places(floor_, room_.width, bays_, beside_holes());
        const std::vector<double> &places = joists.places;
        if (places.empty()) return refuse("spacing", said("no joist fits between the sides of the room"));
        if (!add_beams(places) || !holes_fit) return false;
        warn_of_left_out(joists);
        add_joists(places);
        add_trimmers();
        share_load(plan_, house_, floor_.spacing.mm());
        if (!rest_on_beams(plan_, floor_.joist.height.mm()))
            return refuse("beam", said("a beam of it carries no joist"));
        return good_;
    }

    bool refuse(const std::string &key, Said what, std::optional<Said> advice = {}) {
        return say_of(Weight::error, key, std::move(what), std::move(advice));
    }
    /// True where it can be cut all the same.
    bool say_of(Weight weight, const std::string &key, Said what, std::optional<Said> advice) {
        plan_.findings.push_back({weight,
                                  "floor-does-not-fit",
                                  {about::Floor{floor_.name}},
                                  std::move(what),
                                  std::move(advice),
                                  subject("floor", index_, key)});
        return weight != Weight::error;
    }

    bool find_room() {
        const auto from = wall_named(house_, floor_.from), to = wall_named(house_, floor_.to);
        if (!from || !to)
            return refuse(!from ? "from" : "to",
                          said("there is no wall %1 in this shell", !from ? floor_.from : floor_.to));
        const auto room = room_between(house_, *from, *to);
        if (!room)
            return refuse("to", said("walls %1 and %2 do not face each other: joists lie between two walls "
                                     "that run alike, but "
                                     "for 1 in 50",
                                     floor_.from, floor_.to));
        room_ = *room;
        room_.name = floor_.name;
        plan_.tail = floor_.tail.ratio();
        room_.level = floor_.level.mm();
        return true;
    }

    double thickness(Index<WallPlace> wall) const { return house_.walls[wall].thickness; }
    double joist_width() const { return floor_.joist.width.mm(); }
    double tip_width() const { return floor_.tip_width.value_or(floor_.joist.width).mm(); }
    double tip_height() const { return floor_.tip_height.value_or(floor_.joist.height).mm(); }
    double widest() const { return std::max(joist_width(), tip_width()); }

    bool add_hole(const FloorOpening &o) {
        const HoleRoom room{
            shell_, house_, room_, bays_, widest() + least_beside_joist, joist_width() + least_beside_joist};
        const auto hole = hole_of(room, o, holes_, [this](Said what, std::optional<Said> advice) {
            refuse("opening", std::move(what), std::move(advice));
        });
        if (hole) holes_.push_back(*hole);
        return hole.has_value();
    }

    std::vector<double> beside_holes() const {
        std::vector<double> places;
        for (const Hole &h : holes_) {
            if (h.joist_left) places.push_back(h.left - widest() / 2);
            if (h.joist_right) places.push_back(h.right + widest() / 2);
        }
        return places;
    }

    /// Boards then reach further than the spacing says.
    void warn_of_left_out(const JoistPlaces &joists) {
        for (const double x : joists.left_out) {
            const double apart = room_about(x, joists.places, room_.width);
            if (apart <= floor_.spacing.mm() + tolerance::clear) continue;
            say_of(Weight::warning, floor_.first ? "first" : "spacing",
                   said("no joist lies %1 from the left of the room, where it would be in a wall: from one "
                        "joist to the next it is %2 there, where %3 is stated",
                        in_mm(x), in_mm(apart), in_mm(floor_.spacing.mm())),
                   said("move the joists by the floor's first or spacing"));
        }
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
            if (!before || before->trims_away) add_joist(x, from, room_.depth_at(x), before, nullptr, number);
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
        const bool butt_at_datum = butt_lies_at_datum(floor_, room_.depth, number);
        t.width_from = butt_at_datum ? joist_width() : tip_width();
        t.width_to = butt_at_datum ? tip_width() : joist_width();
        t.height_from = butt_at_datum ? floor_.joist.height.mm() : tip_height();
        t.height_to = butt_at_datum ? tip_height() : floor_.joist.height.mm();
        ends_at_.push_back({before, behind});
        plan_.timbers.push_back(t);
    }

    TimberEnd wall_end(Index<WallPlace> wall) const {
        TimberEnd end;
        end.wall = wall;
        end.lean = lean_of(wall, false);
        end.bearing = floor_.bearing.mm();
        end.tailed = floor_.pocket == PocketKind::tailed;
        return end;
    }
    /// Of a wall, seen along a timber that lies along the joists or `across` them.
    double lean_of(Index<WallPlace> wall, bool across) const {
        const Vec3 way = room_.frame.direction_to_local(house_.walls[wall].frame.x);
        const double lean = across ? way.x / way.y : -way.y / way.x;
        return std::abs(lean) < parallel ? 0 : lean;
    }

    TimberEnd trimmer_end() const {
        TimberEnd end;
        end.bearing = std::min(floor_.bearing.mm(), deepest_housing * joist_width());
        end.height = notched_part * std::min(floor_.joist.height.mm(), tip_height());
        return end;
    }

    /// The wall that a timber along x of the floor ends in, at that side of the room.
    std::optional<WallFace> side_wall(double x, double y, int way) const {
        return first_face(house_, flat(room_.frame.to_world({x, y, 0})),
                          static_cast<double>(way) * flat(room_.frame.x));
    }

    bool add_beams(const std::vector<double> &joists) {
        const auto carried = bays_.with(joists);
        for (const Beam &b : floor_.beams)
            if (!add_beam(b, carried)) return false;
        return true;
    }

    bool add_beam(const Beam &b, const std::vector<FloorBays::Bay> &bays) {
        const double y = b.from_wall.mm(), half = b.size.width.mm() / 2;
        if (y < half + least_beside_joist || y > room_.depth - half - least_beside_joist)
            return refuse("beam", said("a beam %1 from wall %2 lies in a wall", in_mm(y), floor_.from),
                          said("between %1 and %2 it fits", no_less(shell_, half + least_beside_joist),
                               no_more(shell_, room_.depth - half - least_beside_joist)));
        if (crosses(holes_, y, half + widest()))
            return refuse(
                "beam",
                said("a beam %1 from wall %2 crosses a floor opening or its trimmers", in_mm(y), floor_.from),
                clear_of(shell_, holes_, y, half + widest(),
                         {half + least_beside_joist, room_.depth - half - least_beside_joist}));
        for (std::size_t i = 0; i < bays.size(); ++i)
            if (!add_beam_in(i, bays, b)) return false;
        return true;
    }

    bool add_beam_in(std::size_t i, const std::vector<FloorBays::Bay> &bays, const Beam &b) {
        const bool shared_left = i > 0 && bays_.are_neighbours(bays[i - 1], bays[i]);
        const bool shared_right = i + 1 < bays.size() && bays_.are_neighbours(bays[i], bays[i + 1]);
        const double y = b.from_wall.mm(), middle = (bays[i].first + bays[i].second) / 2;
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
        t.load_width = half_way(floor_, room_.greatest_depth(), y);
        t.width_from = t.width_to = b.size.width.mm();
        t.height_from = t.height_to = b.size.height.mm();
        plan_.timbers.push_back(t);
        ends_at_.push_back({});
        return true;
    }

    /// In a wall between two bays the beam of the other bay lies in the same log from behind.
    TimberEnd beam_end(const WallFace &face, bool shared = false) const {
        TimberEnd end;
        end.wall = face.wall;
        end.lean = lean_of(face.wall, true);
        const double most = thickness(face.wall) - least_beside_joist;
        end.bearing = std::min(floor_.bearing.mm(), shared ? most / 2 : most);
        return end;
    }

    /// The full joist whose side stands at x, to carry a trimmer's end.
    std::optional<Index<PlannedTimber>> joist_beside(double x) const {
        for (const auto i : plan_.timbers.indices())
            if (plan_.timbers[i].use == TimberUse::joist &&
                std::abs(plan_.timbers[i].from.x - x) < tolerance::clear)
                return i;
        return {};
    }

    void add_trimmers() {
        for (const Hole &h : holes_) {
            if (h.trims_near) add_trimmer(h, h.near - joist_width() / 2, true);
            if (h.trims_away) add_trimmer(h, h.away + joist_width() / 2, false);
        }
        put_carriers_first(plan_.timbers);
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
        const auto index = plan_.timbers.next();
        t.load_width = (near ? h.near : room_.greatest_depth() - h.away) / 2;
        for (const auto i : ends_at_.indices()) {
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
        if (!end.carrier) return false;
        // A tapered joist is thinner than the widest: the trimmer reaches its side, where it is thickest
        // within its own width.
        const PlannedTimber &side = plan_.timbers[*end.carrier];
        const double half = joist_width() / 2;
        at.x = side.from.x -
               way * std::max(side.width(side.along(y - half)), side.width(side.along(y + half))) / 2;
        return true;
    }

    struct Trims {
        const Hole *before = nullptr, *behind = nullptr;
    };

    const Shell &shell_;
    const Plan &house_;
    std::size_t index_;
    const Floor &floor_;
    Found<FloorPlan> plan_;
    FloorPlace &room_;
    FloorBays bays_;
    std::vector<Hole> holes_;
    Indexed<Trims, PlannedTimber> ends_at_; ///< by timber, while joists are added
    bool good_ = true;
};

} // namespace

Found<FloorPlan> plan_floor(const Shell &shell, const Plan &house, std::size_t floor) {
    return Planner(shell, house, floor).planned();
}

} // namespace roundlay
