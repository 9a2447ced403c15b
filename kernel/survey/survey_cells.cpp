#include "kernel/survey/survey_cells.h"

#include "kernel/csv/csv_rows.h"
#include "kernel/document/noted_text.h"
#include "kernel/document/toml_text.h"
#include "kernel/document/words.h"
#include "kernel/measure/character.h"
#include "kernel/survey/survey_words.h"

#include <algorithm>
#include <stdexcept>

namespace roundlay {

using namespace format;

namespace {

constexpr char between[] = "; ";

/// At semicolons; one that belongs to a text has a \ in front, and so has a \.
std::vector<std::string> parted(const std::string &cell) {
    std::vector<std::string> parts(1);
    for (std::size_t i = 0; i < cell.size(); ++i) {
        if (cell[i] == '\\' && i + 1 < cell.size() && (cell[i + 1] == ';' || cell[i + 1] == '\\'))
            parts.back() += cell[++i];
        else if (cell[i] == ';')
            parts.emplace_back();
        else
            parts.back() += cell[i];
    }
    for (std::string &part : parts)
        part = trimmed(part);
    std::erase(parts, "");
    return parts;
}

std::string as_part(const std::string &text) {
    std::string part;
    for (const char c : text)
        part += c == ';' || c == '\\' ? std::string{'\\', c} : std::string(1, c);
    return part;
}

std::string joined(const std::vector<std::string> &parts) {
    std::string cell;
    for (const std::string &part : parts)
        cell += (cell.empty() ? "" : between) + part;
    return cell;
}

std::string said_of(const NotedLength &noted, bool in_french) {
    std::vector<std::string> parts;
    if (noted.certainty != Certainty::measured)
        parts.push_back(survey_word(roundlay::word(noted.certainty), in_french));
    if (!noted.by.empty()) parts.push_back(survey_word("by", in_french) + " " + as_part(noted.by));
    if (!noted.on.empty()) parts.push_back(survey_word("on", in_french) + " " + as_part(noted.on));
    return parts.empty() ? std::string() : " (" + joined(parts) + ")";
}

struct Cell {
    bool words; ///< of the format, not a person's own
    bool in_french;

    std::string word(const std::string &text) const { return words ? survey_word(text, in_french) : text; }
    std::string operator()(const std::string &text) const { return word(text); }
    std::string operator()(int count) const { return std::to_string(count); }
    std::string operator()(double number) const { return toml_text(number); }
    std::string operator()(const ManyTexts &texts) const {
        std::vector<std::string> parts;
        for (const std::string &text : texts)
            parts.push_back(as_part(word(text)));
        return joined(parts);
    }
    std::string operator()(const NotedLength &noted) const {
        return noted.written + said_of(noted, in_french);
    }
    template <typename Other> std::string operator()(const Other &) const {
        throw std::logic_error("a found log has a kind of value that surveys have no cell for");
    }
};

/// False where these words say nothing that is said of a number.
bool take_remark(const std::string &words, NotedLength &noted) {
    const std::string plain = survey_english(words);
    if (const auto certainty = find_word<Certainty>(plain)) return noted.certainty = *certainty, true;
    const std::size_t blank = words.find(' ');
    if (blank == std::string::npos) return false;
    const std::string first = survey_english(words.substr(0, blank)), rest = trimmed(words.substr(blank));
    if (first == "by") return noted.by = rest, true;
    if (first == "on") return noted.on = rest, true;
    return false;
}

bool is_bare_number(const std::string &text) {
    return !text.empty() && std::ranges::all_of(text, [](char c) {
        return is_digit(c) || c == '.' || c == ',' || c == '+' || c == '-';
    });
}

NotedLength noted_in(const std::string &cell, const std::string &unit) {
    NotedLength noted{cell, {}, Certainty::measured, {}, {}};
    const std::size_t open = cell.rfind(" (");
    if (open != std::string::npos && cell.back() == ')') {
        const auto remarks = parted(cell.substr(open + 2, cell.size() - open - 3));
        NotedLength said = noted;
        if (std::ranges::all_of(remarks, [&](const std::string &each) { return take_remark(each, said); })) {
            noted = said;
            noted.written = trimmed(cell.substr(0, open));
        }
    }
    if (!unit.empty() && is_bare_number(noted.written)) noted.written += " " + unit;
    return noted;
}

/// A number, with a decimal point or comma; else a text, so that it is refused as one.
std::string number_or_text(const std::string &cell) {
    std::string number = cell;
    std::ranges::replace(number, ',', '.');
    const bool plain = std::ranges::all_of(number, [](char c) { return is_digit(c) || c == '.'; }) &&
                       std::ranges::count(number, '.') <= 1 && is_digit(number.front()) &&
                       is_digit(number.back()) && (number.size() < 2 || number[0] != '0' || number[1] == '.');
    return plain ? number : toml_text(cell);
}

std::string list_text(const std::vector<std::string> &texts, bool words) {
    std::string list;
    for (const std::string &text : texts)
        list += (list.empty() ? "" : ", ") + toml_text(words ? survey_english(text) : text);
    return "[" + list + "]";
}

/// A spreadsheet makes 3.0 of 3.
std::string whole_or_text(const std::string &cell) {
    std::string number = number_or_text(cell);
    const std::size_t point = number.find('.');
    if (number.front() == '"' || point == std::string::npos) return number;
    const bool whole = number.find_first_not_of('0', point + 1) == std::string::npos;
    return whole ? number.substr(0, point) : toml_text(cell);
}

/// A sign says no more than the column that the number stands in.
std::string without_percent(const std::string &cell) {
    return cell.ends_with('%') ? trimmed(cell.substr(0, cell.size() - 1)) : cell;
}

struct Statement {
    const std::string &cell, &unit;

    std::string operator()(const Count &) const { return whole_or_text(cell); }
    std::string operator()(const Number &) const {
        const std::string number = without_percent(cell);
        return number.empty() ? toml_text(cell) : number_or_text(number);
    }
    std::string operator()(const OneOf &) const { return toml_text(survey_english(cell)); }
    std::string operator()(const SomeOf &) const { return list_text(parted(cell), true); }
    std::string operator()(const Texts &) const { return list_text(parted(cell), false); }
    std::string operator()(const Noted &) const { return noted_text(noted_in(cell, unit)); }
    template <typename Other> std::string operator()(const Other &) const { return toml_text(cell); }
};

} // namespace

std::string cell_of(const Kind &kind, const Value &value, bool in_french) {
    const bool words = std::holds_alternative<OneOf>(kind) || std::holds_alternative<SomeOf>(kind);
    return std::visit(Cell{words, in_french}, value);
}

std::string statement_of(const Kind &kind, const std::string &cell, const std::string &unit) {
    return std::visit(Statement{cell, unit}, kind);
}

} // namespace roundlay
