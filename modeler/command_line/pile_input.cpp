#include "modeler/command_line/pile_input.h"

#include "exporters/files/safe_file.h"

#include <cstdio>

namespace roundlay {

namespace {

constexpr std::size_t largest_csv = std::size_t{4} << 20;

template <typename Row>
std::optional<CsvRead<Row>> rows_from(const Console &console, const std::string &path,
                                      CsvRead<Row> (*read)(std::string_view)) {
    const auto bytes = read_file(path, largest_csv);
    if (const auto *error = std::get_if<FileError>(&bytes)) {
        console.error(error->message);
        return {};
    }
    CsvRead<Row> result = read(std::get<std::string>(bytes));
    tell_errors(console, path, result.problems);
    tell_warnings(console, path, result.notices);
    return result;
}

} // namespace

void tell_errors(const Console &console, const std::string &path, const std::vector<CsvProblem> &lines) {
    for (const CsvProblem &line : lines)
        console.error_at(path, line.line, line.message);
}

void tell_warnings(const Console &console, const std::string &path, const std::vector<CsvProblem> &lines) {
    if (console.quiet) return;
    for (const CsvProblem &line : lines)
        std::fprintf(stderr, "%s:%d: warning: %s\n", path.c_str(), line.line, line.message.c_str());
}

std::optional<CsvRead<PileLog>> pile_from(const Console &console, const std::string &path) {
    return rows_from(console, path, read_pile);
}

std::optional<CsvRead<RecordedLog>> record_from(const Console &console, const std::string &path) {
    return rows_from(console, path, read_record);
}

} // namespace roundlay
