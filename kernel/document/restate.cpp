#include "kernel/document/restate.h"

#include <stdexcept>

namespace roundlay {

namespace {

std::string spelled(const std::string &text) {
    return toml_text(text);
}
std::string spelled(double value) {
    return toml_text(value);
}
std::string spelled(Slope value) {
    return toml_text(value);
}
std::string spelled(int value) {
    return std::to_string(value);
}
std::string spelled(bool value) {
    return value ? "true" : "false";
}
std::string spelled(TopRule value) {
    return value == TopRule::level ? "\"level\"" : "\"staggered\"";
}
std::string spelled(LogEnd value) {
    return value == LogEnd::left ? "\"left\"" : "\"right\"";
}
std::string spelled(OpeningKind value) {
    return value == OpeningKind::door ? "\"door\"" : "\"window\"";
}
std::string spelled(UnitSystem value) {
    return value == UnitSystem::metric ? "\"metric\"" : "\"imperial\"";
}
std::string spelled(NotchKind value) {
    switch (value) {
    case NotchKind::full_dovetail:
        return "\"full dovetail\"";
    case NotchKind::half_dovetail:
        return "\"half dovetail\"";
    case NotchKind::square_lap:
        return "\"square lap\"";
    case NotchKind::saddle:
        return "\"saddle\"";
    case NotchKind::stated:
        break;
    }
    return "\"stated\"";
}

std::string entry(const char *list, std::size_t index) {
    return std::string(list) + "[" + std::to_string(index) + "].";
}

/// Collects edits; the first that fails ends it.
class Restating {
  public:
    Restating(Document document, UnitSystem units) : edited_(std::move(document)), units_(units) {}

    Document::Edited take() { return std::move(edited_); }

    template <typename T> void differ(const std::string &path, const T &before, const T &after) {
        if (before != after) state(path, text_of(after));
    }
    template <typename T>
    void differ(const std::string &path, const std::optional<T> &before, const std::optional<T> &after) {
        if (before == after) return;
        if (after)
            state(path, text_of(*after));
        else
            drop(path);
    }
    template <typename T> void key(Document::Keys &keys, const char *name, const T &value) const {
        keys.emplace_back(name, text_of(value));
    }
    template <typename T>
    void key(Document::Keys &keys, const char *name, const std::optional<T> &value) const {
        if (value) keys.emplace_back(name, text_of(*value));
    }

    void state(const std::string &path, const std::string &value) {
        if (const auto *document = std::get_if<Document>(&edited_)) take_over(document->with(path, value));
    }
    void drop(const std::string &path) {
        if (const auto *document = std::get_if<Document>(&edited_)) take_over(document->without(path));
    }
    void add(const char *list, const Document::Keys &keys) {
        if (const auto *document = std::get_if<Document>(&edited_))
            take_over(document->with_entry(list, keys));
    }

  private:
    std::string text_of(Length value) const { return toml_text(value, units_); }
    template <typename T> std::string text_of(const T &value) const { return spelled(value); }
    void take_over(Document::Edited next) { edited_ = std::move(next); }

