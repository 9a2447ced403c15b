#include "tests/sheets/support/paper_reader.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <regex>
#include <stdexcept>
#include <tuple>

namespace roundlay::test {
namespace {

constexpr double beyond = 50; ///< how far an open side of a cut reaches past the blank

/// One stretch of the log as it is drawn: four faces under one another.
struct Stretch {
    int page = 0;
    double y0 = 0, y1 = 0;         ///< on that page, millimetres from its top
    double datum_x = 0, far_x = 0; ///< where its ends stand, if it shows them
    bool has(const PaperWord &w) const { return w.page == page && w.y() > y0 && w.y() < y1; }
};

/// A running dimension over or under the outside face.
struct Mark {
    std::size_t stretch = 0;
    double x = 0;      ///< on paper
    double value = 0;  ///< along the log, on the outside face
    double inside = 0; ///< on the inside face: elsewhere where the cut goes at a slant
};

struct Row {
    double top = 0, bottom = 0; ///< of the outline on paper
};

/// Where a long face lies along the log: it may run at a slant to the blank.
struct Hewn {
    double at_datum = 0, per_mm = 0;
    double at(double x) const { return at_datum + per_mm * x; }
};

/// One line of the table of cuts.
struct CutLine {
    int number = 0;
    std::string words;
    std::vector<double> lengths;
    bool says(const char *part) const { return words.find(part) != std::string::npos; }
};

class Reader {
  public:
    explicit Reader(std::vector<PaperWord> words) : words_(std::move(words)) {
        read_blank();
        find_stretches();
        read_marks();
        read_slants();
        top_.at_datum = piece.blank.height;
        inside_.at_datum = piece.blank.width;
        for (const CutLine &line : cut_lines()) {
            add_tapers(line);
            add_notch(line);
            add_box(line);
            add_tail(line);
        }
        read_pockets();
        read_bores();
    }
    Piece piece;

  private:
    const PaperWord &find(const std::string &text) const {
        for (const PaperWord &w : words_)
            if (w.text == text) return w;
        throw std::runtime_error("the paper does not say " + text);
    }

    /// What stands on the same line to the right, in order.
    std::vector<PaperWord> right_of(const PaperWord &start) const {
        std::vector<PaperWord> line;
        for (const PaperWord &w : words_)
            if (w.page == start.page && std::abs(w.y() - start.y()) < 0.6 && w.x0 > start.x1)
                line.push_back(w);
        std::sort(line.begin(), line.end(),
                  [](const PaperWord &a, const PaperWord &b) { return a.x0 < b.x0; });
        return line;
    }

    void read_blank() {
        std::vector<double> sizes;
        for (const PaperWord &w : right_of(find("Blank:")))
            if (w.is_length() && sizes.size() < 3) sizes.push_back(w.mm());
        piece.blank = {sizes.at(0), sizes.at(1), sizes.at(2)};
        scale_ = scale();
    }

    /// "1:10" or `3/4" = 1'` under the word Scale in the title block.
    double scale() const {
        const PaperWord &name = find("Scale");
        for (const PaperWord &w : words_) {
            if (w.page != name.page || w.y0 < name.y0 + 1 || std::abs(w.x0 - name.x0) > 3) continue;
            if (w.text.starts_with("1:")) return 1 / std::stod(w.text.substr(2));
            if (w.is_length()) return w.mm() / (12 * 25.4);
        }
        throw std::runtime_error("no scale in the title block");
    }

    /// Each begins with the word Top in the column of captions.
    void find_stretches() {
        std::vector<PaperWord> tops;
        for (const PaperWord &w : words_)
            if (w.text == "Top" && w.x0 < 30 && !w.upright && w.y1 - w.y0 > 5) tops.push_back(w);
        std::sort(tops.begin(), tops.end(), [](const PaperWord &a, const PaperWord &b) {
            return std::tuple(a.page, a.y0) < std::tuple(b.page, b.y0);
        });
        for (const PaperWord &top : tops) {
            const double y0 = top.y0 - 3;
            if (!stretches_.empty() && stretches_.back().page == top.page) stretches_.back().y1 = y0;
            stretches_.push_back({top.page, y0, 1000, -1000, 1000});
        }
        if (stretches_.empty()) throw std::runtime_error("no views on the paper");
    }

