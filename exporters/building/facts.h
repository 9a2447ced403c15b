// What is said of each thing of the house: property sets and quantities. Private to this room.
#pragma once

#include "exporters/building/building.h"
#include "exporters/building/house.h"

#include <optional>

namespace roundlay::building {

/// A round bore stands as a prism with so many sides.
inline constexpr int sides_of_a_bore = 16;

class Facts {
  public:
    /// `house` outlives this and has its shapes.
    explicit Facts(const BuildingSource &source);

    About piece(Index<Piece> index) const;
    About assembly(Index<LayoutPart> part) const;
    About opening(std::size_t opening) const;
    About house() const;
    /// Of all species that its pieces are of; see wood_of_piece.
    Indexed<Material> woods() const { return woods_; }
    Index<Material> wood_of_piece(Index<Piece> index) const { return wood_of_[index]; }

    const Voice &voice() const { return source_.list.voice; }

  private:
    void add_wood(const Wood &wood);
    PropertySet own(Index<Piece> index) const;
    void add_log(PropertySet &to, const Piece &piece, const PieceRow &row) const;
    void add_found(PropertySet &to, Index<Piece> index, const PieceRow &row) const;
    PropertySet common(Index<Piece> index) const;
    QuantitySet quantities(Index<Piece> index) const;

    const BuildingSource &source_;
    bool told_fabric_;                    ///< is any wood old, or in place of old?
    Indexed<std::string, Piece> decided_; ///< in words
    Indexed<Material> woods_;
    Indexed<Index<Material>, Piece> wood_of_;
};

} // namespace roundlay::building
