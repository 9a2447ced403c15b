// What all products of a file share: application context, units, accuracy.
#pragma once

#include "exporters/part21/part21_text.h"
#include "exporters/step/options.h"

#include <string>

namespace roundlay::step {

struct Commons {
    part21::Ref product_context, definition_context;
    const char *unit_words; ///< "millimetres"
    part21::Ref length, radian, steradian, accuracy;
};

Commons add_commons(part21::DataWriter &data, StepSchema schema, StepUnit unit);

/// The representation context of one product. Every product needs its own: a placement relates
/// representations of different contexts (ISO 10303-43).
part21::Ref add_context(part21::DataWriter &data, const Commons &commons, const std::string &id);

} // namespace roundlay::step
