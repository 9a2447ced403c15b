// What things are called, and their sides and ends.
#include "exporters/words/french/french.h"

namespace roundlay {

namespace {

constexpr Entry entries[] = {
    {"%1 and %2", "%1 et %2"},
    {"beam %1", "poutre %1"},
    {"bolt %1", "boulon %1"},
    {"bores", "perçages"},
    {"corner %1", "angle %1"},
    {"door %1", "porte %1"},
    {"far", "éloigné"},
    {"floor %1", "plancher %1"},
    {"floors", "planchers"},
    {"full", "pièce entière"},
    {"full dovetail", "queue d’aronde entière"},
    {"half", "demi-pièce"},
    {"half dovetail", "demi-queue d’aronde"},
    {"hole %1", "trou %1"},
    {"joist %1", "solive %1"},
    {"left", "gauche"},
    {"logs", "pièces"},
    {"near", "proche"},
    {"openings", "ouvertures"},
    {"pegs", "chevilles"},
    {"piece %1", "pièce %1"},
    {"plan", "plan"},
    {"right", "droite"},
    {"rod %1", "tirant %1"},
    {"round %1", "rang %1"},
    {"rounds", "rangs"},
    {"saddle", "selle"},
    {"square lap", "mi-bois droit"},
    {"stated", "selon les pentes"},
    {"step %1", "ressaut %1"},
    {"top of the walls", "haut des murs"},
    {"trimmed joist %1", "solive boiteuse %1"},
    {"trimmer %1", "chevêtre %1"},
    {"wall %1", "mur %1"},
    {"walls %1 and %2", "murs %1 et %2"},
    {"window %1", "fenêtre %1"},
    {"wiring bore %1", "passage de câble %1"},
    {"wood", "bois"},
};

} // namespace

std::span<const Entry> french_of_things() {
    return entries;
}

} // namespace roundlay
