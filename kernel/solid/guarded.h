// Turns what OpenCASCADE throws into std::runtime_error with a sentence.
#pragma once

#include <Standard_Failure.hxx>

#include <stdexcept>
#include <string>
#include <utility>

namespace roundlay {

/// Runs `work`. `doing` completes the sentence "The solid modeller failed while ...".
template <typename Work> auto guarded(const std::string &doing, Work &&work) -> decltype(work()) {
    try {
        return std::forward<Work>(work)();
    } catch (const Standard_Failure &failure) {
        const char *said = failure.GetMessageString();
        const std::string cause = said && *said ? said : failure.DynamicType()->Name();
        throw std::runtime_error("The solid modeller failed while " + doing + ": " + cause + ".");
    }
}

} // namespace roundlay
