#include "tests/document/any_state.h"

#include "kernel/document/statements.h"
#include "tests/document/any_statement.h"

#include <rapidcheck.h>

#include <algorithm>
#include <set>
#include <tuple>

namespace roundlay::test {

namespace {

using format::Section;

template <typename Entry, typename By> void sort_by(std::vector<Entry> &entries, By by) {
    std::ranges::stable_sort(entries, {}, by);
    const auto same = [&by](const Entry &a, const Entry &b) { return by(a) == by(b); };
    entries.erase(std::unique(entries.begin(), entries.end(), same), entries.end());
}

/// By their names, each of its own; those of two shells are the same as far as they go.
template <typename Entry> void name_apart(std::vector<Entry> &entries) {
    for (std::size_t i = 0; i < entries.size(); ++i)
        entries[i].name = "n" + std::to_string(i);
}

/// What tells an entry, as a text.
std::string identity(const Section &section, const Entry &entry) {
    std::string all;
    for (const char *key : section.told_by)
        if (const StatedKey *stated = find(entry.keys, key))
            all += std::string(key) + " = " + stated->text + "\n";
    return all;
}

bool tells(const Section &section, const std::string &key) {
    return std::ranges::any_of(section.told_by, [&](const char *each) { return key == each; });
}

class StateWriter {
  public:
    StateWriter(const ReadResult &before, const Shell &after) : before_(before), after_(after) {}

    std::string text;

    void once(const Section &section);
    void list(const std::string &path, const Section &section, const void *before, const void *after);

  private:
    std::string differing(const std::string &path, const Section &section, const StatedKeys &before,
                          const StatedKeys &after, const StatedKeys &understood) const;
    void changed(const std::string &path, const Section &section, const Entry &before, const Entry &after,
                 const StatedKeys &understood, const void *was, const void *is);
    void added(const Section &section, const Entry &entry, const StatedKeys &understood, const void *is);

