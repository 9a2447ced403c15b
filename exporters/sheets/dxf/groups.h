// Group codes and values, the building stones of a DXF file.
#pragma once

#include <string>
#include <string_view>

namespace roundlay::sheets::dxf {

class Groups {
  public:
    void text(int code, std::string_view value);
    void number(int code, int value);
    void real(int code, double value);
    void handle(int code, unsigned value);    ///< hexadecimal
    void point(int code, double x, double y); ///< and its z, 0
    std::string &&take() { return std::move(out_); }

  private:
    void code(int code);
    std::string out_;
};

/// As a text value: \U+XXXX for letters beyond ASCII, %% made harmless.
std::string value_text(std::string_view words);

/// A name for a layer: letters that DXF forbids become '_'.
std::string layer_text(std::string_view name);

} // namespace roundlay::sheets::dxf
