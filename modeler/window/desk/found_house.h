// The house as it was found, beside a state of it: what old wood is summed over.
#pragma once

#include "exporters/registry/job.h"
#include "kernel/document/edit.h"

#include <memory>

namespace roundlay::window {

/// The state that is measured, or the document's own shell where none is. Null where that is the one that was
/// read, where nothing was found, or where it cannot be laid out.
std::shared_ptr<const FoundHouse> found_house(const Document &document, const ReadResult &read);

} // namespace roundlay::window
