#include "kernel/document/statements.h"

#include "kernel/document/compass.h"
#include "kernel/document/toml_text.h"
#include "kernel/document/words.h"

namespace roundlay {

namespace {

/// Puts statements together. Lengths are spelled in one unit system, so that equal values have equal texts.
class Stating {
  public:
    explicit Stating(UnitSystem units) : units_(units) {}

    StatedKeys take() { return std::move(out_); }

    template <typename T> Stating &key(const char *name, const T &value) { return put(name, value, false); }
    template <typename T> Stating &key(const char *name, const std::optional<T> &value) {
        return value ? put(name, *value, false) : *this;
    }
    template <typename T> Stating &needed(const char *name, const T &value) { return put(name, value, true); }
    /// An empty name is one that is not stated.
    Stating &name(const char *name, const std::string &value) {
        return value.empty() ? *this : put(name, value, false);
    }
    Stating &raw(const char *name, std::string text) {
        out_.push_back({name, std::move(text), true});
        return *this;
    }

  private:
    template <typename T> Stating &put(const char *name, const T &value, bool is_needed) {
        out_.push_back({name, text_of(value), is_needed});
        return *this;
    }
    std::string text_of(Length value) const { return toml_text(value, units_); }
    std::string text_of(Slope value) const { return toml_text(value); }
    std::string text_of(double value) const { return toml_text(value); }
    std::string text_of(int value) const { return std::to_string(value); }
    std::string text_of(bool value) const { return value ? "true" : "false"; }
    std::string text_of(const std::string &value) const { return toml_text(value); }
    template <typename T> std::string text_of(T value) const requires std::is_enum_v<T> {
        return toml_text(word(value));
    }

