#include "modeler/command_line/new_shell.h"

#include "kernel/design/new_shell.h"
#include "kernel/shell/notch_kinds.h"
#include "kernel/trade/species.h"
#include "modeler/command_line/values.h"

#include <algorithm>

namespace roundlay {

namespace {

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

Length stated(std::string_view option, const std::string &text, Length otherwise) {
    return text.empty() ? otherwise : length_value(option, text);
}

/// 0 is a length like others there.
Length stated_or_0(std::string_view option, const std::string &text, Length otherwise) {
    return text.empty() ? otherwise : length_or_0_value(option, text);
}

void require_smaller(std::string_view part, Length smaller, std::string_view whole, Length larger) {
    if (smaller < larger) return;
    throw UsageError(std::string(part) + " must be smaller than " + std::string(whole));
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

Shape shape_value(const std::string &typed) {
    const std::vector<std::string> names = {"rectangle", "L", "inset", "T", "U", "cross"};
    constexpr Shape shapes[] = {Shape::rectangle, Shape::ell,     Shape::inset,
                                Shape::tee,       Shape::u_shape, Shape::cross};
    return shapes[std::ranges::find(names, one_of("shape", typed, names)) - names.begin()];
}

/// The part that is taken out of a side or stands out from it.
void state_part(const NewShellWords &w, NewShell &s) {
    s.part_width = stated("--part-width", w.part_width, s.part_width);
    require_smaller("--part-width", s.part_width, "--width", s.width);
    s.from_left = stated("--from-left", w.from_left, usual_from_left(s.width, s.part_width, s.units));
    require_smaller("--from-left and --part-width together", s.from_left + s.part_width, "--width", s.width);
    s.part_depth = stated("--part-depth", w.part_depth, s.part_depth);
    if (s.shape != Shape::tee) require_smaller("--part-depth", s.part_depth, "--depth", s.depth);
}

void state_wing(const NewShellWords &w, NewShell &s) {
    s.part_width = stated("--wing", w.wing, s.part_width);
    s.part_depth = stated("--leg", w.leg, s.part_depth);
    require_smaller("--wing", s.part_width, "--width", s.width);
    require_smaller("--leg", s.part_depth, "--depth", s.depth);
}

void state_walls(const NewShellWords &w, NewShell &s) {
    s.width = stated("--width", w.width, s.width);
    s.depth = stated("--depth", w.depth, s.depth);
    require_of_shape(w, w.shape);
    const ShapePart usual = usual_part(s.shape, s.width, s.depth, s.units);
    s.part_width = usual.width;
    s.part_depth = usual.depth;
    if (s.shape == Shape::ell)
        state_wing(w, s);
    else if (s.shape == Shape::cross)
        s.part_depth = stated("--arm", w.arm, s.part_depth);
    else if (s.shape != Shape::rectangle)
        state_part(w, s);
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
Rounds rounds_of(const NewShellWords &w, const NewShell &sizes) {
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
    return *notch_called(one_of("notch", typed, words_for_notches()));
}

void state_slope(const NewShellWords &w, NotchRule &notch) {
    if (w.slope.empty()) return;
    if (!takes_slope(notch.kind))
        throw UsageError("--slope is that of a dovetail; with --notch " + w.notch + " leave it out");
    notch.slope = slope_value("--slope", w.slope);
}

std::string species_value(const std::string &typed) {
    const auto found = find_species(typed);
    if (const auto *unknown = std::get_if<UnknownSpecies>(&found)) throw UsageError(unknown->message);
    return std::string(std::get<const Species *>(found)->name);
}

} // namespace

Shell new_shell(const NewShellWords &w) {
    const Shape shape = shape_value(w.shape);
    const UnitSystem units = units_of(w);
    NewShell sizes = usual_shell(shape, units, notch_kind(w.notch));
    sizes.name = w.name.empty() ? "New shell" : w.name;
    state_walls(w, sizes);
    sizes.thickness = stated("--thickness", w.thickness, sizes.thickness);
    sizes.overhang = stated_or_0("--overhang", w.overhang, sizes.overhang);
    if (!w.species.empty()) sizes.species = species_value(w.species);
    std::optional<Shell> shell = shell_of(sizes);
    if (!shell) throw UsageError("--width and --depth leave nothing for the parts of that shape");
    shell->rounds = rounds_of(w, sizes);
    state_slope(w, shell->notch);
    return *shell;
}

} // namespace roundlay
