#include "kernel/xlsx/xml_reader.h"

#include <expat.h>

#include <memory>
#include <type_traits>

namespace roundlay {

namespace {

std::string_view without_prefix(std::string_view name) {
    const std::size_t colon = name.rfind(':');
    return colon == std::string_view::npos ? name : name.substr(colon + 1);
}

struct Free {
    void operator()(XML_Parser parser) const { XML_ParserFree(parser); }
};
using Parser = std::unique_ptr<std::remove_pointer_t<XML_Parser>, Free>;

struct Reading {
    const XmlHandlers &handlers;
    XML_Parser parser;
};

Reading &reading(void *data) {
    return *static_cast<Reading *>(data);
}

void XMLCALL opened(void *data, const XML_Char *name, const XML_Char **attributes) {
    reading(data).handlers.open(without_prefix(name), XmlAttributes(attributes));
}
void XMLCALL closed(void *data, const XML_Char *name) {
    reading(data).handlers.close(without_prefix(name));
}
void XMLCALL letters(void *data, const XML_Char *text, int length) {
    reading(data).handlers.text({text, static_cast<std::size_t>(length)});
}
void XMLCALL declared(void *data, const XML_Char *, const XML_Char *, const XML_Char *, int) {
    XML_StopParser(reading(data).parser, XML_FALSE);
}

} // namespace

std::string XmlAttributes::operator[](std::string_view name) const {
    for (const char **pair = pairs_; *pair != nullptr; pair += 2)
        if (without_prefix(pair[0]) == name) return pair[1];
    return {};
}

bool read_xml(std::string_view xml, const XmlHandlers &handlers) {
    const Parser parser(XML_ParserCreate(nullptr));
    if (!parser) return false;
    Reading state{handlers, parser.get()};
    XML_SetUserData(parser.get(), &state);
    XML_SetElementHandler(parser.get(), opened, closed);
    XML_SetCharacterDataHandler(parser.get(), letters);
    XML_SetStartDoctypeDeclHandler(parser.get(), declared);
    return XML_Parse(parser.get(), xml.data(), static_cast<int>(xml.size()), XML_TRUE) == XML_STATUS_OK;
}

} // namespace roundlay
