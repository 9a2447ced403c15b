// Everything that the words alone tell: square cuts, saddles and grooves, tails, pockets, bores.
#include "tests/sheets/support/paper_cuts.h"

#include "tests/sheets/support/paper_table.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace roundlay::test {
namespace {

const std::string len = a_length;
constexpr double beyond = 50; ///< how far an open side of a cut reaches past the blank

const std::string stretch = ", from (" + len + ") to (" + len + ")";

/// "150", "150 outside and 163 inside"
struct PaperLevel {
    double outside = 0, inside = 0;
};
const std::string level = "(" + len + ")(?: outside and (" + len + ") inside)?(?: at " + len + ", " + len +
                          "(?: outside and " + len + " inside)? at " + len + ")?";

PaperLevel level_of(const std::smatch &m, std::size_t i) {
    const double outside = printed_mm(m[i]);
    return {outside, m[i + 1].matched ? printed_mm(m[i + 1]) : outside};
}

struct BoxWords {
    BoxUse use = BoxUse::sill;
    std::string what, height;
    double from = 0, to = 0;
};

bool read_box(const std::string &words, BoxWords &box) {
    static const std::regex form("(Sill cut for|Header cut for|Underside over|Seat on|Hole for|Groove)(.*)" +
                                 stretch + "(|, down to .*|, up to .*|, from .* up to .*)");
    static const std::pair<const char *, BoxUse> uses[] = {
        {"Sill cut for", BoxUse::sill}, {"Header cut for", BoxUse::header}, {"Underside over", BoxUse::step},
        {"Seat on", BoxUse::seat},      {"Hole for", BoxUse::through},      {"Groove", BoxUse::groove}};
    std::smatch m;
    if (!std::regex_match(words, m, form)) return false;
    for (const auto &[name, use] : uses)
        if (m[1] == name) box.use = use;
    box.what = m[2];
    box.from = printed_mm(m[3]);
    box.to = printed_mm(m[4]);
    box.height = m[5];
    return true;
}

/// Heights in the words are from the level line at the end of the cut where they are given first.
void set_heights(BoxCut &cut, const std::string &words, double base, const PaperLog &log) {
    static const std::regex down(", down to " + level), up(", up to " + level),
        both(", from " + level + " up to " + level);
    std::smatch m;
    cut.box.low.z = -beyond;
    cut.box.high.z = log.height + beyond;
    if (std::regex_match(words, m, down)) {
        const PaperLevel at = level_of(m, 1);
        cut.fall_from = log.innermost(cut.box.low.x);
        cut.box.low.z = base + at.inside;
        cut.fall = (at.inside - at.outside) / (cut.fall_from - log.outermost(cut.box.low.x));
    } else if (std::regex_match(words, m, both)) {
        cut.box.low.z = base + level_of(m, 1).outside;
        cut.box.high.z = base + level_of(m, 3).outside;
    } else if (std::regex_match(words, m, up))
        cut.box.high.z = base + level_of(m, 1).outside;
}

const std::vector<PaperColumn> cut_columns{{"No."}, {"Cut"}, {"Along,"}, {"Rise"}, {"Across,"}, {"Rise"}};

} // namespace

std::vector<PaperStep> steps_on(const std::vector<PaperWord> &words) {
    static const std::regex mark("[A-Z]|[0-9]+");
    std::vector<PaperStep> all;
    for (const auto &row : table_rows(words, "Cuts,", cut_columns, mark))
        all.push_back({row[0], row[1], row[2], row[4]});
    return all;
}

