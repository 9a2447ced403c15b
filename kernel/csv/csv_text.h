// The bytes of a CSV file as one kind of text, whoever wrote them.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace roundlay {

/// UTF-8 with single line feeds and no byte-order mark: from UTF-8, from UTF-16 with its mark, and from the
/// single bytes (Windows-1252) that older spreadsheets write where the text is no UTF-8. Nothing where it is
/// no text.
std::optional<std::string> csv_text(std::string_view bytes);

} // namespace roundlay
