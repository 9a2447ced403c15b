// Where each statement of a document stands in its text.
#pragma once

#include "kernel/document/problem.h"

#include <map>
#include <optional>
#include <string>
#include <string_view>

namespace roundlay {

/// Document paths: a table and a key, with the number of the entry from 0 where there are several:
/// `rounds.pitch`, `opening[2].width`, `wall[0]`.
class SourceMap {
  public:
    void add(std::string path, Place place) { places_.emplace(std::move(path), place); }

    /// Where a Finding's subject stands. What is not stated (a default) is found at the nearest statement
    /// around it: `wall[0].pitch` at the header of that wall, `wall` at the first wall. Nothing where that
    /// is not stated either.
    std::optional<Place> locate(std::string_view subject) const;

    bool states(const std::string &path) const { return places_.contains(path); }

  private:
    std::map<std::string, Place, std::less<>> places_;
};

} // namespace roundlay
