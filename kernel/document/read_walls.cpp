#include "kernel/document/compass.h"
#include "kernel/document/limits.h"
#include "kernel/document/sections.h"
#include "kernel/shell/close_plan.h"

#include <algorithm>

namespace roundlay {

namespace {

bool is_wall_name(const std::string &name) {
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

std::optional<double> read_heading(Reading &reading, TableReader &table) {
    std::string words;
    if (!table.text("toward", words)) return std::nullopt;
    const auto heading = parse_heading(words);
    if (!heading)
        reading.error(table.place_of("toward"), "\"toward\" cannot be " + quoted_for_message(words),
                      heading_expected);
    return heading;
}

const std::string &wall_name(const Shell &shell, std::size_t i) {
    return i < shell.walls.size() ? shell.walls[i].name : shell.partitions[i - shell.walls.size()].name;
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

/// `sound`: its way and its length are right, as far as they are stated.
Wall read_wall(Reading &reading, TableReader &table, const Shell &before, bool &sound) {
    Wall wall;
    table.require("name", "name = \"A\"");
    if (table.text("name", wall.name)) check_tag_name(reading, table, before, wall.name, "wall");
    table.require("toward", heading_expected);
    const auto heading = read_heading(reading, table);
    wall.heading = heading.value_or(0);
    wall.closes = !table.states("length");
    const bool length = table.length("length", wall.length, bounds::long_size);
    sound = sound && heading && (length || wall.closes);
    table.length("thickness", wall.thickness, bounds::short_size);
    table.length("pitch", wall.pitch, bounds::short_size);
    table.length("log_height", wall.log_height, bounds::short_size);
    table.finish();
    return wall;
}

Partition read_partition(Reading &reading, TableReader &table, const Shell &before) {
    Partition wall;
    table.require("name", "name = \"P\"");
    if (table.text("name", wall.name)) check_tag_name(reading, table, before, wall.name, "wall");
    table.require("from", "the wall it starts in, stated before it: from = \"A\"");
    if (table.text("from", wall.from)) find_wall(reading, table.place_of("from"), before, wall.from);
    table.require("from_left", "from_left = \"3 m\", along that wall's outside to the middle of this one");
    table.length("from_left", wall.from_left, bounds::long_place);
    wall.heading = read_heading(reading, table);
    table.require("to", "the wall it ends in: to = \"C\"");
    table.text("to", wall.to);
    table.length("thickness", wall.thickness, bounds::short_size);
    table.length("pitch", wall.pitch, bounds::short_size);
    table.length("log_height", wall.log_height, bounds::short_size);
    table.finish();
    return wall;
}

} // namespace

void check_tag_name(Reading &reading, const TableReader &table, const Shell &before, const std::string &name,
                    const char *what) {
    const Place place = table.place_of("name");
    if (!is_wall_name(name)) {
        reading.error(place, "\"name\" of a " + std::string(what) + " cannot be " + quoted_for_message(name),
                      "1 to 8 letters and digits, such as \"A\"");
        return;
    }
    for (const auto &[other, path] : names_of(before)) {
        if (lower(other) != lower(name)) continue;
        reading.error(place,
                      "the name \"" + name + "\" is taken; the other one stands in line " +
                          std::to_string(reading.place_of(path).line),
                      "a name of its own for each wall, partition and floor; capitals alone do not tell them apart");
        return;
    }
}

void read_walls(Reading &reading, TableReader &document, Shell &shell) {
    document.require("wall", "one [[wall]] for each side, walking once round the outside");
    bool sound = true;
    for (const toml::table *entry : document.entries("wall", limits::walls)) {
        const std::string path = "wall[" + std::to_string(shell.walls.size()) + "]";
        TableReader table(reading, entry, path, reading.place_of(path));
        shell.walls.push_back(read_wall(reading, table, shell, sound));
    }
    if (!sound) return; // lengths that are left out follow from right ones only
    if (const auto fault = close_plan(shell.walls))
        reading.error(reading.place_of("wall[" + std::to_string(fault->wall) + "]"), fault->message, fault->expected);
}

void read_partitions(Reading &reading, TableReader &document, Shell &shell) {
    for (const toml::table *entry : document.entries("partition", limits::walls)) {
        const std::string path = "partition[" + std::to_string(shell.partitions.size()) + "]";
        TableReader table(reading, entry, path, reading.place_of(path));
        shell.partitions.push_back(read_partition(reading, table, shell));
    }
    for (std::size_t i = 0; i < shell.partitions.size(); ++i) {
        const Place place = reading.place_of("partition[" + std::to_string(i) + "].to");
        const Partition &wall = shell.partitions[i];
        if (wall.to.empty()) continue; // reported where it is read
        if (!find_wall(reading, place, shell, wall.to)) continue;
        if (wall.to == wall.name || wall.to == wall.from)
            reading.error(place, "partition \"" + wall.name + "\" cannot end in wall \"" + wall.to + "\"",
                          "another wall than itself and the one it starts in");
    }
}

std::optional<std::size_t> find_wall(Reading &reading, const Place &place, const Shell &shell,
                                     const std::string &name) {
    std::vector<std::string> names;
    for (std::size_t i = 0; i < shell.walls.size() + shell.partitions.size(); ++i) {
        if (wall_name(shell, i) == name) return i;
        if (!wall_name(shell, i).empty()) names.push_back(wall_name(shell, i));
    }
    std::string expected = "one of the walls";
    for (std::size_t i = 0; i < names.size(); ++i)
        expected += (i ? ", \"" : " \"") + names[i] + "\"";
    reading.error(place, "there is no wall " + quoted_for_message(name) + did_you_mean(name, names),
                  names.empty() ? "" : expected);
    return std::nullopt;
}

} // namespace roundlay
