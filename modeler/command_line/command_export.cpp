#include "exporters/files/terminal_progress.h"
#include "exporters/registry/export_all.h"
#include "exporters/registry/make_picture.h"
#include "exporters/router/program.h"
#include "exporters/words/words.h"
#include "modeler/command_line/command.h"
#include "modeler/command_line/export_options.h"
#include "modeler/command_line/interrupts.h"
#include "modeler/command_line/load.h"
#include "modeler/command_line/values.h"

#include <CLI/CLI.hpp>
#include <nlohmann/json.hpp>

#include <algorithm>

namespace roundlay {

namespace {

struct ExportWords {
    DocumentWords document;
    std::string folder, units;
    TypedOptions options;
    std::vector<std::string> only, without, pieces;
    bool force = false;
};

bool has(const std::vector<std::string> &names, std::string_view name) {
    return std::find(names.begin(), names.end(), name) != names.end();
}

std::string made_of_pieces() {
    std::string names;
    for (const Exporter &exporter : all_exporters())
        if (exporter.of_pieces) names += (names.empty() ? "" : ", ") + std::string(exporter.name);
    return names;
}

/// Names that there are, and such that leave something: known before anything is read.
void check_names(const ExportWords &words) {
    std::vector<std::string> names;
    for (const Exporter &exporter : all_exporters())
        names.emplace_back(exporter.name);
    for (const auto *list : {&words.only, &words.without})
        for (const std::string &name : *list)
            (void)one_of("exporter", name, names);
    const std::vector<std::string> &wanted = words.only.empty() ? names : words.only;
    if (std::ranges::all_of(wanted, [&](const std::string &name) { return has(words.without, name); }))
        throw UsageError("--only and --without leave nothing to export");
    if (words.pieces.empty()) return;
    for (const std::string &name : words.only)
        if (!exporter_named(name)->of_pieces && !has(words.without, name))
            throw UsageError("--pieces: \"" + name + "\" shows the whole shell; of some pieces can be made " +
                             made_of_pieces());
}

std::vector<const Exporter *> chosen(const ExportWords &words, const ExportJob &job) {
    std::vector<const Exporter *> exporters;
    for (const Exporter &exporter : all_exporters())
        if ((words.only.empty() ? exporter.usual(job) : has(words.only, exporter.name)) &&
            !has(words.without, exporter.name) && (words.pieces.empty() || exporter.of_pieces))
            exporters.push_back(&exporter);
    return exporters;
}

ExitCode code_of(Trouble trouble) {
    switch (trouble) {
    case Trouble::file:
    case Trouble::in_the_way:
        return ExitCode::unwritable;
    case Trouble::picture:
        return ExitCode::no_picture;
    case Trouble::nothing:
    case Trouble::refused:
        return ExitCode::findings;
    case Trouble::cancelled:
        return ExitCode::interrupted;
    case Trouble::failed:
        return ExitCode::failed;
    }
    return ExitCode::failed;
}

/// More than the manifest.
bool made_some(const ExportReport &report) {
    return report.written.size() > 1;
}

bool has_programs(const ExportReport &report) {
    return std::ranges::any_of(report.written,
                               [](const OutputFile &file) { return file.name.rfind("router/", 0) == 0; });
}

/// A kind of which this shell has nothing is only a failure where nothing else was asked for.
ExitCode code_of(const ExportReport &report, ExitCode printed) {
    for (const ExportFailure &failure : report.left_out)
        if (failure.trouble != Trouble::nothing || !made_some(report)) return code_of(failure.trouble);
    return printed;
}

void tell(const Console &console, const ExportReport &report, const std::string &folder) {
    std::uint64_t bytes = 0;
    for (const OutputFile &file : report.written) {
        bytes += file.bytes;
        console.detail("wrote " + folder + "/" + file.name + ", " + std::to_string(file.bytes) +
                       " bytes: " + file.what);
    }
    constexpr std::uint64_t kb = 1000;
    console.hint("wrote " + std::to_string(report.written.size()) + " files, " +
                 std::to_string((bytes + kb - 1) / kb) + " kB, to " + folder);
    if (report.folders.size() > 1) // one is what was asked for; more may be a slip of the pen
        console.warn("there was no folder \"" + report.folders.front() + "\": it was made, and in it \"" +
                     report.folders.back() + "\"");
    for (const ExportFailure &failure : report.left_out)
        failure.trouble == Trouble::nothing &&made_some(report) ? console.warn(failure.message)
                                                                : console.error(failure.message);
    if (!report.outdated.empty())
        console.warn(std::to_string(report.outdated.size()) + " files in \"" + folder +
                     "\" are of an earlier state of the document, or of another, among them " +
                     report.outdated.front() + "; export everything to bring them up to date");
}

/// Says each stage once as it begins, instead of the line that is drawn anew.
class ToldProgress : public Progress {
  public:
    explicit ToldProgress(const Console &console) : console_(console) {}
    void at(std::string_view doing, int, int) override {
        if (doing != doing_) console_.detail(doing_ = doing);
    }
    bool cancelled() const override { return CatchInterrupts::raised(); }

