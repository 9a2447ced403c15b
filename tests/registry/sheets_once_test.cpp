// What goes on paper is composed once for a job, and its picture drawn once, whoever asks: each exporter, one
// piece by itself, the window.

#include "exporters/registry/export_all.h"
#include "exporters/registry/make_picture.h"
#include "exporters/registry/one_piece.h"
#include "exporters/registry/paper.h"
#include "exporters/sheets/book/book.h"
#include "exporters/sheets/cut_sheet/cut_sheet.h"
#include "exporters/sheets/pdf/pdf.h"
#include "kernel/document/document.h"
#include "tests/support/catch.h"
#include "tests/support/temporary_folder.h"

using namespace roundlay;
using namespace roundlay::test;

namespace {

ExportJob job_of(const std::string &name) {
    const auto read = read_document_file(std::string(ROUNDLAY_ROOT) + "/models-demo/" + name + ".roundlay");
    REQUIRE(read.shell);
    return make_job(*read.shell);
}

void export_by(const ExportJob &job, const std::vector<std::string> &names) {
    const TemporaryFolder folder;
    std::vector<const Exporter *> exporters;
    for (const std::string &name : names)
        exporters.push_back(exporter_named(name));
    const auto outcome = export_all(job, exporters, folder.path() / "out", Progress::none());
    CHECK(std::holds_alternative<ExportReport>(outcome));
}

int sheets_in(const ExportJob &job) {
    return static_cast<int>(sheets::whole_set(job.layout).size());
}

} // namespace

TEST_CASE("each sheet is composed once for a job, however many files it goes into") {
    const ExportJob job = job_of("one-room");
    export_by(job, {"sheets"});
    CHECK(job.composed->compositions() == static_cast<int>(job.layout.models.size()) + 1);
    export_by(job, {"sheets", "drawings", "templates", "tags", "book"});
    CHECK(job.composed->compositions() == sheets_in(job));
    for (const auto piece : job.layout.pieces.indices())
        one_piece_pdf(job, piece);
    CHECK(job.composed->compositions() == sheets_in(job));
}

TEST_CASE("a copy of a job takes what was composed for it; on other paper all is composed anew") {
    ExportJob job = job_of("one-room");
    export_by(job, {"sheets"});
    ExportJob other = job;
    other.document = "renamed";
    export_by(other, {"sheets"});
    CHECK(job.composed->compositions() == static_cast<int>(job.layout.models.size()) + 1);
    other.options.paper = sheets::Paper::a4;
    export_by(other, {"sheets"});
    CHECK(job.composed->compositions() == 2 * (static_cast<int>(job.layout.models.size()) + 1));
    CHECK(cut_sheet_of(other, Index<Model>(0))->front().size == sheets::size_of(sheets::Paper::a4));
    CHECK(cut_sheet_of(job, Index<Model>(0))->front().size != sheets::size_of(sheets::Paper::a4));
}

TEST_CASE("the book shows the very picture that is exported by itself") {
    const ExportJob job = job_of("one-room");
    REQUIRE(std::holds_alternative<std::string>(make_picture(job)));
    export_by(job, {"picture", "book"});
    CHECK(job.pictures->count() == 1);
    ExportJob other = job;
    other.options.picture.width = 400;
    export_by(other, {"picture", "book"});
    CHECK(job.pictures->count() == 2); // the book is drawn for paper, whatever else is wanted
}

TEST_CASE("the sheet of one piece is the sheet of its model in the set") {
    const ExportJob job = job_of("round-cabin");
    const auto all = sheets_of(job, sheets::cut_sheet_set(job.layout), "cut sheets", Progress::none());
    REQUIRE(all.size() == job.layout.models.size());
    for (std::size_t model = 0; model < all.size(); ++model)
        CHECK(cut_sheet_of(job, Index<Model>(model)) == all[model]); // the very same, not drawn again
}
