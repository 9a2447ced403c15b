#include "kernel/document/read_table.h"

namespace roundlay {

using namespace format;

namespace {

/// Reads the value of one key; nothing where it is not stated, or wrong, which is reported.
struct ReadValue {
    TableReading &at;
    const Key &key;

    using Read = std::optional<Value>;

    Read operator()(const YesNo &) const {
        bool value = false;
        return at.table.flag(key.name, value) ? Read(value) : Read();
    }
    Read operator()(const Count &kind) const {
        int value = 0;
        return at.table.count(key.name, value, kind.low, kind.high) ? Read(value) : Read();
    }
    Read operator()(const Number &kind) const {
        double value = 0;
        return at.table.number(key.name, value, kind.low, kind.low_is_in, kind.high, kind.words) ? Read(value)
                                                                                                 : Read();
    }
    Read operator()(const Load &kind) const {
        double kpa = 0;
        return at.table.load(key.name, kpa, kind.most, kind.words) ? Read(kpa) : Read();
    }
    Read operator()(const Size &kind) const {
        Length value;
        return at.table.length(key.name, value, kind.bounds) ? Read(value) : Read();
    }
    Read operator()(const Incline &kind) const {
        Slope value;
        return at.table.slope(key.name, value, kind.may_fall) ? Read(value) : Read();
    }
    Read operator()(const Direction &) const {
        double value = 0;
        return at.table.heading(key.name, value) ? Read(value) : Read();
    }
    Read operator()(const Text &) const {
        std::string value;
        return at.table.text(key.name, value) ? Read(value) : Read();
    }
    Read operator()(const TagName &kind) const {
        std::string value;
        if (!at.table.text(key.name, value)) return {};
        check_tag_name(at, value, kind.of);
        return value;
    }
    Read operator()(const WallName &kind) const {
        std::string value;
        if (!at.table.text(key.name, value)) return {};
        if (!kind.later && !find_wall(at.reading, at.table.place_of(key.name), at.shell, value))
            at.reading.wrong(at.table.path_of(key.name));
        return value; // even where there is no such wall: checks behind it tell more
    }
    Read operator()(const OneOf &kind) const {
        std::string value;
        return at.table.choice(key.name, value, kind.words) ? Read(value) : Read();
    }
    Read operator()(const SomeOf &kind) const {
        std::vector<std::string> values;
        return at.table.choices(key.name, values, kind.words) ? Read(values) : Read();
    }
    Read operator()(const Texts &) const {
        std::vector<std::string> values;
        return at.table.plain_texts(key.name, values) ? Read(values) : Read();
    }
    Read operator()(const Noted &) const {
        NotedLength value;
        return at.table.noted(key.name, value) ? Read(value) : Read();
    }
    Read operator()(const WallPair &) const {
        std::vector<std::string> names;
        if (!at.table.texts(key.name, names)) return {};
        const Place place = at.table.place_of(key.name);
        if (names.size() != 2) {
            at.reading.error(place, quoted_for_message(key.name) + " does not name two walls", key.missing);
            return {};
        }
        const auto first = find_wall(at.reading, place, at.shell, names[0]),
                   second = find_wall(at.reading, place, at.shell, names[1]);
        return first && second ? Read(TwoNames(names[0], names[1])) : Read();
    }
};

void read_key(TableReading &at, const Key &key, void *owner) {
    if (key.missing) at.table.require(key.name, key.missing);
    const auto value = std::visit(ReadValue{at, key}, key.kind);
    if (!value) return;
    key.set(owner, *value);
    if (key.check) key.check(at, owner);
}

void read_items(TableReading &at, const Table &table, void *owner) {
    for (const Item &item : table.items)
        if (const auto *key = std::get_if<Key>(&item))
            read_key(at, *key, owner);
        else
            read_items(at, *std::get<Shared>(item).table, std::get<Shared>(item).in(owner));
}

void read_owner(Reading &reading, TableReader &table, const Table &described, void *owner,
                const Shell &shell) {
    TableReading at{reading, table, shell};
    read_items(at, described, owner);
    for (const Section &list : described.lists)
        read_section(reading, table, list, owner, shell);
    if (described.check) described.check(at, owner);
    table.finish();
}

void read_once(Reading &reading, TableReader &around_table, const Section &section, void *around,
               const Shell &shell) {
    const std::string key = section.table->key();
    const toml::table *stated = around_table.table(key);
    if (!stated) return;
    const std::string path = around_table.path_of(key);
    TableReader table(reading, stated, path, reading.place_of(path));
    read_owner(reading, table, *section.table, section.in(around), shell);
}

void read_entries(Reading &reading, TableReader &around_table, const Section &section, void *around,
                  const Shell &shell) {
    const std::string key = section.table->key();
    for (const toml::table *entry : around_table.entries(key, section.most)) {
        const std::string path = around_table.path_of(key) + "[" + std::to_string(section.size(around)) + "]";
        TableReader table(reading, entry, path, reading.place_of(path));
        const auto fresh = section.fresh(shell);
        read_owner(reading, table, *section.table, fresh.get(), shell);
        section.add(around, fresh.get());
    }
}

} // namespace

void read_keys(Reading &reading, TableReader &table, const Table &described, void *owner) {
    const Shell nothing_yet;
    TableReading at{reading, table, nothing_yet};
    read_items(at, described, owner);
}

void read_section(Reading &reading, TableReader &table, const Section &section, void *around,
                  const Shell &shell) {
    if (section.missing) table.require(section.table->key(), section.missing);
    if (section.is_list())
        read_entries(reading, table, section, around, shell);
    else
        read_once(reading, table, section, around, shell);
    if (section.check) section.check(reading, around);
}

} // namespace roundlay
