#include "exporters/step/link_writer.h"

#include <vector>

namespace roundlay::step {

using part21::Named;
using part21::Ref;
using part21::Unset;

void LinkWriter::add(Ref definition, const std::string &file) {
    const Shared &all = shared();
    const Ref document_file = data_.add("DOCUMENT_FILE", file, "", Unset{}, all.file_type, "", Unset{});
    const Ref source = data_.add("EXTERNAL_SOURCE", Named{"IDENTIFIER", file});
    data_.add("APPLIED_EXTERNAL_IDENTIFICATION_ASSIGNMENT", file, all.role, source,
              std::vector{document_file});
    const Ref reference =
        data_.add("APPLIED_DOCUMENT_REFERENCE", document(file, document_file), "", std::vector{definition});
    data_.add("ROLE_ASSOCIATION", all.object_role, reference);
    const Ref property = data_.add("PROPERTY_DEFINITION", "document property", "", document_file);
    data_.add("PROPERTY_DEFINITION_REPRESENTATION", property, all.format);
}

/// The document as a product of its own, of which the file is the digital form.
Ref LinkWriter::document(const std::string &file, Ref document_file) {
    const Shared &all = shared_;
    const Ref product = data_.add("PRODUCT", file, file, "", std::vector{all.product_context});
    const Ref version = data_.add("PRODUCT_DEFINITION_FORMATION", "1", "", product);
    data_.add("PRODUCT_DEFINITION_WITH_ASSOCIATED_DOCUMENTS", "1", "", version, all.definition_context,
              std::vector{document_file});
    const Ref document = data_.add("DOCUMENT", "", "", Unset{}, all.document_type);
    data_.add("DOCUMENT_PRODUCT_EQUIVALENCE", "equivalence", Unset{}, document, version);
    return document;
}

const LinkWriter::Shared &LinkWriter::shared() {
    if (begun_) return shared_;
    begun_ = true;
    const Ref application = data_.add("APPLICATION_CONTEXT", "");
    shared_.product_context = data_.add("PRODUCT_CONTEXT", "", application, "");
    shared_.definition_context =
        data_.add("PRODUCT_DEFINITION_CONTEXT", "digital document definition", application, "");
    shared_.document_type = data_.add("DOCUMENT_TYPE", "configuration controlled document version");
    shared_.file_type = data_.add("DOCUMENT_TYPE", "");
    shared_.role = data_.add("IDENTIFICATION_ROLE", "external document id and location", Unset{});
    shared_.object_role = data_.add("OBJECT_ROLE", "mandatory", Unset{});
    const Ref item = data_.add("DESCRIPTIVE_REPRESENTATION_ITEM", "data format",
                               schema_ == StepSchema::ap242 ? "STEP AP242" : "STEP AP214");
    const Ref context = data_.add("REPRESENTATION_CONTEXT", "", "document parameters");
    shared_.format = data_.add("REPRESENTATION", "document format", std::vector{item}, context);
    return shared_;
}

} // namespace roundlay::step
