#include "kernel/document/edit_plan.h"

#include "kernel/document/toml_scan.h"
#include "kernel/document/toml_text.h"

#include <algorithm>

namespace roundlay {

namespace {

/// Lines put in at a line's start, or behind the last line where that has no line break yet.
Change insert_lines(const ParsedText &text, std::size_t at, const std::string &lines) {
    const bool unfinished = at > 0 && text.text()[at - 1] != '\n' && at != text.lines().line_start(at);
    const std::string eol = line_break_at(text, at > 0 ? at - 1 : 0);
    return {{at, at}, unfinished ? eol + lines.substr(0, lines.size() - eol.size()) : lines};
}

Planned add_inline(const ParsedText &text, const toml::table &table, const std::string &key,
                   const std::string &value) {
    const auto last = last_statement(text, table);
    const std::size_t begin = text.begin_of(table);
    if (last) return Change{{last->value_end, last->value_end}, ", " + key + " = " + value};
    return Change{{begin, value_end(text.text(), begin)}, "{ " + key + " = " + value + " }"};
}

Planned add_statement(const ParsedText &text, const toml::table &table, const std::string &key,
                      const std::string &value) {
    if (table.is_inline()) return add_inline(text, table, key, value);
    if (const auto last = last_statement(text, table)) {
        const Statement model = last_statement(text, table, true).value_or(*last);
        return insert_lines(text, text.lines().line_end(last->value_end),
                            line_like(text, table, model, key, value) + line_break_at(text, last->value_end));
    }
    const bool root = &table == &text.root();
    const std::size_t at = root ? text.lines().line_start(0) : text.lines().line_end(text.begin_of(table));
    return insert_lines(text, at, key + " = " + value + line_break_at(text, at > 0 ? at - 1 : 0));
}

/// A new table, one blank line below what stands above it.
Change add_table(const ParsedText &text, std::size_t at, const std::string &header, const KeyTexts &keys) {
    const std::string eol = line_break_at(text, at > 0 ? at - 1 : 0);
    std::string lines = at > text.lines().line_start(0) ? eol + header + eol : header + eol;
    for (const auto &[key, value] : keys)
        lines += key + " = " + value + eol;
    return insert_lines(text, at, lines);
}

bool is_blank_line(const ParsedText &text, std::size_t start) {
    const std::size_t behind = behind_blanks(text.text(), start);
    return behind < text.text().size() && (text.text()[behind] == '\n' || text.text()[behind] == '\r');
}

/// The blank lines that part a block from what follows go with it; at the end of the text those above it.
Change remove_block(const ParsedText &text, const toml::table &table) {
    Stretch block = block_of(text, table);
    const std::size_t top = text.lines().line_start(0);
    const auto blank_above = [&] {
        return block.begin > top && is_blank_line(text, text.lines().line_start(block.begin - 1));
    };
    while ((block.begin == top || blank_above()) && block.end < text.text().size() &&
           is_blank_line(text, block.end))
        block.end = text.lines().line_end(block.end);
    while (block.end == text.text().size() && blank_above())
        block.begin = text.lines().line_start(block.begin - 1);
    return {block, ""};
}

/// The lines that hold nothing but an entry and its comma.
std::optional<Change> remove_own_lines(const ParsedText &text, std::size_t begin, std::size_t end) {
    const std::size_t start = text.lines().line_start(begin);
    if (behind_blanks(text.text(), start) != begin) return std::nullopt;
    end = behind_blanks(text.text(), end);
    if (end < text.text().size() && text.text()[end] == ',') end = behind_blanks(text.text(), end + 1);
    if (!is_blank_line(text, end)) return std::nullopt;
    return Change{{start, text.lines().line_end(end)}, ""};
}

Planned remove_from_list(const ParsedText &text, const toml::node &item) {
    const std::size_t begin = text.begin_of(item), end = value_end(text.text(), begin);
    if (const auto lines = remove_own_lines(text, begin, end)) return *lines;
    const std::size_t next = behind_blanks(text.text(), end);
    if (next < text.text().size() && text.text()[next] == ',')
        return Change{{begin, behind_blanks(text.text(), next + 1)}, ""};
    return Change{{begin, end}, ""}; // a comma may stay in front: TOML allows it at the end of a list
}

Planned remove_inline(const ParsedText &text, const Statement &statement) {
    std::size_t front = statement.key;
    while (front > 0 && (text.text()[front - 1] == ' ' || text.text()[front - 1] == '\t'))
        --front;
    const char before = front > 0 ? text.text()[front - 1] : ' ';
    if (before == ',') return Change{{front - 1, statement.value_end}, ""};
    const std::size_t next = behind_blanks(text.text(), statement.value_end);
    const bool more = next < text.text().size() && text.text()[next] == ',';
    return Change{{statement.key, more ? behind_blanks(text.text(), next + 1) : statement.value_end}, ""};
}

/// Behind the last entry of a list that is a value: in a line of its own where that one has one. A remark
/// stays beside its entry.
Change add_in_line(const ParsedText &text, const toml::array &list, const KeyTexts &keys) {
    const std::string_view all = text.text();
    const std::size_t begin = text.begin_of(list.back()), end = value_end(all, begin);
    const std::size_t next = behind_blanks_and_comments(all, end),
                      closing = value_end(all, text.begin_of(list)) - 1;
    const bool comma = next < closing && all[next] == ',';
    const std::size_t stop = comma ? next + 1 : end, line_end = text.lines().line_end(stop);
    const std::string entry = inline_table(keys), parted = comma ? "" : ",";
    if (closing < line_end) return {{stop, stop}, parted + " " + entry};
    const std::size_t start = text.lines().line_start(begin);
    const std::string indent(all.substr(start, behind_blanks(all, start) - start));
    return {{stop, line_end},
            parted + std::string(all.substr(stop, line_end - stop)) + indent + entry + "," +
                line_break_at(text, end)};
}

/// Its own header, not that of a table inside it, which makes one by the way.
bool has_header(const ParsedText &text, const toml::table &table, const std::string &name) {
    if (!is_under_header(text, table)) return false;
    const std::string_view all = text.text();
    const std::size_t begin = text.begin_of(table), open = all.find_first_not_of("[ \t", begin);
    std::string header(all.substr(open, all.find(']', open) - open));
    std::erase_if(header, [](char c) { return c == ' ' || c == '\t' || c == '"' || c == '\''; });
    return header == name;
}

/// `floor.beam` of `floor[2].beam`.
std::string header_name(std::span<const Step> path) {
    std::string name;
    for (const Step &step : path)
        name += (name.empty() ? "" : ".") + step.key;
    return name;
}

} // namespace

Planned plan_with(const ParsedText &text, std::span<const Step> path, const std::string &value) {
    if (const auto target = resolve(text.root(), path)) {
        const auto *table = target->node->as_table();
        if (is_header_list(*target->node) || (table && !table->is_inline()))
            return "this is a table; edit the statements in it";
        const std::size_t begin = text.begin_of(*target->node);
        return Change{{begin, value_end(text.text(), begin)}, value};
    }
    const Step &last = path.back();
    if (last.index) return "there is no such entry";
    const std::string around = header_name(path.first(path.size() - 1));
    if (const auto parent = resolve(text.root(), path.first(path.size() - 1))) {
        const auto *table = parent->node->as_table();
        if (!around.empty() && table && is_under_header(text, *table) && !has_header(text, *table, around))
            return add_table(text, text.text().size(), "[" + around + "]", {{last.key, value}});
        if (table) return add_statement(text, *table, last.key, value);
        return "what should hold it is no table";
    }
    if (path.size() > 2 || path.front().index) return "there is no table or entry to put it in";
    return add_table(text, text.text().size(), "[" + path.front().key + "]", {{last.key, value}});
}

Planned plan_entry(const ParsedText &text, std::span<const Step> list, const KeyTexts &keys) {
    const std::string name = header_name(list);
    if (const auto found = resolve(text.root(), list)) {
        const toml::array *inside = list.size() > 1 ? found->node->as_array() : nullptr;
        if (inside && inside->is_array_of_tables() && !is_header_list(*found->node))
            return add_in_line(text, *inside, keys);
        if (!is_header_list(*found->node))
            return "the list is not written with [[" + name + "]] headers; add to it by hand";
        const toml::table &last = *found->node->as_array()->back().as_table();
        return add_table(text, block_of(text, last).end, "[[" + name + "]]", keys);
    }
    if (list.size() == 1) return add_table(text, text.text().size(), "[[" + name + "]]", keys);
    const auto around = resolve(text.root(), list.first(list.size() - 1));
    const toml::table *table = around ? around->node->as_table() : nullptr;
    const bool once = std::ranges::none_of(list, [](const Step &step) { return step.index.has_value(); });
    if (once && (!table || !has_header(text, *table, header_name(list.first(list.size() - 1)))))
        return add_table(text, text.text().size(), "[[" + name + "]]", keys);
    if (!table) return "there is no table or entry to put it in";
    if (!is_under_header(text, *table)) return "what should hold it has no header; add to it by hand";
    return add_table(text, block_of(text, *table).end, "[[" + name + "]]", keys);
}

Planned plan_without(const ParsedText &text, std::span<const Step> path) {
    const auto target = resolve(text.root(), path);
    if (!target) return "there is no such statement";
    if (is_header_list(*target->node)) return "this is a list of tables; name one entry";
    const toml::table *table = target->node->as_table();
    if (table && is_under_header(text, *table)) return remove_block(text, *table);
    if (path.back().index) return remove_from_list(text, *target->node);
    if (table && !table->is_inline()) return "this table is written in dotted keys; name one of them";
    const std::size_t begin = text.begin_of(*target->node);
    const Statement statement{text.begin_of(*target->key), begin, value_end(text.text(), begin)};
    if (target->parent->is_inline()) return remove_inline(text, statement);
    return Change{{text.lines().line_start(statement.key), text.lines().line_end(statement.value_end)}, ""};
}

} // namespace roundlay
