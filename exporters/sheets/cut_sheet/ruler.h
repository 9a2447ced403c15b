// Where a place along the log falls on paper, with stretches in which nothing happens left out.
#pragma once

#include <optional>
#include <vector>

namespace roundlay::sheets {

/// A stretch of log that is drawn, millimetres of wood.
struct Shown {
    double from = 0, to = 0;
};

/// What must be seen: a cut's end, a bore.
struct Place {
    double x = 0;    ///< millimetres of wood
    double near = 0; ///< millimetres of paper that are kept on either side
};

/// Maps x of wood to x of paper: shown stretches at scale, one after another, a gap where the log is broken.
class Ruler {
  public:
    /// `scale` is paper per wood, e.g. 0.1. At least one stretch, ascending.
    Ruler(std::vector<Shown> shown, double scale);

    const std::vector<Shown> &shown() const { return shown_; }
    double scale() const { return scale_; }
    double at(double x) const;            ///< left end of the first stretch = 0; inside a gap: its near edge
    double start_of(std::size_t i) const; ///< paper x where the stretch starts
    double width() const;                 ///< of everything on paper
    bool shows(double x) const;

    static constexpr double gap = 4; ///< on paper, millimetres

  private:
    std::vector<Shown> shown_;
    double scale_;
    std::vector<double> starts_;
};

/// Shortens [from, to] to `width` of paper by leaving out wood between the places that matter; its two ends
/// are among them. The longest empty stretch goes first, and no more than needed. Nothing where it cannot be
/// done with `most` breaks.
std::optional<Ruler> ruler_for(const Place &from, const Place &to, std::vector<Place> places, double scale,
                               double width, std::size_t most);

} // namespace roundlay::sheets
