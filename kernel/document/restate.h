// From a changed Shell back to the text: what a front end edits as a value is stated where it belongs.
#pragma once

#include "kernel/document/edit.h"

namespace roundlay {

/// States in the document what `after` says other than `before`; the rest of its text stays. `before` is what
/// the document reads as. The new text reads as `after`; one problem where it would not: where `after` is beyond what
/// a document can say, or what is to be changed is written in a way that only a person can edit. Any part of a shell
/// that write_document writes is restated, so that a new one needs nothing here.
Document::Edited restated(const Document &document, const Shell &before, const Shell &after);

} // namespace roundlay