    void read_marks() {
        for (std::size_t s = 0; s < stretches_.size(); ++s)
            for (const PaperWord &w : words_) {
                if (!w.upright || !w.is_length() || !stretches_[s].has(w)) continue;
                if (w.mm() == 0)
                    stretches_[s].datum_x = w.x();
                else if (w.mm() == piece.blank.length)
                    stretches_[s].far_x = w.x();
                else
                    marks_.push_back({s, w.x(), w.mm(), w.mm()});
            }
        std::sort(marks_.begin(), marks_.end(),
                  [](const Mark &a, const Mark &b) { return a.value < b.value; });
    }

    /// The table of what is not square across: places on the outside and on the inside face.
    std::vector<std::pair<double, double>> slants() const {
        std::vector<std::pair<double, double>> all;
        for (const PaperWord &title : words_) {
            if (title.text != "square" || right_of(title).empty() || right_of(title)[0].text != "across:")
                continue;
            std::vector<PaperWord> cells;
            for (const PaperWord &w : words_)
                if (w.page == title.page && w.is_length() && w.y() > title.y() && w.y() < title.y() + 60 &&
                    w.x0 > title.x0 - 8 && w.x1 < title.x0 + 40)
                    cells.push_back(w);
            std::sort(cells.begin(), cells.end(), [](const PaperWord &a, const PaperWord &b) {
                return std::abs(a.y() - b.y()) > 1 ? a.y() < b.y() : a.x0 < b.x0;
            });
            for (std::size_t i = 0; i + 1 < cells.size() && std::abs(cells[i].y() - cells[i + 1].y()) < 1;
                 i += 2)
                all.emplace_back(cells[i].mm(), cells[i + 1].mm());
        }
        return all;
    }

    /// Marks at which the cut goes at a slant learn where it is on the inside; the log's ends may be such
    /// marks.
    void read_slants() {
        datum_ = {0, stretches_.front().datum_x, 0, 0};
        far_ = {stretches_.size() - 1, stretches_.back().far_x, piece.blank.length, piece.blank.length};
        for (const auto &[outside, inside] : slants()) {
            const auto mark = std::find_if(marks_.begin(), marks_.end(),
                                           [out = outside](const Mark &m) { return m.value == out; });
            if (mark != marks_.end()) mark->inside = inside;
            const bool at_datum = outside == 0 || inside == 0;
            const bool at_far = outside == piece.blank.length || inside == piece.blank.length;
            if (!at_datum && !at_far) continue;
            Mark &end = at_datum ? datum_ : far_;
            if (mark != marks_.end()) {
                end = *mark;
                marks_.erase(mark);
            }
            end.inside = inside;
            add_slanting_end(at_datum, outside, inside);
        }
    }

    void add_slanting_end(bool datum, double outside, double inside) {
        const double run = (inside - outside) / piece.blank.width, way = datum ? -1 : 1;
        const Vec3 normal{way, -way * run, 0};
        piece.cuts.emplace_back(FaceCut{datum ? LogFace::datum_end : LogFace::far_end,
                                        {unit(normal), way * outside / length(normal)}});
    }

    Row row(std::size_t stretch, const std::string &caption) const {
        const Stretch &s = stretches_[stretch];
        const std::string of_timber = caption == "Outside" ? "Right" : "Left";
        const double capital = 3.5, em = capital / (1493.0 / 2048), descent = 0.236 * em;
        for (const PaperWord &w : words_) {
            if ((w.text != caption && w.text != of_timber) || !s.has(w) || w.x0 > 30 || w.y1 - w.y0 < 5)
                continue;
            const double top = w.y1 - descent - capital + (caption == "Outside" ? 9 : 0);
            return {top, top + piece.blank.height * scale_};
        }
        throw std::runtime_error("no view " + caption);
    }

