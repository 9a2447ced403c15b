#include "kernel/document/restate.h"

#include "kernel/document/edit_path.h"
#include "kernel/document/entry_texts.h"
#include "kernel/document/statements.h"

#include <algorithm>
#include <optional>
#include <utility>

namespace roundlay {

namespace {

/// Deep and proud are two keys for one thing.
bool same_matter(const std::string &a, const std::string &b) {
    return a == b || (a.starts_with("shoulder_") && b.starts_with("shoulder_"));
}

std::string known_as(const Entry &entry, const std::string &by) {
    const StatedKey *key = find(entry.keys, by);
    return key ? key->text : std::string();
}

/// Of entries that are known by a key: those that are there still. Nothing where they change places, or new
/// ones stand between.
std::optional<std::vector<std::size_t>> known_again(const EntryList &before, const EntryList &after) {
    std::vector<std::string> names;
    for (const Entry &entry : after.entries)
        names.push_back(known_as(entry, after.known_by));
    std::vector<std::size_t> out;
    for (std::size_t i = 0; i < before.entries.size(); ++i) {
        const std::string name = known_as(before.entries[i], after.known_by);
        if (out.size() < names.size() && name == names[out.size()])
            out.push_back(i);
        else if (std::ranges::find(names, name) != names.end())
            return std::nullopt;
    }
    return out;
}

/// Which entries stay when a list becomes the shorter one.
std::vector<std::size_t> staying(const std::vector<Entry> &before, const std::vector<Entry> &after) {
    std::vector<std::size_t> out;
    std::size_t surplus = before.size() > after.size() ? before.size() - after.size() : 0;
    for (std::size_t i = 0; i < before.size(); ++i) {
        const bool same = out.size() < after.size() && before[i] == after[out.size()];
        if (surplus > 0 && !same)
            --surplus;
        else
            out.push_back(i);
    }
    return out;
}

/// Where a table stands: in the text as it is now, and as it was before the first edit.
struct At {
    std::string now, before;
};

At inside(const At &at, const std::string &name) {
    return {at.now + "." + name, at.before + "." + name};
}

/// Collects edits; the first that fails ends it.
class Restating {
  public:
    Restating(Document document, const toml::table &root)
        : line_break_(document.text().find("\r\n") == std::string::npos ? "\n" : "\r\n"),
          edited_(std::move(document)), root_(root) {}

    Document::Edited take() { return std::move(edited_); }

    void keys(const At &at, const StatedKeys &before, const StatedKeys &after);
    void list(const At &at, EntryList before, const EntryList &after);
    void section(const format::Section &section, const format::Whole &before, const format::Whole &after);
    void entry(const At &at, const Entry &before, const Entry &after);
    void add(const At &list, std::size_t index, const Entry &entry, const StatedKeys &understood);

  private:
    const toml::node *node(const std::string &path) const {
        const auto steps = parse_path(path);
        const auto target = steps ? resolve(root_, *steps) : std::nullopt;
        return target ? target->node : nullptr;
    }
    bool stands(const std::string &path) const { return node(path) != nullptr; }
    void part_by_part(const At &at, const StatedKey &before, const StatedKey &after);
    template <typename Edit> void edit(const Edit &make) {
        if (const auto *document = std::get_if<Document>(&edited_)) {
            Document::Edited next = make(*document);
            edited_ = std::move(next);
        }
    }
    void state(const std::string &path, const std::string &value) {
        edit([&](const Document &document) { return document.with(path, value); });
    }
    void drop(const std::string &path) {
        edit([&](const Document &document) { return document.without(path); });
    }
    void inherit(const std::string &at, Entry &entry, const StatedKeys &understood) const;
    bool entry_by_entry(const std::string &list, const EntryList &before, const EntryList &after,
                        const std::vector<std::size_t> &stay);

