#include "exporters/registry/export_all.h"

#include "exporters/registry/exporters.h"
#include "exporters/registry/version.h"
#include "kernel/measure/nearest_name.h"

#include <algorithm>
#include <stdexcept>

namespace roundlay {

namespace {

constexpr std::size_t largest_manifest = std::size_t{64} << 20;

/// Libraries throw; people get a sentence.
std::optional<ExportFailure> run_guarded(const Exporter &exporter, const ExportJob &job, OutputFolder &folder,
                                         Progress &progress) {
    try {
        folder.set_maker(exporter.name);
        return exporter.run(job, folder, progress);
    } catch (const std::logic_error &) {
        throw; // the program's own mistake
    } catch (const std::exception &cause) {
        return ExportFailure{Trouble::failed,
                             "the exporter \"" + std::string(exporter.name) + "\" failed: " + cause.what()};
    }
}

/// Neither of these is mended by trying again, and what the exporter once made is not of this shell as it is
/// asked for now.
bool leaves_none(Trouble trouble) {
    return trouble == Trouble::nothing || trouble == Trouble::refused;
}

std::optional<Manifest> earlier_manifest(const std::filesystem::path &folder) {
    const auto bytes = read_file(folder / manifest_name, largest_manifest);
    const auto *text = std::get_if<std::string>(&bytes);
    return text ? parse_manifest(*text) : std::nullopt;
}

bool has(const std::vector<OutputFile> &files, const std::string &name) {
    return std::any_of(files.begin(), files.end(), [&](const OutputFile &f) { return f.name == name; });
}

/// What an earlier export left in the folder: some is listed on, some goes, some is only told of.
void settle_earlier(const std::vector<std::string> &makers, OutputFolder &folder, ExportReport &report) {
    const auto earlier = earlier_manifest(folder.path());
    if (!earlier) return;
    const EarlierFiles sorted = earlier_files(folder.path(), *earlier, report.manifest, makers);
    for (const OutputFile &file : sorted.replaced)
        if (!has(folder.files(), file.name)) folder.drop(file.name);
    for (const OutputFile &file : sorted.kept)
        if (!has(report.manifest.files, file.name)) report.manifest.files.push_back(file);
    for (const OutputFile &file : sorted.outdated) {
        if (has(report.manifest.files, file.name)) continue;
        report.manifest.files.push_back(file); // else no later export would know whose it is
        report.outdated.push_back(file.name);
    }
}

std::vector<Manifest> known_manifests(const OutputFolder &folder) {
    std::vector<Manifest> known;
    if (auto manifest = earlier_manifest(folder.path())) known.push_back(std::move(*manifest));
    for (const std::string &text : folder.left_behind(manifest_name))
        if (auto manifest = parse_manifest(text)) known.push_back(std::move(*manifest));
    return known;
}

std::optional<ExportFailure> spare_own_files(const OutputFolder &folder) {
    const auto names = own_files(folder.path(), known_manifests(folder), folder.files());
    if (names.empty()) return {};
    constexpr std::size_t most_named = 5;
    std::string named;
    for (std::size_t i = 0; i < std::min(names.size(), most_named); ++i)
        named += (i ? ", " : "") + names[i];
    if (names.size() > most_named) named += " and " + std::to_string(names.size() - most_named) + " more";
    return ExportFailure{Trouble::in_the_way,
                         "files of your own stand in the way in \"" + folder.path().string() +
                             "\" (made by no export, or changed since): " + named +
                             "; nothing was written; move them, choose another folder, or replace them"};
}

Manifest manifest_of(const ExportJob &job) {
    return {
        std::string(program_version), job.shell.name, job.document, job.document_sha256, {}, job.shell.state};
}

/// What another house, or another state of it, was made of is not replaced unasked: the two would lie mixed,
/// or one be gone.
std::optional<ExportFailure> spare_another(const ExportJob &job, const OutputFolder &folder) {
    const auto earlier = earlier_manifest(folder.path());
    if (!earlier) return {};
    const bool document = is_of_another_document(*earlier, manifest_of(job));
    if (!document && !is_of_another_state(*earlier, manifest_of(job))) return {};
    std::string other = earlier->document;
    if (!earlier->shell.empty())
        other += (other.empty() ? "\"" : " (\"") + earlier->shell + (other.empty() ? "\"" : "\")");
    const std::string from =
        document ? "another document, " + other : "another state of the house, \"" + earlier->state + "\"";
    return ExportFailure{Trouble::in_the_way,
                         "the files in \"" + folder.path().string() + "\" were made from " + from +
                             "; nothing was written; choose another folder, or replace them"};
}

std::optional<ExportFailure> finish(const ExportJob &job, const std::vector<std::string> &makers,
                                    OutputFolder &folder, ExportReport &report, IfThere own) {
    report.manifest = manifest_of(job);
    report.manifest.files = folder.files();
    settle_earlier(makers, folder, report);
    folder.set_maker("");
    if (auto failure = add_file(folder, manifest_name, manifest_json(report.manifest), "this list"))
        return failure;
    if (own == IfThere::refuse)
        if (auto failure = spare_own_files(folder)) return failure;
    report.written = folder.files();
    if (auto error = folder.commit()) return ExportFailure{Trouble::file, error->message};
    return {};
}

std::string unknown_piece(const ExportJob &job, const ChosenPieces &chosen, const Voice &voice) {
    std::vector<std::string> known;
    for (const Piece &piece : job.layout.pieces)
        for (const std::string *name : {&piece.tag, &piece.mark})
            if (!name->empty()) known.push_back(*name);
    const std::string &typed = chosen.unknown.front();
    if (const auto nearest = nearest_name(typed, known))
        return voice.say("there is no piece \"%1\"; did you mean \"%2\"?", typed, *nearest);
    return voice.say("there is no piece \"%1\": a piece is called by its tag, such as %2, by how tags begin, "
                     "or by what is written on its log",
                     typed, known.empty() ? std::string() : known.front());
}

/// Names that no piece has, or nothing that is of the stated sorts.
std::optional<ExportFailure> no_such_pieces(const ExportJob &job) {
    if (job.options.pieces.is_all()) return {};
    const ChosenPieces chosen = chosen_of(job);
    const Voice voice = voice_of(job);
    if (!chosen.unknown.empty()) return ExportFailure{Trouble::nothing, unknown_piece(job, chosen, voice)};
    if (!chosen.pieces.empty()) return {};
    return ExportFailure{Trouble::nothing,
                         voice.say("no piece of this shell is of what was chosen; nothing was written")};
}

/// What it made of all pieces stays beside what it makes of some.
bool replaces_earlier(const ExportJob &job, const Exporter &exporter) {
    return job.options.pieces.is_all() || !exporter.of_pieces;
}

/// It and those above it that are not there yet.
std::vector<std::string> missing_folders(std::filesystem::path folder) {
    std::vector<std::string> missing;
    std::error_code ignored;
    if (!folder.has_filename()) folder = folder.parent_path(); // written with a slash behind it
    for (; !folder.empty() && !std::filesystem::exists(folder, ignored); folder = folder.parent_path())
        missing.insert(missing.begin(), folder.string());
    return missing;
}

} // namespace

std::variant<ExportReport, ExportFailure> export_all(const ExportJob &job,
                                                     const std::vector<const Exporter *> &exporters,
                                                     const std::filesystem::path &folder, Progress &progress,
                                                     IfThere own) {
    if (auto failure = no_such_pieces(job)) return *failure;
    std::vector<std::string> missing = missing_folders(folder);
    auto opened = OutputFolder::open(folder);
    if (const auto *error = std::get_if<FileError>(&opened))
        return ExportFailure{Trouble::file, error->message};
    OutputFolder &out = std::get<OutputFolder>(opened);
    if (own == IfThere::refuse)
        if (auto failure = spare_another(job, out)) return *failure;
    ExportReport report;
    report.folders = std::move(missing);
    std::vector<std::string> makers;
    for (const Exporter *exporter : exporters) {
        if (progress.cancelled()) return stopped();
        auto failure = run_guarded(*exporter, job, out, progress);
        const bool settled = !failure || leaves_none(failure->trouble);
        if (!settled && failure->trouble != Trouble::picture) return *failure;
        if (failure) report.left_out.push_back(*failure);
        if (settled && replaces_earlier(job, *exporter))
            makers.emplace_back(exporter->name); // what it once made goes
    }
    if (progress.cancelled()) return stopped();
    if (auto failure = finish(job, makers, out, report, own)) return *failure;
    return report;
}

} // namespace roundlay
