#include "kernel/document/entry_identity.h"

#include "kernel/measure/spelling.h"

#include <algorithm>

namespace roundlay {

using namespace format;

namespace {

std::string length_told(const toml::node &node) {
    if (!node.is_string()) return spell_length(Length(), UnitSystem::metric); // 0 needs no unit
    const auto length = parse_length(node.as_string()->get());
    const Length *read = std::get_if<Length>(&length);
    return read ? spell_length(*read, UnitSystem::metric) : node.as_string()->get();
}

std::string pair_told(const toml::array &names) {
    std::vector<std::string> sorted;
    for (const toml::node &name : names)
        if (name.is_string()) sorted.push_back(name.as_string()->get());
    std::ranges::sort(sorted);
    std::string told;
    for (const std::string &name : sorted)
        told += name + "\n";
    return told;
}

std::string value_told(const Kind &kind, const toml::node &node) {
    if (std::holds_alternative<Size>(kind)) return length_told(node);
    if (const toml::array *names = node.as_array()) return pair_told(*names);
    if (node.is_string()) return node.as_string()->get();
    return node.is_integer() ? std::to_string(node.as_integer()->get()) : std::string();
}

const Key *key_of(const Table &table, std::string_view name) {
    for (const Item &item : table.items)
        if (const Key *key = std::get_if<Key>(&item); key && key->name == name) return key;
    return nullptr;
}

} // namespace

std::string identity_of(const Section &section, const toml::table &entry) {
    std::string all;
    for (const char *name : section.told_by)
        if (const toml::node *stated = entry.get(name))
            all += std::string(name) + "=" + value_told(key_of(*section.table, name)->kind, *stated) + "\t";
    return all;
}

std::vector<std::size_t> entries_told(const Section &section, const toml::array &list,
                                      const std::string &identity) {
    std::vector<std::size_t> all;
    for (std::size_t i = 0; i < list.size(); ++i)
        if (const toml::table *entry = list.get(i)->as_table();
            entry && identity_of(section, *entry) == identity)
            all.push_back(i);
    return all;
}

std::string told_by_in_words(const Section &section) {
    std::string words;
    for (const char *name : section.told_by)
        words += (words.empty() ? "" : ", ") + std::string(name);
    return words + " of the entry, or new = true for one that comes with this state";
}

} // namespace roundlay
