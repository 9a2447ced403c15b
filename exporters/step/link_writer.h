// Products whose shape stands in another file, after the recommended practices of the implementor forum for
// external references (release 2.1, by what OpenCASCADE 7.6 writes and reads).
#pragma once

#include "exporters/part21/part21_text.h"
#include "exporters/step/options.h"

#include <string>

namespace roundlay::step {

class LinkWriter {
  public:
    LinkWriter(part21::DataWriter &data, StepSchema schema) : data_(data), schema_(schema) {}

    /// Says that the product's shape stands in that file: its path from this one, with slashes.
    void add(part21::Ref definition, const std::string &file);

  private:
    /// What all links of a file share, written with the first.
    struct Shared {
        part21::Ref product_context, definition_context, document_type, file_type, role, object_role, format;
    };
    const Shared &shared();
    part21::Ref document(const std::string &file, part21::Ref document_file);

    part21::DataWriter &data_;
    StepSchema schema_;
    bool begun_ = false;
    Shared shared_;
};

} // namespace roundlay::step