/// "level along both sides: 150 over the under face", "through the heart at both ends, along both sides: 120
/// at the datum end and 132 at the far end over the lowest line of the stick"
PaperLine line_called(const std::string &words) {
    static const std::regex form(
        "(level along|through the heart at both ends, along|along) both sides(?:|, at a slant): (" + len +
        ")(?: at the datum end and (" + len +
        ") at the far end)? over the (under face|lowest line of the stick|blank's under face, and when it is "
        "hewn .* over that)");
    std::smatch m;
    if (!std::regex_match(words, m, form)) throw std::runtime_error("where is the level line? " + words);
    PaperLine line;
    line.axis = m[1].str().starts_with("through");
    line.over_stick = m[4] == "lowest line of the stick";
    line.over_blank = m[4].str().starts_with("blank");
    line.datum = printed_mm(m[2]);
    line.far = m[3].matched ? printed_mm(m[3]) : line.datum;
    return line;
}

PaperLine line_on(const std::vector<PaperWord> &words) {
    static const std::regex mark("LL|EL|PL");
    for (const auto &row : table_rows(words, "Snap", {{"Line"}, {"Where"}}, mark))
        if (row[0] == "LL") return line_called(row[1]);
    throw std::runtime_error("the paper does not say where the level line is");
}

std::vector<PaperPlace> slants_on(const std::vector<PaperWord> &words) {
    static const std::regex number("[0-9].*");
    std::vector<PaperPlace> all;
    for (const auto &row : table_rows(words, "Not", {{"On", true}, {"On", true}}, number))
        all.push_back({printed_mm(row[0]), printed_mm(row[1])});
    return all;
}

bool add_box(const PaperStep &step, const PaperLog &log, std::vector<Cut> &cuts) {
    BoxWords words;
    if (!read_box(step.words, words)) return false;
    BoxCut cut;
    cut.use = words.use;
    cut.box.low = {words.from > 0 ? words.from : -beyond, -beyond, 0};
    cut.box.high = {words.to < log.length ? words.to : log.length + beyond, log.width + beyond, 0};
    if (words.use == BoxUse::groove) { // " 40 wide, 80 from outside, at the door"
        static const std::regex across(" (" + len + ") wide, (" + len + ") from outside, at .*");
        std::smatch m;
        if (!std::regex_match(words.what, m, across)) return false;
        cut.box.low.y = log.outermost(words.from) + printed_mm(m[2]);
        cut.box.high.y = cut.box.low.y + printed_mm(m[1]);
    }
    set_heights(cut, words.height, log.line.at(words.from), log);
    cuts.emplace_back(cut);
    return true;
}

/// "Saddle at 345, radius 120, its top at -2, scribed 2 clear"; "Long groove, radius 120, its top at -90"
bool add_scope(const PaperStep &step, const PaperLog &log, std::vector<Cut> &cuts) {
    static const std::regex form("(?:Saddle at (" + len + ")(?: outside and (" + len +
                                 ") inside)?|Long groove), radius (" + len + "), its top at (" + len +
                                 ")(?:" + stretch + ")?(?:, upright cheeks (" + len +
                                 ") from its middle)?(?:, scribed (" + len + ") clear)?");
    std::smatch m;
    if (!std::regex_match(step.words, m, form)) return false;
    ScopeCut cut;
    cut.radius = printed_mm(m[3]);
    if (m[7].matched) cut.cheeks = printed_mm(m[7]);
    if (m[8].matched) cut.scribe = printed_mm(m[8]);
    if (!m[1].matched) {
        cut.use = ScopeUse::groove;
        cut.at = {0, log.width / 2, log.line.at(0) + printed_mm(m[4]) - cut.radius};
        cut.along = {1, 0, 0};
        cut.x_from = m[5].matched ? printed_mm(m[5]) : -beyond;
        cut.x_to = m[6].matched ? printed_mm(m[6]) : log.length + beyond;
    } else {
        const double outside = printed_mm(m[1]), inside = m[2].matched ? printed_mm(m[2]) : outside;
        const double y = log.outermost(outside);
        cut.at = {outside, y, log.line.at(outside) + printed_mm(m[4]) - cut.radius};
        cut.along = unit(Vec3{inside - outside, log.innermost(inside) - y, 0});
        cut.end = outside + inside > log.length ? End::far : End::datum;
    }
    cuts.emplace_back(cut);
    return true;
}

