#include "exporters/sheets/cut_sheet/compose.h"

#include "exporters/sheets/cut_sheet/isometric.h"
#include "exporters/sheets/cut_sheet/parts.h"
#include "exporters/sheets/frame/tables.h"
#include "exporters/sheets/set/best.h"

#include <algorithm>
#include <numeric>
#include <utility>

namespace roundlay::sheets {
namespace {

constexpr double least_face = 9; ///< a log drawn lower than this on paper cannot be read
constexpr int most_parts = 40;
constexpr int enough_parts = 3; ///< with a drawing in so many parts found, no finer one is looked for
constexpr std::pair<double, Division> ways[] = { ///< lettering, and how a log in parts is divided
    {3.5, Division::by_need},
    {3.5, Division::evenly},
    {2.5, Division::by_need},
    {2.5, Division::evenly}};

/// Pictures of the log, the most wanted first: the fewest breaks, and of those the largest scale. Each is
/// drawn when it is first asked for.
class Pictures {
  public:
    Pictures(const ComposeWanted &wanted, double width) : wanted_(wanted), width_(width) {
        for (const std::size_t most_breaks : {0, 1, 2, 3, 5, 8})
            for (const Scale &scale : scales(wanted.words->system()))
                all_.push_back({most_breaks, &scale, std::nullopt});
    }

    /// The next one from `at` on that can be drawn, and moves `at` behind it; null where there is none.
    SharedBlock next(std::size_t &at) {
        while (at < all_.size())
            if (SharedBlock drawn = draw(all_[at++])) return drawn;
        return nullptr;
    }

  private:
    struct Picture {
        std::size_t breaks;
        const Scale *scale;
        std::optional<SharedBlock> drawn; ///< null where it cannot be drawn so
    };

    const SharedBlock &draw(Picture &picture) {
        if (!picture.drawn) {
            auto made = isometric(wanted_.piece->features, *wanted_.piece->body, *picture.scale,
                                  *wanted_.words, width_, picture.breaks, whole_);
            picture.drawn = made ? std::make_shared<const Block>(std::move(*made)) : nullptr;
        }
        return *picture.drawn;
    }

    const ComposeWanted &wanted_;
    double width_;
    SeenWhole whole_;
    std::vector<Picture> all_;
};

using Pages = std::vector<Page>;
using Order = std::vector<std::size_t>; ///< of tables, by their places in the list

class Composer {
  public:
    explicit Composer(const ComposeWanted &wanted)
        : wanted_(wanted), area_(inner_area(wanted.size)), pictures_(wanted, area_.width()) {
        for (const Table &table : wanted.tables) // none is left out for being wider than the paper
            tables_.emplace_back(table, wanted.size);
        find_orders();
    }

    /// Pages with the views drawn in `parts` stretches at one scale; empty where they cannot be.
    Pages views(double scale, double lettering, int parts, Division division) const {
        Pages pages{empty_page(wanted_.size)};
        const double length = wanted_.piece->features.piece->blank.length;
        const auto places = places_shown(*wanted_.piece, *wanted_.words, lettering, scale);
        int number = 0;
        for (const Shown &part : divided(division, length, parts, places, scale)) {
            auto made = face_views({wanted_.piece, wanted_.words, wanted_.angle, scale, lettering, part.from,
                                    part.to, area_.width(), ++number, parts});
            if (!made || made->block.room.height() > area_.height()) return {};
            if (!put_on(pages, wanted_.size, std::make_shared<const Block>(std::move(made->block))))
                return {};
        }
        return pages;
    }

    /// The fewest pages for what is on these already, with as whole and as large a picture as that allows.
    Pages filled(const Pages &views) {
        Pages best;
        std::size_t at = 0;
        while (const SharedBlock picture = pictures_.next(at))
            for (const bool picture_first : {true, false})
                for (const Order &order : orders_) {
                    Pages pages = filled_with(views, picture, picture_first, order);
                    if (pages.empty()) continue;
                    if (best.empty() || pages.size() < best.size()) best = std::move(pages);
                    if (best.size() == views.size()) return best; // no arrangement takes fewer
                }
        return best.empty() ? filled_with(views, nullptr, false, orders_.front()) : best;
    }

    Pages without_views() {
        tables_.insert(tables_.begin(), FittedTable(wanted_.instead, wanted_.size));
        find_orders();
        return filled({empty_page(wanted_.size)});
    }

  private:
    /// As they are wanted; then the largest first, which leaves the small ones the corners: in a language of
    /// long words that saves a sheet.
    void find_orders() {
        Order as_wanted(tables_.size());
        std::iota(as_wanted.begin(), as_wanted.end(), std::size_t{0});
        const auto area = [this](std::size_t i) {
            const LaidTable &laid = *tables_[i].laid;
            return -laid.width() * laid.height(0, laid.rows());
        };
        const auto height = [this](std::size_t i) {
            return -tables_[i].laid->height(0, tables_[i].laid->rows());
        };
        Order largest = as_wanted, highest = as_wanted;
        std::ranges::stable_sort(largest, {}, area);
        std::ranges::stable_sort(highest, {}, height);
        orders_ = {as_wanted, largest, highest};
    }

    Pages filled_with(Pages pages, const SharedBlock &picture, bool picture_first, const Order &order) const {
        if (picture && picture_first && !put_picture(pages, picture)) return {};
        for (const std::size_t table : order)
            put_fitted(pages, wanted_.size, tables_[table], 0);
        if (picture && !picture_first && !put_picture(pages, picture)) return {};
        return pages;
    }

    /// Low on the right, so that the tables get the free ground from the left.
    bool put_picture(Pages &pages, const SharedBlock &picture) const {
        for (Page &page : pages)
            if (page.put_low(picture)) return true;
        pages.push_back(empty_page(wanted_.size));
        return pages.back().put_low(picture);
    }

    const ComposeWanted &wanted_;
    Rect area_;
    std::vector<FittedTable> tables_;
    std::vector<Order> orders_;
    Pictures pictures_;
};

/// Offers drawings of the log in that many parts.
void try_parts(Best<Pages> &best, Composer &composer, const ComposeWanted &wanted, int parts) {
    const double height = wanted.piece->features.piece->blank.height;
    const auto draw = [&](const Scale &scale) {
        for (const auto &[lettering, division] : ways) {
            if (best.is_perfect() || (parts == 1 && division != Division::by_need)) continue;
            const Pages views = composer.views(scale.ratio, lettering, parts, division);
            if (views.empty() || !best.would_keep({0, views.size()})) continue;
            Pages pages = composer.filled(views);
            const Cost cost{0, pages.size()};
            if (!pages.empty()) best.offer(std::move(pages), &scale, cost);
        }
    };
    try_scales(scales(wanted.words->system()), draw,
               [&](const Scale &scale) { return best.is_perfect() || height * scale.ratio < least_face; });
}

} // namespace

Composed composed(const ComposeWanted &wanted) {
    Composer composer(wanted);
    Best<Pages> best;
    for (int parts = 1; parts <= most_parts; ++parts) {
        try_parts(best, composer, wanted, parts);
        if (best.is_perfect() || (parts >= enough_parts && !best.is_empty())) break;
    }
    if (best.is_empty()) return {composer.without_views(), nullptr};
    const Scale *scale = best.scale();
    return {*best.take(), scale};
}

} // namespace roundlay::sheets
