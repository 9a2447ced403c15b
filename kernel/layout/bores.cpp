#include "kernel/layout/bores.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/text.h"

#include <algorithm>

namespace roundlay {

namespace {

const char *word(BoreUse use) {
    switch (use) {
    case BoreUse::bolt:
        return "bolt";
    case BoreUse::rod:
        return "rod";
    case BoreUse::wire:
        return "wiring bore";
    case BoreUse::hole:
        break;
    }
    return "hole";
}

class StatedBores {
  public:
    StatedBores(const Shell &shell, Layout &layout, const std::vector<std::vector<CourseSpans>> &spans)
        : shell_(shell), layout_(layout), spans_(spans) {}

    bool lay_out() {
        bool good = true;
        for (std::size_t i = 0; i < shell_.bores.size(); ++i) good = bore(i) && good;
        return good;
    }

  private:
    std::string name(std::size_t i) const {
        const StatedBore &b = shell_.bores[i];
        return b.name.empty() ? std::string(word(b.use)) + " " + std::to_string(i + 1) : b.name;
    }

    bool refuse(std::size_t i, int round, const std::string &message, const std::string &key) {
        const std::string wall = shell_.bores[i].wall;
        layout_.findings.push_back({Weight::error, "bore-misses-log",
                                    (round > 0 ? round_place(wall, round) : wall_place(wall)) + ", " + name(i), message,
                                    subject("bore", i, key)});
        return false;
    }

    bool bore(std::size_t i) {
        const StatedBore &b = shell_.bores[i];
        const int index = wall_named(layout_, b.wall);
        if (index < 0) return refuse(i, 0, "there is no wall " + b.wall + " in this shell", "wall");
        const WallPlace &wall = layout_.walls[static_cast<std::size_t>(index)];
        const double half = b.diameter.mm() / 2, y = b.from_outside.value_or(Length::mm(wall.thickness / 2)).mm();
        if (y - half < tolerance::clear || y + half > wall.thickness - tolerance::clear)
            return refuse(i, 0, "a bore of " + say(shell_, 2 * half) + " breaks out of a wall " + say(shell_, wall.thickness) +
                                    " thick", "from_outside");
        const auto &courses = spans_[static_cast<std::size_t>(index)];
        const int last = b.to_round.value_or(static_cast<int>(courses.size()));
        if (last > static_cast<int>(courses.size()))
            return refuse(i, 0, "the wall has only " + std::to_string(courses.size()) + " rounds", "to_round");
        double x = b.from_left.mm();
        for (int round = b.from_round; round <= last; ++round, x += b.drift.mm())
            if (!bore_log(i, wall, courses[static_cast<std::size_t>(round - 1)], {x, y, 0})) return false;
        return true;
    }

    bool bore_log(std::size_t i, const WallPlace &wall, const CourseSpans &course, Vec3 at) {
        const double half = shell_.bores[i].diameter.mm() / 2 + tolerance::clear;
        for (const PieceSpan &s : course) {
            if (at.x - half < s.shoulders.from || at.x + half > s.shoulders.to) continue;
            for (const auto *taken : {&s.taken_above, &s.taken_below})
                for (const Span &t : *taken)
                    if (at.x + half > t.from && at.x - half < t.to)
                        return refuse(i, s.course->round, "it runs into a cut from " + say(shell_, t.from) + " to " +
                                                              say(shell_, t.to) + " from the left", "from_left");
            add(i, wall, s, at);
            return true;
        }
        return refuse(i, course.front().course->round,
                      "there is no whole log " + say(shell_, at.x) + " from the left: an opening or a notch is there; state the "
                      "rounds that it goes through, or another place", "from_left");
    }

    void add(std::size_t i, const WallPlace &wall, const PieceSpan &s, Vec3 at) {
        Piece &piece = layout_.pieces[static_cast<std::size_t>(s.piece)];
        const Course &course = *s.course;
        const Vec3 foot = piece.frame.to_local(wall.frame.to_world({at.x, at.y, course.low(at.x)}));
        // A round log's groove is hollow over the log below, and its own top is crowned.
        const double from = foot.z + (course.hollow > 0 ? course.hollow : -course.lip);
        const double to = foot.z + course.high(at.x) - course.low(at.x) + course.crown;
        const Bore bore{foot.x, foot.y, from, to, shell_.bores[i].diameter.mm(), -1, true, true, shell_.bores[i].use};
        piece.cuts.emplace_back(bore);
    }

    const Shell &shell_;
    Layout &layout_;
    const std::vector<std::vector<CourseSpans>> &spans_;
};

} // namespace

bool lay_out_bores(const Shell &shell, Layout &layout, const std::vector<std::vector<CourseSpans>> &spans) {
    return StatedBores(shell, layout, spans).lay_out();
}

} // namespace roundlay
