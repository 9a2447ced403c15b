// Properties hung on products and their uses, after the recommended practices of the implementor forum for
// user defined attributes (release 1.8) and for geometric validation properties (release 4.4).
#pragma once

#include "exporters/part21/part21_text.h"
#include "exporters/step/product_tree.h"
#include "kernel/boundary/boundary.h"
#include "kernel/boundary/measures.h"

#include <map>
#include <string>

namespace roundlay::step {

class PropertyWriter {
  public:
    PropertyWriter(part21::DataWriter &data, part21::Ref millimetre) : data_(data), millimetre_(millimetre) {}

    /// `owner` is a PRODUCT_DEFINITION or a NEXT_ASSEMBLY_USAGE_OCCURRENCE.
    void add_attributes(const Attributes &attributes, part21::Ref owner, part21::Ref context);

    /// `shape` is the part's PRODUCT_DEFINITION_SHAPE.
    void add_validation(const Measures &measures, part21::Ref shape, part21::Ref context);

  private:
    part21::Ref general_property(const std::string &name);
    part21::Ref unit_to_the(int power);
    void add_measured(const char *name, const char *item, const char *type, double value, int power,
                      part21::Ref shape, part21::Ref context);
    void represent(const char *name, part21::Ref item, part21::Ref shape, part21::Ref context);

    part21::DataWriter &data_;
    part21::Ref millimetre_;
    std::map<std::string, part21::Ref> general_;
    std::map<int, part21::Ref> powers_;
};

} // namespace roundlay::step
