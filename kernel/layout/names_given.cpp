#include "kernel/layout/names_given.h"

#include "kernel/layout/fastenings/bore_marks.h"
#include "kernel/layout/openings/openings.h"

#include <array>
#include <set>

namespace roundlay {

namespace {

std::set<std::string> stated_names(const Shell &shell) {
    std::set<std::string> names;
    for (const Opening &opening : shell.openings)
        names.insert(opening.name);
    for (const StatedBore &bore : shell.bores)
        names.insert(bore.name);
    return names;
}

Said mark_of(BoreUse use, int number) {
    switch (use) {
    case BoreUse::bolt:
        return said("bolt %1", number);
    case BoreUse::rod:
        return said("rod %1", number);
    case BoreUse::wire:
        return said("wiring %1", number);
    case BoreUse::hole:
        break;
    }
    return said("hole %1", number);
}

} // namespace

std::vector<std::pair<std::string, Said>> names_given(const Shell &shell, const Layout &layout) {
    std::vector<std::pair<std::string, Said>> all;
    for (std::size_t i = 0; i < shell.openings.size(); ++i)
        if (const Opening &o = shell.openings[i]; o.name.empty())
            all.emplace_back(name_of(shell, i), said("%1 in wall %2", said_of(opening_of(shell, i)), o.wall));
    for (const StepPlace &step : layout.steps)
        all.emplace_back(step.name, said_of(about::Step{step.number}));
    std::array<int, 4> counts{};
    for (const StatedBore &bore : shell.bores) {
        const int number = ++counts[static_cast<std::size_t>(bore.use)];
        all.emplace_back(name_of(std::optional(bore.use)) + (" " + std::to_string(number)),
                         mark_of(bore.use, number));
    }
    const auto stated = stated_names(shell);
    std::erase_if(all, [&](const auto &given) { return stated.contains(given.first); });
    return all;
}

} // namespace roundlay
