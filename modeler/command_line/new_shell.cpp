#include "modeler/command_line/new_shell.h"

#include "kernel/shell/shapes.h"
#include "kernel/trade/species.h"
#include "modeler/command_line/values.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

/// Sizes for whoever states none: a small cabin in round figures of either system. As texts, so that they
/// are read like those that are typed.
struct Usual {
    std::string width, depth, thickness, pitch, gap;
    int rounds;
    std::string overhang = "0";
};

Usual usual(UnitSystem units) {
    if (units == UnitSystem::imperial) return {"24 ft", "18 ft", "7 in", "10 in", "1 in", 11};
    return {"7.2 m", "5.4 m", "180 mm", "250 mm", "25 mm", 11};
}

/// Round logs lie on one another without a gap and run on past their saddles.
Usual usual_round_logs(UnitSystem units) {
    if (units == UnitSystem::imperial) return {"24 ft", "18 ft", "12 in", "10 in", "0", 11, "12 in"};
    return {"7.2 m", "5.4 m", "300 mm", "250 mm", "0", 11, "300 mm"};
}

/// Whoever types feet or inches wants to read them.
bool looks_imperial(const std::string &text) {
    return text.find_first_of("'\"") != std::string::npos || text.find("in") != std::string::npos ||
           text.find("ft") != std::string::npos;
}

UnitSystem units_of(const NewShellWords &w) {
    if (!w.units.empty()) return units_value(w.units);
    for (const std::string *size :
         {&w.width, &w.depth, &w.wing, &w.leg, &w.from_left, &w.part_width, &w.part_depth, &w.arm,
          &w.thickness, &w.height, &w.pitch, &w.gap, &w.overhang})
        if (looks_imperial(*size)) return UnitSystem::imperial;
    return UnitSystem::metric;
}

Length stated(std::string_view option, const std::string &text, const std::string &otherwise) {
    return length_value(option, text.empty() ? otherwise : text);
}

/// 0 is a length like others there.
Length stated_or_0(std::string_view option, const std::string &text, const std::string &otherwise) {
    return (text.empty() ? otherwise : text) == "0" ? Length() : stated(option, text, otherwise);
}

/// A share of what was typed, as a person would state it: in whole millimetres, or sixteenths of an inch.
Length share(Length length, UnitSystem units) {
    constexpr double parts = 16;
    return units == UnitSystem::imperial ? Length::inches(std::round(length.inches() * parts) / parts)
                                         : Length::mm(std::round(length.mm()));
}

Length stated_or_share(std::string_view option, const std::string &text, Length otherwise, UnitSystem units) {
    return text.empty() ? share(otherwise, units) : length_value(option, text);
}

void require_smaller(std::string_view part, Length smaller, std::string_view whole, Length larger) {
    if (smaller < larger) return;
    throw UsageError(std::string(part) + " must be smaller than " + std::string(whole));
}

/// The part that is taken out of a side or stands out from it.
struct Part {
    Length from_left, width, depth;
};

Part part_of(const NewShellWords &w, Length width, Length depth, UnitSystem units) {
    const Length part = stated_or_share("--part-width", w.part_width, width / 3, units);
    require_smaller("--part-width", part, "--width", width);
    const Length left = stated_or_share("--from-left", w.from_left, (width - part) / 2, units);
    require_smaller("--from-left and --part-width together", left + part, "--width", width);
    return {left, part, stated_or_share("--part-depth", w.part_depth, depth / 3, units)};
}

std::vector<Wall> l_walls(const NewShellWords &w, Length width, Length depth, UnitSystem units) {
    const Length wing = stated_or_share("--wing", w.wing, width / 2, units),
                 leg = stated_or_share("--leg", w.leg, depth / 2, units);
    require_smaller("--wing", wing, "--width", width);
    require_smaller("--leg", leg, "--depth", depth);
    return l_plan(width, depth, wing, leg);
}

/// What is typed is built: no size is passed over in silence because the shape has no such part.
void require_of_shape(const NewShellWords &w, const std::string &shape) {
    struct Size {
        std::string_view option;
        const std::string &text;
        std::vector<std::string_view> shapes;
    };
    const std::vector<std::string_view> with_part{"inset", "T", "U"};
    for (const Size &size :
         {Size{"--wing", w.wing, {"L"}}, Size{"--leg", w.leg, {"L"}},
          Size{"--from-left", w.from_left, with_part}, Size{"--part-width", w.part_width, with_part},
          Size{"--part-depth", w.part_depth, with_part}, Size{"--arm", w.arm, {"cross"}}}) {
        if (size.text.empty() || std::ranges::find(size.shapes, shape) != size.shapes.end()) continue;
        const std::string of = size.shapes.size() == 1 ? std::string(size.shapes[0]) : "inset, T or U";
        throw UsageError(std::string(size.option) + " is a size of --shape " + of + ", but the shape is " +
                         shape);
    }
}

