#include "exporters/lists/bore_table.h"
#include "exporters/lists/down_table.h"
#include "exporters/lists/fabric_table.h"
#include "exporters/lists/found_words.h"
#include "exporters/lists/list_cells.h"
#include "exporters/lists/progress_words.h"
#include "exporters/lists/schema.h"
#include "exporters/lists/shell_tables.h"
#include "exporters/lists/state_column.h"
#include "exporters/lists/tables.h"
#include "exporters/registry/record_tables.h"
#include "exporters/registry/shared_order.h"
#include "kernel/review/floor_screen.h"
#include "kernel/review/opening_facts.h"
#include "kernel/trade/settling.h"
#include "modeler/command_line/command.h"
#include "modeler/command_line/findings.h"
#include "modeler/command_line/load.h"
#include "modeler/command_line/values.h"

#include <CLI/CLI.hpp>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <cstdio>
#include <sstream>

namespace roundlay {

namespace {

struct ListOptions {
    DocumentWords document;
    std::string what = "cut", units, schema;
    bool csv = false;
};

struct Listed {
    const ExportJob &job;
    const Record &record;
    const CutList &list;
    const Shell &shell;
    const Layout &layout;
    const Bodies &bodies;
    const Layout &found; ///< of the house as it was found: what the record's logs are pieces of
    const Bodies &found_bodies;
    Language language = Language::english;

