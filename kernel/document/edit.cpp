#include "kernel/document/edit.h"

#include "kernel/document/edit_plan.h"
#include "kernel/document/toml_scan.h"

namespace roundlay {

namespace {

std::string apply(std::string_view text, const Change &change) {
    return std::string(text.substr(0, change.stretch.begin)) + change.text +
           std::string(text.substr(change.stretch.end));
}

Problem refusal(const std::string &file, std::string_view path, const std::string &why) {
    return {Weight::error, file, {}, "\"" + std::string(path) + "\" cannot be edited: " + why, ""};
}

/// True where the text is one TOML value and nothing beside it.
bool is_one_value(const std::string &value) {
    const std::string line = "v = " + value;
    constexpr std::size_t begin = 4;
    const auto parsed = parse_text(line, "");
    const auto *text = std::get_if<ParsedText>(&parsed);
    return text && text->root().size() == 1 && !value.empty() && value_end(line, begin) == line.size() &&
           text->begin_of(*text->root().get("v")) == begin;
}

/// The edited text, once it is certain that it says the same as before in all but the edited place.
Document::Edited finish(const Document &document, const ParsedText &text, std::string_view path,
                        std::span<const Step> steps, const Planned &planned) {
    if (const auto *why = std::get_if<std::string>(&planned)) return refusal(document.file(), path, *why);
    std::string edited = apply(text.text(), std::get<Change>(planned));
    const auto after = parse_text(edited, document.file());
    const auto *parsed = std::get_if<ParsedText>(&after);
    if (!parsed || !differ_only_at(text.root(), parsed->root(), steps))
        return refusal(document.file(), path, "it is written in a way that only a person can edit");
    return Document(std::move(edited), document.file());
}

} // namespace

Document::Edited Document::with(std::string_view path, const std::string &value) const {
    const auto parsed = parse_text(text_, file_);
    if (const auto *problem = std::get_if<Problem>(&parsed)) return *problem;
    const auto &text = std::get<ParsedText>(parsed);
    const auto steps = parse_path(path);
    if (!steps) return refusal(file_, path, "this is no path");
    if (!is_one_value(value)) return refusal(file_, path, "the new text is not one TOML value");
    return finish(*this, text, path, *steps, plan_with(text, *steps, value));
}

Document::Edited Document::with_entry(const std::string &list, const Keys &keys) const {
    const auto parsed = parse_text(text_, file_);
    if (const auto *problem = std::get_if<Problem>(&parsed)) return *problem;
    const auto &text = std::get<ParsedText>(parsed);
    auto steps = parse_path(list);
    if (!steps || steps->back().index) return refusal(file_, list, "this is no list of tables");
    for (const auto &[key, value] : keys) {
        const auto step = parse_path(key);
        if (!step || step->size() != 1 || step->front().index || !is_one_value(value))
            return refusal(file_, list + "." + key, "the new text is not one TOML value");
    }
    const auto found = resolve(text.root(), *steps);
    const Planned planned = plan_entry(text, *steps, keys);
    steps->back().index = found && found->node->is_array() ? found->node->as_array()->size() : 0;
    return finish(*this, text, list, *steps, planned);
}

Document::Edited Document::without(std::string_view path) const {
    const auto parsed = parse_text(text_, file_);
    if (const auto *problem = std::get_if<Problem>(&parsed)) return *problem;
    const auto &text = std::get<ParsedText>(parsed);
    const auto steps = parse_path(path);
    if (!steps) return refusal(file_, path, "this is no path");
    return finish(*this, text, path, *steps, plan_without(text, *steps));
}

std::variant<Document, Problem> open_document(const std::filesystem::path &path) {
    auto text = read_document_text(path);
    if (auto *problem = std::get_if<Problem>(&text)) return std::move(*problem);
    return Document(std::get<std::string>(std::move(text)), path.string());
}

} // namespace roundlay
