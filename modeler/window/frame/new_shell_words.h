// What the form for a new shell says of what was typed, and the units that it begins with.
#pragma once

#include "kernel/layout/layout.h"

#include <QLocale>
#include <QString>

namespace roundlay {
struct LengthBounds;
}

namespace roundlay::window {

/// Those that the last new shell was made in, else those of the person's country.
UnitSystem units_to_begin_with(const QLocale &locale);
void remember_units(UnitSystem units);

/// Why that cannot be made: what the document does not take, or what cannot be built. Empty where it can.
QString refusal(const Shell &shell, const Layout &layout);

/// Why the document does not take such a size; empty where it does.
QString out_of_bounds(const QString &field, Length size, const LengthBounds &bounds, UnitSystem units);

/// Whether so short a wall was meant, or feet or metres; empty where it may well be.
QString doubt_of_wall(Length length, UnitSystem units);

} // namespace roundlay::window