    Voice voice() const { return Voice({language, shell.units}); }
    Site site() const { return site_of(job, record); }
};

FabricFigures figures_of(const Listed &l, std::optional<std::size_t> decisions = {}) {
    return fabric_by(l.job, l.record, decisions);
}

/// With what stayed before each change of mind.
Table fabric_of(const Listed &l) {
    if (l.record.logs.empty()) return {};
    const FabricFigures now = figures_of(l);
    std::vector<FabricFigures> earlier;
    for (std::size_t i = 1; i < now.most; ++i)
        earlier.push_back(figures_of(l, i));
    return fabric_table(now, earlier, l.voice());
}

struct NamedTable {
    const char *name;
    Table (*make)(const Listed &);
};

constexpr NamedTable tables[] = {
    {"cut", [](const Listed &l) { return model_table(l.list); }},
    {"pieces", [](const Listed &l) { return piece_table(l.list); }},
    {"pegs", [](const Listed &l) { return peg_table(l.list); }},
    {"order", [](const Listed &l) { return order_table(l.list); }},
    {"totals", [](const Listed &l) { return total_table(l.list); }},
    {"bores", [](const Listed &l) { return bore_table(l.shell, l.layout, l.language); }},
    {"openings", [](const Listed &l) { return opening_table(l.shell, l.layout, l.language); }},
    {"floors", [](const Listed &l) { return floor_table(l.shell, l.layout, l.language); }},
    {"taking-down",
     [](const Listed &l) { return down_table(l.list, l.layout, l.site(), taking_down(l.layout, l.bodies)); }},
    {"raising", [](const Listed &l) { return raising_table(l.list, l.layout, l.site()); }},
    {"decisions", [](const Listed &l) { return decision_table(l.record, l.found, l.voice()); }},
    {"fabric", fabric_of},
    {"seams", [](const Listed &l) { return seam_table(l.shell, l.language); }}};

/// The list's own name, or a UsageError that tells those that there are.
std::string named(const std::string &what) {
    std::vector<std::string> names;
    for (const NamedTable &table : tables)
        names.emplace_back(table.name);
    return one_of("list", what, names);
}

Table chosen(const Listed &listed, const std::string &what) {
    const std::string name = named(what);
    for (const NamedTable &table : tables)
        if (name == table.name) return table.make(listed);
    return {};
}

/// Where the logs lie is known before anything is cut into them, so a wrong opening does not hide where it
/// would fit.
bool has_seams(const Shell &shell) {
    return !seam_table(shell).rows.empty();
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
    const Voice &voice = list.voice;
    const std::string missing = list.not_weighed.empty()
                                    ? ""
                                    : "\n" + wrapped(voice.say("Weight of all pieces: %1", list.not_weighed));
    return missing + "\n" + wrapped(voice.say("Weights: %1", list.weight_basis)) +
           (list.weights_known ? "\n" + wrapped(voice.word(weight_caution)) : "");
}

struct SettlingRules {
    std::vector<std::string> rules, names; ///< of each the openings that share it
};

SettlingRules settling_rules(const Listed &listed, const Voice &voice) {
    SettlingRules all;
    auto &[rules, names] = all;
    for (const OpeningFacts &facts : opening_facts(listed.shell, listed.layout)) {
        const std::string rule = voice.words(facts.settle_basis), name = voice.name(facts.name);
        const auto known = std::find(rules.begin(), rules.end(), rule);
        if (known == rules.end()) {
            rules.push_back(rule);
            names.push_back(name);
        } else {
            names[static_cast<std::size_t>(known - rules.begin())] += ", " + name;
        }
    }
    return all;
}

/// The rule of each opening's settle space, said once where openings share it.
std::string settling_words(const Listed &listed) {
    const Voice voice = voice_of(listed.shell, listed.layout, listed.language);
    const auto [rules, names] = settling_rules(listed, voice);
    std::string text;
    for (std::size_t i = 0; i < rules.size(); ++i)
        text += "\n" + wrapped(voice.say("Settle space of %1: %2.", names[i], rules[i]));
    return text + "\n" + wrapped(voice.word(settling_caution));
}

/// Rows that hold a paragraph instead of an amount are not for a table on a terminal.
Table without_paragraphs(Table table, const std::string &what) {
    if (what == "totals")
        std::erase_if(table.rows,
                      [](const auto &row) { return std::holds_alternative<std::string>(row[1]); });
    return table;
}

bool is_order_of_work(const std::string &what) {
    return what == "taking-down" || what == "raising";
}

/// What must be known to read that list; empty where it says all itself.
std::string note_on(const Listed &listed, const std::string &what) {
    const Voice voice = listed.voice();
    if (what == "pegs" && !listed.list.pegs.empty()) return voice.say("Pegs: %1.", peg_words(listed.list));
    if (what == "floors" && !listed.layout.timbers.empty())
        return voice.words(screen_floors(listed.shell, listed.layout).basis);
    if (what == "seams")
        return voice.say(
            "Heights are over the foundation. A sill or a head of an opening anywhere between one "
            "log's top and the under face of the log over it leaves no sliver of wood.");
    if (is_order_of_work(what)) return order_caution(voice);
    return "";
}

std::string as_text(const Listed &listed, const Table &table, const std::string &what) {
    const bool weights =
        what == "cut" || what == "pieces" || what == "totals" || what == "order" || is_order_of_work(what);
    std::string text = to_text(without_paragraphs(table, what), listed.voice().language());
    if (weights) text += weight_words(listed.list);
    if (const std::string note = note_on(listed, what); !note.empty()) text += "\n" + wrapped(note);
    if (is_order_of_work(what))
        for (const std::string &paragraph :
             progress_words(listed.list.voice, listed.shell, listed.layout, listed.bodies, listed.site(),
                            what == "raising" ? Deed::up : Deed::down))
            text += "\n" + wrapped(paragraph);
    if (what == "openings") text += settling_words(listed);
    if (what == "fabric")
        for (const std::string &paragraph : fabric_words(figures_of(listed), listed.voice()))
            text += "\n" + wrapped(paragraph);
    return text;
}

/// Old wood is summed over the house as it was found: where that cannot be laid out, no figure is known.
bool lacks_found_house(const Console &console, const Input &input, const ExportJob &job) {
    if (!job.found || !has_errors(job.found->layout.findings)) return false;
    for (const FindingLine &line : finding_lines(input, job, job.found->layout.findings))
        if (line.weight == Weight::error) std::fputs((line.text + "\n").c_str(), stderr);
    const Shell &found = job.found->shell;
    console.error(
        Voice({console.language, job.shell.units})
            .say("%1: the house as it was found (%2) cannot be laid out, so that no figure of its wood "
                 "is known: mend what is wrong in that state first",
                 input.file, found.state.empty() ? found.name : found.state));
    return true;
}

/// That of all lists, narrowed to the one.
std::string schema_of(const std::string &what) {
    nlohmann::ordered_json schema = nlohmann::ordered_json::parse(lists_schema());
    schema.erase("anyOf");
    schema["allOf"] = {{{"$ref", "#/definitions/" + named(what)}}};
    return schema.dump(1) + "\n";
}

ExitCode run_list(const Console &console, const ListOptions &options) {
    if (!options.schema.empty()) {
        if (!options.document.file.empty())
            throw UsageError("--schema is of every document; leave " + options.document.file + " out");
        return console.print(schema_of(options.schema));
    }
    if (options.document.file.empty()) throw UsageError("FILE is required");
    if (console.json && options.csv) throw UsageError("choose either --json or --csv");
    std::optional<UnitSystem> units;
    if (!options.units.empty()) units = units_value(options.units);
    (void)chosen({{}, {}, {}, {}, {}, {}, {}, {}},
                 options.what); // a wrong name is told before a long document is read
    auto loaded = load(console, options.document, units, options.what == "seams" ? has_seams : nullptr);
    if (const auto *code = std::get_if<ExitCode>(&loaded)) return *code;
    const ExportJob &job = std::get<Loaded>(loaded).job;
    const Record &record = std::get<Loaded>(loaded).input.read.record;
    if (options.what == "fabric" && lacks_found_house(console, std::get<Loaded>(loaded).input, job))
        return ExitCode::findings;
    CutList list = collect_cut_list(job.shell, job.layout, volumes_of(job.bodies), console.language);
    tell_found(list, record, job.layout);
    const Listed listed{job,
                        record,
                        list,
                        job.shell,
                        job.layout,
                        job.bodies,
                        found_layout(job),
                        found_bodies(job),
                        console.language};
    const Shell &of = options.what == "fabric" ? counted_shell(job) : job.shell;
    const Table table = with_state(chosen(listed, options.what), of);
    if (console.json) return console.print(to_json(table));
    if (options.csv) return console.print(to_csv(table));
    if (table.rows.empty()) {
        console.error(options.document.file + ": there are no " + options.what + " in this shell");
        return ExitCode::findings;
    }
    return console.print(state_words(of, listed.voice()) + as_text(listed, table, options.what));
}

} // namespace

CommandRun declare_list(CLI::App &app) {
    auto options = std::make_shared<ListOptions>();
    add_document(app, options->document);
    app.add_option(
           "WHAT", options->what,
           "cut (distinct pieces), pieces (every tag), pegs, bores, order, totals, openings, floors, "
           "taking-down, raising, decisions (about logs that were found), fabric (how much of the old "
           "wood stays) or seams "
           "(heights at which a sill or head leaves no sliver)")
        ->capture_default_str();
    app.add_flag("--csv", options->csv, "as CSV (RFC 4180), with all columns");
    app.add_option("--units", options->units, "metric or imperial instead of the document's own")
        ->type_name("SYSTEM");
    app.add_option("--schema", options->schema,
                   "a JSON Schema of that list as --json prints it, without FILE")
        ->type_name("WHAT");
    app.get_option("FILE")->required(false);
    return [options](const Console &console) { return run_list(console, *options); };
}

} // namespace roundlay
