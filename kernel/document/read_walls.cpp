#include "kernel/document/compass.h"
#include "kernel/document/limits.h"
#include "kernel/document/sections.h"

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

void read_heading(Reading &reading, TableReader &table, Wall &wall) {
    table.require("toward", heading_expected);
    std::string words;
    if (!table.text("toward", words)) return;
    if (const auto heading = parse_heading(words))
        wall.heading = *heading;
    else
        reading.error(table.place_of("toward"), "\"toward\" cannot be " + quoted_for_message(words),
                      heading_expected);
}

/// Names stand on tags and in file names, so two that differ in capitals only are too much alike.
void check_name(Reading &reading, const TableReader &table, const Shell &before, const std::string &name) {
    const Place place = table.place_of("name");
    if (!is_wall_name(name)) {
        reading.error(place, "\"name\" of a wall cannot be " + quoted_for_message(name),
                      "1 to 8 letters and digits, such as \"A\"");
        return;
    }
    for (std::size_t i = 0; i < before.walls.size(); ++i) {
        if (lower(before.walls[i].name) != lower(name)) continue;
        const int line = reading.place_of("wall[" + std::to_string(i) + "].name").line;
        reading.error(place,
                      "two walls are called \"" + name + "\"; the other one stands in line " +
                          std::to_string(line),
                      "a name of its own for each wall; capitals alone do not tell them apart");
        return;
    }
}

Wall read_wall(Reading &reading, TableReader &table, const Shell &before) {
    Wall wall;
    table.require("name", "name = \"A\"");
    if (table.text("name", wall.name)) check_name(reading, table, before, wall.name);
    read_heading(reading, table, wall);
    table.require("length", "length = \"16 ft\", measured along its outside face");
    table.length("length", wall.length, bounds::long_size);
    table.length("thickness", wall.thickness, bounds::short_size);
    table.length("pitch", wall.pitch, bounds::short_size);
    table.length("log_height", wall.log_height, bounds::short_size);
    table.finish();
    return wall;
}

} // namespace

void read_walls(Reading &reading, TableReader &document, Shell &shell) {
    document.require("wall", "one [[wall]] for each side, walking once round the outside");
    for (const toml::table *entry : document.entries("wall", limits::walls)) {
        const std::string path = "wall[" + std::to_string(shell.walls.size()) + "]";
        TableReader table(reading, entry, path, reading.place_of(path));
        shell.walls.push_back(read_wall(reading, table, shell));
    }
}

std::optional<std::size_t> find_wall(Reading &reading, const Place &place, const Shell &shell,
                                     const std::string &name) {
    std::vector<std::string> names;
    for (std::size_t i = 0; i < shell.walls.size(); ++i) {
        if (shell.walls[i].name == name) return i;
        if (!shell.walls[i].name.empty()) names.push_back(shell.walls[i].name);
    }
    std::string expected = "one of the walls";
    for (std::size_t i = 0; i < names.size(); ++i)
        expected += (i ? ", \"" : " \"") + names[i] + "\"";
    reading.error(place, "there is no wall " + quoted_for_message(name) + did_you_mean(name, names),
                  names.empty() ? "" : expected);
    return std::nullopt;
}

} // namespace roundlay
