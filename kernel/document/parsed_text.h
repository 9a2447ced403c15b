// From bytes to a TOML tree whose every node can be found in the text again.
#pragma once

#include "kernel/document/lines.h"
#include "kernel/document/problem.h"
#include "kernel/document/toml.h"

#include <optional>
#include <string>
#include <string_view>
#include <variant>

namespace roundlay {

/// A text that is TOML. Keeps a view of the text.
class ParsedText {
  public:
    ParsedText(std::string_view text, toml::table &&root)
        : text_(text), lines_(text), root_(std::move(root)) {}

    std::string_view text() const { return text_; }
    const Lines &lines() const { return lines_; }
    const toml::table &root() const { return root_; }
    /// Everything of it. The places of its nodes stay those of the text.
    toml::table take_root() && { return std::move(root_); }

    std::size_t begin_of(const toml::node &node) const { return offset_of(node.source().begin); }
    std::size_t begin_of(const toml::key &key) const { return offset_of(key.source().begin); }
    Place place_of(const toml::node &node) const { return lines_.place_at(begin_of(node)); }
    Place place_of(const toml::key &key) const { return lines_.place_at(begin_of(key)); }

  private:
    std::size_t offset_of(const toml::source_position &at) const {
        return lines_.offset_of(at.line, at.column);
    }

    std::string_view text_;
    Lines lines_;
    toml::table root_;
};

/// Refuses what is too large, no text (control bytes, no UTF-8), nested beyond reason or not TOML; the first
/// such problem ends the reading.
std::variant<ParsedText, Problem> parse_text(std::string_view text, const std::string &file);

} // namespace roundlay
