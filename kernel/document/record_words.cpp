// The words of the record.
#include "kernel/document/words.h"

namespace roundlay {

template <> std::span<const Word<Certainty>> words() {
    static constexpr Word<Certainty> all[] = {{"measured", Certainty::measured},
                                              {"proposed", Certainty::proposed},
                                              {"contradicted", Certainty::contradicted}};
    return all;
}

template <> std::span<const Word<TwoFields>> words() {
    static constexpr Word<TwoFields> all[] = {{"feet and inches", TwoFields::feet_and_inches},
                                              {"decimal feet", TwoFields::decimal_feet}};
    return all;
}

template <> std::span<const Word<NoteUnit>> words() {
    static constexpr Word<NoteUnit> all[] = {{"mm", NoteUnit::mm},
                                             {"cm", NoteUnit::cm},
                                             {"m", NoteUnit::m},
                                             {"in", NoteUnit::inch},
                                             {"ft", NoteUnit::foot}};
    return all;
}

template <> std::span<const Word<ReadFrom>> words() {
    static constexpr Word<ReadFrom> all[] = {{"outside", ReadFrom::outside}, {"inside", ReadFrom::inside}};
    return all;
}

template <> std::span<const Word<FoundFace>> words() {
    static constexpr Word<FoundFace> all[] = {{"outside", FoundFace::outside},
                                              {"inside", FoundFace::inside},
                                              {"top", FoundFace::top},
                                              {"under", FoundFace::under}};
    return all;
}

template <> std::span<const Word<Soundness>> words() {
    static constexpr Word<Soundness> all[] = {{"sound", Soundness::sound},
                                              {"checked", Soundness::checked},
                                              {"soft", Soundness::soft},
                                              {"rotten", Soundness::rotten},
                                              {"missing", Soundness::missing}};
    return all;
}

template <> std::span<const Word<PegState>> words() {
    static constexpr Word<PegState> all[] = {{"found", PegState::found},
                                             {"missing", PegState::missing},
                                             {"broken", PegState::broken},
                                             {"sawn", PegState::sawn}};
    return all;
}

template <> std::span<const Word<Season>> words() {
    static constexpr Word<Season> all[] = {{"spring", Season::spring},
                                           {"summer", Season::summer},
                                           {"autumn", Season::autumn},
                                           {"winter", Season::winter}};
    return all;
}

template <> std::span<const Word<Decision>> words() {
    static constexpr Word<Decision> all[] = {{"keep", Decision::keep},
                                             {"mend", Decision::mend},
                                             {"replace", Decision::replace},
                                             {"turn end for end", Decision::turn},
                                             {"use elsewhere", Decision::use_elsewhere},
                                             {"leave out", Decision::leave_out}};
    return all;
}

template <> std::span<const Word<Deed>> words() {
    static constexpr Word<Deed> all[] = {{"down", Deed::down},
                                         {"cut", Deed::cut},
                                         {"checked", Deed::checked},
                                         {"up", Deed::up},
                                         {"pegged", Deed::pegged}};
    return all;
}

} // namespace roundlay