std::vector<Wall> walls_of(const NewShellWords &w, const Usual &sizes, UnitSystem units) {
    const Length width = stated("--width", w.width, sizes.width),
                 depth = stated("--depth", w.depth, sizes.depth);
    const std::string shape = one_of("shape", w.shape, {"rectangle", "L", "inset", "T", "U", "cross"});
    require_of_shape(w, shape);
    if (shape == "rectangle") return rectangle_plan(width, depth);
    if (shape == "L") return l_walls(w, width, depth, units);
    if (shape == "cross")
        return cross_plan(width, depth, stated_or_share("--arm", w.arm, std::min(width, depth) / 2, units));
    const Part part = part_of(w, width, depth, units);
    if (shape == "T") return t_plan(width, depth, part.from_left, part.width, part.depth);
    require_smaller("--part-depth", part.depth, "--depth", depth);
    return shape == "U" ? u_plan(width, depth, part.from_left, part.width, part.depth)
                        : inset_plan(width, depth, part.from_left, part.width, part.depth);
}

int count_value(const std::string &text) {
    constexpr std::size_t most_digits = 4;
    const bool digits = !text.empty() && text.size() <= most_digits &&
                        std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
    if (!digits || std::stoi(text) < 1)
        throw UsageError("--rounds \"" + text + "\": expected a whole number such as 13");
    return std::stoi(text);
}

/// Two of count, height and pitch; what is not stated comes from the usual sizes.
Rounds rounds_of(const NewShellWords &w, const Usual &sizes) {
    if (!w.rounds.empty() && !w.height.empty() && !w.pitch.empty())
        throw UsageError("state two of --rounds, --height and --pitch; the third follows from them");
    Rounds rounds;
    rounds.gap = stated_or_0("--gap", w.gap, sizes.gap);
    if (!w.height.empty()) rounds.height = length_value("--height", w.height);
    if (!w.rounds.empty()) rounds.count = count_value(w.rounds);
    if (!rounds.height || !rounds.count) rounds.pitch = stated("--pitch", w.pitch, sizes.pitch);
    if (!rounds.height && !rounds.count) rounds.count = sizes.rounds;
    return rounds;
}

/// The short word, or the one that the document has.
NotchKind notch_kind(const std::string &typed) {
    if (typed.empty()) return NotchKind::full_dovetail;
    const std::string kind = one_of(
        "notch", typed, {"full", "half", "square", "saddle", "full dovetail", "half dovetail", "square lap"});
    if (kind.starts_with("half")) return NotchKind::half_dovetail;
    if (kind.starts_with("square")) return NotchKind::square_lap;
    return kind == "saddle" ? NotchKind::saddle : NotchKind::full_dovetail;
}

NotchRule notch_of(const NewShellWords &w, const Usual &sizes, NotchRule notch) {
    notch.kind = notch_kind(w.notch);
    notch.overhang = stated_or_0("--overhang", w.overhang, sizes.overhang);
    if (w.slope.empty()) return notch;
    if (notch.kind == NotchKind::saddle || notch.kind == NotchKind::square_lap)
        throw UsageError("--slope is that of a dovetail; with --notch " + w.notch + " leave it out");
    notch.slope = slope_value("--slope", w.slope);
    return notch;
}

} // namespace

Shell new_shell(const NewShellWords &w) {
    Shell shell = begun_in(units_of(w));
    shell.name = w.name.empty() ? "New shell" : w.name;
    const Usual sizes =
        notch_kind(w.notch) == NotchKind::saddle ? usual_round_logs(shell.units) : usual(shell.units);
    shell.walls = walls_of(w, sizes, shell.units);
    shell.thickness = stated("--thickness", w.thickness, sizes.thickness);
    shell.rounds = rounds_of(w, sizes);
    shell.notch = notch_of(w, sizes, shell.notch);
    if (!w.species.empty()) {
        const auto found = find_species(w.species);
        if (const auto *unknown = std::get_if<UnknownSpecies>(&found)) throw UsageError(unknown->message);
        shell.wood.species = std::string(std::get<const Species *>(found)->name);
    }
    return shell;
}

} // namespace roundlay
