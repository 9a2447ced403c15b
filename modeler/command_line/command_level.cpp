#include "exporters/lists/level_table.h"
#include "exporters/lists/state_column.h"
#include "exporters/words/words.h"
#include "kernel/levelling/slivers.h"
#include "kernel/measure/plain_numbers.h"
#include "kernel/shell/weight_words.h"
#include "modeler/command_line/command.h"
#include "modeler/command_line/findings.h"
#include "modeler/command_line/own_logs.h"
#include "modeler/command_line/pile_input.h"
#include "modeler/command_line/values.h"

#include <CLI/CLI.hpp>
#include <nlohmann/json.hpp>

#include <algorithm>

namespace roundlay {

namespace {

struct LevelOptions {
    DocumentWords document;
    std::string pile, to;
    bool csv = false, force = false;
};

/// What was found out, and how the walls stand with it.
struct Found {
    const ExportJob &job;
    const std::vector<PileLog> &pile;
    const Levelled &levelled;
    const Layout &standing; ///< the shell with these logs
    Findings findings;      ///< what the check says of it that it does not say without them
};

Findings brought_by(const Findings &with, const Findings &without) {
    Findings brought;
    for (const Finding &f : with)
        if (f.weight != Weight::note && std::ranges::none_of(without, [&](const Finding &o) {
                return o.code == f.code && o.about == f.about;
            }))
            brought.push_back(f);
    return brought;
}

/// Levelled tops are not all: a log may come to end a hand over a door.
std::string brought_words(const Findings &findings, const Speech &speech) {
    if (findings.empty()) return "";
    const Voice voice(speech);
    std::string text = voice.say("With them the check finds what it does not find without:") + "\n";
    for (const FindingLine &line : grouped_lines(
             findings, speech, [](const Finding &f) { return std::string(name_of(f.weight)) + ": "; }))
        text += line.text + "\n";
    if (!std::ranges::any_of(findings,
                             [](const Finding &f) { return first_of<about::Opening>(f.about) != nullptr; }))
        return text;
    return text +
           voice.say("Move the sill or the top of such an opening, or lay other logs there, before these are "
                     "cut.") +
           "\n";
}

nlohmann::ordered_json brought_json(const Findings &findings, const Speech &speech) {
    auto all = nlohmann::ordered_json::array();
    for (const Finding &f : findings)
        all.push_back({{"weight", name_of(f.weight)},
                       {"code", f.code},
                       {"place", words_of(f.about, speech)},
                       {"message", message_of(f, speech)}});
    return all;
}

std::string in_json(const Found &f) {
    constexpr int indent = 2;
    const auto json = [](const Table &table) { return nlohmann::ordered_json::parse(to_json(table)); };
    const nlohmann::ordered_json all = {
        {"summary", json(level_summary(f.levelled, f.standing)).at(0)},
        {"findings", brought_json(f.findings, voice_of(f.job).speech())},
        {"logs", json(with_state(level_table(f.job.layout, voice_of(f.job).speech(), f.pile, f.levelled),
                                 f.job.shell))}};
    return with_short_numbers(all.dump(indent)) + "\n";
}

ExitCode show(const Console &console, const LevelOptions &options, const Found &f) {
    const Speech speech = voice_of(f.job).speech();
    if (console.json) return console.print(in_json(f));
    const Table table = with_state(level_table(f.job.layout, speech, f.pile, f.levelled), f.job.shell);
    if (options.csv) return console.print(to_csv(table));
    return console.print(state_words(f.job.shell, Voice(speech)) + to_text(table, speech.language) + "\n" +
                         level_words(f.levelled, f.standing, speech) + brought_words(f.findings, speech));
}

std::optional<std::string> no_levelling(const Shell &shell) {
    if (shell.notch.kind != NotchKind::saddle) return {};
    return "logs scoped over one another are even cylinders, and every round rises by the pitch whatever log "
           "lies in it: "
           "there is nothing to level; state each log's diameter instead, or take in a list of them with "
           "roundlay record";
}

std::variant<Levelled, std::string> levelled_by(const ExportJob &job, const std::vector<PileLog> &pile) {
    const auto places = log_places(job.shell, job.layout, pile);
    if (const auto *why = std::get_if<std::string>(&places)) return *why;
    auto result = level_logs(pile, std::get<std::vector<LogPlace>>(places), job.shell.units);
    if (auto *levelled = std::get_if<Levelled>(&result)) shun_slivers(job.shell, pile, *levelled);
    return result;
}

/// The state that is asked for is not the document's own shell.
bool is_changed(const Loaded &it) {
    return !it.input.read.states.empty() && it.job.shell.state != it.input.read.states.front().name;
}

/// What a state says as a document of its own, in which logs can be stated.
Input by_itself(const Loaded &it) {
    if (!is_changed(it)) return it.input;
    Input alone{it.input.file, write_document(it.job.shell), {}};
    alone.read = read_document(alone.bytes, alone.file);
    return alone;
}

/// Shows the choice and, where that is asked for, writes the document that states it.
ExitCode show_and_save(const Console &console, const LevelOptions &options, const Found &found,
                       const StatedLogs &made) {
    if (options.to.empty()) return show(console, options, found);
    if (has_errors(made.job.findings)) {
        if (options.to != "-") (void)show(console, options, found);
        console.error(options.to +
                      " is not written: with these logs the shell cannot be built as it is stated; what "
                      "stands above says where.");
        return ExitCode::findings;
    }
    if (options.to != "-")
        if (const ExitCode shown = show(console, options, found); shown != ExitCode::fine) return shown;
    return save_with_logs(console, made, options.to, options.force);
}

ExitCode state_levelled(const Console &console, const LevelOptions &options, const Loaded &it,
                        const std::vector<PileLog> &pile, const Levelled &levelled) {
    const auto logs = own_logs(it.job.layout, it.job.shell.units, pile, levelled);
    const auto stated = state_logs(console, by_itself(it), it.job.shell, logs, options.to);
    if (const auto *code = std::get_if<ExitCode>(&stated)) return *code;
    const StatedLogs &made = std::get<StatedLogs>(stated);
    const Found found{it.job, pile, levelled, made.job.layout,
                      brought_by(made.job.findings, it.job.findings)};
    return show_and_save(console, options, found, made);
}

ExitCode run_level(const Console &console, const LevelOptions &options) {
    auto loaded = load(console, options.document);
    if (const auto *code = std::get_if<ExitCode>(&loaded)) return *code;
    const Loaded &it = std::get<Loaded>(loaded);
    if (!options.to.empty() && is_changed(it))
        throw UsageError("--to states the logs in the document's own shell, and --state " +
                         options.document.state + " is another; leave one of them out");
    if (const auto why = no_levelling(it.job.shell)) {
        console.error(options.document.file + ": " + *why);
        return ExitCode::findings;
    }
    const auto read = pile_from(console, options.pile);
    if (!read || !read->problems.empty()) return ExitCode::unreadable;
    const std::vector<PileLog> &pile = read->rows;
    const auto result = levelled_by(it.job, pile);
    if (const auto *why = std::get_if<std::string>(&result)) {
        console.error(options.pile + ": " + *why);
        return ExitCode::findings;
    }
    return state_levelled(console, options, it, pile, std::get<Levelled>(result));
}

} // namespace

CommandRun declare_level(CLI::App &app) {
    auto o = std::make_shared<LevelOptions>();
    add_document(app, o->document);
    app.add_option("--pile", o->pile,
                   "the measured logs: CSV with the columns mark, length, butt_height, tip_height and, where "
                   "measured, butt_width, tip_width; lengths with their unit. In French: marque, longueur, "
                   "hauteur gros bout, "
                   "hauteur petit bout, largeur gros bout, largeur petit bout")
        ->required()
        ->type_name("CSV");
    app.add_option("--to", o->to, "also write the document with these logs stated; - prints it alone")
        ->type_name("DOCUMENT");
    app.add_flag("--csv", o->csv, "the table as CSV (RFC 4180)");
    app.add_flag("--force", o->force, "replace a document that is there");
    return [o](const Console &console) { return run_level(console, *o); };
}

} // namespace roundlay
