// Every part of a Shell as the keys and values that state it, for what compares or edits documents.
#pragma once

#include "kernel/shell/shell.h"

#include <span>
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

/// A `[table]`, which stands once.
struct TableSection {
    const char *name;
    bool (*same)(const Shell &a, const Shell &b);
    StatedKeys (*stated)(const Shell &shell, UnitSystem units);
};

/// A list of `[[entries]]`.
struct ListSection {
    bool (*same)(const Shell &a, const Shell &b); ///< true: neither the entries nor what they build on differ
    EntryList (*stated)(const Shell &shell, UnitSystem units);
};

/// Together they hold all of a Shell.
std::span<const TableSection> table_sections();
std::span<const ListSection> list_sections();

} // namespace roundlay
