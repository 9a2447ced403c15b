// The words of the record, in the language of the window.
#pragma once

#include "kernel/record/found_log.h"

#include <QString>
#include <QStringList>
#include <vector>

namespace roundlay::window {

inline constexpr FoundFace all_faces[] = {FoundFace::outside, FoundFace::inside, FoundFace::top,
                                          FoundFace::under};
inline constexpr Soundness all_soundnesses[] = {Soundness::sound, Soundness::checked, Soundness::soft,
                                                Soundness::rotten, Soundness::missing};
inline constexpr PegState all_peg_states[] = {PegState::found, PegState::missing, PegState::broken,
                                              PegState::sawn};
inline constexpr Decision all_decisions[] = {Decision::keep,          Decision::mend,    Decision::turn,
                                             Decision::use_elsewhere, Decision::replace, Decision::leave_out};

QString certainty_word(Certainty certainty);
QString face_word(FoundFace face);
QString faces_words(const std::vector<FoundFace> &faces);
QString soundness_word(Soundness what);
QString peg_state_word(PegState state);
QString decision_word(Decision what);
/// "keep, by the carpenter, in May: sound all over"; where it goes as well.
QString decision_words(const FoundDecision &decision);
QString place_words(const FoundPlace &place);

} // namespace roundlay::window
