#include "kernel/document/table_reader.h"

#include "kernel/document/compass.h"
#include "kernel/document/entry_words.h"
#include "kernel/document/limits.h"
#include "kernel/document/toml_scan.h"
#include "kernel/measure/character.h"
#include "kernel/measure/load.h"
#include "kernel/measure/nearest_name.h"
#include "kernel/measure/spelling.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

const char *type_in_words(const toml::node &node) {
    switch (node.type()) {
    case toml::node_type::string:
        return "a text";
    case toml::node_type::integer:
    case toml::node_type::floating_point:
        return "a number";
    case toml::node_type::boolean:
        return "true or false";
    case toml::node_type::array:
        return "a list";
    case toml::node_type::table:
        return "a table";
    default:
        return "a date or time";
    }
}

bool is_zero(const toml::node &node) {
    return (node.is_integer() || node.is_floating_point()) && node.value<double>() == 0.0;
}

std::size_t count_characters(std::string_view text) {
    return static_cast<std::size_t>(std::count_if(
        text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xc0) != 0x80; }));
}

std::string lower(std::string_view text) {
    std::string low(text);
    for (char &c : low)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return low;
}

/// The header that a table stands under: "floor[0].beam[2]" under [[floor.beam]].
std::string header_of(std::string_view path) {
    std::string names;
    bool inside = false;
    for (const char c : path) {
        if (c == '[') inside = true;
        if (!inside) names += c;
        if (c == ']') inside = false;
    }
    return path.ends_with(']') ? "[[" + names + "]]" : "[" + names + "]";
}

bool has_control(std::string_view text) {
    return std::any_of(text.begin(), text.end(), [](char c) {
        const auto byte = static_cast<unsigned char>(c);
        return byte < ' ' || byte == 0x7f;
    });
}

} // namespace

std::string quoted_for_message(std::string_view text) {
    constexpr std::size_t longest = 40; // bytes: enough to recognise a word by
    std::string cut;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t length = character_length(text.substr(at));
        if (length == 0 || cut.size() + length > longest) return "\"" + cut + "...\"";
        cut += has_control(text.substr(at, length)) ? std::string(" ") : std::string(text.substr(at, length));
        at += length;
    }
    return "\"" + cut + "\"";
}

std::string did_you_mean(std::string_view typed, const std::vector<std::string> &known) {
    constexpr std::size_t too_short = 2; // between such names every other one is near
    const auto nearest = nearest_name(typed, known);
    if (!nearest || (typed.size() <= too_short && lower(typed) != lower(*nearest))) return "";
    return " (did you mean \"" + *nearest + "\"?)";
}

const toml::node *TableReader::take(std::string_view key) {
    known_.emplace_back(key);
    const toml::node *found = node(key);
    if (found) reading_.stated(path_of(key), place_of(key));
    return found;
}

Place TableReader::place_of(std::string_view key) const {
    const toml::node *found = node(key);
    return found ? reading_.text().place_of(*found) : place_;
}

bool TableReader::refuse(std::string_view key, const std::string &what, std::string expected) {
    reading_.error(place_of(key), quoted_for_message(key) + " " + what, std::move(expected));
    reading_.wrong(path_of(key));
    return false;
}

bool TableReader::wrong_type(std::string_view key, std::string expected) {
    return refuse(key, std::string("cannot be ") + type_in_words(*node(key)), std::move(expected));
}

/// Of several alike it says which one.
bool TableReader::out_of_bounds(std::string_view key, std::string expected) {
    const std::string whose = entry_in_words(reading_.text().root(), path_, key);
    return refuse(key, (whose.empty() ? "" : "of " + whose + " ") + "is out of bounds", std::move(expected));
}

/// Points into the text between the quotes, where that is spelled plainly.
bool TableReader::wrong_measure(std::string_view key, const MeasureError &error) {
    const std::string_view text = reading_.text().text();
    std::size_t at = reading_.text().begin_of(*node(key));
    const std::string_view before = text.substr(at, error.offset + 1);
    const bool plain = before.substr(0, 3) != "\"\"\"" && before.substr(0, 3) != "'''" &&
                       before.find('\\') == std::string_view::npos;
    if (plain) at += 1 + error.offset;
    reading_.error(reading_.text().lines().place_at(at), quoted_for_message(key) + ": " + error.message,
                   error.expected);
    reading_.wrong(path_of(key));
    return false;
}

