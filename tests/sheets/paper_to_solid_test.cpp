// From paper back to wood: the words of the PDF and where they stand, and nothing else, are read as a person
// at the bench would, and the piece is cut again from the numbers read.

#include "exporters/sheets/cut_sheet/cut_sheet.h"
#include "exporters/sheets/cut_sheet/features.h"
#include "exporters/sheets/pdf/pdf.h"
#include "kernel/shell/shapes.h"
#include "tests/sheets/support/log.h"
#include "tests/sheets/support/run.h"
#include "tests/support/catch.h"

#include <algorithm>
#include <numbers>
#include <regex>

using namespace roundlay;
using namespace roundlay::sheets;

namespace {

constexpr double mm = 25.4 / 72; // per point

/// One word of the page, millimetres, y downward.
struct Word {
    std::string text;
    double x0, y0, x1, y1;
    double x() const { return (x0 + x1) / 2; }
    double y() const { return (y0 + y1) / 2; }
    bool upright() const { return y1 - y0 > x1 - x0 && text.size() > 1; } ///< reads from below
    bool number() const {
        return std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
    }
    double value() const { return std::stod(text); }
};

std::vector<Word> words_of(const std::string &pdf) {
    const auto ran = test::run_on(pdf, "pdftotext -bbox %  -");
    static const std::regex form(
        R"re(<word xMin="([0-9.]+)" yMin="([0-9.]+)" xMax="([0-9.]+)" yMax="([0-9.]+)">([^<]*)</word>)re");
    std::vector<Word> words;
    for (auto it = std::sregex_iterator(ran.out.begin(), ran.out.end(), form); it != std::sregex_iterator();
         ++it)
        words.push_back({(*it)[5], std::stod((*it)[1]) * mm, std::stod((*it)[2]) * mm,
                         std::stod((*it)[3]) * mm, std::stod((*it)[4]) * mm});
    return words;
}

class Reader {
  public:
    explicit Reader(std::vector<Word> words) : words_(std::move(words)) {
        read_blank();
        read_places();
        read_pegs();
        read_pockets();
        read_cuts();
    }
    Piece piece;

  private:
    const Word &find(const std::string &text, double from_x = 0, double to_x = 1000) const {
        for (const Word &w : words_)
            if (w.text == text && w.x0 >= from_x && w.x0 <= to_x) return w;
        throw std::runtime_error("the paper does not say " + text);
    }

    /// What stands on the same line to the right, in order.
    std::vector<Word> right_of(const Word &start) const {
        std::vector<Word> line;
        for (const Word &w : words_)
            if (std::abs(w.y() - start.y()) < 0.6 && w.x0 > start.x1) line.push_back(w);
        std::sort(line.begin(), line.end(), [](const Word &a, const Word &b) { return a.x0 < b.x0; });
        return line;
    }

    void read_blank() {
        std::vector<double> sizes;
        for (const Word &w : right_of(find("Blank:")))
            if (w.number() && sizes.size() < 3) sizes.push_back(w.value());
        piece.blank = {sizes.at(0), sizes.at(1), sizes.at(2)};
        scale_ = 1 / std::stod(find_scale().substr(2));
    }

    std::string find_scale() const {
        const Word &name = find("Scale");
        for (const Word &w : words_)
            if (w.text.starts_with("1:") && w.y0 > name.y0 && std::abs(w.x0 - name.x0) < 3) return w.text;
        throw std::runtime_error("no scale in the title block");
    }

    /// Numbers that read from below, over and under the outside face, by their place on paper.
    void read_places() {
        for (const Word &w : words_)
            if (w.upright() && w.number()) places_.push_back(w);
        std::sort(places_.begin(), places_.end(), [](const Word &a, const Word &b) { return a.x() < b.x(); });
        const auto far = std::find_if(places_.begin(), places_.end(),
                                      [&](const Word &w) { return w.value() == piece.blank.length; });
        far_x_ = far->x();
        places_.erase(far);
        for (const Word &w : words_) // the origin, over the datum end
            if (w.text == "0" && std::abs(w.y1 - (far_y_bottom())) < 1.5)
                datum_x_ = std::min(datum_x_, w.x());
    }

