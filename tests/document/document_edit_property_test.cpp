#include "kernel/document/edit.h"
#include "tests/document/written_by_hand.h"
#include "tests/support/catch.h"

#include <rapidcheck.h>

#include <algorithm>
#include <optional>
#include <string>

using namespace roundlay;
using namespace roundlay::test;

namespace {

const std::vector<std::string> new_values{"\"9 in\"",  "'x'",  "7",          "[1, 2]",
                                          "{ a = 1 }", "true", "\"\u2033\"", "\"\""};

std::string edited_text(const Document::Edited &edited) {
    if (const auto *problem = std::get_if<Problem>(&edited)) RC_FAIL("refused: " + problem->message);
    return std::get<Document>(edited).text();
}

/// Any statement whose key a path can name; the table and the line as numbers.
std::optional<std::pair<std::size_t, std::size_t>> any_line(const HandDocument &document) {
    std::vector<std::pair<std::size_t, std::size_t>> all;
    for (std::size_t t = 0; t < document.tables.size(); ++t)
        for (std::size_t l = 0; l < document.tables[t].lines.size(); ++l)
            if (document.tables[t].lines[l].key.front() != '"') all.emplace_back(t, l);
    if (all.empty()) return std::nullopt;
    return *rc::gen::elementOf(all);
}

/// What was put in, if the new text is the old one with one stretch of whole lines more.
std::optional<std::string> inserted(const std::string &before, const std::string &after) {
    if (after.size() <= before.size()) return std::nullopt;
    const auto front = static_cast<std::size_t>(
        std::mismatch(before.begin(), before.end(), after.begin()).first - before.begin());
    const std::size_t more = after.size() - before.size();
    // The same stretch can often be told apart in more than one way; all of them start at or before the first
    // difference.
    for (std::size_t at = front + 1; at-- > 0;)
        if (before.substr(0, at) + after.substr(at, more) + before.substr(at) == after &&
            (at == 0 || before[at - 1] == '\n' || at == before.size() ||
             before.substr(0, at) == "\xef\xbb\xbf"))
            return after.substr(at, more);
    return std::nullopt;
}

bool breaks_agree(const std::string &text, const std::string &line_break) {
    for (std::size_t at = 0; (at = text.find('\n', at)) != std::string::npos; ++at)
        if ((at > 0 && text[at - 1] == '\r') != (line_break == "\r\n")) return false;
    return true;
}

} // namespace

TEST_CASE("A new value changes the text of the old one and nothing else") {
    CHECK(rc::check([] {
        HandDocument document = any_hand_document();
        const auto picked = any_line(document);
        RC_PRE(picked.has_value());
        HandTable &table = document.tables[picked->first];
        HandLine &line = table.lines[picked->second];
        const std::string before = document.text(), path = path_of(table, line), old_value = line.value;
        const std::string value = *rc::gen::elementOf(new_values);
        const std::string after = edited_text(Document(before, "x").with(path, value));
        line.value = value;
        RC_ASSERT(after == document.text());
        // And back again, where the old value was on one line.
        if (old_value.find('\n') == std::string::npos)
            RC_ASSERT(edited_text(Document(after, "x").with(path, old_value)) == before);
    }));
}

TEST_CASE("A statement taken out takes its own lines and nothing else") {
    CHECK(rc::check([] {
        HandDocument document = any_hand_document();
        document.last_break = true;
        const auto picked = any_line(document);
        RC_PRE(picked.has_value());
        HandTable &table = document.tables[picked->first];
        const std::string before = document.text(), path = path_of(table, table.lines[picked->second]);
        const std::string after = edited_text(Document(before, "x").without(path));
        table.between[picked->second].insert(0, ""); // the comment behind it stays
        const std::string comment = table.between[picked->second];
        table.lines.erase(table.lines.begin() + static_cast<std::ptrdiff_t>(picked->second));
        table.between.erase(table.between.begin() + static_cast<std::ptrdiff_t>(picked->second));
        if (picked->second > 0)
            table.between[picked->second - 1] += comment;
        else if (!table.header.empty())
            table.header_remark += comment.empty() ? "" : "\n" + comment.substr(0, comment.size() - 1);
        else
            table.above += comment;
        RC_ASSERT(after == document.text());
    }));
}