bool TableReader::length(std::string_view key, Length &into, const LengthBounds &bounds) {
    const toml::node *found = take(key);
    if (!found) return false;
    Length read;
    if (const auto *text = found->as_string()) {
        const auto parsed = parse_length(text->get());
        if (const auto *error = std::get_if<MeasureError>(&parsed)) return wrong_measure(key, *error);
        read = std::get<Length>(parsed);
    } else if (!is_zero(*found)) {
        return wrong_type(key, "a length with its unit in quotes, such as \"8 1/2 in\" or \"215 mm\"");
    }
    const bool high_enough = bounds.low_is_in ? read.mm() >= bounds.low_mm : read.mm() > bounds.low_mm;
    if (!high_enough || read.mm() > bounds.high_mm)
        return out_of_bounds(key, speaks_feet(reading_.text().root()) ? bounds.words_in_feet : bounds.words);
    into = read;
    return true;
}

bool TableReader::slope(std::string_view key, Slope &into, bool may_fall) {
    const toml::node *found = take(key);
    if (!found) return false;
    constexpr const char *expected = "a slope in quotes, such as \"1:8\" or \"7 deg\"";
    if (!found->is_string() && !found->is_number()) return wrong_type(key, expected);
    // An unquoted number is a ratio; read from its text, so that it is exact and bounded like the others.
    const std::string_view text = reading_.text().text();
    const std::size_t begin = reading_.text().begin_of(*found);
    const auto parsed = parse_slope(found->is_string() ? std::string_view(found->as_string()->get())
                                                       : text.substr(begin, value_end(text, begin) - begin));
    if (const auto *error = std::get_if<MeasureError>(&parsed))
        return found->is_string() ? wrong_measure(key, *error)
                                  : refuse(key, "cannot be read: " + error->message, expected);
    const Slope read = std::get<Slope>(parsed);
    if (!may_fall && read < Slope()) return out_of_bounds(key, "a slope that is not negative");
    into = read;
    return true;
}

bool TableReader::text(std::string_view key, std::string &into) {
    const toml::node *found = take(key);
    if (!found) return false;
    const auto *text = found->as_string();
    if (!text) return wrong_type(key, "text in quotes");
    if (!plain(key, text->get())) return false;
    into = text->get();
    return true;
}

bool TableReader::plain(std::string_view key, const std::string &text) {
    if (has_control(text)) return refuse(key, "has a control character in it", "plain text on one line");
    if (count_characters(text) > limits::name_characters)
        return refuse(key, "is too long", "at most 200 characters");
    return true;
}

bool TableReader::flag(std::string_view key, bool &into) {
    const toml::node *found = take(key);
    if (!found) return false;
    if (!found->is_boolean()) return wrong_type(key, "true or false, without quotes");
    into = found->as_boolean()->get();
    return true;
}

bool TableReader::count(std::string_view key, int &into, int low, int high) {
    const toml::node *found = take(key);
    if (!found) return false;
    const std::string expected = "a whole number from " + std::to_string(low) + " to " + std::to_string(high);
    if (found->is_floating_point()) return refuse(key, "has a decimal point", expected);
    if (!found->is_integer()) return wrong_type(key, expected);
    const std::int64_t read = found->as_integer()->get();
    if (read < low || read > high) return out_of_bounds(key, expected);
    into = static_cast<int>(read);
    return true;
}

bool TableReader::number(std::string_view key, double &into, double low, bool low_is_in, double high,
                         const char *expected) {
    const toml::node *found = take(key);
    if (!found) return false;
    if (!found->is_number()) return wrong_type(key, expected);
    const double read = found->value<double>().value_or(std::nan(""));
    const bool within = (low_is_in ? read >= low : read > low) && read <= high;
    if (!within) return out_of_bounds(key, expected); // nan too
    into = read;
    return true;
}

bool TableReader::bare_load(std::string_view key, double &into, double most, const char *expected) {
    const toml::node *found = node(key);
    const double read = found ? found->value<double>().value_or(0) : 0;
    const std::string stated = found && read > most_bare_load ? with_unit_stated(read) : "";
    if (stated.empty()) return number(key, into, 0, false, most, expected);
    take(key);
    return refuse(
        key, "has no unit, and " + spell_number(read) + " kPa is " + print_load(read, UnitSystem::imperial),
        "the unit stated: " + stated);
}

