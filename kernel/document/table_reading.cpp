#include "kernel/document/table_reading.h"

#include <algorithm>

namespace roundlay {

namespace {

bool is_tag_name(const std::string &name) {
    const auto fits = [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
    };
    return !name.empty() && name.size() <= limits::wall_letters &&
           std::all_of(name.begin(), name.end(), fits);
}

std::string lower(std::string text) {
    for (char &c : text)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return text;
}

/// The names before this one, with where each is stated.
std::vector<std::pair<std::string, std::string>> names_of(const Shell &shell) {
    std::vector<std::pair<std::string, std::string>> names;
    const auto add = [&](const std::string &list, const auto &entries) {
        for (std::size_t i = 0; i < entries.size(); ++i)
            names.emplace_back(entries[i].name, list + "[" + std::to_string(i) + "].name");
    };
    add("wall", shell.walls);
    add("partition", shell.partitions);
    add("floor", shell.floors);
    return names;
}

} // namespace

void warn_unused(TableReading &at, const char *key, const char *used_by) {
    if (at.table.states(key))
        at.reading.warning(at.table.place_of(key),
                           quoted_for_message(key) + " is not used here, only by " + used_by);
}

void check_tag_name(TableReading &at, const std::string &name, const char *what) {
    const Place place = at.table.place_of("name");
    if (!is_tag_name(name)) {
        at.reading.error(place,
                         "\"name\" of a " + std::string(what) + " cannot be " + quoted_for_message(name),
                         "1 to 8 letters and digits, such as \"A\"");
        return;
    }
    for (const auto &[other, path] : names_of(at.shell)) {
        if (lower(other) != lower(name)) continue;
        at.reading.error(
            place,
            "the name \"" + name + "\" is taken; the other one stands in line " +
                std::to_string(at.reading.place_of(path).line),
            "a name of its own for each wall, partition and floor; capitals alone do not tell them apart");
        return;
    }
}

std::vector<std::string> wall_names(const Shell &shell) {
    std::vector<std::string> names;
    for (const Wall &wall : shell.walls)
        names.push_back(wall.name);
    for (const Partition &wall : shell.partitions)
        names.push_back(wall.name);
    return names;
}

std::optional<std::size_t> index_of_wall(const Shell &shell, const std::string &name) {
    const auto names = wall_names(shell);
    const auto found = std::find(names.begin(), names.end(), name);
    if (found == names.end()) return std::nullopt;
    return static_cast<std::size_t>(found - names.begin());
}

std::optional<std::size_t> find_wall(Reading &reading, const Place &place, const Shell &shell,
                                     const std::string &name) {
    if (const auto found = index_of_wall(shell, name)) return found;
    std::vector<std::string> names = wall_names(shell);
    std::erase(names, "");
    std::string expected = "one of the walls";
    for (std::size_t i = 0; i < names.size(); ++i)
        expected += (i ? ", \"" : " \"") + names[i] + "\"";
    reading.error(place, "there is no wall " + quoted_for_message(name) + did_you_mean(name, names),
                  names.empty() ? "" : expected);
    return std::nullopt;
}

} // namespace roundlay
