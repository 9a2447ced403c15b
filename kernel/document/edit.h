// A document that is edited: the text stays the person's own. An edit changes the text of what was edited and
// nothing else; comments, order, blanks, the spelling of numbers and unknown keys stay as they are.
#pragma once

#include "kernel/document/document.h"
#include "kernel/document/toml_text.h"

#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace roundlay {

/// A value: every edit gives a new document, or one problem and no change. Paths are those of SourceMap.
class Document {
  public:
    using Edited = std::variant<Document, Problem>;
    using Keys = std::vector<std::pair<std::string, std::string>>; ///< keys and the text of their values

    Document() = default;
    Document(std::string text, std::string file) : text_(std::move(text)), file_(std::move(file)) {}

    const std::string &text() const { return text_; }
    const std::string &file() const { return file_; }
    ReadResult read() const { return read_document(text_, file_); }

    /// States a value: in place of the one that stands there, else on a new line at the end of its table,
    /// else in a new table at the end of the document. `value` is TOML as it will stand in the text: see
    /// toml_text().
    Edited with(std::string_view path, const std::string &value) const;

    /// Adds an entry `[[list]]` behind the last one of its kind, else at the end of the document; of a list
    /// inside an entry (`floor[2].beam`) at the end of that entry.
    Edited with_entry(const std::string &list, const Keys &keys) const;

    /// Takes a statement, a table or an entry (`opening[2]`) out of the text, with the lines that are its
    /// own. Comments above and below it stay.
    Edited without(std::string_view path) const;

    bool operator==(const Document &) const = default;

  private:
    std::string text_;
    std::string file_;
};

/// A document from disk, as it stands: it may still have problems to read.
std::variant<Document, Problem> open_document(const std::filesystem::path &path);

} // namespace roundlay
