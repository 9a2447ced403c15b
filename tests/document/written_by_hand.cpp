#include "tests/document/written_by_hand.h"

#include "kernel/document/key.h"

#include <rapidcheck.h>

namespace roundlay::test {

namespace {

using Texts = std::vector<std::string>;

std::string one_of(const Texts &texts) {
    return *rc::gen::elementOf(texts);
}
bool sometimes(int one_in) {
    return *rc::gen::inRange(0, one_in) == one_in - 1;
}

const Texts values{
    "\"8 in\"", "'7 ft 6\"'", "\"7' 6\\\" # no comment\"", "\"\"", "0", "5", "-1.5", "1_000", "0x1F", "inf",
    "true", "1979-05-27", "1979-05-27 07:32:00", "07:32:00", "[]", "[\"A\", 'B']", "[[1], [2, \"]\"]]", "{}",
    "{ a = 1, b.c = \"}\" }", "\"\"\"one line\"\"\"", "''''quoted''''", "\"\u00bd\u2033 \\u00e9\"",
    // over several lines; \n stands for the document's own line break
    "[\n  1, # one ]\n\n  2\n]", "\"\"\"\nfirst\nsecond \\\n  third\"\"\"", "'''\n# no comment\n'''"};
const Texts comments{"", "\n", "# remark\n", "  # [no] table = 1\n", "\n# one\n\n# two\n", "#\n"};
const Texts remarks{"", " # as measured", "# tight", "\t# \"quoted\" = 1", "   "};

HandTable any_table(std::string header, std::string path, const Texts &keys) {
    HandTable table;
    table.above = one_of(comments);
    table.header = std::move(header);
    table.path = std::move(path);
    table.header_remark = one_of(remarks);
    const std::string indent = one_of({"", "", "  ", "\t"}), gap = one_of({"", " ", " ", "  "});
    for (const std::string &key : keys) {
        if (sometimes(3)) continue;
        table.lines.push_back({indent, key, sometimes(3) ? one_of({"", " ", "      "}) : gap,
                               sometimes(4) ? one_of({"", " ", "  "}) : gap, one_of(values),
                               one_of(remarks)});
        table.between.push_back(sometimes(3) ? one_of(comments) : "");
    }
    return table;
}

/// The keys that are described, and what people write besides.
Texts keys_of(const format::Table &table) {
    Texts keys;
    for (const format::Item &item : table.items)
        if (const auto *key = std::get_if<format::Key>(&item)) keys.emplace_back(key->name);
    keys.insert(keys.end(), {"\"odd key\"", "x.y", "x.z"});
    return keys;
}

void add_tables(HandDocument &document, const format::Section &section) {
    const std::string &name = section.table->name;
    if (!section.is_list())
        document.tables.push_back(any_table("[" + name + "]", name, keys_of(*section.table)));
    for (int i = 0, n = section.is_list() ? *rc::gen::inRange(0, 3) : 0; i < n; ++i)
        document.tables.push_back(
            any_table(one_of({"[[" + name + "]]", "[[ " + name + " ]]", "  [[" + name + "]]"}),
                      name + "[" + std::to_string(i) + "]", keys_of(*section.table)));
}

std::string broken(const std::string &text, const std::string &line_break) {
    std::string made;
    for (const char c : text)
        made += c == '\n' ? line_break : std::string(1, c);
    return made;
}

} // namespace

std::string HandDocument::text() const {
    std::string made;
    for (const HandTable &table : tables) {
        made += table.above;
        if (!table.header.empty()) made += table.header + table.header_remark + "\n";
        for (std::size_t i = 0; i < table.lines.size(); ++i) {
            const HandLine &line = table.lines[i];
            made += line.indent + line.key + line.before_equals + "=" + line.behind_equals + line.value +
                    line.remark + "\n";
            made += table.between[i];
        }
    }
    made += below;
    if (!last_break && made.ends_with('\n')) made.pop_back();
    return (order_mark ? "\xef\xbb\xbf" : "") + broken(made, line_break);
}

HandDocument any_hand_document() {
    HandDocument document;
    document.order_mark = sometimes(4);
    document.line_break = sometimes(3) ? "\r\n" : "\n";
    document.last_break = !sometimes(4);
    document.below = sometimes(2) ? one_of(comments) : "";
    document.tables.push_back(any_table("", "", {"roundlay", "unknown"}));
    for (const format::Section &section : format::sections())
        add_tables(document, section);
    return document;
}

std::string path_of(const HandTable &table, const HandLine &line) {
    return table.path.empty() ? line.key : table.path + "." + line.key;
}

} // namespace roundlay::test
