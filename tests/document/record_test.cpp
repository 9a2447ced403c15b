// The record of a house that stands, in its document.
#include "kernel/document/document.h"
#include "kernel/document/restate.h"
#include "tests/document/any_statement.h"
#include "tests/document/sample.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <algorithm>
#include <string>

using namespace roundlay;
using roundlay::test::sample;

namespace {

const std::string survey = R"(
[record] # by hand
by = "R. Hale"
denominator = 4

[[record.level]]
name = "L1"

[[record.corner]]
name = "NE"
walls = ["A", "B"]
level = "-0.0.2"
plane = "L1"

[[found]]
zero = "NE"
tag = "A 1.1"
wall = "A"
round = 1
length = "16.2.1" # over all
end = [
  { corner = "NE", height = "0.11.2", shoulder_outside = "0.9.0" }, # tight
  { corner = "NW", height = { note = "0.10.0", is = "proposed", pencil = "red" } }
]
zone = [{ what = "rotten", from = "0", to = "2.4.0", faces = ["outside", "Under"] }]

[[found]]
tag = "A 1.2"
)";

Document surveyed(const std::string &more = "") {
    return {sample + survey + more, "x.roundlay"};
}

std::string told(const Document::Edited &edited) {
    if (const auto *problem = std::get_if<Problem>(&edited)) RC_FAIL("refused: " + problem->message);
    return std::get<Document>(edited).text();
}

/// Those of a document whose `line` stands where another stood.
Problems problems_with(const std::string &was, const std::string &line) {
    std::string text = surveyed().text();
    text.replace(text.find(was), was.size(), line);
    return read_document(text, "x.roundlay").problems;
}

void check_told(const std::string &was, const std::string &line, Weight weight, const std::string &message) {
    INFO(line);
    Problems problems = problems_with(was, line);
    std::erase_if(problems,
                  [](const Problem &p) { return p.message.find("\"pencil\"") != std::string::npos; });
    REQUIRE(problems.size() == 1);
    CHECK(problems[0].weight == weight);
    CHECK_THAT(problems[0].message, Catch::Matchers::StartsWith(message));
    const std::string text = surveyed().text();
    const auto before = text.begin() + static_cast<std::ptrdiff_t>(text.find(was));
    CHECK(problems[0].place.line >= std::count(text.begin(), before, '\n')); // or its header, one above
}

} // namespace

TEST_CASE("A record is read as it was noted, beside the shell") {
    const ReadResult read = surveyed().read();
    REQUIRE(read.shell);
    CHECK(*read.shell == *read_document(sample, "x").shell);
    REQUIRE(read.record.logs.size() == 2);
    const FoundLog &log = read.record.logs[0];
    CHECK(log.length.written == "16.2.1");
    CHECK(log.length.value == Length::inches(194.25));
    CHECK(log.ends[1].height.certainty == Certainty::proposed);
    CHECK(log.zones[0].faces == std::vector{FoundFace::outside, FoundFace::under});
    CHECK(read.record.corners[0].level.value == Length::inches(-0.5));
    REQUIRE(read.problems.size() == 1); // the key that nobody knows
    CHECK(read.problems[0].message == "\"pencil\" is not known here and is not used");
}

TEST_CASE("A document without a record reads and writes as it did") {
    CHECK(read_document(sample, "x").record == Record());
    const std::string text = write_document(test::plain_shell());
    CHECK(text.find("record") == std::string::npos);
    CHECK(text.find("found") == std::string::npos);
}