    /// Level numbers at the height of the row, or led out of it where bores take the room.
    std::vector<PaperWord> near(std::size_t stretch, const Row &row) const {
        constexpr double beside_row = 8;
        std::vector<PaperWord> all;
        for (const PaperWord &w : words_)
            if (stretches_[stretch].has(w) && w.is_length() && !w.upright && w.y() > row.top - beside_row &&
                w.y() < row.bottom + beside_row)
                all.push_back(w);
        return all;
    }

    /// Numbers of heights stand off the cut that they belong to at one of these distances.
    static bool is_offset(double away) {
        constexpr double offsets[] = {3.2, 4.6, 6.4, 9, 12, 16, 21}, rounding = 0.3;
        return std::any_of(std::begin(offsets), std::end(offsets),
                           [&](double offset) { return std::abs(away - offset) < rounding; });
    }

    double away_from(const Mark &mark, const std::string &face, int side, const PaperWord &w) const {
        const double x = mark.x + (face == "Inside" ? (mark.inside - mark.value) * scale_ : 0);
        return side > 0 ? w.x0 - x : x - w.x1;
    }

    /// Whether the line from the number leads there: to the nearest cut of those that it could belong to.
    bool belongs_to(const PaperWord &w, const Mark &mark, const std::string &face, int side) const {
        const double away = away_from(mark, face, side, w);
        if (!is_offset(away)) return false;
        std::vector<Mark> all = marks_;
        all.insert(all.end(), {datum_, far_});
        return std::none_of(all.begin(), all.end(), [&](const Mark &m) {
            if (m.stretch != mark.stretch) return false;
            return std::any_of(std::begin({-1, 1}), std::end({-1, 1}), [&](int s) {
                const double other = away_from(m, face, s, w);
                return is_offset(other) && other < away - 0.1;
            });
        });
    }

    /// Numbers off the end of the log, beside the row; but for the blank's own size, ascending.
    std::vector<double> off_end(std::size_t stretch, const Row &row, int side, double size) const {
        const Stretch &s = stretches_[stretch];
        std::vector<double> all;
        for (const PaperWord &w : near(stretch, row)) {
            const double past = side > 0 ? w.x0 - s.far_x : s.datum_x - w.x1;
            if (past > 4 && past < 14 && w.mm() != 0 && w.mm() != size) all.push_back(w.mm());
        }
        std::sort(all.begin(), all.end());
        return all;
    }

    /// Heights written in the wood beside a mark, or off the end of the log where there is no room;
    /// ascending.
    std::vector<double> heights(const Mark &mark, const char *face, int side) const {
        const Row r = row(mark.stretch, face);
        const Stretch &s = stretches_[mark.stretch];
        std::vector<double> inner;
        for (const PaperWord &w : near(mark.stretch, r))
            if (w.x0 > s.datum_x && w.x1 < s.far_x && belongs_to(w, mark, face, side))
                inner.push_back(w.mm());
        std::sort(inner.begin(), inner.end());
        if (!inner.empty()) return inner;
        std::vector<double> outer = off_end(mark.stretch, r, side, piece.blank.height);
        const bool tip = (side > 0) == butt_at_datum();
        if (tip && std::string(face) == "Outside") { // where the ends of slanting faces stand too
            if (top_.per_mm != 0) outer.pop_back();
            if (under_.per_mm != 0) outer.erase(outer.begin());
        }
        return outer;
    }

    double height(const Mark &mark, const char *face, int side, bool highest) const {
        const auto all = heights(mark, face, side);
        if (all.empty())
            throw std::runtime_error("no height beside " + std::to_string(mark.value) + ", " + face);
        return highest ? all.back() : all.front();
    }

