#include "kernel/geometry/tolerance.h"
#include "kernel/layout/openings.h"
#include "kernel/layout/text.h"
#include "kernel/review/review_parts.h"
#include "kernel/trade/settling.h"
#include "kernel/trade/species.h"

namespace roundlay {

namespace {

/// A frame needs room, and the logs over it room to come down: the shorter figure is never taken without a
/// word.
void check_settling(const Shell &shell, Findings &findings) {
    const SettlingRule &due = *settling_by_wall(shell).rule;
    for (std::size_t i = 0; i < shell.openings.size(); ++i) {
        const Opening &o = shell.openings[i];
        const auto stated = trim_of(shell, o).settle_space;
        if (!stated) continue;
        const std::string place = opening_place(shell, i);
        const std::string key =
            o.trim.settle_space ? subject("opening", i, "settle_space") : "trim.settle_space";
        const double space = stated->mm(), rule = shown_settling_space(o.height, due, shell.units).mm();
        if (space >= o.height.mm() - tolerance::weld)
            findings.push_back({Weight::error, "no-room-for-frame", place,
                                "the space stated over its frame, " + say(shell, space) +
                                    ", leaves nothing of its height of " + say(shell, o.height.mm()) + "; " +
                                    std::string(due.name()) + " asks for " + say(shell, rule),
                                key});
        else if (space < rule - tolerance::weld)
            findings.push_back({Weight::warning, "settle-space-short", place,
                                "the space stated over its frame, " + say(shell, space) +
                                    ", is less than the " + say(shell, rule) + " of " +
                                    std::string(due.name()) +
                                    "; logs that come down further press on the frame. Local code and a "
                                    "licensed professional decide",
                                key});
    }
}

/// Once for the shell: a rule stated that leaves less than the one for its kind of wall.
void check_settling_rule(const Shell &shell, Findings &findings) {
    const SettlingRule &due = *settling_by_wall(shell).rule, &taken = *choose_settling(shell).rule;
    if (taken.part >= due.part || shell.openings.empty()) return;
    findings.push_back({Weight::note, "settling-rule-short", "openings",
                        "the settling rule stated, " + std::string(taken.name()) +
                            ", leaves less over frames than " + std::string(due.name()) +
                            ", which is taken for such walls where none is stated",
                        "trim.settling"});
}

void check_species(const Shell &shell, Findings &findings) {
    const auto found = find_species(species_of(shell.wood));
    if (const auto *unknown = std::get_if<UnknownSpecies>(&found))
        findings.push_back({Weight::warning, "species-unknown", "wood",
                            unknown->message + "; until then no weight is given and no floor is screened",
                            "wood.species"});
    else if (shell.wood.species.empty())
        findings.push_back(
            {Weight::note, "species-not-stated", "wood",
             "no species is stated: weights and spans are worked out for " + species_of(shell.wood),
             "wood.species"});
}

} // namespace

void review_wood(const Shell &shell, Findings &findings) {
    check_settling(shell, findings);
    check_settling_rule(shell, findings);
    check_species(shell, findings);
}

} // namespace roundlay