    Document::Edited edited_;
    UnitSystem units_;
};

void restate_entry(Restating &r, const std::string &at, const Wall &a, const Wall &b) {
    if (a.name != b.name || a.heading != b.heading)
        throw std::invalid_argument("restated: walls keep their names and headings");
    r.differ(at + "length", a.length, b.length);
    r.differ(at + "thickness", a.thickness, b.thickness);
    r.differ(at + "pitch", a.pitch, b.pitch);
    r.differ(at + "log_height", a.log_height, b.log_height);
}

void restate_entry(Restating &r, const std::string &at, const Opening &a, const Opening &b) {
    r.differ(at + "name", a.name, b.name);
    r.differ(at + "kind", a.kind, b.kind);
    r.differ(at + "wall", a.wall, b.wall);
    r.differ(at + "from_left", a.from_left, b.from_left);
    r.differ(at + "sill", a.sill, b.sill);
    r.differ(at + "width", a.width, b.width);
    r.differ(at + "height", a.height, b.height);
}

/// Slopes are stated only where their kind uses them.
void restate_notch(Restating &r, const std::string &at, const NotchRule &a, const NotchRule &b) {
    r.differ(at + "kind", a.kind, b.kind);
    if (b.kind == NotchKind::stated) {
        const bool newly = a.kind != NotchKind::stated;
        if (newly || a.along != b.along) r.state(at + "along", spelled(b.along));
        if (newly || a.across != b.across) r.state(at + "across", spelled(b.across));
    } else {
        r.differ(at + "slope", a.slope, b.slope);
    }
    r.differ(at + "overhang", a.overhang, b.overhang);
    r.differ(at + "least_tail", a.least_tail, b.least_tail);
}

void restate_entry(Restating &r, const std::string &at, const CornerNotch &a, const CornerNotch &b) {
    restate_notch(r, at, a.notch, b.notch);
}

void restate_sizes(Restating &r, const std::string &at, const LogSizes &a, const LogSizes &b) {
    r.differ(at + "butt_height", a.butt_height, b.butt_height);
    r.differ(at + "tip_height", a.tip_height, b.tip_height);
    r.differ(at + "butt_width", a.butt_width, b.butt_width);
    r.differ(at + "tip_width", a.tip_width, b.tip_width);
    r.differ(at + "butt", a.butt, b.butt);
}

void restate_entry(Restating &r, const std::string &at, const OwnLog &a, const OwnLog &b) {
    r.differ(at + "mark", a.mark, b.mark);
    restate_sizes(r, at, a.sizes, b.sizes);
}

Document::Keys keys_of(const Restating &r, const Opening &o) {
    Document::Keys keys;
    if (!o.name.empty()) r.key(keys, "name", o.name);
    r.key(keys, "kind", o.kind);
    r.key(keys, "wall", o.wall);
    r.key(keys, "from_left", o.from_left);
    r.key(keys, "sill", o.sill);
    r.key(keys, "width", o.width);
    r.key(keys, "height", o.height);
    return keys;
}

Document::Keys keys_of(const Restating &r, const CornerNotch &c) {
    Document::Keys keys{{"between", "[" + toml_text(c.first) + ", " + toml_text(c.second) + "]"}};
    r.key(keys, "kind", c.notch.kind);
    if (c.notch.kind == NotchKind::stated) {
        r.key(keys, "along", c.notch.along);
        r.key(keys, "across", c.notch.across);
    } else if (c.notch.kind != NotchKind::square_lap) {
        r.key(keys, "slope", c.notch.slope);
    }
    return keys;
}

Document::Keys keys_of(const Restating &r, const OwnLog &log) {
    Document::Keys keys;
    r.key(keys, "wall", log.wall);
    r.key(keys, "round", log.round);
    if (!log.mark.empty()) r.key(keys, "mark", log.mark);
    r.key(keys, "butt_height", log.sizes.butt_height);
    r.key(keys, "tip_height", log.sizes.tip_height);
    r.key(keys, "butt_width", log.sizes.butt_width);
    r.key(keys, "tip_width", log.sizes.tip_width);
    r.key(keys, "butt", log.sizes.butt);
    return keys;
}

/// Which entries of a longer list went when it became the shorter one, last first.
template <typename T>
std::vector<std::size_t> gone(const std::vector<T> &before, const std::vector<T> &after) {
    std::vector<std::size_t> out;
    std::size_t surplus = before.size() - after.size();
    for (std::size_t i = 0, j = 0; i < before.size(); ++i) {
        if (surplus > 0 && (j >= after.size() || !(before[i] == after[j]))) {
            out.insert(out.begin(), i);
            --surplus;
        } else {
            ++j;
        }
    }
    return out;
}

template <typename T>
void restate_list(Restating &r, const char *list, std::vector<T> before, const std::vector<T> &after) {
    if (before.size() > after.size())
        for (const std::size_t index : gone(before, after)) {
            r.drop(std::string(list) + "[" + std::to_string(index) + "]");
            before.erase(before.begin() + static_cast<std::ptrdiff_t>(index));
        }
    for (std::size_t i = 0; i < before.size(); ++i)
        restate_entry(r, entry(list, i), before[i], after[i]);
    if constexpr (!std::is_same_v<T, Wall>)
        for (std::size_t i = before.size(); i < after.size(); ++i)
            r.add(list, keys_of(r, after[i]));
}

void restate_rounds(Restating &r, const Rounds &a, const Rounds &b) {
    r.differ("rounds.count", a.count, b.count);
    r.differ("rounds.height", a.height, b.height);
    r.differ("rounds.pitch", a.pitch, b.pitch);
    r.differ("rounds.gap", a.gap, b.gap);
    r.differ("rounds.full_first", a.full_first, b.full_first);
    r.differ("rounds.top", a.top, b.top);
}

void restate_pegs(Restating &r, const PegRule &a, const PegRule &b) {
    r.differ("pegs.wanted", a.wanted, b.wanted);
    r.differ("pegs.diameter", a.diameter, b.diameter);
    r.differ("pegs.spacing", a.spacing, b.spacing);
    r.differ("pegs.end_distance", a.end_distance, b.end_distance);
    r.differ("pegs.between", a.between, b.between);
    r.differ("pegs.depth_below", a.depth_below, b.depth_below);
    r.differ("pegs.fewest", a.fewest, b.fewest);
}

} // namespace

Document::Edited restated(const Document &document, const Shell &before, const Shell &after) {
    if (before.walls.size() != after.walls.size())
        throw std::invalid_argument("restated: walls neither come nor go");
    Restating r(document, after.units);
    r.differ("shell.name", before.name, after.name);
    r.differ("shell.units", before.units, after.units);
    r.differ("shell.thickness", before.thickness, after.thickness);
    restate_list(r, "wall", before.walls, after.walls);
    restate_rounds(r, before.rounds, after.rounds);
    restate_notch(r, "notch.", before.notch, after.notch);
    restate_list(r, "corner", before.corners, after.corners);
    restate_sizes(r, "logs.", before.logs, after.logs);
    restate_list(r, "log", before.own_logs, after.own_logs);
    restate_list(r, "opening", before.openings, after.openings);
    restate_pegs(r, before.pegs, after.pegs);
    r.differ("wood.species", before.wood.species, after.wood.species);
    r.differ("wood.moisture", before.wood.moisture, after.wood.moisture);
    return r.take();
}

} // namespace roundlay
