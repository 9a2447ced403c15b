// From a changed Shell back to the text: what a front end edits as a value is stated where it belongs.
#pragma once

#include "kernel/document/edit.h"

namespace roundlay {

/// States in the document what `after` says other than `before`; the rest of its text stays. `before` is what
/// the document reads as. Walls keep their number, names and headings (else std::invalid_argument); openings,
/// corners and own logs may come and go.
Document::Edited restated(const Document &document, const Shell &before, const Shell &after);

} // namespace roundlay
