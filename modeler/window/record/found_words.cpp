#include "modeler/window/record/found_words.h"

#include "kernel/record/found_words.h"
#include "modeler/window/desk/finding_words.h"

#include <QCoreApplication>

namespace roundlay::window {

namespace {

class Words {
    Q_DECLARE_TR_FUNCTIONS(FoundWords)
};

} // namespace

QString certainty_word(Certainty certainty) {
    switch (certainty) {
    case Certainty::proposed:
        return Words::tr("proposed");
    case Certainty::contradicted:
        return Words::tr("contradicted");
    case Certainty::measured:
        break;
    }
    return Words::tr("measured");
}

QString face_word(FoundFace face) {
    return in_words(said_of(face));
}

QString faces_words(const std::vector<FoundFace> &faces) {
    QStringList words;
    for (const FoundFace face : faces)
        words << face_word(face);
    return words.join(QStringLiteral(", "));
}

QString soundness_word(Soundness what) {
    return in_words(said_of(what));
}

QString peg_state_word(PegState state) {
    switch (state) {
    case PegState::missing:
        return Words::tr("missing", "a peg");
    case PegState::broken:
        return Words::tr("broken", "a peg");
    case PegState::sawn:
        return Words::tr("sawn", "a peg");
    case PegState::found:
        break;
    }
    return Words::tr("found", "a peg");
}

QString decision_word(Decision what) {
    return in_words(said_of(what));
}

QString place_words(const FoundPlace &place) {
    if (!place.timber.empty())
        return Words::tr("timber %1 of a floor").arg(QString::fromStdString(place.timber));
    if (place.wall.empty()) return Words::tr("nobody knows where it lay");
    QString words = Words::tr("wall %1").arg(QString::fromStdString(place.wall));
    if (place.round) words += Words::tr(", round %1").arg(*place.round);
    if (place.piece) words += Words::tr(", piece %1").arg(*place.piece);
    return words;
}

QString decision_words(const FoundDecision &decision) {
    QString words = decision_word(decision.what);
    if (decision.what == Decision::use_elsewhere) words += Words::tr(" in %1").arg(place_words(decision.to));
    if (!decision.by.empty()) words += Words::tr(", by %1").arg(QString::fromStdString(decision.by));
    if (!decision.on.empty()) words += Words::tr(", on %1").arg(QString::fromStdString(decision.on));
    if (!decision.why.empty()) words += Words::tr(": %1").arg(QString::fromStdString(decision.why));
    return words;
}

} // namespace roundlay::window
