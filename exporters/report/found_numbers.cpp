#include "exporters/report/found_numbers.h"

#include "kernel/record/numbers.h"
#include "kernel/survey/survey_parts.h"

#include <algorithm>

namespace roundlay::sheets {

namespace {

std::string in_words(std::string name) {
    std::ranges::replace(name, '_', ' ');
    return name;
}

/// As the columns of a survey call it.
std::string key_word(const std::string &key, const Words &words) {
    for (const SurveyColumn &column : survey_columns())
        if (column.name == key) return in_words(words.language() == Language::french ? column.french : key);
    return key;
}

std::string part_word(const std::string &name, const Words &words) {
    for (const SurveyPart &part : survey_parts())
        if (part.name == name) return in_words(words.language() == Language::french ? part.french : name);
    return name;
}

/// What a number is, of "found[3].end[0].height".
std::string named(const FoundLog &log, const std::string &path, const Words &words) {
    const std::size_t first = path.find('.'), last = path.rfind('.');
    const std::string key = key_word(path.substr(last + 1), words);
    if (first == last) return key;
    const std::string owner = path.substr(first + 1, last - first - 1);
    const std::size_t bracket = owner.find('[');
    const std::size_t index = std::stoul(owner.substr(bracket + 1));
    const std::string part = part_word(owner.substr(0, bracket), words);
    const bool end = owner.starts_with("end") && index < log.ends.size();
    return words.say("%1, %2 %3", key, part, end ? log.ends[index].corner : std::to_string(index + 1));
}

} // namespace

NumberCounts counts_of(const FoundLog &log) {
    NumberCounts counts;
    each_number_of(log, "", [&](const NumberAt &, const NotedLength &number) {
        if (number.certainty == Certainty::measured) ++counts.measured;
        if (number.certainty == Certainty::proposed) ++counts.proposed;
        if (number.certainty == Certainty::contradicted) ++counts.contradicted;
        if (!number.value) ++counts.open;
    });
    return counts;
}

NumberCounts counts_of(const Record &record) {
    NumberCounts all;
    for (const FoundLog &log : record.logs) {
        const NumberCounts one = counts_of(log);
        all.measured += one.measured, all.proposed += one.proposed;
        all.contradicted += one.contradicted, all.open += one.open;
    }
    return all;
}

std::vector<DoubtfulNumber> doubtful_numbers(const Record &record, const Words &words) {
    std::vector<DoubtfulNumber> all;
    for (std::size_t i = 0; i < record.logs.size(); ++i) {
        const FoundLog &log = record.logs[i];
        each_number_of(log, log_path(i), [&](const NumberAt &at, const NotedLength &number) {
            if (number.certainty != Certainty::measured || !number.value)
                all.push_back({&log, named(log, at.path, words), number});
        });
    }
    return all;
}

bool has_a_size(const FoundLog &log) {
    const auto sized = [](const auto &part) { return part.height.is_taken() || part.width.is_taken(); };
    return std::ranges::any_of(log.ends, sized) || std::ranges::any_of(log.stations, sized);
}

} // namespace roundlay::sheets
