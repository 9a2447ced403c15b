// Every part of a Shell as the keys and values that state it, for what compares or edits documents.
#pragma once

#include "kernel/document/key.h"

#include <string>
#include <vector>

namespace roundlay {

/// `key = text`, as it would stand in a document.
struct StatedKey {
    std::string key;
    std::string text;    ///< TOML
    bool needed = false; ///< a reader asks for it; else it may be left out where it says what is understood
    bool operator==(const StatedKey &) const = default;
};
using StatedKeys = std::vector<StatedKey>;

struct EntryList;

/// One `[[entry]]`, with the lists inside it.
struct Entry {
    StatedKeys keys;
    std::vector<EntryList> lists;
    bool operator==(const Entry &) const = default;
};

struct EntryList {
    std::string name;      ///< `opening`
    StatedKeys understood; ///< what a reader takes an entry to say that it leaves out
    std::vector<Entry> entries;
    bool operator==(const EntryList &) const = default;
};

/// What the owner of a table states. `base` is what a reader starts from. Lengths are spelled in one unit
/// system, so that equal values have equal texts.
StatedKeys stated_keys(const format::Table &table, const void *owner, const void *base, UnitSystem units);

/// Of a table that stands once.
StatedKeys stated_keys(const format::Section &section, const Shell &shell, UnitSystem units);
EntryList stated_entries(const format::Section &section, const Shell &shell, UnitSystem units);

/// Neither what the section states nor what that builds on differs.
bool state_alike(const format::Section &section, const Shell &a, const Shell &b);

} // namespace roundlay