TEST_CASE("Bounds and contradictions of a record are told at their place") {
    check_told("length = \"16.2.1\"", "length = \"16.12.1\"", Weight::error,
               "the second field of \"16.12.1\" is inches and not under 12");
    check_told("length = \"16.2.1\"", "length = \"16.2\"", Weight::warning, "\"16.2\" has two fields");
    check_told("length = \"16.2.1\"", "length = 16", Weight::error, "\"length\" cannot be a number");
    check_told("length = \"16.2.1\"", "length = \"1.2.1\"", Weight::warning,
               "\"2.4.0\" lies past the end of the log, which is \"1.2.1\" long");
    check_told("denominator = 4", "denominator = 12", Weight::error,
               "a sheet counts quarters, eighths or sixteenths");
    check_told("tag = \"A 1.2\"", "tag = \"A 1.1\"", Weight::error, "two logs have the tag \"A 1.1\"");
    check_told("tag = \"A 1.2\"", "wall = \"A\"", Weight::error, "\"tag\" is missing in this [[found]]");
    check_told("tag = \"A 1.2\"", "tag = \"A 1.2\"\nreplaces = \"A 1.3\"", Weight::error,
               "no log of the record has the tag \"A 1.3\"");
    check_told("wall = \"A\"\nround = 1\nlength", "wall = \"Annex\"\nround = 1\nlength", Weight::warning,
               "there is no wall \"Annex\"");
    check_told("faces = [\"outside\", \"Under\"]", "faces = [\"out side\"]", Weight::error,
               "\"faces\" cannot be \"out side\"");
    check_told("is = \"proposed\"", "is = \"guessed\"", Weight::error, "\"is\" cannot be \"guessed\"");
    check_told("plane = \"L1\"", "plane = \"L2\"", Weight::warning,
               "no level plane of the record is called \"L2\"");
    check_told("wall = \"A\"\nround = 1\nlength", "wall = \"A\"\nround = 77\nlength", Weight::warning,
               "the shell has 5 rounds, and log \"A 1.1\" is noted in round 77");
    check_told("tag = \"A 1.2\"",
               "tag = \"A 1.2\"\nmoisture = [{ percent = 412, season = \"summer\", depth = \"1 in\" }]",
               Weight::error, "\"percent\" of moisture 1 of log \"A 1.2\" is out of bounds");
    check_told("from = \"0\"", "from = \"-3.10.1\"", Weight::error, // noted in feet, told in feet
               "\"-3.10.1\" is not from 0 to 328' 1\": look at the sheet again");
    check_told("zero = \"NE\"", "butt = \"NE\"", Weight::warning,
               "places along log \"A 1.1\" were noted (zones), and not from which corner");
    check_told("from = \"0\"", "from = \"1\"", Weight::warning, "\"1\" has no unit and its sheet none");
}

TEST_CASE("What a record says against itself is told as a value as well, for other languages") {
    std::string text = surveyed().text();
    text.replace(text.find("from = \"0\""), 10, "from = \"-3.10.1\"");
    const Problems problems = read_document(text, "x").problems;
    const auto told = std::ranges::find_if(problems, [](const Problem &p) { return p.said.has_value(); });
    REQUIRE(told != problems.end());
    CHECK(told->said->text == "%1 is not from 0 to %2: look at the sheet again");
    CHECK(std::get<std::string>(told->said->amounts[0].value()) == "\"-3.10.1\""); // as the message has it
    CHECK(std::holds_alternative<LengthAmount>(told->said->amounts[1].value()));
    CHECK(told->units == UnitSystem::imperial); // noted in feet, told in feet
    for (const Problem &p : problems)           // what the reader itself finds is no value
        CHECK((p.said.has_value() || p.message == "\"pencil\" is not known here and is not used"));
}

TEST_CASE("A log in the round over the last is where a wall starts with a half log") {
    std::string text = surveyed().text();
    text.replace(text.find("round = 1\nlength"), 9, "round = 6");
    for (const Problem &p : read_document(text, "x").problems)
        CHECK(p.message == "\"pencil\" is not known here and is not used");
}

TEST_CASE("Where no number stands nothing is said of it") {
    std::string text = surveyed().text();
    text.replace(text.find("\"16.2.1\""), 8, "{ note = \"\", by = \"R. Hale\" }");
    const ReadResult read = read_document(text, "x");
    REQUIRE(read.shell);
    CHECK(read.record.logs[0].length == NotedLength());
    CHECK(read_document(write_document(*read.shell, read.record), "x").record == read.record);
}

TEST_CASE("Any record becomes a document and the same record again") {
    CHECK(rc::check([] {
        const Record record = test::any_record();
        const std::string text = write_document(test::plain_shell(), record);
        const ReadResult read = read_document(text, "x");
        for (const Problem &problem : read.problems)
            if (problem.weight == Weight::error) RC_FAIL(to_text(problem) + "\n" + text);
        RC_ASSERT(read.record == record);
        RC_ASSERT(write_document(*read.shell, read.record) == text);
    }));
}

TEST_CASE("Any record becomes any other in its document, and the shell stays") {
    CHECK(rc::check([] {
        const Record before = test::any_record(), after = test::any_record();
        const Shell shell = test::plain_shell();
        const std::string text = write_document(shell, before);
        const std::string next = told(restated(Document(text, "x"), before, after));
        const ReadResult read = read_document(next, "x");
        for (const Problem &problem : read.problems)
            if (problem.weight == Weight::error) RC_FAIL(to_text(problem) + "\n" + next);
        RC_ASSERT(read.record == after);
        RC_ASSERT(*read.shell == *read_document(text, "x").shell);
        RC_ASSERT(told(restated(Document(next, "x"), after, after)) == next);
    }));
}

