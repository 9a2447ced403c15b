#include "kernel/document/compass.h"
#include "kernel/document/document.h"
#include "kernel/document/limits.h"
#include "kernel/document/words.h"
#include "kernel/document/writer.h"

namespace roundlay {

void Writer::shell() {
    comment("A shell of hewn logs. Lengths stand in quotes with their unit, in either system:");
    comment("\"8 1/2 in\", \"7 ft 6 in\", \"215 mm\", \"2.4 m\". Slopes: \"1:8\", \"7 deg\", \"1 in in 8 "
            "in\", \"level\".");
    line("roundlay", std::to_string(limits::version), "version of the format");
    gap();
    header("[shell]");
    if (!shell_.name.empty()) line("name", toml_text(shell_.name));
    line("units", toml_text(word(shell_.units)),
         "how lengths are shown: \"metric\" or \"imperial\"");
    line("thickness", shell_.thickness, "of every wall that does not state its own");
}

void Writer::walls() {
    gap();
    comment("The walls: a walk once round the outside faces, counter-clockwise seen from above.");
    for (const Wall &wall : shell_.walls) {
        if (&wall != &shell_.walls.front()) gap();
        header("[[wall]]");
        line("name", toml_text(wall.name));
        line("toward", toml_text(spell_heading(wall.heading)));
        if (wall.closes)
            comment("length left out: this wall closes the plan");
        else
            line("length", wall.length);
        line("thickness", wall.thickness);
        line("pitch", wall.pitch);
        line("log_height", wall.log_height);
    }
}

void Writer::rounds() {
    const Rounds &rounds = shell_.rounds;
    gap();
    header("[rounds]");
    comment("Two of count, height and pitch; the third follows.");
    if (rounds.count) line("count", std::to_string(*rounds.count));
    line("height", rounds.height, "foundation to the top of the last round");
    line("pitch", rounds.pitch, "one round, its gap included");
    line("gap", rounds.gap, "between the logs of one wall");
    if (!rounds.full_first.empty())
        line("full_first", toml_text(rounds.full_first), "this wall starts with a full log");
    line("top", toml_text(word(rounds.top)), "\"level\" or \"staggered\"");
}

/// The keys in which `rule` differs from what a reader starts from; all that its kind uses where `whole`.
void Writer::notch(const NotchRule &rule, const NotchRule &base, bool whole) {
    const bool sloped = rule.kind == NotchKind::full_dovetail || rule.kind == NotchKind::half_dovetail;
    const bool stated = rule.kind == NotchKind::stated,
               newly = stated && (whole || base.kind != NotchKind::stated);
    if (whole || rule.kind != base.kind)
        line("kind", toml_text(word(rule.kind)),
             "\"full dovetail\", \"half dovetail\", \"square lap\", \"saddle\" or \"stated\"");
    if ((whole && sloped) || rule.slope != base.slope) line("slope", toml_text(rule.slope));
    if (newly || rule.along != base.along) line("along", toml_text(rule.along), "outward along the log");
    if (newly || rule.across != base.across)
        line("across", toml_text(rule.across), "outward along the crossing log");
    if (whole || rule.overhang != base.overhang)
        line("overhang", rule.overhang, "past the crossing wall; 0 is flush");
    if (rule.shoulder != base.shoulder) shoulder(rule.shoulder);
    if (rule.scribe != base.scribe) line("scribe", rule.scribe, "saddles clear the lower log by this");
    if (whole || rule.least_tail != base.least_tail)
        line("least_tail", rule.least_tail, "no tail thinner than this");
}

void Writer::shoulder(Length shoulder) {
    if (shoulder.mm() < 0)
        line("shoulder_proud", Length() - shoulder, "left standing until the logs are fitted");
    else
        line("shoulder_deep", shoulder, "behind the crossing wall's face");
}

void Writer::partitions() {
    for (const Partition &wall : shell_.partitions) {
        gap();
        if (&wall == &shell_.partitions.front())
            comment("Partitions: from one wall to another; from_left runs along the first one's outside.");
        header("[[partition]]");
        line("name", toml_text(wall.name));
        line("from", toml_text(wall.from));
        line("from_left", wall.from_left);
        if (wall.heading) line("toward", toml_text(spell_heading(*wall.heading)));
        line("to", toml_text(wall.to));
        line("thickness", wall.thickness);
        line("pitch", wall.pitch);
        line("log_height", wall.log_height);
    }
}

void Writer::steps() {
    for (const FoundationStep &step : shell_.steps) {
        gap();
        header("[[step]]");
        line("wall", toml_text(step.wall));
        line("from_left", step.from_left);
        line("width", step.width);
        line("rise", step.rise, "over the lowest foundation");
    }
}

void Writer::log_notch(const LogNotch &notch) {
    if (notch.kind) line("kind", toml_text(word(*notch.kind)));
    for (const auto &[key, slope] : {std::pair("slope", notch.slope), std::pair("along", notch.along),
                                     std::pair("across", notch.across)})
        if (slope) line(key, toml_text(*slope));
    line("overhang_left", notch.overhang_left);
    line("overhang_right", notch.overhang_right);
}

void Writer::corners() {
    for (const CornerNotch &corner : shell_.corners) {
        gap();
        comment("A corner of its own; what it leaves out is as in [notch].");
        header("[[corner]]");
        line("between", "[" + toml_text(corner.first) + ", " + toml_text(corner.second) + "]");
        notch(corner.notch, shell_.notch, false);
    }
}

void Writer::sizes(const LogSizes &sizes) {
    line("butt_height", sizes.butt_height);
    line("tip_height", sizes.tip_height);
    line("butt_width", sizes.butt_width);
    line("tip_width", sizes.tip_width);
    line("diameter", sizes.diameter);
    if (sizes.butt) line("butt", toml_text(word(*sizes.butt)));
    if (sizes.finish) line("finish", toml_text(word(*sizes.finish)));
}

void Writer::logs() {
    if (shell_.logs != LogSizes()) {
        gap();
        comment("Butt and tip of every log; butt = \"left\" or \"right\", seen from outside. Left out: as "
                "the wall.");
        header("[logs]");
        sizes(shell_.logs);
    }
    for (const OwnLog &log : shell_.own_logs) {
        gap();
        header("[[log]]");
        line("wall", toml_text(log.wall));
        line("round", std::to_string(log.round));
        if (log.piece) line("piece", std::to_string(*log.piece), "counted from the left");
        if (!log.mark.empty()) line("mark", toml_text(log.mark));
        sizes(log.sizes);
        log_notch(log.notch);
        line("bow", log.bow, "out of the line between its ends");
        if (log.fabric) line("fabric", toml_text(word(*log.fabric)));
        if (!log.note.empty()) line("note", toml_text(log.note));
    }
}

void Writer::openings() {
    if (!shell_.openings.empty()) {
        gap();
        comment("Openings: from_left runs from the wall's left corner seen from outside, sill from the "
                "foundation.");
    }
    for (const Opening &opening : shell_.openings) {
        if (&opening != &shell_.openings.front()) gap();
        header("[[opening]]");
        if (!opening.name.empty()) line("name", toml_text(opening.name));
        line("kind", toml_text(word(opening.kind)));
        line("wall", toml_text(opening.wall));
        line("from_left", opening.from_left);
        line("sill", opening.sill);
        line("width", opening.width);
        line("height", opening.height);
        line("spline_width", opening.trim.spline_width);
        line("spline_depth", opening.trim.spline_depth);
        if (opening.trim.sill_slope) line("sill_slope", toml_text(*opening.trim.sill_slope));
        line("settle_space", opening.trim.settle_space);
        line("header_bearing", opening.trim.header_bearing);
    }
}

void Writer::pegs() {
    const PegRule &pegs = shell_.pegs;
    gap();
    header("[pegs]");
    line("wanted", pegs.wanted ? "true" : "false");
    line("diameter", pegs.diameter);
    line("spacing", pegs.spacing, "fastening places are never further apart");
    line("end_distance", pegs.end_distance, "from a bore to a cut end, a jamb or a shoulder, at least");
    line("between", pegs.between, "between two bores in one log, at least");
    line("depth_below", toml_text(pegs.depth_below), "into the lower log, as a part of its height");
    line("fewest", std::to_string(pegs.fewest), "fastening places of every log");
    if (pegs.draw != Length()) line("draw", pegs.draw, "the lower hole nearer to the log's end by this");
    line("square", pegs.square, "side of square pegs");
}

void Writer::wood() {
    gap();
    header("[wood]");
    if (shell_.wood.species.empty())
        comment(
            "species = \"eastern hemlock\" # for weights and spans; left out, that is taken and said to be");
    else
        line("species", toml_text(shell_.wood.species));
    if (shell_.wood.moisture)
        line("moisture", toml_text(*shell_.wood.moisture), "percent of ovendry mass");
    else
        comment("moisture = 19 # percent of ovendry mass; left out means green");
}

std::string write_document(const Shell &shell) {
    Writer writer(shell);
    writer.shell();
    writer.walls();
    writer.partitions();
    writer.rounds();
    writer.gap();
    writer.header("[notch]");
    writer.notch(shell.notch, NotchRule(), true);
    writer.corners();
    writer.logs();
    writer.openings();
    writer.steps();
    writer.trim();
    writer.floors();
    writer.pegs();
    writer.bores();
    writer.wood();
    return writer.take();
}

} // namespace roundlay
