// The woods that a log or a floor can be said to be of, in a choice whose first row is what else holds.
#pragma once

#include <string>

class QComboBox;

namespace roundlay::window {

/// Behind the rows that it has: each that values are known of, by its name in the person's language.
void add_species(QComboBox &choice);

/// Empty: the first row. One of which no values are known gets a row of its own, so that it is not lost.
void show_species(QComboBox &choice, const std::string &species);

} // namespace roundlay::window
