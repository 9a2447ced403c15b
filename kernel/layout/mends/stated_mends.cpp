#include "kernel/layout/mends/stated_mends.h"

#include "kernel/layout/no_wood.h"
#include "kernel/layout/text.h"

#include <algorithm>

namespace roundlay {

namespace {

constexpr double past_blank = 10; ///< how far the region reaches where it is open

bool is_named(const Mend &mend, const Plan &plan, const Piece &piece) {
    if (!is_log(piece)) return false;
    if (!mend.mark.empty() && piece.mark != mend.mark) return false;
    if (!mend.wall.empty() && plan.walls[piece.wall].name != mend.wall) return false;
    return (!mend.round || piece.round == *mend.round) && (!mend.piece || piece.number == *mend.piece);
}

About place_of(const Mend &mend) {
    if (mend.wall.empty()) return {about::All::logs};
    if (!mend.round) return wall_place(mend.wall);
    About place = round_place(mend.wall, *mend.round);
    if (mend.piece) place.push_back(about::Part{*mend.piece});
    return place;
}

Said too_many(const Mend &mend, std::size_t count) {
    return mend.mark.empty()
               ? said("a mend is stated of this round, and openings part it into %1 logs", count)
               : said("a mend is stated of the log marked %1, and %2 logs bear that mark", mend.mark, count);
}

/// Checks one mend against its log.
class Stating {
  public:
    Stating(const Shell &shell, std::size_t index, const Piece &log, Findings &findings)
        : shell_(shell), index_(index), mend_(shell.mends[index]), log_(log), findings_(findings) {}

    std::optional<MendRegion> region() {
        if (!is_stated() || !is_along() || !is_across()) return std::nullopt;
        const MendStretch along = stretch();
        const LogFace face = log_face(mend_.face);
        const double least = least_thickness(log_, face, along);
        if (mend_.depth && mend_.depth->mm() > least - no_wood) {
            tell(Weight::error, "mend-too-deep", "depth",
                 said("this mend is %1 deep, and the log only %2 thick there", in_mm(mend_.depth->mm()),
                      in_mm(least)),
                 at_most(shell_, least - no_wood));
            return std::nullopt;
        }
        warn_past_heart(least);
        const double whole = is_side(face) ? log_.blank.height : log_.blank.width;
        const double low = mend_.low && is_let_in() ? edge(*mend_.low, along) : -past_blank,
                     high = mend_.high && is_let_in() ? edge(*mend_.high, along) : whole + past_blank;
        MendRegion region = region_in(
            log_, face, along, mend_.depth ? std::optional(mend_.depth->mm()) : std::nullopt, low, high);
        if (is_splice()) region.new_end = mend_.end == LogEnd::left ? End::datum : End::far;
        return region;
    }

  private:
    bool is_splice() const { return mend_.kind == MendKind::splice; }
    bool is_let_in() const { return mend_.kind == MendKind::let_in; }

    void tell(Weight weight, const char *code, const char *key, Said what,
              std::optional<Said> advice = std::nullopt) {
        findings_.push_back({weight,
                             code,
                             {about::Piece{log_.tag}},
                             std::move(what),
                             std::move(advice),
                             subject("mend", index_, key)});
    }

    bool is_stated() {
        if (is_splice() && !mend_.lap) {
            tell(Weight::error, "mend-unstated", "kind", said("this splice does not say how long its lap is"),
                 said("state lap; no least length is published, it is the maker's choice"));
            return false;
        }
        if (!is_splice() && (!mend_.from || !mend_.depth)) {
            tell(Weight::error, "mend-unstated", "kind",
                 said("this mend does not say where it begins and how deep it is"),
                 said("state from and depth"));
            return false;
        }
        return true;
    }

