// Lengths as the shell's units show them, and Qt's strings from and to the kernel's.
#pragma once

#include "kernel/layout/layout.h"
#include "kernel/measure/measure.h"

#include <QString>
#include <optional>
#include <string>

namespace roundlay::window {

inline QString text(const std::string &utf8) {
    return QString::fromStdString(utf8);
}
inline QString text(std::string_view utf8) {
    return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
}

/// `9 in`, `2340 mm`.
QString length_text(double mm, UnitSystem units);

/// What a number without a unit means where a length is asked for.
QString bare_number_words(UnitSystem units);

/// How high a shell stands, and by its rounds where that differs: `2275 mm (2300 mm by its rounds)`.
QString standing_text(const Layout &layout, UnitSystem units);

/// `0.016 m³`, `0.55 ft³`.
QString volume_text(double mm3, UnitSystem units);
/// `12 to 13 kg`, `26 to 29 lb`; outward to whole ones.
QString weight_text(double low_kg, double high_kg, UnitSystem units);

/// Rounded to what length_text prints, so that what stands in the text is what was shown.
double to_shown(double mm, UnitSystem units);

} // namespace roundlay::window
