// What a machine makes of each piece, as lists.
#pragma once

#include "exporters/lists/table.h"
#include "exporters/machines/changes.h"
#include "exporters/words/voice.h"

namespace roundlay::machines {

/// A row for each distinct piece: the verdict, set-ups at least, wood left for the chisel, why it is not
/// made, and the change that was tried and helps.
Table making_table(const std::vector<ModelMaking> &makings, const std::map<std::string, Said> &help,
                   const Voice &voice);

/// A row for each operation, and for each corner of it that keeps a radius.
Table operation_makings(const std::vector<ModelMaking> &makings, const Voice &voice);

/// What to know of all of it before anybody cuts by it.
std::string making_caution(const std::vector<ModelMaking> &makings, const Voice &voice);

} // namespace roundlay::machines