namespace {

LogFace face_called(const std::string &words) {
    static const std::pair<const char *, LogFace> faces[] = {{"the top face", LogFace::top},
                                                             {"the under face", LogFace::under},
                                                             {"the inside face", LogFace::inside}};
    for (const auto &[name, face] : faces)
        if (words == name) return face;
    return LogFace::outside;
}

/// Through the ends of a mend, so deep behind the face there.
Plane bed_of(LogFace face, const PaperLog &log, double from, double to, double deep_from, double deep_to) {
    const bool side = face == LogFace::outside || face == LogFace::inside;
    const double way = face == LogFace::top || face == LogFace::inside ? 1 : -1;
    const auto at = [&](double x) {
        return face == LogFace::top      ? log.highest(x)
               : face == LogFace::under  ? log.lowest(x)
               : face == LogFace::inside ? log.innermost(x)
                                         : log.outermost(x);
    };
    const double a = at(from) - way * deep_from, b = at(to) - way * deep_to, rise = (b - a) / (to - from);
    const double k = way / std::sqrt(1 + rise * rise);
    return {side ? Vec3{-k * rise, k, 0} : Vec3{-k * rise, 0, k}, k * (a - rise * from)};
}

} // namespace

/// "Recess for new wood in the outside face, 50 deep, from 1000 to 2200, from 40 up to 160"
bool add_mend(const PaperStep &step, const PaperLog &log, std::vector<Cut> &cuts) {
    static const std::regex form("(Recess for new wood in|Lap cut into) (the [a-z]+ face), (" + len +
                                 ")(?: at " + len + ", (" + len + ") at " + len + ")? deep" + stretch +
                                 "(?:, from (" + len + ") up to (" + len + ")|, (" + len + ") to (" + len +
                                 ") from the outside)?");
    std::smatch m;
    if (!std::regex_match(step.words, m, form)) return false;
    MendCut cut;
    cut.use = m[1] == "Lap cut into" ? MendUse::lap : MendUse::let_in;
    cut.face = face_called(m[2]);
    const double deep = printed_mm(m[3]), deep_to = m[4].matched ? printed_mm(m[4]) : deep;
    cut.x_from = printed_mm(m[5]), cut.x_to = printed_mm(m[6]);
    cut.bed = bed_of(cut.face, log, cut.x_from, cut.x_to, deep, deep_to);
    cut.low = -beyond, cut.high = log.height + log.width + beyond;
    if (m[7].matched)
        cut.low = log.line.at(cut.x_from) + printed_mm(m[7]),
        cut.high = log.line.at(cut.x_from) + printed_mm(m[8]);
    if (m[9].matched)
        cut.low = log.outermost(cut.x_from) + printed_mm(m[9]),
        cut.high = log.outermost(cut.x_from) + printed_mm(m[10]);
    cuts.emplace_back(cut);
    return true;
}

/// "Tail of the datum end: 80 long, 100 wide at the end, 80 at its neck"
bool add_tail(const PaperStep &step, const PaperLog &log, std::vector<Cut> &cuts) {
    static const std::regex form("Tail of the (datum|far) end: (" + len + ") long, (" + len +
                                 ") wide at the end, (" + len + ") at its neck");
    std::smatch m;
    if (!std::regex_match(step.words, m, form)) return false;
    const bool far = m[1] == "far";
    const double long_ = printed_mm(m[2]), end = printed_mm(m[3]), at_neck = printed_mm(m[4]);
    const double tip = far ? log.length : 0, neck = far ? log.length - long_ : long_;
    for (const double side : {-1.0, 1.0}) {
        const double y = log.width / 2 + side * end / 2, widens = side * (at_neck - end) / 2 / (neck - tip);
        const double k = side / std::sqrt(1 + widens * widens);
        const Vec3 normal{-k * widens, k, 0};
        cuts.emplace_back(CheekCut{far ? End::far : End::datum,
                                   side < 0 ? LogFace::outside : LogFace::inside,
                                   std::min(tip, neck),
                                   std::max(tip, neck),
                                   {normal, normal.x * tip + normal.y * y}});
    }
    return true;
}

