// Parts of a log's record that come as often as they were found.
#include "modeler/window/record/found_words.h"
#include "modeler/window/record/record_boxes.h"

#include <QCoreApplication>
#include <algorithm>

namespace roundlay::window {

namespace {

class Lists {
    Q_DECLARE_TR_FUNCTIONS(RecordBoxes)
};

/// None of them, then the words.
template <typename Word, std::size_t N> QStringList shown_of(const Word (&all)[N], QString (*word)(Word)) {
    QStringList shown{QString()};
    for (const Word each : all)
        shown << word(each);
    return shown;
}

/// Which of these rows shows it.
template <typename Word> int row_of(const std::vector<Word> &values, const Word &value) {
    return static_cast<int>(std::ranges::find(values, value) - values.begin()) + 1;
}

/// The boxes of one part of a list, by its number in it.
template <typename Part> struct Of {
    std::vector<Part> FoundLog::*list;
    std::size_t at;
    QString before;

    const Part *part(const FoundLog &log) const {
        const auto &all = log.*list;
        return at < all.size() ? &all[at] : nullptr;
    }
    static Part &made(FoundLog &log, std::vector<Part> FoundLog::*list, std::size_t at) {
        auto &all = log.*list;
        if (at >= all.size()) all.resize(at + 1);
        return all[at];
    }
    RecordBox number(const char *name, const QString &label, NotedLength Part::*member) const {
        return {before + QString::fromLatin1(name), label,
                NumberBox{[list = list, at = at, member](FoundLog &log, bool make) -> NotedLength * {
                    if (at >= (log.*list).size() && !make) return nullptr;
                    return &(made(log, list, at).*member);
                }}};
    }
    RecordBox words(const char *name, const QString &label, std::string Part::*member) const {
        return {before + QString::fromLatin1(name), label,
                WordsBox{[of = *this, member](const FoundLog &log) {
                             const Part *there = of.part(log);
                             return there == nullptr ? std::string() : there->*member;
                         },
                         [list = list, at = at, member](FoundLog &log, const std::string &typed) {
                             made(log, list, at).*member = typed;
                         }}};
    }
    /// One of the words, or none of them: then it is not said.
    template <typename Word, std::size_t N>
    RecordBox one_or_none(const char *name, const QString &label, std::optional<Word> Part::*member,
                          const Word (&all)[N], QString (*word)(Word)) const {
        const std::vector<Word> values(all, all + N);
        return {before + QString::fromLatin1(name), label,
                ChoiceBox{shown_of(all, word),
                          [of = *this, member, values](const FoundLog &log) {
                              const Part *there = of.part(log);
                              if (there == nullptr || !(there->*member)) return 0;
                              return row_of(values, *(there->*member));
                          },
                          [list = list, at = at, member, values](FoundLog &log, int chosen) {
                              std::optional<Word> &there = made(log, list, at).*member;
                              there.reset();
                              if (chosen > 0) there = values[static_cast<std::size_t>(chosen - 1)];
                          }}};
    }
    /// None of the words takes the part out.
    template <typename Word, std::size_t N>
    RecordBox choice(const char *name, const QString &label, Word Part::*member, const Word (&all)[N],
                     QString (*word)(Word)) const {
        const std::vector<Word> values(all, all + N);
        return {before + QString::fromLatin1(name), label,
                ChoiceBox{shown_of(all, word),
                          [of = *this, member, values](const FoundLog &log) {
                              const Part *there = of.part(log);
                              if (there == nullptr) return 0;
                              return row_of(values, there->*member);
                          },
                          [list = list, at = at, member, values](FoundLog &log, int chosen) {
                              auto &parts = log.*list;
                              if (chosen > 0)
                                  made(log, list, at).*member = values[static_cast<std::size_t>(chosen - 1)];
                              else if (at < parts.size())
                                  parts.erase(parts.begin() + static_cast<std::ptrdiff_t>(at));
                          }}};
    }
};

template <typename Part> Of<Part> of(std::vector<Part> FoundLog::*list, const char *name, std::size_t at) {
    return {list, at, QStringLiteral("%1%2_").arg(QLatin1String(name)).arg(at)};
}

template <typename Part> auto counted(std::vector<Part> FoundLog::*list) {
    return [list](const FoundLog &log) { return (log.*list).size(); };
}

std::vector<RecordBox> station_boxes(std::size_t at) {
    const auto part = of(&FoundLog::stations, "station", at);
    return {part.number("at", Lists::tr("At"), &FoundStation::at),
            part.number("height", Lists::tr("Height"), &FoundStation::height),
            part.number("width", Lists::tr("Width"), &FoundStation::width),
            part.number("gap_below", Lists::tr("Gap below"), &FoundStation::gap_below),
            part.number("gap_above", Lists::tr("Gap above"), &FoundStation::gap_above),
            part.words("note", Lists::tr("Note"), &FoundStation::note)};
}

std::vector<RecordBox> zone_boxes(std::size_t at) {
    const auto part = of(&FoundLog::zones, "zone", at);
    const RecordBox faces{part.before + QStringLiteral("faces"), Lists::tr("On faces"),
                          FacesBox{[at](const FoundLog &log) {
                                       return at < log.zones.size() ? log.zones[at].faces
                                                                    : std::vector<FoundFace>();
                                   },
                                   [at](FoundLog &log, const std::vector<FoundFace> &chosen) {
                                       if (at < log.zones.size()) log.zones[at].faces = chosen;
                                   }}};
    return {part.choice("what", Lists::tr("Wood is"), &ConditionZone::what, all_soundnesses, soundness_word),
            part.number("from", Lists::tr("From"), &ConditionZone::from),
            part.number("to", Lists::tr("To"), &ConditionZone::to),
            faces,
            part.number("depth", Lists::tr("How deep"), &ConditionZone::depth),
            part.words("note", Lists::tr("Note"), &ConditionZone::note)};
}

std::vector<RecordBox> peg_boxes(std::size_t at) {
    const auto part = of(&FoundLog::pegs, "peg", at);
    return {part.choice("state", Lists::tr("Peg is"), &FoundPeg::state, all_peg_states, peg_state_word),
            part.number("at", Lists::tr("At"), &FoundPeg::at),
            part.number("diameter", Lists::tr("Diameter"), &FoundPeg::diameter),
            part.number("depth", Lists::tr("Depth"), &FoundPeg::depth),
            part.words("note", Lists::tr("Note"), &FoundPeg::note)};
}

QString season_word(Season season) {
    switch (season) {
    case Season::summer:
        return Lists::tr("summer");
    case Season::autumn:
        return Lists::tr("autumn");
    case Season::winter:
        return Lists::tr("winter");
    case Season::spring:
        break;
    }
    return Lists::tr("spring");
}

constexpr Season all_seasons[] = {Season::spring, Season::summer, Season::autumn, Season::winter};

std::vector<RecordBox> test_boxes(std::size_t at) {
    const auto part = of(&FoundLog::tests, "test", at);
    return {part.words("tool", Lists::tr("Tried with"), &WoodTest::tool),
            part.number("at", Lists::tr("At"), &WoodTest::at),
            part.one_or_none("face", Lists::tr("On face"), &WoodTest::face, all_faces, face_word),
            part.number("depth", Lists::tr("How deep"), &WoodTest::depth),
            part.words("showed", Lists::tr("What it showed"), &WoodTest::showed)};
}

/// Nothing typed takes the reading out. What is no number is given to the document, which says what it
/// expects.
void set_percent(FoundLog &log, std::size_t at, const std::string &typed) {
    if (typed.empty()) {
        if (at < log.moistures.size())
            log.moistures.erase(log.moistures.begin() + static_cast<std::ptrdiff_t>(at));
        return;
    }
    constexpr double no_number = -1;
    if (at >= log.moistures.size()) log.moistures.resize(at + 1);
    bool read = false;
    const double percent =
        QString::fromStdString(typed).remove(u'%').trimmed().replace(u',', u'.').toDouble(&read);
    log.moistures[at].percent = read ? percent : no_number;
}

std::vector<RecordBox> moisture_boxes(std::size_t at) {
    const auto part = of(&FoundLog::moistures, "moisture", at);
    const RecordBox percent{
        part.before + QStringLiteral("percent"), Lists::tr("Moisture, percent"),
        WordsBox{[part](const FoundLog &log) {
                     const MoistureReading *there = part.part(log);
                     return there == nullptr ? std::string() : QString::number(there->percent).toStdString();
                 },
                 [at](FoundLog &log, const std::string &typed) { set_percent(log, at, typed); }}};
    return {
        percent,
        part.number("at", Lists::tr("At"), &MoistureReading::at),
        part.one_or_none("face", Lists::tr("On face"), &MoistureReading::face, all_faces, face_word),
        part.number("depth", Lists::tr("How deep"), &MoistureReading::depth),
        part.one_or_none("season", Lists::tr("Season"), &MoistureReading::season, all_seasons, season_word),
        part.words("probe", Lists::tr("Probe"), &MoistureReading::probe)};
}

std::vector<RecordBox> later_cut_boxes(std::size_t at) {
    const auto part = of(&FoundLog::later_cuts, "later_cut", at);
    return {part.words("what", Lists::tr("What was cut"), &LaterCut::what),
            part.number("at", Lists::tr("At"), &LaterCut::at),
            part.words("why", Lists::tr("Why one thinks so"), &LaterCut::why)};
}

template <typename Part> void drop_blank(std::vector<Part> &parts, const Part &blank) {
    std::erase(parts, blank);
}

} // namespace

std::vector<RecordList> lists_of_log() {
    return {
        {QStringLiteral("stations"), Lists::tr("Measured along the log"), counted(&FoundLog::stations),
         station_boxes},
        {QStringLiteral("zones"), Lists::tr("Zones of its wood"), counted(&FoundLog::zones), zone_boxes},
        {QStringLiteral("pegs"), Lists::tr("Pegs"), counted(&FoundLog::pegs), peg_boxes},
        {QStringLiteral("later_cuts"), Lists::tr("Later cuts"), counted(&FoundLog::later_cuts),
         later_cut_boxes},
        {QStringLiteral("tests"), Lists::tr("What was tried"), counted(&FoundLog::tests), test_boxes},
        {QStringLiteral("moistures"), Lists::tr("Moisture"), counted(&FoundLog::moistures), moisture_boxes}};
}

void drop_blank_parts(FoundLog &log) {
    drop_blank(log.stations, FoundStation());
    drop_blank(log.later_cuts, LaterCut());
    drop_blank(log.tests, WoodTest());
}

} // namespace roundlay::window
