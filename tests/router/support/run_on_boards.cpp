#include "tests/router/support/run_on_boards.h"

#include "exporters/router/program.h"

#include <algorithm>
#include <cmath>

namespace roundlay::test {

RouterOptions all_stated() {
    RouterOptions options;
    options.board = RouterBoardSize{1800, 1000, 12};
    options.tool = 6, options.feed = 1500, options.plunge = 500, options.spindle = 18000,
    options.depth_step = 3;
    return options;
}

router_test::Setting setting_of(const RouterOptions &o) {
    return {o.board->length, o.board->width, o.board->thickness,  *o.tool, o.through,
            o.safe_height,   o.tab_width,    o.tab_height,        o.tabs,  *o.feed,
            *o.plunge,       *o.depth_step,  o.scribe.value_or(0)};
}

std::vector<router_test::Wanted> wanted_on(const RouterJob &job, std::size_t board,
                                           const std::vector<RouterShape> &shapes) {
    std::vector<router_test::Wanted> all;
    for (const RouterPlace &place : job.boards[board]) {
        const std::string &name = job.templates[place.which].uses.front().name;
        const auto shape = std::ranges::find(shapes, name, &RouterShape::name);
        Vec2 low{INFINITY, INFINITY}, high{-INFINITY, -INFINITY};
        for (const Vec2 p : shape->outline) {
            low = {std::min(low.x, p.x), std::min(low.y, p.y)};
            high = {std::max(high.x, p.x), std::max(high.y, p.y)};
        }
        router_test::Wanted one{name, {}, {}, {}};
        const auto put = [&, turned = place.turned, corner = place.at](Vec2 p) {
            const double x = turned ? high.y - p.y : p.x - low.x, y = turned ? p.x - low.x : p.y - low.y;
            return router_test::Point{corner.x + x, corner.y + y};
        };
        if (job.stated.scribe)
            for (const RouterMark &mark : shape->marks)
                one.marks.emplace_back(put(mark.from), put(mark.to));
        for (const RouterHole &hole : shape->holes)
            if (hole.diameter >= *job.stated.tool - same_as_tool_by)
                one.holes.emplace_back(put(hole.middle), hole.diameter);
        for (const Vec2 p : shape->outline) {
            const router_test::Point at = put(p);
            if (one.outline.empty() ||
                std::hypot(at.x - one.outline.back().x, at.y - one.outline.back().y) > 1e-9)
                one.outline.push_back(at);
        }
        all.push_back(std::move(one));
    }
    return all;
}

std::vector<router_test::KnownCorner> corners_on(const RouterJob &job, std::size_t board) {
    std::vector<router_test::KnownCorner> all;
    for (const RouterPlace &place : job.boards[board])
        for (const InnerCorner &corner : job.templates[place.which].corners) {
            const Vec2 at = on_board(job, place, corner.at);
            all.push_back({{at.x, at.y}, corner.left});
        }
    return all;
}

std::vector<std::string> faults_of_job(const RouterJob &job, const std::vector<RouterShape> &shapes) {
    std::vector<std::string> all;
    for (std::size_t board = 0; board < job.boards.size(); ++board)
        for (const std::string &fault :
             router_test::faults_of(program_text(job, board, "Test", Voice()), setting_of(job.stated),
                                    wanted_on(job, board, shapes), corners_on(job, board)))
            all.push_back("board " + std::to_string(board + 1) + ", " + fault);
    return all;
}

} // namespace roundlay::test
