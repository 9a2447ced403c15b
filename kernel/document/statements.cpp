#include "kernel/document/statements.h"

#include "kernel/document/noted_text.h"
#include "kernel/document/toml_text.h"

#include <algorithm>

namespace roundlay {

using namespace format;

namespace {

std::vector<std::pair<std::string, std::string>> parts_of(const Value &value) {
    const auto *length = std::get_if<NotedLength>(&value);
    return length ? noted_parts(*length) : std::vector<std::pair<std::string, std::string>>();
}

void state(StatedKeys &to, const Table &table, const void *owner, const void *base, UnitSystem units) {
    for (const Item &item : table.items) {
        if (const auto *part = std::get_if<Shared>(&item)) {
            state(to, *part->table, part->of(owner), part->of(base), units);
            continue;
        }
        const Key &key = std::get<Key>(item);
        if (const auto value = key.value(owner))
            to.push_back(
                {key.name, text_of(key.kind, *value, units), key.needed(owner, base), parts_of(*value)});
    }
}

Entry entry_of(const Section &section, const void *owner, const void *fresh, const Shell &shell,
               UnitSystem units) {
    Entry entry{stated_keys(*section.table, owner, fresh, units), {}};
    for (const Section &inner : section.table->lists)
        entry.lists.push_back(stated_list(inner, owner, shell, units));
    return entry;
}

bool alike(const Table &table, const void *a, const void *b) {
    for (const Item &item : table.items) {
        if (const auto *part = std::get_if<Shared>(&item)) {
            if (!alike(*part->table, part->of(a), part->of(b))) return false;
        } else if (std::get<Key>(item).value(a) != std::get<Key>(item).value(b)) {
            return false;
        }
    }
    return true;
}

bool entries_alike(const Section &section, const void *a, const void *b) {
    if (section.size(a) != section.size(b)) return false;
    for (std::size_t i = 0; i < section.size(a); ++i) {
        const void *one = section.at(a, i), *other = section.at(b, i);
        if (!alike(*section.table, one, other)) return false;
        for (const Section &inner : section.table->lists)
            if (!entries_alike(inner, one, other)) return false;
    }
    return true;
}

} // namespace

const StatedKey *find(const StatedKeys &keys, const std::string &key) {
    const auto found = std::ranges::find(keys, key, &StatedKey::key);
    return found == keys.end() ? nullptr : &*found;
}

StatedKeys stated_keys(const Table &table, const void *owner, const void *base, UnitSystem units) {
    StatedKeys out;
    state(out, table, owner, base, units);
    return out;
}

StatedKeys stated_keys(const Section &section, const Whole &whole, UnitSystem units) {
    return stated_keys(*section.table, section.of(whole.around(section)), section.fresh(whole.shell).get(),
                       units);
}

Entry stated_entry(const Section &section, const Whole &whole, UnitSystem units) {
    return entry_of(section, section.of(whole.around(section)), section.fresh(whole.shell).get(), whole.shell,
                    units);
}

EntryList stated_list(const Section &section, const void *around, const Shell &shell, UnitSystem units) {
    const auto fresh = section.fresh(shell);
    EntryList out{section.table->key(),
                  stated_keys(*section.table, fresh.get(), fresh.get(), units),
                  {},
                  section.in_lines,
                  section.known_by ? section.known_by : ""};
    for (std::size_t i = 0; i < section.size(around); ++i)
        out.entries.push_back(entry_of(section, section.at(around, i), fresh.get(), shell, units));
    return out;
}

EntryList stated_entries(const Section &section, const Whole &whole, UnitSystem units) {
    return stated_list(section, whole.around(section), whole.shell, units);
}

std::vector<std::pair<std::string, std::string>> keys_to_state(const Entry &entry,
                                                               const StatedKeys &understood) {
    std::vector<std::pair<std::string, std::string>> keys;
    for (const StatedKey &key : entry.keys) {
        const auto plain = std::ranges::find(understood, key.key, &StatedKey::key);
        if (key.needed || plain == understood.end() || plain->text != key.text)
            keys.emplace_back(key.key, key.text);
    }
    return keys;
}

std::string entries_text(const EntryList &list, const std::string &line_break) {
    std::string text = "[";
    for (const Entry &entry : list.entries)
        text += line_break + "  " + inline_table(keys_to_state(entry, list.understood)) + ",";
    return text + line_break + "]";
}

bool state_alike(const Section &section, const Whole &a, const Whole &b) {
    if (!alike(*section.table, section.fresh(a.shell).get(), section.fresh(b.shell).get())) return false;
    const void *one = a.around(section), *other = b.around(section);
    if (section.is_list()) return entries_alike(section, one, other);
    if (!alike(*section.table, section.of(one), section.of(other))) return false;
    return std::ranges::all_of(section.table->lists, [&](const Section &inner) {
        return entries_alike(inner, section.of(one), section.of(other));
    });
}

} // namespace roundlay
