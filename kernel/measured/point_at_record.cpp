#include "kernel/layout/openings/openings.h"
#include "kernel/measured/measured_shell.h"
#include "kernel/measured/opening_numbers.h"
#include "kernel/record/numbers.h"

#include <charconv>

namespace roundlay {

namespace {

/// The number of the entry of a list that a subject names: "log[3].butt_height".
std::optional<std::size_t> entry_of(std::string_view head, const std::string &subject) {
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

/// Where an opening of the measured shell was measured: what is wrong with it there comes of the record.
std::optional<std::string> measured_at(const Record &record, const Shell &stated, std::size_t opening) {
    for (std::size_t i = 0; i < record.openings.size(); ++i)
        if (is_measured(record.openings[i]) &&
            openings_called(stated, record.openings[i]) == std::vector<std::size_t>{opening})
            return "record.opening[" + std::to_string(i) + "]";
    return {};
}

/// The opening that a finding of the measuring is about.
std::optional<std::size_t> opening_about(const Shell &stated, const About &about) {
    const auto *wall = first_of<about::Wall>(about);
    const auto *opening = first_of<about::Opening>(about);
    for (std::size_t i = 0; wall && opening && i < stated.openings.size(); ++i) {
        const about::Opening own = opening_of(stated, i);
        if (stated.openings[i].wall == wall->name && own.kind == opening->kind &&
            own.number == opening->number)
            return i;
    }
    return {};
}

std::optional<std::size_t> opening_of_finding(const Shell &stated, const Finding &finding) {
    if (const auto entry = entry_of("opening[", finding.subject)) return entry;
    return finding.subject.empty() ? opening_about(stated, finding.about) : std::nullopt;
}

} // namespace

void point_at_record(Findings &findings, const Record &record, const Shell &stated) {
    for (Finding &finding : findings) {
        if (const auto opening = opening_of_finding(stated, finding)) {
            if (const auto measured = measured_at(record, stated, *opening)) finding.subject = *measured;
            continue;
        }
        const auto entry = entry_of("log[", finding.subject);
        const bool is_made = entry && *entry >= stated.own_logs.size();
        if (!is_made && !finding.subject.empty()) continue;
        if (const auto found = found_at(record, finding.about))
            finding.subject = *found;
        else if (is_made)
            finding.subject.clear(); // better no line than another log's
    }
}

} // namespace roundlay