bool TableReader::load(std::string_view key, double &into, double most, const char *expected) {
    const toml::node *found = node(key);
    if (!found || !found->is_string()) return bare_load(key, into, most, expected);
    take(key);
    const auto read = parse_load(found->as_string()->get());
    if (!read) return refuse(key, "cannot be read as a load", expected);
    if (!(*read > 0 && *read <= most)) return out_of_bounds(key, expected);
    into = *read;
    return true;
}

bool TableReader::texts(std::string_view key, std::vector<std::string> &into) {
    const toml::node *found = take(key);
    if (!found) return false;
    const auto *list = found->as_array();
    const bool good =
        list && std::all_of(list->begin(), list->end(), [](const toml::node &n) { return n.is_string(); });
    if (!good) return wrong_type(key, "a list of texts, such as [\"A\", \"B\"]");
    for (const toml::node &item : *list)
        into.push_back(item.as_string()->get());
    return true;
}

bool TableReader::heading(std::string_view key, double &into) {
    std::string words;
    if (!text(key, words)) return false;
    const auto read = parse_heading(words);
    if (!read) return refuse(key, "cannot be " + quoted_for_message(words), heading_expected);
    into = *read;
    return true;
}

bool TableReader::choice(std::string_view key, std::string &into, const std::vector<std::string> &words) {
    std::string typed;
    if (!text(key, typed) || !word_of(key, typed, words)) return false;
    into = typed;
    return true;
}

/// `typed` becomes the word as it is listed.
bool TableReader::word_of(std::string_view key, std::string &typed, const std::vector<std::string> &words) {
    std::string word = lower(typed);
    std::replace_if(
        word.begin(), word.end(), [](char c) { return c == '-' || c == '_'; }, ' ');
    if (std::find(words.begin(), words.end(), word) != words.end()) {
        typed = word;
        return true;
    }
    std::string expected = "one of";
    for (std::size_t i = 0; i < words.size(); ++i)
        expected += (i ? ", \"" : " \"") + words[i] + "\"";
    return refuse(key, "cannot be " + quoted_for_message(typed) + did_you_mean(typed, words), expected);
}

void TableReader::require(std::string_view key, const char *expected) {
    if (states(key)) return;
    const std::string header = header_of(path_), in = path_.ends_with(']') ? " in this " : " in ";
    reading_.error(place_, quoted_for_message(key) + " is missing" + (path_.empty() ? "" : in + header),
                   expected);
}

const toml::table *TableReader::table(std::string_view key) {
    const toml::node *found = take(key);
    if (!found) return nullptr;
    const std::string header = header_of(path_of(key));
    if (found->is_array_of_tables())
        refuse(key, "is stated once in a document", "one bracket on each side: " + header);
    else if (!found->is_table())
        wrong_type(key, "a table with the header " + header);
    return found->as_table();
}

std::vector<const toml::table *> TableReader::entries(std::string_view key, std::size_t most) {
    std::vector<const toml::table *> all;
    const toml::node *found = take(key);
    if (!found) return all;
    const std::string header = header_of(path_of(key) + "[]");
    const auto *list = found->as_array();
    const bool good =
        list && std::all_of(list->begin(), list->end(), [](const toml::node &n) { return n.is_table(); });
    if (!good)
        wrong_type(key, "two brackets on each side, once for each: " + header);
    else if (list->size() > most)
        refuse(key, "has more than " + std::to_string(most) + " entries " + header,
               "a shell that can be built");
    if (!good || list->size() > most) return all;
    for (const toml::node &item : *list) {
        reading_.stated(path_of(key) + "[" + std::to_string(all.size()) + "]",
                        reading_.text().place_of(item));
        all.push_back(item.as_table());
    }
    return all;
}

namespace {

std::string not_known(std::string_view key) {
    return quoted_for_message(key) + " is not known here and is not used";
}

} // namespace

void TableReader::finish() {
    if (!table_) return;
    for (const auto &[key, value] : *table_) {
        if (std::find(known_.begin(), known_.end(), key.str()) != known_.end()) continue;
        const std::string meant = did_you_mean(key.str(), known_);
        // A whole table under a slip of its name would be a house without that window.
        const bool lost = !meant.empty() && (value.is_table() || value.is_array_of_tables());
        lost ? reading_.error(reading_.text().place_of(key), not_known(key.str()) + meant,
                              "a table by a name that is known")
             : reading_.warning(reading_.text().place_of(key), not_known(key.str()) + meant);
    }
}

} // namespace roundlay
