// The table of the kernel's phrases: see kernel_words.h.
#pragma once

#include <span>

namespace roundlay::window {

/// In English, with holes %1 to %9; context "kernel" of the translations.
std::span<const char *const> kernel_phrases();
/// The same, of what is wrong with a document.
std::span<const char *const> document_phrases();

} // namespace roundlay::window
