#include "kernel/document/restate_state.h"

#include "kernel/document/edit_path.h"
#include "kernel/document/entry_identity.h"
#include "kernel/document/lay_over.h"
#include "kernel/document/statements.h"
#include "kernel/document/table_reader.h"
#include "kernel/document/toml_text.h"

#include <algorithm>
#include <map>
#include <optional>

namespace roundlay {

using namespace format;

namespace {

/// The keys that tell it, as they would stand in a state.
Document::Keys told_keys(const Section &section, const Entry &entry) {
    Document::Keys told;
    for (const char *name : section.told_by)
        if (const StatedKey *key = find(entry.keys, name)) told.emplace_back(key->key, key->text);
    return told;
}

std::string told_of(const Section &section, const Entry &entry) {
    std::string text;
    for (const auto &[key, value] : told_keys(section, entry))
        text += key + " = " + value + "\n";
    const auto parsed = parse_text(text, "");
    const auto *told = std::get_if<ParsedText>(&parsed);
    return told ? identity_of(section, told->root()) : std::string();
}

/// The entries of a list by what tells them.
class Told {
  public:
    Told(const Section &section, const EntryList *list) {
        for (std::size_t i = 0; list && i < list->entries.size(); ++i) {
            const std::string identity = told_of(section, list->entries[i]);
            if (identity.empty() || !entries_.emplace(identity, &list->entries[i]).second) unclear_ = true;
            order_.push_back(identity);
        }
    }
    bool is_unclear() const { return unclear_; } ///< two are told alike, or one by nothing
    const std::vector<std::string> &order() const { return order_; }
    const Entry *get(const std::string &identity) const {
        const auto found = entries_.find(identity);
        return found == entries_.end() ? nullptr : found->second;
    }

  private:
    std::map<std::string, const Entry *> entries_;
    std::vector<std::string> order_;
    bool unclear_ = false;
};

/// Collects edits of one state; the first that fails ends it.
class RestatingState {
  public:
    explicit RestatingState(const Document &document) : edited_(document) {}

    Document::Edited take() { return std::move(edited_); }
    bool is_unclear() const { return unclear_; }

    void keys(const std::string &at, const StatedKeys &base, const StatedKeys &before,
              const StatedKeys &after);
    void list(const std::string &at, const Section &section, const EntryList *base, const EntryList *before,
              const EntryList &after);

  private:
    template <typename Edit> void edit(const Edit &make) {
        if (const auto *document = std::get_if<Document>(&edited_)) {
            Document::Edited next = make(*document);
            edited_ = std::move(next);
        }
    }
    /// Looks at what stands at a path now.
    template <typename Look> void look(const std::string &path, const Look &look_at) const {
        const auto *document = std::get_if<Document>(&edited_);
        if (!document) return;
        const auto parsed = parse_text(document->text(), document->file());
        const auto *text = std::get_if<ParsedText>(&parsed);
        const auto steps = parse_path(path);
        const auto target = text && steps ? resolve(text->root(), *steps) : std::nullopt;
        if (target) look_at(*target->node);
    }
    bool stands(const std::string &path) const {
        bool there = false;
        look(path, [&](const toml::node &) { there = true; });
        return there;
    }
    void drop(const std::string &path) {
        if (stands(path)) edit([&](const Document &document) { return document.without(path); });
    }
    void state(const std::string &at, const std::string &key, const std::string &text);
    std::vector<std::string> left_out(const std::string &at) const;
    void leave_out(const std::string &at, const std::vector<std::string> &keys);
    std::optional<std::size_t> entry_told(const std::string &at, const Section &section,
                                          const std::string &identity) const;
    std::size_t add_entry(const std::string &at, const Document::Keys &keys);
    void remove(const std::string &at, const Section &section, const Entry &entry, bool in_base);
    void add(const std::string &at, const Section &section, const Entry &entry, const StatedKeys &understood,
             const std::string &before);
    void change(const std::string &at, const Section &section, const Entry *base, const Entry &before,
                const Entry &after);

