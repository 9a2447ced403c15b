#include "exporters/report/marks.h"
#include "exporters/report/parts.h"
#include "exporters/sheets/drawing/board.h"
#include "exporters/sheets/drawing/columns.h"
#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/plan/plan_frame.h"
#include "exporters/sheets/set/scales.h"
#include "kernel/record/numbers.h"
#include "kernel/survey/survey.h"

#include <algorithm>
#include <map>

namespace roundlay::sheets {

namespace {

/// "K 12, M 1": how many logs of the wall each decision takes.
std::string counts_of(const std::vector<FormLog> &logs, const Words &words) {
    std::map<std::string, int> counts;
    std::vector<std::string> letters, all;
    for (const MarkOf &mark : decision_marks(words))
        letters.push_back(mark.letter);
    for (const FormLog &log : logs)
        if (log.recorded) ++counts[mark_of(last_decision(log.found), words).letter];
    for (const std::string &letter : letters)
        if (counts.contains(letter)) all.push_back(letter + " " + std::to_string(counts[letter]));
    return joined(all);
}

class PlanDrawer {
  public:
    PlanDrawer(const Draft &draft, const Record &record, const Words &words, double scale)
        : draft_(draft), record_(record), words_(words), logs_(form_logs(record, draft.layout)), k_(scale) {}

    Block draw() {
        for (const auto wall : draft_.layout.walls.indices())
            add_wall(wall);
        for (const CornerPlace &corner : draft_.layout.corners)
            add_corner(corner);
        for (const auto wall : draft_.layout.walls.indices())
            add_counts(wall);
        const Rect all = bounds(board_.items());
        for (Item &item : north_arrow({all.x1 + 8, all.y0}))
            board_.add(std::move(item));
        return {bounds(board_.items()).grown(1), std::move(board_).finished()};
    }

  private:
    Vec2 paper(const WallPlace &wall, double x, double y) const {
        const Vec3 at = wall.frame.to_world({x, y, 0});
        return {at.x * k_, at.y * k_};
    }
    void line(Vec2 a, Vec2 b) { board_.add(Path{{a, b}, false, Line::visible, ""}); }

    /// Its two faces, with gaps where openings are.
    void add_wall(Index<WallPlace> index) {
        const WallPlace &wall = draft_.layout.walls[index];
        std::vector<double> turns{0, wall.length};
        for (const Opening &o : draft_.shell.openings)
            if (o.wall == wall.name)
                turns.insert(turns.end(), {o.from_left.mm(), (o.from_left + o.width).mm()});
        std::ranges::sort(turns);
        for (const double y : {0.0, wall.thickness})
            for (std::size_t i = 0; i + 1 < turns.size(); i += 2)
                line(paper(wall, turns[i], y), paper(wall, turns[i + 1], y));
        for (const double x : turns)
            line(paper(wall, x, 0), paper(wall, x, wall.thickness));
    }

    Vec2 outward(const WallPlace &wall) const {
        const Vec3 way = -1.0 * wall.frame.y;
        return {way.x, way.y};
    }

    void put(const std::string &words, Vec2 at, Vec2 way, double turn, bool bold) {
        Text text = lettered(words, {}, least_lettering, bold, Role::mark);
        text.across = Across::middle, text.upright = Upright::middle, text.turn = turn;
        std::vector<Vec2> places;
        for (const double away : {4.0, 8.0, 12.0, 16.0})
            places.push_back(at + away * way);
        board_.put(text, places);
    }

    void add_counts(Index<WallPlace> index) {
        const WallPlace &wall = draft_.layout.walls[index];
        const Vec3 along = wall.frame.x;
        const std::string counts = counts_of(logs_.walls[index], words_);
        const std::string name = words_.say("Wall %1", wall.name);
        put(counts.empty() ? name : words_.say("%1: %2", name, counts), paper(wall, wall.length / 2, 0),
            outward(wall), reading_turn({along.x, along.y}), false);
    }

    void add_corner(const CornerPlace &corner) {
        if (corner.kind != CornerKind::corner) return;
        const Vec2 way =
            outward(draft_.layout.walls[corner.ends]) + outward(draft_.layout.walls[corner.starts]);
        const Vec2 at{corner.centre.x * k_, corner.centre.y * k_};
        put(corner_name(record_, draft_.layout, corner.name), at, 0.9 * way, 0, true);
    }

