#include "exporters/sheets/bench/bench.h"
#include "exporters/sheets/bench/piece_rows.h"
#include "exporters/sheets/cut_sheet/face_views.h"
#include "exporters/sheets/drawing/listed.h"
#include "exporters/sheets/frame/tables.h"
#include "exporters/sheets/set/best.h"
#include "exporters/sheets/set/scales.h"
#include "kernel/layout/cuts/asked.h"
#include "kernel/layout/wood/body.h"

#include <algorithm>
#include <memory>

namespace roundlay::sheets {
namespace {

constexpr double least_face = 9; ///< a log drawn lower than this on paper cannot be read
constexpr double share = 0.6;    ///< of the paper's height that the drawing may take

/// Bores are told in the rows.
Piece without_bores(Piece piece) {
    std::erase_if(piece.cuts, [](const Cut &cut) { return bore_of(cut) != nullptr; });
    return piece;
}

using Pages = std::vector<Page>;

/// The faces at that scale; null where they are not legible so, or take too much of the paper.
SharedBlock drawn(const SeenPiece &seen, const Family &family, const Draft &draft, const Words &words,
                  const Scale &scale) {
    const Rect area = inner_area(draft.size());
    for (const double lettering : {3.5, 2.5}) {
        const ViewsWanted wanted{&seen,
                                 &words,
                                 draft.options.angle,
                                 scale.ratio,
                                 lettering,
                                 0,
                                 seen.features.piece->blank.length,
                                 area.width(),
                                 1,
                                 1,
                                 &family.renamed};
        auto views = face_views(wanted);
        if (views && views->block.room.height() < share * area.height())
            return std::make_shared<const Block>(std::move(views->block));
    }
    return nullptr;
}

/// Fewest sheets first, then the largest drawing.
class FamilyPages {
  public:
    FamilyPages(const Draft &draft, const Family &family, const Words &words)
        : draft_(draft), work_(work_rows(family, words), draft.size()) {
        for (const Table &part : in_parts(piece_rows(draft, family, words), inner_area(draft.size()).width()))
            pieces_.emplace_back(part, draft.size());
    }

    Pages with(const SharedBlock &drawing) const {
        Pages pages{empty_page(draft_.size())};
        if (drawing && !put_on(pages, draft_.size(), drawing)) return {};
        put_fitted(pages, draft_.size(), work_, 0);
        for (const FittedTable &part : pieces_)
            put_fitted(pages, draft_.size(), part, 0);
        return pages;
    }

  private:
    const Draft &draft_;
    FittedTable work_;
    std::vector<FittedTable> pieces_;
};

/// "A-05-1, A-06-1 and 9 more".
std::string some_tags(const Draft &draft, const Family &family, const Words &words) {
    std::vector<std::string> tags;
    for (const Index<Piece> i : family.pieces)
        tags.push_back(draft.layout.pieces[i].tag);
    return first_listed(tags, 3, words);
}

std::string drawn_words(const Draft &draft, const Family &family, const Words &words) {
    if (family.letters.letters.empty()) return words.unit_note();
    const std::string &tag = draft.layout.pieces[family.pieces[family.drawn]].tag;
    return words.say("Drawn: %1. Letters stand for the numbers of its row.", tag) + " " + words.unit_note();
}

Titled titled(std::vector<Page> pages, const Draft &draft, const Family &family, const Words &words,
              const Scale *scale) {
    const std::string title = words.say("Family %1", family.name);
    return {std::move(pages),
            {title, some_tags(draft, family, words), words.say("Bench sheet"), family.name,
             said_scale(scale, words), scale != nullptr, drawn_words(draft, family, words)},
            {title + ", " + draft.layout.pieces[family.pieces.front()].tag, "family:" + family.name,
             words.say("Bench set")}};
}

} // namespace

Titled family_sheet(const Draft &draft, const Family &family, const Words &words) {
    const Piece piece = without_bores(draft.layout.pieces[family.pieces[family.drawn]]);
    const Body body = body_of(piece);
    const SeenPiece seen = seen_piece(piece, body, words.system());
    const FamilyPages pages(draft, family, words);
    Best<Pages> best;
    try_scales(
        scales(words.system()),
        [&](const Scale &scale) {
            if (const SharedBlock drawing = drawn(seen, family, draft, words, scale))
                if (Pages made = pages.with(drawing); !made.empty()) best.offer_pages(std::move(made), scale);
        },
        [&](const Scale &scale) {
            return best.is_perfect() || piece.blank.height * scale.ratio < least_face;
        });
    if (best.is_empty()) return titled(pages.with(nullptr), draft, family, words, nullptr);
    const Scale *scale = best.scale();
    return titled(*best.take(), draft, family, words, scale);
}

Titled plain_sheet(const Draft &draft, const std::vector<Family> &families, const Words &words) {
    std::vector<Page> pages;
    for (const Family &family : families) {
        if (family.is_cut) continue;
        if (pages.empty()) pages.push_back(empty_page(draft.size()));
        Table work = work_rows(family, words), pieces = piece_rows(draft, family, words);
        work.title = words.say("Family %1: %2", family.name, work.title);
        pieces.title = words.say("Family %1: %2", family.name, pieces.title);
        put_fitted(pages, draft.size(), FittedTable(work, draft.size()), 0);
        for (const Table &part : in_parts(pieces, inner_area(draft.size()).width()))
            put_fitted(pages, draft.size(), FittedTable(part, draft.size()), 0);
    }
    const std::string title = words.say("Plain pieces: nothing is cut in them but bores");
    return {std::move(pages),
            {words.say("Plain pieces"), title, words.say("Bench sheet"), "P-1", said_scale(nullptr, words),
             false, words.unit_note()},
            {words.say("Plain pieces"), "plain-pieces", words.say("Bench set")}};
}

} // namespace roundlay::sheets
