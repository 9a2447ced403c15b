// Which stretch of the text an edit changes, and into what.
#pragma once

#include "kernel/document/edit_layout.h"
#include "kernel/document/edit_path.h"

#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace roundlay {

/// What stands in the stretch gives way to other text.
struct Change {
    Stretch stretch;
    std::string text;
};
using Planned = std::variant<Change, std::string>; ///< or why it cannot be done

using KeyTexts = std::vector<std::pair<std::string, std::string>>; ///< keys and the text of their values

// See Document for what each of them does.
Planned plan_with(const ParsedText &text, std::span<const Step> path, const std::string &value);
Planned plan_entry(const ParsedText &text, std::span<const Step> list, const KeyTexts &keys);
Planned plan_without(const ParsedText &text, std::span<const Step> path);

} // namespace roundlay
