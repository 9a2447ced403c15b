#include "modeler/window/record/record_boxes.h"

#include "modeler/window/record/found_words.h"

#include <QCoreApplication>
#include <algorithm>

namespace roundlay::window {

namespace {

class Boxes {
    Q_DECLARE_TR_FUNCTIONS(RecordBoxes)
};

RecordBox number(const char *name, const QString &label, NotedLength FoundLog::*member) {
    return {QString::fromLatin1(name), label,
            NumberBox{[member](FoundLog &log, bool) { return &(log.*member); }}};
}

RecordBox words(const char *name, const QString &label, std::string FoundLog::*member) {
    return {QString::fromLatin1(name), label,
            WordsBox{[member](const FoundLog &log) { return log.*member; },
                     [member](FoundLog &log, const std::string &typed) { log.*member = typed; }}};
}

RecordBox finish(const char *name, const QString &label, std::string FaceFinish::*member) {
    return {QString::fromLatin1(name), label,
            WordsBox{[member](const FoundLog &log) { return log.finish.*member; },
                     [member](FoundLog &log, const std::string &typed) { log.finish.*member = typed; }}};
}

std::string joined(const std::vector<std::string> &all) {
    std::string text;
    for (const std::string &each : all)
        text += (text.empty() ? "" : "; ") + each;
    return text;
}

std::vector<std::string> parted(const std::string &text) {
    std::vector<std::string> all;
    for (const QString &each : QString::fromStdString(text).split(u';'))
        if (const QString plain = each.trimmed(); !plain.isEmpty()) all.push_back(plain.toStdString());
    return all;
}

/// Several in one box, parted by semicolons.
RecordBox several(const char *name, const QString &label, std::vector<std::string> FoundLog::*member) {
    return {QString::fromLatin1(name), label,
            WordsBox{[member](const FoundLog &log) { return joined(log.*member); },
                     [member](FoundLog &log, const std::string &typed) { log.*member = parted(typed); }}};
}

QStringList faces_or_none() {
    QStringList words{QString()};
    for (const FoundFace face : all_faces)
        words << face_word(face);
    return words;
}

int place_of_face(const std::optional<FoundFace> &face) {
    if (!face) return 0;
    return static_cast<int>(std::ranges::find(all_faces, *face) - std::begin(all_faces)) + 1;
}

std::optional<FoundFace> face_at(int choice) {
    if (choice <= 0) return {};
    return all_faces[choice - 1];
}

RecordGroup log_group() {
    return {QStringLiteral("log"),
            Boxes::tr("Log"),
            {words("tag", Boxes::tr("Tag"), &FoundLog::tag),
             words("species", Boxes::tr("Wood"), &FoundLog::species),
             number("length", Boxes::tr("Length over all"), &FoundLog::length),
             number("between_shoulders", Boxes::tr("Between shoulders"), &FoundLog::between_shoulders),
             words("zero", Boxes::tr("Measured from"), &FoundLog::zero),
             words("butt", Boxes::tr("Butt at"), &FoundLog::butt),
             number("bow", Boxes::tr("Bow"), &FoundLog::bow),
             {QStringLiteral("bow_to"), Boxes::tr("Bow to the"),
              ChoiceBox{faces_or_none(), [](const FoundLog &log) { return place_of_face(log.bow_to); },
                        [](FoundLog &log, int chosen) { log.bow_to = face_at(chosen); }}},
             number("wind", Boxes::tr("Wind"), &FoundLog::wind)}};
}

RecordGroup looks_group() {
    return {QStringLiteral("looks"),
            Boxes::tr("Finish and marks"),
            {finish("finish_outside", Boxes::tr("Outside"), &FaceFinish::outside),
             finish("finish_inside", Boxes::tr("Inside"), &FaceFinish::inside),
             finish("finish_top", Boxes::tr("Top"), &FaceFinish::top),
             finish("finish_under", Boxes::tr("Under"), &FaceFinish::under),
             several("marks", Boxes::tr("Old marks"), &FoundLog::marks),
             words("log_note", Boxes::tr("Note"), &FoundLog::note)}};
}

RecordGroup condition_group() {
    return {QStringLiteral("condition"),
            Boxes::tr("Condition"),
            {words("condition", Boxes::tr("What it is like"), &FoundLog::condition),
             words("cause", Boxes::tr("Cause"), &FoundLog::cause),
             words("urgency", Boxes::tr("Urgency"), &FoundLog::urgency)}};
}

RecordGroup source_group() {
    return {QStringLiteral("source"),
            Boxes::tr("Photographs, sheet, who says so"),
            {several("photographs", Boxes::tr("Photographs"), &FoundLog::photographs),
             words("sheet", Boxes::tr("Sheet"), &FoundLog::sheet),
             words("by", Boxes::tr("By"), &FoundLog::by), words("on", Boxes::tr("On"), &FoundLog::on)}};
}

FoundEnd *end_of(FoundLog &log, const std::string &corner, bool make) {
    const auto at = std::ranges::find(log.ends, corner, &FoundEnd::corner);
    if (at != log.ends.end()) return &*at;
    if (!make) return nullptr;
    log.ends.push_back({});
    log.ends.back().corner = corner;
    return &log.ends.back();
}

} // namespace

std::vector<RecordGroup> groups_of_log() {
    return {log_group(), looks_group(), condition_group(), source_group()};
}

std::vector<RecordBox> boxes_of_end(int end, const EndNames &names) {
    const std::string &corner = names[static_cast<std::size_t>(end)];
    const QString before = QStringLiteral("end%1_").arg(end);
    const auto size = [&](const char *name, const QString &label, NotedLength FoundEnd::*member) {
        return RecordBox{before + QString::fromLatin1(name), label,
                         NumberBox{[member, &corner](FoundLog &log, bool make) {
                             FoundEnd *at = end_of(log, corner, make);
                             return at == nullptr ? nullptr : &(at->*member);
                         }}};
    };
    const auto words_box = [&](const char *name, const QString &label, std::string FoundEnd::*member) {
        return RecordBox{before + QString::fromLatin1(name), label,
                         WordsBox{[member, &corner](const FoundLog &log) {
                                      const auto at = std::ranges::find(log.ends, corner, &FoundEnd::corner);
                                      return at == log.ends.end() ? std::string() : (*at).*member;
                                  },
                                  [member, &corner](FoundLog &log, const std::string &typed) {
                                      end_of(log, corner, true)->*member = typed;
                                  }}};
    };
    return {size("height", Boxes::tr("Height"), &FoundEnd::height),
            size("width", Boxes::tr("Width"), &FoundEnd::width),
            size("shoulder_outside", Boxes::tr("Tail at shoulder, outside"), &FoundEnd::shoulder_outside),
            size("shoulder_inside", Boxes::tr("Tail at shoulder, inside"), &FoundEnd::shoulder_inside),
            size("end_outside", Boxes::tr("Tail at end, outside"), &FoundEnd::end_outside),
            size("end_inside", Boxes::tr("Tail at end, inside"), &FoundEnd::end_inside),
            size("overhang", Boxes::tr("Overhang"), &FoundEnd::overhang),
            size("gap", Boxes::tr("Gap under the tail"), &FoundEnd::gap),
            size("level", Boxes::tr("Level of its upper edge"), &FoundEnd::level),
            words_box("plane", Boxes::tr("Read from plane"), &FoundEnd::plane),
            words_box("joint", Boxes::tr("Joint"), &FoundEnd::joint)};
}

} // namespace roundlay::window
