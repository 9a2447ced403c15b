#include "kernel/document/entry_texts.h"

#include "kernel/document/edit_path.h"

#include <utility>

namespace roundlay {

namespace {

std::string with_line_breaks(const std::string &text, const std::string &line_break) {
    std::string out;
    for (const char c : text)
        c == '\n' ? out += line_break : out += c;
    return out;
}

/// What the one entry of a text says.
bool says(const std::string &text, const std::string &list, const toml::node &node) {
    const auto parsed = parse_text(text, "");
    const auto *alone = std::get_if<ParsedText>(&parsed);
    const toml::array *entries = alone ? alone->root()[list].as_array() : nullptr;
    return entries && entries->size() == 1 && same(entries->front(), node);
}

} // namespace

std::optional<EntryTexts> EntryTexts::of(const Document &document, const std::string &list) {
    const auto parsed = parse_text(document.text(), document.file());
    const auto *text = std::get_if<ParsedText>(&parsed);
    if (!text) return std::nullopt;
    EntryTexts out(document, list);
    const toml::node *node = text->root().get(list);
    if (node && !is_header_list(*node)) return std::nullopt;
    out.end_ = document.text().size();
    if (node)
        for (const toml::node &entry : *node->as_array()) {
            const Stretch block = block_of(*text, *entry.as_table());
            out.entries_.push_back(
                {block, document.text().substr(block.begin, block.end - block.begin), false});
            out.end_ = block.end;
        }
    out.line_break_ = line_break_at(*text, out.end_ > 0 ? out.end_ - 1 : 0);
    return out;
}

Document EntryTexts::entry(std::size_t index) const {
    return {entries_[index].now, document_.file()};
}

void EntryTexts::replace(std::size_t index, const Document &entry) {
    entries_[index].changed |= entries_[index].now != entry.text();
    entries_[index].now = entry.text();
}

void EntryTexts::add(const Document &entry) {
    added_.push_back(with_line_breaks(entry.text(), line_break_));
}

/// Each a blank line below what stands above it.
std::string EntryTexts::added_lines() const {
    std::string lines;
    for (const std::string &entry : added_)
        lines += (end_ == 0 && lines.empty() ? "" : line_break_) + entry;
    return lines;
}

std::string EntryTexts::joined() const {
    const std::string &before = document_.text();
    std::string out;
    std::size_t at = 0;
    for (const Text &entry : entries_) {
        out += before.substr(at, entry.stretch.begin - at) + entry.now;
        at = entry.stretch.end;
    }
    out += before.substr(at, end_ - at);
    const bool unfinished = !added_.empty() && !out.empty() && out.back() != '\n';
    std::string lines = (unfinished ? line_break_ : "") + added_lines();
    if (unfinished) lines.resize(lines.size() - line_break_.size());
    return out + lines + before.substr(end_);
}

std::optional<Document> EntryTexts::together() const {
    Document made(joined(), document_.file());
    const auto before = parse_text(document_.text(), ""), after = parse_text(made.text(), "");
    const auto *a = std::get_if<ParsedText>(&before), *b = std::get_if<ParsedText>(&after);
    if (!a || !b) return std::nullopt;
    if (made.text() == document_.text()) return made;
    if (!differ_only_at(a->root(), b->root(), std::vector<Step>{{list_, {}}})) return std::nullopt;
    const toml::array *entries = b->root()[list_].as_array();
    if (!entries || entries->size() != entries_.size() + added_.size()) return std::nullopt;
    for (std::size_t i = 0; i < entries->size(); ++i) {
        const bool stood = i < entries_.size();
        if (stood && !entries_[i].changed) {
            if (!same((*entries)[i], (*a->root()[list_].as_array())[i])) return std::nullopt;
        } else if (!says(stood ? entries_[i].now : added_[i - entries_.size()], list_, (*entries)[i]))
            return std::nullopt;
    }
    return made;
}

} // namespace roundlay
