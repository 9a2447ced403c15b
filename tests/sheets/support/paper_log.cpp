// What the log is before it is notched: tapers, the round stick, slanting ends.
#include "tests/sheets/support/paper_cuts.h"
#include "tests/sheets/support/paper_table.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace roundlay::test {
namespace {

const std::string len = a_length;

double part_of(const std::smatch &m, std::size_t i) {
    return printed_mm(m[i]);
}

FaceCut face_cut(LogFace side, const PaperLog::Face &face, Vec3 outward) {
    const double across = outward.y + outward.z; // one of them, 1 or -1
    const Vec3 normal = outward - Vec3{across * face.per_mm, 0, 0};
    return {side, {unit(normal), across * face.at_datum / length(normal)}};
}

} // namespace

double PaperLog::lowest(double x) const {
    return round
               ? std::max(under.at(x), stick.from.z + (stick.to.z - stick.from.z) * x / length - stick.radius)
               : under.at(x);
}
double PaperLog::highest(double x) const {
    return round ? std::min(top.at(x), stick.from.z + (stick.to.z - stick.from.z) * x / length + stick.radius)
                 : top.at(x);
}
double PaperLog::outermost(double x) const {
    return round ? std::max(outside.at(x), width / 2 - stick.radius) : outside.at(x);
}
double PaperLog::innermost(double x) const {
    return round ? std::min(inside.at(x), width / 2 + stick.radius) : inside.at(x);
}

/// "Hew to the tapers, off the blank at its datum and far end: top 0 and 11, under 0 and 12"
bool add_taper(const PaperStep &step, PaperLog &log, std::vector<Cut> &cuts) {
    if (!step.words.starts_with("Hew ")) return false;
    static const std::regex item("(top|under|outside|inside|right|left) (" + len + ") and (" + len + ")");
    for (auto it = std::sregex_iterator(step.words.begin(), step.words.end(), item);
         it != std::sregex_iterator(); ++it) {
        const std::string name = (*it)[1];
        const double off = part_of(*it, 2), more = (part_of(*it, 3) - off) / log.length;
        if (name == "top") {
            log.top = {log.height - off, -more};
            cuts.emplace_back(face_cut(LogFace::top, log.top, {0, 0, 1}));
        } else if (name == "under") {
            log.under = {off, more};
            cuts.emplace_back(face_cut(LogFace::under, log.under, {0, 0, -1}));
        } else if (name == "outside" || name == "right") {
            log.outside = {off, more};
            cuts.emplace_back(face_cut(LogFace::outside, log.outside, {0, -1, 0}));
        } else {
            log.inside = {log.width - off, -more};
            cuts.emplace_back(face_cut(LogFace::inside, log.inside, {0, 1, 0}));
        }
    }
    return true;
}

/// "Stick 265 round, in the middle of the width: its middle at +93 at the datum end, +102 at the far", or
/// with the level line through it, which is told over the under face, or over the stick's own lowest line
/// where it does not reach that.
bool add_stick(const PaperStep &step, const PaperLine &line, PaperLog &log, std::vector<Cut> &cuts) {
    static const std::regex form("Stick (" + len +
                                 ") round, in the middle of the width(?:, the level line through its "
                                 "middle|: its middle at (" +
                                 len + ")(?: at the datum end, (" + len + ") at the far)?)");
    std::smatch m;
    if (!std::regex_match(step.words, m, form)) return false;
    if (m[2].matched == line.axis) throw std::runtime_error("the level line and the stick disagree");
    const double datum = m[2].matched ? part_of(m, 2) : 0, far = m[3].matched ? part_of(m, 3) : datum;
    log.stick.radius = part_of(m, 1) / 2;
    log.stick.from = {0, log.width / 2, log.line.at(0) + datum};
    log.stick.to = {log.length, log.width / 2, log.line.at(log.length) + far};
    log.round = true;
    cuts.emplace_back(log.stick);
    return true;
}

/// "Hew flat, from the stick's middle: outside 100, inside 100, top 95 at the datum end and 90 at the far".
/// They only repeat what the blank and the stick say, so it is held against those.
bool holds_flats(const PaperStep &step, const PaperLog &log) {
    if (!step.words.starts_with("Hew flat, from the stick's middle: ")) return false;
    static const std::regex item("(top|under|outside|inside|right|left) (" + len +
                                 ")( beyond it)?(?: at the datum end and (" + len +
                                 ")( beyond it)? at the far)?");
    int faces = 0;
    for (auto it = std::sregex_iterator(step.words.begin(), step.words.end(), item);
         it != std::sregex_iterator(); ++it, ++faces) {
        const std::string name = (*it)[1];
        const bool level = name == "top" || name == "under",
                   low = name == "under" || name == "outside" || name == "right";
        const double datum = ((*it)[3].matched ? -1 : 1) * part_of(*it, 2);
        const double far = (*it)[4].matched ? ((*it)[5].matched ? -1 : 1) * part_of(*it, 4) : datum;
        const PaperLog::Face &face = name == "top"     ? log.top
                                     : name == "under" ? log.under
                                     : low             ? log.outside
                                                       : log.inside;
        const auto apart = [&](const Vec3 &middle, double x) {
            return (low ? -1 : 1) * (face.at(x) - (level ? middle.z : middle.y));
        };
        const double prints =
            step.words.find('"') == std::string::npos ? 2.1 : 3.4; // four, each half a digit off
        if (std::abs(apart(log.stick.from, 0) - datum) > prints ||
            std::abs(apart(log.stick.to, log.length) - far) > prints)
            throw std::logic_error("a flat face of the stick is elsewhere: " + step.words);
    }
    return faces > 0;
}

/// "Saw the datum end at a slant: 173 outside and 7 inside"
bool add_slanted_end(const PaperStep &step, const PaperLog &log, std::vector<Cut> &cuts) {
    static const std::regex form("Saw the (datum|far) end at a slant: (" + len + ") outside and (" + len +
                                 ") inside");
    std::smatch m;
    if (!std::regex_match(step.words, m, form)) return false;
    const bool datum = m[1] == "datum";
    const double way = datum ? -1 : 1, outside = part_of(m, 2), inside = part_of(m, 3);
    const double y = log.outermost(outside), run = (inside - outside) / (log.innermost(inside) - y);
    const Vec3 normal{way, -way * run, 0};
    cuts.emplace_back(FaceCut{datum ? LogFace::datum_end : LogFace::far_end,
                              {unit(normal), way * (outside - run * y) / length(normal)}});
    return true;
}

/// Told over the under face as it is hewn, or over the lowest line of a stick that does not reach the
/// blank's.
void set_line(PaperLog &log, const PaperLine &line) {
    const double under = line.over_blank ? 0 : log.under.at(0),
                 under_far = line.over_blank ? 0 : log.under.at(log.length);
    const double datum = under + line.datum, far = under_far + line.far;
    log.line = {datum, (far - datum) / log.length};
}

bool add_tapers(const PaperStep &step, const PaperLine &line, PaperLog &log, std::vector<Cut> &cuts) {
    if (!add_taper(step, log, cuts)) return false;
    set_line(log, line);
    return true;
}

} // namespace roundlay::test