    /// The marks on both sides of the circle with the cut's number, over or under the outside face.
    std::pair<Mark, Mark> ends_by_number(int number, bool over) const {
        for (std::size_t s = 0; s < stretches_.size(); ++s)
            for (const PaperWord &w : words_) {
                const Row r = row(s, "Outside");
                const bool there =
                    over ? w.y() < r.top && w.y() > r.top - 8 : w.y() > r.bottom && w.y() < r.bottom + 8;
                if (!stretches_[s].has(w) || w.upright || !w.is_count() || w.count() != number || !there)
                    continue;
                return around(s, w.x());
            }
        throw std::runtime_error("cut " + std::to_string(number) + " is not on the views");
    }

    std::pair<Mark, Mark> around(std::size_t stretch, double x) const {
        std::pair<Mark, Mark> ends{datum_, far_};
        for (const Mark &m : marks_)
            if (std::tuple(m.stretch, m.x) < std::tuple(stretch, x)) ends.first = m;
        for (auto m = marks_.rbegin(); m != marks_.rend(); ++m)
            if (std::tuple(m->stretch, m->x) > std::tuple(stretch, x)) ends.second = *m;
        return ends;
    }

    /// A tail goes to the end of the log; a notch at an end lies between the two marks next to it.
    std::pair<Mark, Mark> ends_of_notch(const CutLine &line, bool top) const {
        const std::size_t n = marks_.size();
        const bool tail = line.says("tail at");
        if (line.says("datum")) {
            if (tail) return {datum_, marks_.at(0)};
            return {marks_.at(0), marks_.at(1)};
        }
        if (line.says("far")) {
            if (tail) return {marks_.at(n - 1), far_};
            return {marks_.at(n - 2), marks_.at(n - 1)};
        }
        return ends_by_number(line.number, top);
    }

    /// "at the datum end" beside the words "Butt (thick end)"
    bool butt_at_datum() const {
        const auto words = right_of(find("Butt"));
        return std::any_of(words.begin(), words.end(), [](const PaperWord &w) { return w.text == "datum"; });
    }

    /// "Hew top and outside to their tapers": full at the butt, and what stands off the end at the tip.
    void add_tapers(const CutLine &line) {
        if (!line.words.starts_with("Hew ")) return;
        const bool far = butt_at_datum();
        const std::size_t stretch = far ? stretches_.size() - 1 : 0;
        const auto heights = off_end(stretch, row(stretch, "Outside"), far ? 1 : -1, piece.blank.height);
        Row above = row(stretch, "Top");
        above.bottom = above.top + piece.blank.width * scale_;
        const auto widths = off_end(stretch, above, far ? 1 : -1, piece.blank.width);
        const auto taper = [&](const char *name, Hewn &face, double at_tip, LogFace side, Vec3 outward) {
            if (!line.says(name)) return;
            const double at_butt = face.at_datum, per_mm = (at_tip - at_butt) / piece.blank.length;
            face = far ? Hewn{at_butt, per_mm} : Hewn{at_tip, -per_mm};
            const double across = outward.y + outward.z; // one of them, 1 or -1
            const Vec3 normal = outward - Vec3{across * face.per_mm, 0, 0};
            piece.cuts.emplace_back(FaceCut{side, {unit(normal), across * face.at_datum / length(normal)}});
        };
        if (!heights.empty()) taper("top", top_, heights.back(), LogFace::top, {0, 0, 1});
        if (!heights.empty()) taper("under", under_, heights.front(), LogFace::under, {0, 0, -1});
        if (!widths.empty()) taper("outside", outside_, widths.front(), LogFace::outside, {0, -1, 0});
        if (!widths.empty()) taper("inside", inside_, widths.back(), LogFace::inside, {0, 1, 0});
    }

