#include "kernel/measured/measured_shell.h"
#include "kernel/record/numbers.h"

#include <charconv>

namespace roundlay {

namespace {

/// The number of the log's entry that a subject names: "log[3].butt_height".
std::optional<std::size_t> entry_of(const std::string &subject) {
    constexpr std::string_view head = "log[";
    std::size_t entry = 0;
    if (!subject.starts_with(head)) return {};
    const auto read = std::from_chars(subject.data() + head.size(), subject.data() + subject.size(), entry);
    return read.ec == std::errc{} ? std::optional(entry) : std::nullopt;
}

std::optional<std::string> found_at(const Record &record, const About &about) {
    const auto *wall = first_of<about::Wall>(about);
    const auto *round = first_of<about::Round>(about);
    const auto *part = first_of<about::Part>(about);
    if (!wall || !round) return {};
    for (std::size_t i = 0; i < record.logs.size(); ++i) {
        const FoundPlace &place = record.logs[i].place;
        if (place.wall == wall->name && place.round == round->number &&
            (!part || !place.piece || place.piece == part->number))
            return log_path(i);
    }
    return {};
}

} // namespace

void point_at_record(Findings &findings, const Record &record, const Shell &stated) {
    for (Finding &finding : findings) {
        const auto entry = entry_of(finding.subject);
        const bool is_made = entry && *entry >= stated.own_logs.size();
        if (!is_made && !finding.subject.empty()) continue;
        if (const auto found = found_at(record, finding.about))
            finding.subject = *found;
        else if (is_made)
            finding.subject.clear(); // better no line than another log's
    }
}

} // namespace roundlay
