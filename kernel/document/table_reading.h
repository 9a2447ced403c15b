// One table of a document as it is read, and what the checks behind its keys share.
#pragma once

#include "kernel/document/compass.h"
#include "kernel/document/limits.h"
#include "kernel/document/table_reader.h"
#include "kernel/shell/shell.h"

namespace roundlay {

struct TableReading {
    Reading &reading;
    TableReader &table;
    const Shell &shell; ///< what was read before; not yet the entry that is being read
};

/// Warns where the key is stated although this kind does not use it.
void warn_unused(TableReading &at, const char *key, const char *used_by);

/// Names stand on tags and in file names: letters and digits, and two that differ in capitals only are too
/// much alike. `what` it is the name of: "wall", "floor".
void check_tag_name(TableReading &at, const std::string &name, const char *what);

/// Of the walls, then of the partitions.
std::vector<std::string> wall_names(const Shell &shell);
/// The wall of that name: an index into Shell::walls, and on from there into Shell::partitions.
std::optional<std::size_t> index_of_wall(const Shell &shell, const std::string &name);
/// The same; reports where there is none.
std::optional<std::size_t> find_wall(Reading &reading, const Place &place, const Shell &shell,
                                     const std::string &name);

} // namespace roundlay
