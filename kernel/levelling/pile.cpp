#include "kernel/levelling/pile.h"

#include "kernel/csv/csv_table.h"
#include "kernel/measure/character.h"
#include "kernel/shell/limits.h"

#include <algorithm>
#include <array>
#include <map>
#include <span>

namespace roundlay {

namespace {

constexpr std::size_t most_rows = 2000;
constexpr std::size_t most_letters = 200; ///< of a mark or a note, as a document takes them

/// mm. The lower ones tell "1,250" apart from 1.250, which no log is.
constexpr CsvBounds log_length{300, 30'000}, thickness{20, 2'000}, out_of_line{0, 2'000};

void check_count(const CsvTable &table) {
    if (table.rows() > most_rows)
        table.problem(most_rows, "count", "there are more than " + std::to_string(most_rows) + " logs");
}

std::string letters(const CsvTable &table, std::size_t row, const std::string &column) {
    std::string text = table.cell(row, column);
    std::ranges::replace(text, '\n', ' ');
    std::ranges::replace(text, '\t', ' ');
    const auto count = std::ranges::count_if(text, [](char c) { return (c & 0xC0) != 0x80; });
    if (static_cast<std::size_t>(count) > most_letters)
        table.problem(row, "long " + column,
                      table.name(column) + " is longer than " + std::to_string(most_letters) + " letters");
    return text;
}

PileLog pile_log(const CsvTable &table, std::size_t row) {
    PileLog log;
    log.mark = letters(table, row, "mark");
    if (log.mark.empty())
        table.problem(row, "empty mark",
                      table.name("mark") + " is missing; it is what tells one log from another");
    log.length = table.length(row, "length", log_length, true).value_or(0);
    log.butt_height = table.length(row, "butt_height", thickness, true).value_or(0);
    log.tip_height = table.length(row, "tip_height", thickness, true).value_or(0);
    log.butt_width = table.length(row, "butt_width", thickness, false);
    log.tip_width = table.length(row, "tip_width", thickness, false);
    return log;
}

/// The words that are told, in English and in French, and in plain letters what else is read as that value.
template <typename T> struct Word {
    T value;
    std::string_view english, french;
    std::array<std::string_view, 5> others = {};
};

constexpr auto butt_words = std::to_array<Word<LogEnd>>(
    {{LogEnd::left, "left", "gauche", {"l", "a gauche", "bout gauche", "g"}},
     {LogEnd::right, "right", "droite", {"r", "a droite", "droit", "bout droit", "d"}}});
constexpr auto finish_words =
    std::to_array<Word<Finish>>({{Finish::hewn, "hewn", "équarri", {"equarrie"}},
                                 {Finish::sawn, "sawn", "scié", {"sciee"}},
                                 {Finish::peeled, "peeled", "écorcé", {"ecorcee"}}});
constexpr auto fabric_words = std::to_array<Word<Fabric>>(
    {{Fabric::newly_cut, "new", "neuf", {"neuve"}},
     {Fabric::kept, "kept", "conservé", {"conservee"}},
     {Fabric::patched, "patched", "réparé", {"reparee", "rapiece", "rapiecee"}},
     {Fabric::replacement, "replacement", "remplacement", {"de remplacement", "remplace", "remplacee"}}});

template <typename T>
std::optional<T> chosen(const CsvTable &table, std::size_t row, const std::string &column,
                        std::span<const Word<T>> words) {
    const std::string text = table.word(row, column);
    if (text.empty()) return {};
    std::string expected;
    for (const Word<T> &word : words) {
        if (text == word.english || text == plain_letters(word.french) ||
            std::ranges::count(word.others, text) > 0)
            return word.value;
        expected +=
            (expected.empty() ? "" : ", ") + std::string(table.in_french() ? word.french : word.english);
    }
    table.problem(row, "no " + column,
                  table.name(column) + " \"" + table.cell(row, column) + "\" is not known; expected " +
                      expected);
    return {};
}

/// One end without the other is a slip.
void check_both(const CsvTable &table, std::size_t row, const char *name, const std::optional<double> &left,
                const std::optional<double> &right) {
    if (left.has_value() == right.has_value()) return;
    const std::string missing = std::string(left ? "right_" : "left_") + name;
    if (table.cell(row, missing).empty())
        table.problem(row, "empty " + missing, table.name(missing) + " is missing");
}

RecordedLog recorded_log(const CsvTable &table, std::size_t row) {
    RecordedLog log;
    log.line = table.line(row);
    log.wall = table.cell(row, "wall");
    if (log.wall.empty()) table.problem(row, "empty wall", table.name("wall") + " is missing");
    if (table.cell(row, "round").empty())
        table.problem(row, "empty round", table.name("round") + " is missing");
    log.round = table.count(row, "round", most_logs_high, "1 (the sill log)").value_or(1);
    log.piece = table.count(row, "piece", most_logs_in_round, "1 (the leftmost)");
    log.mark = letters(table, row, "mark");
    log.note = letters(table, row, "notes");
    for (const auto &[column, into] :
         {std::pair("left_height", &log.left_height), std::pair("right_height", &log.right_height),
          std::pair("left_width", &log.left_width), std::pair("right_width", &log.right_width),
          std::pair("diameter", &log.diameter)})
        *into = table.length(row, column, thickness, false);
    log.bow = table.length(row, "bow", out_of_line, false);
    check_both(table, row, "height", log.left_height, log.right_height);
    check_both(table, row, "width", log.left_width, log.right_width);
    log.butt = chosen<LogEnd>(table, row, "butt", butt_words);
    log.finish = chosen<Finish>(table, row, "finish", finish_words);
    log.fabric = chosen<Fabric>(table, row, "fabric", fabric_words);
    return log;
}

/// Reports what stands in two rows; `key` names a row's log.
template <typename Row, typename Key>
void check_twice(const CsvTable &table, const std::vector<Row> &rows, Key key) {
    std::map<std::string, std::size_t> seen;
    for (std::size_t i = 0; i < rows.size(); ++i)
        if (const auto [first, is_new] = seen.emplace(key(rows[i]), i); !is_new)
            table.problem(i, "twice " + key(rows[i]),
                          key(rows[i]) + " stands there twice, first in line " +
                              std::to_string(table.line(first->second)));
}

template <typename Row, typename Key>
CsvRead<Row> read_rows(const CsvTable &table, CsvReport &report, Row (*read)(const CsvTable &, std::size_t),
                       Key key) {
    CsvRead<Row> result;
    if (report.good()) {
        check_count(table);
        for (std::size_t i = 0; i < std::min(table.rows(), most_rows); ++i) {
            const std::size_t before = report.count();
            table.check_end(i);
            result.rows.push_back(read(table, i));
            if (report.count() == before) result.sound.push_back(result.rows.back());
        }
        if (result.rows.empty()) report.problem(1, "empty", "there is no log under the header");
    }
    if (report.good()) check_twice(table, result.rows, key);
    (report.good() ? result.sound : result.rows).clear();
    result.problems = report.problems();
    result.notices = report.notices();
    return result;
}

std::string place_of(const RecordedLog &log) {
    return "wall " + log.wall + ", round " + std::to_string(log.round) +
           (log.piece ? ", piece " + std::to_string(*log.piece) : "");
}

} // namespace

CsvRead<PileLog> read_pile(std::string_view csv) {
    CsvReport report;
    const CsvTable table(csv,
                         {{"mark", true, {"marque", "marque_sur_la_pièce"}, true},
                          {"length", true, {"longueur"}},
                          {"butt_height", true, {"hauteur_au_gros_bout"}},
                          {"tip_height", true, {"hauteur_au_petit_bout"}},
                          {"butt_width", false, {"largeur_au_gros_bout"}},
                          {"tip_width", false, {"largeur_au_petit_bout"}}},
                         report);
    return read_rows<PileLog>(table, report, pile_log,
                              [](const PileLog &log) { return "the log \"" + log.mark + "\""; });
}

CsvRead<RecordedLog> read_record(std::string_view csv) {
    CsvReport report;
    const CsvTable table(csv,
                         {{"wall", true, {"mur"}},
                          {"round", true, {"rang"}},
                          {"piece", false, {"pièce"}},
                          {"mark", false, {"marque", "marque_sur_la_pièce"}, true},
                          {"left_height", false, {"hauteur_gauche", "hauteur_bout_gauche"}},
                          {"right_height", false, {"hauteur_droite", "hauteur_droit", "hauteur_bout_droit"}},
                          {"left_width", false, {"largeur_gauche", "largeur_bout_gauche"}},
                          {"right_width", false, {"largeur_droite", "largeur_droit", "largeur_bout_droit"}},
                          {"diameter", false, {"diamètre", "diamètre_de_la_bille"}},
                          {"butt", false, {"gros_bout"}},
                          {"bow", false, {"cintrage"}},
                          {"finish", false, {"façon"}},
                          {"fabric", false, {"état"}},
                          {"notes", false, {"notes", "note"}}},
                         report);
    return read_rows<RecordedLog>(table, report, recorded_log, place_of);
}

} // namespace roundlay
