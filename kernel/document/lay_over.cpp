#include "kernel/document/lay_over.h"

#include "kernel/document/entry_identity.h"
#include "kernel/document/entry_words.h"
#include "kernel/document/key.h"
#include "kernel/document/table_reader.h"

#include <algorithm>
#include <map>
#include <optional>
#include <vector>

namespace roundlay {

using namespace format;

namespace {

std::optional<toml::key> key_of(const toml::table &table, std::string_view name) {
    const auto found = table.find(name);
    return found == table.cend() ? std::nullopt : std::optional(found->first);
}

/// Moving keeps the place in the text, which copying does not.
void put(toml::table &into, const toml::key &key, toml::node &&node) {
    std::move(node).visit(
        [&](auto &&value) { into.insert_or_assign(toml::key(key), std::forward<decltype(value)>(value)); });
}

/// What `over` does not say itself it says from now on as `under` did.
void take_what_is_not_said(toml::table &over, toml::table &under) {
    for (auto &&[key, node] : under)
        if (!over.contains(key.str())) put(over, key, std::move(node));
}

class Laying {
  public:
    explicit Laying(const LayingOver &told) : told_(told) {}

    void section(toml::table &around, const Section &section, toml::table &state);

  private:
    struct Words {
        bool gone = false, added = false;
        std::optional<std::string> before;
    };

    void tell(const toml::node &at, std::string message, std::string expected) const {
        told_.tell(at, std::move(message), std::move(expected));
    }
    std::string state() const { return "state " + quoted_for_message(told_.state); }
    std::string base() const { return "state " + quoted_for_message(told_.base); }

    void once(toml::table &around, const Section &section, toml::table &over);
    void list(toml::table &around, const Section &section, toml::node &over);
    void entry(toml::array &base, const Section &section, toml::table &over, std::size_t index,
               std::map<std::string, int> &seen);
    bool fits(const toml::table &over, const Section &section, const Words &words, std::size_t there,
              const std::string &called) const;
    void change(toml::array &base, const Section &section, std::size_t index, toml::table &over);
    std::optional<toml::array::const_iterator> place_of(const toml::array &base, const toml::table &entry,
                                                        const Words &words, const std::string &called) const;
    void add(toml::array &base, const Section &section, toml::table &entry, const Words &words,
             const std::string &called);
    bool flag(toml::table &table, const char *word);
    std::optional<Words> words_of(toml::table &entry);
    bool leave_out(toml::table &over, toml::table &under);
    bool stands_alone(const toml::table &entry, const Section &section, const std::string &called) const;
    void lists_inside(toml::table &under, const Section &section, toml::table &over);

