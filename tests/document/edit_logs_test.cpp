#include "kernel/document/edit_logs.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

using namespace roundlay;

namespace {

Document small_document() {
    Shell shell = test::plain_shell();
    shell.own_logs.push_back({"B", 2, "IX", {Length::mm(240), {}, {}, {}, LogEnd::left}});
    return {write_document(shell), "hut.roundlay"};
}

OwnLog log(const std::string &wall, int round, const std::string &mark, double butt, double tip) {
    OwnLog log{wall, round, mark, {}};
    log.sizes.butt_height = Length::mm(butt);
    log.sizes.tip_height = Length::mm(tip);
    return log;
}

} // namespace

TEST_CASE("Logs are stated in the entry that is there, else in a new one, and the rest of the text stays") {
    const Document before = small_document();
    const auto edited = with_logs(before, {log("B", 2, "", 235, 220), log("A", 1, "7 \"old\"", 250, 230.5)},
                                  UnitSystem::metric);
    const Document &after = std::get<Document>(edited);
    const Shell shell = *after.read().shell;
    REQUIRE(shell.own_logs.size() == 2);
    CHECK(shell.own_logs[0].mark == "IX"); // not stated anew: stays
    CHECK(shell.own_logs[0].sizes.butt == LogEnd::left);
    CHECK(shell.own_logs[0].sizes.butt_height == Length::mm(235));
    CHECK(shell.own_logs[0].sizes.tip_height == Length::mm(220));
    CHECK(shell.own_logs[1] == log("A", 1, "7 \"old\"", 250, 230.5));
    CHECK(after.text().starts_with(before.text().substr(0, before.text().find("[[log]]"))));
    Shell without = shell, was = *before.read().shell;
    without.own_logs.clear(), was.own_logs.clear();
    CHECK(without == was);
}

TEST_CASE("Logs for a text that cannot be edited give the problem and no document") {
    const Document broken("[[log]\n", "broken.roundlay");
    CHECK(std::holds_alternative<Problem>(with_logs(broken, {log("A", 1, "", 1, 1)}, UnitSystem::metric)));
}
