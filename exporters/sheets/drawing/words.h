// How numbers are worded on paper.
#pragma once

#include "kernel/measure/measure.h"

#include <string>

namespace roundlay::sheets {

/// Prints for one sheet, in the system chosen for the shell.
class Words {
  public:
    explicit Words(UnitSystem system, int denominator = 16) : system_(system), denominator_(denominator) {}

    UnitSystem system() const { return system_; }
    /// As in a dimension: metric without its unit, which the sheet states once.
    std::string length(double mm) const;
    std::string volume(double mm3) const; ///< "0.219 m³" or "7.74 ft³", three figures
    /// Rounded so that a range never looks narrower than it is: "180 kg" or "390 lb".
    std::string low_weight(double kilograms) const;
    std::string high_weight(double kilograms) const;
    std::string weights(double low_kg, double high_kg) const; ///< "175 kg to 210 kg"
    std::string unit_note() const;                            ///< what the numbers without units are

  private:
    bool metric() const { return system_ == UnitSystem::metric; }

    UnitSystem system_;
    int denominator_;
};

/// "up 1:8", "down 1:8" or "level".
std::string slope_words(double rise_per_run);

/// "1", "2.5": the value with three figures.
std::string three_figures(double value);

} // namespace roundlay::sheets
