// What an export can be told, as it is typed: the rows of exporters/registry/export_option.h.
#pragma once

#include "exporters/registry/export_option.h"

#include <deque>
#include <string>
#include <string_view>

namespace CLI {
class App;
}

namespace roundlay {

struct TypedOption {
    const ExportOption *option = nullptr;
    std::string text; ///< empty: not stated
    bool flag = false;
};

/// Where the command line library writes them, so they stay where they are.
using TypedOptions = std::deque<TypedOption>;

/// Which exporters ask it, what it does, its bounds, and what holds otherwise.
std::string help_of(const ExportOption &option);

void add_export_option(CLI::App &app, TypedOptions &typed, const ExportOption &option);

/// Words of choices that there are not: known before the document is read. Throws UsageError.
void check_words(const TypedOptions &typed);

/// A bare number is in the document's units. Throws UsageError where something is not what is expected.
void take_options(const TypedOptions &typed, UnitSystem units, ExportOptions &options);

} // namespace roundlay