    bool is_along() {
        const double from = is_splice() ? mend_.to->mm() : mend_.from->mm(),
                     to = is_splice() ? mend_.to->mm() + mend_.lap->mm() : mend_.to->mm();
        if (to - from < no_wood) {
            tell(Weight::error, "mend-backwards", "to",
                 said("this mend begins %1 from the log's end and reaches to %2", in_mm(from), in_mm(to)),
                 said("a stretch of %1 at least", no_less(shell_, no_wood)));
            return false;
        }
        const double most = is_splice() ? log_.blank.length - no_wood : log_.blank.length;
        if (to <= most + past_end) return true;
        tell(Weight::error, "mend-past-end", is_splice() ? "lap" : "to",
             said("this mend reaches %1 from the log's end, and the log is %2 long", in_mm(to),
                  in_mm(log_.blank.length)));
        return false;
    }

    bool is_across() {
        if (!is_let_in()) return true;
        const double whole = is_side(log_face(mend_.face)) ? log_.blank.height : log_.blank.width;
        const double low = mend_.low.value_or(Length()).mm(), high = mend_.high ? mend_.high->mm() : whole;
        if (high - low >= no_wood && low < whole) return true;
        tell(Weight::error, "mend-backwards", mend_.high ? "high" : "low",
             said("across the face this mend begins at %1 and ends at %2", in_mm(low), in_mm(high)),
             said("a stretch of %1 at least", no_less(shell_, no_wood)));
        return false;
    }

    MendStretch stretch() const {
        const double near = is_splice() ? mend_.to->mm() : mend_.from->mm(),
                     away = is_splice() ? mend_.to->mm() + mend_.lap->mm() : mend_.to->mm();
        const double length = log_.blank.length;
        return mend_.end == LogEnd::left ? MendStretch{near, std::min(away, length)}
                                         : MendStretch{std::max(0.0, length - away), length - near};
    }

    /// Over the under face, or from the outside face, where the mend begins.
    double edge(Length stated, const MendStretch &along) const {
        const double begin = mend_.end == LogEnd::left ? along.from : along.to;
        return stated.mm() + lowest_edge(log_, log_face(mend_.face), begin);
    }

    /// Where rot reaches the middle of a log, that length of it is replaced (building care pages of a museum:
    /// half-soling and log replacement; a half of its thickness).
    void warn_past_heart(double thickness) {
        if (!mend_.depth || is_splice() || mend_.depth->mm() <= thickness / 2) return;
        tell(Weight::warning, "mend-past-heart", "depth",
             said("this mend takes %1 of %2, past the middle of the log", in_mm(mend_.depth->mm()),
                  in_mm(thickness)),
             said("published practice replaces that length of the log then, by a splice or a whole log; "
                  "whoever mends it decides"));
    }

    static constexpr double past_end = 1e-6; ///< mm

    const Shell &shell_;
    std::size_t index_;
    const Mend &mend_;
    const Piece &log_;
    Findings &findings_;
};

} // namespace

std::optional<Index<Piece>> log_of_mend(const Shell &shell, std::size_t mend, const Plan &plan,
                                        const Indexed<Piece> &pieces, Findings &findings) {
    const Mend &stated = shell.mends[mend];
    const auto tell = [&](const char *key, Said what, Said advice) {
        findings.push_back({Weight::error, "mend-nowhere", place_of(stated), std::move(what),
                            std::move(advice), subject("mend", mend, key)});
        return std::nullopt;
    };
    if (stated.mark.empty() && (stated.wall.empty() || !stated.round))
        return tell("kind", said("a mend does not say which log it is of"),
                    said("state its wall and round, or the mark on the log"));
    std::vector<Index<Piece>> found;
    for (const Index<Piece> i : pieces.indices())
        if (is_named(stated, plan, pieces[i])) found.push_back(i);
    if (found.size() == 1) return found.front();
    if (!found.empty())
        return tell(stated.mark.empty() ? "round" : "mark", too_many(stated, found.size()),
                    said("say which piece of the round it is, counted from the left"));
    if (!stated.mark.empty())
        return tell("mark",
                    said("a mend is stated of the log marked %1, and no log bears that mark", stated.mark),
                    said("mends are of logs in walls, not of joists or beams"));
    return tell("round", said("a mend is stated of a log that is not there"),
                said("mends are of logs in walls, not of joists or beams"));
}

std::optional<MendRegion> region_of_mend(const Shell &shell, std::size_t mend, const Piece &log,
                                         Findings &findings) {
    return Stating(shell, mend, log, findings).region();
}

} // namespace roundlay
