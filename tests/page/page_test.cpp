// The page as a value and as a file. That it can be used is for tests/external/page.
#include "exporters/lists/found_words.h"
#include "exporters/page/yard.h"
#include "kernel/layout/lay_out.h"
#include "kernel/stock/piece_stock.h"
#include "tests/support/any_mends.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <nlohmann/json.hpp>
#include <rapidcheck.h>

#include <map>
#include <set>

using namespace roundlay;
using namespace roundlay::test;
using Json = nlohmann::json;

namespace {

struct Told {
    Shell shell;
    Layout layout;
    Bodies bodies;
    Ticked ticked;
    Yard yard;
};

Told told(Shell shell, const Record &record = {}, Language language = Language::english) {
    Told all{std::move(shell), {}, {}, {}, {}};
    all.layout = lay_out(all.shell);
    REQUIRE_FALSE(has_errors(all.layout.findings));
    for (const Model &model : all.layout.models)
        all.bodies.push_back(body_of(all.layout.pieces[model.pieces.front()]));
    CutList list = collect_cut_list(all.shell, all.layout, volumes_of(all.bodies), language);
    tell_found(list, record, all.layout);
    all.ticked = ticked_of(record, all.layout, all.shell.state);
    all.yard = yard_of({all.shell, all.layout, all.bodies, list, all.layout.findings, all.ticked});
    return all;
}

/// What stands in the page between that and the next of that.
std::string between(const std::string &page, const std::string &begin, const std::string &end) {
    const std::size_t from = page.find(begin);
    REQUIRE(from != std::string::npos);
    const std::size_t to = page.find(end, from + begin.size());
    REQUIRE(to != std::string::npos);
    return page.substr(from + begin.size(), to - from - begin.size());
}

Json words_in(const std::string &page) {
    return Json::parse(between(page, R"(<script type="application/json" id="words">)", "</script>"));
}

std::size_t count(const std::string &text, const std::string &what) {
    std::size_t number = 0;
    for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what, at + 1))
        ++number;
    return number;
}

const YardLine *line_called(const YardLog &log, const std::string &name) {
    for (const YardLine &line : log.lines)
        if (line.name == name) return &line;
    return nullptr;
}

} // namespace

TEST_CASE("every log is told once, and raised once, what it rests on before it") {
    const Told all = told(floored());
    REQUIRE(all.yard.logs.size() == all.layout.pieces.size());
    std::map<std::string, std::size_t> step_of;
    for (std::size_t step = 0; step < all.yard.steps.size(); ++step)
        for (const Index<YardLog> log : all.yard.steps[step].logs)
            CHECK(step_of.try_emplace(all.yard.logs[log].tag, step).second);
    CHECK(step_of.size() == all.layout.pieces.size());
    for (const Piece &piece : all.layout.pieces)
        for (const std::string &below : piece.below) {
            INFO(piece.tag << " on " << below);
            CHECK(step_of.at(below) < step_of.at(piece.tag));
        }
}

TEST_CASE("no weight is told without its caution, and none where it is not known") {
    Shell shell = floored();
    const auto with_weight = told(shell);
    for (const YardLog &log : with_weight.yard.logs) {
        INFO(log.tag);
        const YardLine *weight = line_called(log, "Weight, estimated");
        REQUIRE(weight);
        CHECK_THAT(weight->words, ContainsSubstring(" to "));
        const YardLine *caution = line_called(log, "Caution");
        REQUIRE(caution);
        CHECK_THAT(caution->words, ContainsSubstring("no lift plan"));
        REQUIRE(line_called(log, "Weights rest on"));
    }
    CHECK_THAT(with_weight.yard.caution,
               ContainsSubstring("no lift plan") && ContainsSubstring("geometry alone"));
    shell.wood.species = "bog oak of no table";
    for (const YardLog &log : told(shell).yard.logs) {
        REQUIRE(line_called(log, "Weight, estimated"));
        CHECK_THAT(line_called(log, "Weight, estimated")->words, ContainsSubstring("no weight: "));
        CHECK_FALSE(line_called(log, "Round log weighs, estimated"));
    }
}

TEST_CASE("new wood goes up in its log, and the lift is both") {
    Shell shell = plain_shell();
    const Layout whole = lay_out(shell);
    bool any = false;
    CHECK(rc::check("mended", [&] {
        MendsDrawn drawn;
        const Told all = told(with_any_mends(shell, whole, 3, drawn));
        for (const YardStep &step : all.yard.steps)
            for (const Index<YardLog> log : step.logs) {
                const Index<Piece> piece(log.at());
                RC_ASSERT(log_with(all.layout.pieces, piece).number() == step.logs.front().number());
                any = any || step.logs.size() > 1;
                RC_ASSERT((step.lift.find("with its new wood") != std::string::npos) ==
                          (step.logs.size() > 1));
            }
    }));
    CHECK(any);
}

