// Colours of parts, and of single uses where those differ.
#pragma once

#include "exporters/mesh/palette.h"
#include "exporters/part21/part21_text.h"

#include <utility>
#include <vector>

namespace roundlay::step {

/// The colour of one use: `shape` is a SHAPE_REPRESENTATION that belongs to that use alone.
struct UseColour {
    Colour colour;
    part21::Ref shape;
};

class StyleWriter {
  public:
    explicit StyleWriter(part21::DataWriter &data) : data_(data) {}
    void add(const Colour &colour, part21::Ref solid, part21::Ref context,
             const std::vector<UseColour> &uses);

  private:
    part21::Ref surface_style(const Colour &colour);
    part21::DataWriter &data_;
    std::vector<std::pair<Colour, part21::Ref>> known_;
};

} // namespace roundlay::step
