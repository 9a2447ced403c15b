// The parts of a document, each read from its own table into its own part of the Shell.
#pragma once

#include "kernel/document/table_reader.h"
#include "kernel/shell/shell.h"

namespace roundlay {

void read_shell_table(Reading &reading, TableReader &document, Shell &shell);
void read_pegs(Reading &reading, TableReader &document, Shell &shell);
void read_wood(Reading &reading, TableReader &document, Shell &shell);

/// One entry of Shell::walls for each [[wall]], right or wrong, so that the others can look them up.
void read_walls(Reading &reading, TableReader &document, Shell &shell);

// After the walls:
/// One entry of Shell::partitions for each [[partition]], right or wrong.
void read_partitions(Reading &reading, TableReader &document, Shell &shell);
void read_rounds(Reading &reading, TableReader &document, Shell &shell);
/// [logs] and [[log]].
void read_logs(Reading &reading, TableReader &document, Shell &shell);
/// The keys of a single log's notches.
void read_log_notch(Reading &reading, TableReader &table, LogNotch &notch);
void read_steps(Reading &reading, TableReader &document, Shell &shell);
void read_openings(Reading &reading, TableReader &document, Shell &shell);
void read_trim(Reading &reading, TableReader &document, Shell &shell);
void read_floors(Reading &reading, TableReader &document, Shell &shell);
void read_bores(Reading &reading, TableReader &document, Shell &shell);
void read_notch(Reading &reading, TableReader &document, Shell &shell);
/// After the shell's notch, which a corner's own starts from.
void read_corners(Reading &reading, TableReader &document, Shell &shell);

/// Names stand on tags and in file names: letters and digits, and two that differ in capitals only are too much alike.
/// `what` it is the name of: "wall", "floor".
void check_tag_name(Reading &reading, const TableReader &table, const Shell &before, const std::string &name,
                    const char *what);

/// The wall of that name: an index into Shell::walls, and on from there into Shell::partitions. Reports where there
/// is none.
std::optional<std::size_t> find_wall(Reading &reading, const Place &place, const Shell &shell,
                                     const std::string &name);

} // namespace roundlay
