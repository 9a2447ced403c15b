// XML as a stream of what opens, stands inside and closes.
#pragma once

#include <functional>
#include <string>
#include <string_view>

namespace roundlay {

/// Attributes of an element. Prefixes of names are left out: r:id is id.
class XmlAttributes {
  public:
    explicit XmlAttributes(const char **pairs) : pairs_(pairs) {}
    std::string operator[](std::string_view name) const; ///< empty where there is none

  private:
    const char **pairs_;
};

struct XmlHandlers {
    std::function<void(std::string_view name, const XmlAttributes &attributes)> open;
    std::function<void(std::string_view name)> close;
    std::function<void(std::string_view text)> text = [](std::string_view) {};
};

/// False where it is not well-formed, or declares a document type: no part of an XLSX file does, and such a
/// declaration can make much of little.
bool read_xml(std::string_view xml, const XmlHandlers &handlers);

} // namespace roundlay