TEST_CASE("what is ticked as up is told, and how far the raise has come") {
    const Told before = told(plain_shell());
    Record record;
    const std::size_t up = 3;
    std::vector<std::string> tags;
    for (std::size_t step = 0; step < up; ++step)
        tags.push_back(before.yard.logs[before.yard.steps[step].logs.front()].tag);
    record.done = {{Deed::up, tags, "", "R. Hale", "2026-05-01", ""}};
    const Told all = told(plain_shell(), record);
    CHECK(all.yard.up == up);
    const YardLine *line = line_called(all.yard.logs[all.yard.steps[1].logs.front()], "Up");
    REQUIRE(line);
    CHECK_THAT(line->words, ContainsSubstring("R. Hale"));
    CHECK_FALSE(line_called(all.yard.logs[all.yard.steps[up].logs.front()], "Up"));
}

TEST_CASE("the same shell gives the same bytes") {
    CHECK(write_page(told(floored()).yard) == write_page(told(floored()).yard));
}

TEST_CASE("whatever things are called, nothing of it becomes a part of the page") {
    const std::string name = "</script><script>1</script><!-- \" ' & \\ / \xE6\x97\xA5 \xFF";
    Shell shell = plain_shell();
    shell.name = name;
    Told all = told(shell);
    all.yard.logs[Index<YardLog>(0)].lines.push_back({"Note", name, {}});
    const std::string page = write_page(all.yard), plain = write_page(told(plain_shell()).yard);
    for (const char *tag : {"<script", "</script", "<!--", "<title", "</title"})
        CHECK(count(page, tag) == count(plain, tag));
    const Json words = words_in(page);
    CHECK_THAT(words["name"].get<std::string>(),
               ContainsSubstring("</script><script>1</script><!-- \" ' & \\ / \xE6\x97\xA5"));
    CHECK_THAT(between(page, "<title>", "</title>"),
               ContainsSubstring("&lt;/script&gt;&lt;script&gt;1&lt;/script&gt;&lt;!-- &quot; &#39; &amp;"));
}

TEST_CASE(
    "nothing is fetched: no address stands in the page, and its policy forbids all but its own script") {
    const std::string page = write_page(told(floored()).yard);
    CHECK(count(page, "http://") == 1); // the name of SVG, which is asked of nobody
    CHECK(count(page, "http://www.w3.org/2000/svg") == 1);
    CHECK(count(page, "https://") == 0);
    CHECK(count(page, " src=") == 0);
    CHECK(count(page, "<link") == 0);
    const std::string policy = between(page, "Content-Security-Policy\" content=\"", "\">");
    CHECK(policy.rfind("default-src 'none'; script-src 'sha256-", 0) == 0);
    CHECK(count(policy, "unsafe") == 0);
    CHECK(count(policy, "http") == 0);
}

TEST_CASE("a page in French says its words in French") {
    const Told all = told(plain_shell(), {}, Language::french), english = told(plain_shell());
    CHECK(all.yard.language == "fr");
    REQUIRE(all.yard.labels.size() == english.yard.labels.size());
    for (std::size_t i = 0; i < all.yard.labels.size(); ++i) {
        INFO(all.yard.labels[i].key);
        CHECK(all.yard.labels[i].words != english.yard.labels[i].words);
        CHECK(count(all.yard.labels[i].words, "%1") == count(english.yard.labels[i].words, "%1"));
        CHECK(count(all.yard.labels[i].words, "%2") == count(english.yard.labels[i].words, "%2"));
    }
}

TEST_CASE("the page's script asks for no label that is not there") {
    const Told all = told(plain_shell());
    const std::string page = write_page(all.yard);
    std::set<std::string> keys;
    for (const YardLabel &label : all.yard.labels)
        keys.insert(label.key);
    for (const std::string &key : keys) {
        INFO(key);
        CHECK(count(page, '"' + key + '"') > 1); // where it is told, and where it is asked for
    }
    for (std::size_t at = page.find(" say(\""); at != std::string::npos; at = page.find(" say(\"", at + 1)) {
        const std::size_t begin = at + 6;
        CHECK(keys.contains(page.substr(begin, page.find('"', begin) - begin)));
    }
}

TEST_CASE("lists that do not fit each other make no page") {
    Told all = told(plain_shell());
    all.yard.logs[Index<YardLog>(0)].model = Index<Model>(all.yard.meshes.size());
    CHECK_THROWS_AS(write_page(all.yard), std::logic_error);
}
