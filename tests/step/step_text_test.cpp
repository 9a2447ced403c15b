// The bytes of STEP files: what may be in them, and that they are always the same.
#include "exporters/step/step.h"
#include "tests/step/other_process.h"
#include "tests/step/samples.h"
#include "tests/support/catch.h"
#include "tests/support/temporary_folder.h"

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <thread>

using namespace roundlay;

namespace {

constexpr std::int64_t some_time = 1764054000; // 2025-11-25 07:00:00 UTC, by date(1)

std::string header_line(const std::string &file, const std::string &entity) {
    const std::size_t from = file.find(entity);
    return file.substr(from, file.find('\n', from) - from);
}

/// Sets an environment variable for as long as it lives.
class Environment {
  public:
    Environment(const char *name, const char *value) : name_(name) { ::setenv(name, value, 1); }
    ~Environment() { ::unsetenv(name_); }
    Environment(const Environment &) = delete;
    Environment &operator=(const Environment &) = delete;

  private:
    const char *name_;
};

} // namespace

TEST_CASE("Every file is printable ASCII and line feeds") {
    for (const test::StepSample &sample : test::step_samples()) {
        INFO(sample.name);
        const std::string bytes = sample.write();
        CHECK(std::all_of(bytes.begin(), bytes.end(),
                          [](char c) { return c == '\n' || (c >= 0x20 && c <= 0x7e); }));
    }
}

TEST_CASE("Two processes write the same bytes") {
    const Environment epoch("SOURCE_DATE_EPOCH", "1764054000");
    const test::TemporaryFolder first, second;
    test::output_of(std::string(WRITE_SAMPLES) + " " + first.path().string());
    test::output_of(std::string(WRITE_SAMPLES) + " " + second.path().string());
    std::size_t compared = 0;
    for (const auto &entry : std::filesystem::directory_iterator(first.path())) {
        INFO(entry.path());
        const std::string bytes = test::text_of(entry.path());
        CHECK(bytes == test::text_of(second / entry.path().filename().string()));
        CHECK(bytes.find("2025-11-25T07:00:00Z") != std::string::npos);
        ++compared;
    }
    CHECK(compared == test::step_samples().size());
}

TEST_CASE("Threads that write at once write the same bytes, by either way") {
    for (const char *name : {"rectangle", "library"}) {
        test::StepSample sample = test::step_sample(name);
        sample.options.seconds = some_time;
        const std::string alone = sample.write();
        std::vector<std::string> at_once(4);
        {
            std::vector<std::jthread> threads;
            for (std::string &bytes : at_once)
                threads.emplace_back([&] { bytes = sample.write(); });
        }
        for (const std::string &bytes : at_once)
            CHECK(bytes == alone);
    }
}

TEST_CASE("The header says what, when, who and by which program") {
    test::StepSample sample = test::step_sample("rectangle");
    sample.options.seconds = some_time;
    const std::string bare = sample.write();
    CHECK(header_line(bare, "FILE_NAME") ==
          "FILE_NAME('Birch Hollow','2025-11-25T07:00:00Z',(''),(''),'roundlay " ROUNDLAY_VERSION
          "','roundlay " ROUNDLAY_VERSION "','');");
    CHECK(header_line(bare, "FILE_SCHEMA") ==
          "FILE_SCHEMA(('AUTOMOTIVE_DESIGN { 1 0 10303 214 1 1 1 1 }'));");
    sample.shell.project = {"2031", "Log & Son", "A. Hewer", "B. Adze", "C"};
    const std::string told = sample.write();
    CHECK(header_line(told, "FILE_NAME").find(",('A. Hewer'),('Log & Son'),") != std::string::npos);
    CHECK(header_line(told, "FILE_NAME").ends_with(",'B. Adze');"));
    CHECK(header_line(told, "FILE_DESCRIPTION").find(",'project 2031'),") != std::string::npos);
    CHECK(told.find("PRODUCT_DEFINITION_FORMATION('C','',") != std::string::npos);
    CHECK(bare.find("PRODUCT_DEFINITION_FORMATION('','',") != std::string::npos);
}

TEST_CASE("SOURCE_DATE_EPOCH is the time where none is stated, and refused where it is no number") {
    const test::StepSample sample = test::step_sample("piece");
    {
        const Environment epoch("SOURCE_DATE_EPOCH", "951782400"); // 2000-02-29, a leap day of a leap century
        CHECK(header_line(sample.write(), "FILE_NAME").find("'2000-02-29T00:00:00Z'") != std::string::npos);
    }
    for (const char *wrong : {"yesterday", "12x", "-5", "99999999999999"}) {
        const Environment epoch("SOURCE_DATE_EPOCH", wrong);
        CHECK_THROWS_AS(sample.write(), std::runtime_error);
    }
}

TEST_CASE("Equal pieces share a product, distinct ones do not") {
    const test::StepSample sample = test::step_sample("alike");
    const std::string bytes = sample.write();
    const auto count = [&](const std::string &what) {
        std::size_t found = 0;
        for (std::size_t at = bytes.find(what); at != std::string::npos; at = bytes.find(what, at + 1))
            ++found;
        return found;
    };
    CHECK(count("=MANIFOLD_SOLID_BREP(") == 2);
    CHECK(count("=NEXT_ASSEMBLY_USAGE_OCCURRENCE(") == 8 + 4);
    CHECK(count("=PRODUCT(") == 2 + 4 + 1);
    CHECK(count("=PRODUCT('BIRCH-HOLLOW-A-01-1','A-01-1','4 alike: A-01-1 A-02-1 C-01-1 C-02-1',") == 1);
}

TEST_CASE("One file is written for each distinct piece, in the order of the models") {
    const test::StepSample sample = test::step_sample("openings");
    StepOptions options;
    options.seconds = some_time;
    const std::vector<PieceStep> files = write_piece_steps(sample.shell, sample.layout, options);
    REQUIRE(files.size() == sample.layout.models.size());
    for (std::size_t m = 0; m < files.size(); ++m) {
        const Piece &first = sample.layout.pieces[sample.layout.models[Index<Model>(m)].pieces.front()];
        CHECK(files[m].tag == first.tag);
        CHECK(files[m].bytes.find("=PRODUCT('" + first.tag + "','" + first.tag + "',") != std::string::npos);
        CHECK(files[m].bytes.find("=MANIFOLD_SOLID_BREP('" + first.tag + "',") != std::string::npos);
    }
}

TEST_CASE("What cannot be written is refused with a sentence") {
    test::StepSample sample = test::step_sample("alike");
    CHECK_THROWS_AS(write_shell_step(sample.shell, Layout{}, Bodies{}), std::invalid_argument);
    CHECK_THROWS_AS(write_shell_step(sample.shell, sample.layout, Bodies{}), std::invalid_argument);
}
