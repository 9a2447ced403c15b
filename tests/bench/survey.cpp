// How long it takes to take in a table of found logs, beside reading a document that holds them all.
#include "kernel/document/document.h"
#include "kernel/document/restate.h"
#include "kernel/survey/survey_sheet.h"
#include "tests/bench/shells.h"

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <functional>
#include <string>

using namespace roundlay;

namespace {

double time_of(const std::function<void()> &work) {
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count();
}

/// A row for each log, two for its ends, and pegs and zones: ten rows each.
std::string table(int rows) {
    std::string csv = "tag,row,wall,round,length,corner,height,width,at,state,what\r\n";
    for (int i = 0; i < rows; ++i) {
        const std::string tag = "L " + std::to_string(i / 10 + 1);
        switch (i % 10) {
        case 0:
            csv += tag + ",log,A," + std::to_string(i / 10 % 200 + 1) + ",6215 mm,,,,,,\r\n";
            break;
        case 1:
        case 2:
            csv += tag + ",end,,,," + (i % 10 == 1 ? "NE" : "NW") + ",231 mm,152 mm,,,\r\n";
            break;
        case 3:
        case 4:
            csv += tag + ",zone,,,,,,,,,rotten\r\n";
            break;
        default:
            csv += tag + ",peg,,,,,,," + std::to_string(i % 10 * 600) + " mm,found,\r\n";
        }
    }
    return csv;
}

} // namespace

int main(int argc, char **argv) {
    const int rows = argc > 1 ? std::atoi(argv[1]) : 5000;
    const Shell shell = bench::house();
    const std::string csv = table(rows), plain = write_document(shell);
    SurveyRead read, of_sheet;
    const double reading = time_of([&] { read = read_survey(csv, shell, {}); });
    std::string xlsx;
    const double writing = time_of([&] { xlsx = survey_xlsx(survey_table(read.record, {}), "bench", 0); });
    const double unpacking = time_of([&] { of_sheet = read_survey(xlsx, shell, {}); });
    Document made;
    const double stating = time_of(
        [&] { made = std::get<Document>(restated(Document(plain, "bench"), Record(), read.record)); });
    const double again = time_of([&] { (void)made.read(); });
    Record filled = read.record;
    for (FoundLog &log : filled.logs)
        log.ends[0].overhang.written = "20 mm", log.species = "pine", log.note = "seen";
    const double filling = time_of([&] { (void)restated(made, read.record, filled); });
    std::printf("%d rows, %zu logs, %zu problems; the document with them is read in %.1f ms\n", rows,
                read.record.logs.size(), read.problems.size(), again);
    std::printf("  rows read            %8.1f ms, %5.1f times that\n", reading, reading / again);
    std::printf("  written as XLSX      %8.1f ms\n", writing);
    std::printf("  read from XLSX       %8.1f ms, %zu problems\n", unpacking, of_sheet.problems.size());
    std::printf("  stated in a document %8.1f ms, %5.1f times that\n", stating, stating / again);
    std::printf("  three more of each   %8.1f ms, %5.1f times that\n", filling, filling / again);
    return read.problems.empty() ? EXIT_SUCCESS : EXIT_FAILURE;
}