    double far_y_bottom() const {
        for (const Word &w : words_)
            if (w.upright() && w.number() && w.value() == piece.blank.length) return w.y1;
        return 0;
    }

    void read_pegs() {
        static const std::regex name("P[0-9]+");
        for (const Word &w : words_) {
            if (!std::regex_match(w.text, name)) continue;
            auto line = right_of(w);
            if (line.empty() || line[0].text != "peg") continue;
            line.erase(line.begin());
            if (line.size() < 5 || !line[0].number() || !line[1].number() || !line[2].number()) continue;
            const bool through = line[3].text == "through";
            if (!through && !line[3].number()) continue;
            if (line[4].text != "top" && line[4].text != "under") continue;
            Bore bore;
            bore.x = line[0].value();
            bore.y = line[1].value();
            bore.diameter = line[2].value();
            bore.through = through;
            bore.from_top = line[4].text == "top";
            const double depth = through ? piece.blank.height : line[3].value();
            bore.z_from = bore.from_top ? piece.blank.height - depth : 0;
            bore.z_to = bore.from_top ? piece.blank.height : depth;
            bores_.push_back(bore);
        }
    }

    /// The lines of the table of pockets: middle, face, depth, widths at face and back, beds there, up to,
    /// what it holds.
    void read_pockets() {
        static const std::regex name("K[0-9]+");
        for (const Word &w : words_) {
            if (!std::regex_match(w.text, name)) continue;
            const auto line = right_of(w);
            if (line.size() < 9 || !line[0].number() || !line[2].number() || !line[4].number()) continue;
            const bool inside = line[1].text == "inside" || line[1].text == "left";
            const double depth = line[2].value(), width = piece.blank.width;
            PocketCut cut;
            cut.x = line[0].value();
            cut.y_face = inside ? width : 0;
            cut.y_back = inside ? width - depth : depth;
            cut.half_at_face = line[3].value() / 2;
            cut.half_at_back = line[4].value() / 2;
            cut.bed = plane_over(line[5].number() ? line[5].value() : -50, 0, 0);
            cut.z_top = line[7].number() ? line[7].value() : piece.blank.height;
            pockets_.push_back(cut);
        }
    }

    /// "Tail of the datum end: 80 long, 100 wide at the end, 80 at its neck" in the table of cuts.
    void read_tails() {
        const Word &title = find("Cuts,");
        for (const Word &mark : words_) {
            if (mark.text != "E" || mark.x0 < title.x0 || mark.x1 > title.x0 + 12) continue;
            double end = 1000; // the next line of the table
            for (const Word &w : words_)
                if (w.x0 >= title.x0 && w.x1 < title.x0 + 12 && w.y() > mark.y() + 1)
                    end = std::min(end, w.y() - 1);
            std::vector<Word> cell;
            for (const Word &w : words_)
                if (w.x0 > title.x0 + 9 && w.x0 < title.x0 + 60 && w.y() > mark.y() - 1 &&
                    w.y() < std::min(end, mark.y() + 14))
                    cell.push_back(w);
            std::sort(cell.begin(), cell.end(), [](const Word &a, const Word &b) {
                return std::abs(a.y() - b.y()) > 1 ? a.y() < b.y() : a.x0 < b.x0;
            });
            bool far = false;
            std::vector<double> numbers;
            for (const Word &w : cell) {
                far = far || w.text == "far";
                if (w.number() && numbers.size() < 3) numbers.push_back(w.value());
            }
            add_tail(far ? End::far : End::datum, numbers.at(0), numbers.at(1), numbers.at(2));
        }
    }

    void add_tail(End end, double length, double at_end, double at_neck) {
        const double tip = end == End::datum ? 0 : piece.blank.length;
        const double neck = end == End::datum ? length : piece.blank.length - length;
        for (const double side : {-1.0, 1.0}) {
            const double middle = piece.blank.width / 2, run = neck - tip;
            const double y = middle + side * at_end / 2, widens = side * (at_neck - at_end) / 2 / run;
            const double k = side / std::sqrt(1 + widens * widens);
            const Vec3 normal{-k * widens, k, 0};
            piece.cuts.emplace_back(CheekCut{end,
                                             side < 0 ? LogFace::outside : LogFace::inside,
                                             std::min(tip, neck),
                                             std::max(tip, neck),
                                             {normal, normal.x * tip + normal.y * y}});
        }
    }

