// What the kernel and the exporters say, as phrases with holes, for the translators.
//
// The kernel builds its sentences itself and knows no languages. A sentence is found again by its fixed
// words; what stands in the holes (%1 …) is looked up in its turn. A sentence that is not here stays as it
// is.
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
    QT_TRANSLATE_NOOP("kernel",
                      "a load over 0 up to 50 kPa: a number in kPa without quotes, or text with its unit such as \"40 psf\""),
    QT_TRANSLATE_NOOP("kernel", "\"%1\" is too long"),
    QT_TRANSLATE_NOOP("kernel", "at most 200 characters"),
    QT_TRANSLATE_NOOP("kernel", "\"%1\" has a control character in it"),
    QT_TRANSLATE_NOOP("kernel", "plain text on one line"),
    QT_TRANSLATE_NOOP("kernel", "joists cannot lie from wall \"%1\" to itself"),
    QT_TRANSLATE_NOOP("kernel", "the wall across the room"),
    // places
    QT_TRANSLATE_NOOP("kernel", "wall %1"),
    QT_TRANSLATE_NOOP("kernel", "walls %1 and %2"),
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
    QT_TRANSLATE_NOOP("kernel", "rounds"),
    QT_TRANSLATE_NOOP("kernel", "plan"),
    QT_TRANSLATE_NOOP("kernel", "openings"),
    QT_TRANSLATE_NOOP("kernel", "%1, piece %2"),
    QT_TRANSLATE_NOOP("kernel", "top of the walls"),
    QT_TRANSLATE_NOOP("kernel", "pegs"),
    QT_TRANSLATE_NOOP("kernel", "floors"),
    QT_TRANSLATE_NOOP("kernel", "bores"),
    QT_TRANSLATE_NOOP("kernel", "logs"),
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
    QT_TRANSLATE_NOOP("kernel", "left"),
    QT_TRANSLATE_NOOP("kernel", "right"),
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
    QT_TRANSLATE_NOOP("kernel", "lengths are rounded up to the next %1; each peg is cut to its own bore, which "
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
    QT_TRANSLATE_NOOP("kernel", "tailed pocket %1 wide, %2 into the %3 face, %4, middle %5 from the left end"),
    QT_TRANSLATE_NOOP("kernel", "pocket %1 wide, %2 into the %3 face, %4, middle %5 from the left end"),
    QT_TRANSLATE_NOOP("kernel", "through the log's height"),
    QT_TRANSLATE_NOOP("kernel", "%1 deep from the top"),
    QT_TRANSLATE_NOOP("kernel", "%1 up from the underside"),
    QT_TRANSLATE_NOOP("kernel", "%1 up from the lowest line"),
    QT_TRANSLATE_NOOP("kernel", "%1 up to %2 over %3"),
    QT_TRANSLATE_NOOP("kernel",
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
    QT_TRANSLATE_NOOP("kernel",
                      "saddle of radius %1 at %2 over %3, its top %4 over %5, %6 clear"),
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
    // settling, weights, loads and woods that are not known
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
    QT_TRANSLATE_NOOP("kernel",
                      "A screen by textbook formulas, never an approval: loads, grade, notches and "
                      "bearings are for local code and a licensed professional to decide."),
    QT_TRANSLATE_NOOP("kernel",
                      "Loads: %1; and each timber's own weight, at the high end. E %2 is a mean of "
                      "small clear green %3, no design value: sticks with knots bend more (%4). No species "
                      "is stated: eastern hemlock is taken."),
    QT_TRANSLATE_NOOP("kernel",
                      "Loads: %1; and each timber's own weight, at the high end. E %2 is a mean of "
                      "small clear green %3, no design value: sticks with knots bend more (%4)."),
    QT_TRANSLATE_NOOP("kernel",
                      "floor %1 live %2, dead %3 (none is stated, so 10 lb/ft2 rounded up is taken)"),
    QT_TRANSLATE_NOOP("kernel",
                      "floor %1 live %2, dead %3"),
    QT_TRANSLATE_NOOP("kernel", "as stated; by %1 it would be %2"),
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
    QT_TRANSLATE_NOOP("kernel", "as the document says"),
    QT_TRANSLATE_NOOP("kernel", "13 mm in 300 mm"),
    QT_TRANSLATE_NOOP("kernel", "6 percent"),
    QT_TRANSLATE_NOOP("kernel", "4 percent"),
    QT_TRANSLATE_NOOP("kernel", "3/16 in per log"),
    QT_TRANSLATE_NOOP("kernel", "seen"),
    QT_TRANSLATE_NOOP("kernel", "second-hand"),
    QT_TRANSLATE_NOOP("kernel", "from memory"),
    QT_TRANSLATE_NOOP("kernel", "derived"),
    QT_TRANSLATE_NOOP(
        "kernel", "Settling spaces follow the rule named, which may not be your local one; local code and "
                  "a licensed professional decide."),
    QT_TRANSLATE_NOOP(
        "kernel", "the space stated over its frame, %1, leaves nothing of its height of %2; %3 asks for %4"),
    QT_TRANSLATE_NOOP("kernel",
                      "the space stated over its frame, %1, is less than the %2 of %3; logs that come down "
                      "further press on the frame. Local code and a licensed professional decide"),
    QT_TRANSLATE_NOOP(
        "kernel", "the settling rule stated, %1, leaves less over frames than %2, which is taken for such "
                  "walls where none is stated"),
    QT_TRANSLATE_NOOP("kernel", "wood"),
    QT_TRANSLATE_NOOP("kernel", "%1; until then no weight is given and no floor is screened"),
    QT_TRANSLATE_NOOP("kernel", "no values are known for the species \"%1\"; did you mean \"%2\"?"),
    QT_TRANSLATE_NOOP("kernel", "no values are known for the species \"%1\"; known are %2"),
    QT_TRANSLATE_NOOP("kernel", "no species is stated: weights and spans are worked out for %1"),
    QT_TRANSLATE_NOOP("kernel", "no live_load is stated, so its timbers are not screened for span"),
    QT_TRANSLATE_NOOP("kernel",
                      "no dead_load is stated: %1 is taken for boards and what lies on them, and the "
                      "timbers' own weight on top"),
    QT_TRANSLATE_NOOP(
        "kernel", "%1 cuts %2 away under it; %3, %4 of its height, is the deepest that a code lets joists "
                  "be notched (IRC R502.8.1, second-hand), and local code decides"),
    QT_TRANSLATE_NOOP("kernel", "none published for such logs: a licensed person judges"),
    QT_TRANSLATE_NOOP("kernel", "an end of it"),
    QT_TRANSLATE_NOOP("kernel", "its seat on %1"),
    QT_TRANSLATE_NOOP("kernel", "a quarter"),
    QT_TRANSLATE_NOOP("kernel", "a sixth"),
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
    QT_TRANSLATE_NOOP("kernel", "log rules"),
    QT_TRANSLATE_NOOP("kernel",
                      "board feet of the order list are of one stick each, of the least round and the ordered length, by the "
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
    // woods
    QT_TRANSLATE_NOOP("kernel", "white spruce"),
    QT_TRANSLATE_NOOP("kernel", "Engelmann spruce"),
    QT_TRANSLATE_NOOP("kernel", "Sitka spruce"),
    QT_TRANSLATE_NOOP("kernel", "black spruce"),
    QT_TRANSLATE_NOOP("kernel", "red spruce"),
    QT_TRANSLATE_NOOP("kernel", "eastern hemlock"),
    QT_TRANSLATE_NOOP("kernel", "western hemlock"),
    QT_TRANSLATE_NOOP("kernel", "Douglas-fir (coast)"),
    QT_TRANSLATE_NOOP("kernel", "lodgepole pine"),
    QT_TRANSLATE_NOOP("kernel", "eastern white pine"),
    QT_TRANSLATE_NOOP("kernel", "ponderosa pine"),
    QT_TRANSLATE_NOOP("kernel", "western redcedar"),
    QT_TRANSLATE_NOOP("kernel", "western larch"),
    QT_TRANSLATE_NOOP("kernel", "subalpine fir"),
    QT_TRANSLATE_NOOP("kernel", "white oak"),
    // findings of the plan
    QT_TRANSLATE_NOOP("kernel",
                      "walls %1 and %2 run in one line; state them as one wall or turn the second one"),
    QT_TRANSLATE_NOOP("kernel", "walls %1 and %2 turn too little or too sharply for tails; a corner between "
                                "30 and 150 degrees can be cut, best a right angle"),
    QT_TRANSLATE_NOOP(
        "kernel",
        "a shell needs at least four walls, %1 are stated; walk once round the outside, one [[wall]] a side"),
    QT_TRANSLATE_NOOP(
        "kernel",
        "the walk round the outside ends %1 of where it began; the walls' lengths must bring it back"),
    QT_TRANSLATE_NOOP("kernel",
                      "they cross or touch; the outside must run once round without meeting itself"),
    QT_TRANSLATE_NOOP("kernel", "%1 east and %2 north"),
    QT_TRANSLATE_NOOP("kernel", "%1 east and %2 south"),
    QT_TRANSLATE_NOOP("kernel", "%1 west and %2 north"),
    QT_TRANSLATE_NOOP("kernel", "%1 west and %2 south"),
    QT_TRANSLATE_NOOP("kernel", "%1 east"),
    QT_TRANSLATE_NOOP("kernel", "%1 west"),
    QT_TRANSLATE_NOOP("kernel", "%1 north"),
    QT_TRANSLATE_NOOP("kernel", "%1 south"),
    QT_TRANSLATE_NOOP("kernel", "wall %1 is %2 long, shorter than its two tails; it must be longer than %3"),
    QT_TRANSLATE_NOOP("kernel", "walls %1 and %2 meet wall %3 %4; between two notches of a log %5 of wood "
                                "are needed, so move one by %6 or more"),
    QT_TRANSLATE_NOOP("kernel", "%1 apart"),
    QT_TRANSLATE_NOOP("kernel", "in the same place or past its end"),
    QT_TRANSLATE_NOOP(
        "kernel", "a partition meets wall %1 past its end; the wall runs from %2 to %3 seen from its left"),
    QT_TRANSLATE_NOOP(
        "kernel", "walls %1 and %2 run into one another by %3, their ends included; set them further apart"),
    QT_TRANSLATE_NOOP(
        "kernel",
        "an overhanging end of one runs into the other; there is room for %1 of overhang between them"),
    QT_TRANSLATE_NOOP("kernel", "walls %1 and %2 would both start with a %3 log: going round a closed way of "
                                "walls the starts must change at every corner, which takes an even number of "
                                "walls; one wall more or less on the way through corner %4 would fit"),
    QT_TRANSLATE_NOOP("kernel", "full"),
    QT_TRANSLATE_NOOP("kernel", "half"),
    QT_TRANSLATE_NOOP(
        "kernel",
        "it starts in wall %1, which is none of the outside walls or of the partitions stated before it"),
    QT_TRANSLATE_NOOP(
        "kernel", "it leaves wall %1 at too sharp an angle for tails; between 30 and 150 degrees can be cut"),
    QT_TRANSLATE_NOOP("kernel", "it ends in wall %1, which this shell does not have"),
    QT_TRANSLATE_NOOP(
        "kernel", "it meets wall %1 at too sharp an angle for tails; between 30 and 150 degrees can be cut"),
    QT_TRANSLATE_NOOP(
        "kernel",
        "wall %1 does not lie ahead of it; walk from wall %2 toward wall %1, or state another wall"),
    // findings of rounds and tails
    QT_TRANSLATE_NOOP("kernel", "%1 rounds reach %2 at a pitch of %3, not the stated %4"),
    QT_TRANSLATE_NOOP(
        "kernel",
        "%1 rounds at %2 reach %3, not the stated height of %4; state two of count, pitch and height"),
    QT_TRANSLATE_NOOP("kernel", "state two of count, pitch and height; the third is worked out"),
    QT_TRANSLATE_NOOP("kernel", "the shell has %1 rounds; between 1 and %2 can be laid"),
    QT_TRANSLATE_NOOP("kernel", "a gap of %1 leaves no log in a pitch of %2"),
    QT_TRANSLATE_NOOP("kernel",
                      "logs %1 high do not fit in a pitch of %2; a log is at most as high as the pitch"),
    QT_TRANSLATE_NOOP(
        "kernel",
        "the log of this round would be %1 high; a higher pitch, a smaller gap or a higher log leaves wood"),
    QT_TRANSLATE_NOOP("kernel", "the log of this round would be %1 wide at one end"),
    QT_TRANSLATE_NOOP("kernel", "the log of this round is %1 wide, more than its wall's %2; state the wall's "
                                "thickness as that of its widest log"),
    QT_TRANSLATE_NOOP("kernel",
                      "sizes are stated for a log that this shell does not have; rounds count from 1"),
    QT_TRANSLATE_NOOP("kernel", "%1 rounds (%2 logs in walls %3)"),
    QT_TRANSLATE_NOOP("kernel", "%1 to %2 high (%3 by its rounds)"),
    QT_TRANSLATE_NOOP("kernel", "%1 high (%2 by its rounds)"),
    QT_TRANSLATE_NOOP("kernel", "the top is to be level but ends %1 out of it: wall %2 reaches "
                                "%3, wall %4 only %5 at its lower end; other logs in the rounds below, or a plate hewn to suit, make it so"),
    QT_TRANSLATE_NOOP("kernel", "something is stated of piece %1, but this round has %2 "
                                "pieces, counted from the left"),
    QT_TRANSLATE_NOOP("kernel", "something is stated of piece %1, but this round has %2 piece, "
                                "counted from the left"),
    QT_TRANSLATE_NOOP("kernel", "going up corner %1, two logs of wall %2 follow one another at round %3"),
    QT_TRANSLATE_NOOP("kernel", "%1; the pitches of the two walls drift apart by half a round, make them equal"),
    QT_TRANSLATE_NOOP("kernel", "%1; the heights stated of single logs make the two walls drift apart by half a "
                                "round; measure them again, or change logs of the two walls for others"),
    QT_TRANSLATE_NOOP("kernel", "%1; the log of wall %2, round %3, is stated %4 high: at %5 they alternate; "
                                "measure it again, or lay another log there"),
    QT_TRANSLATE_NOOP("kernel", "%1; the half log of wall %2, round %3, is stated %4 high: at %5 they alternate; "
                                "measure it again, or lay another log there"),
    QT_TRANSLATE_NOOP("kernel", "the saddle leaves %1 of the log over the one that it crosses, under the "
                                "least of %2; a pitch of %3 would fit"),
    QT_TRANSLATE_NOOP("kernel", "the tail is %1 thick at its thinnest, under the least of %2; a pitch of %3 "
                                "or a flatter slope would fit"),
    QT_TRANSLATE_NOOP("kernel", "the seam runs %1 outside the log's body, so that much of the tail is not "
                                "there; a smaller gap, a flatter slope or a higher log would fill it"),
    QT_TRANSLATE_NOOP("kernel", "saddles and tails do not go together: logs scoped over one another are so "
                                "all round; state one kind for the whole shell"),
    QT_TRANSLATE_NOOP(
        "kernel",
        "floors are let into hewn logs only, not into logs scoped over one another; leave them out"),
    QT_TRANSLATE_NOOP("kernel",
                      "a bore in logs scoped over one another stands in the middle of its wall; leave out "
                      "from_outside"),
    QT_TRANSLATE_NOOP("kernel", "logs scoped over one another are even cylinders whose spacing is the pitch "
                                "alone; leave out the gap, or state it as the scribe of the notch"),
    QT_TRANSLATE_NOOP("kernel", "logs scoped over one another are even cylinders whose spacing is the pitch "
                                "alone; state their diameter in place of heights and widths"),
    QT_TRANSLATE_NOOP("kernel", "logs scoped over one another are even cylinders whose spacing is the pitch "
                                "alone; state its diameter in place of heights and widths"),
    QT_TRANSLATE_NOOP("kernel", "logs scoped over one another are even cylinders whose spacing is the pitch "
                                "alone; leave out log_height"),
    QT_TRANSLATE_NOOP(
        "kernel",
        "a saddle needs wood past it: an overhang of %1 at least, better of the log's own diameter"),
    QT_TRANSLATE_NOOP("kernel",
                      "a log %1 thick does not reach the log below it at a pitch of %2; a diameter of "
                      "at least that, or a lower pitch would fit"),
    QT_TRANSLATE_NOOP(
        "kernel",
        "a stick %1 thick leaves a flat of only %2 on a log %3 high; %4 are needed, which a stick of %5 has"),
    QT_TRANSLATE_NOOP(
        "kernel", "a stick %1 thick leaves no flat on a log %2 high; %3 are needed, which a stick of %4 has"),
    // findings of openings
    QT_TRANSLATE_NOOP("kernel", "an opening needs a width and a height above zero"),
    QT_TRANSLATE_NOOP("kernel", "it is %1 wide; between the corners of wall %2 there is room for %3 at most"),
    QT_TRANSLATE_NOOP("kernel",
                      "it comes too near the tails of corner %1; it fits from %2 to %3 from the left"),
    QT_TRANSLATE_NOOP(
        "kernel",
        "it comes too near the notches of wall %1 at %2; it fits up to %3 or from %4 from the left"),
    QT_TRANSLATE_NOOP("kernel", "the sill lies under the foundation"),
    QT_TRANSLATE_NOOP("kernel", "it ends %1 above the foundation, but wall %2 is only %3 high; a height "
                                "under %4 leaves a log over it"),
    QT_TRANSLATE_NOOP("kernel", "it ends %1 above the foundation, but wall %2 is only %3 high; more rounds "
                                "or a lower sill would hold it"),
    QT_TRANSLATE_NOOP("kernel", "it overlaps %1; side by side they need an island of at least %2"),
    QT_TRANSLATE_NOOP(
        "kernel",
        "it leaves too little wood between itself and %1; side by side they need an island of at least %2"),
    QT_TRANSLATE_NOOP("kernel", "there is no wall %1 in this shell"),
    QT_TRANSLATE_NOOP("kernel", "a groove %1 wide leaves too little of jambs %2 thick; half of that at most"),
    QT_TRANSLATE_NOOP("kernel", "a groove %1 deep is more than a spline needs; %2 at most"),
    QT_TRANSLATE_NOOP("kernel", "sills that fall %1 through the wall cut their logs in two"),
    QT_TRANSLATE_NOOP("kernel", "%1; no small change of this one figure mends it: a list of "
                                "the seams tells which heights cost no wood"),
    QT_TRANSLATE_NOOP("kernel", "%1; lower its sill by %2 and add as much to its height"),
    QT_TRANSLATE_NOOP("kernel", "%1; raise its sill by %2 and take as much off its height"),
    QT_TRANSLATE_NOOP("kernel", "%1; lower its sill by %2"),
    QT_TRANSLATE_NOOP("kernel", "%1; raise its sill by %2"),
    QT_TRANSLATE_NOOP("kernel", "%1; lower its top by %2"),
    QT_TRANSLATE_NOOP("kernel", "%1; raise its top by %2"),
    QT_TRANSLATE_NOOP("kernel", "%1 leaves only %2 of the log under it, where at least %3 should stay"),
    QT_TRANSLATE_NOOP("kernel", "%1 leaves only %2 of the log over it, where at least %3 should stay"),
    QT_TRANSLATE_NOOP("kernel",
                      "the island is %1 long; two grooves %2 deep leave too little of it; %3 at most"),
    QT_TRANSLATE_NOOP("kernel", "the log over it, %1, runs only %2 past its %3 jamb; %4 is asked for: move "
                                "the opening by %5, or change a height"),
    QT_TRANSLATE_NOOP("kernel", "it runs into %1 of the foundation or leaves too little wood beside it; it "
                                "fits wholly over the step with a sill of %2 or more, or %3 beside it"),
    // findings of pegs and bores
    QT_TRANSLATE_NOOP("kernel",
                      "piece %1 on %2 needs %3 pegs, but its ends, notches and other bores leave no place for "
                      "one"),
    QT_TRANSLATE_NOOP("kernel",
                      "piece %1 on %2 needs 1 peg, but its ends, notches and other bores leave no place for one"),
    QT_TRANSLATE_NOOP("kernel",
                      "piece %1 on %2 needs %3 pegs, and only %4 can stand there between ends, notches and "
                      "other bores"),
    QT_TRANSLATE_NOOP("kernel",
                      "piece %1 on %2 has no place for a peg on a stretch: its fastening places lie up to %3 "
                      "apart, and never more than %4 is asked for"),
    QT_TRANSLATE_NOOP("kernel",
                      "%1 on %2: held in %3 places where %4 are asked for, as there is no room for more; local "
                      "code decides whether that is enough"),
    QT_TRANSLATE_NOOP("kernel",
                      "%1 on %2 and %3 more joints of this wall: held in %4 places where %5 are asked for, as "
                      "there is no room for more; local code decides whether that is enough"),
    QT_TRANSLATE_NOOP("kernel",
                      "a bore of %1 leaves no wood beside it in a wall %2 thick; %3 at most"),
    QT_TRANSLATE_NOOP("kernel",
                      "a bore of %1 takes more than half of a wall %2 thick: what is left beside it splits "
                      "easily"),
    QT_TRANSLATE_NOOP("kernel",
                      "a draw of %1 leaves no way through for a peg of %2; %3 at most"),
    QT_TRANSLATE_NOOP("kernel",
                      "square pegs need a side above zero"),
    QT_TRANSLATE_NOOP("kernel",
                      "it goes from round %1 up to round %2: that is through no log"),
    QT_TRANSLATE_NOOP("kernel",
                      "its end in %1 finds no log there"),
    QT_TRANSLATE_NOOP("kernel",
                      "it leaves %1 of wood to the tails of corner %2; less than %3 splits off easily"),
    QT_TRANSLATE_NOOP("kernel",
                      "it leaves %1 of wood to the notches at %2; less than %3 splits off easily"),
    QT_TRANSLATE_NOOP("kernel",
                      "it leaves %1 of wood to %2; less than %3 splits off easily"),
    QT_TRANSLATE_NOOP("kernel",
                      "a groove %1 wide leaves less than half of jambs %2 thick"),
    QT_TRANSLATE_NOOP("kernel",
                      "its cuts leave no sound piece of wood; change what is cut from it"),
    QT_TRANSLATE_NOOP("kernel",
                      "of the log over it, %1, %2 are left to carry over %3. What it carries is not worked out "
                      "here: local code and a licensed professional decide"),
    QT_TRANSLATE_NOOP("kernel",
                      "water that reaches the tops of wall %1's tails runs in along the crossing log, to wall "
                      "%2's inside face; the corner's own notch sheds it"),
    QT_TRANSLATE_NOOP("kernel",
                      "water that reaches the tops of wall %1's tails runs in along the log, to wall %2's "
                      "inside face; the corner's own notch sheds it"),
    QT_TRANSLATE_NOOP("kernel", "bores %1 apart run into one another; keep more than the diameter"),
    QT_TRANSLATE_NOOP("kernel", "a bore %1 from an end breaks out of it"),
    QT_TRANSLATE_NOOP("kernel", "a draw of %1 would break a peg of %2; %3 at most"),
    QT_TRANSLATE_NOOP("kernel", "square pegs of %1 do not hold in bores of %2; their arrises bite where the "
                                "side is between %3 and that"),
    QT_TRANSLATE_NOOP("kernel", "the wall has only %1 rounds"),
    QT_TRANSLATE_NOOP("kernel", "it runs into a cut from %1 to %2 from the left"),
    QT_TRANSLATE_NOOP("kernel", "it runs into a cut from %1 to %2 from the left; %3 from the left would do"),
    QT_TRANSLATE_NOOP("kernel", "there is no whole log %1 from the left: an opening or a notch is there; "
                                "state the rounds that it goes through, or another place"),
    QT_TRANSLATE_NOOP("kernel", "there is no whole log %1 from the left: an opening or a notch is there; "
                                "state the rounds that it goes through, or another place; %2 from the left would do"),
    // findings of floors
    QT_TRANSLATE_NOOP("kernel",
                      "walls %1 and %2 do not face each other: joists lie square between two parallel walls"),
    QT_TRANSLATE_NOOP("kernel",
                      "wall %1 stands in the room between walls %2 and %3; state a floor to each side of it"),
    QT_TRANSLATE_NOOP("kernel", "no joist fits between the sides of the room"),
    QT_TRANSLATE_NOOP("kernel", "a bearing of %1 does not leave %2 of a wall %3 thick; %4 at most would"),
    QT_TRANSLATE_NOOP("kernel", "joists %1 wide do not lie %2 apart on centre; %3 at least"),
    QT_TRANSLATE_NOOP("kernel", "the tailed ends leave only %1 of a joist %2 wide at the wall; a smaller "
                                "tail or bearing leaves half of it"),
    QT_TRANSLATE_NOOP("kernel", "the first joist, %1 from the room's side, lies in the wall; %2 at least"),
    QT_TRANSLATE_NOOP("kernel", "%1 reaches out of the room, which is %2 by %3"),
    QT_TRANSLATE_NOOP("kernel", "%1 meets a wall that stands in the room; keep %2 away from it"),
    QT_TRANSLATE_NOOP(
        "kernel",
        "%1 leaves no room for a joist or trimmer beside it; let it reach the wall, or keep %2 away from it"),
    QT_TRANSLATE_NOOP("kernel", "%1 comes too near another opening of this floor"),
    QT_TRANSLATE_NOOP("kernel", "a floor opening"),
    QT_TRANSLATE_NOOP("kernel", "a beam %1 from wall %2 lies in a wall; between %3 and %4 it fits"),
    QT_TRANSLATE_NOOP("kernel", "a beam %1 from wall %2 crosses a floor opening or its trimmers"),
    QT_TRANSLATE_NOOP("kernel", "no wall square to the beam carries its %1 end"),
    QT_TRANSLATE_NOOP("kernel", "nothing carries the trimmer at the opening's %1 end"),
    QT_TRANSLATE_NOOP("kernel", "near"),
    QT_TRANSLATE_NOOP("kernel", "far"),
    QT_TRANSLATE_NOOP("kernel", "a beam of it carries no joist"),
    QT_TRANSLATE_NOOP("kernel", "its end in %1 lies in %2; move that, or trim the floor there"),
    QT_TRANSLATE_NOOP("kernel", "its end in %1 lies in the notches of wall %2"),
    QT_TRANSLATE_NOOP("kernel", "its end in %1 comes too near the end of a log of round %2; move the opening "
                                "or the floor's first joist"),
    QT_TRANSLATE_NOOP("kernel",
                      "its end in %1 lies under the wall's first log"),
    QT_TRANSLATE_NOOP("kernel", "its end in %1 lies over the wall's top"),
    QT_TRANSLATE_NOOP("kernel", "its end in %1 has no wood under it: its underside lies at the gap over "
                                "round %2"),
    QT_TRANSLATE_NOOP(
        "kernel",
        "%1 reaches into the room and stands in its way; move the joists by the floor's first or spacing"),
    QT_TRANSLATE_NOOP("kernel", "its pocket leaves only %1 of %2 under it"),
    QT_TRANSLATE_NOOP("kernel", "its pocket is closed at the top: %1 stands %2 over it, so it cannot be "
                                "lowered in, only slid"),
    QT_TRANSLATE_NOOP("kernel", "%1; raise the floor by %2"),
    QT_TRANSLATE_NOOP("kernel", "%1; lower the floor by %2"),
    QT_TRANSLATE_NOOP("kernel", "%1; no small change of the floor's level mends it: a list of the seams tells "
                                "how high the logs lie"),
    QT_TRANSLATE_NOOP("kernel", "an end of it bears on %1 of wood; 38 mm (1 1/2 in) is the least that codes "
                                "ask for (Ontario Building Code; IRC R502.6, from memory), and local code decides"),
    QT_TRANSLATE_NOOP("kernel", "it would bend %1 under the live load over a span of %2; a %3th part "
                                "(IRC R301.7, from memory) is %4. "
                                "A screen only: local code and a licensed professional decide"),
    // findings of steps
    QT_TRANSLATE_NOOP("kernel", "a step needs a width and a rise above zero"),
    QT_TRANSLATE_NOOP("kernel", "it runs from %1 to %2, but wall %3 is %4 long"),
    QT_TRANSLATE_NOOP("kernel", "it rises %1, but wall %2 is only %3 high; at most %4 leaves a log on it"),
    QT_TRANSLATE_NOOP("kernel", "it overlaps %1; let it start at %2, where that one ends, or %3 further on"),
    QT_TRANSLATE_NOOP("kernel", "it leaves too little wall between itself and %1; let it start at %2, where "
                                "that one ends, or %3 further on"),
    QT_TRANSLATE_NOOP("kernel", "at corner %1 wall %2 stands %3 high and wall %4 %5; state a step of wall %6 "
                                "that takes in that corner with a rise of %7"),
    QT_TRANSLATE_NOOP("kernel", "the lowest log over the step lies %1 above it; a rise of %2 would carry it, "
                                "else that much is to be packed"),
    QT_TRANSLATE_NOOP("kernel", "the step leaves only %1 of the log that lies on it; a rise of %2 would "
                                "start at the next one, and %3 leave enough"),
    QT_TRANSLATE_NOOP(
        "kernel",
        "it ends %1 from the left, in or too near the notches of corner %2; it fits up to %3 or from %4"),
    QT_TRANSLATE_NOOP("kernel", "it ends %1 from the left, in or too near the notches of corner %2; it fits "
                                "up to %3 or from %4, or where it takes the corner in, to the wall's end"),
    // findings of the review
    QT_TRANSLATE_NOOP("kernel", "these two pieces share %1 of wood"),
    QT_TRANSLATE_NOOP("kernel", "it cannot be lowered into place past %1"),
    QT_TRANSLATE_NOOP("kernel", "a bore of this piece runs into a notch, an edge or another bore"),
    QT_TRANSLATE_NOOP("kernel", "its tails do not lock; only the pegs hold the logs from pulling out"),
    QT_TRANSLATE_NOOP("kernel", "its tails do not lock and there are no pegs: the logs can pull out"),
    QT_TRANSLATE_NOOP("kernel", "water that reaches the tops of wall %1's tails runs in along the log, to "
                                "wall %2's inside face; a half dovetail at this corner sheds it"),
    QT_TRANSLATE_NOOP("kernel", "water that reaches the tops of wall %1's tails runs in along the log, to "
                                "wall %2's inside face; a full dovetail at this corner sheds it"),
    QT_TRANSLATE_NOOP("kernel", "water that reaches the tops of wall %1's tails runs in along the log, to "
                                "wall %2's inside face; no dovetail of this slope sheds it there "
                                "without another warning"),
    QT_TRANSLATE_NOOP("kernel", "water that reaches the tops of wall %1's tails runs in along the log, to "
                                "wall %2's inside face; no dovetail of this slope sheds it there"),
    QT_TRANSLATE_NOOP("kernel", "water that reaches the tops of wall %1's tails runs in along the crossing "
                                "log, to wall %2's inside face; a half dovetail at this corner sheds it"),
    QT_TRANSLATE_NOOP("kernel", "water that reaches the tops of wall %1's tails runs in along the crossing "
                                "log, to wall %2's inside face; a full dovetail at this corner sheds it"),
    QT_TRANSLATE_NOOP("kernel", "water that reaches the tops of wall %1's tails runs in along the crossing "
                                "log, to wall %2's inside face; no dovetail of this slope sheds it there "
                                "without another warning"),
    QT_TRANSLATE_NOOP("kernel", "water that reaches the tops of wall %1's tails runs in along the crossing "
                                "log, to wall %2's inside face; no dovetail of this slope sheds it there"),
    QT_TRANSLATE_NOOP("kernel",
                      "its middle stands %1 out of the line between its ends, and the gap is %2: laid crown "
                      "up it touches the log over it by %3; a straight stick out of it, as it is drawn, is "
                      "that much thinner"),
    QT_TRANSLATE_NOOP(
        "kernel",
        "its middle stands %1 out of the line between its ends, and the gap is %2: laid crown "
        "up it clears the log over it; a straight stick out of it, as it is drawn, is that much thinner"),
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
