// How things and numbers are worded on paper.
#pragma once

#include "exporters/words/voice.h"

#include <string>

namespace roundlay::sheets {

/// Speaks for one sheet, in the system chosen for the shell. Lengths are as in a dimension: metric without
/// its unit, which the sheet states once.
class Words : public Voice {
  public:
    explicit Words(UnitSystem system, int denominator = 16, Language language = Language::english)
        : Voice(language, {.system = system, .denominator = denominator, .with_unit = false}),
          denominator_(denominator) {}

    std::string volume(double mm3) const; ///< "0.219 m³" or "7.74 ft³", three figures
    /// Rounded so that a range never looks narrower than it is: "180 kg" or "390 lb".
    std::string low_weight(double kilograms) const;
    std::string high_weight(double kilograms) const;
    std::string weights(double low_kg, double high_kg) const; ///< "175 kg to 210 kg"
    /// A height from the level line, with its sign: "+105", "-85"; "0" on the line.
    std::string level(double mm) const;
    std::string unit_note() const;                ///< what the numbers without units are
    std::string slope(double rise_per_run) const; ///< "up 1:8", "down 1:8" or "level"

  private:
    bool metric() const { return system() == UnitSystem::metric; }

    int denominator_;
};

/// "1", "2.5": the value with three figures.
std::string three_figures(double value);

} // namespace roundlay::sheets
