// Every tail and notch once: both faces and the end, large, with all heights from the level line.
#include "exporters/sheets/bench/bench.h"
#include "exporters/sheets/bench/tail_drawing.h"
#include "exporters/sheets/drawing/columns.h"
#include "exporters/sheets/drawing/listed.h"
#include "exporters/sheets/frame/tables.h"
#include "exporters/sheets/set/scales.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <memory>
#include <numbers>

namespace roundlay::sheets {
namespace {

constexpr double least_scale = 1.0 / 5;
constexpr std::size_t most_drawn = 12; ///< of more only one of each sort is: the table has the numbers of all

const Scale &tail_scale(UnitSystem system) {
    const auto all = scales(system);
    const auto first_smaller =
        std::ranges::find_if(all, [](const Scale &s) { return s.ratio < least_scale - 1e-9; });
    return *(first_smaller - 1);
}

std::string place_words(double outside, double inside, const Words &words) {
    const std::string a = words.length(outside), b = words.length(inside);
    return a == b ? a : words.say("%1 outside, %2 inside", a, b);
}

/// "1:8, 7.1 degrees up": how a bevel is set, on the face that it is held to.
std::string bevel_words(double rise, double run, const Words &words) {
    if (std::abs(rise) < same_station) return words.say("level");
    const double slope = rise / run;
    const double degrees = std::abs(std::atan(slope)) * 180 / std::numbers::pi;
    char text[16];
    std::snprintf(text, sizeof text, "%.1f", degrees);
    return words.say("%1, %2 in %3, %4°", words.slope(slope), in_mm(std::abs(rise)), in_mm(std::abs(run)),
                     std::string(text));
}

/// Heights of a cut from the level line.
struct Heights {
    double end_out, end_in, shoulder_out, shoulder_in;
};

Heights heights_of(const Joint &joint, const JointCut &cut) {
    const auto over = [&](double x, double z) { return z - joint.line.at(x); };
    return {over(cut.near.outside, cut.outside_near), over(cut.near.inside, cut.inside_near),
            over(cut.far.outside, cut.outside_far), over(cut.far.inside, cut.inside_far)};
}

/// Where places along the joint are told from: the log's end, or the first side of a notch within it.
double told_from(const Joint &joint) {
    if (!joint.within) return 0;
    double first = joint.length;
    for (const JointCut &cut : joint.cuts)
        first = std::min(first, cut.near.outside);
    return first;
}

std::vector<std::string> cut_row(const Joint &joint, const JointCut &cut, const Words &words) {
    const double zero = told_from(joint);
    const Heights h = heights_of(joint, cut);
    const double run = cut.far.outside - cut.near.outside;
    // along the end as the saw leaves it, which may go at a slant
    const double across =
        std::hypot(joint.across_end > 0 ? joint.across_end : joint.width, cut.near.outside - cut.near.inside);
    return {joint.name,
            joint.within              ? words.say("within the log")
            : joint.end == End::datum ? words.say("datum end")
                                      : words.say("far end"),
            cut.side == Side::top ? words.say("top") : words.say("under"),
            place_words(cut.near.outside - zero, cut.near.inside - zero, words),
            place_words(cut.far.outside - zero, cut.far.inside - zero, words),
            words.level(h.end_out),
            words.level(h.end_in),
            words.level(h.shoulder_out),
            words.level(h.shoulder_in),
            bevel_words(h.end_out - h.shoulder_out, run, words),
            bevel_words(h.end_out - h.end_in, across, words)};
}

} // namespace

Table joint_table(const std::vector<Joint> &joints, const Words &words) {
    Table table =
        table_called(words, words.say("Tails and notches: heights over (+) and under (-) the level line"));
    table.columns = {flush_left(words.say("Tail"), 12),
                     flush_left(words.say("Where"), 24),
                     flush_left(words.say("Cut"), 14),
                     flush_left(words.say("Begins, from the end"), 34),
                     flush_left(words.say("Ends, from the end"), 34),
                     flush_right(words.say("End, outside"), 20),
                     flush_right(words.say("End, inside"), 20),
                     flush_right(words.say("Shoulder, outside"), 20),
                     flush_right(words.say("Shoulder, inside"), 20),
                     flush_left(words.say("On the faces, to the end"), 64),
                     flush_left(words.say("On the end, to the outside"), 64)};
    for (const Joint &joint : joints)
        for (const JointCut &cut : joint.cuts)
            table.rows.push_back(cut_row(joint, cut, words));
    return table;
}

namespace {

/// The first of its sort.
std::string drawn_as(const std::vector<Joint> &joints, const Joint &joint) {
    const std::string sort = sort_of(joint);
    return std::ranges::find_if(joints, [&](const Joint &j) { return sort_of(j) == sort; })->name;
}

/// How high the tail is when both its cuts are made, where they lie over one another: to be measured last.
Table check_table(const std::vector<Joint> &joints, const Words &words) {
    Table table = table_called(words, words.say("Check: how high the tail is when it is cut"));
    table.columns = {flush_left(words.say("Tail"), 12),
                     flush_right(words.say("End, outside"), 20),
                     flush_right(words.say("End, inside"), 20),
                     flush_right(words.say("Shoulder, outside"), 20),
                     flush_right(words.say("Shoulder, inside"), 20),
                     flush_left(words.say("Drawn as"), 18),
                     flush_left(words.say("Pieces"), 60)};
    for (const Joint &joint : joints) {
        std::vector<std::string> row{joint.name};
        const auto find = [&](Side side) {
            return std::ranges::find_if(joint.cuts, [&](const JointCut &c) { return c.side == side; });
        };
        const auto top = find(Side::top), under = find(Side::under);
        const bool both = top != joint.cuts.end() && under != joint.cuts.end() &&
                          std::abs(top->far.outside - under->far.outside) < same_station &&
                          std::abs(top->far.inside - under->far.inside) < same_station;
        if (both) {
            const Heights a = heights_of(joint, *top), b = heights_of(joint, *under);
            for (const double high : {a.end_out - b.end_out, a.end_in - b.end_in,
                                      a.shoulder_out - b.shoulder_out, a.shoulder_in - b.shoulder_in})
                row.push_back(words.length(high));
        } else
            row.insert(row.end(), 4, "-");
        row.push_back(joints.size() > most_drawn ? drawn_as(joints, joint) : joint.name);
        constexpr std::size_t most = 8;
        row.push_back(first_listed(joint.tags, most, words));
        table.rows.push_back(std::move(row));
    }
    return table;
}

} // namespace

std::string sort_of(const Joint &joint) {
    std::string sort = joint.within ? "within" : joint.end == End::datum ? "datum" : "far";
    const auto sign = [](double v) { return std::abs(v) < same_station ? '0' : v < 0 ? '-' : '+'; };
    for (const JointCut &cut : joint.cuts) {
        const Heights h = heights_of(joint, cut);
        sort += cut.side == Side::top ? 't' : 'u';
        sort += sign(h.end_out - h.shoulder_out);
        sort += sign(h.end_out - h.end_in);
        sort += sign(cut.far.outside - cut.far.inside);
    }
    return sort;
}

std::vector<Titled> tail_sheets(const Draft &draft, const std::vector<Joint> &joints, const Words &words) {
    if (joints.empty()) return {};
    const Scale &scale = tail_scale(words.system());
    std::vector<Page> pages{empty_page(draft.size())};
    const bool all_drawn = joints.size() <= most_drawn;
    for (const Joint &joint : joints) {
        if (!all_drawn && drawn_as(joints, joint) != joint.name) continue;
        put_on(pages, draft.size(), std::make_shared<const Block>(tail_drawing(joint, words, scale.ratio)));
    }
    for (const Table &table : {joint_table(joints, words), check_table(joints, words)})
        put_fitted(pages, draft.size(), FittedTable(table, draft.size()), 0);
    const std::string title = words.say("Tails and notches");
    std::vector<Titled> all;
    all.push_back({std::move(pages),
                   {title,
                    all_drawn ? words.say("each once, by its letter")
                              : words.say("one of each sort; all are in the table"),
                    words.say("Bench sheet"), "T", said_scale(&scale, words), true, words.unit_note()},
                   {title, "tails", words.say("Bench set")}});
    return all;
}

} // namespace roundlay::sheets