PocketCut pocket_read(const std::vector<std::string> &cells, const PaperLog &log) {
    static const std::regex length(len);
    const bool inside = cells.at(1) == "inside" || cells.at(1) == "left";
    PocketCut cut;
    cut.x = printed_mm(cells.at(0));
    cut.y_face = inside ? log.innermost(cut.x) : log.outermost(cut.x);
    cut.y_back = cut.y_face + (inside ? -1 : 1) * printed_mm(cells.at(2));
    cut.half_at_face = printed_mm(cells.at(3)) / 2;
    cut.half_at_back = printed_mm(cells.at(4)) / 2;
    const auto height = [&](const std::string &cell, double open) {
        return std::regex_match(cell, length) ? log.line.at(cut.x) + printed_mm(cell) : open;
    };
    const double face = height(cells.at(5), -beyond), back = height(cells.at(6), -beyond);
    const double rise = (face - back) / (cut.y_face - cut.y_back);
    cut.bed = plane_over(back - rise * cut.y_back, 0, rise);
    cut.z_top = height(cells.at(7), log.height);
    return cut;
}

void add_pockets(const std::vector<PaperWord> &words, const PaperLog &log, std::vector<Cut> &cuts) {
    static const std::regex name("K[0-9]+");
    for (const auto &row : table_rows(words, "Pockets;",
                                      {{"No."},
                                       {"Middle", true},
                                       {"Into"},
                                       {"Deep", true},
                                       {"Wide", true},
                                       {"Wide", true},
                                       {"Bed", true},
                                       {"Bed", true},
                                       {"Up", true},
                                       {"Holds"}},
                                      name)) {
        PocketCut cut = pocket_read({row.begin() + 1, row.begin() + 9}, log);
        cut.holds = row[9];
        cuts.emplace_back(cut);
    }
}

void add_bore(const PrintedBore &printed, const PaperLog &log, std::vector<Cut> &cuts) {
    static const std::map<std::string, std::optional<BoreUse>> uses{{"peg", std::nullopt},
                                                                    {"bolt", BoreUse::bolt},
                                                                    {"rod", BoreUse::rod},
                                                                    {"wiring", BoreUse::wire},
                                                                    {"hole", BoreUse::hole}};
    double hollow = 0; // a long groove takes the lowest wood away
    for (const Cut &cut : cuts)
        if (const ScopeCut *scope = std::get_if<ScopeCut>(&cut); scope && scope->use == ScopeUse::groove)
            hollow = scope->at.z + scope->radius;
    Bore bore;
    bore.use = uses.at(printed.use);
    bore.x = printed.x, bore.y = printed.y;
    bore.diameter = printed.diameter;
    bore.through = printed.depth.empty();
    bore.from_top = printed.from_top;
    const double low = std::max(hollow, log.lowest(bore.x)), high = log.highest(bore.x);
    const double depth = bore.through ? high - low : printed_mm(printed.depth);
    bore.z_from = bore.from_top ? high - depth : low;
    bore.z_to = bore.from_top ? high : low + depth;
    cuts.emplace_back(bore);
}

void add_bores(const std::vector<PaperWord> &words, const PaperLog &log, std::vector<Cut> &cuts) {
    static const std::regex name("[PBRWH][0-9]+");
    for (const auto &row : table_rows(words, "Bores",
                                      {{"No."},
                                       {"For"},
                                       {"From", true},
                                       {"From", true},
                                       {"Diameter", true},
                                       {"Depth", true},
                                       {"From"}},
                                      name)) {
        const double x = printed_mm(row[2]);
        add_bore({row[1], row[5] == "through" ? "" : row[5], x, log.outermost(x) + printed_mm(row[3]),
                  printed_mm(row[4]), row[6] == "top"},
                 log, cuts);
    }
}

} // namespace roundlay::test