    std::string line_break_; ///< of new lines inside a value
    Document::Edited edited_;
    const toml::table &root_; ///< of the text before the first edit
};

void Restating::keys(const At &at, const StatedKeys &before, const StatedKeys &after) {
    for (const StatedKey &old : before)
        if (!find(after, old.key) && stands(at.before + "." + old.key)) drop(at.now + "." + old.key);
    for (const StatedKey &key : after) {
        const StatedKey *old = find(before, key.key);
        if (old && old->text == key.text && (!key.needed || stands(at.before + "." + key.key))) continue;
        const toml::node *standing = node(at.before + "." + key.key);
        if (old && !key.parts.empty() && standing && standing->is_table())
            part_by_part(inside(at, key.key), *old, key);
        else
            state(at.now + "." + key.key, key.text);
    }
}

/// What else a person has written into it stays.
void Restating::part_by_part(const At &at, const StatedKey &before, const StatedKey &after) {
    const auto stays = [&](const std::string &name) {
        return std::ranges::any_of(after.parts, [&](const auto &part) { return part.first == name; });
    };
    for (const auto &[name, text] : before.parts)
        if (!stays(name) && stands(at.before + "." + name)) drop(at.now + "." + name);
    for (const auto &part : after.parts)
        if (std::ranges::find(before.parts, part) == before.parts.end())
            state(at.now + "." + part.first, part.second);
}

/// What an entry leaves out has become what is understood now. In the order of the description, as an entry
/// that is stated anew has its keys, so that the two can be equal.
void Restating::inherit(const std::string &at, Entry &entry, const StatedKeys &understood) const {
    std::erase_if(entry.keys, [&](const StatedKey &key) { return !stands(at + "." + key.key); });
    StatedKeys own = std::exchange(entry.keys, {});
    for (const StatedKey &key : understood) {
        const auto stated =
            std::ranges::find_if(own, [&](const StatedKey &o) { return same_matter(o.key, key.key); });
        entry.keys.push_back(stated == own.end() ? key : *stated);
        if (stated != own.end()) own.erase(stated);
    }
    entry.keys.insert(entry.keys.end(), own.begin(), own.end());
}

void Restating::entry(const At &at, const Entry &before, const Entry &after) {
    keys(at, before.keys, after.keys);
    for (std::size_t i = 0; i < after.lists.size(); ++i)
        list(inside(at, after.lists[i].name), before.lists[i], after.lists[i]);
}

void Restating::add(const At &list_at, std::size_t index, const Entry &entry, const StatedKeys &understood) {
    const Document::Keys keys = keys_to_state(entry, understood);
    edit([&](const Document &document) { return document.with_entry(list_at.now, keys); });
    for (const EntryList &part : entry.lists)
        if (part.in_lines && !part.entries.empty())
            state(inside({entry_path(list_at.now, index), ""}, part.name).now,
                  entries_text(part, line_break_));
    for (const EntryList &part : entry.lists)
        for (std::size_t i = 0; !part.in_lines && i < part.entries.size(); ++i)
            add(inside({entry_path(list_at.now, index), ""}, part.name), i, part.entries[i], part.understood);
}

/// An entry edited in its own lines alone, as its statements would be in the document.
std::optional<Document> restated_alone(const Document &entry, const std::string &list, const Entry &before,
                                       const Entry &after) {
    const auto parsed = parse_text(entry.text(), entry.file());
    const auto *text = std::get_if<ParsedText>(&parsed);
    if (!text) return std::nullopt;
    Restating restating(entry, text->root());
    restating.entry({entry_path(list, 0), entry_path(list, 0)}, before, after);
    const Document::Edited edited = restating.take();
    const auto *document = std::get_if<Document>(&edited);
    return document ? std::optional(*document) : std::nullopt;
}

std::optional<Document> stated_alone(const std::string &list, const Entry &entry,
                                     const StatedKeys &understood) {
    const toml::table nothing;
    Restating restating(Document(), nothing);
    restating.add({list, list}, 0, entry, understood);
    const Document::Edited edited = restating.take();
    const auto *document = std::get_if<Document>(&edited);
    return document ? std::optional(*document) : std::nullopt;
}

/// Each entry in a text of its own: the time grows with what changes, not with that times the document. False
/// where that cannot be done.
bool Restating::entry_by_entry(const std::string &list, const EntryList &before, const EntryList &after,
                               const std::vector<std::size_t> &stay) {
    const auto *document = std::get_if<Document>(&edited_);
    auto texts = document ? EntryTexts::of(*document, list) : std::nullopt;
    if (!texts || texts->size() != stay.size()) return false;
    for (std::size_t i = 0; i < stay.size(); ++i) {
        if (before.entries[stay[i]] == after.entries[i]) continue;
        const auto entry = restated_alone(texts->entry(i), list, before.entries[stay[i]], after.entries[i]);
        if (!entry) return false;
        texts->replace(i, *entry);
    }
    for (std::size_t i = stay.size(); i < after.entries.size(); ++i) {
        const auto entry = stated_alone(list, after.entries[i], after.understood);
        if (!entry) return false;
        texts->add(*entry);
    }
    auto together = texts->together();
    if (!together) return false;
    edited_ = *std::move(together);
    return true;
}

void Restating::list(const At &at, EntryList before, const EntryList &after) {
    if (before.understood != after.understood)
        for (std::size_t i = 0; i < before.entries.size(); ++i)
            inherit(entry_path(at.before, i), before.entries[i], after.understood);
    const auto known = after.known_by.empty() ? std::nullopt : known_again(before, after);
    const auto stay = known ? *known : staying(before.entries, after.entries);
    for (std::size_t i = before.entries.size(); i-- > 0;)
        if (!std::ranges::binary_search(stay, i)) drop(entry_path(at.now, i));
    if (!after.in_lines && at.now.find('.') == std::string::npos &&
        entry_by_entry(at.now, before, after, stay))
        return;
    for (std::size_t i = 0; i < stay.size(); ++i)
        entry({entry_path(at.now, i), entry_path(at.before, stay[i])}, before.entries[stay[i]],
              after.entries[i]);
    if (after.in_lines && stay.empty() && !after.entries.empty())
        return state(at.now, entries_text(after, line_break_));
    for (std::size_t i = stay.size(); i < after.entries.size(); ++i)
        add(at, i, after.entries[i], after.understood);
}

void Restating::section(const format::Section &section, const format::Whole &before,
                        const format::Whole &after) {
    const At at{section.table->name, section.table->name};
    const UnitSystem units = after.shell.units;
    if (section.is_list())
        list(at, stated_entries(section, before, units), stated_entries(section, after, units));
    else
        entry(at, stated_entry(section, before, units), stated_entry(section, after, units));
}

Document::Edited restated_whole(const Document &document, const format::Whole &before,
                                const format::Whole &after) {
    const auto parsed = parse_text(document.text(), document.file());
    if (const auto *problem = std::get_if<Problem>(&parsed)) return *problem;
    Restating restating(document, std::get<ParsedText>(parsed).root());
    // Tables first: what corners leave out is as in [notch].
    for (const bool lists : {false, true})
        for (const format::Section &section : format::sections())
            if (section.is_list() == lists && !state_alike(section, before, after))
                restating.section(section, before, after);
    return restating.take();
}

} // namespace

Document::Edited restated(const Document &document, const Shell &before, const Shell &after) {
    const Record none;
    return restated_whole(document, {before, none}, {after, none});
}

Document::Edited restated(const Document &document, const Record &before, const Record &after) {
    const Shell any;
    return restated_whole(document, {any, before}, {any, after});
}

} // namespace roundlay