  private:
    const Console &console_;
    std::string doing_;
};

std::variant<ExportReport, ExportFailure> run_exporters(const Console &console, const ExportJob &job,
                                                        const std::vector<const Exporter *> &exporters,
                                                        const ExportWords &words) {
    const CatchInterrupts interrupts;
    const IfThere own = words.force ? IfThere::replace : IfThere::refuse;
    TerminalProgress drawn(console.quiet ? -1 : STDERR_FILENO, [] { return CatchInterrupts::raised(); });
    ToldProgress told(console);
    Progress &progress = console.verbose ? static_cast<Progress &>(told) : drawn;
    return export_all(job, exporters, words.folder, progress, own);
}

ExitCode run_export(const Console &console, const ExportWords &words) {
    check_names(words);
    if (words.folder == "-")
        throw UsageError(
            "--to -: an export is a folder of files and cannot go to the standard output; name a "
            "folder (./- for one of that name)");
    check_words(words.options);
    std::optional<UnitSystem> units;
    if (!words.units.empty()) units = units_value(words.units);
    auto loaded = load(console, words.document, units);
    if (const auto *code = std::get_if<ExitCode>(&loaded)) return *code;
    ExportJob &job = std::get<Loaded>(loaded).job;
    job.options.language = console.language;
    job.options.pieces = piece_choice(words.pieces);
    take_options(words.options, job.shell.units, job.options);
    const auto exporters = chosen(words, job);
    if (exporters.empty()) throw UsageError("--without leaves nothing to export");
    const auto outcome = run_exporters(console, job, exporters, words);
    if (const auto *failure = std::get_if<ExportFailure>(&outcome)) {
        console.error(failure->message + (failure->trouble == Trouble::in_the_way ? " with --force" : ""));
        return code_of(failure->trouble);
    }
    const ExportReport &report = std::get<ExportReport>(outcome);
    tell(console, report, words.folder);
    if (has_programs(report)) console.warn(voice_of(job).words(router_caution()));
    const ExitCode printed = console.json ? console.print(manifest_json(report.manifest)) : ExitCode::fine;
    return code_of(report, printed);
}

std::string only_help() {
    std::string help =
        "only some of these, separated by commas (left out: all but print, stl, router and ifc, "
        "and forms where the document has a record):";
    for (const Exporter &exporter : all_exporters())
        help += "\n" + std::string(exporter.name) + ": " + words_of(exporter.makes, {});
    return help;
}

} // namespace

CommandRun declare_export(CLI::App &app) {
    auto words = std::make_shared<ExportWords>();
    add_document(app, words->document);
    app.add_option(
           "--to", words->folder,
           "the folder to write to; made where it is missing, and so are those above it, which is said then")
        ->type_name("DIR")
        ->required();
    app.add_option("--only", words->only, only_help())->type_name("NAMES")->delimiter(',');
    app.add_option("--without", words->without, "all but these")->delimiter(',')->type_name("NAMES");
    app.add_option(
           "--pieces", words->pieces,
           "of these pieces alone, separated by commas: tags (A-05-1), how tags begin (A, A-05), what is "
           "written on a log, new (new wood), mended (mended logs with their new wood) or cut (logs in "
           "which something is to be cut, new wood too); left out: all. Made are " +
               made_of_pieces() + "; equal pieces share one sheet and file, called by the first of them")
        ->delimiter(',')
        ->type_name("PIECES");
    app.add_option("--units", words->units, "metric or imperial instead of the document's own")
        ->type_name("SYSTEM");
    for (const ExportOption &option : all_export_options())
        add_export_option(app, words->options, option);
    app.add_flag(
        "--force", words->force,
        "replace files of your own in the folder too: those that no export made, or that were changed since; "
        "and those made from another document");
    return [words](const Console &console) { return run_export(console, *words); };
}

} // namespace roundlay
