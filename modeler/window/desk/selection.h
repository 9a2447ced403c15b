// What is chosen: one thing, the same in every view.
#pragma once

#include "kernel/layout/layout.h"

#include <QObject>
#include <optional>
#include <string>

namespace roundlay::window {

struct Chosen {
    enum class Kind { nothing, wall, corner, opening, piece };
    Kind kind = Kind::nothing;
    std::string name; ///< of the wall or corner, or the piece's tag
    int opening = -1; ///< index into Shell::openings
    bool operator==(const Chosen &) const = default;
};

/// A place on a wall, where a hand points.
struct Spot {
    std::string wall;         ///< empty: none
    double along = 0;         ///< from its left, mm
    std::optional<double> up; ///< over the foundation, where the view tells
};

class Selection : public QObject {
    Q_OBJECT
  public:
    using QObject::QObject;

    const Chosen &chosen() const { return chosen_; }
    const std::string &wall() const { return wall_; }     ///< that the elevation shows; may be empty
    const std::string &corner() const { return corner_; } ///< that the joint close-up shows

    void clear() { set({}); }
    void choose_wall(const std::string &name);
    void choose_corner(const std::string &name);
    void choose_opening(const Shell &shell, int opening);
    void choose_piece(const Layout &layout, Index<Piece> piece);
    /// After an edit: what is gone is let go, and there is always a wall and a corner to show.
    void hold_to(const Shell &shell, const Layout &layout);

    bool is_opening(int opening) const {
        return chosen_.kind == Chosen::Kind::opening && chosen_.opening == opening;
    }
    bool is_wall(const std::string &name) const {
        return chosen_.kind == Chosen::Kind::wall && chosen_.name == name;
    }
    bool is_corner(const std::string &name) const {
        return chosen_.kind == Chosen::Kind::corner && chosen_.name == name;
    }
    bool is_piece(const std::string &tag) const {
        return chosen_.kind == Chosen::Kind::piece && chosen_.name == tag;
    }

  signals:
    void changed();

  private:
    void set(Chosen chosen);

    Chosen chosen_;
    std::string wall_, corner_;
};

/// None where there is no such piece.
std::optional<Index<Piece>> piece_tagged(const Layout &layout, const std::string &tag);

} // namespace roundlay::window
