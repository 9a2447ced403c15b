#include "exporters/files/safe_file.h"
#include "exporters/sheets/drawing/sheet.h"
#include "exporters/words/voice.h"
#include "kernel/document/restate.h"
#include "kernel/layout/lay_out.h"
#include "kernel/measure/character.h"
#include "kernel/survey/survey_sheet.h"
#include "kernel/survey/survey_words.h"
#include "modeler/command_line/command.h"
#include "modeler/command_line/load.h"
#include "modeler/command_line/pile_input.h"
#include "modeler/command_line/save.h"
#include "modeler/command_line/values.h"

#include <CLI/CLI.hpp>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <filesystem>

namespace roundlay {

namespace {

constexpr std::size_t largest_table = std::size_t{16} << 20;

struct SurveyOptions {
    DocumentWords document;
    std::string rows, to = "-";
    bool blank = false, replace = false, force = false;
};

Voice voice_of(const Console &console) {
    return Voice({console.language, UnitSystem::metric});
}

bool is_spreadsheet(const std::string &path) {
    return lower_case(std::filesystem::path(path).extension().string()) == ".xlsx";
}

std::string in_json(const SurveyTable &table) {
    nlohmann::ordered_json rows = nlohmann::ordered_json::array();
    for (const auto &row : table.rows) {
        nlohmann::ordered_json cells;
        for (std::size_t i = 0; i < row.size(); ++i)
            if (!row[i].empty()) cells[table.columns[i]] = row[i];
        rows.push_back(std::move(cells));
    }
    return nlohmann::ordered_json{{"columns", table.columns}, {"rows", rows}}.dump(2) + "\n";
}

ExitCode save_table(const Console &console, const Input &input, const SurveyOptions &options,
                    const SurveyTable &table) {
    const std::string title = input.read.shell->name;
    const std::string bytes = is_spreadsheet(options.to) ? survey_xlsx(table, title, sheets::book_time())
                              : console.json             ? in_json(table)
                                                         : survey_csv(table);
    return save(console, options.to, bytes, options.force);
}

Record to_measure(const Record &record, const Shell &shell, const Layout &layout) {
    return with_logs_to_measure(with_house_to_measure(record, shell, layout), layout);
}

ExitCode write_rows(const Console &console, const Input &input, const SurveyOptions &options) {
    const Shell &shell = *input.read.shell;
    const Record &record = input.read.record;
    if (!options.blank && record.logs.empty()) {
        console.error(voice_of(console).say(
            "%1: no log is recorded in this document; --blank gives rows to fill in", input.file));
        return ExitCode::findings;
    }
    const SurveyStyle style{console.language == Language::french, options.blank};
    return save_table(
        console, input, options,
        survey_table(options.blank ? to_measure(record, shell, lay_out(shell)) : record, style));
}

std::string told(const Console &console, const SurveyConflict &conflict, bool replace) {
    const Voice voice = voice_of(console);
    const std::string of =
                          conflict.of.empty() ? conflict.tag : voice.say("%1, %2", conflict.tag, conflict.of),
                      key = survey_column_name(conflict.key, console.language == Language::french);
    const std::string both = voice.say("%1: %2 is \"%3\" in the document and \"%4\" in the rows", of, key,
                                       conflict.stands, conflict.other);
    if (conflict.key == "sheet")
        return voice.say("%1; numbers of two sheets cannot stand in one log, and the rows' are left out",
                         both);
    return replace ? voice.say("%1; the rows' stands now", both)
                   : voice.say("%1; the document's has stayed", both);
}

std::string told(const Console &console, const SurveyDoubt &doubt) {
    const Voice voice = voice_of(console);
    if (doubt.key.empty()) return voice.say("%1: %2", doubt.tag, doubt.what);
    return voice.say("%1, column \"%2\": %3", doubt.tag,
                     survey_column_name(doubt.key, console.language == Language::french), doubt.what);
}

/// Where it stands; else, where its log does.
int line_of(const SurveyRead &read, const std::string &tag, const std::string &of) {
    auto line = read.lines.find({tag, of});
    if (line == read.lines.end()) line = read.lines.find({tag, ""});
    return line == read.lines.end() ? 1 : line->second;
}

/// "log 52, end 104, peg 3": by what the rows are called.
std::string counts_of(const SurveyRead &read, bool in_french) {
    std::string text;
    for (const SurveyCount &part : read.counts)
        if (part.count > 0)
            text += (text.empty() ? "" : ", ") + (in_french ? part.french : part.name) + " " +
                    std::to_string(part.count);
    return text.empty() ? "-" : text;
}

std::string summary(const Voice &voice, const SurveyRead &read, const Merged &merged) {
    const auto unmeasured =
        std::ranges::count_if(read.record.logs, [](const FoundLog &log) { return !is_measured(log); });
    const std::string text = voice.say(
        "%1 rows read: %2; %3 rows or cells not taken. In the document: %4 new logs, %5 new values in "
        "logs that were there",
        read.rows, counts_of(read, voice.language() == Language::french), read.not_taken, merged.logs,
        merged.values);
    return unmeasured == 0
               ? text
               : voice.say("%1; of %2 logs they say nothing yet but where they lie", text, unmeasured);
}

/// What has come in, and what speaks against what stood there.
void tell(const Console &console, const SurveyOptions &options, const SurveyRead &read, const Merged &merged,
          const Shell &shell) {
    std::vector<CsvProblem> conflicts, doubts;
    for (const SurveyConflict &conflict : merged.conflicts)
        conflicts.push_back(
            {line_of(read, conflict.tag, conflict.of), told(console, conflict, options.replace)});
    for (const SurveyDoubt &doubt : doubtful_sizes(merged.record, lay_out(shell)))
        if (read.lines.contains({doubt.tag, ""}) || read.lines.contains({doubt.tag, doubt.of}))
            doubts.push_back({line_of(read, doubt.tag, doubt.of), told(console, doubt)});
    options.replace ? tell_warnings(console, options.rows, conflicts)
                    : tell_errors(console, options.rows, conflicts);
    tell_warnings(console, options.rows, doubts);
    if (!merged.conflicts.empty() && !options.replace)
        console.hint(voice_of(console).say("--replace takes what the rows say"));
    console.tell(summary(voice_of(console), read, merged));
    if (options.to == "-") return;
    const bool whole = read.problems.empty() && (merged.conflicts.empty() || options.replace);
    console.tell(
        whole ? voice_of(console).say("written: %1", options.to)
              : voice_of(console).say("written all the same, without what was not taken: %1", options.to));
}

ExitCode take_rows(const Console &console, const Input &input, const SurveyOptions &options) {
    if (is_spreadsheet(options.to))
        throw UsageError("--to is the document that the rows go into, and no .xlsx");
    const auto bytes = read_file(options.rows, largest_table);
    if (const auto *error = std::get_if<FileError>(&bytes)) {
        console.error(error->message);
        return ExitCode::unreadable;
    }
    const Shell &shell = *input.read.shell;
    const SurveyRead read = read_survey(std::get<std::string>(bytes), shell, input.read.record);
    tell_errors(console, options.rows, read.problems);
    tell_warnings(console, options.rows, read.notices);
    const Merged merged = roundlay::merged(input.read.record, read.record, options.replace);
    const auto edited = restated(Document(input.bytes, input.file), input.read.record, merged.record);
    if (const auto *problem = std::get_if<Problem>(&edited)) {
        console.error(to_text(*problem));
        return ExitCode::unreadable;
    }
    const ExitCode saved = save(console, options.to, std::get<Document>(edited).text(), options.force);
    if (saved != ExitCode::fine) return saved;
    tell(console, options, read, merged, shell);
    const bool open = !read.problems.empty() || (!merged.conflicts.empty() && !options.replace);
    return open ? ExitCode::findings : ExitCode::fine;
}

ExitCode run_survey(const Console &console, const SurveyOptions &options) {
    const Input input = read_input(options.document);
    tell_problems(console, input);
    if (!input.read.shell) return failed(console, input, nullptr, ExitCode::unreadable);
    return options.rows.empty() ? write_rows(console, input, options) : take_rows(console, input, options);
}

} // namespace

CommandRun declare_survey(CLI::App &app) {
    auto o = std::make_shared<SurveyOptions>();
    add_document(app, o->document);
    CLI::Option *blank = app.add_flag("--blank", o->blank,
                                      "all columns, and rows to fill in for logs that are not recorded yet");
    CLI::Option *rows =
        app.add_option("--rows", o->rows,
                       "a table that was filled in: CSV or XLSX, in the columns that this command prints, "
                       "in English or French. What is wrong is told with its line, and the rest "
                       "is taken")
            ->type_name("TABLE")
            ->excludes(blank);
    app.add_option("--to", o->to,
                   "the file to write: the table, as XLSX where its name ends in .xlsx, else as CSV; with "
                   "--rows the document; - writes to the standard output")
        ->type_name("FILE")
        ->capture_default_str();
    app.add_flag("--replace", o->replace, "take what the rows say where the document says otherwise")
        ->needs(rows);
    app.add_flag("--force", o->force, "replace a file that is there");
    return [o](const Console &console) { return run_survey(console, *o); };
}

} // namespace roundlay