    struct Row {
        double x0, top, bottom; ///< of the outline on paper
    };

    Row row(const std::string &caption) const {
        const Word &w = find(caption, 20, 30);
        const double capital = 3.5, em = capital / (1493.0 / 2048), descent = 0.236 * em;
        const double top = w.y1 - descent - capital + (caption == "Outside" ? 9 : 0);
        return {datum_x_, top, top + piece.blank.height * scale_};
    }

    /// Upright numbers on the level of the row.
    std::vector<Word> near(const Row &row) const {
        std::vector<Word> all;
        for (const Word &w : words_)
            if (w.number() && !w.upright() && w.y() > row.top - 4.5 && w.y() < row.bottom + 4.5)
                all.push_back(w);
        return all;
    }

    /// Heights written in the wood beside `x` on one side of it, ascending.
    std::vector<double> heights(const Row &row, double x, int side, double least, double most) const {
        std::vector<double> all;
        for (const Word &w : near(row)) {
            const double away = side > 0 ? w.x0 - x : x - w.x1;
            if (away > least && away < most && w.x0 > datum_x_ && w.x1 < far_x_) all.push_back(w.value());
        }
        std::sort(all.begin(), all.end());
        return all;
    }

    std::vector<double> end_heights(const Row &row, int side) const {
        std::vector<double> all;
        const double x = side > 0 ? far_x_ : datum_x_;
        for (const Word &w : near(row))
            if (const double away = side > 0 ? w.x0 - x : x - w.x1; away > 5 && away < 11)
                all.push_back(w.value());
        std::sort(all.begin(), all.end());
        std::erase_if(all, [&](double z) { return z == 0 || z == piece.blank.height; });
        return all;
    }

    /// The lines of the table of cuts.
    void read_cuts() {
        const Word &title = find("Cuts,");
        struct Line {
            double y;
            int number;
            std::string words;
        };
        std::vector<Line> lines;
        double bottom = 1000;
        for (const Word &w : words_) // the table ends with the pegs' line or before whatever comes next
            if (w.x0 > title.x0 && w.x1 < title.x0 + 12 && w.y0 > title.y1 && w.number())
                lines.push_back({w.y(), static_cast<int>(w.value()), ""});
        std::sort(lines.begin(), lines.end(), [](const Line &a, const Line &b) { return a.y < b.y; });
        for (std::size_t i = 0; i < lines.size(); ++i)
            if (lines[i].number != static_cast<int>(i) + 1) {
                lines.resize(i);
                break;
            }
        for (std::size_t i = 0; i < lines.size(); ++i) {
            const double end = i + 1 < lines.size() ? lines[i + 1].y - 1 : std::min(bottom, lines[i].y + 5);
            std::vector<Word> cell;
            for (const Word &w : words_)
                if (w.x0 > title.x0 + 9 && w.x0 < title.x0 + 60 && w.y() > lines[i].y - 1 && w.y() < end)
                    cell.push_back(w);
            std::sort(cell.begin(), cell.end(), [](const Word &a, const Word &b) {
                return std::abs(a.y() - b.y()) > 1 ? a.y() < b.y() : a.x0 < b.x0;
            });
            for (const Word &w : cell)
                lines[i].words += w.text + " ";
        }
        for (const Line &line : lines)
            add_notch(line.words);
        for (const Line &line : lines)
            add_box(line.words, line.number);
        read_tails();
        for (const PocketCut &pocket : pockets_)
            piece.cuts.emplace_back(pocket);
        for (const Bore &bore : bores_)
            piece.cuts.emplace_back(bore);
    }

    static bool says(const std::string &words, const char *part) {
        return words.find(part) != std::string::npos;
    }

