// The board on which the face views come together, shared by what draws on it.
#pragma once

#include "exporters/sheets/cut_sheet/face_views.h"

#include <string>
#include <vector>

namespace roundlay::sheets {

struct FaceBoard {
    const ViewsWanted &wanted;
    Ruler ruler;
    Board board;
    std::vector<FaceRow> rows; ///< from above
    double left = 0;           ///< paper x of the first stretch
    double board_left = 0;     ///< paper x where the column of the end view and the captions starts
    bool shows_datum = true, shows_far = true;
    double end_caption = 0; ///< room for the name over an end view

    const Features &features() const { return wanted.piece->features; }
    const Blank &blank() const { return wanted.piece->features.piece->blank; }
    double x(double wood) const { return left + ruler.at(wood); }
    double right() const { return left + ruler.width(); }
    const FaceRow &row(View view) const;
};

/// Room for end heights beside the faces, millimetres of paper; 0 where there are none.
double room_for_end_levels(const ViewsWanted &wanted, End end);

void add_end_heights(FaceBoard &face);
/// Heights at shoulders and at the floors of square cuts, beside them in the wood. False where one found no
/// place.
bool add_inner_heights(FaceBoard &face);

/// Numbers of the cuts in circles over or under the outside face. False where one found no place.
bool add_cut_numbers(FaceBoard &face);
double room_for_cut_numbers(const Features &features);

bool add_pegs(FaceBoard &face);
/// Marks beside the pockets, on the face that they are open to.
bool add_pockets(FaceBoard &face);

/// The level line on both side faces, and the end line on all four, where it is drawn.
void add_reference_lines(FaceBoard &face);
/// After everything else that must find a place.
void name_end_line(FaceBoard &face);

void add_end_views(FaceBoard &face);
void add_captions(FaceBoard &face);
void add_balance_point(FaceBoard &face);
void add_up_arrows(FaceBoard &face);

/// Between an end view and the heights beside it.
inline constexpr double beside_end_view = 4;

} // namespace roundlay::sheets
