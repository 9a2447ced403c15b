// A router job in words that its control and people read.
#pragma once

#include "exporters/lists/table.h"
#include "exporters/router/router.h"
#include "exporters/words/voice.h"

#include <cstddef>
#include <string>

namespace roundlay {

/// What whoever lets the program run must know before: it stands on top of each file, and is told wherever
/// one is made.
Said router_caution();

/// The program of one board (ISO 6983): G0 to G3, G17, G21, G40, G90, G94, M3, M5, M30, X, Y, Z, I, J, F, S
/// and comments in ASCII. Millimetres with three decimals; I and J from where the arc begins. `house`: what
/// the shell is called.
std::string program_text(const RouterJob &job, std::size_t board, const std::string &house,
                         const Voice &voice);

/// Which template lies where: board, template, what it is for, its lower left corner, its size, whether it is
/// turned.
Table places_of(const RouterJob &job);

/// The inner corners that keep the tool's radius, on the board that each lies on.
Table corners_of(const RouterJob &job);

} // namespace roundlay
