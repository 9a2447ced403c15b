#include "exporters/lists/tables.h"
#include "modeler/command_line/command.h"
#include "modeler/command_line/load.h"
#include "modeler/command_line/values.h"

#include <CLI/CLI.hpp>

#include <sstream>

namespace roundlay {

namespace {

struct ListOptions {
    std::string file, what = "cut", units;
    bool csv = false;
};

struct NamedTable {
    const char *name;
    Table (*make)(const CutList &);
};

constexpr NamedTable tables[] = {{"cut", model_table},
                                 {"pieces", piece_table},
                                 {"pegs", peg_table},
                                 {"order", order_table},
                                 {"totals", total_table}};

Table chosen(const CutList &list, const std::string &what) {
    std::vector<std::string> names;
    for (const NamedTable &table : tables)
        names.emplace_back(table.name);
    const std::string name = one_of("list", what, names);
    for (const NamedTable &table : tables)
        if (name == table.name) return table.make(list);
    return {};
}

/// Breaks a paragraph between words.
std::string wrapped(const std::string &paragraph) {
    constexpr std::size_t columns = 78;
    std::string text, line;
    std::istringstream words(paragraph);
    for (std::string word; words >> word;) {
        if (!line.empty() && line.size() + 1 + word.size() > columns) {
            text += line + "\n";
            line.clear();
        }
        line += (line.empty() ? "" : " ") + word;
    }
    return text + line + "\n";
}

/// Whoever lifts by a weight reads what it rests on.
std::string weight_words(const CutList &list) {
    return "\n" + wrapped("Weights: " + list.weight_basis) +
           (list.weights_known ? "\n" + wrapped(std::string(weight_caution)) : "");
}

/// Rows that hold a paragraph instead of an amount are not for a table on a terminal.
Table without_paragraphs(Table table, const std::string &what) {
    if (what == "totals")
        std::erase_if(table.rows,
                      [](const auto &row) { return std::holds_alternative<std::string>(row[1]); });
    return table;
}

std::string as_text(const CutList &list, const Table &table, const std::string &what) {
    const bool weights = what == "cut" || what == "pieces" || what == "totals";
    return to_text(without_paragraphs(table, what)) + (weights ? weight_words(list) : "");
}

ExitCode run_list(const Console &console, const ListOptions &options) {
    if (console.json && options.csv) throw UsageError("choose either --json or --csv");
    std::optional<UnitSystem> units;
    if (!options.units.empty()) units = units_value(options.units);
    (void)chosen({}, options.what); // a wrong name is told before a long document is read
    auto loaded = load(console, options.file, units);
    if (const auto *code = std::get_if<ExitCode>(&loaded)) return *code;
    const ExportJob &job = std::get<Loaded>(loaded).job;
    std::vector<double> volumes;
    for (const Body &body : job.bodies)
        volumes.push_back(body.volume);
    const CutList list = collect_cut_list(job.shell, job.layout, volumes);
    const Table table = chosen(list, options.what);
    if (console.json) return console.print(to_json(table));
    if (options.csv) return console.print(to_csv(table));
    return console.print(as_text(list, table, options.what));
}

} // namespace

CommandRun declare_list(CLI::App &app) {
    auto options = std::make_shared<ListOptions>();
    app.add_option("FILE", options->file, "the document; - reads from the standard input")->required();
    app.add_option("WHAT", options->what, "cut (distinct pieces), pieces (every tag), pegs, order or totals")
        ->capture_default_str();
    app.add_flag("--csv", options->csv, "as CSV (RFC 4180), with all columns");
    app.add_option("--units", options->units, "metric or imperial instead of the document's own")
        ->type_name("SYSTEM");
    return [options](const Console &console) { return run_list(console, *options); };
}

} // namespace roundlay
