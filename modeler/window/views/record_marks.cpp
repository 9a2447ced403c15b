#include "modeler/window/views/record_marks.h"

#include "exporters/report/found_numbers.h"
#include "exporters/words/voice.h"
#include "kernel/fabric/fabric.h"
#include "kernel/progress/ticked.h"
#include "kernel/record/found_words.h"
#include "kernel/record/numbers.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/record/found_words.h"
#include "modeler/window/views/tints.h"

#include <QCoreApplication>
#include <algorithm>

namespace roundlay::window {

namespace {

class Words {
    Q_DECLARE_TR_FUNCTIONS(RecordMarks)
};

// Neither of the patterns that mark what is chosen or cannot be built.
constexpr Qt::BrushStyle patterns[] = {Qt::NoBrush,       Qt::Dense7Pattern, Qt::HorPattern,  Qt::VerPattern,
                                       Qt::Dense5Pattern, Qt::CrossPattern,  Qt::FDiagPattern};
constexpr QRgb fills[] = {0xffd9d3c6, 0xff9cc59a, 0xffb8d3e2, 0xffcdbfe0, 0xffe9c27a, 0xffd98a72, 0xff9a9a9a};

RecordMark mark(std::size_t at, const QString &words) {
    return {QColor(fills[at]), QColor(0x30, 0x30, 0x30), patterns[at], words};
}

std::vector<RecordMark> all_of(const QStringList &words) {
    std::vector<RecordMark> all;
    for (const QString &each : words)
        all.push_back(mark(all.size(), each));
    return all;
}

/// The worse, the higher. 2: told in words alone.
std::size_t rank_of(Soundness what) {
    constexpr std::size_t ranks[] = {1, 3, 4, 5, 6};
    return ranks[static_cast<std::size_t>(what)];
}

std::size_t decision_of(const FoundLog &log) {
    if (log.decisions.empty()) return 0;
    return static_cast<std::size_t>(std::ranges::find(all_decisions, log.decisions.back().what) -
                                    std::begin(all_decisions)) +
           1;
}

/// Of what a log is: its zones, pegs and cuts say nothing about how large it is.
bool is_size(const std::string &path) {
    return path.starts_with(".end[") || path.starts_with(".station[") || path == ".length" ||
           path == ".between_shoulders";
}

/// 0 nothing is recorded of its size, 1 measured, 2 partly, 3 proposed only, 4 something is contradicted. As
/// the report asks: a log is measured where somebody noted a height or a width of it, and nothing is
/// proposed.
std::size_t certainty_of(const FoundLog &log) {
    bool measured = false, proposed = false, contradicted = false;
    each_number_of(log, {}, [&](const NumberAt &at, const NotedLength &number) {
        contradicted = contradicted || number.certainty == Certainty::contradicted;
        if (!is_size(at.path)) return;
        measured = measured || number.certainty == Certainty::measured;
        proposed = proposed || number.certainty == Certainty::proposed;
    });
    if (contradicted) return 4;
    if (!measured) return proposed ? 3 : 0;
    return proposed || !sheets::has_a_size(log) ? 2 : 1;
}

std::size_t mark_of(const FoundLog &log, Colouring colouring) {
    switch (colouring) {
    case Colouring::condition:
        return condition_mark(log, log.zones);
    case Colouring::decision:
        return decision_of(log);
    case Colouring::certainty:
        return certainty_of(log);
    default:
        return 0;
    }
}

} // namespace

bool is_of_record(Colouring colouring) {
    return colouring == Colouring::condition || colouring == Colouring::decision ||
           colouring == Colouring::certainty || colouring == Colouring::progress;
}

namespace {

/// What is not there yet is pale beside what is.
std::vector<RecordMark> progress_marks() {
    constexpr QRgb pale = 0xfff0ece2,
                   colours[] = {pale, 0xffa9a49a, 0xffb8d3e2, 0xffcdbfe0, 0xffb98a4f, 0xff7a5a36};
    std::vector<RecordMark> marks =
        all_of({Words::tr("nothing is ticked"), Words::tr("taken down"), Words::tr("cut"),
                Words::tr("checked"), Words::tr("up"), Words::tr("pegged")});
    for (std::size_t i = 0; i < marks.size(); ++i)
        marks[i].fill = QColor(colours[i]);
    return marks;
}

/// What was done last in the order of the work.
std::size_t progress_of(const Ticked &ticked, Index<Piece> piece) {
    for (std::size_t i = deeds; i > 0; --i)
        if (ticked.is(piece, all_deeds[i - 1])) return i;
    return 0;
}

Indexed<std::size_t, Piece> progress_of_pieces(const Record &record, const ExportJob &job) {
    const Ticked ticked = ticked_of(record, job.layout, job.shell.state);
    Indexed<std::size_t, Piece> marks(job.layout.pieces.size());
    for (const Index<Piece> piece : job.layout.pieces.indices())
        marks[piece] = progress_of(ticked, piece);
    return marks;
}

} // namespace

std::vector<RecordMark> record_marks(Colouring colouring) {
    if (colouring == Colouring::progress) return progress_marks();
    if (colouring == Colouring::condition)
        return all_of({Words::tr("no condition recorded"), soundness_word(Soundness::sound),
                       Words::tr("told in words"), soundness_word(Soundness::checked),
                       soundness_word(Soundness::soft), soundness_word(Soundness::rotten),
                       soundness_word(Soundness::missing)});
    if (colouring == Colouring::certainty)
        return all_of({Words::tr("not recorded: by the plan alone"), certainty_word(Certainty::measured),
                       Words::tr("partly measured"), Words::tr("proposed only"),
                       certainty_word(Certainty::contradicted)});
    QStringList words{Words::tr("not decided")};
    for (const Decision each : all_decisions)
        words << decision_word(each);
    return all_of(words);
}

Indexed<std::size_t, Piece> marked_pieces(const Record &record, const ExportJob &job, Colouring colouring) {
    if (colouring == Colouring::progress) return progress_of_pieces(record, job);
    Indexed<std::size_t, Piece> marks(job.layout.pieces.size());
    for (const DecidedLog &log : decided_logs(record, job.layout))
        for (const Index<Piece> piece : log.found_as)
            marks[piece] = std::max(marks[piece], mark_of(record.logs[log.log], colouring));
    return marks;
}

std::size_t condition_mark(Soundness what) {
    return rank_of(what);
}

namespace {

/// What is said of the whole log in one of the words for zones, in either language, is known as that.
std::size_t rank_of(const std::string &condition) {
    if (condition.empty()) return 0;
    const QString said = text(condition).trimmed();
    for (const Soundness what : all_soundnesses)
        for (const Language in : {Language::english, Language::french})
            if (said.compare(text(Voice({in, UnitSystem::metric}).words(said_of(what))),
                             Qt::CaseInsensitive) == 0)
                return rank_of(what);
    return 2;
}

} // namespace

/// 0 where nobody said; of several zones the worst.
std::size_t condition_mark(const FoundLog &log, const std::vector<ConditionZone> &zones) {
    std::size_t worst = rank_of(log.condition);
    for (const ConditionZone &zone : zones)
        worst = std::max(worst == 2 ? 0 : worst, rank_of(zone.what));
    return worst;
}

RecordMark soundness_mark(Soundness what) {
    return record_marks(Colouring::condition)[rank_of(what)];
}

std::vector<LegendEntry> record_legend(Colouring colouring, bool in_model) {
    std::vector<LegendEntry> entries;
    for (const RecordMark &each : record_marks(colouring))
        entries.push_back({each.fill, tints().wood_edge, each.pattern, each.lines, each.words});
    if (colouring == Colouring::condition)
        entries.push_back({Qt::transparent, Qt::transparent, Qt::NoBrush, Qt::transparent,
                           in_model ? Words::tr("zones where they are: the wider the bands, the worse")
                                    : Words::tr("zones where they are; dashed: on the inside")});
    return entries;
}

} // namespace roundlay::window
