// What the document's reader and the exporters say, as phrases with holes, for the translators.
//
// They build these sentences themselves and know no languages. A sentence is found again by its fixed words;
// what stands in the holes (%1 …) is looked up in its turn. A sentence that is not here stays as it is.
// Findings, and what lists and sheets say, are values and are not here: room `words`.
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
    // sides of partitions
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
    QT_TRANSLATE_NOOP("kernel", "this change cannot be stated in state %1 alone"),
    QT_TRANSLATE_NOOP("kernel",
                      "the change written in the text of that state, or made in the state that it stands on"),
    QT_TRANSLATE_NOOP("kernel", "this list"),
    QT_TRANSLATE_NOOP("kernel", "stopped; nothing was written"),
    QT_TRANSLATE_NOOP("kernel",
                      "no templates were made: this shell has no tails, notches or pockets that are "
                      "to be cut to a line; round logs are scribed in place, and what stands has its own"),
    QT_TRANSLATE_NOOP("kernel", "field forms"),
    QT_TRANSLATE_NOOP("kernel", "cut sheets"),
    QT_TRANSLATE_NOOP("kernel", "cut lists"),
    QT_TRANSLATE_NOOP("kernel", "operations"),
    QT_TRANSLATE_NOOP("kernel", "the files in \"%1\" were made from another state of the house, \"%2\"; "
                                "nothing was written; choose another folder, or replace them"),
};

} // namespace

std::span<const char *const> kernel_phrases() {
    return phrases;
}

} // namespace roundlay::window
