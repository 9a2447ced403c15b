// Shapes to be cut out of boards by a router: contours that the middle of the tool follows, nested on boards.
//
// All lengths are millimetres, speeds millimetres a minute. x and y are those of a board seen from above,
// from its lower left corner; z is 0 at the board's top and points up.
#pragma once

#include "kernel/geometry/vec.h"
#include "kernel/measure/said.h"

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace roundlay {

struct RouterBoardSize {
    double length = 0, width = 0, thickness = 0; ///< length along x
};

/// What a person states. What has no value here was not stated: nobody else knows what their tool, their wood
/// and their machine bear, so nothing is assumed.
struct RouterOptions {
    std::optional<RouterBoardSize> board;
    std::optional<double> tool;       ///< diameter of a straight cutter that cuts to its centre
    std::optional<double> feed;       ///< along the contour
    std::optional<double> plunge;     ///< straight down
    std::optional<double> spindle;    ///< turns a minute
    std::optional<double> depth_step; ///< the most that is taken off at one pass
    double safe_height = 20;          ///< over the board's top, where the tool moves from place to place
    double through = 0.3;             ///< below the board, into what it lies on
    std::optional<double> margin;     ///< from the board's border to a template; else usual_air
    std::optional<double> spacing;    ///< between two templates; else usual_air
    int tabs = 4;                     ///< bridges that hold a template, 2 to 20
    double tab_width = 8, tab_height = 3;
    std::optional<double> scribe; ///< how deep marks are cut, as grooves as wide as the tool; else none are
};

/// Within which each of these lies by itself.
struct RouterBounds {
    static constexpr double thinnest = 0.5, longest = 20000; ///< of boards, and of what is on them
    static constexpr double thinnest_tool = 1, thickest_tool = 50;
    static constexpr double slowest = 1, fastest = 30000; ///< what is over it was stated in another unit
    static constexpr double most_turns = 60000;
    static constexpr double least_step = 0.1, finest_mark = 0.1, deepest_through = 10;
    static constexpr int fewest_tabs = 2, most_tabs = 20;
};

/// What cannot be, or is missing, and by which option it is stated.
struct RouterProblem {
    std::string_view option; ///< "depth-step"
    Said what;
    bool missing = false;
};

/// All that is against what is stated, before any shape is looked at.
std::vector<RouterProblem> against(const RouterOptions &options);

/// A straight line on a template, from end to end: the middle of a shallow groove.
struct RouterMark {
    Vec2 from, to;
};

/// A round hole through a template, to bore by.
struct RouterHole {
    Vec2 middle;
    double diameter = 0;
};

/// What is to be cut out: its outline stays, the wood round it goes.
struct RouterShape {
    std::string name;
    std::vector<Vec2> outline; ///< closed, counter-clockwise, does not cross itself
    std::vector<RouterMark> marks = {};
    std::vector<RouterHole> holes = {}; ///< within the outline
};

/// An inner corner that a round tool leaves full.
struct InnerCorner {
    Vec2 at;
    double left = 0; ///< how far from the corner wood stays, along the line that halves it
};

/// One straight move or one arc of the middle of the tool.
struct RouterMove {
    Vec2 to;
    std::optional<Vec2> centre = {}; ///< of an arc
    bool counter_clockwise = false;
    bool over_tab = false; ///< not below the top of the tab
};

/// Round a template clockwise as seen from above, so that its wood lies to the right of the tool.
struct RouterContour {
    Vec2 start;              ///< on it, in the middle of a straight move
    Vec2 lead_from, lead_to; ///< a quarter round into it and one out of it, through wood that goes
    Vec2 lead_centre;
    std::vector<RouterMove> moves; ///< from `start` back to it
};

struct RouterUse {
    std::string name;         ///< of the shape
    bool turned_over = false; ///< the template is its mirror image
};

/// One shape that is cut once. Its outline has its lower left corner at the origin.
struct RouterTemplate {
    std::vector<RouterUse> uses; ///< all shapes that are alike; the first is as it lies
    std::vector<Vec2> outline;
    Vec2 size;
    RouterContour contour;
    std::vector<InnerCorner> corners;
    std::vector<RouterMark> marks; ///< cut before the outline; empty where no depth is stated
    std::vector<RouterHole> holes; ///< likewise; those that the tool can make
};

struct RouterPlace {
    std::size_t which = 0; ///< index into RouterJob::templates
    Vec2 at;               ///< of its lower left corner on the board
    bool turned = false;   ///< by a quarter, counter-clockwise
};

using RouterProblems = std::vector<Said>;

struct RouterJob {
    RouterOptions stated; ///< complete: each has a value
    std::vector<RouterTemplate> templates;
    std::vector<std::vector<RouterPlace>> boards;
    RouterProblems left_out; ///< shapes and holes that are not cut, each with the shape's name
};

/// Shapes alike by this are one template.
inline constexpr double same_template_by = 0.02;
/// A hole as wide as the tool to within this is bored straight down; a wider one is cleared in rings.
inline constexpr double same_as_tool_by = 0.02;
/// The least air round a template: the groove, the lead beside it and a web that holds.
double least_air(double tool);
double usual_air(double tool);
/// The cutter's lowest passes, from the first down; all below 0, the last `through` below the board.
std::vector<double> pass_depths(const RouterOptions &complete);

/// Everything that stands against it at once, each with what is needed. What nothing that could be stated
/// would help is left out of the job; where that is all, it is what stands against it.
std::variant<RouterJob, RouterProblems> router_job(const std::vector<RouterShape> &shapes,
                                                   const RouterOptions &options);

/// How far off the hole's middle the tool goes round it, ring by ring from its middle, so that nothing is
/// left standing in it; empty where the tool is as wide as the hole.
std::vector<double> rings_of(const RouterHole &hole, double tool);

/// Where a point of the template lies on the board.
Vec2 on_board(const RouterJob &job, const RouterPlace &place, Vec2 point);

} // namespace roundlay
