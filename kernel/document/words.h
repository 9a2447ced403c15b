// The format's words for what is chosen among few, as they are written.
#pragma once

#include "kernel/record/record.h"
#include "kernel/shell/shell.h"

#include <optional>
#include <span>
#include <stdexcept>
#include <string_view>

namespace roundlay {

template <typename T> struct Word {
    const char *text;
    T value;
};

/// All words of an enumeration.
template <typename T> std::span<const Word<T>> words();
template <> std::span<const Word<UnitSystem>> words();
template <> std::span<const Word<NotchKind>> words();
template <> std::span<const Word<TopRule>> words();
template <> std::span<const Word<OpeningKind>> words();
template <> std::span<const Word<LogEnd>> words();
template <> std::span<const Word<Finish>> words();
template <> std::span<const Word<Fabric>> words();
template <> std::span<const Word<LogSide>> words();
template <> std::span<const Word<MendKind>> words();
template <> std::span<const Word<SettlingRuleName>> words();
template <> std::span<const Word<PocketKind>> words();
template <> std::span<const Word<PegBoring>> words();
template <> std::span<const Word<BoreUse>> words();
template <> std::span<const Word<Certainty>> words();
template <> std::span<const Word<TwoFields>> words();
template <> std::span<const Word<NoteUnit>> words();
template <> std::span<const Word<ReadFrom>> words();
template <> std::span<const Word<FoundFace>> words();
template <> std::span<const Word<Soundness>> words();
template <> std::span<const Word<PegState>> words();
template <> std::span<const Word<Season>> words();
template <> std::span<const Word<Decision>> words();
template <> std::span<const Word<Deed>> words();

template <typename T> const char *word(T value) {
    for (const Word<T> &each : words<T>())
        if (each.value == value) return each.text;
    throw std::logic_error("a value has no word in kernel/document/words.cpp");
}

template <typename T> std::optional<T> find_word(std::string_view text) {
    for (const Word<T> &each : words<T>())
        if (text == each.text) return each.value;
    return std::nullopt;
}

} // namespace roundlay
