#include "kernel/document/statements.h"

namespace roundlay {

using namespace format;

namespace {

void state(StatedKeys &to, const Table &table, const void *owner, const void *base, UnitSystem units) {
    for (const Item &item : table.items) {
        if (const auto *part = std::get_if<Shared>(&item)) {
            state(to, *part->table, part->of(owner), part->of(base), units);
            continue;
        }
        const Key &key = std::get<Key>(item);
        if (const auto value = key.value(owner))
            to.push_back({key.name, text_of(key.kind, *value, units), key.needed(owner, base)});
    }
}

EntryList stated_list(const Section &section, const void *around, const Shell &shell, UnitSystem units) {
    const Table &table = *section.table;
    const auto fresh = section.fresh(shell);
    EntryList out{table.key(), stated_keys(table, fresh.get(), fresh.get(), units), {}};
    for (std::size_t i = 0; i < section.size(around); ++i) {
        const void *owner = section.at(around, i);
        Entry entry{stated_keys(table, owner, fresh.get(), units), {}};
        for (const Section &inner : table.lists)
            entry.lists.push_back(stated_list(inner, owner, shell, units));
        out.entries.push_back(std::move(entry));
    }
    return out;
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

StatedKeys stated_keys(const Table &table, const void *owner, const void *base, UnitSystem units) {
    StatedKeys out;
    state(out, table, owner, base, units);
    return out;
}

StatedKeys stated_keys(const Section &section, const Shell &shell, UnitSystem units) {
    return stated_keys(*section.table, section.of(&shell), section.fresh(shell).get(), units);
}

EntryList stated_entries(const Section &section, const Shell &shell, UnitSystem units) {
    return stated_list(section, &shell, shell, units);
}

bool state_alike(const Section &section, const Shell &a, const Shell &b) {
    if (!alike(*section.table, section.fresh(a).get(), section.fresh(b).get())) return false;
    return section.is_list() ? entries_alike(section, &a, &b)
                             : alike(*section.table, section.of(&a), section.of(&b));
}

} // namespace roundlay
