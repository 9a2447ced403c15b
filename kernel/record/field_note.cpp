#include "kernel/record/field_note.h"

#include "kernel/measure/character.h"
#include "kernel/measure/number_reader.h"

#include <algorithm>
#include <charconv>
#include <string>
#include <vector>

namespace roundlay {

namespace {

constexpr int inches_in_foot = 12;
constexpr int most_field_digits = 6; // feet of a thousand houses in a row

NoteTrouble refused(Said what) {
    return {false, std::move(what)};
}
NoteTrouble open(OpenNote lacks, Said what) {
    return {true, std::move(what), lacks};
}

NoteTrouble not_read(std::string_view written, std::size_t offset) {
    std::size_t character = 1;
    for (std::size_t at = 0; at < offset && at < written.size(); ++character)
        at += std::max<std::size_t>(1, character_length(written.substr(at)));
    return refused(
        said("%1 is not read as a length from its character %2 on: write feet.inches.parts such as "
             "3.10.1, or a number with its unit such as 8 1/2 in or 215 mm",
             std::string(written), character));
}

/// Whole numbers with dots between them: 3.10.1. Nothing where anything else stands there.
std::optional<std::vector<int>> dotted_fields(std::string_view text) {
    std::vector<int> fields;
    while (true) {
        const std::string_view field = text.substr(0, text.find('.'));
        int value = 0;
        const auto [end, error] = std::from_chars(field.data(), field.data() + field.size(), value);
        const bool whole = error == std::errc() && end == field.data() + field.size() &&
                           is_digit(field.front()) && field.size() <= most_field_digits;
        if (!whole) return std::nullopt;
        fields.push_back(value);
        if (field.size() == text.size()) return fields;
        text.remove_prefix(field.size() + 1);
    }
}

NoteTrouble too_many_inches(std::string_view written) {
    return refused(
        said("the second field of %1 is inches and not under 12: look at the sheet again, and write "
             "feet, inches and parts",
             std::string(written)));
}

Length feet_inches_parts(int feet, int inches, int parts, int denominator, bool below) {
    const WholeNumber all = (WholeNumber(feet) * inches_in_foot + inches) * denominator + parts;
    const double mm = Rational::of(all * 127, WholeNumber(5) * denominator).value_or(Rational()).nearest();
    return Length::mm(below ? -mm : mm);
}

NoteValue three_fields(std::string_view written, const std::vector<int> &fields, const Notation &notation,
                       bool below) {
    if (fields[1] >= inches_in_foot) return too_many_inches(written);
    if (!notation.denominator)
        return open(OpenNote::denominator,
                    said("%1 has a third field and its sheet no denominator: state whether the sheet counts "
                         "quarters, eighths or sixteenths of an inch",
                         std::string(written)));
    if (fields[2] >= *notation.denominator)
        return refused(
            said("the third field of %1 is not under %2, which is the denominator of its sheet: look "
                 "at the sheet again, or state another denominator",
                 std::string(written), *notation.denominator));
    return feet_inches_parts(fields[0], fields[1], fields[2], *notation.denominator, below);
}

bool is_metric(const Notation &notation) {
    return notation.unit && *notation.unit != NoteUnit::inch && *notation.unit != NoteUnit::foot;
}

const char *suffix(NoteUnit unit) {
    constexpr const char *all[] = {" mm", " cm", " m", " in", " ft"};
    return all[static_cast<std::size_t>(unit)];
}

/// A length with its unit. Of the same bytes: every sign is put in the place of one as long.
std::string as_typed(std::string_view written) {
    std::string text(written);
    for (const std::string_view dash : {"\u2014", "\u2015"})
        for (auto at = text.find(dash); at != std::string::npos; at = text.find(dash))
            text.replace(at, dash.size(), "\u2013");
    for (std::size_t i = 1; i + 1 < text.size(); ++i)
        if (text[i] == ',' && is_digit(text[i - 1]) && is_digit(text[i + 1])) text[i] = '.';
    return text;
}

/// 1,250 mm: a metre and a quarter in one country, a millimetre and a quarter in another. Of metres three
/// places are usual, and nobody writes 0,250 for 250.
bool may_part_thousands(std::string_view size, const Notation &notation) {
    constexpr std::size_t digits = 3;
    const std::size_t comma = size.find(',');
    if (comma == std::string_view::npos || size.substr(0, comma) == "0") return false;
    const std::size_t end = size.find_first_not_of("0123456789", comma + 1);
    if (std::min(end, size.size()) != comma + 1 + digits) return false;
    if (end == std::string_view::npos) return notation.unit != NoteUnit::m;
    NumberReader behind(size.substr(end));
    behind.skip_space();
    return behind.take_word() != "m";
}

NoteValue with_unit(std::string_view written, const std::string &typed) {
    const auto read = parse_length(typed);
    if (const auto *error = std::get_if<MeasureError>(&read)) return not_read(written, error->offset);
    return std::get<Length>(read);
}

bool is_bare_number(std::string_view typed) {
    NumberReader reader(typed);
    reader.take_sign();
    if (std::holds_alternative<MeasureError>(reader.read_number())) return false;
    reader.skip_space();
    return reader.at_end();
}

/// Nothing is nothing in every unit.
bool is_nothing(std::string_view typed) {
    return std::holds_alternative<Length>(parse_length(typed));
}

NoteValue other_note(std::string_view written, std::string_view size, const Notation &notation) {
    if (may_part_thousands(size, notation))
        return refused(said("the comma of %1 can part thousands or decimals: write the number without it, or "
                            "with a point",
                            std::string(written)));
    std::string typed = as_typed(written);
    if (is_bare_number(typed) && !is_nothing(typed)) {
        if (!notation.unit)
            return open(
                OpenNote::unit,
                said("%1 has no unit and its sheet none for its numbers: write it as 8 1/2 in or 215 mm, "
                     "or state numbers_in of the sheet or the record",
                     std::string(written)));
        typed += suffix(*notation.unit);
    }
    return with_unit(written, typed);
}

NoteValue two_fields(std::string_view written, const std::vector<int> &fields, const Notation &notation,
                     bool below) {
    if (!notation.two_fields)
        return open(OpenNote::two_fields,
                    said("%1 has two fields and can be feet.inches or decimal feet: state which of them the "
                         "sheet means",
                         std::string(written)));
    if (*notation.two_fields == TwoFields::decimal_feet)
        return with_unit(written, as_typed(written) + suffix(NoteUnit::foot));
    if (fields[1] >= inches_in_foot) return too_many_inches(written);
    return feet_inches_parts(fields[0], fields[1], 0, 1, below);
}

} // namespace

Said told_of_all(OpenNote lacks, std::size_t count, const std::string &one) {
    switch (lacks) {
    case OpenNote::denominator:
        return said("%1 numbers have a third field and their sheet no denominator, %2 the first of them: "
                    "state whether the sheet counts quarters, eighths or sixteenths of an inch",
                    count, one);
    case OpenNote::two_fields:
        return said("%1 numbers have two fields and can be feet.inches or decimal feet, %2 the first of "
                    "them: state which of them the sheet means",
                    count, one);
    case OpenNote::unit:
        break;
    }
    return said("%1 numbers have no unit and their sheet none for its numbers, %2 the first of them: state "
                "numbers_in of the record or the sheet, or write them as 8 1/2 in or 215 mm",
                count, one);
}

NoteValue read_note(std::string_view written, const Notation &notation) {
    const std::string typed = as_typed(written);
    NumberReader reader(typed);
    const bool below = reader.take_sign();
    std::string_view size = written.substr(std::min(reader.at(), written.size()));
    size = size.substr(0, size.find_last_not_of(" \t") + 1);
    const auto fields = size.empty() ? std::nullopt : dotted_fields(size);
    constexpr std::size_t most_fields = 3;
    if (fields && fields->size() == most_fields) return three_fields(written, *fields, notation, below);
    if (fields && fields->size() == 2 && (notation.two_fields || !is_metric(notation)))
        return two_fields(written, *fields, notation, below);
    return other_note(written, size, notation);
}

} // namespace roundlay
