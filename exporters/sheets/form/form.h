// Field forms: what is measured on a house that stands, on paper, to be filled in by hand. Made from a rough
// model and what the record has of it already.
#pragma once

#include "exporters/sheets/set/subject.h"
#include "kernel/record/record.h"

#include <memory>

namespace roundlay::sheets {

/// A form of the house as a whole, of every wall, of every corner, of the timbers of every floor, and of logs
/// of the record that the plan does not have.
SheetSet form_set(const Layout &layout, const std::shared_ptr<const Record> &record);

} // namespace roundlay::sheets
