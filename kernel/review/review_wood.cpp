#include "kernel/geometry/tolerance.h"
#include "kernel/layout/openings/openings.h"
#include "kernel/layout/text.h"
#include "kernel/review/review_parts.h"
#include "kernel/trade/settling.h"
#include "kernel/trade/species.h"

#include <algorithm>
#include <optional>

namespace roundlay {

namespace {

/// A frame of less than this part of its opening is a slip of the pen. Common practice, no source.
constexpr double least_frame = 1.0 / 2;

/// Of an opening; its place and its key are told later.
Finding of_frame(Weight weight, const char *code, Said what, Said advice) {
    return {weight, code, {}, std::move(what), std::move(advice), ""};
}

/// A space stated over a frame, beside the rule that is due there.
std::optional<Finding> check_space(double space, double height, double rule, const SettlingRule &due) {
    const auto asks = [&] { return said("%1 asks for %2", phrase(due.name()), in_mm(rule)); };
    if (space >= height - tolerance::weld)
        return of_frame(Weight::error, "no-room-for-frame",
                        said("the space stated over its frame, %1, leaves nothing of its height of %2",
                             in_mm(space), in_mm(height)),
                        asks());
    if (space < rule - tolerance::weld)
        return of_frame(Weight::warning, "settle-space-short",
                        said("the space stated over its frame, %1, is less than the %2 of %3", in_mm(space),
                             in_mm(rule), phrase(due.name())),
                        said("logs that come down further press on the frame. Local code and a "
                             "licensed professional decide"));
    if (height - space >= least_frame * height) return {};
    return of_frame(Weight::warning, "little-room-for-frame",
                    said("the space stated over its frame, %1, leaves a frame of %2 in a height of %3",
                         in_mm(space), in_mm(height - space), in_mm(height)),
                    asks());
}

/// A frame needs room, and the logs over it room to come down: the shorter figure is never taken without a
/// word.
void check_settling(const Shell &shell, Findings &findings) {
    for (std::size_t i = 0; i < shell.openings.size(); ++i) {
        const Opening &o = shell.openings[i];
        const auto stated = trim_of(shell, o).settle_space;
        if (!stated) continue;
        const SettlingRule &due = settling_asked_for(shell, o);
        const double rule = shown_settling_space(o.height, due, shell.units).mm();
        std::optional<Finding> found = check_space(stated->mm(), o.height.mm(), rule, due);
        if (!found) continue;
        found->about = opening_place(shell, i);
        found->subject = o.trim.settle_space ? subject("opening", i, "settle_space") : "trim.settle_space";
        findings.push_back(std::move(*found));
    }
}

/// A rule stated that leaves less than the one for the kind of wall, over an opening that high.
void tell_short_rule(const Shell &shell, const SettlingRule &taken, Length height, const About &place,
                     const std::string &key, Findings &findings) {
    const SettlingRule &due = *settling_by_wall(shell).rule;
    if (taken.part >= due.part) return;
    const auto space = [&](const SettlingRule &rule) {
        return in_mm(shown_settling_space(height, rule, shell.units).mm());
    };
    findings.push_back(
        {Weight::note,
         "settling-rule-short",
         place,
         said("the settling rule stated, %1, leaves %2 over the frame in an opening %3 high, "
              "where %4 asks for %5, which is taken for such walls where none is stated",
              phrase(taken.name()), space(taken), in_mm(height.mm()), phrase(due.name()), space(due)),
         {},
         key});
}

/// Once for all openings that go by the shell's rule, of which the tallest is told, and for each that goes by
/// its own.
void check_settling_rules(const Shell &shell, Findings &findings) {
    std::optional<Length> tallest;
    for (std::size_t i = 0; i < shell.openings.size(); ++i) {
        const Opening &o = shell.openings[i];
        if (trim_of(shell, o).settle_space) continue;
        if (!o.trim.settling)
            tallest = tallest ? std::max(*tallest, o.height) : o.height;
        else
            tell_short_rule(shell, *choose_settling(shell, o).rule, o.height, opening_place(shell, i),
                            subject("opening", i, "settling"), findings);
    }
    if (tallest)
        tell_short_rule(shell, *choose_settling(shell).rule, *tallest, {about::All::openings},
                        "trim.settling", findings);
}

/// Where a species is named that not all wood is of.
struct NamedWood {
    std::string species;
    About about;
    std::string subject;
};

std::vector<NamedWood> named_woods(const Shell &shell) {
    std::vector<NamedWood> all;
    for (std::size_t i = 0; i < shell.own_logs.size(); ++i)
        if (const OwnLog &log = shell.own_logs[i]; !log.species.empty())
            all.push_back({log.species, round_place(log.wall, log.round), subject("log", i, "species")});
    for (std::size_t i = 0; i < shell.floors.size(); ++i)
        if (const Floor &floor = shell.floors[i]; !floor.species.empty())
            all.push_back({floor.species, {about::Floor{floor.name}}, subject("floor", i, "species")});
    for (std::size_t i = 0; i < shell.mends.size(); ++i)
        if (const Mend &mend = shell.mends[i]; !mend.species.empty())
            all.push_back({mend.species, {about::All::wood}, subject("mend", i, "species")});
    return all;
}

/// Each unknown one once: an old house may have it in every log.
void check_named_woods(const Shell &shell, Findings &findings) {
    std::vector<NamedWood> all = named_woods(shell);
    for (std::size_t first = 0; first < all.size(); ++first) {
        const NamedWood named = all[first];
        const auto found = find_species(named.species);
        const auto *unknown = std::get_if<UnknownSpecies>(&found);
        if (!unknown) continue;
        const auto same = [&](const NamedWood &each) { return each.species == named.species; };
        const auto times = std::ranges::count_if(all, same);
        findings.push_back(
            {Weight::warning, "species-unknown", named.about,
             times == 1
                 ? said("no values are known for the species \"%1\"", named.species)
                 : said("no values are known for the species \"%1\", which %2 places of this shell have",
                        named.species, times),
             said("%1; until then no weight of it is given and no floor of it screened",
                  which_species(*unknown)),
             named.subject});
        all.erase(std::remove_if(all.begin() + std::ptrdiff_t(first) + 1, all.end(), same), all.end());
    }
}

void check_species(const Shell &shell, Findings &findings) {
    const auto found = find_species(species_of(shell.wood));
    if (const auto *unknown = std::get_if<UnknownSpecies>(&found))
        findings.push_back({Weight::warning,
                            "species-unknown",
                            {about::All::wood},
                            said("no values are known for the species \"%1\"", shell.wood.species),
                            said("%1; until then no weight of it is given and no floor of it screened",
                                 which_species(*unknown)),
                            "wood.species"});
    else if (shell.wood.species.empty())
        findings.push_back({Weight::note,
                            "species-not-stated",
                            {about::All::wood},
                            said("no species is stated: weights and spans are worked out for %1",
                                 phrase(std::get<const Species *>(found)->name)),
                            {},
                            "wood.species"});
}

} // namespace

void review_wood(const Shell &shell, Findings &findings) {
    check_settling(shell, findings);
    check_settling_rules(shell, findings);
    check_species(shell, findings);
    check_named_woods(shell, findings);
}

} // namespace roundlay
