#include "kernel/csv/csv_report.h"

#include <algorithm>

namespace roundlay {

namespace {

constexpr std::size_t most_lines = 6;

std::string others(const std::vector<int> &lines) {
    if (lines.size() < 2) return "";
    std::string text =
        "; so in " + std::to_string(lines.size() - 1) + " more line" + (lines.size() == 2 ? "" : "s") + ": ";
    for (std::size_t i = 1; i < std::min(lines.size(), most_lines + 1); ++i)
        text += (i > 1 ? ", " : "") + std::to_string(lines[i]);
    return text + (lines.size() > most_lines + 1 ? ", ..." : "");
}

} // namespace

void CsvReport::problem(int line, const std::string &kind, const std::string &message) {
    const auto known = std::ranges::find(kinds_, kind, &Kind::name);
    if (known == kinds_.end())
        kinds_.push_back({kind, message, {line}});
    else if (known->lines.back() != line)
        known->lines.push_back(line);
}

std::vector<CsvProblem> CsvReport::problems() const {
    std::vector<CsvProblem> all;
    for (const Kind &kind : kinds_)
        all.push_back({kind.lines.front(), kind.message + others(kind.lines)});
    std::ranges::stable_sort(all, {}, &CsvProblem::line);
    return all;
}

std::size_t CsvReport::count() const {
    std::size_t sum = 0;
    for (const Kind &kind : kinds_)
        sum += kind.lines.size();
    return sum;
}

} // namespace roundlay
