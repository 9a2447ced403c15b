#include "exporters/sheets/cut_sheet/compose.h"

#include "exporters/sheets/cut_sheet/isometric.h"
#include "exporters/sheets/cut_sheet/parts.h"
#include "exporters/sheets/frame/tables.h"

#include <algorithm>
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

class Composer {
  public:
    explicit Composer(const ComposeWanted &wanted) : wanted_(wanted), area_(inner_area(wanted.size)) {
        for (const Table &table : wanted.tables) // none is left out for being wider than the paper
            tables_.push_back(fitted(table, wanted.size));
        for (const std::size_t most_breaks : {0, 1, 2, 3, 5, 8})
            for (const Scale &scale : scales(wanted.words->system())) {
                auto picture =
                    isometric(wanted.piece->features, *wanted.piece->body, scale, area_.width(), most_breaks);
                if (picture) pictures_.push_back(std::move(*picture));
            }
    }

    /// Views drawn in `parts` stretches at one scale.
    std::optional<std::vector<Block>> views(double scale, double lettering, int parts,
                                            Division division) const {
        std::vector<Block> blocks;
        const double length = wanted_.piece->features.piece->blank.length;
        const auto places = places_shown(*wanted_.piece, *wanted_.words, lettering, scale);
        for (const Shown &part : divided(division, length, parts, places, scale)) {
            const int number = static_cast<int>(blocks.size()) + 1;
            auto made = face_views({wanted_.piece, wanted_.words, wanted_.angle, scale, lettering, part.from,
                                    part.to, area_.width(), number, parts});
            if (!made || made->block.room.height() > area_.height()) return std::nullopt;
            blocks.push_back(std::move(made->block));
        }
        return blocks;
    }

    /// The fewest pages for these views, with as whole and as large a picture as that allows.
    std::vector<Page> best_pages(const std::vector<Block> &views) const {
        if (pictures_.empty()) return arranged(views, Block{}, false);
        std::vector<Page> best;
        for (const Block &picture : pictures_)
            for (const bool picture_first : {true, false}) {
                std::vector<Page> pages = arranged(views, picture, picture_first);
                if (pages.empty()) continue;
                if (best.empty() || pages.size() < best.size()) best = std::move(pages);
                if (best.size() == 1) return best;
            }
        return best;
    }

    std::vector<Page> without_views() {
        tables_.insert(tables_.begin(), fitted(wanted_.instead, wanted_.size));
        return best_pages({});
    }

  private:
    std::vector<Page> arranged(const std::vector<Block> &views, const Block &picture,
                               bool picture_first) const {
        std::vector<Page> pages{empty_page(wanted_.size)};
        for (const Block &block : views) {
            if (pages.back().put(block)) continue;
            pages.push_back(empty_page(wanted_.size));
            if (!pages.back().put(block)) return {};
        }
        if (picture_first && !put_picture(pages, picture)) return {};
        for (const Table &table : tables_)
            put_fitted(pages, wanted_.size, table, 0);
        if (!picture_first && !put_picture(pages, picture)) return {};
        return pages;
    }

    /// Low on the right, so that the tables get the free ground from the left.
    bool put_picture(std::vector<Page> &pages, const Block &picture) const {
        if (picture.items.empty()) return true;
        for (Page &page : pages)
            if (page.put_low(picture)) return true;
        pages.push_back(empty_page(wanted_.size));
        return pages.back().put_low(picture);
    }

    const ComposeWanted &wanted_;
    Rect area_;
    std::vector<Table> tables_;
    std::vector<Block> pictures_; ///< the most wanted first
};

/// The best drawing of the log in that many parts.
Composed in_parts(const Composer &composer, const ComposeWanted &wanted, int parts) {
    Composed best;
    for (const Scale &scale : scales(wanted.words->system())) {
        if (wanted.piece->features.piece->blank.height * scale.ratio < least_face) break;
        for (const auto &[lettering, division] : ways) {
            if (parts == 1 && division != Division::by_need) continue; // nothing is divided
            const auto views = composer.views(scale.ratio, lettering, parts, division);
            if (!views) continue;
            std::vector<Page> pages = composer.best_pages(*views);
            if (pages.empty()) continue;
            if (best.pages.empty() || pages.size() < best.pages.size()) best = {std::move(pages), &scale};
            if (best.pages.size() == 1) return best;
        }
    }
    return best;
}

} // namespace

Composed composed(const ComposeWanted &wanted) {
    Composer composer(wanted);
    Composed best;
    for (int parts = 1; parts <= most_parts; ++parts) {
        Composed next = in_parts(composer, wanted, parts);
        const bool better =
            !next.pages.empty() && (best.pages.empty() || next.pages.size() < best.pages.size());
        if (better) best = std::move(next);
        if (best.pages.size() == 1 || (parts >= enough_parts && !best.pages.empty())) break;
    }
    if (best.pages.empty()) best.pages = composer.without_views();
    return best;
}

} // namespace roundlay::sheets