    const LayingOver &told_;
};

/// Takes a word out of the table.
bool Laying::flag(toml::table &table, const char *word) {
    const toml::node *found = table.get(word);
    if (!found) return false;
    const bool set = found->is_boolean() && found->as_boolean()->get();
    if (!found->is_boolean())
        tell(*found, quoted_for_message(word) + " is said of an entry, or is not",
             "true or false, without quotes");
    table.erase(std::string_view(word));
    return set;
}

std::optional<Laying::Words> Laying::words_of(toml::table &entry) {
    Words words{flag(entry, change::gone), flag(entry, change::added), {}};
    if (const toml::node *before = entry.get(change::before)) {
        if (!before->is_string() || !words.added) {
            tell(*before, "\"before\" names the entry that a new one comes to stand before",
                 "before = \"B\" beside new = true");
            return {};
        }
        words.before = before->as_string()->get();
        entry.erase(std::string_view(change::before));
    }
    return words;
}

/// Nothing but what tells it.
bool Laying::stands_alone(const toml::table &entry, const Section &section, const std::string &called) const {
    for (const auto &[key, node] : entry) {
        const std::string_view name = key.str();
        if (std::ranges::find(section.told_by, name) != section.told_by.end()) continue;
        tell(node, state() + " takes away " + called + ", and says " + quoted_for_message(name) + " of it",
             "gone = true and what tells the entry, nothing else");
        return false;
    }
    return true;
}

/// Keys that the base states and the state does not.
bool Laying::leave_out(toml::table &over, toml::table &under) {
    const toml::node *found = over.get(change::left_out);
    if (!found) return true;
    const toml::array *keys = found->as_array();
    if (!keys || !std::ranges::all_of(*keys, [](const toml::node &key) { return key.is_string(); })) {
        tell(*found, "\"left_out\" does not name keys", "a list of keys, such as left_out = [\"pitch\"]");
        return false;
    }
    for (const toml::node &node : *keys) {
        const std::string key = node.as_string()->get();
        if (!over.contains(key) && under.contains(key)) {
            under.erase(key);
            continue;
        }
        tell(node,
             over.contains(key) ? state() + " states " + quoted_for_message(key) + " and leaves it out"
                                : state() + " leaves out " + quoted_for_message(key) + ", which " + base() +
                                      " does not state",
             "a key that is stated there and not here");
        return false;
    }
    over.erase(std::string_view(change::left_out));
    return true;
}

void Laying::once(toml::table &around, const Section &section, toml::table &over) {
    const std::string name = section.table->key();
    toml::node *stands = around.get(name);
    toml::table *under = stands ? stands->as_table() : nullptr;
    if (flag(over, change::gone)) {
        const std::string called = "[" + name + "]";
        if (!stands_alone(over, section, called)) return;
        if (!under)
            return tell(over, state() + " takes away " + called + ", which " + base() + " does not have",
                        "a table that is there");
        around.erase(name);
        return;
    }
    toml::table nothing;
    if (!leave_out(over, under ? *under : nothing)) return;
    if (under) take_what_is_not_said(over, *under);
    const auto key = key_of(around, name);
    put(around, key ? *key : toml::key(name), std::move(over));
}

void Laying::lists_inside(toml::table &under, const Section &section, toml::table &over) {
    for (const Section &inner : section.table->lists) {
        const std::string name = inner.table->key();
        toml::node *stated = over.get(name);
        if (!stated) continue;
        list(under, inner, *stated);
        over.erase(name); // it stands in `under` now, and goes on from there
    }
}

/// Where a new entry comes to stand; nothing where that is told.
std::optional<toml::array::const_iterator> Laying::place_of(const toml::array &base, const toml::table &entry,
                                                            const Words &words,
                                                            const std::string &called) const {
    if (!words.before) return base.cend();
    const auto at = std::find_if(base.cbegin(), base.cend(), [&](const toml::node &node) {
        const toml::node *name = node.is_table() ? node.as_table()->get("name") : nullptr;
        return name && name->is_string() && name->as_string()->get() == *words.before;
    });
    if (at != base.cend()) return at;
    tell(entry,
         state() + " adds " + called + " before " + quoted_for_message(*words.before) + ", and " +
             this->base() + " has none of that name",
         "the name of an entry that is there");
    return {};
}

void Laying::add(toml::array &base, const Section &section, toml::table &entry, const Words &words,
                 const std::string &called) {
    const auto at = place_of(base, entry, words, called);
    toml::table nothing;
    if (!at || !leave_out(entry, nothing)) return;
    lists_inside(nothing, section, entry);
    take_what_is_not_said(entry, nothing);
    base.insert(*at, std::move(entry));
}

void Laying::change(toml::array &base, const Section &section, std::size_t index, toml::table &over) {
    toml::table &under = *base.get(index)->as_table();
    if (!leave_out(over, under)) return;
    lists_inside(under, section, over);
    take_what_is_not_said(over, under);
    base.replace(base.cbegin() + static_cast<std::ptrdiff_t>(index), std::move(over));
}

/// Is there an entry to be changed, or none where one is added?
bool Laying::fits(const toml::table &over, const Section &section, const Words &words, std::size_t there,
                  const std::string &called) const {
    if (there > 1)
        tell(over,
             called + " stands there " + std::to_string(there) + " times in " + base() +
                 ", so that nobody knows which one " + state() + " changes",
             "entries that differ in what tells them");
    else if (there == 1 && words.added)
        tell(over, state() + " adds " + called + ", which " + base() + " has",
             "a name of its own, or no new = true to change that one");
    else if (there == 0 && words.gone)
        tell(over, state() + " takes away " + called + ", which " + base() + " does not have",
             section.only_says_more
                 ? "an entry that is there; it only says more of a log or corner, and takes none away"
                 : "an entry that is there");
    else if (there == 0 && !words.added && !section.only_says_more)
        tell(over, state() + " changes " + called + ", which " + base() + " does not have",
             "an entry that is there, or new = true for one that comes with this state");
    else
        return true;
    return false;
}

void Laying::entry(toml::array &base, const Section &section, toml::table &over, std::size_t index,
                   std::map<std::string, int> &seen) {
    const int line = static_cast<int>(over.source().begin.line);
    const std::string called = entry_in_words(section.table->key(), index, over);
    const auto words = words_of(over);
    if (!words) return;
    const std::string identity = identity_of(section, over);
    if (identity.empty() && !words->added)
        return tell(over, state() + " does not say which entry it changes", told_by_in_words(section));
    const auto there = identity.empty() ? std::vector<std::size_t>() : entries_told(section, base, identity);
    const auto before = seen.find(identity);
    if (!identity.empty() && before != seen.end() && !(words->added && there.empty()))
        return tell(over,
                    state() + " changes " + called + " twice; the other one stands in line " +
                        std::to_string(before->second),
                    "one entry with all of it");
    seen.emplace(identity, line);
    if (!fits(over, section, *words, there.size(), called)) return;
    if (there.empty()) return add(base, section, over, *words, called);
    if (!words->gone) return change(base, section, there.front(), over);
    if (stands_alone(over, section, called))
        base.erase(base.cbegin() + static_cast<std::ptrdiff_t>(there.front()));
}

void Laying::list(toml::table &around, const Section &section, toml::node &over) {
    const std::string name = section.table->key();
    toml::array *entries = over.as_array();
    if (!entries || !std::ranges::all_of(*entries, [](const toml::node &node) { return node.is_table(); }))
        return tell(over, state() + " does not state " + quoted_for_message(name) + " as entries",
                    "two brackets on each side, once for each: [[state." + section.table->name + "]]");
    if (!around.contains(name)) around.insert(name, toml::array());
    toml::array *base = around.get(name)->as_array();
    if (!base) return; // what is wrong there is told where it is read
    std::map<std::string, int> seen;
    for (std::size_t i = 0; i < entries->size(); ++i)
        entry(*base, section, *entries->get(i)->as_table(), i, seen);
    if (base->empty()) around.erase(name);
}

void Laying::section(toml::table &around, const Section &section, toml::table &stated) {
    const std::string name = section.table->key();
    toml::node *over = stated.get(name);
    if (!over) return;
    if (section.of_record)
        tell(*over,
             quoted_for_message(name) + " cannot stand in a state: what was found is of the house, not "
                                        "of one of its states",
             header(section) + " in the document");
    else if (section.is_list())
        list(around, section, *over);
    else if (toml::table *table = over->as_table())
        once(around, section, *table);
    else
        tell(*over, state() + " does not state " + quoted_for_message(name) + " as a table",
             "a table with the header [state." + name + "]");
    stated.erase(name);
}

/// The state's own name takes the place of its base's.
void name_shell(toml::table &document, toml::node &&name) {
    toml::node *shell = document.get("shell");
    if (shell && shell->is_table()) put(*shell->as_table(), toml::key("state"), std::move(name));
}

void refuse_names(const toml::table &state, const LayingOver &laying) {
    if (const toml::node *shell = state.get("shell"); shell && shell->is_table())
        if (const toml::node *name = shell->as_table()->get("state"))
            laying.tell(*name, "a state is called by its own name, not by one in [state.shell]",
                        "name = \"as it shall stand\" in [[state]]");
    for (const char *key : {"roundlay", "state"})
        if (const toml::node *found = state.get(key))
            laying.tell(*found, quoted_for_message(key) + " cannot stand in a state", "it in the document");
}

/// Keys of the state itself, which say nothing of the shell.
bool is_own(std::string_view key) {
    return key == "roundlay" || key == "state" ||
           std::ranges::any_of(state_section().table->items, [key](const Item &item) {
               const auto *own = std::get_if<Key>(&item);
               return own && own->name == key;
           });
}

} // namespace

void lay_over(toml::table &document, toml::table &state, const LayingOver &laying) {
    refuse_names(state, laying);
    Laying all(laying);
    for (const Section &section : sections())
        all.section(document, section, state);
    for (auto &&[key, node] : state) // what is not known is told where it is read
        if (key.str() == "name")
            name_shell(document, std::move(node));
        else if (!is_own(key.str()))
            put(document, key, std::move(node));
}

} // namespace roundlay
