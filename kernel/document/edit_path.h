// Document paths, and what they lead to in a parsed text.
#pragma once

#include "kernel/document/parsed_text.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace roundlay {

/// One step of a path: `opening[2]` of `opening[2].width`.
struct Step {
    std::string key;
    std::optional<std::size_t> index;
};

/// Nothing where the text is no path. Keys are bare: letters, digits, `_` and `-`.
std::optional<std::vector<Step>> parse_path(std::string_view text);

/// `opening[2]`.
std::string entry_path(const std::string &list, std::size_t index);

/// What stands at a path.
struct Target {
    const toml::node *node = nullptr;    ///< never null
    const toml::table *parent = nullptr; ///< the table that the last key is in
    const toml::key *key = nullptr; ///< the last key as it stands in the text; null for the document itself
};

/// Nothing where no such statement is made. An empty path leads to the document itself.
std::optional<Target> resolve(const toml::table &root, std::span<const Step> path);

/// True where the two trees say the same everywhere but at the path, where one may have something else, more
/// or less than the other. Tables around it may be there in only one of them if they hold nothing else.
bool differ_only_at(const toml::table &before, const toml::table &after, std::span<const Step> path);

bool same(const toml::node &a, const toml::node &b);

} // namespace roundlay
