#include "exporters/sheets/pdf/packed.h"

#define POINTERHOLDER_TRANSITION 4 // std::shared_ptr only, as qpdf 12 has it
#include <qpdf/Buffer.hh>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFWriter.hh>

#include <memory>
#include <stdexcept>

namespace roundlay::sheets::pdf {
namespace {

constexpr double points_per_mm = 72 / 25.4;

QPDFObjectHandle name(const char *text) {
    return QPDFObjectHandle::newName(text);
}
QPDFObjectHandle points(double mm) {
    return QPDFObjectHandle::newReal(mm * points_per_mm, 3);
}

QPDFObjectHandle annotation(const PageLink &link, const QPDFObjectHandle &target_page) {
    auto target = QPDFObjectHandle::newArray({target_page, name("/Fit")});
    auto rect = QPDFObjectHandle::newArray();
    for (const double mm : link.box_mm)
        rect.appendItem(points(mm));
    auto zero = QPDFObjectHandle::newInteger(0);
    auto made = QPDFObjectHandle::newDictionary();
    made.replaceKey("/Type", name("/Annot"));
    made.replaceKey("/Subtype", name("/Link"));
    made.replaceKey("/Rect", rect);
    made.replaceKey("/Border", QPDFObjectHandle::newArray({zero, zero, zero}));
    made.replaceKey("/Dest", target);
    return made;
}

// cairo 1.16 has link tags too, but writes a broken cross-reference table for a link without content.
void add_links(QPDF &document, const std::vector<PageLink> &links) {
    const std::vector<QPDFObjectHandle> pages = document.getAllPages();
    for (const PageLink &link : links) {
        QPDFObjectHandle page = pages.at(link.page);
        QPDFObjectHandle made = document.makeIndirectObject(annotation(link, pages.at(link.target)));
        if (!page.hasKey("/Annots")) page.replaceKey("/Annots", QPDFObjectHandle::newArray());
        page.getKey("/Annots").appendItem(made);
    }
}

void add_preferences(QPDF &document, const std::string &language) {
    QPDFObjectHandle root = document.getRoot();
    root.replaceKey("/Lang", QPDFObjectHandle::newUnicodeString(language));
    auto preferences = QPDFObjectHandle::newDictionary();
    preferences.replaceKey("/DisplayDocTitle", QPDFObjectHandle::newBool(true));
    // 1:1 templates come out wrong when the print dialogue starts at "fit to page"
    preferences.replaceKey("/PrintScaling", name("/None"));
    root.replaceKey("/ViewerPreferences", preferences);
}

std::string written(QPDF &document) {
    QPDFWriter writer(document);
    writer.setOutputMemory();
    writer.setObjectStreamMode(qpdf_o_generate);
    writer.setDeterministicID(true);
    writer.write();
    const std::shared_ptr<Buffer> buffer = writer.getBufferSharedPointer();
    return {reinterpret_cast<const char *>(buffer->getBuffer()), buffer->getSize()};
}

} // namespace

std::string packed(const std::string &pdf, const std::vector<PageLink> &links, const std::string &language) {
    try {
        QPDF document;
        document.setSuppressWarnings(true);
        document.processMemoryFile("drawing", pdf.data(), pdf.size());
        add_links(document, links);
        add_preferences(document, language);
        std::string bytes = written(document);
        for (const QPDFExc &warning : document.getWarnings())
            throw std::runtime_error(warning.what());
        return bytes;
    } catch (const std::exception &cause) {
        throw std::runtime_error(std::string("PDF: ") + cause.what());
    }
}

} // namespace roundlay::sheets::pdf
