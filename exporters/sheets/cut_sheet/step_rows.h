// The rows of a cut sheet's table of cuts: each cut with its place in words.
#pragma once

#include "exporters/sheets/cut_sheet/features.h"
#include "exporters/sheets/drawing/words.h"

#include <string>
#include <vector>

namespace roundlay::sheets {

/// Number or letter, words, along, rise, across, rise.
using StepRow = std::vector<std::string>;

StepRow row_of(const Notch &n, const Features &features, const Words &words);
StepRow row_of(const BoxPart &b, const Features &features, const Words &words);
StepRow row_of(const Scope &s, const Features &features, const Words &words);
StepRow row_of(const TailedEnd &t, const Words &words);
StepRow row_of(const MendPart &m, const Features &f, const Words &words);

/// Where there are words alone.
StepRow in_words(const std::string &mark, const std::string &words);

/// What each face loses, while the blank's own faces are there to measure from.
std::string taper_words(const Features &f, const Words &words);
/// Where the stick's own round surface stays.
std::string wane_words(const Features &features, const Words &words);
/// The flat faces of a round stick; empty where it stays round all about.
std::string flat_words(const Features &f, const Words &words);

/// Behind what is told already, after a comma.
inline void add_part(std::string &all, const std::string &part) {
    all += (all.empty() ? "" : ", ") + part;
}

} // namespace roundlay::sheets
