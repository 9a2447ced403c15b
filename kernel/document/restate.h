// From a changed Shell or Record back to the text: what a front end edits as a value is stated where it
// belongs.
#pragma once

#include "kernel/document/edit.h"

namespace roundlay {

/// States in the document all that `after` says other than `before`; the rest of its text stays, and all of
/// it where they are equal. `before` is what the document reads as. Any part may change, come or go; the new
/// text reads as `after`. Or one problem and no change, where the text is written in a way that only a person
/// can edit.
Document::Edited restated(const Document &document, const Shell &before, const Shell &after);
Document::Edited restated(const Document &document, const Record &before, const Record &after);

} // namespace roundlay
