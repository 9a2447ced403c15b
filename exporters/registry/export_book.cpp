#include "exporters/registry/make_picture.h"
#include "exporters/registry/paper.h"
#include "exporters/sheets/drawing/words.h"
#include "exporters/sheets/pdf/pdf.h"
#include "kernel/layout/courses/standing.h"
#include "kernel/stock/totals.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace roundlay {

namespace {

/// As large as a picture is where nothing else is asked for, so that it is drawn once for both: on paper that
/// is half a page wide at 200 dots per inch.
constexpr PictureOptions on_paper{};

std::string wood_words(const Wood &wood, const Voice &voice) {
    const std::string species = voice.word(species_of(wood));
    return wood.species.empty() ? voice.say("%1, as none is stated", species) : species;
}

/// Where there are several, each with how many pieces are of it.
std::string wood_words(const Shell &shell, const Layout &layout, const Voice &voice) {
    std::map<std::string, std::size_t> pieces;
    for (const Piece &piece : layout.pieces)
        ++pieces[wood_of(shell, piece.species).species];
    std::string all;
    for (const auto &[species, count] : pieces) {
        Wood wood = shell.wood;
        wood.species = species;
        const std::string one = wood_words(wood, voice);
        all += (all.empty() ? "" : ", ") + (pieces.size() == 1 ? one : voice.say("%1 (%2)", one, count));
    }
    return all;
}

std::string amount_words(const Figure &figure, const sheets::Words &words) {
    switch (figure.of) {
    case FigureOf::things:
        return std::to_string(std::llround(figure.amount));
    case FigureOf::length:
        return words.length(figure.amount);
    case FigureOf::sawn_wood:
    case FigureOf::wood:
        break;
    }
    return words.volume(figure.amount);
}

std::vector<std::pair<std::string, std::string>> facts_of(const ExportJob &job) {
    const sheets::Words words(job.shell.units, 16, job.options.language);
    const Voice voice = voice_of(job);
    const Totals sums = totals_of(job.shell, job.layout, job.bodies);
    const auto warnings = std::count_if(job.findings.begin(), job.findings.end(),
                                        [](const Finding &f) { return f.weight == Weight::warning; });
    std::vector<std::pair<std::string, std::string>> facts{
        {voice.say("Walls"), std::to_string(job.layout.walls.size())},
        {voice.say("Rounds"), voice.words(round_words(job.layout))},
        {voice.say("Stands"), voice.words(height_words(job.layout, job.shell.units))},
        {voice.say("Wood"), wood_words(job.shell, job.layout, voice)},
        {voice.say("Logs"), voice.say("%1, %2 distinct", sums.pieces, sums.models)},
    };
    for (const Figure &figure : sums.figures)
        if (figure.on_cover) facts.emplace_back(voice.words(*figure.on_cover), amount_words(figure, words));
    if (sums.weights_known())
        facts.emplace_back(voice.say("Weight, estimated"), words.weights(sums.low_kg, sums.high_kg));
    else
        facts.emplace_back(voice.say("Weight"), voice.words(not_weighed_words(sums, job.layout)));
    facts.emplace_back(voice.say("Warnings of the check"), std::to_string(warnings));
    return facts;
}

/// A machine that can make no picture still gets its book.
sheets::BookWords words_of(const ExportJob &job) {
    sheets::BookWords words;
    words.facts = facts_of(job);
    words.cautions = paper_cautions(voice_of(job));
    PictureOptions wanted = job.options.picture;
    wanted.width = on_paper.width;
    wanted.height = on_paper.height;
    auto picture = make_picture(job, wanted);
    if (auto *png = std::get_if<std::string>(&picture)) {
        words.picture_png = std::move(*png);
        words.pictured = voice_of(job).words(pictured(job.options.picture.view));
    }
    return words;
}

} // namespace

std::optional<ExportFailure> export_book(const ExportJob &job, OutputFolder &folder, Progress &progress) {
    const auto composed = sheets_of(job, sheets::whole_set(job.layout, may_come_down(job)), "book", progress);
    if (progress.cancelled()) return stopped();
    const sheets::BookWords words = words_of(job); // its picture takes the most memory: before the copies
    const sheets::Book book = sheets::bound_book(job.shell, sheet_options(job), words, copied(composed));
    return add_file(folder, "book.pdf", sheets::write_pdf(book), book.subject);
}

} // namespace roundlay