    void add_notch(const CutLine &line) {
        const bool top = line.words.starts_with("Top of");
        if (!top && !line.words.starts_with("Underside of")) return;
        const auto [from, to] = ends_of_notch(line, top);
        const double z[2][2] = {{height(from, "Outside", -1, top), height(from, "Inside", -1, top)},
                                {height(to, "Outside", 1, top), height(to, "Inside", 1, top)}};
        SeamCut cut;
        cut.side = top ? Side::top : Side::under;
        cut.end = line.says("far") ? End::far : End::datum;
        cut.skew = (from.inside - from.value) / piece.blank.width;
        cut.x_from = (from.value + from.inside) / 2;
        cut.x_to = (to.value + to.inside) / 2;
        const auto y = [&](const Mark &m, int face) {
            return face == 0 ? outside_.at(m.value) : inside_.at(m.inside);
        };
        const double x[2][2] = {{from.value, from.inside}, {to.value, to.inside}};
        const double along =
            ((z[1][0] - z[0][0]) / (x[1][0] - x[0][0]) + (z[1][1] - z[0][1]) / (x[1][1] - x[0][1])) / 2;
        double across = 0, middle = 0; // of what is left when the slope along the log is taken off
        for (const int i : {0, 1}) {
            const Mark &m = i == 0 ? from : to;
            const double rest[2] = {z[i][0] - along * x[i][0], z[i][1] - along * x[i][1]};
            across += (rest[1] - rest[0]) / (y(m, 1) - y(m, 0)) / 2;
        }
        for (const int i : {0, 1})
            for (const int face : {0, 1})
                middle += (z[i][face] - along * x[i][face] - across * y(i == 0 ? from : to, face)) / 4;
        const Plane seam = plane_over(middle, along, across);
        cut.seam = top ? seam : seam.flipped();
        piece.cuts.emplace_back(cut);
    }

    void add_box(const CutLine &line) {
        const bool sill = line.words.starts_with("Sill cut"), header = line.words.starts_with("Header cut"),
                   seat = line.words.starts_with("Seat on");
        if (!sill && !header && !seat) return;
        const auto [from, to] = ends_by_number(line.number, sill);
        const double level =
            from.value > 0 ? height(from, "Outside", -1, true) : height(to, "Outside", 1, true);
        BoxCut cut;
        cut.use = sill ? BoxUse::sill : seat ? BoxUse::seat : BoxUse::header;
        cut.box.low = {from.value, -beyond, sill ? level : -beyond};
        cut.box.high = {to.value, piece.blank.width + beyond, sill ? piece.blank.height + beyond : level};
        piece.cuts.emplace_back(cut);
    }

    /// "Tail of the datum end: 80 long, 100 wide at the end, 80 at its neck"
    void add_tail(const CutLine &line) {
        if (!line.words.starts_with("Tail of")) return;
        const bool far = line.says("far");
        const double length = line.lengths.at(0), tip = far ? piece.blank.length : 0;
        const double neck = far ? piece.blank.length - length : length;
        for (const double side : {-1.0, 1.0}) {
            const double y = piece.blank.width / 2 + side * line.lengths.at(1) / 2;
            const double widens = side * (line.lengths.at(2) - line.lengths.at(1)) / 2 / (neck - tip);
            const double k = side / std::sqrt(1 + widens * widens);
            const Vec3 normal{-k * widens, k, 0};
            piece.cuts.emplace_back(CheekCut{far ? End::far : End::datum,
                                             side < 0 ? LogFace::outside : LogFace::inside,
                                             std::min(tip, neck),
                                             std::max(tip, neck),
                                             {normal, normal.x * tip + normal.y * y}});
        }
    }

    /// The lines of the table of cuts; those of tails and tapers have a letter instead of a number.
    std::vector<CutLine> cut_lines() const {
        const PaperWord &title = find("Cuts,");
        std::vector<PaperWord> firsts;
        for (const PaperWord &w : words_)
            if (w.page == title.page && w.x0 > title.x0 && w.x1 < title.x0 + 12 && w.y0 > title.y1)
                firsts.push_back(w);
        std::sort(firsts.begin(), firsts.end(),
                  [](const PaperWord &a, const PaperWord &b) { return a.y0 < b.y0; });
        std::vector<CutLine> lines;
        int number = 0;
        for (std::size_t i = 0; i < firsts.size(); ++i) {
            const bool tail = firsts[i].text == "E" || firsts[i].text == "F";
            if (!tail && !firsts[i].is_count()) continue;
            if (!tail && firsts[i].count() != ++number) break; // another table
            const double end = i + 1 < firsts.size() ? firsts[i + 1].y() - 1 : firsts[i].y() + 5;
            lines.push_back(line_at(title, firsts[i].y() - 1, end));
            lines.back().number = tail ? 0 : firsts[i].count();
        }
        return lines;
    }

