#include "kernel/document/said_text.h"

#include "kernel/document/table_reader.h"
#include "kernel/measure/load.h"

namespace roundlay {

namespace {

struct InWords {
    const LengthStyle &style;

    std::string operator()(const LengthAmount &length) const {
        return length.decimals > 0 ? print_decimals(Length::mm(length.mm), style.system, length.decimals)
                                   : print_length(Length::mm(length.mm), style);
    }
    std::string operator()(const LoadAmount &load) const { return print_load(load.kpa, style.system); }
    std::string operator()(long long count) const { return std::to_string(count); }
    /// As the person wrote it, cut where it is long.
    std::string operator()(const std::string &name) const { return quoted_for_message(name); }
    std::string operator()(const std::vector<Said> &phrase) const {
        return english_of(phrase.front(), style);
    }
};

} // namespace

std::string english_of(const Said &said, const LengthStyle &style) {
    std::string words;
    for (std::size_t at = 0; at < said.text.size(); ++at)
        if (const int hole = hole_at(said.text, at)) {
            words += std::visit(InWords{style}, said.amounts[static_cast<std::size_t>(hole) - 1].value());
            ++at;
        } else {
            words += said.text[at];
        }
    return words;
}

Said with_quoted_names(const Said &said) {
    Said quoted{said.text, {}};
    for (const Amount &amount : said.amounts)
        if (const auto *name = std::get_if<std::string>(&amount.value()))
            quoted.amounts.emplace_back(quoted_for_message(*name));
        else if (const auto *phrase = std::get_if<std::vector<Said>>(&amount.value()))
            quoted.amounts.emplace_back(with_quoted_names(phrase->front()));
        else
            quoted.amounts.push_back(amount);
    return quoted;
}

} // namespace roundlay
