#include "kernel/document/document.h"
#include "kernel/document/limits.h"
#include "kernel/document/read_record.h"
#include "kernel/document/read_table.h"
#include "kernel/measure/spelling.h"

namespace roundlay {

namespace {

constexpr const char *version_expected = "roundlay = 1 at the top of the document";

void read_version(Reading &reading, TableReader &document) {
    document.require("roundlay", version_expected);
    double version = limits::version;
    constexpr double newest_imaginable = 1e6;
    if (document.number("roundlay", version, 1, true, newest_imaginable, version_expected) &&
        version > limits::version)
        reading.error(document.place_of("roundlay"),
                      "the document is written in version " + spell_number(version) +
                          " of the format, which is newer than this program",
                      version_expected);
}

} // namespace

ReadResult read_document(std::string_view text, const std::string &file) {
    const auto parsed = parse_text(text, file);
    if (const auto *problem = std::get_if<Problem>(&parsed)) return {std::nullopt, {*problem}, {}};
    Reading reading(std::get<ParsedText>(parsed), file);
    TableReader document(reading, &reading.text().root(), "", {1, 1, 0});
    Shell shell;
    Record record;
    read_version(reading, document);
    for (const format::Section &section : format::sections())
        read_section(reading, document, section, section.of_record ? static_cast<void *>(&record) : &shell,
                     shell);
    check_record(reading, record, shell);
    document.finish();
    ReadResult result{std::move(shell), reading.take_problems(), reading.take_places(), std::move(record)};
    if (has_errors(result.problems)) result.shell.reset(), result.record = {};
    return result;
}

} // namespace roundlay
