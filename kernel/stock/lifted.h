// What is lifted: the finished piece, the squared blank it is cut from, and the round log that is hewn.
#pragma once

#include "kernel/layout/layout.h"
#include "kernel/trade/weight.h"

#include <vector>

namespace roundlay {

/// Kilograms, of the piece's wood; of a species of which no values are known all 0 and not known.
struct Lifted {
    WeightEstimate piece, blank, log;
};

/// What the piece is weighed as. New wood that comes into an old house is taken to be green, whatever
/// moisture is stated: one number cannot be true of both, and green is the heavier.
Wood weighed_wood(const Shell &shell, const Piece &piece);

/// Small end of the round log that the piece comes out of, mm, straight and without bark: the stated round
/// stick's, else the least that its stock (kernel/layout/pieces/stock.h) can be hewn from.
double small_end(const Piece &piece, const Blank &stock);

/// `volume`: of the finished piece, mm3. A piece of a round stick has no squared blank: it is not
/// known and 0.
Lifted lifted(const Shell &shell, const Piece &piece, double volume);

/// The blank's and the log's, of a stick that is ordered.
Lifted lifted_of_length(const Shell &shell, const Piece &piece, const Blank &stock);

/// On what the weights of these pieces rest: a sentence for each wood, in the order in which it comes first.
/// Of woods of which no values are known only where there are no others.
std::vector<Said> weight_bases(const Shell &shell, const Indexed<Piece> &pieces);

/// Said with every weight: on what it rests, and the caution.
Said weight_note(const WeightEstimate &weight);

} // namespace roundlay
