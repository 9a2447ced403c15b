// The entries of a list as texts of their own, so that many of them can be edited without the whole document
// being read again for each statement.
#pragma once

#include "kernel/document/edit.h"
#include "kernel/document/edit_layout.h"

#include <optional>
#include <string>
#include <vector>

namespace roundlay {

class EntryTexts {
  public:
    /// Of `[[list]]`, or of a list that is not there yet. Nothing where the text is no TOML or the list is
    /// written as a value.
    static std::optional<EntryTexts> of(const Document &document, const std::string &list);

    std::size_t size() const { return entries_.size(); } ///< those that stand in the text
    /// The lines of one entry and nothing else: in it the entry is `list[0]`.
    Document entry(std::size_t index) const;
    void replace(std::size_t index, const Document &entry);
    /// Behind all others. `entry` has `list[0]` and nothing else.
    void add(const Document &entry);

    /// The document with all of them. Nothing where it would not say what they say, or say anything else
    /// otherwise than before.
    std::optional<Document> together() const;

  private:
    struct Text {
        Stretch stretch; ///< in the document
        std::string now;
        bool changed = false;
    };
    EntryTexts(Document document, std::string list)
        : document_(std::move(document)), list_(std::move(list)) {}
    std::string joined() const;
    std::string added_lines() const;

    Document document_;
    std::string list_;
    std::string line_break_ = "\n"; ///< where new entries are put
    std::size_t end_ = 0;           ///< of the last entry, or of the document where there is none
    std::vector<Text> entries_;
    std::vector<std::string> added_;
};

} // namespace roundlay
