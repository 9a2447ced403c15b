#include "tests/document/any_statement.h"

#include "kernel/document/key.h"
#include "kernel/measure/load.h"
#include "kernel/measure/spelling.h"
#include "kernel/record/check_record.h"
#include "kernel/shell/close_plan.h"

#include <rapidcheck.h>

#include <algorithm>
#include <cmath>
#include <map>

namespace roundlay::test {

using namespace format;

namespace {

using rc::gen::inRange;

bool once_in(int times) {
    return *inRange(0, times) == 0;
}

/// As a person could have typed it.
Length typed(double mm) {
    return std::get<Length>(parse_length(spell_length(Length::mm(mm), UnitSystem::metric)));
}

/// Over 0, up to `most` mm: whole millimetres, 64ths and 12ths of an inch, and doubles as they come.
Length any_size(double most) {
    const double part = *inRange(1, 1'000'001) / 1e6;
    const double raw = part * most;
    switch (*inRange(0, 4)) {
    case 0:
        return Length::mm(std::ceil(raw));
    case 1:
        return typed(std::max(1.0, std::floor(raw / 25.4 * 64)) * 25.4 / 64);
    case 2:
        return typed(std::max(1.0, std::floor(raw / 25.4 * 12)) * 25.4 / 12);
    default:
        return typed(raw);
    }
}
Length any_gap(double most) {
    return once_in(4) ? Length() : any_size(most);
}

Slope any_slope(bool may_fall) {
    const double sign = may_fall && *rc::gen::arbitrary<bool>() ? -1 : 1;
    switch (*inRange(0, 4)) {
    case 0:
        return Slope();
    case 1:
        return Slope::rise_per_run(sign / *inRange(1, 40));
    default:
        return Slope::rise_per_run(sign * *inRange(0, 1'000'000'000) / 1e8);
    }
}

std::string any_name() {
    const auto part =
        rc::gen::elementOf(std::vector<std::string>{"a", "Z", "3", " ", "\"", "'", "\\", "#", "=", "[", "]",
                                                    "\u00e9", "\u2033", "\U0001F332", "'''", "\"\"\""});
    std::string name;
    for (const std::string &p : *rc::gen::resize(30, rc::gen::container<std::vector<std::string>>(part)))
        name += p;
    return name;
}

std::string any_wall(const Shell &shell) {
    return (*rc::gen::elementOf(shell.walls)).name;
}

/// A name that no other wall, partition or floor has, nor any in another shell over the same walls has for
/// another thing.
std::string free_name(const Shell &shell, const std::string &of) {
    if (of == "floor") return "fl" + std::to_string(shell.floors.size());
    const std::size_t taken = shell.walls.size() + shell.partitions.size();
    return std::string(1, static_cast<char>('A' + taken)) + *rc::gen::element<std::string>("", "x", "2");
}

/// As somebody could have noted it, over 0 and up to 2 m; 3.10 and 3.10.1 may stay open.
std::string any_note() {
    const auto number = [](int low, int high) { return std::to_string(*inRange(low, high)); };
    switch (*inRange(0, 5)) {
    case 0:
        return number(0, 6) + "." + number(1, 12) + "." + number(0, 4);
    case 1:
        return number(0, 2) + "." + number(1, 10);
    case 2:
        return number(1, 2001) + " mm";
    case 3:
        return number(1, 78) + " " + number(1, 8) + "/8 in";
    default:
        return number(0, 6) + "\u2032\u2014" + number(1, 12) + "\u2033";
    }
}

NotedLength any_noted() {
    NotedLength length{.written = any_note()};
    if (once_in(3)) length.certainty = *rc::gen::element(Certainty::proposed, Certainty::contradicted);
    if (once_in(3)) length.by = any_name();
    if (once_in(3)) length.on = any_name();
    return length;
}

ManyTexts some_of(const ManyTexts &words) {
    ManyTexts some;
    for (const std::string &word : words)
        if (once_in(3)) some.push_back(word);
    return some;
}

/// Over all that the kind takes.
struct AnyValue {
    const Shell &shell;

    Value operator()(const YesNo &) const { return *rc::gen::arbitrary<bool>(); }
    Value operator()(const Count &kind) const { return *inRange(kind.low, kind.high + 1); }
    Value operator()(const Number &kind) const {
        constexpr double parts = 1e6;
        const auto low = static_cast<long>(kind.low * parts) + (kind.low_is_in ? 0 : 1);
        return static_cast<double>(*inRange(low, static_cast<long>(kind.high * parts) + 1)) / parts;
    }
    Value operator()(const Load &kind) const { // as stated in kPa or in psf
        const double figure = *inRange(1, static_cast<int>(kind.most * 1000) + 1) / 1000.0;
        return once_in(2) ? figure : std::min(kind.most, std::round(20 * figure) * kpa_per_psf);
    }
    Value operator()(const Size &kind) const {
        const LengthBounds &b = kind.bounds;
        if (b.low_mm < 0 && once_in(2)) return Length() - any_size(-b.low_mm);
        return b.low_is_in ? any_gap(b.high_mm) : any_size(b.high_mm);
    }
    Value operator()(const Incline &kind) const { return any_slope(kind.may_fall); }
    Value operator()(const Direction &) const {
        return once_in(2) ? 45.0 * *inRange(0, 8) : *inRange(0, 360'000'000) / 1e6;
    }
    Value operator()(const Text &) const { return any_name(); }
    Value operator()(const TagName &kind) const { return free_name(shell, kind.of); }
    Value operator()(const WallName &) const { return any_wall(shell); }
    Value operator()(const WallPair &) const { return TwoNames(any_wall(shell), any_wall(shell)); }
    Value operator()(const OneOf &kind) const { return *rc::gen::elementOf(kind.words); }
    Value operator()(const SomeOf &kind) const { return some_of(kind.words); }
    Value operator()(const Texts &) const { return some_of({any_name(), any_name(), "IV"}); }
    Value operator()(const Noted &) const { return any_noted(); }
};

void draw_key(const Key &key, void *owner, const Shell &shell) {
    key.set(owner, std::visit(AnyValue{shell}, key.kind));
}

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
    log.sizes.finish = finish;
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
    {"trim", whole_groove},
    {"opening", whole_own_groove},
    {"bore", ends_over_start},
};

void draw_whole(const Table &table, void *owner, const Shell &shell) {
    draw(table, owner, shell);
    if (const auto rule = rules.find(table.name); rule != rules.end()) rule->second(owner, shell);
}

void add_entry(const Section &section, void *around, const Shell &shell) {
    const auto entry = section.fresh(shell);
    draw_whole(*section.table, entry.get(), shell);
    for (const Section &inner : section.table->lists)
        for (int i = *inRange(0, 3); i > 0; --i)
            add_entry(inner, entry.get(), shell);
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
}

void mend(Record &record) {
    mend(record.notation);
    for (FieldSheet &sheet : record.sheets)
        mend(sheet.notation);
    name_apart(record.sheets);
    name_apart(record.planes);
    name_apart(record.corners);
    for (std::size_t i = 0; i < record.logs.size(); ++i)
        mend(record.logs[i], i, record.logs);
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
