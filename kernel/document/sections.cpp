#include "kernel/document/describe.h"

#include <stdexcept>

namespace roundlay::format {

namespace {

void add(std::vector<const Section *> &all, std::span<const Section> some) {
    for (const Section &section : some) {
        all.push_back(&section);
        add(all, section.table->lists);
    }
}

struct IsEmpty {
    bool operator()(const std::string &text) const { return text.empty(); }
    bool operator()(const ManyTexts &texts) const { return texts.empty(); }
    bool operator()(const NotedLength &length) const { return !length.is_taken(); }
    template <typename Other> bool operator()(const Other &) const { return false; }
};

} // namespace

std::span<const Section> sections() {
    static const Section all[] = {
        shell_section(),  wall_section(),    partition_section(), rounds_section(),  notch_section(),
        corner_section(), logs_section(),    log_section(),       opening_section(), step_section(),
        trim_section(),   floor_section(),   pegs_section(),      bore_section(),    mend_section(),
        wood_section(),   project_section(), record_section(),    found_section(),   done_section(),
    };
    return all;
}

std::vector<const Section *> all_sections() {
    std::vector<const Section *> all;
    add(all, sections());
    all.push_back(&state_section());
    return all;
}

const Table &table_of(const std::string &name) {
    for (const Section *section : all_sections())
        if (section->table->name == name) return *section->table;
    throw std::logic_error("no table " + name + " is described");
}

std::string header(const Section &section) {
    return section.is_list() ? "[[" + section.table->name + "]]" : "[" + section.table->name + "]";
}

std::optional<Value> Key::value(const void *owner) const {
    auto stated = get(owner);
    const bool empty = stated && std::visit(IsEmpty(), *stated);
    return empty && !missing ? std::nullopt : stated;
}

} // namespace roundlay::format
