#include "tests/sheets/support/bench_reader.h"

#include "tests/sheets/support/paper_cuts.h"
#include "tests/sheets/support/paper_table.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <regex>
#include <stdexcept>

namespace roundlay::test {
namespace {

const std::string len = a_length;

using Named = std::map<std::string, std::string>; ///< cells by their column's heading

Named named(const sheets::Table &table, std::size_t row) {
    Named all;
    for (std::size_t i = 0; i < table.columns.size(); ++i)
        all[table.columns[i].heading] = table.rows.at(row).at(i);
    return all;
}

bool is_letter(const std::string &heading) {
    return std::regex_match(heading, std::regex("[A-Z]{1,2}"));
}

/// The words with the row's numbers where its letters stand by themselves.
std::string with_numbers(const std::string &words, const Named &row) {
    static const std::regex letter("[A-Z]{1,2}(?=$|[ ,:.)])");
    std::string all;
    std::size_t at = 0;
    while (at < words.size()) {
        std::smatch m;
        const auto from = words.begin() + static_cast<std::ptrdiff_t>(at);
        const bool begins = at == 0 || words[at - 1] == ' ' || words[at - 1] == '(';
        if (begins &&
            std::regex_search(from, words.end(), m, letter, std::regex_constants::match_continuous) &&
            row.contains(m.str()) && is_letter(m.str())) {
            all += row.at(m.str());
            at += m.str().size();
        } else
            all += words[at++];
    }
    return all;
}

/// "0", "12 outside, 30 inside"
PaperPlace place_of(const std::string &words) {
    static const std::regex form("(" + len + ")(?: outside, (" + len + ") inside)?");
    std::smatch m;
    if (!std::regex_match(words, m, form)) throw std::runtime_error("where is \"" + words + "\"?");
    const double outside = printed_mm(m[1]);
    return {outside, m[2].matched ? printed_mm(m[2]) : outside};
}

/// Through four corners: at the end and at the shoulder, outside and inside.
struct Corners {
    PaperPlace end, shoulder;
    double end_out = 0, end_in = 0, shoulder_out = 0, shoulder_in = 0;
};

SeamCut seam_of(const Corners &c, const PaperLog &log, bool top, End end) {
    const bool rising = c.shoulder.outside > c.end.outside;
    const PaperPlace &from = rising ? c.end : c.shoulder, &to = rising ? c.shoulder : c.end;
    const auto z = [&](double x, double height) { return log.line.at(x) + height; };
    const double eo = z(c.end.outside, c.end_out), ei = z(c.end.inside, c.end_in),
                 so = z(c.shoulder.outside, c.shoulder_out), si = z(c.shoulder.inside, c.shoulder_in);
    const double along =
        ((so - eo) / (c.shoulder.outside - c.end.outside) + (si - ei) / (c.shoulder.inside - c.end.inside)) /
        2;
    const auto y_out = [&](double x) { return log.outermost(x); };
    const auto y_in = [&](double x) { return log.innermost(x); };
    const double across =
        ((ei - eo - along * (c.end.inside - c.end.outside)) / (y_in(c.end.inside) - y_out(c.end.outside)) +
         (si - so - along * (c.shoulder.inside - c.shoulder.outside)) /
             (y_in(c.shoulder.inside) - y_out(c.shoulder.outside))) /
        2;
    double at = 0;
    const auto add = [&](double x, double y, double height) { at += (height - along * x - across * y) / 4; };
    add(c.end.outside, y_out(c.end.outside), eo);
    add(c.end.inside, y_in(c.end.inside), ei);
    add(c.shoulder.outside, y_out(c.shoulder.outside), so);
    add(c.shoulder.inside, y_in(c.shoulder.inside), si);
    SeamCut cut;
    cut.side = top ? Side::top : Side::under;
    cut.end = end;
    const auto middle = [&](const PaperPlace &p, double &skew) {
        const double y0 = log.outermost(p.outside), y1 = log.innermost(p.inside);
        skew = (p.inside - p.outside) / (y1 - y0);
        return p.outside + skew * (log.width / 2 - y0);
    };
    double from_skew = 0, to_skew = 0;
    cut.x_from = middle(from, from_skew);
    cut.x_to = middle(to, to_skew);
    cut.skew = (from_skew + to_skew) / 2;
    cut.seam = plane_over(at, along, across);
    if (!top) cut.seam = cut.seam.flipped();
    return cut;
}

/// The cuts of a joint, each place along it put to the log's by `place`.
template <typename Place>
void add_joint(const sheets::Table &joints, const std::string &name, const PaperLog &log, End end,
               double proud, Place place, std::vector<Cut> &cuts) {
    int found = 0;
    for (std::size_t i = 0; i < joints.rows.size(); ++i) {
        const Named row = named(joints, i);
        if (row.at("Tail") != name) continue;
        ++found;
        const Corners corners{place(place_of(row.at("Begins, from the end"))),
                              place(place_of(row.at("Ends, from the end"))),
                              printed_mm(row.at("End, outside")),
                              printed_mm(row.at("End, inside")),
                              printed_mm(row.at("Shoulder, outside")),
                              printed_mm(row.at("Shoulder, inside"))};
        SeamCut cut = seam_of(corners, log, row.at("Cut") == "top", end);
        cut.proud = proud;
        cuts.emplace_back(cut);
    }
    if (found == 0) throw std::runtime_error("no joint is called " + name);
}

const std::string proud_words = "(?:, leave (" + len + ") proud at the shoulders)?";

/// The shoulder stands in the row of work; what lies nearer to the end is measured from that.
bool add_tail_by_name(const std::string &words, const PaperLog &log, const sheets::Table &joints,
                      std::vector<Cut> &cuts) {
    static const std::regex form("Tail (T[0-9]+) at the (datum|far) end, its shoulder at (" + len +
                                 ")(?: outside and (" + len + ") inside)?" + proud_words);
    std::smatch m;
    if (!std::regex_match(words, m, form)) return false;
    const bool far = m[2] == "far";
    PaperPlace last; // of the joint, from the end
    for (std::size_t i = 0; i < joints.rows.size(); ++i)
        if (const Named row = named(joints, i); row.at("Tail") == m[1])
            if (const PaperPlace p = place_of(row.at("Ends, from the end")); p.outside > last.outside)
                last = p;
    const double outside = printed_mm(m[3]);
    const PaperPlace shoulder{outside, m[4].matched ? printed_mm(m[4]) : outside};
    const auto place = [&](PaperPlace p) {
        const auto one = [&](double at, double at_last, double told) {
            return at == at_last ? told : far ? log.length - at : at;
        };
        return PaperPlace{one(p.outside, last.outside, shoulder.outside),
                          one(p.inside, last.inside, shoulder.inside)};
    };
    add_joint(joints, m[1], log, far ? End::far : End::datum, m[5].matched ? printed_mm(m[5]) : 0, place,
              cuts);
    return true;
}

/// Told from its first side, where the first of its cuts begins.
bool add_notch_by_name(const std::string &words, const PaperLog &log, const sheets::Table &joints,
                       std::vector<Cut> &cuts) {
    static const std::regex form("Notch (T[0-9]+), its first side at (" + len + ")(?: outside and (" + len +
                                 ") inside)?" + proud_words);
    std::smatch m;
    if (!std::regex_match(words, m, form)) return false;
    const double outside = printed_mm(m[2]);
    add_joint(
        joints, m[1], log, End::datum, m[4].matched ? printed_mm(m[4]) : 0,
        [&](PaperPlace p) {
            return PaperPlace{outside + p.outside, outside + p.inside};
        },
        cuts);
    return true;
}

bool add_pocket(const std::string &words, const PaperLog &log, std::vector<Cut> &cuts) {
    static const std::regex form("Pocket, its middle at (" + len + "), into the ([a-z]+), (" + len +
                                 ") deep, (" + len + ") wide at the face and (" + len +
                                 ") at the back(?:, open below|, its bed at (.*) at the face and "
                                 "(.*) at the back)(?:, open above|, up to (.*))");
    std::smatch m;
    if (!std::regex_match(words, m, form)) return false;
    cuts.emplace_back(pocket_read({m[1], m[2], m[3], m[4], m[5], m[6], m[7], m[8]}, log));
    return true;
}

/// "K1 L-J04, K2 L-J05", in the order of the pockets.
void set_held(const std::string &words, std::vector<Cut> &cuts) {
    static const std::regex form("K[0-9]+ ([^,]*)");
    auto held = std::sregex_iterator(words.begin(), words.end(), form);
    for (Cut &cut : cuts)
        if (PocketCut *pocket = std::get_if<PocketCut>(&cut); pocket && held != std::sregex_iterator())
            pocket->holds = (*held++)[1];
}

/// Depth and distance across in a heading or beside a place: ", 115 deep, in the middle".
struct BoreWords {
    std::string depth, across;
};

BoreWords bore_words(const std::string &words) {
    static const std::regex depth("(" + len + ") deep"),
        across("in the middle|(" + len + ") from the outside");
    BoreWords all;
    std::smatch m;
    if (std::regex_search(words, m, depth)) all.depth = m[1];
    if (std::regex_search(words, m, across)) all.across = m[1].matched ? m[1].str() : "middle";
    return all;
}

/// "Bore at: peg 32 through from top, in the middle" over "175; 1511"; "Bore at: peg 32 from top" over
/// "175, 115 deep, in the middle; 1511, 117 deep, in the middle"
void add_bores(const std::string &heading, const std::string &places, const PaperLog &log,
               std::vector<Cut> &cuts) {
    static const std::regex form("Bore at: ([a-z]+) (" + len + ")( through)? from (top|under)(.*)"),
        place("(" + len + ")([^;]*)(?:; |$)");
    std::smatch m;
    if (!std::regex_match(heading, m, form)) throw std::runtime_error("what is \"" + heading + "\"?");
    const BoreWords all = bore_words(m[5]);
    for (auto it = std::sregex_iterator(places.begin(), places.end(), place); it != std::sregex_iterator();
         ++it) {
        const BoreWords own = bore_words((*it)[2]);
        const std::string across = own.across.empty() ? all.across : own.across,
                          deep = own.depth.empty() ? all.depth : own.depth;
        const double x = printed_mm((*it)[1]), out = log.outermost(x);
        const double y = across == "middle" ? (out + log.innermost(x)) / 2 : out + printed_mm(across);
        add_bore({m[1], m[3].matched ? "" : deep, x, y, printed_mm(m[2]), m[4] == "top"}, log, cuts);
    }
}

PaperLog blank_of(const std::string &words) {
    static const std::regex form("Blank (" + len + ") long, (" + len + ") wide, (" + len + ") high");
    std::smatch m;
    if (!std::regex_match(words, m, form)) throw std::runtime_error("what is the blank?");
    PaperLog log;
    log.length = printed_mm(m[1]), log.width = printed_mm(m[2]), log.height = printed_mm(m[3]);
    log.top = {log.height, 0};
    log.inside = {log.width, 0};
    return log;
}

/// What a fall across adds to the words of a square cut says again what they have said.
std::string without_fall(const std::string &words) {
    return words.substr(0, words.find("; across, to the outside, "));
}

bool is_line(const std::string &mark) {
    return mark == "-" || mark == "LL" || mark == "EL" || mark == "PL" || mark == "P";
}

/// One row of work after the lines.
bool add_row(const std::string &mark, const std::string &words, const PaperLine &line, PaperLog &log,
             const sheets::Table &joints, std::vector<Cut> &cuts) {
    const PaperStep step{mark, without_fall(words), "", ""};
    return add_tail_by_name(words, log, joints, cuts) || add_notch_by_name(words, log, joints, cuts) ||
           add_pocket(words, log, cuts) || holds_flats(step, log) || add_tapers(step, line, log, cuts) ||
           add_stick(step, line, log, cuts) || add_slanted_end(step, log, cuts) ||
           add_scope(step, log, cuts) || add_box(step, log, cuts) || add_mend(step, log, cuts) ||
           add_tail(step, log, cuts);
}

} // namespace

Piece piece_on_bench(const BenchTables &tables, std::size_t row) {
    const Named cells = named(tables.pieces, row);
    const auto words = [&](std::size_t i) { return with_numbers(tables.work.rows.at(i).at(1), cells); };
    PaperLog log = blank_of(words(0));
    const PaperLine line = line_called(words(1));
    set_line(log, line);
    Piece piece;
    piece.blank = {log.length, log.width, log.height};
    for (std::size_t i = 0; i < tables.work.rows.size(); ++i) {
        const std::string &mark = tables.work.rows[i].at(0);
        if (!is_line(mark) && !add_row(mark, words(i), line, log, tables.joints, piece.cuts))
            throw std::runtime_error("what is \"" + words(i) + "\"?");
    }
    if (cells.contains("Pockets hold")) set_held(cells.at("Pockets hold"), piece.cuts);
    for (const auto &[heading, places] : cells)
        if (heading.starts_with("Bore at: ") && places != "-") add_bores(heading, places, log, piece.cuts);
    return with_seams_first(std::move(piece));
}

Piece with_seams_first(Piece piece) {
    for (Cut &cut : piece.cuts) // of a log that runs on past its notch no end is the notch's
        if (SeamCut *seam = std::get_if<SeamCut>(&cut); seam && seam->runs_on) seam->end = End::datum;
    const auto place = [](const Cut &cut) {
        const SeamCut *seam = std::get_if<SeamCut>(&cut);
        return seam ? std::tuple(0, std::round((seam->x_from + seam->x_to) / 100),
                                 seam->side == Side::top ? 0 : 1)
                    : std::tuple(1, 0.0, 0);
    };
    std::ranges::stable_sort(piece.cuts, {}, place);
    return piece;
}

} // namespace roundlay::test
