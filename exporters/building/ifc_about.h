// Property sets and quantities as text. Private to this room.
#pragma once

#include "exporters/building/house.h"
#include "exporters/building/ifc_text.h"

#include <map>
#include <string>

namespace roundlay::building {

class IfcAbout {
  public:
    explicit IfcAbout(IfcText &text) : text_(text) {}

    /// `what`: as its identifier has it.
    void tell(const About &about, Ref thing, const std::string &what);
    Ref material(const Material &wood);

  private:
    Ref property(const Property &property);
    Ref quantity(const Quantity &quantity);
    Ref list_of(std::string_view name);
    template <typename Value> Ref value(const Property &property, const Value &value);
    void define(Ref set, Ref thing, const std::string &what);

    IfcText &text_;
    std::map<std::string, Ref> properties_; ///< by all that they say: many pieces say the same
    std::map<std::string_view, Ref> lists_;
};

} // namespace roundlay::building
