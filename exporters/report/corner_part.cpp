#include "exporters/report/fitted_wall.h"
#include "exporters/report/marks.h"
#include "exporters/report/parts.h"
#include "exporters/report/wall_marks.h"
#include "exporters/sheets/drawing/text.h"
#include "kernel/survey/survey.h"

#include <algorithm>

namespace roundlay::sheets {

namespace {

constexpr double shown = 800; ///< mm of each wall, from the crossing one on

class Corners {
  public:
    Corners(const Draft &draft, const ReportSource &source, const Words &words)
        : draft_(draft), source_(source), words_(words), logs_(form_logs(*source.record, draft.layout)) {
        for (const auto wall : draft.layout.walls.indices())
            seen_.push_back(seen_wall(draft.layout, draft.bodies, wall, WallSide::outside));
    }

    /// The largest scale at which every corner is no taller than that.
    const Scale *scale(double tallest) const {
        double top = 1;
        for (const SeenShell &seen : seen_)
            top = std::max(top, top_of(seen));
        for (const Scale &scale : shell_scales(words_.system()))
            if (top * scale.ratio <= tallest) return &scale;
        return nullptr;
    }

    /// Both walls from outside, with the arris between them.
    Block block(const CornerPlace &corner, const Scale &scale) const {
        constexpr double between = 1.5, over = 3;
        const Block ends = side(corner, corner.ends, scale), starts = side(corner, corner.starts, scale);
        const double low = std::min(ends.room.y0, starts.room.y0);
        Block all;
        double x = 0;
        for (const Block *part : {&ends, &starts}) {
            const Vec2 corner_of_it{x, part->room.y0 - low};
            for (Item &item : placed(*part, corner_of_it).items)
                all.items.push_back(std::move(item));
            x += part->room.width() + between;
        }
        const Rect drawn = bounds(all.items);
        all.items.emplace_back(
            lettered(words_.say("Corner %1", corner_name(*source_.record, draft_.layout, corner.name)),
                     {drawn.x0, drawn.y1 + over}, 3, true, Role::caption));
        all.room = bounds(all.items).grown(0.5);
        return all;
    }

  private:
    Block side(const CornerPlace &corner, Index<WallPlace> wall, const Scale &scale) const {
        const auto &meetings = draft_.layout.walls[wall].meetings;
        const auto meeting = std::ranges::find_if(meetings, [&](const WallMeeting &m) {
            return draft_.layout.corners[m.corner].name == corner.name;
        });
        MarkedWall marked{draft_.shell, draft_.layout, seen_[wall], words_, wall, WallSide::outside, {}, {},
                          "",           false,         {}};
        marked.areas = decision_areas(draft_.layout, logs_.walls[wall], words_);
        for (MarkedArea &area : mend_areas(draft_.layout, logs_.walls[wall], source_))
            marked.areas.push_back(std::move(area));
        marked.caption = words_.say("Wall %1", draft_.layout.walls[wall].name);
        const Along stretch = both(seen_along(marked), {meeting->low - shown, meeting->high + shown});
        return drawn(marked, stretch, scale.ratio).block;
    }

    const Draft &draft_;
    const ReportSource &source_;
    const Words &words_;
    FormLogs logs_;
    Indexed<SeenShell, WallPlace> seen_;
};

} // namespace

void corner_part(ReportPages &pages, const Draft &draft, const ReportSource &source) {
    if (draft.layout.corners.empty()) return;
    const Words &words = pages.words();
    const Corners corners(draft, source, words);
    const Scale *scale = corners.scale(pages.room().height() / 2 - 20);
    if (scale == nullptr) return;
    pages.begin_part(words.say("Corners"), "report-corners");
    std::vector<Block> blocks;
    for (const CornerPlace &corner : draft.layout.corners)
        blocks.push_back(corners.block(corner, *scale));
    pages.add_side_by_side(std::move(blocks));
    pages.hold();
    pages.add_text(
        words.say("Each corner from outside, its two walls side by side, %1.", said_scale(scale, words)));
    pages.add(key_of(decision_marks(words), pages.room().width()));
    if (!source.mends.empty()) pages.add_text(said_of_mend_areas(words));
    pages.release();
}

} // namespace roundlay::sheets
