#include "kernel/document/limits.h"
#include "kernel/document/sections.h"

namespace roundlay {

namespace {

constexpr Word<std::optional<LogEnd>> ends[] = {{"left", LogEnd::left}, {"right", LogEnd::right}};

constexpr Word<std::optional<Finish>> finishes[] = {
    {"hewn", Finish::hewn}, {"sawn", Finish::sawn}, {"peeled", Finish::peeled}};
constexpr Word<std::optional<Fabric>> fabrics[] = {{"new", Fabric::newly_cut},
                                                   {"kept", Fabric::kept},
                                                   {"patched", Fabric::patched},
                                                   {"replacement", Fabric::replacement}};

void read_sizes(TableReader &table, LogSizes &sizes) {
    table.length("butt_height", sizes.butt_height, bounds::short_size);
    table.length("tip_height", sizes.tip_height, bounds::short_size);
    table.length("butt_width", sizes.butt_width, bounds::short_size);
    table.length("tip_width", sizes.tip_width, bounds::short_size);
    table.length("diameter", sizes.diameter, bounds::short_size);
    table.choice("butt", sizes.butt, ends);
    table.choice("finish", sizes.finish, finishes);
}

/// Measured logs come from long lists, so a log that stands there twice is more likely a slip than meant.
void check_log_once(Reading &reading, const TableReader &table, const Shell &before, const OwnLog &log) {
    for (std::size_t i = 0; i < before.own_logs.size(); ++i) {
        const OwnLog &other = before.own_logs[i];
        if (other.wall != log.wall || other.round != log.round || other.piece != log.piece) continue;
        const int line = reading.place_of("log[" + std::to_string(i) + "]").line;
        reading.warning(table.place(),
                        "round " + std::to_string(log.round) + " of wall \"" + log.wall +
                            "\" is stated twice; where this one differs from the other in line " +
                            std::to_string(line) + ", this one counts");
        return;
    }
}

/// Logs that an opening parts lie in one straight line: what shapes them is stated of the whole round.
constexpr const char *of_rounds[] = {"butt_height", "tip_height", "butt_width", "tip_width",     "diameter",
                                     "butt",        "kind",       "slope",      "along",         "across",
                                     "overhang_left", "overhang_right"};

void check_of_piece(Reading &reading, const TableReader &table) {
    for (const char *key : of_rounds)
        if (table.states(key))
            reading.error(table.place_of(key),
                          "\"" + std::string(key) + "\" cannot be stated of one piece of a round, whose logs lie in "
                          "one straight line",
                          "it in a [[log]] without \"piece\"");
}

OwnLog read_log(Reading &reading, TableReader &table, const Shell &shell) {
    OwnLog log;
    table.require("wall", "the wall it lies in: wall = \"A\"");
    const bool in_wall = table.text("wall", log.wall) &&
                         find_wall(reading, table.place_of("wall"), shell, log.wall).has_value();
    table.require("round", "the round it lies in, the sill log being 1");
    // A wall that starts with a half log can end with one more than there are rounds.
    const bool in_round = table.count("round", log.round, 1, limits::rounds + 1);
    if (int piece = 0; table.count("piece", piece, 1, limits::pieces)) {
        log.piece = piece;
        check_of_piece(reading, table);
    }
    if (in_wall && in_round) check_log_once(reading, table, shell, log);
    table.text("mark", log.mark);
    read_sizes(table, log.sizes);
    read_log_notch(reading, table, log.notch);
    table.length("bow", log.bow, bounds::short_gap);
    table.choice("fabric", log.fabric, fabrics);
    table.text("note", log.note);
    table.finish();
    return log;
}

} // namespace

void read_logs(Reading &reading, TableReader &document, Shell &shell) {
    if (const toml::table *stated = document.table("logs")) {
        TableReader table(reading, stated, "logs", reading.place_of("logs"));
        read_sizes(table, shell.logs);
        table.finish();
    }
    for (const toml::table *entry : document.entries("log", limits::logs)) {
        const std::string path = "log[" + std::to_string(shell.own_logs.size()) + "]";
        TableReader table(reading, entry, path, reading.place_of(path));
        shell.own_logs.push_back(read_log(reading, table, shell));
    }
}

} // namespace roundlay
