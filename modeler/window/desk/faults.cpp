#include "modeler/window/desk/faults.h"

#include "modeler/window/desk/finding_words.h"
#include "modeler/window/desk/problem_words.h"

#include <QCoreApplication>
#include <charconv>

namespace roundlay::window {

namespace {

class Words {
    Q_DECLARE_TR_FUNCTIONS(Faults)
};

QString line_words(int line) {
    return Words::tr("Line %1").arg(line);
}

Reason reason_of(const Problem &problem) {
    return {{}, problem_text(problem), problem.place.line, problem.place.column};
}

Reason reason_of(const Finding &finding, const State &state) {
    const auto place = state.read.places.locate(finding.subject);
    const UnitSystem units = state.job.shell.units;
    return {place_text(finding, units), message_text(finding, units), place ? place->line : 0,
            place ? place->column : 0};
}

/// Index of the entry that a subject like `opening[2].width` is about; -1 where it is about none of that
/// list.
int entry_of(const std::string &subject, const std::string &list) {
    if (!subject.starts_with(list + "[")) return -1;
    int index = -1;
    std::from_chars(subject.data() + list.size() + 1, subject.data() + subject.size(), index);
    return index;
}

template <typename Part>
void add_named(std::set<std::string> &names, const std::vector<Part> &all, int index) {
    if (index >= 0 && index < static_cast<int>(all.size()))
        names.insert(all[static_cast<std::size_t>(index)].name);
}

/// Whether it speaks of that wall, alone or of two.
bool speaks_of(const About &about, const std::string &wall) {
    const auto *one = first_of<about::Wall>(about);
    const auto *two = first_of<about::Walls>(about);
    return (one && one->name == wall) || (two && (two->one == wall || two->other == wall));
}

void add(Faults &faults, const State &state, const Finding &finding) {
    const Shell &shell = state.job.shell;
    const std::string &subject = finding.subject;
    if (const int opening = entry_of(subject, "opening"); opening >= 0) {
        faults.openings.insert(opening);
        return;
    }
    if (const int floor = entry_of(subject, "floor"); floor >= 0) faults.floors.insert(floor);
    if (const int step = entry_of(subject, "step"); step >= 0) faults.steps.insert(step);
    add_named(faults.walls, shell.walls, entry_of(subject, "wall"));
    add_named(faults.walls, shell.partitions, entry_of(subject, "partition"));
    for (const WallPlace &w : state.drawn().walls)
        if (speaks_of(finding.about, w.name)) faults.walls.insert(w.name);
    for (const CornerPlace &c : state.drawn().corners)
        if (is_corner(finding.about, c.name)) faults.corners.insert(c.name);
}

} // namespace

QString Reason::sentence() const {
    QStringList where;
    if (line > 0) where << line_words(line);
    if (!place.isEmpty()) where << place;
    return where.isEmpty() ? words : where.join(QStringLiteral(", ")) + QStringLiteral(": ") + words;
}

std::vector<Reason> reasons_against(const State &state) {
    std::vector<Reason> all;
    for (const Problem &problem : state.read.problems)
        if (problem.weight == Weight::error) all.push_back(reason_of(problem));
    for (const Finding &finding : state.job.findings)
        if (finding.weight == Weight::error) all.push_back(reason_of(finding, state));
    return all;
}

QString why_not(const State &state) {
    const auto all = reasons_against(state);
    if (all.empty()) return {};
    const QString first = all.front().sentence();
    if (all.size() == 1) return first;
    return Words::tr("%1 (and %2 more)").arg(first).arg(all.size() - 1);
}

Faults about_of(const State &state, const Finding &finding) {
    Faults about;
    add(about, state, finding);
    return about;
}

Faults faults_of(const State &state) {
    Faults faults;
    for (const Finding &finding : state.job.findings)
        if (finding.weight == Weight::error) add(faults, state, finding);
    return faults;
}

} // namespace roundlay::window
