#include "kernel/levelling/pile.h"

#include "kernel/levelling/csv_table.h"

#include <charconv>
#include <map>

namespace roundlay {

namespace {

constexpr std::size_t most_rows = 2000;
constexpr double longest = 30'000; // mm: no log
constexpr double thickest = 2'000; // mm
constexpr int most_rounds = 1000;

void check_count(const CsvTable &table) {
    if (table.rows() > most_rows)
        table.problem(most_rows, "there are more than " + std::to_string(most_rows) + " logs");
}

PileLog pile_log(const CsvTable &table, std::size_t row) {
    PileLog log;
    log.mark = table.cell(row, "mark");
    if (log.mark.empty()) table.problem(row, "mark is missing; it is what tells one log from another");
    log.length = table.length(row, "length", longest, true).value_or(0);
    log.butt_height = table.length(row, "butt_height", thickest, true).value_or(0);
    log.tip_height = table.length(row, "tip_height", thickest, true).value_or(0);
    log.butt_width = table.length(row, "butt_width", thickest, false);
    log.tip_width = table.length(row, "tip_width", thickest, false);
    return log;
}

int round_of(const CsvTable &table, std::size_t row) {
    const std::string text = table.cell(row, "round");
    int round = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), round);
    if (error != std::errc() || end != text.data() + text.size() || round < 1 || round > most_rounds)
        table.problem(row, "round \"" + text + "\" is not a round; expected 1 (the sill log) and up");
    return round;
}

struct Ends {
    double left = 0, right = 0;
};

std::optional<LogEnd> butt_of(const CsvTable &table, std::size_t row, Ends height, Ends width) {
    const std::string text = table.cell(row, "butt");
    if (text == "left") return LogEnd::left;
    if (text == "right") return LogEnd::right;
    if (!text.empty()) table.problem(row, "butt \"" + text + "\" is not known; expected left or right");
    return height.left * width.left >= height.right * width.right ? LogEnd::left : LogEnd::right;
}

OwnLog recorded_log(const CsvTable &table, std::size_t row) {
    OwnLog log;
    log.wall = table.cell(row, "wall");
    if (log.wall.empty()) table.problem(row, "wall is missing");
    log.round = round_of(table, row);
    log.mark = table.cell(row, "mark");
    const Ends height{table.length(row, "left_height", thickest, true).value_or(0),
                      table.length(row, "right_height", thickest, true).value_or(0)};
    const auto left = table.length(row, "left_width", thickest, false),
               right = table.length(row, "right_width", thickest, false);
    log.sizes.butt = butt_of(table, row, height, {left.value_or(1), right.value_or(1)});
    const bool turned = log.sizes.butt == LogEnd::right;
    log.sizes.butt_height = Length::mm(turned ? height.right : height.left);
    log.sizes.tip_height = Length::mm(turned ? height.left : height.right);
    if (const auto butt = turned ? right : left) log.sizes.butt_width = Length::mm(*butt);
    if (const auto tip = turned ? left : right) log.sizes.tip_width = Length::mm(*tip);
    return log;
}

/// Reports what stands in two rows; `key` names a row's log.
template <typename Row, typename Key>
void check_twice(const CsvTable &table, const std::vector<Row> &rows, Key key) {
    std::map<std::string, std::size_t> seen;
    for (std::size_t i = 0; i < rows.size(); ++i)
        if (const auto [first, is_new] = seen.emplace(key(rows[i]), i); !is_new)
            table.problem(i, key(rows[i]) + " stands there twice, first in line " +
                                 std::to_string(table.line(first->second)));
}

template <typename Row>
CsvRead<Row> read_rows(const CsvTable &table, std::vector<CsvProblem> &problems,
                       Row (*read)(const CsvTable &, std::size_t)) {
    check_count(table);
    CsvRead<Row> result;
    for (std::size_t i = 0; i < std::min(table.rows(), most_rows); ++i)
        result.rows.push_back(read(table, i));
    if (result.rows.empty() && problems.empty()) problems.push_back({1, "there is no log under the header"});
    return result;
}

} // namespace

CsvRead<PileLog> read_pile(std::string_view csv) {
    std::vector<CsvProblem> problems;
    const CsvTable table(csv, {"mark", "length", "butt_height", "tip_height", "butt_width", "tip_width"}, 4,
                         problems);
    if (!problems.empty()) return {{}, problems};
    CsvRead<PileLog> result = read_rows<PileLog>(table, problems, pile_log);
    if (problems.empty())
        check_twice(table, result.rows, [](const PileLog &log) { return "the log \"" + log.mark + "\""; });
    if (!problems.empty()) return {{}, problems};
    return result;
}

CsvRead<OwnLog> read_record(std::string_view csv) {
    std::vector<CsvProblem> problems;
    const CsvTable table(
        csv, {"wall", "round", "left_height", "right_height", "mark", "left_width", "right_width", "butt"}, 4,
        problems);
    if (!problems.empty()) return {{}, problems};
    CsvRead<OwnLog> result = read_rows<OwnLog>(table, problems, recorded_log);
    if (problems.empty())
        check_twice(table, result.rows, [](const OwnLog &log) {
            return "wall " + log.wall + ", round " + std::to_string(log.round);
        });
    if (!problems.empty()) return {{}, problems};
    return result;
}

} // namespace roundlay
