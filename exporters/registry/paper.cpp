#include "exporters/registry/paper.h"

#include "exporters/lists/found_words.h"
#include "exporters/lists/list_cells.h"
#include "exporters/sheets/cut_sheet/cut_sheet.h"
#include "exporters/sheets/cut_sheet/warnings.h"
#include "exporters/sheets/pdf/pdf.h"
#include "kernel/compare/cuts_to_make.h"
#include "kernel/stock/lifted.h"
#include "kernel/threads/for_each_index.h"

#include <array>
#include <chrono>
#include <cstdio>

namespace roundlay {

namespace {

/// Year-month-day in UTC.
std::string day_of(std::int64_t seconds_since_1970) {
    using namespace std::chrono;
    const year_month_day day{floor<days>(sys_seconds{seconds{seconds_since_1970}})};
    std::array<char, 32> room{};
    std::snprintf(room.data(), room.size(), "%04d-%02u-%02u", static_cast<int>(day.year()),
                  static_cast<unsigned>(day.month()), static_cast<unsigned>(day.day()));
    return room.data();
}

/// Empty where the record says nothing of any piece.
Indexed<sheets::FoundNote, Piece> found_notes(const ExportJob &job) {
    Indexed<sheets::FoundNote, Piece> notes(job.layout.pieces.size());
    bool any = false;
    const Voice voice = voice_of(job.shell, job.layout, job.options.language);
    const auto found = found_words(*job.record, job.layout, voice);
    for (const Index<Piece> piece : job.layout.pieces.indices()) {
        notes[piece] = {found[piece].phrases, found[piece].pegs};
        any = any || !notes[piece].is_empty();
    }
    return any ? notes : Indexed<sheets::FoundNote, Piece>();
}

} // namespace

sheets::SheetOptions sheet_options(const ExportJob &job) {
    sheets::SheetOptions options;
    options.paper = job.options.paper;
    options.labels = sheets::stock_of(job.options.labels);
    const Project &project = job.shell.project;
    options.fields.number = project.number, options.fields.owner = project.owner;
    options.fields.creator = project.creator, options.fields.approved = project.approved;
    options.fields.revision = project.revision;
    options.fields.date = day_of(sheets::book_time());
    options.fields.language = job.options.language;
    options.warnings = sheets::warnings_by_model(job.findings, job.shell, job.layout, job.options.language);
    options.found = found_notes(job);
    options.to_make = cuts_to_make(found_layout(job), job.layout);
    options.ticked = ticked_of(*job.record, job.layout, job.shell.state);
    options.weight = [&job](const Piece &piece, const Body &body) -> std::optional<sheets::WeightNote> {
        const Lifted l = lifted(job.shell, piece, body.volume);
        if (!l.piece.known) return {};
        const Voice voice = voice_of(job);
        return sheets::WeightNote{l.piece.low_kg, l.piece.high_kg,           voice.words(l.piece.basis),
                                  l.blank.low_kg, l.blank.high_kg,           l.log.low_kg,
                                  l.log.high_kg,  voice.word(weight_caution)};
    };
    return options;
}

std::vector<sheets::SharedSheets> sheets_of(const ExportJob &job, const sheets::SheetSet &set,
                                            std::string_view doing, Progress &progress) {
    const sheets::SheetOptions options = sheet_options(job);
    const auto go_on = [&](std::size_t done) {
        progress.at(doing, static_cast<int>(done), static_cast<int>(set.size()));
        return !progress.cancelled();
    };
    return sheets::composed(set, {job.shell, job.layout, job.bodies, options}, *job.composed, all_cores(),
                            go_on);
}

sheets::OnlyPieces only_pieces(const ExportJob &job) {
    if (job.options.pieces.is_all()) return {};
    return chosen_of(job).pieces;
}

sheets::SharedSheets cut_sheet_of(const ExportJob &job, Index<Model> model) {
    const sheets::SheetOptions options = sheet_options(job);
    return job.composed->of(sheets::cut_sheet_subject(job.layout, model),
                            {job.shell, job.layout, job.bodies, options});
}

std::vector<std::string> paper_cautions(const Voice &voice) {
    return {
        voice.say("Drawings show what was stated in the document and what follows from it, never an "
                  "approval: loads, foundations, openings, fastenings and bearings are for local code and "
                  "a licensed professional to decide."),
        voice.word(weight_caution),
        voice.say("Check the first log of each kind against its sheet and its neighbours before the next "
                  "are cut. Wood moves as it dries: dimensions are those of the day of cutting.")};
}

std::string paper_title(const ExportJob &job, const Said &what) {
    const Voice voice = voice_of(job);
    return voice.say("%1: %2", called(job.shell).empty() ? voice.say("Log shell") : called(job.shell),
                     voice.words(what));
}

std::vector<sheets::Sheet> copied(const std::vector<sheets::SharedSheets> &composed) {
    std::vector<sheets::Sheet> all;
    for (const sheets::SharedSheets &some : composed)
        all.insert(all.end(), some->begin(), some->end());
    return all;
}

std::optional<ExportFailure> add_pdf(const ExportJob &job, OutputFolder &folder, const PaperFile &file,
                                     Progress &progress) {
    sheets::Book book;
    book.title = paper_title(job, file.what);
    book.subject = voice_of(job).words(file.what);
    book.language = tag_of(job.options.language);
    book.sheets = copied(sheets_of(job, file.set, file.doing, progress));
    if (progress.cancelled()) return stopped();
    sheets::number_pages(book.sheets);
    return add_file(folder, file.name, sheets::write_pdf(book), Voice().words(file.what));
}

} // namespace roundlay
