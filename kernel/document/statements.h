// Every part of a Shell as the keys and values that state it, for what compares or edits documents.
#pragma once

#include "kernel/document/key.h"

#include <string>
#include <utility>
#include <vector>

namespace roundlay {

/// `key = text`, as it would stand in a document.
struct StatedKey {
    std::string key;
    std::string text;    ///< TOML
    bool needed = false; ///< a reader asks for it; else it may be left out where it says what is understood
    /// Of a value that can be written as a table: its keys and the texts of their values.
    std::vector<std::pair<std::string, std::string>> parts = {};
    bool operator==(const StatedKey &) const = default;
};
using StatedKeys = std::vector<StatedKey>;

/// Null where none is called so.
const StatedKey *find(const StatedKeys &keys, const std::string &key);

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
    bool in_lines = false;     ///< a new document writes them in one line each
    std::string known_by = {}; ///< the key that an entry keeps for ever; empty: entries have none
    bool operator==(const EntryList &) const = default;
};

/// What the owner of a table states. `base` is what a reader starts from. Lengths are spelled in one unit
/// system, so that equal values have equal texts.
StatedKeys stated_keys(const format::Table &table, const void *owner, const void *base, UnitSystem units);

/// Of a table that stands once.
StatedKeys stated_keys(const format::Section &section, const format::Whole &whole, UnitSystem units);
/// The same with the lists that stand inside it.
Entry stated_entry(const format::Section &section, const format::Whole &whole, UnitSystem units);
EntryList stated_entries(const format::Section &section, const format::Whole &whole, UnitSystem units);
/// Of a list in another entry.
EntryList stated_list(const format::Section &section, const void *around, const Shell &shell,
                      UnitSystem units);

/// What a new entry must state.
std::vector<std::pair<std::string, std::string>> keys_to_state(const Entry &entry,
                                                               const StatedKeys &understood);

/// A list as one value, each entry in a line of its own.
std::string entries_text(const EntryList &list, const std::string &line_break);

/// Neither what the section states nor what that builds on differs.
bool state_alike(const format::Section &section, const format::Whole &a, const format::Whole &b);

} // namespace roundlay
