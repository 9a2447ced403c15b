#include "kernel/document/words.h"
#include "kernel/document/writer.h"

namespace roundlay {

void Writer::trim() {
    const Trim &trim = shell_.trim;
    if (trim == Trim()) return;
    gap();
    header("[trim]");
    if (trim.spline_width != Length()) line("spline_width", trim.spline_width, "the groove in each jamb");
    if (trim.spline_depth != Length()) line("spline_depth", trim.spline_depth);
    if (trim.sill_slope != Slope()) line("sill_slope", toml_text(trim.sill_slope), "falls outward");
    line("settle_space", trim.settle_space, "over each frame");
    if (trim.settling)
        line("settling", toml_text(name_of(*trim.settling)), "where no settle_space is stated");
    if (trim.header_bearing != Trim().header_bearing)
        line("header_bearing", trim.header_bearing, "of the log over an opening, at both sides");
}

void Writer::floor(const Floor &floor) {
    line("name", toml_text(floor.name));
    line("from", toml_text(floor.from));
    line("to", toml_text(floor.to));
    line("level", floor.level, "tops of the joists over the foundation");
    line("width", floor.joist.width, "of a joist");
    line("height", floor.joist.height);
    line("tip_width", floor.tip_width);
    line("tip_height", floor.tip_height);
    line("spacing", floor.spacing, "on centre");
    line("first", floor.first, "from the room's left side to the first joist's middle");
    line("bearing", floor.bearing, "in the wall");
    if (floor.pocket == PocketKind::tailed) line("pocket", "\"tailed\"");
    if (floor.tail != Floor().tail) line("tail", toml_text(floor.tail), "each cheek of a tailed end");
    if (floor.live_load) line("live_load", toml_text(*floor.live_load), "kPa");
    if (floor.dead_load) line("dead_load", toml_text(*floor.dead_load), "kPa");
    for (const Beam &beam : floor.beams) {
        header("[[floor.beam]]");
        line("from_wall", beam.from_wall, "inside face to the beam's middle");
        line("width", beam.size.width);
        line("height", beam.size.height);
    }
    for (const FloorOpening &opening : floor.openings) {
        header("[[floor.opening]]");
        if (!opening.name.empty()) line("name", toml_text(opening.name));
        line("from_left", opening.from_left);
        line("from_wall", opening.from_wall);
        line("width", opening.width, "along the wall");
        line("length", opening.length, "along the joists");
    }
}

void Writer::floors() {
    for (const Floor &each : shell_.floors) {
        gap();
        if (&each == &shell_.floors.front()) comment("Joists lie from one wall to the one across the room.");
        header("[[floor]]");
        floor(each);
    }
}

void Writer::bores() {
    for (const StatedBore &bore : shell_.bores) {
        gap();
        header("[[bore]]");
        if (!bore.name.empty()) line("name", toml_text(bore.name));
        line("use", toml_text(word(bore.use)));
        line("wall", toml_text(bore.wall));
        line("from_left", bore.from_left);
        line("from_outside", bore.from_outside);
        line("diameter", bore.diameter);
        line("from_round", std::to_string(bore.from_round));
        if (bore.to_round) line("to_round", std::to_string(*bore.to_round));
        if (bore.drift != Length())
            line("drift", bore.drift, "of each log's hole to the right of the one below");
    }
}

} // namespace roundlay
