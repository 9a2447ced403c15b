// What a sheet, or several that belong together, is about and how it is composed.
#pragma once

#include "exporters/sheets/frame/titled.h"
#include "exporters/sheets/set/draft.h"

#include <functional>
#include <string>
#include <variant>
#include <vector>

namespace roundlay::sheets {

/// Pages that get a frame and a title block; or sheets as they are: at full size, or to be cut apart.
using Composition = std::variant<std::vector<Titled>, std::vector<Sheet>>;

/// A value: it holds no part of the shell, so it stays good as long as the layout has what it is about.
struct Subject {
    std::string about; ///< "wall A": no other subject of the shell has the same
    std::function<Composition(const Draft &)> compose;
};

/// In the order in which they are bound.
using SheetSet = std::vector<Subject>;

/// Its sheets, framed. Several threads may do this at once.
std::vector<Sheet> composed(const Subject &subject, const Draft &draft);

/// All sheets of the set, one subject after another.
std::vector<Sheet> composed(const SheetSet &set, const Draft &draft);

} // namespace roundlay::sheets
