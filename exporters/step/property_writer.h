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
    /// `length`: the unit of all measures.
    PropertyWriter(part21::DataWriter &data, part21::Ref length) : data_(data), length_(length) {}

    /// `owner` is a PRODUCT_DEFINITION or a NEXT_ASSEMBLY_USAGE_OCCURRENCE.
    void add_attributes(const Attributes &attributes, part21::Ref owner, part21::Ref context);

    /// `shape` is the PRODUCT_DEFINITION_SHAPE of a part, or of an assembly: its measures are then those of
    /// all parts in it.
    void add_validation(const Measures &measures, part21::Ref shape, part21::Ref context);

    /// How many products an assembly is put together of, each use counted.
    void add_children(std::size_t count, part21::Ref shape, part21::Ref context);

  private:
    part21::Ref general_property(const std::string &name);
    part21::Ref unit_to_the(int power);
    void add_measured(const char *name, const char *item, const char *type, double value, int power,
                      part21::Ref shape, part21::Ref context);
    void represent(const char *name, part21::Ref item, part21::Ref shape, part21::Ref context,
                   const char *kind = "geometric validation property");

    part21::DataWriter &data_;
    part21::Ref length_;
    std::map<std::string, part21::Ref> general_;
    std::map<int, part21::Ref> powers_;
};

} // namespace roundlay::step