    UnitSystem units_;
    StatedKeys out_;
};

StatedKeys shell_keys(const Shell &shell, UnitSystem units) {
    return Stating(units)
        .name("name", shell.name)
        .key("units", shell.units)
        .needed("thickness", shell.thickness)
        .take();
}

StatedKeys rounds_keys(const Shell &shell, UnitSystem units) {
    const Rounds &rounds = shell.rounds;
    return Stating(units)
        .key("count", rounds.count)
        .key("height", rounds.height)
        .key("pitch", rounds.pitch)
        .key("gap", rounds.gap)
        .name("full_first", rounds.full_first)
        .key("top", rounds.top)
        .take();
}

/// `base` is what a reader starts from: it asks for the slopes of a notch that becomes a stated one.
void state_notch(Stating &to, const NotchRule &rule, const NotchRule &base) {
    to.key("kind", rule.kind).key("slope", rule.slope);
    if (rule.kind == NotchKind::stated && base.kind != NotchKind::stated)
        to.needed("along", rule.along).needed("across", rule.across);
    else
        to.key("along", rule.along).key("across", rule.across);
    to.key("overhang", rule.overhang).key("least_tail", rule.least_tail);
    if (rule.shoulder < Length())
        to.key("shoulder_proud", Length() - rule.shoulder);
    else
        to.key("shoulder_deep", rule.shoulder);
    to.key("scribe", rule.scribe);
}

StatedKeys notch_keys(const Shell &shell, UnitSystem units) {
    Stating out(units);
    state_notch(out, shell.notch, NotchRule());
    return out.take();
}

void state_sizes(Stating &to, const LogSizes &sizes) {
    to.key("butt_height", sizes.butt_height)
        .key("tip_height", sizes.tip_height)
        .key("butt_width", sizes.butt_width)
        .key("tip_width", sizes.tip_width)
        .key("diameter", sizes.diameter)
        .key("butt", sizes.butt)
        .key("finish", sizes.finish);
}

StatedKeys logs_keys(const Shell &shell, UnitSystem units) {
    Stating out(units);
    state_sizes(out, shell.logs);
    return out.take();
}

StatedKeys trim_keys(const Shell &shell, UnitSystem units) {
    const Trim &trim = shell.trim;
    return Stating(units)
        .key("spline_width", trim.spline_width)
        .key("spline_depth", trim.spline_depth)
        .key("sill_slope", trim.sill_slope)
        .key("settle_space", trim.settle_space)
        .key("settling", trim.settling)
        .key("header_bearing", trim.header_bearing)
        .take();
}

StatedKeys pegs_keys(const Shell &shell, UnitSystem units) {
    const PegRule &pegs = shell.pegs;
    return Stating(units)
        .key("wanted", pegs.wanted)
        .key("diameter", pegs.diameter)
        .key("spacing", pegs.spacing)
        .key("end_distance", pegs.end_distance)
        .key("between", pegs.between)
        .key("depth_below", pegs.depth_below)
        .key("fewest", pegs.fewest)
        .key("draw", pegs.draw)
        .key("square", pegs.square)
        .take();
}

StatedKeys wood_keys(const Shell &shell, UnitSystem units) {
    return Stating(units).name("species", shell.wood.species).key("moisture", shell.wood.moisture).take();
}

StatedKeys keys_of(const Wall &wall, UnitSystem units) {
    Stating out(units);
    out.needed("name", wall.name).needed("toward", spell_heading(wall.heading));
    if (!wall.closes) out.needed("length", wall.length);
    return out.key("thickness", wall.thickness)
        .key("pitch", wall.pitch)
        .key("log_height", wall.log_height)
        .take();
}

StatedKeys keys_of(const Partition &wall, UnitSystem units) {
    Stating out(units);
    out.needed("name", wall.name).needed("from", wall.from).needed("from_left", wall.from_left);
    if (wall.heading) out.key("toward", spell_heading(*wall.heading));
    out.needed("to", wall.to);
    out.key("thickness", wall.thickness).key("pitch", wall.pitch).key("log_height", wall.log_height);
    return out.take();
}

StatedKeys keys_of(const OwnLog &log, UnitSystem units) {
    Stating out(units);
    out.needed("wall", log.wall).needed("round", log.round).key("piece", log.piece).name("mark", log.mark);
    state_sizes(out, log.sizes);
    out.key("kind", log.notch.kind)
        .key("slope", log.notch.slope)
        .key("along", log.notch.along)
        .key("across", log.notch.across)
        .key("overhang_left", log.notch.overhang_left)
        .key("overhang_right", log.notch.overhang_right);
    return out.key("bow", log.bow).key("fabric", log.fabric).name("note", log.note).take();
}

StatedKeys keys_of(const Opening &opening, UnitSystem units) {
    return Stating(units)
        .name("name", opening.name)
        .key("kind", opening.kind)
        .needed("wall", opening.wall)
        .needed("from_left", opening.from_left)
        .needed("sill", opening.sill)
        .needed("width", opening.width)
        .needed("height", opening.height)
        .key("spline_width", opening.trim.spline_width)
        .key("spline_depth", opening.trim.spline_depth)
        .key("sill_slope", opening.trim.sill_slope)
        .key("settle_space", opening.trim.settle_space)
        .key("header_bearing", opening.trim.header_bearing)
        .take();
}

StatedKeys keys_of(const FoundationStep &step, UnitSystem units) {
    return Stating(units)
        .needed("wall", step.wall)
        .needed("from_left", step.from_left)
        .needed("width", step.width)
        .needed("rise", step.rise)
        .take();
}

StatedKeys keys_of(const Beam &beam, UnitSystem units) {
    return Stating(units)
        .needed("from_wall", beam.from_wall)
        .needed("width", beam.size.width)
        .needed("height", beam.size.height)
        .take();
}

StatedKeys keys_of(const FloorOpening &opening, UnitSystem units) {
    return Stating(units)
        .name("name", opening.name)
        .needed("from_left", opening.from_left)
        .needed("from_wall", opening.from_wall)
        .needed("width", opening.width)
        .needed("length", opening.length)
        .take();
}

StatedKeys keys_of(const Floor &floor, UnitSystem units) {
    return Stating(units)
        .needed("name", floor.name)
        .needed("from", floor.from)
        .needed("to", floor.to)
        .needed("level", floor.level)
        .key("width", floor.joist.width)
        .key("height", floor.joist.height)
        .key("tip_width", floor.tip_width)
        .key("tip_height", floor.tip_height)
        .key("spacing", floor.spacing)
        .key("first", floor.first)
        .key("bearing", floor.bearing)
        .key("pocket", floor.pocket)
        .key("tail", floor.tail)
        .key("live_load", floor.live_load)
        .key("dead_load", floor.dead_load)
        .take();
}

StatedKeys keys_of(const StatedBore &bore, UnitSystem units) {
    return Stating(units)
        .name("name", bore.name)
        .needed("use", bore.use)
        .needed("wall", bore.wall)
        .needed("from_left", bore.from_left)
        .key("from_outside", bore.from_outside)
        .needed("diameter", bore.diameter)
        .key("from_round", bore.from_round)
        .key("to_round", bore.to_round)
        .key("drift", bore.drift)
        .take();
}

template <typename T> Entry entry_of(const T &value, UnitSystem units) {
    return {keys_of(value, units), {}};
}

template <typename T> EntryList list_of(const char *name, const std::vector<T> &values, UnitSystem units) {
    EntryList out{name, keys_of(T(), units), {}};
    for (const T &value : values)
        out.entries.push_back(entry_of(value, units));
    return out;
}

template <> Entry entry_of(const Floor &floor, UnitSystem units) {
    return {keys_of(floor, units),
            {list_of("beam", floor.beams, units), list_of("opening", floor.openings, units)}};
}

/// What a corner leaves out is as in the shell's notch.
EntryList corner_list(const Shell &shell, UnitSystem units) {
    EntryList out{"corner", notch_keys(shell, units), {}};
    for (const CornerNotch &corner : shell.corners) {
        Stating stating(units);
        stating.raw("between", "[" + toml_text(corner.first) + ", " + toml_text(corner.second) + "]");
        state_notch(stating, corner.notch, shell.notch);
        out.entries.push_back({stating.take(), {}});
    }
    return out;
}

template <auto part> bool same(const Shell &a, const Shell &b) {
    return a.*part == b.*part;
}
bool same_head(const Shell &a, const Shell &b) {
    return a.name == b.name && a.units == b.units && a.thickness == b.thickness;
}
bool same_corners(const Shell &a, const Shell &b) {
    return a.corners == b.corners && a.notch == b.notch;
}

constexpr TableSection tables[] = {
    {"shell", same_head, shell_keys},           {"rounds", same<&Shell::rounds>, rounds_keys},
    {"notch", same<&Shell::notch>, notch_keys}, {"logs", same<&Shell::logs>, logs_keys},
    {"trim", same<&Shell::trim>, trim_keys},    {"pegs", same<&Shell::pegs>, pegs_keys},
    {"wood", same<&Shell::wood>, wood_keys},
};

constexpr ListSection lists[] = {
    {same<&Shell::walls>, [](const Shell &s, UnitSystem u) { return list_of("wall", s.walls, u); }},
    {same<&Shell::partitions>,
     [](const Shell &s, UnitSystem u) { return list_of("partition", s.partitions, u); }},
    {same_corners, corner_list},
    {same<&Shell::own_logs>, [](const Shell &s, UnitSystem u) { return list_of("log", s.own_logs, u); }},
    {same<&Shell::openings>, [](const Shell &s, UnitSystem u) { return list_of("opening", s.openings, u); }},
    {same<&Shell::steps>, [](const Shell &s, UnitSystem u) { return list_of("step", s.steps, u); }},
    {same<&Shell::floors>, [](const Shell &s, UnitSystem u) { return list_of("floor", s.floors, u); }},
    {same<&Shell::bores>, [](const Shell &s, UnitSystem u) { return list_of("bore", s.bores, u); }},
};

} // namespace

std::span<const TableSection> table_sections() {
    return tables;
}

std::span<const ListSection> list_sections() {
    return lists;
}

} // namespace roundlay