    const ReadResult &before_;
    const Shell &after_;
};

std::string StateWriter::differing(const std::string &path, const Section &section, const StatedKeys &before,
                                   const StatedKeys &after, const StatedKeys &understood) const {
    std::string keys, left_out;
    const auto stands = [&](const std::string &key) { return before_.places.states(path + "." + key); };
    for (const StatedKey &key : after) {
        if (tells(section, key.key) || (section.table->name == "shell" && key.key == "state")) continue;
        const StatedKey *now = find(stands(key.key) ? before : understood, key.key);
        if (!now || now->text != key.text || (key.needed && !stands(key.key)))
            keys += key.key + " = " + key.text + "\n";
    }
    for (const StatedKey &key : before)
        if (!find(after, key.key) && stands(key.key))
            left_out += (left_out.empty() ? "\"" : ", \"") + key.key + "\"";
    return keys + (left_out.empty() ? "" : "left_out = [" + left_out + "]\n");
}

void StateWriter::once(const Section &section) {
    const format::Whole was{*before_.shell, before_.record}, is{after_, before_.record};
    const auto fresh = section.fresh(after_);
    const StatedKeys understood = stated_keys(*section.table, fresh.get(), fresh.get(), after_.units);
    const std::string keys = differing(section.table->name, section, stated_keys(section, was, after_.units),
                                       stated_keys(section, is, after_.units), understood);
    if (!keys.empty()) text += "[state." + section.table->name + "]\n" + keys;
}

void StateWriter::added(const Section &section, const Entry &entry, const StatedKeys &understood,
                        const void *is) {
    text += "[[state." + section.table->name + "]]\n";
    if (!section.only_says_more) text += "new = true\n";
    for (const auto &[key, value] : keys_to_state(entry, understood))
        text += key + " = " + value + "\n";
    for (std::size_t i = 0; i < section.table->lists.size(); ++i) {
        const Section &inner = section.table->lists[i];
        const EntryList list = stated_list(inner, is, after_, after_.units);
        for (std::size_t j = 0; j < list.entries.size(); ++j)
            added(inner, list.entries[j], list.understood, inner.at(is, j));
    }
}

void StateWriter::changed(const std::string &path, const Section &section, const Entry &before,
                          const Entry &after, const StatedKeys &understood, const void *was, const void *is) {
    const std::string keys = differing(path, section, before.keys, after.keys, understood);
    const std::string head = "[[state." + section.table->name + "]]\n" + identity(section, after);
    const std::size_t size = text.size();
    text += head + keys;
    const std::size_t own = text.size();
    for (const Section &inner : section.table->lists)
        list(path + "." + inner.table->key(), inner, was, is);
    if (keys.empty() && text.size() == own) text.resize(size);
}

void StateWriter::list(const std::string &path, const Section &section, const void *before,
                       const void *after) {
    const EntryList was = stated_list(section, before, *before_.shell, after_.units),
                    is = stated_list(section, after, after_, after_.units);
    const auto index_in = [&](const EntryList &all, const Entry &entry) {
        const auto told = [&](const Entry &each) { return identity(section, each); };
        return static_cast<std::size_t>(std::ranges::find(all.entries, told(entry), told) -
                                        all.entries.begin());
    };
    for (const Entry &entry : was.entries)
        if (index_in(is, entry) == is.entries.size())
            text += "[[state." + section.table->name + "]]\ngone = true\n" + identity(section, entry);
    for (std::size_t i = 0; i < is.entries.size(); ++i) {
        const std::size_t old = index_in(was, is.entries[i]);
        if (old == was.entries.size())
            added(section, is.entries[i], is.understood, section.at(after, i));
        else
            changed(path + "[" + std::to_string(old) + "]", section, was.entries[old], is.entries[i],
                    is.understood, section.at(before, old), section.at(after, i));
    }
}

} // namespace

Shell in_order(Shell shell) {
    sort_by(shell.partitions, [](const Partition &p) { return p.name; });
    sort_by(shell.corners, [](const CornerNotch &c) { return std::minmax(c.first, c.second); });
    sort_by(shell.own_logs, [](const OwnLog &log) { return std::tuple(log.wall, log.round, log.piece); });
    for (OwnLog &log : shell.own_logs)
        sort_by(log.tails, [](const OwnTail &tail) { return tail.end; });
    sort_by(shell.openings, [](const Opening &o) { return o.name; });
    sort_by(shell.steps, [](const FoundationStep &s) { return std::tuple(s.wall, s.from_left); });
    sort_by(shell.floors, [](const Floor &f) { return f.name; });
    for (Floor &floor : shell.floors) {
        sort_by(floor.beams, [](const Beam &b) { return b.from_wall; });
        sort_by(floor.openings, [](const FloorOpening &o) { return o.name; });
    }
    sort_by(shell.bores, [](const StatedBore &b) { return b.name; });
    sort_by(shell.mends, [](const Mend &m) { return m.name; });
    return shell;
}

Shell any_state_of(const std::vector<Wall> &walls) {
    Shell shell = any_statements(walls);
    name_apart(shell.openings), name_apart(shell.bores), name_apart(shell.mends);
    for (Floor &floor : shell.floors)
        name_apart(floor.openings);
    const bool closed = std::ranges::any_of(shell.walls, &Wall::closes); // by their lengths as they are
    for (Wall &wall : shell.walls) {
        wall.thickness = *rc::gen::element(std::optional<Length>(), std::optional(Length::mm(180)));
        if (!closed) wall.length = Length::mm(*rc::gen::inRange(1000, 9000));
    }
    return in_order(std::move(shell));
}

std::string state_text(const std::string &name, const std::string &on, const ReadResult &before,
                       const Shell &after) {
    StateWriter writer(before, after);
    writer.text = "\n[[state]]\nname = \"" + name + "\"\n" + (on.empty() ? "" : "on = \"" + on + "\"\n");
    for (const Section &section : format::sections()) {
        if (section.of_record) continue;
        if (section.is_list())
            writer.list(section.table->name, section, &*before.shell, &after);
        else
            writer.once(section);
    }
    return writer.text;
}

} // namespace roundlay::test
