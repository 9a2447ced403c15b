// The openings of a wall, as its elevation shows them: each called by its name and its size.
#pragma once

#include "exporters/sheets/drawing/board.h"
#include "exporters/sheets/drawing/words.h"
#include "exporters/sheets/elevation/wall_bores.h"
#include "kernel/shell/shell.h"

#include <string>
#include <vector>

namespace roundlay::sheets {

class WallOpenings {
  public:
    /// `words` outlives it, and so does the shell.
    WallOpenings(const Shell &shell, const std::string &wall, AlongPaper along, const Words &words);

    const std::vector<const Opening *> &all() const { return all_; }

    /// Name and size in each; "door 700 × 2000 at 1200" of those that have no room for them.
    std::vector<std::string> add_names(Board &board, double lettering);

    bool meet(const Rect &box) const;
    bool hold(const Rect &box) const; ///< one of them, the whole box

    /// So near to a name or size of one that it reads as a part of it.
    bool is_by_a_size(const Rect &box) const;

  private:
    Rect paper_of(const Opening &opening) const;
    bool put_lines(Board &board, const Rect &hole, const std::vector<std::string> &lines, double lettering);
    std::string in_a_list(const Opening &opening) const;

    std::vector<const Opening *> all_;
    AlongPaper along_;
    double scale_;
    const Words &words_;
    std::vector<Rect> sizes_; ///< of what was added
};

} // namespace roundlay::sheets
