#include "exporters/sheets/cut_sheet/snap.h"

#include "exporters/sheets/drawing/columns.h"
#include "exporters/sheets/frame/tables.h"

namespace roundlay::sheets {
namespace {

/// A timber has no outside: its side to measure from is the right one.
std::string across_from(Footing outside, bool timber, const Words &words) {
    switch (outside) {
    case Footing::hewn:
        return timber ? words.say("the right face as hewn") : words.say("the outside face as hewn");
    case Footing::touched:
        return timber ? words.say("the outermost line of its right")
                      : words.say("the outermost line of its outside");
    case Footing::face:
        break;
    }
    return timber ? words.say("the right face") : words.say("the outside face");
}

/// "150", or of a line that is not as high at both ends "150 at the datum end and 162 at the far end".
std::string at_both_ends(double datum, double far, const Words &words) {
    const std::string a = words.length(datum), b = words.length(far);
    return a == b ? a : words.say("%1 at the datum end and %2 at the far end", a, b);
}

/// Over what there is when it is snapped: the blank, and again what is hewn out of that where its under face
/// tapers.
std::string over_the_wood(const Features &f, const Words &words) {
    const double length = f.blank.length;
    const auto over = [&](double x) { return f.level.at.at(x) - f.lowest(x); };
    const std::string heights = at_both_ends(over(0), over(length), words);
    if (f.under_footing() == Footing::touched)
        return words.say("%1 over the lowest line of the stick", heights);
    if (!f.under.tapers()) return words.say("%1 over the under face", heights);
    const std::string on_blank = at_both_ends(f.level.at.at(0), f.level.at.at(length), words);
    return words.say("%1 over the blank's under face, and when it is hewn %2 over that", on_blank, heights);
}

std::string line_words(const Features &f, const Words &words) {
    const std::string over = over_the_wood(f, words);
    switch (f.level.runs) {
    case LevelRuns::axis:
        return words.say("through the heart at both ends, along both sides: %1", over);
    case LevelRuns::in_between:
        return words.say("along both sides, at a slant: %1", over);
    case LevelRuns::level:
        break;
    }
    return words.say("level along both sides: %1", over);
}

std::string plumb_words(const Features &f, const Words &words) {
    const double length = f.blank.length;
    const auto middle = [&](double x) { return (f.innermost(x) + f.outermost(x)) / 2; };
    const std::string on_blank = at_both_ends(middle(0), middle(length), words),
                      as_hewn = at_both_ends(middle(0) - f.outermost(0), middle(length) - f.outermost(length),
                                             words);
    const std::string places = on_blank == as_hewn
                                   ? as_hewn
                                   : words.say("on the blank %1, and when it is hewn %2,", on_blank, as_hewn);
    return f.piece->timber ? words.say("plumb on both ends, %1 from the right", places)
                           : words.say("plumb on both ends, %1 from the outside", places);
}

} // namespace

Table snap_table(const Features &features, const Words &words) {
    Table table = table_called(words, words.say("Snap first"));
    table.columns = {flush_left(words.say("Line"), 12), flush_left(words.say("Where"), 95)};
    table.rows.push_back({words.say("LL"), line_words(features, words)});
    if (features.end_line)
        table.rows.push_back({words.say("EL"), words.say("square round the log, %1 from the datum end",
                                                         in_mm(*features.end_line))});
    table.rows.push_back({words.say("PL"), plumb_words(features, words)});
    return table;
}

/// Only what is there when the number is marked may be measured from.
std::string reading_words(const Features &features, const Words &words) {
    const std::string across =
        across_from(features.outside_footing(), features.piece->timber.has_value(), words);
    std::string all =
        features.end_line
            ? words.say(
                  "Lengths are from the datum end, level, the tape held to the end line EL with its own "
                  "figure, heights over (+) or under (-) the level line LL, across from %1. ",
                  across)
            : words.say("Lengths are from the datum end, level, heights over (+) or under (-) the level line "
                        "LL, across from %1. ",
                        across);
    if (features.round != nullptr && features.outside_footing() != Footing::touched)
        all += words.say("A straightedge is held to the faces past the wane. ");
    if (features.tapers())
        all += words.say(
            "Hew the tapers first: distances across are from the hewn face at its own place along the "
            "log. Slopes are from level. ");
    return all;
}

std::string faces_words(bool timber, const Words &words) {
    return timber
               ? words.say("The datum end lies in the wall that the floor starts in, or to its left; right "
                           "and left are seen from it. Each face is drawn as it shows when the timber is "
                           "rolled, the datum end always left.")
               : words.say("The datum end is the left end seen from outside. Each face is drawn as it "
                           "shows when the log is rolled, the datum end always left.");
}

std::string line_on_pole(const Features &features, const Piece &piece, const Words &words) {
    const double foot = piece.frame.origin.z, length = features.blank.length;
    const std::string a = words.length(foot + features.level.at.at(0)),
                      b = words.length(foot + features.level.at.at(length));
    return a == b ? a : words.say("%1 to %2", a, b);
}

} // namespace roundlay::sheets