    void add_notch(const std::string &words) {
        const bool under = words.starts_with("Underside of"), top = words.starts_with("Top of");
        if (!under && !top) return;
        SeamCut cut;
        cut.side = top ? Side::top : Side::under;
        cut.end = says(words, "datum") ? End::datum : End::far;
        const bool datum = cut.end == End::datum, tail = says(words, "tail");
        const std::size_t n = places_.size();
        const Word &inner = places_.at(datum ? (tail ? 0 : 1) : n - (tail ? 1 : 2));
        const Word *outer = tail ? nullptr : &places_.at(datum ? 0 : n - 1);
        const double outer_at = outer ? outer->value() : datum ? 0 : piece.blank.length;
        cut.x_from = datum ? outer_at : inner.value();
        cut.x_to = datum ? inner.value() : outer_at;
        const int away = datum ? 1 : -1;
        double z[2][2]; // [outer, inner][outside, inside]
        for (const int face : {0, 1}) {
            const Row r = row(face == 0 ? "Outside" : "Inside");
            const auto at_inner = heights(r, inner.x(), away, 2, 10.5);
            std::vector<double> at_outer;
            if (!tail) at_outer = heights(r, outer->x(), -away, 2, 10.5);
            if (at_outer.empty()) at_outer = end_heights(r, -away); // no room in the wood
            z[0][face] = top ? at_outer.at(at_outer.size() - 1) : at_outer.at(0);
            z[1][face] = top ? at_inner.at(at_inner.size() - 1) : at_inner.at(0);
        }
        const double run = cut.x_to - cut.x_from, w = piece.blank.width;
        const double outward = (z[0][0] + z[0][1] - z[1][0] - z[1][1]) / 2 / run;
        const double slope_x = datum ? -outward : outward,
                     slope_y = (z[0][1] + z[1][1] - z[0][0] - z[1][0]) / 2 / w;
        const double middle = (z[0][0] + z[0][1] + z[1][0] + z[1][1]) / 4;
        const double x_middle = (cut.x_from + cut.x_to) / 2;
        const Plane seam = plane_over(middle - slope_x * x_middle - slope_y * w / 2, slope_x, slope_y);
        cut.seam = top ? seam : seam.flipped();
        piece.cuts.emplace_back(cut);
    }

    void add_box(const std::string &words, int number) {
        const bool sill = words.starts_with("Sill cut"), header = words.starts_with("Header cut");
        if (!sill && !header) return;
        const Row r = row("Outside");
        double circle = 0; // its number stands over or under it
        for (const Word &w : words_)
            if (w.text == std::to_string(number) &&
                (sill ? w.y() < r.top && w.y() > r.top - 8 : w.y() > r.bottom && w.y() < r.bottom + 8) &&
                w.x() > datum_x_ && w.x() < far_x_)
                circle = w.x();
        const Word *left = nullptr, *right = nullptr;
        for (const Word &p : places_) {
            if (p.x() < circle) left = &p;
            if (p.x() > circle && right == nullptr) right = &p;
        }
        if (left == nullptr || right == nullptr)
            throw std::runtime_error("cut " + std::to_string(number) + " has no ends");
        const auto levels = heights(r, left->x(), -1, 2, 10.5);
        BoxCut cut;
        cut.use = sill ? BoxUse::sill : BoxUse::header;
        cut.box.low = {left->value(), -50, sill ? levels.at(0) : -50};
        cut.box.high = {right->value(), piece.blank.width + 50,
                        sill ? piece.blank.height + 50 : levels.at(0)};
        piece.cuts.emplace_back(cut);
    }

