#include "kernel/document/words.h"

#include "kernel/shell/notch_kinds.h"

#include <array>

namespace roundlay {

template <> std::span<const Word<UnitSystem>> words() {
    static constexpr Word<UnitSystem> all[] = {{"metric", UnitSystem::metric},
                                               {"imperial", UnitSystem::imperial}};
    return all;
}

template <> std::span<const Word<NotchKind>> words() {
    static const auto all = [] {
        std::array<Word<NotchKind>, all_kinds_of_notch.size()> made{};
        for (std::size_t i = 0; i < made.size(); ++i)
            made[i] = {all_kinds_of_notch[i].name, all_kinds_of_notch[i].kind};
        return made;
    }();
    return all;
}

template <> std::span<const Word<TopRule>> words() {
    static constexpr Word<TopRule> all[] = {{"level", TopRule::level}, {"staggered", TopRule::staggered}};
    return all;
}

template <> std::span<const Word<OpeningKind>> words() {
    static constexpr Word<OpeningKind> all[] = {{"door", OpeningKind::door}, {"window", OpeningKind::window}};
    return all;
}

template <> std::span<const Word<LogEnd>> words() {
    static constexpr Word<LogEnd> all[] = {{"left", LogEnd::left}, {"right", LogEnd::right}};
    return all;
}

template <> std::span<const Word<LogSide>> words() {
    static constexpr Word<LogSide> all[] = {{"outside", LogSide::outside},
                                            {"inside", LogSide::inside},
                                            {"top", LogSide::top},
                                            {"under", LogSide::under}};
    return all;
}

template <> std::span<const Word<MendKind>> words() {
    static const Word<MendKind> all[] = {{name_of(MendKind::let_in), MendKind::let_in},
                                         {name_of(MendKind::face), MendKind::face},
                                         {name_of(MendKind::splice), MendKind::splice}};
    return all;
}

template <> std::span<const Word<PegBoring>> words() {
    static constexpr Word<PegBoring> all[] = {{"at the bench", PegBoring::at_the_bench},
                                              {"in place", PegBoring::in_place}};
    return all;
}

template <> std::span<const Word<PocketKind>> words() {
    static constexpr Word<PocketKind> all[] = {{"square", PocketKind::square},
                                               {"tailed", PocketKind::tailed}};
    return all;
}

template <> std::span<const Word<BoreUse>> words() {
    static constexpr Word<BoreUse> all[] = {
        {"bolt", BoreUse::bolt}, {"rod", BoreUse::rod}, {"wire", BoreUse::wire}, {"hole", BoreUse::hole}};
    return all;
}

// People see these words in lists and on sheets too, where they come from the shell.

template <> std::span<const Word<Finish>> words() {
    static const Word<Finish> all[] = {{name_of(Finish::hewn), Finish::hewn},
                                       {name_of(Finish::sawn), Finish::sawn},
                                       {name_of(Finish::peeled), Finish::peeled}};
    return all;
}

template <> std::span<const Word<Fabric>> words() {
    static const Word<Fabric> all[] = {{name_of(Fabric::newly_cut), Fabric::newly_cut},
                                       {name_of(Fabric::kept), Fabric::kept},
                                       {name_of(Fabric::patched), Fabric::patched},
                                       {name_of(Fabric::replacement), Fabric::replacement}};
    return all;
}

template <> std::span<const Word<SettlingRuleName>> words() {
    using enum SettlingRuleName;
    static const Word<SettlingRuleName> all[] = {{name_of(per_300_mm), per_300_mm},
                                                 {name_of(six_percent), six_percent},
                                                 {name_of(four_percent), four_percent},
                                                 {name_of(per_chinked_log), per_chinked_log}};
    return all;
}

} // namespace roundlay
