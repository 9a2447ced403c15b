#include "exporters/page/page.h"

#include "exporters/files/deflated.h"
#include "exporters/files/markup.h"
#include "exporters/page/parts.h"
#include "exporters/sheets/svg/base64.h"

#include <nettle/sha2.h>

#include <cstdint>
#include <stdexcept>

namespace roundlay {

namespace {

using sheets::base64;

/// As a content security policy names what may run: that and nothing else.
std::string named_by_digest(std::string_view part) {
    sha256_ctx context;
    sha256_init(&context);
    sha256_update(&context, part.size(), reinterpret_cast<const std::uint8_t *>(part.data()));
    std::string digest(SHA256_DIGEST_SIZE, '\0');
    sha256_digest(&context, digest.size(), reinterpret_cast<std::uint8_t *>(digest.data()));
    return "'sha256-" + base64(digest) + "'";
}

std::string policy(const PageParts &parts) {
    return "default-src 'none'; script-src " + named_by_digest(parts.script) + "; style-src " +
           named_by_digest(parts.style) + "; img-src data:; base-uri 'none'; form-action 'none'";
}

void check(const Yard &yard) {
    if (yard.sheets.size() != yard.meshes.size())
        throw std::logic_error("a page has one cut sheet or none for each mesh");
    for (const YardLog &log : yard.logs)
        if (log.model.at() >= yard.meshes.size() || static_cast<std::size_t>(log.part) >= yard.parts.size())
            throw std::logic_error("a log of the page has no mesh, or is of no part");
    for (const YardStep &step : yard.steps)
        for (const Index<YardLog> log : step.logs)
            if (log.at() >= yard.logs.size()) throw std::logic_error("a step of the page raises no log");
}

std::string load(const char *id, const std::string &kind, const std::string &text) {
    return "<script type=\"" + kind + "\" id=\"" + id + "\">" + text + "</script>\n";
}

} // namespace

std::string write_page(const Yard &yard) {
    check(yard);
    const PageParts parts = page_parts();
    std::string page = "<!DOCTYPE html>\n<html lang=\"" + in_markup(yard.language) +
                       "\">\n<head>\n<meta charset=\"utf-8\">\n<meta http-equiv=\"Content-Security-Policy\" "
                       "content=\"" +
                       policy(parts) +
                       "\">\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1, "
                       "viewport-fit=cover\">\n<meta name=\"color-scheme\" content=\"light dark\">\n<meta "
                       "name=\"generator\" content=\"roundlay\">\n<title>" +
                       in_markup(yard.name) + "</title>\n<style>";
    page += parts.style;
    page += "</style>\n</head>\n<body>\n";
    page += load("words", "application/json", packed_words(yard));
    page += load("meshes", "text/plain", base64(deflated(packed_meshes(yard))));
    page += load("sheets", "text/plain", base64(deflated(packed_sheets(yard))));
    page += "<script>";
    page += parts.script;
    return page + "</script>\n</body>\n</html>\n";
}

} // namespace roundlay