    std::vector<Word> words_, places_;
    std::vector<Bore> bores_;
    std::vector<PocketCut> pockets_;
    double scale_ = 0, far_x_ = 0, datum_x_ = 1000;
};

bool near_levels(std::vector<Level> a, std::vector<Level> b) {
    if (a.size() != b.size()) return false;
    for (const Level &l : a) {
        const bool found = std::any_of(b.begin(), b.end(), [&](const Level &o) {
            return o.on_outside == l.on_outside && o.side == l.side && std::abs(o.x - l.x) <= 0.51 &&
                   std::abs(o.z - l.z) <= 1.01;
        });
        if (!found) return false;
    }
    return true;
}

/// Half a millimetre on every face, a whole one on seams, and half on the diameters of the bores.
double printed_precision(const Body &body) {
    double area_of_all = 0;
    for (const Face &face : body.hewn.faces)
        area_of_all += area(body.hewn, face);
    double bores = 0;
    for (const Bore &b : body.bores)
        bores +=
            std::numbers::pi * (b.diameter / 2 * (b.z_to - b.z_from) + b.diameter * b.diameter / 4) * 0.5;
    return 0.5 * area_of_all + bores;
}

std::string read_back(const Shell &shell, const Layout &layout, const Model &model, int &read) {
    const Piece &piece = layout.pieces[static_cast<std::size_t>(model.pieces[0])];
    const Body body = body_of(piece);
    Book book;
    book.created = 0;
    book.sheets = cut_sheet(shell, layout, model, body, {});
    if (book.sheets.size() != 1) return "";
    const std::vector<Word> words = words_of(write_pdf(book));
    if (std::any_of(words.begin(), words.end(), [](const Word &w) { return w.text == "part"; })) return "";
    ++read;
    const Reader reader(words);
    const Body again = body_of(reader.piece);
    std::string wrong;
    if (reader.piece.cuts.size() != piece.cuts.size()) wrong += " count of cuts";
    if (!near_levels(levels_of(features_of(piece)), levels_of(features_of(reader.piece))))
        wrong += " heights";
    if (std::abs(again.volume - body.volume) > printed_precision(body)) wrong += " volume";
    if (length(again.centroid - body.centroid) > 2) wrong += " balance point";
    return wrong.empty() ? "" : piece.tag + ":" + wrong + "\n";
}

Shell small_house(Length overhang) {
    Shell shell;
    shell.name = "Larch Hollow";
    shell.walls = l_plan(Length::mm(6437), Length::mm(5831), Length::mm(2800), Length::mm(3100));
    shell.thickness = Length::mm(187);
    shell.rounds.count = 8;
    shell.rounds.pitch = Length::mm(243.5);
    shell.rounds.gap = Length::mm(18);
    shell.notch.overhang = overhang;
    Opening opening;
    opening.wall = "A";
    opening.name = "window";
    opening.from_left = Length::mm(1800);
    opening.sill = Length::mm(700);
    opening.height = Length::mm(800);
    opening.width = Length::mm(830);
    shell.openings = {opening};
    opening.from_left = Length::mm(3700);
    shell.openings.push_back(opening);
    Floor floor;
    floor.name = "G";
    floor.from = "A";
    floor.to = "E";
    floor.level = Length::mm(1715);
    floor.joist = {Length::mm(96), Length::mm(173)};
    floor.bearing = Length::mm(71);
    floor.pocket = PocketKind::tailed;
    floor.tail = Slope::rise_per_run(1.0 / 7);
    shell.floors = {floor};
    return shell;
}

} // namespace

TEST_CASE("the numbers on paper, read back from the PDF, cut the same piece again") {
    for (const double overhang : {0.0, 90.0}) {
        const Shell shell = small_house(Length::mm(overhang));
        const Layout layout = lay_out(shell);
        int read = 0;
        std::string wrong;
        for (const Model &model : layout.models)
            try {
                wrong += read_back(shell, layout, model, read);
            } catch (const std::exception &cause) {
                wrong +=
                    layout.pieces[static_cast<std::size_t>(model.pieces[0])].tag + ": " + cause.what() + "\n";
            }
        CHECK(wrong == "");
        INFO(layout.models.size());
        CHECK(read >= 20);
    }
}

TEST_CASE("reading back notices a wrong number on paper") {
    const Piece log = test::sample_log();
    Piece other = log;
    std::get<BoxCut>(other.cuts[4]).box.low.z += 4;
    const Layout layout = test::layout_of(log);
    Book book;
    book.sheets = cut_sheet({}, layout, layout.models[0], body_of(log), {});
    const Reader reader(words_of(write_pdf(book)));
    CHECK(near_levels(levels_of(features_of(log)), levels_of(features_of(reader.piece))));
    CHECK_FALSE(near_levels(levels_of(features_of(other)), levels_of(features_of(reader.piece))));
}
