#include "exporters/words/words.h"

#include "exporters/words/catalogue.h"
#include "exporters/words/decimal_mark.h"
#include "kernel/measure/load.h"
#include "kernel/measure/spelling.h"

#include <cmath>
#include <variant>

namespace roundlay {

namespace {

/// As it is printed, where that is just it; else spelled out, so that what a person does is what was tried.
std::string exact_words(double mm, const LengthStyle &style) {
    constexpr double same = 1e-9; // mm
    const std::string printed = print_length(Length::mm(mm), style);
    const auto read = parse_length(printed);
    const bool exact =
        std::holds_alternative<Length>(read) && std::abs(std::get<Length>(read).mm() - mm) < same;
    return exact ? printed : spell_length(Length::mm(mm), style.system);
}

/// A length that is there is never told as none: where a rule's finest part is too coarse, more decimals are.
std::string printed(double mm, UnitSystem units) {
    constexpr int finer = 3;
    const LengthStyle style{.system = units};
    const auto is_none = [](const std::string &text) {
        return text.find_first_of("123456789") == std::string::npos;
    };
    const std::string coarse = print_length(Length::mm(mm), style);
    if (!is_none(coarse)) return coarse;
    const std::string fine = print_decimals(Length::mm(mm), units, finer);
    return is_none(fine) ? print_length({}, style) : fine;
}

struct AmountWords;
std::string filled(const Said &said, const AmountWords &amounts);

/// One amount in words.
struct AmountWords {
    Language language;
    const LengthStyle &style;
    bool never_none =
        false; ///< what is found is told however small; what is drawn or listed as it is rounded

    std::string operator()(const LengthAmount &length) const {
        if (length.decimals > 0)
            return with_decimal_mark(print_decimals(Length::mm(length.mm), style.system, length.decimals),
                                     language);
        if (length.exact) return exact_words(length.mm, style);
        return never_none ? printed(length.mm, style.system) : print_length(Length::mm(length.mm), style);
    }
    std::string operator()(const LoadAmount &load) const {
        return with_decimal_mark(print_load(load.kpa, style.system), language);
    }
    std::string operator()(long long count) const { return std::to_string(count); }
    std::string operator()(const std::string &name) const { return name; }
    std::string operator()(const std::vector<Said> &phrase) const { return filled(phrase.front(), *this); }
};

const long long *count_in(const Said &said, std::size_t hole) {
    return hole < said.amounts.size() ? std::get_if<long long>(&said.amounts[hole].value()) : nullptr;
}

/// Of "{log|logs}" the word for that many: in French none of a thing is told as one.
std::string_view word_for(std::string_view choice, long long count, Language language) {
    const std::size_t bar = choice.find('|');
    const bool one = count == 1 || (count == 0 && language == Language::french);
    return one ? choice.substr(0, bar) : choice.substr(bar + 1);
}

/// Between braces, where a text begins to choose there; empty where it does not.
std::string_view choice_at(std::string_view text, std::size_t at) {
    if (text[at] != '{') return {};
    const std::size_t end = text.find('}', at);
    if (end == std::string_view::npos) return {};
    const std::string_view choice = text.substr(at + 1, end - at - 1);
    return choice.find('|') == std::string_view::npos ? std::string_view() : choice;
}

std::string filled(const Said &said, const AmountWords &amounts) {
    const std::string_view text = translation_of(said.text, amounts.language).value_or(said.text);
    std::string words;
    const long long *count = nullptr; // the one before
    for (std::size_t i = 0; i < said.amounts.size() && !count; ++i)
        count = count_in(said, i);
    for (std::size_t at = 0; at < text.size(); ++at) {
        const auto hole = static_cast<std::size_t>(hole_at(text, at));
        const std::string_view choice = choice_at(text, at);
        if (hole > 0 && hole <= said.amounts.size()) {
            words += std::visit(amounts, said.amounts[hole - 1].value());
            if (const long long *own = count_in(said, hole - 1)) count = own;
            ++at;
        } else if (count && !choice.empty()) {
            words += word_for(choice, *count, amounts.language);
            at += choice.size() + 1;
        } else {
            words += text[at];
        }
    }
    return words;
}

std::string with_place(const Finding &finding, const std::string &words, const Speech &speech) {
    if (finding.about.empty()) return words;
    return words_of(finding.about, speech) + ": " + words;
}

} // namespace

std::string words_of(const Said &said, const Speech &speech) {
    const LengthStyle style{.system = speech.units};
    return filled(said, {speech.language, style, true});
}

std::string words_of(const Said &said, Language language, const LengthStyle &style) {
    return filled(said, {language, style});
}

std::string words_of(const About &about, const Speech &speech) {
    std::string words;
    for (const Thing &thing : about)
        words += (words.empty() ? "" : ", ") + words_of(said_of(thing), speech);
    return words;
}

std::string message_of(const Finding &finding, const Speech &speech) {
    const std::string what = words_of(finding.what, speech);
    if (!finding.advice) return what;
    return what + std::string(semicolon_of(speech.language)) + words_of(*finding.advice, speech);
}

std::string sentence_of(const Finding &finding, const Speech &speech) {
    return with_place(finding, message_of(finding, speech), speech);
}

std::string short_sentence_of(const Finding &finding, const Speech &speech) {
    return with_place(finding, words_of(finding.what, speech), speech);
}

} // namespace roundlay
