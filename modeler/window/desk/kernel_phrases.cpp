// What the document's reader, the lists and the exporters say, as phrases with holes, for the translators.
//
// They build these sentences themselves and know no languages. A sentence is found again by its fixed words;
// what stands in the holes (%1 …) is looked up in its turn. A sentence that is not here stays as it is.
// Findings are values and are not here: room `words`.
#include "modeler/window/desk/kernel_phrases.h"

#include <QtGlobal>

namespace roundlay::window {

namespace {

constexpr const char *phrases[] = {
    // what the document does not take from a field
    QT_TRANSLATE_NOOP("kernel", "\"%1\" is out of bounds"),
    QT_TRANSLATE_NOOP("kernel", "\"%1\" cannot be read as a load"),
    QT_TRANSLATE_NOOP("kernel", "a length over 0 and up to 100 m"),
    QT_TRANSLATE_NOOP("kernel", "a length from 0 to 100 m"),
    QT_TRANSLATE_NOOP("kernel", "a length over 0 and up to 2 m"),
    QT_TRANSLATE_NOOP("kernel", "a length from 0 to 2 m"),
    QT_TRANSLATE_NOOP("kernel", "a slope that is not negative"),
    QT_TRANSLATE_NOOP("kernel", "a load over 0 up to 50 kPa: a number up to 10 in kPa without quotes, or "
                                "text with its unit such as \"40 psf\""),
    QT_TRANSLATE_NOOP("kernel", "\"%1\" is too long"),
    QT_TRANSLATE_NOOP("kernel", "at most 200 characters"),
    QT_TRANSLATE_NOOP("kernel", "\"%1\" has a control character in it"),
    QT_TRANSLATE_NOOP("kernel", "plain text on one line"),
    QT_TRANSLATE_NOOP("kernel", "joists cannot lie from wall \"%1\" to itself"),
    QT_TRANSLATE_NOOP("kernel", "the wall across the room"),
    // places
    QT_TRANSLATE_NOOP("kernel", "wall %1"),
    QT_TRANSLATE_NOOP("kernel", "round %1"),
    QT_TRANSLATE_NOOP("kernel", "corner %1"),
    QT_TRANSLATE_NOOP("kernel", "floor %1"),
    QT_TRANSLATE_NOOP("kernel", "joist %1"),
    QT_TRANSLATE_NOOP("kernel", "trimmed joist %1"),
    QT_TRANSLATE_NOOP("kernel", "trimmer %1"),
    QT_TRANSLATE_NOOP("kernel", "beam %1"),
    QT_TRANSLATE_NOOP("kernel", "step %1"),
    QT_TRANSLATE_NOOP("kernel", "bolt %1"),
    QT_TRANSLATE_NOOP("kernel", "rod %1"),
    QT_TRANSLATE_NOOP("kernel", "wiring %1"),
    QT_TRANSLATE_NOOP("kernel", "hole %1"),
    QT_TRANSLATE_NOOP("kernel", "door %1"),
    QT_TRANSLATE_NOOP("kernel", "window %1"),
    QT_TRANSLATE_NOOP("kernel", "door %1 in wall %2"),
    QT_TRANSLATE_NOOP("kernel", "window %1 in wall %2"),
    // kinds, ends and faces
    QT_TRANSLATE_NOOP("kernel", "log"),
    QT_TRANSLATE_NOOP("kernel", "half log"),
    QT_TRANSLATE_NOOP("kernel", "sill log"),
    QT_TRANSLATE_NOOP("kernel", "sill half log"),
    QT_TRANSLATE_NOOP("kernel", "plate log"),
    QT_TRANSLATE_NOOP("kernel", "plate half log"),
    QT_TRANSLATE_NOOP("kernel", "island"),
    QT_TRANSLATE_NOOP("kernel", "joist"),
    QT_TRANSLATE_NOOP("kernel", "trimmed joist"),
    QT_TRANSLATE_NOOP("kernel", "trimmer"),
    QT_TRANSLATE_NOOP("kernel", "beam"),
    QT_TRANSLATE_NOOP("kernel", "hewn"),
    QT_TRANSLATE_NOOP("kernel", "sawn"),
    QT_TRANSLATE_NOOP("kernel", "peeled"),
    QT_TRANSLATE_NOOP("kernel", "new"),
    QT_TRANSLATE_NOOP("kernel", "kept"),
    QT_TRANSLATE_NOOP("kernel", "patched"),
    QT_TRANSLATE_NOOP("kernel", "replacement"),
    QT_TRANSLATE_NOOP("kernel", "%1 left, %2 right"),
    QT_TRANSLATE_NOOP("kernel", "jamb"),
    QT_TRANSLATE_NOOP("kernel", "jamb of %1"),
    QT_TRANSLATE_NOOP("kernel", "against the wall at corner %1"),
    QT_TRANSLATE_NOOP("kernel", "against %1 of the foundation"),
    QT_TRANSLATE_NOOP("kernel", "in %1"),
    QT_TRANSLATE_NOOP("kernel", "top"),
    QT_TRANSLATE_NOOP("kernel", "underside"),
    QT_TRANSLATE_NOOP("kernel", "outside face"),
    QT_TRANSLATE_NOOP("kernel", "inside face"),
    QT_TRANSLATE_NOOP("kernel", "left end"),
    QT_TRANSLATE_NOOP("kernel", "right end"),
    QT_TRANSLATE_NOOP("kernel", "pieces"),
    QT_TRANSLATE_NOOP("kernel", "height that stands, lowest"),
    QT_TRANSLATE_NOOP("kernel", "height that stands, highest"),
    QT_TRANSLATE_NOOP("kernel", "height by the rounds"),
    QT_TRANSLATE_NOOP("kernel", "half logs counted"),
    QT_TRANSLATE_NOOP("kernel", "logs in the walls that have most"),
    QT_TRANSLATE_NOOP("kernel", "distinct pieces"),
    QT_TRANSLATE_NOOP("kernel", "islands"),
    QT_TRANSLATE_NOOP("kernel", "length of all blanks"),
    QT_TRANSLATE_NOOP("kernel", "volume of all blanks"),
    QT_TRANSLATE_NOOP("kernel", "volume of all finished pieces"),
    QT_TRANSLATE_NOOP("kernel", "longest blank"),
    QT_TRANSLATE_NOOP("kernel", "estimated low weight of all pieces"),
    QT_TRANSLATE_NOOP("kernel", "estimated high weight of all pieces"),
    QT_TRANSLATE_NOOP("kernel", "estimated high weight of the heaviest piece"),
    QT_TRANSLATE_NOOP("kernel", "weight basis"),
    QT_TRANSLATE_NOOP("kernel", "caution"),
    QT_TRANSLATE_NOOP("kernel", "peg lengths"),
    QT_TRANSLATE_NOOP("kernel",
                      "lengths are rounded up to the next %1; each peg is cut to its own bore, which "
                      "the cut sheets say"),
    QT_TRANSLATE_NOOP("kernel", "order lengths"),
    QT_TRANSLATE_NOOP("kernel", "rounded up to the next %1; no trim is added"),
    QT_TRANSLATE_NOOP("kernel", "board feet"),
    // cuts
    QT_TRANSLATE_NOOP("kernel", "%1: square"),
    QT_TRANSLATE_NOOP("kernel", "%1: square, past the corner"),
    QT_TRANSLATE_NOOP("kernel", "%1: square at a jamb"),
    QT_TRANSLATE_NOOP("kernel", "%1: square against the crossing wall"),
    QT_TRANSLATE_NOOP("kernel", "%1: square against %2 of the foundation"),
    QT_TRANSLATE_NOOP("kernel", "%1: tail cut %2, shoulder %3 from the end"),
    QT_TRANSLATE_NOOP("kernel", "%1: housed notch %2 from %3 to %4"),
    QT_TRANSLATE_NOOP("kernel", "housed notch %1 from %2 to %3 at corner %4"),
    QT_TRANSLATE_NOOP("kernel", "%1: tailed, %2 of it in the pocket"),
    QT_TRANSLATE_NOOP("kernel", "%1: square, %2 of it in the pocket"),
    QT_TRANSLATE_NOOP("kernel", "on top and underside"),
    QT_TRANSLATE_NOOP("kernel", "on top"),
    QT_TRANSLATE_NOOP("kernel", "on the underside"),
    QT_TRANSLATE_NOOP("kernel", "sill cut %1 deep from the top from %2 to %3, falling %4 outward"),
    QT_TRANSLATE_NOOP("kernel", "sill cut %1 deep from the top from %2 to %3"),
    QT_TRANSLATE_NOOP("kernel", "header cut %1 up from %2 from %3 to %4"),
    QT_TRANSLATE_NOOP("kernel", "opening cut %1 up to %2 over %3 from %4 to %5"),
    QT_TRANSLATE_NOOP("kernel", "cut level %1 up from %2 over %3 from %4 to %5"),
    QT_TRANSLATE_NOOP("kernel", "groove %1 wide for a spline, %2 deep from %3 to %4"),
    QT_TRANSLATE_NOOP("kernel", "seat %1 up from %2 from %3 to %4"),
    QT_TRANSLATE_NOOP("kernel",
                      "tailed pocket %1 wide, %2 into the %3 face, %4, middle %5 from the left end"),
    QT_TRANSLATE_NOOP("kernel", "pocket %1 wide, %2 into the %3 face, %4, middle %5 from the left end"),
    QT_TRANSLATE_NOOP("kernel", "through the log's height"),
    QT_TRANSLATE_NOOP("kernel", "%1 deep from the top"),
    QT_TRANSLATE_NOOP("kernel", "%1 up from the underside"),
    QT_TRANSLATE_NOOP("kernel", "%1 up from the lowest line"),
    QT_TRANSLATE_NOOP("kernel", "%1 up to %2 over %3"),
    QT_TRANSLATE_NOOP(
        "kernel",
        "snap the lowest line and mark every cut from it before the first cut, which takes it away"),
    QT_TRANSLATE_NOOP("kernel", "no templates were made: this shell has no tails, notches or pockets cut "
                                "to a line; round logs are scribed in place"),
    QT_TRANSLATE_NOOP("kernel", "east"),
    QT_TRANSLATE_NOOP("kernel", "north-east"),
    QT_TRANSLATE_NOOP("kernel", "north"),
    QT_TRANSLATE_NOOP("kernel", "north-west"),
    QT_TRANSLATE_NOOP("kernel", "west"),
    QT_TRANSLATE_NOOP("kernel", "south-west"),
    QT_TRANSLATE_NOOP("kernel", "south"),
    QT_TRANSLATE_NOOP("kernel", "south-east"),
    QT_TRANSLATE_NOOP("kernel", "the underside"),
    QT_TRANSLATE_NOOP("kernel", "the lowest line"),
    QT_TRANSLATE_NOOP("kernel", "%1 (left) to %2 (right)"),
    QT_TRANSLATE_NOOP("kernel", "%1 (outside) / %2 (inside)"),
    QT_TRANSLATE_NOOP("kernel", "left end sawn at a slant, %1 off the blank's end"),
    QT_TRANSLATE_NOOP("kernel", "right end sawn at a slant, %1 off the blank's end"),
    QT_TRANSLATE_NOOP("kernel", "%1: at a slant"),
    QT_TRANSLATE_NOOP("kernel", "%1: at a slant, past the corner"),
    QT_TRANSLATE_NOOP("kernel", "%1: at a slant at a jamb"),
    QT_TRANSLATE_NOOP("kernel", "%1: at a slant against the crossing wall"),
    QT_TRANSLATE_NOOP("kernel", "%1: at a slant against %2 of the foundation"),
    QT_TRANSLATE_NOOP("kernel", "outside"),
    QT_TRANSLATE_NOOP("kernel", "inside"),
    QT_TRANSLATE_NOOP("kernel", "%1 hewn back %2 at the left end, %3 at the right end"),
    QT_TRANSLATE_NOOP("kernel", "round stick of %1: what lies outside it is wane"),
    QT_TRANSLATE_NOOP("kernel", "long groove of radius %1, its top %2 over %3, %4 clear"),
    QT_TRANSLATE_NOOP("kernel", "long groove of radius %1, its top %2 over %3"),
    QT_TRANSLATE_NOOP("kernel", "saddle of radius %1, upright cheeks %2 from its middle, at %3 over %4, its "
                                "top %5 over %6, %7 clear"),
    QT_TRANSLATE_NOOP(
        "kernel",
        "saddle of radius %1, upright cheeks %2 from its middle, at %3 over %4, its top %5 over %6"),
    QT_TRANSLATE_NOOP("kernel", "saddle of radius %1 at %2 over %3, its top %4 over %5, %6 clear"),
    QT_TRANSLATE_NOOP("kernel", "saddle of radius %1 at %2 over %3, its top %4 over %5"),
    QT_TRANSLATE_NOOP("kernel", "%1 peg bore %2 right through at %3"),
    QT_TRANSLATE_NOOP("kernel", "%1 peg bores %2 right through at %3"),
    QT_TRANSLATE_NOOP("kernel", "%1 peg bore %2 %3 deep from the top at %4"),
    QT_TRANSLATE_NOOP("kernel", "%1 peg bores %2 %3 deep from the top at %4"),
    QT_TRANSLATE_NOOP("kernel", "%1 peg bore %2 %3 deep from the underside at %4"),
    QT_TRANSLATE_NOOP("kernel", "%1 peg bores %2 %3 deep from the underside at %4"),
    QT_TRANSLATE_NOOP("kernel", "%1 bolt bore %2 right through at %3"),
    QT_TRANSLATE_NOOP("kernel", "%1 bolt bores %2 right through at %3"),
    QT_TRANSLATE_NOOP("kernel", "%1 rod bore %2 right through at %3"),
    QT_TRANSLATE_NOOP("kernel", "%1 rod bores %2 right through at %3"),
    QT_TRANSLATE_NOOP("kernel", "%1 wiring bore %2 right through at %3"),
    QT_TRANSLATE_NOOP("kernel", "%1 wiring bores %2 right through at %3"),
    QT_TRANSLATE_NOOP("kernel", "%1 bolt bore %2 %3 deep from the top at %4"),
    QT_TRANSLATE_NOOP("kernel", "%1 bolt bore %2 %3 deep from the underside at %4"),
    QT_TRANSLATE_NOOP("kernel", "%1 bolt bores %2 %3 deep from the top at %4"),
    QT_TRANSLATE_NOOP("kernel", "%1 bolt bores %2 %3 deep from the underside at %4"),
    QT_TRANSLATE_NOOP("kernel", "%1 rod bore %2 %3 deep from the top at %4"),
    QT_TRANSLATE_NOOP("kernel", "%1 rod bore %2 %3 deep from the underside at %4"),
    QT_TRANSLATE_NOOP("kernel", "%1 rod bores %2 %3 deep from the top at %4"),
    QT_TRANSLATE_NOOP("kernel", "%1 rod bores %2 %3 deep from the underside at %4"),
    QT_TRANSLATE_NOOP("kernel", "%1 wiring bore %2 %3 deep from the top at %4"),
    QT_TRANSLATE_NOOP("kernel", "%1 wiring bore %2 %3 deep from the underside at %4"),
    QT_TRANSLATE_NOOP("kernel", "%1 wiring bores %2 %3 deep from the top at %4"),
    QT_TRANSLATE_NOOP("kernel", "%1 wiring bores %2 %3 deep from the underside at %4"),
    QT_TRANSLATE_NOOP("kernel", "%1 hole as found %2 right through at %3"),
    QT_TRANSLATE_NOOP("kernel", "%1 hole as found %2 %3 deep from the top at %4"),
    QT_TRANSLATE_NOOP("kernel", "%1 hole as found %2 %3 deep from the underside at %4"),
    QT_TRANSLATE_NOOP("kernel", "%1 holes as found %2 right through at %3"),
    QT_TRANSLATE_NOOP("kernel", "%1 holes as found %2 %3 deep from the top at %4"),
    QT_TRANSLATE_NOOP("kernel", "%1 holes as found %2 %3 deep from the underside at %4"),
    // settling, weights, loads
    QT_TRANSLATE_NOOP("kernel",
                      "Each span as a simple one from middle to middle of its bearings, which is no less "
                      "than its clear span and half the bearing needed at each end (NDS 3.2.1, from "
                      "memory), least section: deflection 5 w L^4 / (384 E I) for even loads and P b (L^2 "
                      "- b^2)^1.5 / (9 sqrt(3) L E I) for single ones under the live load; stresses under "
                      "the whole load: M / S and 3 V / (2 b h) (Wood Handbook chapter 9, second-hand), "
                      "less the housings cut in it; at notched ends 3 V / (2 b dn) x (d / dn)^2 (NDS 2018, "
                      "3.4.3.2, second-hand), at tailed ends over the neck; bearing R / (b x bearing). "
                      "Over a beam two neighbouring spans are taken as one that runs on, so the beam "
                      "carries 1.25 w L of equal ones (statics, derived). Beams, trimmers and joists "
                      "beside openings carry what the others lay on them. No allowable stress is "
                      "published for logs of this wood, hewn and graded by eye, so none stands beside the "
                      "stresses: whether they may be allowed is for a licensed person to judge, by the "
                      "grade's design values."),
    QT_TRANSLATE_NOOP("kernel", "A screen by textbook formulas, never an approval: loads, grade, notches and "
                                "bearings are for local code and a licensed professional to decide."),
    QT_TRANSLATE_NOOP("kernel",
                      "Loads: %1; and each timber's own weight, at the high end. E %2 is a mean of "
                      "small clear green %3, no design value: sticks with knots bend more (%4). No species "
                      "is stated: eastern hemlock is taken."),
    QT_TRANSLATE_NOOP("kernel", "Loads: %1; and each timber's own weight, at the high end. E %2 is a mean of "
                                "small clear green %3, no design value: sticks with knots bend more (%4)."),
    QT_TRANSLATE_NOOP("kernel",
                      "floor %1 live %2, dead %3 (none is stated, so 10 lb/ft2 rounded up is taken)"),
    QT_TRANSLATE_NOOP("kernel", "floor %1 live %2, dead %3"),
    QT_TRANSLATE_NOOP("kernel", "as stated for all openings; by %1 it would be %2"),
    QT_TRANSLATE_NOOP("kernel", "as stated for this opening; by %1 it would be %2"),
    QT_TRANSLATE_NOOP("kernel", "%1 (%2; %3, %4), %5; by %6 it would be %7"),
    QT_TRANSLATE_NOOP("kernel", "%1 (%2; %3, %4), %5"),
    QT_TRANSLATE_NOOP("kernel", "Ontario Building Code, O. Reg. 332/12, Division B, section 9.37"),
    QT_TRANSLATE_NOOP("kernel", "about 4 cm per metre"),
    QT_TRANSLATE_NOOP("kernel", "fresh log walls"),
    QT_TRANSLATE_NOOP("kernel", "repair card of the Finnish heritage agency on moving log houses"),
    QT_TRANSLATE_NOOP(
        "kernel", "as the logs are not round ones scribed over one another; it is a code's least, for dry "
                  "wood too"),
    QT_TRANSLATE_NOOP("kernel", "as the logs are round and scribed, but stated at 19 % of moisture or less"),
    QT_TRANSLATE_NOOP("kernel", "as the logs are round and scribed, and not stated to be seasoned"),
    QT_TRANSLATE_NOOP("kernel", "as the document says of all openings"),
    QT_TRANSLATE_NOOP("kernel", "as the document says of this opening"),
    QT_TRANSLATE_NOOP("kernel", "seen"),
    QT_TRANSLATE_NOOP("kernel", "second-hand"),
    QT_TRANSLATE_NOOP("kernel", "from memory"),
    QT_TRANSLATE_NOOP("kernel", "derived"),
    QT_TRANSLATE_NOOP(
        "kernel", "Settling spaces follow the rule named, which may not be your local one; local code and "
                  "a licensed professional decide."),
    QT_TRANSLATE_NOOP("kernel", "%1 (second-hand), though %2"),
    QT_TRANSLATE_NOOP("kernel", "%1 (from memory), though %2"),
    QT_TRANSLATE_NOOP("kernel", "%1 (seen), though %2"),
    QT_TRANSLATE_NOOP("kernel", "%1 (second-hand)"),
    QT_TRANSLATE_NOOP("kernel", "%1 (from memory)"),
    QT_TRANSLATE_NOOP("kernel", "%1 (seen)"),
    QT_TRANSLATE_NOOP("kernel",
                      "older US tables give 4.7, 8.2 and 13.7 %, Canadian ones about 3.2, 6.9 and 11.3 %"),
    QT_TRANSLATE_NOOP("kernel", "some tables give white spruce 0.37 and 0.40 and Sitka spruce 0.33 and 0.36: "
                                "the two rows may be exchanged"),
    QT_TRANSLATE_NOOP("kernel", "older editions give 34 and 128 % for the eastern spruces together"),
    QT_TRANSLATE_NOOP("kernel", "a clear-wood table of the ASTM D2555 kind gives 0.39 green"),
    QT_TRANSLATE_NOOP("kernel", "some older tables give 110 % for sapwood"),
    QT_TRANSLATE_NOOP("kernel",
                      "an unsourced table gives 10.8 % tangential, which is the chestnut oak's figure"),
    QT_TRANSLATE_NOOP("kernel", "no values are known for the species \"%1\"; did you mean \"%2\"?"),
    QT_TRANSLATE_NOOP("kernel", "no values are known for the species \"%1\"; known are %2"),
    QT_TRANSLATE_NOOP("kernel", "none published for such logs: a licensed person judges"),
    QT_TRANSLATE_NOOP(
        "kernel", "Weights are estimates from average values of the species, no lift plan: single logs are "
                  "heavier or lighter, and rain and snow add. Weigh before lifting near a limit; local "
                  "rules and a licensed professional decide."),
    QT_TRANSLATE_NOOP("kernel",
                      "%1: volume x 1000 kg/m3 x specific gravity x (1 + moisture/100), Wood Handbook "
                      "(second-hand) Eq. 4-13 "
                      "and 4-14; specific gravity %2 from %3; %4, 10 % to either side (coefficient of "
                      "variation of specific gravity, Wood Handbook chapter 5, from memory); the moisture of "
                      "single logs varies more.%5"),
    QT_TRANSLATE_NOOP("kernel",
                      "%1: volume x 1000 kg/m3 x specific gravity x (1 + moisture/100), Wood Handbook "
                      "(second-hand) Eq. 4-13 "
                      "and 4-14; specific gravity %2 from %3; %4, 10 % to either side (coefficient of "
                      "variation of specific gravity, Wood Handbook chapter 5, from memory); the moisture of "
                      "single logs varies more."),
    QT_TRANSLATE_NOOP("kernel", " No species is stated: eastern hemlock is taken."),
    QT_TRANSLATE_NOOP("kernel", "%1; the higher weight is by %2, the heavier of them"),
    QT_TRANSLATE_NOOP("kernel", "the higher weight is by %1, the heavier of them; %2"),
    QT_TRANSLATE_NOOP("kernel", "%1, green"),
    QT_TRANSLATE_NOOP("kernel", "from heartwood at %1 % to sapwood at %2 % by %3"),
    QT_TRANSLATE_NOOP("kernel", "from boards measured at %1 % (%2) to sapwood at %3 % by %4"),
    QT_TRANSLATE_NOOP("kernel", "at the stated moisture of %1 %"),
    QT_TRANSLATE_NOOP(
        "kernel", "no green moisture is published for it, so from fibre saturation at 30 % to all hollows "
                  "full of water at %1 % (Eq. 4-3)"),
    QT_TRANSLATE_NOOP(
        "kernel", "from heartwood at %1 % (%2) to all hollows full of water at %3 % (Eq. 4-3), as none is "
                  "published for sapwood"),
    QT_TRANSLATE_NOOP("kernel",
                      "%1: %2 (radial) to %3 (tangential) of heights and widths, none of lengths, by %4 (%5) "
                      "and Eq. 4-9, though %6; walls settle by more than that"),
    QT_TRANSLATE_NOOP("kernel",
                      "%1: %2 (radial) to %3 (tangential) of heights and widths, none of lengths, by %4 (%5) "
                      "and Eq. 4-9; walls settle by more than that"),
    QT_TRANSLATE_NOOP("kernel", "shrinkage in drying to 12 %"),
    QT_TRANSLATE_NOOP("kernel", "estimated high weight of its blank"),
    QT_TRANSLATE_NOOP("kernel", "estimated high weight of its round log"),
    QT_TRANSLATE_NOOP("kernel", "no weight: %1"),
    QT_TRANSLATE_NOOP("kernel",
                      "%1 Round logs: Smalian's volume of the least small end, growing 1/2 in per 4 ft to "
                      "the butt, without bark. %2"),
    QT_TRANSLATE_NOOP("kernel", "log rules"),
    QT_TRANSLATE_NOOP("kernel",
                      "board feet of the order list are of one stick each, of the least round and the "
                      "ordered length, by the "
                      "formulas of Doyle (from memory), Scribner (seen) and International 1/4 in (seen): "
                      "estimates of sawn boards, which differ by design"),
    QT_TRANSLATE_NOOP("kernel", "13 mm for each 300 mm of height"),
    QT_TRANSLATE_NOOP("kernel", "least clearance above openings in walls of horizontal logs that can shrink"),
    QT_TRANSLATE_NOOP("kernel", "60 mm per metre; also quoted as 3/4 in per foot"),
    QT_TRANSLATE_NOOP("kernel", "green round logs, scribed"),
    QT_TRANSLATE_NOOP("kernel", "3/16 in for each log of 12 in with its chink of 4 in"),
    QT_TRANSLATE_NOOP("kernel", "hewn chinked walls"),
    QT_TRANSLATE_NOOP("kernel", "a newspaper article of 1999, a rule of thumb"),
    QT_TRANSLATE_NOOP("kernel", "log building standards of 2000 for scribed round logs, settling"),
    // rounds and heights
    QT_TRANSLATE_NOOP("kernel", "%1 rounds (%2 logs in walls %3)"),
    QT_TRANSLATE_NOOP("kernel", "%1 to %2 high (%3 by its rounds)"),
    QT_TRANSLATE_NOOP("kernel", "%1 high (%2 by its rounds)"),
    // measures
    QT_TRANSLATE_NOOP("kernel", "the length is empty"),
    QT_TRANSLATE_NOOP("kernel", "the slope is empty"),
    QT_TRANSLATE_NOOP("kernel", "a length such as 8 1/2 in or 215 mm"),
    QT_TRANSLATE_NOOP("kernel", "a number such as 12, 1.5, 3/16 or 6 1/2"),
    QT_TRANSLATE_NOOP("kernel", "a slope such as 1:8, 7.125 deg, 1 in in 8 in, 0.125 or level"),
    QT_TRANSLATE_NOOP("kernel", "a number is missing"),
    QT_TRANSLATE_NOOP("kernel", "%1 stands where a number should"),
    QT_TRANSLATE_NOOP("kernel", "%1 is not a unit of length"),
    QT_TRANSLATE_NOOP("kernel", "mm, cm, m, in, ft, or the marks ' for feet and \" for inches"),
    QT_TRANSLATE_NOOP("kernel", "%1 stands behind the end of the length"),
    QT_TRANSLATE_NOOP("kernel", "%1 stands behind the end of the slope"),
    QT_TRANSLATE_NOOP("kernel", "feet in front of inches must be a whole number"),
    QT_TRANSLATE_NOOP("kernel", "the number behind the feet has no unit"),
    QT_TRANSLATE_NOOP("kernel", "only inches can stand behind feet"),
    QT_TRANSLATE_NOOP("kernel", "inches behind feet are not under 12"),
    QT_TRANSLATE_NOOP("kernel", "such as %1"),
    QT_TRANSLATE_NOOP("kernel", "the length is over 1000 km"),
    QT_TRANSLATE_NOOP("kernel", "a length that a shell can have"),
    QT_TRANSLATE_NOOP("kernel", "the slope is steeper than 10:1 (84 degrees)"),
    QT_TRANSLATE_NOOP("kernel", "a slope needs a run over 0"),
    QT_TRANSLATE_NOOP("kernel", "the rise is not followed by \"in\" and a run"),
    QT_TRANSLATE_NOOP("kernel", "a comma in a number can be read in two ways"),
    QT_TRANSLATE_NOOP("kernel", "a decimal point and no thousands mark, such as 2.4 or 2400"),
    QT_TRANSLATE_NOOP("kernel", "no digit stands behind the decimal point"),
    QT_TRANSLATE_NOOP("kernel", "no whole number stands under the fraction bar"),
    QT_TRANSLATE_NOOP("kernel", "a fraction cannot have zero under the bar"),
    QT_TRANSLATE_NOOP("kernel", "the fraction behind a whole number is not under 1"),
    QT_TRANSLATE_NOOP("kernel", "the number has too many digits to be read exactly"),
    QT_TRANSLATE_NOOP("kernel", "at most 30 digits"),
    QT_TRANSLATE_NOOP("kernel", "the number has no unit"),
    QT_TRANSLATE_NOOP("kernel", "nothing"),
    // files and outputs
    QT_TRANSLATE_NOOP("kernel", "cannot write \"%1\": %2"),
    QT_TRANSLATE_NOOP("kernel", "cannot read \"%1\": %2"),
    QT_TRANSLATE_NOOP("kernel", "cannot make the folder \"%1\": %2"),
    QT_TRANSLATE_NOOP("kernel", "cannot replace \"%1\": %2"),
    QT_TRANSLATE_NOOP("kernel", "cannot remove \"%1\": %2"),
    QT_TRANSLATE_NOOP("kernel", "no space is left on the disk; free some or choose another folder"),
    QT_TRANSLATE_NOOP("kernel", "you may not write there; choose a folder of your own or change its rights"),
    QT_TRANSLATE_NOOP("kernel", "the disk is read-only; choose a folder on another one"),
    QT_TRANSLATE_NOOP("kernel",
                      "part of the path is a file, not a folder; rename that file or choose another path"),
    QT_TRANSLATE_NOOP("kernel", "a file of that name stands in the way; rename it or choose another path"),
    QT_TRANSLATE_NOOP("kernel", "a folder of that name stands in the way; rename it or choose another path"),
    QT_TRANSLATE_NOOP("kernel", "there is no such file or folder; check the path"),
    QT_TRANSLATE_NOOP("kernel", "the name is too long; choose a shorter one"),
    QT_TRANSLATE_NOOP(
        "kernel", "the file would be larger than is allowed here; choose another disk or raise the limit"),
    QT_TRANSLATE_NOOP("kernel", "part of the folder lies on another disk; choose a folder that lies on one"),
    QT_TRANSLATE_NOOP("kernel", "cannot use \"%1\": %2"),
    QT_TRANSLATE_NOOP("kernel",
                      "cannot write \"%1\": another export is writing there; wait until it is done or "
                      "choose another folder"),
    QT_TRANSLATE_NOOP("kernel", "the files in \"%1\" were made from another document, %2; nothing was "
                                "written; choose another folder, or replace them"),
    QT_TRANSLATE_NOOP("kernel", "files of your own stand in the way in \"%1\" (made by no export, or changed "
                                "since): %2; nothing was written; move them, choose another folder, or "
                                "replace them"),
    QT_TRANSLATE_NOOP("kernel", "%1 and %2 more"),
    QT_TRANSLATE_NOOP("kernel", "the exporter \"%1\" failed: %2"),
    QT_TRANSLATE_NOOP("kernel", "this list"),
    QT_TRANSLATE_NOOP("kernel", "stopped; nothing was written"),
    QT_TRANSLATE_NOOP("kernel", "picture"),
    QT_TRANSLATE_NOOP("kernel", "list"),
    QT_TRANSLATE_NOOP("kernel", "sheets"),
    QT_TRANSLATE_NOOP("kernel", "drawings"),
    QT_TRANSLATE_NOOP("kernel", "templates"),
    QT_TRANSLATE_NOOP("kernel", "tags"),
    QT_TRANSLATE_NOOP("kernel", "book"),
    QT_TRANSLATE_NOOP("kernel", "step"),
    QT_TRANSLATE_NOOP("kernel", "mesh"),
    QT_TRANSLATE_NOOP("kernel", "cut sheets"),
    QT_TRANSLATE_NOOP("kernel", "cut lists"),
    QT_TRANSLATE_NOOP("kernel", "picture.png, the shell as it will stand"),
    QT_TRANSLATE_NOOP("kernel", "cut list, list by tag, pegs, lengths to order and totals as CSV"),
    QT_TRANSLATE_NOOP("kernel", "cut-sheets.pdf, one cut sheet for each distinct piece"),
    QT_TRANSLATE_NOOP(
        "kernel", "drawings.pdf, foundation, walls, sections and rounds, and story-poles.pdf at full size"),
    QT_TRANSLATE_NOOP("kernel",
                      "templates.pdf, every tail and notch at full size, and the same as DXF for a machine"),
    QT_TRANSLATE_NOOP("kernel", "tags.pdf, a tag with a QR code for every log, and packing-list.pdf"),
    QT_TRANSLATE_NOOP("kernel", "book.pdf, cover, index, legend and all sheets in one"),
    QT_TRANSLATE_NOOP("kernel",
                      "shell.step, the whole shell as solids, and pieces/TAG.step for each distinct piece"),
    QT_TRANSLATE_NOOP("kernel", "shell.glb, the shell for phones, browsers and slides"),
};

} // namespace

std::span<const char *const> kernel_phrases() {
    return phrases;
}

} // namespace roundlay::window
