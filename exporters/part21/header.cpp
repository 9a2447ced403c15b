#include "exporters/part21/header.h"

#include "exporters/part21/part21_text.h"

#include <charconv>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <stdexcept>
#include <string_view>

namespace roundlay::part21 {

namespace {

/// The last second that a date of four figures can name.
constexpr std::int64_t end_of_9999 = 253402300799;

std::string iso_8601(std::int64_t seconds) {
    using namespace std::chrono;
    const sys_seconds when{std::chrono::seconds(seconds)};
    const sys_days day = floor<days>(when);
    const year_month_day date(day);
    const hh_mm_ss time(when - day);
    char text[64];
    std::snprintf(text, sizeof text, "%04d-%02u-%02uT%02d:%02d:%02dZ", static_cast<int>(date.year()),
                  static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()),
                  static_cast<int>(time.hours().count()), static_cast<int>(time.minutes().count()),
                  static_cast<int>(time.seconds().count()));
    return text;
}

} // namespace

std::string header_of(const HeaderFacts &facts) {
    const std::string program = spelt("roundlay " ROUNDLAY_VERSION);
    std::string descriptions;
    for (const std::string &each : facts.descriptions)
        descriptions += (descriptions.empty() ? "" : ",") + spelt(each);
    return "ISO-10303-21;\nHEADER;\nFILE_DESCRIPTION((" + descriptions + "),'2;1');\nFILE_NAME(" +
           spelt(facts.name) + "," + spelt(iso_8601(facts.seconds)) + ",(" + spelt(facts.author) + "),(" +
           spelt(facts.organisation) + ")," + program + "," + program + "," + spelt(facts.approved) +
           ");\nFILE_SCHEMA((" + spelt(facts.schema) + "));\nENDSEC;\nDATA;\n";
}

std::string footer() {
    return "ENDSEC;\nEND-ISO-10303-21;\n";
}

std::int64_t time_of_export(const std::optional<std::int64_t> &stated) {
    if (stated) return *stated;
    if (const char *epoch = std::getenv("SOURCE_DATE_EPOCH"); epoch && *epoch) {
        const std::string_view text(epoch);
        std::int64_t seconds = 0;
        const auto read = std::from_chars(text.data(), text.data() + text.size(), seconds);
        const bool whole = read.ec == std::errc{} && read.ptr == text.data() + text.size();
        if (!whole || seconds < 0 || seconds > end_of_9999)
            throw std::runtime_error("SOURCE_DATE_EPOCH is \"" + std::string(text) +
                                     "\"; it must be a whole number of seconds since 1970.");
        return seconds;
    }
    return std::chrono::duration_cast<std::chrono::seconds>(
               std::chrono::system_clock::now().time_since_epoch())
        .count();
}

} // namespace roundlay::part21