TEST_CASE("What a person has written stays beside what is edited") {
    const Document document = surveyed();
    const Record before = document.read().record;
    Record after = before;
    after.logs[0].ends[1].height.written = "0.10.2";
    after.logs[0].zones.push_back({.what = Soundness::soft, .from = {.written = "8.0.0"}});
    const std::string text = told(restated(document, before, after));
    std::string expected = document.text();
    const auto put = [&](const std::string &was, const std::string &is) {
        expected.replace(expected.find(was), was.size(), is);
    };
    put("note = \"0.10.0\"", "note = \"0.10.2\"");
    put("\"Under\"] }]", "\"Under\"] }, { what = \"soft\", from = \"8.0.0\" }]");
    CHECK(text == expected);

    after = before;
    after.logs[0].ends[1].height.certainty = Certainty::measured;
    CHECK_THAT(told(restated(document, before, after)),
               ContainsSubstring("{ note = \"0.10.0\", pencil = \"red\" }"));
}

TEST_CASE("A log is known by its tag when others come and go") {
    const Document document = surveyed("mass = 5 # nobody knows this key\n");
    const Record before = document.read().record;
    Record after = before;
    after.logs.erase(after.logs.begin());
    after.logs.push_back({.tag = "B 1.1"});
    const std::string text = told(restated(document, before, after));
    CHECK_THAT(text, ContainsSubstring(
                         "tag = \"A 1.2\"\nmass = 5 # nobody knows this key\n\n[[found]]\ntag = \"B 1.1\""));
    CHECK(Document(text, "x").read().record == after);
}

TEST_CASE("A remark stays beside its entry when another one comes behind it") {
    const Document document = surveyed("peg = [\n  { state = \"found\" } # oak\n]\n");
    const Record before = document.read().record;
    Record after = before;
    after.logs[1].pegs.push_back({.state = PegState::broken});
    const std::string text = told(restated(document, before, after));
    CHECK_THAT(text,
               ContainsSubstring("peg = [\n  { state = \"found\" }, # oak\n  { state = \"broken\" },\n]\n"));
    after.logs[1].pegs.pop_back();
    after.logs[1].pegs.push_back({.note = "pine"});
    Record none = before;
    none.logs[1].pegs.clear();
    CHECK(Document(told(restated(Document(text, "x"), Document(text, "x").read().record, none)), "x")
              .read()
              .record == none);
}

TEST_CASE("Parts of a record come into a text that has only others of them") {
    const Document document(sample + "[[record.sheet]]\nname = \"3\"\n", "x");
    const Record before = document.read().record;
    Record after = before;
    after.by = "R. Hale";
    after.planes = {{"L1", {}, "", ""}};
    const std::string text = told(restated(document, before, after));
    INFO(text);
    CHECK(Document(text, "x").read().record == after);
}

TEST_CASE("what is done is read, warned of where it stands twice, and never refused for its tags") {
    const Document document =
        surveyed("\n[[done]]\nwhat = \"up\"\npieces = [\"A-01-1\", \"gone\"]\non = \"some "
                 "day in May\"\n\n[[done]]\nwhat = \"up\"\npieces = [\"gone\"]\n");
    const ReadResult read = document.read();
    REQUIRE(read.shell);
    REQUIRE(read.record.done.size() == 2);
    CHECK(read.record.done[0] == Done{Deed::up, {"A-01-1", "gone"}, "", "", "some day in May", ""});
    REQUIRE(read.problems.size() == surveyed().read().problems.size() + 1);
    CHECK_THAT(read.problems.back().message, ContainsSubstring("is ticked twice for the same thing"));
    CHECK_FALSE(surveyed("\n[[done]]\npieces = [\"A-01-1\"]\n").read().shell);
    CHECK_FALSE(surveyed("\n[[done]]\nwhat = \"up\"\n").read().shell);
    CHECK_FALSE(surveyed("\n[[done]]\nwhat = \"uq\"\npieces = [\"A-01-1\"]\n").read().shell);
}

TEST_CASE("a tick is stated into the text that a person wrote, and taken out again") {
    const Document document = surveyed();
    const Record before = document.read().record;
    Record after = before;
    (void)tick(after.done, {Deed::up, {"A-01-1"}, "", "", "2 May", ""});
    const std::string text = told(restated(document, before, after));
    CHECK_THAT(text,
               ContainsSubstring("by hand") &&
                   ContainsSubstring("[[done]]\nwhat = \"up\"\npieces = [\"A-01-1\"]\non = \"2 May\"\n"));
    const Document ticked(text, "x.roundlay");
    Record more = after;
    (void)tick(more.done, {Deed::up, {"B-01-1"}, "", "", "2 May", ""});
    const std::string longer = told(restated(ticked, after, more));
    CHECK(Document(longer, "x.roundlay").read().record.done == more.done);
    CHECK(Document(told(restated(Document(longer, "x.roundlay"), more, before)), "x").read().record ==
          before);
}
