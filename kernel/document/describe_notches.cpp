#include "kernel/document/describe.h"
#include "kernel/shell/notch_kinds.h"

namespace roundlay::format {

namespace {

bool has_slope(const NotchRule &rule) {
    return takes_slope(rule.kind);
}

const char *kinds_remark() {
    static const std::string remark = [] {
        OneOf kinds;
        for (const KindOfNotch &each : all_kinds_of_notch)
            kinds.words.emplace_back(each.name);
        std::string list = takes(kinds);
        std::erase(list, '`');
        return list;
    }();
    return remark.c_str();
}

bool becomes_stated(const NotchRule &rule, const NotchRule &base) {
    return rule.kind == NotchKind::stated && base.kind != NotchKind::stated;
}

/// Deep is over zero, proud under it.
using Deep =
    Through<NotchRule,
            [](const NotchRule &rule) {
                return rule.shoulder < Length() ? std::nullopt : std::optional<Length>(rule.shoulder);
            },
            [](NotchRule &rule, Length deep) { rule.shoulder = deep; }>;
using Proud = Through<NotchRule,
                      [](const NotchRule &rule) {
                          return rule.shoulder < Length() ? std::optional<Length>(Length() - rule.shoulder)
                                                          : std::nullopt;
                      },
                      [](NotchRule &rule, Length proud) { rule.shoulder = Length() - proud; }>;

void check_one_shoulder(TableReading &at, NotchRule &) {
    if (at.table.is_right("shoulder_deep"))
        at.reading.error(at.table.place_of("shoulder_proud"), "a shoulder cannot be both deep and proud",
                         "one of shoulder_deep and shoulder_proud");
}

/// `was_stated`: what the table leaves out are the slopes of a stated notch, so that none is asked for.
void check_what_is_used(TableReading &at, const NotchRule &rule, bool was_stated) {
    if (rule.kind != NotchKind::saddle) warn_unused(at, "scribe", "kind = \"saddle\"");
    if (!has_slope(rule)) warn_unused(at, "slope", "a full or half dovetail");
    if (rule.kind != NotchKind::stated) {
        warn_unused(at, "along", "kind = \"stated\"");
        warn_unused(at, "across", "kind = \"stated\"");
    } else if (!was_stated) {
        at.table.require("along", "the slope of the tail's top along its own log, outward");
        at.table.require("across", "the slope of the tail's top along the crossing log, outward");
    }
}

void check_notch(TableReading &at, NotchRule &rule) {
    check_what_is_used(at, rule, false);
}

const TableOf<NotchRule> &notch_table() {
    static const TableOf<NotchRule> table{
        {.name = "notch",
         .summary = "How the corners are cut.",
         .items = items<NotchRule>(
             {one_of<&NotchRule::kind>("kind", "which family of notches", {.remark = kinds_remark()}),
              slope<&NotchRule::slope>("slope", "s of a dovetail").used<has_slope>(),
              falling_slope<&NotchRule::along>(
                  "along",
                  "of a tail's top outward along its own log; only for `\"stated\"`, and needed there",
                  {.left_out = "not used", .remark = "outward along the log", .only_where_other = true})
                  .asked_for<becomes_stated>(),
              falling_slope<&NotchRule::across>("across", "the same along the crossing log",
                                                {.left_out = "not used",
                                                 .remark = "outward along the crossing log",
                                                 .only_where_other = true})
                  .asked_for<becomes_stated>(),
              size<&NotchRule::overhang>("overhang", bounds::short_gap,
                                         "how far log ends run past the crossing wall's face; 0 is flush",
                                         {.remark = "past the crossing wall; 0 is flush"}),
              key_by<Deep>(
                  "shoulder_deep", Size{bounds::short_gap},
                  "shoulders are cut this far behind the crossing wall's near face: a kerf of space",
                  {.left_out = "0", .remark = "behind the crossing wall's face", .only_where_other = true}),
              key_by<Proud>("shoulder_proud", Size{bounds::short_gap},
                            "shoulders are left this much too long on the bench and pared when the logs are "
                            "fitted; the model shows the fitted logs",
                            {.left_out = "0",
                             .remark = "left standing until the logs are fitted",
                             .only_where_other = true})
                  .check<check_one_shoulder>(),
              size<&NotchRule::scribe>(
                  "scribe", bounds::short_gap,
                  "only for `\"saddle\"`: grooves and saddles clear the lower log's surface by this",
                  {.remark = "saddles clear the lower log by this", .only_where_other = true}),
              size<&NotchRule::least_tail>("least_tail", bounds::short_gap,
                                           "a tail that is thinner anywhere is reported",
                                           {.remark = "no tail thinner than this"})}),
         .check = checked<NotchRule, check_notch>}};
    return table;
}

constexpr const char *corner_expected = "two walls that meet, such as between = [\"A\", \"B\"]";

using Between = Through<CornerNotch,
                        [](const CornerNotch &corner) {
                            return std::optional<TwoNames>({corner.first, corner.second});
                        },
                        [](CornerNotch &corner, const TwoNames &names) {
                            corner.first = names.first, corner.second = names.second;
                        }>;

/// Where walls follow each other, the index of the wall that ends there.
bool is_corner(std::size_t first, std::size_t second, std::size_t count) {
    return (first + 1) % count == second;
}

void check_corner_once(TableReading &at, const CornerNotch &corner) {
    const auto &before = at.shell.corners;
    for (std::size_t i = 0; i < before.size(); ++i) {
        if (before[i].first != corner.first || before[i].second != corner.second) continue;
        const int line = at.reading.place_of("corner[" + std::to_string(i) + "]").line;
        at.reading.error(at.table.place(),
                         "the corner of \"" + corner.first + "\" and \"" + corner.second +
                             "\" is stated twice; the other one stands in line " + std::to_string(line),
                         "one [[corner]] for each corner");
        return;
    }
}

/// Puts the walls in the order of the walk, whichever way round they are stated.
void check_they_meet(TableReading &at, CornerNotch &corner) {
    const std::size_t count = at.shell.walls.size();
    const auto first = index_of_wall(at.shell, corner.first), second = index_of_wall(at.shell, corner.second);
    const bool partition = *first >= count || *second >= count;
    const bool walked = partition || is_corner(*first, *second, count);
    if (*first == *second || (!walked && !is_corner(*second, *first, count))) {
        at.reading.error(at.table.place_of("between"),
                         "walls \"" + corner.first + "\" and \"" + corner.second +
                             "\" do not meet at a corner",
                         "two walls that follow each other");
        return;
    }
    if (!walked) std::swap(corner.first, corner.second);
    check_corner_once(at, corner);
}

void check_corner(TableReading &at, CornerNotch &corner) {
    check_what_is_used(at, corner.notch, at.shell.notch.kind == NotchKind::stated);
}

const TableOf<CornerNotch> &corner_table() {
    static const TableOf<CornerNotch> table{
        {.name = "corner",
         .summary = "A corner whose notch differs. What it leaves out is as in [notch].",
         .items = items<CornerNotch>(
             {key_by<Between>("between", WallPair{},
                              "the two walls or partitions that meet there, in either order",
                              {.missing = corner_expected})
                  .check<check_they_meet>(),
              shared<&CornerNotch::notch>(notch_table(), "as in `[notch]`")}),
         .check = checked<CornerNotch, check_corner>,
         .comment = "A corner of its own; what it leaves out is as in [notch].",
         .comment_each = true}};
    return table;
}

} // namespace

Section notch_section() {
    return once<&Shell::notch>(notch_table());
}

Section corner_section() {
    Section section = list<&Shell::corners>(corner_table(), limits::walls);
    section.told_by = {"between"};
    section.only_says_more = true;
    section.fresh = [](const Shell &shell) -> std::shared_ptr<void> {
        return std::make_shared<CornerNotch>(CornerNotch{{}, {}, shell.notch});
    };
    return section;
}

} // namespace roundlay::format