    Document::Edited edited_;
    bool unclear_ = false;
};

/// A table that is not there yet is written as a value: a header at the end would belong to the last state.
void RestatingState::state(const std::string &at, const std::string &key, const std::string &text) {
    if (stands(at))
        return edit([&](const Document &document) { return document.with(at + "." + key, text); });
    edit([&](const Document &document) { return document.with(at, inline_table({{key, text}})); });
}

std::vector<std::string> RestatingState::left_out(const std::string &at) const {
    std::vector<std::string> keys;
    look(at + "." + change::left_out, [&](const toml::node &node) {
        if (const toml::array *all = node.as_array())
            for (const toml::node &key : *all)
                if (key.is_string()) keys.push_back(key.as_string()->get());
    });
    return keys;
}

void RestatingState::leave_out(const std::string &at, const std::vector<std::string> &keys) {
    if (keys.empty()) return drop(at + "." + change::left_out);
    std::string text = "[";
    for (const std::string &key : keys)
        text += (text.size() > 1 ? ", " : "") + toml_text(key);
    state(at, change::left_out, text + "]");
}

void RestatingState::keys(const std::string &at, const StatedKeys &base, const StatedKeys &before,
                          const StatedKeys &after) {
    std::vector<std::string> out = left_out(at);
    const std::size_t were_out = out.size();
    for (const StatedKey &old : before) {
        if (find(after, old.key)) continue;
        drop(at + "." + old.key);
        if (find(base, old.key)) out.push_back(old.key);
    }
    for (const StatedKey &key : after) {
        const StatedKey *old = find(before, key.key), *below = find(base, key.key);
        if (old && old->text == key.text) continue;
        std::erase(out, key.key);
        if (below && below->text == key.text)
            drop(at + "." + key.key); // as in the state that it stands on
        else
            state(at, key.key, key.text);
    }
    if (out.size() != were_out || out != left_out(at)) leave_out(at, out);
}

std::optional<std::size_t> RestatingState::entry_told(const std::string &at, const Section &section,
                                                      const std::string &identity) const {
    std::optional<std::size_t> found;
    look(at, [&](const toml::node &node) {
        const toml::array *entries = node.as_array();
        for (std::size_t i = 0; entries && i < entries->size(); ++i)
            if (const toml::table *entry = entries->get(i)->as_table();
                entry && identity_of(section, *entry) == identity)
                found = i;
    });
    return found;
}

std::size_t RestatingState::add_entry(const std::string &at, const Document::Keys &keys) {
    std::size_t index = 0;
    look(at, [&](const toml::node &node) { index = node.is_array() ? node.as_array()->size() : 0; });
    edit([&](const Document &document) { return document.with_entry(at, keys); });
    return index;
}

void RestatingState::remove(const std::string &at, const Section &section, const Entry &entry, bool in_base) {
    if (const auto own = entry_told(at, section, told_of(section, entry))) drop(entry_path(at, *own));
    if (!in_base) return;
    Document::Keys keys = told_keys(section, entry);
    keys.emplace_back(change::gone, "true");
    add_entry(at, keys);
}

void RestatingState::add(const std::string &at, const Section &section, const Entry &entry,
                         const StatedKeys &understood, const std::string &before) {
    Document::Keys keys = keys_to_state(entry, understood);
    if (!section.only_says_more) {
        if (!before.empty()) keys.insert(keys.begin(), {change::before, before});
        keys.insert(keys.begin(), {change::added, "true"});
    }
    const std::string made = entry_path(at, add_entry(at, keys));
    for (std::size_t i = 0; i < entry.lists.size(); ++i)
        for (const Entry &inner : entry.lists[i].entries)
            add(made + "." + entry.lists[i].name, section.table->lists[i], inner, entry.lists[i].understood,
                "");
}

void RestatingState::change(const std::string &at, const Section &section, const Entry *base,
                            const Entry &before, const Entry &after) {
    const auto own = entry_told(at, section, told_of(section, after));
    const std::string path = entry_path(at, own ? *own : add_entry(at, told_keys(section, after)));
    keys(path, base ? base->keys : StatedKeys(), before.keys, after.keys);
    for (std::size_t i = 0; i < after.lists.size(); ++i)
        list(path + "." + after.lists[i].name, section.table->lists[i], base ? &base->lists[i] : nullptr,
             &before.lists[i], after.lists[i]);
}

void RestatingState::list(const std::string &at, const Section &section, const EntryList *base,
                          const EntryList *before, const EntryList &after) {
    if (before && *before == after) return;
    const Told below(section, base), was(section, before), is(section, &after);
    if (below.is_unclear() || was.is_unclear() || is.is_unclear()) {
        unclear_ = true;
        return;
    }
    for (const std::string &identity : was.order())
        if (!is.get(identity)) remove(at, section, *was.get(identity), below.get(identity) != nullptr);
    for (std::size_t i = 0; i < is.order().size(); ++i) {
        const std::string &identity = is.order()[i];
        const Entry &entry = *is.get(identity), *old = was.get(identity), *under = below.get(identity);
        if (old && *old == entry) continue;
        if (old) {
            change(at, section, under, *old, entry);
        } else if (under) { // it was taken away, and comes back
            if (const auto gone = entry_told(at, section, identity)) drop(entry_path(at, *gone));
            if (!(*under == entry)) change(at, section, under, *under, entry);
        } else {
            const bool last = i + 1 == is.order().size();
            const StatedKey *next = last ? nullptr : find(is.get(is.order()[i + 1])->keys, "name");
            add(at, section, entry, after.understood, next && was.get(is.order()[i + 1]) ? next->text : "");
        }
    }
}

Problem cannot(const Document &document, const std::string &state) {
    return {Weight::error,
            document.file(),
            {},
            "this change cannot be stated in state " + quoted_for_message(state) + " alone",
            "the change written in the text of that state, or made in the state that it stands on"};
}

/// Its number among the states of the text, and what it stands on.
struct Found {
    std::size_t at = 0;
    std::string on;
};

std::optional<Found> state_named(const std::vector<HouseState> &states, const std::string &name) {
    for (std::size_t i = 1; i < states.size(); ++i) // the first is the document's own shell
        if (states[i].name == name) return Found{i - 1, states[i].on};
    return {};
}

} // namespace

Document::Edited restated_in_state(const Document &document, const std::string &state, const Shell &before,
                                   const Shell &after) {
    if (before == after) return document;
    const auto found = state_named(document.read().states, state);
    if (!found) return cannot(document, state);
    const auto base = read_document(document.text(), document.file(), found->on);
    if (!base.shell) return cannot(document, state);
    RestatingState restating(document);
    const std::string path = entry_path("state", found->at);
    const Record none;
    const UnitSystem units = after.units;
    const Whole below{*base.shell, none}, was{before, none}, is{after, none};
    for (const Section &section : sections()) {
        if (section.of_record || state_alike(section, was, is)) continue;
        const std::string at = path + "." + section.table->key();
        if (!section.is_list()) {
            restating.keys(at, stated_keys(section, below, units), stated_keys(section, was, units),
                           stated_keys(section, is, units));
            continue;
        }
        const EntryList base_list = stated_entries(section, below, units),
                        old = stated_entries(section, was, units);
        restating.list(at, section, &base_list, &old, stated_entries(section, is, units));
    }
    if (restating.is_unclear()) return cannot(document, state);
    Document::Edited made = restating.take();
    const auto *edited = std::get_if<Document>(&made);
    if (!edited || read_document(edited->text(), edited->file(), state).shell != after)
        return cannot(document, state);
    return made;
}

} // namespace roundlay
