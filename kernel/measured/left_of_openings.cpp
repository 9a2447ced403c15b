#include "kernel/measured/left_of_openings.h"

#include "kernel/layout/openings/openings.h"
#include "kernel/layout/plan/plan.h"
#include "kernel/measured/house_numbers.h"
#include "kernel/measured/measured_shell.h"
#include "kernel/measured/opening_numbers.h"

#include <algorithm>

namespace roundlay {

namespace {

/// The same opening later on: by its name; one that has none as it is stated, else by its place among them.
std::optional<std::size_t> same_opening(const Shell &below, std::size_t was, const Shell &now) {
    const auto &all = now.openings;
    const Opening &opening = below.openings[was];
    const auto equal = std::ranges::find(all, opening);
    if (opening.name.empty() && equal != all.end()) return static_cast<std::size_t>(equal - all.begin());
    for (std::size_t i = 0; i < all.size(); ++i)
        if (all[i].wall == opening.wall && name_of(now, i) == name_of(below, was)) return i;
    return {};
}

NotedLength told(double mm) {
    NotedLength number;
    number.value = Length::mm(mm);
    number.written = print_length(*number.value, {});
    return number;
}

/// The size between two edges, where it was measured by them alone.
void keep_size(NotedLength &size, const std::optional<double> &low, const std::optional<double> &high) {
    if (low && high) size = told(*high - *low);
}

class OneOpening {
  public:
    OneOpening(RecordedOpening &left, const Opening &was, const Opening &is, bool from_left)
        : left_(left), was_(was), is_(is), from_left_(from_left) {}

    void leave_out(const Record &record) {
        if (was_.from_left != is_.from_left || was_.width != is_.width) jambs();
        if (was_.sill != is_.sill || was_.height != is_.height) heights(record);
    }

  private:
    void jambs() {
        const Jambs read = jambs_of(left_);
        keep_size(left_.width, read.near, read.far);
        if (was_.width != is_.width) {
            left_.width = told(is_.width.mm());
            (from_left_ ? left_.far_at_sill : left_.near_at_sill) = {};
            (from_left_ ? left_.far_at_head : left_.near_at_head) = {};
        }
        if (was_.from_left == is_.from_left) return;
        left_.near_at_sill = left_.near_at_head = left_.far_at_sill = left_.far_at_head = {};
    }
    void heights(const Record &record) {
        keep_size(left_.height, level_of(record, left_.sill, left_.plane),
                  level_of(record, left_.head, left_.plane));
        if (was_.height != is_.height) left_.height = told(is_.height.mm()), left_.head = {};
        if (was_.sill != is_.sill) left_.sill = left_.head = {};
    }

    RecordedOpening &left_;
    const Opening &was_, &is_;
    bool from_left_;
};

/// The jambs of an opening as it was measured, told from the left end of its wall.
void tell_from_left(RecordedOpening &opening, const Opening &measured, const std::string &corner) {
    const Jambs read = jambs_of(opening);
    opening.zero = corner;
    opening.near_at_sill = opening.near_at_head = opening.far_at_sill = opening.far_at_head = {};
    if (read.far) opening.near_at_sill = told(measured.from_left.mm());
    if (read.near) opening.far_at_sill = told((measured.from_left + measured.width).mm());
}

const Wall *wall_of(const Shell &shell, const std::string &name) {
    const auto wall = std::ranges::find(shell.walls, name, &Wall::name);
    return wall == shell.walls.end() ? nullptr : &*wall;
}

bool is_as_long(const Shell &below, const Shell &now, const std::string &name) {
    const Wall *was = wall_of(below, name), *is = wall_of(now, name);
    return !was || !is || was->length == is->length;
}

} // namespace

void leave_out_of_openings(Record &left, const Record &record, const Shell &below, const Shell &now) {
    if (record.openings.empty() || (below.openings == now.openings && below.walls == now.walls)) return;
    const auto plan = lay_out_plan(below);
    if (!stand(plan)) return;
    const Shell measured = measured_shell(below, record).shell;
    left.openings.clear();
    for (const RecordedOpening &recorded : record.openings) {
        const auto called_so = openings_called(below, recorded);
        if (called_so.size() != 1) {
            left.openings.push_back(recorded); // it is told why nothing is made of it
            continue;
        }
        const std::size_t was = called_so.front();
        const auto is = same_opening(below, was, now);
        if (!is) continue;
        RecordedOpening kept = recorded;
        kept.name = name_of(now, *is);
        const auto wall = wall_named(plan, below.openings[was].wall);
        auto from = wall ? end_at(record, plan, *wall, kept.zero) : std::nullopt;
        if (from == LogEnd::right && !is_as_long(below, now, below.openings[was].wall)) {
            tell_from_left(kept, measured.openings[was], plan.corners[plan.walls[*wall].start_corner].name);
            from = LogEnd::left;
        }
        OneOpening(kept, below.openings[was], now.openings[*is], from != LogEnd::right).leave_out(record);
        left.openings.push_back(kept);
    }
}

} // namespace roundlay
