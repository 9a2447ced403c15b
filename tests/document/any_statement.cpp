#include "tests/document/any_statement.h"

#include "kernel/document/key.h"
#include "kernel/record/check_record.h"
#include "kernel/shell/close_plan.h"
#include "tests/document/any_value.h"

#include <rapidcheck.h>

#include <algorithm>
#include <map>

namespace roundlay::test {

using namespace format;

namespace {

using rc::gen::inRange;

/// What must be stated, and half of what may be.
void draw(const Table &table, void *owner, const Shell &shell) {
    for (const Item &item : table.items)
        if (const auto *part = std::get_if<Shared>(&item))
            draw(*part->table, part->in(owner), shell);
        else if (const Key &key = std::get<Key>(item); key.missing || once_in(2))
            draw_key(key, owner, shell);
}

/// Draws until the two differ.
void apart(const std::string &a, std::string &b, const Shell &shell) {
    while (a == b)
        b = any_wall(shell);
}

void two_of_three(void *owner, const Shell &shell) {
    Rounds &rounds = *static_cast<Rounds *>(owner);
    const auto without = *rc::gen::element<std::string>("count", "height", "pitch");
    rounds.count = {}, rounds.height = {}, rounds.pitch = {};
    for (const Item &item : table_of("rounds").items)
        for (const char *name : {"count", "height", "pitch"})
            if (const Key &key = std::get<Key>(item); key.name == std::string(name) && name != without)
                draw_key(key, owner, shell);
}

/// What shapes a log is stated of its whole round.
void only_of_piece(void *owner, const Shell &) {
    OwnLog &log = *static_cast<OwnLog *>(owner);
    if (!log.piece) return;
    const auto finish = log.sizes.finish;
    log.sizes = {}, log.notch = {};
    log.gap_left = log.gap_right = log.scribe = {};
    log.tails.clear();
    log.sizes.finish = finish;
}

/// Both slopes of a tail's top, or neither.
void whole_tail(void *owner, const Shell &) {
    OwnTail &tail = *static_cast<OwnTail *>(owner);
    if (!tail.along || !tail.across) tail.along = tail.across = {};
}

/// A groove has both its sizes.
void whole_groove(void *owner, const Shell &) {
    Trim &trim = *static_cast<Trim *>(owner);
    if ((trim.spline_width == Length()) != (trim.spline_depth == Length()))
        trim.spline_width = trim.spline_depth = {};
}

/// Of its own it has both too, or neither, or the depth of 0 that is none; one size goes with the shell's
/// only where that has a groove.
void whole_own_groove(void *owner, const Shell &) {
    OwnTrim &trim = static_cast<Opening *>(owner)->trim;
    if (trim.spline_width && trim.spline_depth && *trim.spline_width > Length() &&
        *trim.spline_depth > Length())
        return;
    trim.spline_width = {};
    if (trim.spline_depth) trim.spline_depth = Length();
}

void ends_over_start(void *owner, const Shell &) {
    StatedBore &bore = *static_cast<StatedBore *>(owner);
    if (bore.to_round) bore.to_round = std::max(*bore.to_round, bore.from_round);
}

/// Only a log that is used elsewhere, and it does.
void goes_somewhere(void *owner, const Shell &) {
    FoundDecision &decision = *static_cast<FoundDecision *>(owner);
    if (decision.what != Decision::use_elsewhere) decision.to = {};
    if (decision.what != Decision::use_elsewhere) return;
    decision.to.wall += "W";
    if (!decision.to.round) decision.to.round = 1;
}

/// What rules ask of more than one key at a time. A key that no rule asks after needs no line here.
const std::map<std::string, void (*)(void *, const Shell &)> rules{
    {"rounds", two_of_three},
    {"partition",
     [](void *owner, const Shell &s) {
         Partition &p = *static_cast<Partition *>(owner);
         apart(p.from, p.to, s);
     }},
    {"floor",
     [](void *owner, const Shell &s) {
         Floor &f = *static_cast<Floor *>(owner);
         apart(f.from, f.to, s);
     }},
    {"log", only_of_piece},
    {"found.decision", goes_somewhere},
    {"log.tail", whole_tail},
    {"trim", whole_groove},
    {"opening", whole_own_groove},
    {"bore", ends_over_start},
};

void keep_rules(const Table &table, void *owner, const Shell &shell) {
    if (const auto rule = rules.find(table.name); rule != rules.end()) rule->second(owner, shell);
}

void draw_whole(const Table &table, void *owner, const Shell &shell) {
    draw(table, owner, shell);
    keep_rules(table, owner, shell);
}

void add_entry(const Section &section, void *around, const Shell &shell) {
    const auto entry = section.fresh(shell);
    draw(*section.table, entry.get(), shell);
    for (const Section &inner : section.table->lists)
        for (int i = *inRange(0, 3); i > 0; --i)
            add_entry(inner, entry.get(), shell);
    keep_rules(*section.table, entry.get(), shell);
    section.add(around, entry.get());
}

NotchRule any_notch(const Shell &shell) {
    NotchRule notch;
    draw(table_of("notch"), &notch, shell);
    return notch;
}

/// Corners are where walls meet.
void add_corners(Shell &shell) {
    for (std::size_t i = 0; shell.walls.size() > 2 && i < shell.walls.size(); ++i) {
        if (!once_in(4)) continue;
        const std::string &next = shell.walls[(i + 1) % shell.walls.size()].name;
        shell.corners.push_back({shell.walls[i].name, next, once_in(2) ? shell.notch : any_notch(shell)});
    }
    if (shell.partitions.empty() || once_in(2)) return;
    shell.corners.push_back({shell.partitions[0].from, shell.partitions[0].name, any_notch(shell)});
}

/// One wall or two that close the plan, where the others let them.
void leave_lengths_out(std::vector<Wall> &walls) {
    std::vector<Wall> open = walls;
    for (int i = *inRange(0, 3); i > 0; --i)
        open[*inRange<std::size_t>(0, open.size())].closes = true;
    if (!close_plan(open)) walls = open;
}

void add_section(const Section &section, Shell &shell) {
    const std::string &name = section.table->name;
    if (name == "wall") return; // given
    if (name == "corner") return add_corners(shell);
    if (!section.is_list()) return draw_whole(*section.table, section.in(&shell), shell);
    if (shell.walls.size() < 2 && (name == "partition" || name == "floor")) return;
    for (int i = *inRange(0, 4); i > 0; --i)
        add_entry(section, &shell, shell);
}

/// A denominator is one of three.
void mend(Notation &notation) {
    if (notation.denominator) notation.denominator = *rc::gen::element(4, 8, 16);
}

template <typename Part> void name_apart(std::vector<Part> &parts) {
    for (std::size_t i = 0; i < parts.size(); ++i)
        parts[i].name += std::to_string(i);
}

/// What refers to other logs names one that is there; ends are told apart, zones run forward.
void mend(FoundLog &log, std::size_t index, const std::vector<FoundLog> &all) {
    log.tag += std::to_string(index);
    log.scarfed_to.clear(), log.replaces.clear();
    if (index > 0 && once_in(3)) log.scarfed_to = {all[index - 1].tag};
    if (index > 0 && once_in(3)) log.replaces = all[index - 1].tag;
    for (std::size_t i = 0; i < log.ends.size(); ++i)
        log.ends[i].corner += std::to_string(i);
    for (ConditionZone &zone : log.zones)
        if (zone.from.is_taken()) zone.from.written = "0 mm";
    if (log.place.timber.empty()) return; // a timber of a floor lies in no wall
    if (once_in(2))
        log.place.timber.clear();
    else
        log.place = {"", std::nullopt, std::nullopt, log.place.timber};
}

/// No piece is ticked twice.
void name_apart(Done &done, std::size_t index) {
    for (std::size_t i = 0; i < done.pieces.size(); ++i)
        done.pieces[i] = "P" + std::to_string(index) + "-" + std::to_string(i);
}

void mend(Record &record) {
    mend(record.notation);
    for (FieldSheet &sheet : record.sheets)
        mend(sheet.notation);
    name_apart(record.sheets);
    name_apart(record.planes);
    name_apart(record.corners);
    name_apart(record.openings);
    for (std::size_t i = 0; i < record.logs.size(); ++i)
        mend(record.logs[i], i, record.logs);
    for (std::size_t i = 0; i < record.done.size(); ++i)
        name_apart(record.done[i], i);
}

} // namespace

std::vector<Wall> any_walls() {
    Shell shell;
    for (int i = *inRange(1, 8); i > 0; --i) {
        Wall wall;
        draw(table_of("wall"), &wall, shell);
        wall.length = any_size(100'000);
        shell.walls.push_back(wall);
    }
    leave_lengths_out(shell.walls);
    return shell.walls;
}

Shell any_statements() {
    return any_statements(any_walls());
}

Shell any_statements(const std::vector<Wall> &walls) {
    Shell shell;
    shell.walls = walls;
    for (const Section &section : sections())
        if (!section.of_record) add_section(section, shell);
    return shell;
}

Record any_record() {
    const Shell shell;
    Record record;
    for (const Section &section : sections()) {
        if (!section.of_record) continue;
        if (!section.is_list()) draw_whole(*section.table, &record, shell);
        for (const Section &inner : section.table->lists)
            for (int i = section.is_list() ? 0 : *inRange(0, 3); i > 0; --i)
                add_entry(inner, &record, shell);
        for (int i = section.is_list() ? *inRange(0, 4) : 0; i > 0; --i)
            add_entry(section, &record, shell);
    }
    mend(record);
    read_numbers(record);
    return record;
}

} // namespace roundlay::test
