#include "exporters/report/fitted_wall.h"
#include "exporters/report/marks.h"
#include "exporters/report/parts.h"
#include "exporters/report/wall_marks.h"
#include "kernel/survey/survey.h"

#include <algorithm>

namespace roundlay::sheets {

namespace {

MarkedWall wall_of(const Draft &draft, const Record &record, const SeenShell &seen, const Words &words,
                   Index<WallPlace> wall, WallSide side) {
    MarkedWall marked{draft.shell, draft.layout, seen, words, wall, side, {}, {}, "", true, {}};
    marked.corner_called = [&](const std::string &corner) {
        return corner_name(record, draft.layout, corner);
    };
    return marked;
}

void add_wood_side(ReportPages &pages, const Draft &draft, const Record &record, const SeenShell &seen,
                   const std::vector<FormLog> &logs, Index<WallPlace> wall, WallSide side, double tallest) {
    const Words &words = pages.words();
    MarkedWall marked = wall_of(draft, record, seen, words, wall, side);
    marked.areas = wood_areas(record, draft.layout, logs, side, words);
    marked.points = found_points(record, draft.layout, logs);
    marked.caption = words.say("its wood, pegs and later cuts");
    add_wall(pages, std::move(marked), tallest);
}

} // namespace

void wall_part(ReportPages &pages, const Draft &draft, const ReportSource &source, Index<WallPlace> wall) {
    const Record &record = *source.record;
    const std::string &name = draft.layout.walls[wall].name;
    const Words &words = pages.words();
    pages.begin_part(words.say("Wall %1", name), "report-wall:" + name);
    const std::vector<FormLog> logs = form_logs(record, draft.layout).walls[wall];
    const double width = pages.room().width(), half = pages.room().height() / 2 - 28;
    const SeenShell outside = seen_wall(draft.layout, draft.bodies, wall, WallSide::outside);
    MarkedWall decided = wall_of(draft, record, outside, words, wall, WallSide::outside);
    decided.areas = decision_areas(draft.layout, logs, words);
    const std::vector<MarkedArea> mends = mend_areas(draft.layout, logs, source);
    decided.areas.insert(decided.areas.end(), mends.begin(), mends.end());
    decided.caption = words.say("what becomes of each log");
    pages.hold();
    add_wall(pages, std::move(decided), half);
    pages.add(key_of(decision_marks(words), width));
    if (!mends.empty()) pages.add_text(said_of_mend_areas(words));
    pages.release();
    pages.hold();
    add_wood_side(pages, draft, record, outside, logs, wall, WallSide::outside, half);
    if (shows_inside(logs)) {
        pages.release();
        pages.hold();
        const SeenShell inside = seen_wall(draft.layout, draft.bodies, wall, WallSide::inside);
        add_wood_side(pages, draft, record, inside, logs, wall, WallSide::inside, half);
    }
    pages.add(key_of(wood_marks(words), width));
    pages.add(key_of_symbols(words, width));
    pages.add_text(
        words.say("A tag in brackets is of the drawing: nobody has recorded a log there. ≠: measures "
                  "contradict one another; p: height and width are proposed. Dashed: on the other "
                  "side alone."));
    pages.release();
}

} // namespace roundlay::sheets
