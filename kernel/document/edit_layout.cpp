#include "kernel/document/edit_layout.h"

#include "kernel/document/toml_scan.h"

#include <algorithm>

namespace roundlay {

namespace {

Statement statement_at(const ParsedText &text, const toml::key &key, const toml::node &value) {
    const std::size_t begin = text.begin_of(value);
    return {text.begin_of(key), begin, value_end(text.text(), begin)};
}

bool has_own_header(const ParsedText &text, const toml::node &node) {
    return is_header_list(node) || (node.is_table() && is_under_header(text, *node.as_table()));
}

/// A table that exists only as the front part of dotted keys.
bool is_dotted(const ParsedText &text, const toml::node &node) {
    return node.is_table() && !node.as_table()->is_inline() && !is_under_header(text, *node.as_table());
}

std::size_t header_end(const ParsedText &text, const toml::table &table) {
    return text.lines().line_end(text.begin_of(table));
}

/// Behind the last line of anything in the table, also under headers inside it.
std::size_t content_end(const ParsedText &text, const toml::table &table) {
    std::size_t end = is_under_header(text, table) ? header_end(text, table) : 0;
    if (const auto last = last_statement(text, table))
        end = std::max(end, text.lines().line_end(last->value_end));
    for (const auto &[key, value] : table) {
        if (!has_own_header(text, value)) continue;
        if (const auto *inner = value.as_table()) end = std::max(end, content_end(text, *inner));
        if (const auto *list = value.as_array())
            for (const toml::node &item : *list)
                end = std::max(end, content_end(text, *item.as_table()));
    }
    return end;
}

} // namespace

bool is_under_header(const ParsedText &text, const toml::table &table) {
    const std::size_t begin = text.begin_of(table);
    return !table.is_inline() && begin < text.text().size() && text.text()[begin] == '[';
}

bool is_header_list(const toml::node &node) {
    const toml::array *list = node.as_array();
    return list && list->is_array_of_tables() && !list->front().as_table()->is_inline();
}

std::optional<Statement> last_statement(const ParsedText &text, const toml::table &table, bool own_keys) {
    std::optional<Statement> last;
    for (const auto &[key, value] : table) {
        if (has_own_header(text, value)) continue;
        std::optional<Statement> found;
        if (!is_dotted(text, value))
            found = statement_at(text, key, value);
        else if (!own_keys)
            found = last_statement(text, *value.as_table());
        if (found && (!last || found->value_end > last->value_end)) last = found;
    }
    return last;
}

Stretch block_of(const ParsedText &text, const toml::table &table) {
    return {text.lines().line_start(text.begin_of(table)), content_end(text, table)};
}

std::string line_break_at(const ParsedText &text, std::size_t offset) {
    const std::string_view all = text.text();
    std::size_t end = text.lines().line_end(offset);
    if (end == 0 || end > all.size() || all[end - 1] != '\n') end = text.lines().line_end(0);
    return end >= 2 && all[end - 1] == '\n' && all[end - 2] == '\r' ? "\r\n" : "\n";
}

std::string line_like(const ParsedText &text, const toml::table &table, const Statement &model,
                      const std::string &key, const std::string &value) {
    const std::string_view all = text.text();
    const std::size_t start = text.lines().line_start(model.key), equals = all.rfind('=', model.value);
    // In a dotted table every line repeats its name; elsewhere only the indent is taken over.
    const bool dotted = &table != &text.root() && !is_under_header(text, table);
    const std::size_t key_at = dotted ? model.key : behind_blanks(all, start);
    const std::size_t column = equals - key_at; // of the equals sign, counted from the key
    const bool blank_before = all[equals - 1] == ' ' || all[equals - 1] == '\t';
    const std::size_t blanks = !blank_before ? 0 : column > key.size() ? column - key.size() : 1;
    return std::string(all.substr(start, key_at - start)) + key + std::string(blanks, ' ') + "=" +
           std::string(all.substr(equals + 1, model.value - equals - 1)) + value;
}

} // namespace roundlay
