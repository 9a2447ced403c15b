#include "exporters/lists/compare_table.h"
#include "exporters/lists/list_cells.h"
#include "exporters/registry/paper.h"
#include "exporters/report/comparison.h"
#include "exporters/sheets/pdf/pdf.h"
#include "exporters/words/words.h"
#include "kernel/measure/plain_numbers.h"
#include "modeler/command_line/command.h"
#include "modeler/command_line/load.h"
#include "modeler/command_line/save.h"
#include "modeler/command_line/values.h"

#include <CLI/CLI.hpp>
#include <nlohmann/json.hpp>

#include <algorithm>

namespace roundlay {

namespace {

struct CompareOptions {
    std::string file, from, to, pdf;
    bool csv = false, force = false;
};

struct Two {
    const ExportJob &before, &after;
    std::vector<ComparedPiece> pieces;
    bool put_level = false; ///< one of them, for the other one stands so
};

std::string in_json(const Two &two, const Table &table) {
    constexpr int indent = 2;
    nlohmann::ordered_json counts;
    for (const auto &[what, count] : change_counts(two.pieces))
        counts[key_of(what)] = count;
    const nlohmann::ordered_json all = {{"shell", two.after.shell.name},
                                        {"from", two.before.shell.state},
                                        {"to", two.after.shell.state},
                                        {"counts", counts},
                                        {"pieces", nlohmann::ordered_json::parse(to_json(table))}};
    return with_short_numbers(
               all.dump(indent, ' ', false, nlohmann::ordered_json::error_handler_t::replace)) +
           "\n";
}

std::string as_text(const Two &two, const Table &table, const Voice &voice) {
    const std::string heading = voice.say("From %1 to %2: %3.", two.before.shell.state, two.after.shell.state,
                                          change_words(two.pieces, voice));
    const std::string level =
        two.put_level ? voice.say("Both are shown level, on the new foundation: lifting what had sunk "
                                  "changes no wood.") +
                            "\n"
                      : "";
    return heading + "\n" + level + (table.rows.empty() ? "" : "\n" + to_text(table, voice.language()));
}

/// The same document in another state, read from the same bytes: a pipe comes but once.
std::variant<Loaded, ExitCode> in_state(const Console &console, const Loaded &loaded,
                                        const std::string &state) {
    Input input{loaded.input.file, loaded.input.bytes, {}};
    input.read = read_document(input.bytes, input.file, state);
    tell_problems(console, input);
    if (!input.read.shell) return failed(console, input, nullptr, ExitCode::unreadable);
    ExportJob job = told_job(console, input, *input.read.shell);
    if (has_errors(job.findings)) return failed(console, input, &job, ExitCode::findings);
    return Loaded{std::move(input), std::move(job)};
}

/// Where the other one stands level on a new foundation: laid out so as well, that what lies elsewhere only
/// because a corner was lifted is not taken for other wood.
bool put_level(const Console &console, Loaded &loaded, const Loaded &other) {
    ReadResult &read = loaded.input.read;
    if (!other.input.read.levelled_on || read.levelled_on || !read.measured_on) return false;
    read.levelled_on = read.shell;
    const auto record = loaded.job.record;
    loaded.job = told_job(console, loaded.input, *read.shell);
    loaded.job.record = record;
    return true;
}

/// The same on paper: each wall with what differs.
ExitCode save_sheets(const Console &console, const CompareOptions &options, const Two &two) {
    const sheets::SheetOptions before = sheet_options(two.before), after = sheet_options(two.after);
    sheets::Book book;
    book.title = paper_title(two.after, said("two states side by side"));
    book.language = tag_of(console.language);
    book.sheets =
        sheets::comparison_sheets({two.before.shell, two.before.layout, two.before.bodies, before},
                                  {two.after.shell, two.after.layout, two.after.bodies, after}, two.pieces);
    sheets::number_pages(book.sheets);
    return save(console, options.pdf, sheets::write_pdf(book), options.force);
}

ExitCode run_compare(const Console &console, const CompareOptions &options) {
    if (console.json && options.csv) throw UsageError("choose either --json or --csv");
    auto before = load(console, {options.file, options.from});
    if (const auto *code = std::get_if<ExitCode>(&before)) return *code;
    auto after = in_state(console, std::get<Loaded>(before), options.to);
    if (const auto *code = std::get_if<ExitCode>(&after)) return *code;
    const bool level = put_level(console, std::get<Loaded>(before), std::get<Loaded>(after)) ||
                       put_level(console, std::get<Loaded>(after), std::get<Loaded>(before));
    const ExportJob &a = std::get<Loaded>(before).job, &b = std::get<Loaded>(after).job;
    const Two two{a, b, compared(a.layout, b.layout), level};
    const Voice voice = voice_of(b.shell, b.layout, console.language);
    const Table table = compare_table(two.pieces, a.layout, b.layout, voice);
    if (!options.pdf.empty())
        if (const ExitCode saved = save_sheets(console, options, two); saved != ExitCode::fine) return saved;
    if (options.pdf == "-") return ExitCode::fine;
    if (console.json) return console.print(in_json(two, table));
    return console.print(options.csv ? to_csv(table) : as_text(two, table, voice));
}

} // namespace

CommandRun declare_compare(CLI::App &app) {
    auto options = std::make_shared<CompareOptions>();
    app.add_option("FILE", options->file, "the document; - reads from the standard input")->required();
    app.add_option("--from", options->from, "the state that is compared; left out, the document's own shell")
        ->type_name("NAME");
    app.add_option("--to", options->to, "the state that it is compared with")->type_name("NAME")->required();
    app.add_option(
           "--pdf", options->pdf,
           "a PDF to write beside the list: each wall with what is new, gone, longer, shorter, re-cut "
           "and moved; - writes it alone to the standard output")
        ->type_name("PDF");
    app.add_flag("--force", options->force, "replace a PDF that is there");
    app.add_flag("--csv", options->csv, "as CSV (RFC 4180), with all columns");
    return [options](const Console &console) { return run_compare(console, *options); };
}

} // namespace roundlay
