// One description of the document: its tables and their keys. Reading, writing, the edits that are stated
// back, the tables of FORMAT.md, `roundlay format`, the schema and the random documents of the tests are made
// from it.
#pragma once

#include "kernel/document/kind.h"
#include "kernel/record/record.h"
#include "kernel/shell/shell.h"

#include <memory>
#include <optional>
#include <span>
#include <string>
#include <variant>
#include <vector>

namespace roundlay {
class Reading;
struct TableReading;
} // namespace roundlay

namespace roundlay::format {

/// What may be said of a key beside its name, its kind and one line of explanation.
struct More {
    const char *left_out =
        nullptr; ///< what is understood then; null: the value that is there before anything is read
    const char *missing = nullptr; ///< what is expected where it is not stated; null: it may be left out
    const char *remark = nullptr;  ///< written behind it in a new document
    const char *absent = nullptr;  ///< comment written in its place where it is left out
    bool only_where_other = false; ///< not written where it says what is understood anyway
};

// Keys belong to some struct of a Shell or a Record, their owner: `void *` here, because each reaches into
// its own. key_access.h makes them of pointers to members, so that key and owner fit.
struct Key : More {
    const char *name;
    Kind kind;
    const char *what;                                         ///< one line of explanation
    std::optional<Value> (*get)(const void *owner) = nullptr; ///< nothing: not stated
    void (*set)(void *owner, const Value &value) = nullptr;
    /// After it was read: what no kind knows. May be null, as the two below.
    void (*check)(TableReading &at, void *owner) = nullptr;
    /// A reader that starts from `base` asks for it.
    bool (*asked_for)(const void *owner, const void *base) = nullptr;
    bool (*used)(const void *owner) = nullptr; ///< else a new document need not state it

    bool needed(const void *owner, const void *base) const {
        return missing || (asked_for && asked_for(owner, base));
    }
    /// Of what may be left out, nothing where it is an empty text, an empty list or a number not taken.
    std::optional<Value> value(const void *owner) const;
};

struct Table;

/// Keys of another table that stand in this one too.
struct Shared {
    const Table *table;
    void *(*in)(void *owner); ///< the owner of those keys
    const char *left_out;

    const void *of(const void *owner) const { return in(const_cast<void *>(owner)); } // it only reaches
};

using Item = std::variant<Key, Shared>;

/// A table as it stands once in a Shell or a Record, or one entry for each element of a vector there or in
/// another entry.
struct Section {
    const Table *table = nullptr;
    const char *missing = nullptr;  ///< as More::missing
    std::size_t most = 0;           ///< entries; 0: a table that stands once
    bool only_where_other = false;  ///< as of a key
    bool of_record = false;         ///< what is around it is the Record, not the Shell
    bool in_lines = false;          ///< a new document writes its entries in one line each
    const char *known_by = nullptr; ///< the key that an entry keeps for ever
    /// Keys by which a state says which entry it changes; empty in a list of the record, which has no states.
    std::vector<const char *> told_by = {};
    /// What it is about is there without an entry: a state may say more of it than its base does.
    bool only_says_more = false;
    /// What a reader starts from: its own, or what the shell says already.
    std::shared_ptr<void> (*fresh)(const Shell &shell) = nullptr;

    void *(*in)(void *around) = nullptr; ///< of a table that stands once
    std::size_t (*size)(const void *around) = nullptr;
    const void *(*at)(const void *around, std::size_t index) = nullptr;
    void (*add)(void *around, const void *entry) = nullptr; ///< takes a copy of it

    /// After all of them were read; also where there are none. May be null.
    void (*check)(Reading &reading, void *around) = nullptr;

    bool is_list() const { return most > 0; }
    const void *of(const void *around) const { return in(const_cast<void *>(around)); } // it only reaches
};

struct Table {
    std::string name;    ///< `opening`, `floor.beam`
    const char *summary; ///< one line
    std::vector<Item> items;
    std::vector<Section> lists = {};                        ///< that stand inside an entry
    void (*check)(TableReading &at, void *owner) = nullptr; ///< after its keys were read; may be null
    // Comments of a new document:
    const char *comment = nullptr; ///< over its header, of the first entry only ...
    bool comment_each = false;     ///< ... or of each
    const char *under_header = nullptr;

    std::string key() const { return name.substr(name.rfind('.') + 1); } ///< in the table around it
};

/// All that a document states.
struct Whole {
    const Shell &shell;
    const Record &record;

    const void *around(const Section &section) const {
        return section.of_record ? static_cast<const void *>(&record) : &shell;
    }
};

/// All tables of a document, in the order in which they are read, written and explained. Together they hold
/// all of a Shell and of a Record.
std::span<const Section> sections();

/// `[[state]]`: inside it stand the tables of the shell again, which no description repeats.
const Section &state_section();

/// All of these with those inside entries, each behind the one that it stands in.
std::vector<const Section *> all_sections();

/// The table of that name. Throws where there is none.
const Table &table_of(const std::string &name);

/// `[shell]`, `[[wall]]`.
std::string header(const Section &section);

} // namespace roundlay::format