TEST_CASE("A new statement is one line more, in its table, with the line breaks of the document") {
    CHECK(rc::check([] {
        const HandDocument document = any_hand_document();
        const HandTable &table = *rc::gen::elementOf(document.tables);
        const std::string before = document.text(), value = *rc::gen::elementOf(new_values);
        const std::string path = table.path.empty() ? "added" : table.path + ".added";
        const Document::Edited edited = Document(before, "x").with(path, value);
        const std::string after = edited_text(edited);
        const auto more = inserted(before, after);
        RC_ASSERT(more.has_value());
        RC_ASSERT(more->find("added") != std::string::npos);
        RC_ASSERT(more->find(value) != std::string::npos);
        RC_ASSERT(std::count(more->begin(), more->end(), '\n') <= 1);
        RC_ASSERT(breaks_agree(after, document.line_break) || before.find('\n') == std::string::npos);
        RC_ASSERT(edited_text(Document(after, "x").with(path, "1")) != after); // it is found where it was put
    }));
}

TEST_CASE("A new entry is whole lines more, and taking it out again gives the text of before") {
    CHECK(rc::check([] {
        const HandDocument document = any_hand_document();
        const std::string before = document.text();
        const auto entries =
            std::count_if(document.tables.begin(), document.tables.end(),
                          [](const HandTable &t) { return t.path.rfind("opening", 0) == 0; });
        const std::string after =
            edited_text(Document(before, "x").with_entry("opening", {{"name", "\"new\""}, {"sill", "0"}}));
        const auto more = inserted(before, after);
        RC_ASSERT(more.has_value());
        RC_ASSERT(more->find("[[opening]]") != std::string::npos);
        RC_ASSERT(breaks_agree(after, document.line_break) || before.find('\n') == std::string::npos);
        const std::string back =
            edited_text(Document(after, "x").without("opening[" + std::to_string(entries) + "]"));
        // Blank lines around the entry may have gone with it; every other line is there again.
        const auto without_blank = [](std::string text) {
            std::erase(text, '\r');
            std::string lines;
            for (const char c : text)
                if (c != '\n' || (!lines.empty() && lines.back() != '\n')) lines += c;
            while (lines.ends_with('\n'))
                lines.pop_back();
            return lines;
        };
        RC_ASSERT(without_blank(back) == without_blank(before));
    }));
}

TEST_CASE("A table or entry taken out leaves every comment above and below it") {
    CHECK(rc::check([] {
        HandDocument document = any_hand_document();
        const std::size_t picked = *rc::gen::inRange<std::size_t>(1, document.tables.size());
        const HandTable table = document.tables[picked];
        const std::string before = document.text();
        const std::string after = edited_text(Document(before, "x").without(table.path));
        const auto gone = inserted(after, before); // what is more in the old text
        RC_ASSERT(gone.has_value());
        const std::size_t comments_gone =
            static_cast<std::size_t>(std::count(gone->begin(), gone->end(), '#'));
        std::size_t comments_inside = 0;
        for (const std::string part : {table.header_remark})
            comments_inside += static_cast<std::size_t>(std::count(part.begin(), part.end(), '#'));
        for (std::size_t i = 0; i < table.lines.size(); ++i) {
            const HandLine &line = table.lines[i];
            const std::string text =
                line.value + line.remark + (i + 1 < table.lines.size() ? table.between[i] : "");
            comments_inside += static_cast<std::size_t>(std::count(text.begin(), text.end(), '#'));
        }
        RC_ASSERT(comments_gone == comments_inside);
    }));
}
