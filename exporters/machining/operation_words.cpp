#include "exporters/machining/operation_words.h"

namespace roundlay::machining {

const char *key_of(OperationKind kind) {
    switch (kind) {
    case OperationKind::plane:
        return "plane";
    case OperationKind::slot:
        return "slot";
    case OperationKind::pocket:
        return "pocket";
    case OperationKind::bore:
        return "bore";
    case OperationKind::groove:
        return "groove";
    case OperationKind::saddle:
        break;
    }
    return "saddle";
}

const char *key_of(LogFace side) {
    switch (side) {
    case LogFace::top:
        return "top";
    case LogFace::under:
        return "under";
    case LogFace::outside:
        return "outside";
    case LogFace::inside:
        return "inside";
    case LogFace::datum_end:
        return "datum_end";
    case LogFace::far_end:
        break;
    }
    return "far_end";
}

const char *key_of(Hold hold) {
    switch (hold) {
    case Hold::faces:
        return "faces";
    case Hold::round:
        return "round";
    case Hold::nowhere:
        break;
    }
    return "nowhere";
}

std::string words_of(OperationKind kind, const Voice &voice) {
    switch (kind) {
    case OperationKind::plane:
        return voice.say("plane cut");
    case OperationKind::slot:
        return voice.say("slot");
    case OperationKind::pocket:
        return voice.say("pocket");
    case OperationKind::bore:
        return voice.say("bore");
    case OperationKind::groove:
        return voice.say("round groove along the log");
    case OperationKind::saddle:
        break;
    }
    return voice.say("round saddle across the log");
}

std::string words_of(LogFace side, const Voice &voice) {
    switch (side) {
    case LogFace::top:
        return voice.say("top");
    case LogFace::under:
        return voice.say("underside");
    case LogFace::outside:
        return voice.say("outside");
    case LogFace::inside:
        return voice.say("inside");
    case LogFace::datum_end:
        return voice.say("datum end");
    case LogFace::far_end:
        break;
    }
    return voice.say("far end");
}

std::string caution(const Voice &voice) {
    return voice.say("A proposal worked out from the model: nothing of it has been proved on wood or on a "
                     "machine. Set-ups, "
                     "clamping, tools, tolerances and the order of work are for the shop to decide, by its "
                     "own practice and "
                     "by the rules of safety of its machines.");
}

} // namespace roundlay::machining
