// The description of the document as a JSON Schema, for editors.
#pragma once

#include <string>

namespace roundlay {

/// JSON Schema, draft 7. Whatever reads without a problem holds; what it cannot tell (units, bounds of
/// lengths, walls that are not there) is for `roundlay check`.
std::string format_schema();

} // namespace roundlay