    const Draft &draft_;
    const Record &record_;
    const Words &words_;
    FormLogs logs_;
    double k_;
    Board board_;
};

/// Nothing where no scale that is drawn to fits.
std::optional<Block> drawn_plan(const Draft &draft, const Record &record, const ReportPages &pages) {
    const double tallest = pages.room().height() * 0.48;
    for (const Scale &scale : shell_scales(draft.shell.units)) {
        Block block = PlanDrawer(draft, record, pages.words(), scale.ratio).draw();
        if (block.room.width() <= pages.room().width() && block.room.height() <= tallest) return block;
    }
    return {};
}

Table corner_table(const Record &record, const Words &words) {
    Table table = table_called(words, words.say("Corners, as they were measured"));
    table.columns = {
        flush_left(words.say("Corner"), 18),      flush_left(words.say("Level"), 22),
        flush_left(words.say("Plane"), 16),       flush_left(words.say("Leans out, first wall"), 26),
        flush_left(words.say("second wall"), 24), flush_left(words.say("over"), 20),
        flush_left(words.say("Note"), 55)};
    for (const RecordedCorner &corner : record.corners)
        table.rows.push_back({corner.name, noted_words(corner.level, words), corner.plane,
                              noted_words(corner.lean_first, words), noted_words(corner.lean_second, words),
                              noted_words(corner.lean_over, words), corner.note});
    return table;
}

Table length_table(const Record &record, const Words &words) {
    Table table = table_called(words, words.say("Walls and diagonals, as they were measured"));
    table.columns = {flush_left(words.say("What"), 50), flush_left(words.say("Side"), 30),
                     flush_left(words.say("Length"), 35), flush_left(words.say("Note"), 55)};
    const auto side = [&](ReadFrom from) {
        return from == ReadFrom::outside ? words.say("outside") : words.say("inside");
    };
    for (const RecordedWall &wall : record.walls)
        table.rows.push_back({words.say("Wall %1", wall.wall), side(wall.read_from),
                              noted_words(wall.length, words), wall.note});
    for (const Diagonal &diagonal : record.diagonals)
        table.rows.push_back({words.say("from %1 to %2", diagonal.from, diagonal.to), side(diagonal.side),
                              noted_words(diagonal.length, words), ""});
    return table;
}

/// A number at the sill and one at the head, where both were taken.
std::string at_both(const NotedLength &sill, const NotedLength &head, const Words &words) {
    const std::string low = noted_words(sill, words), high = noted_words(head, words);
    return low.empty() || high.empty() || low == high ? (low.empty() ? high : low) : low + "; " + high;
}

Table opening_table(const Record &record, const Words &words) {
    Table table = table_called(words, words.say("Openings, as they were measured on the outside face"));
    table.columns = {flush_left(words.say("Opening"), 24),   flush_left(words.say("from corner"), 14),
                     flush_left(words.say("Near jamb"), 24), flush_left(words.say("far jamb"), 24),
                     flush_left(words.say("Width"), 17),     flush_left(words.say("Height"), 17),
                     flush_left(words.say("Sill"), 17),      flush_left(words.say("Head"), 17),
                     flush_left(words.say("Plane"), 10),     flush_left(words.say("Note"), 14)};
    for (const RecordedOpening &each : record.openings)
        if (is_measured(each))
            table.rows.push_back({words.name(each.name), words.name(each.zero),
                                  at_both(each.near_at_sill, each.near_at_head, words),
                                  at_both(each.far_at_sill, each.far_at_head, words),
                                  noted_words(each.width, words), noted_words(each.height, words),
                                  noted_words(each.sill, words), noted_words(each.head, words), each.plane,
                                  each.note});
    return table;
}

} // namespace

std::vector<Sheet> plan_part(const Draft &draft, const ReportSource &source) {
    ReportPages pages = pages_of(draft, draft.words().say("Plan"), "plan");
    const Words &words = pages.words();
    if (auto plan = drawn_plan(draft, *source.record, pages)) pages.add(std::move(*plan));
    pages.add_text(words.say("Beside each wall: how many of its logs each decision takes."));
    pages.add(key_of(decision_marks(words), pages.room().width()));
    for (const Table &table : {length_table(*source.record, words), corner_table(*source.record, words),
                               opening_table(*source.record, words)})
        if (!table.rows.empty()) pages.add(table);
    return pages.finished();
}

} // namespace roundlay::sheets