    /// The second column there, from its first to its last line.
    CutLine line_at(const PaperWord &title, double from, double to) const {
        std::vector<PaperWord> cell;
        for (const PaperWord &w : words_)
            if (w.page == title.page && w.x0 > title.x0 + 8 && w.x0 < title.x0 + 60 && w.y() > from &&
                w.y() < to)
                cell.push_back(w);
        std::sort(cell.begin(), cell.end(), [](const PaperWord &a, const PaperWord &b) {
            return std::abs(a.y() - b.y()) > 1 ? a.y() < b.y() : a.x0 < b.x0;
        });
        CutLine line;
        for (const PaperWord &w : cell) {
            line.words += w.text + " ";
            if (w.is_length()) line.lengths.push_back(w.mm());
        }
        return line;
    }

    /// The lines of the table of bores: for, from datum, from outside, diameter, depth, from which face.
    void read_bores() {
        static const std::regex name("[PBRWH][0-9]+");
        static const std::map<std::string, std::optional<BoreUse>> uses{
            {"peg", std::nullopt}, {"bolt", BoreUse::bolt}, {"rod", BoreUse::rod},
            {"wiring", BoreUse::wire}, {"hole", BoreUse::hole}};
        for (const PaperWord &w : words_) {
            if (!std::regex_match(w.text, name)) continue;
            const auto line = right_of(w);
            if (line.size() < 6 || !uses.contains(line[0].text)) continue;
            const bool through = line[4].text == "through";
            Bore bore;
            bore.x = line[1].mm();
            bore.y = line[2].mm();
            bore.diameter = line[3].mm();
            bore.through = through;
            bore.use = uses.at(line[0].text);
            bore.from_top = line[5].text == "top";
            const double depth = through ? piece.blank.height : line[4].mm();
            bore.z_from = bore.from_top ? piece.blank.height - depth : 0;
            bore.z_to = bore.from_top ? piece.blank.height : depth;
            piece.cuts.emplace_back(bore);
        }
    }

    /// The lines of the table of pockets: middle, face, depth, widths at face and back, beds there, up to,
    /// what it holds.
    void read_pockets() {
        static const std::regex name("K[0-9]+");
        for (const PaperWord &w : words_) {
            if (!std::regex_match(w.text, name)) continue;
            const auto line = right_of(w);
            if (line.size() < 9 || !line[0].is_length() || !line[2].is_length()) continue;
            const bool inside = line[1].text == "inside" || line[1].text == "left";
            const double depth = line[2].mm(), width = piece.blank.width;
            PocketCut cut;
            cut.x = line[0].mm();
            cut.y_face = inside ? width : 0;
            cut.y_back = inside ? width - depth : depth;
            cut.half_at_face = line[3].mm() / 2;
            cut.half_at_back = line[4].mm() / 2;
            cut.bed = plane_over(line[5].is_length() ? line[5].mm() : -beyond, 0, 0);
            cut.z_top = line[7].is_length() ? line[7].mm() : piece.blank.height;
            piece.cuts.emplace_back(cut);
        }
    }

    std::vector<PaperWord> words_;
    std::vector<Stretch> stretches_;
    std::vector<Mark> marks_;
    Mark datum_, far_; ///< the ends of the log
    Hewn top_, under_, outside_, inside_;
    double scale_ = 0; ///< paper per wood
};

} // namespace

Piece piece_on_paper(std::vector<PaperWord> words) {
    return Reader(std::move(words)).piece;
}

} // namespace roundlay::test
