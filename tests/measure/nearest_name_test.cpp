#include "kernel/measure/nearest_name.h"
#include "tests/support/catch.h"

#include <rapidcheck.h>

using namespace roundlay;

TEST_CASE("changes between two words are counted as a person mistypes") {
    CHECK(changes_between("export", "export") == 0);
    CHECK(changes_between("exprot", "export") == 1); // two neighbours swapped
    CHECK(changes_between("chek", "check") == 1);
    CHECK(changes_between("liist", "list") == 1);
    CHECK(changes_between("kitten", "sitting") == 3); // the usual textbook pair
    CHECK(changes_between("", "abc") == 3);
}

TEST_CASE("the nearest name is offered only where it is near") {
    const std::vector<std::string> commands = {"new", "check", "list", "export", "picture"};
    CHECK(nearest_name("exprot", commands) == "export");
    CHECK(nearest_name("CHECK", commands) == "check");
    CHECK(nearest_name("pictures", commands) == "picture");
    CHECK_FALSE(nearest_name("zebra", commands));
    CHECK_FALSE(nearest_name("H", {"rectangle", "L", "T"})); // no letter of it is theirs
    CHECK(nearest_name("l", {"rectangle", "L", "T"}) == "L");
    CHECK_FALSE(nearest_name("", commands));
    CHECK_FALSE(nearest_name(std::string(100'000, 'x'), commands));
    CHECK_FALSE(nearest_name("x", {}));
}

TEST_CASE("the count of changes is symmetric and never over the longer word") {
    CHECK(rc::check([] {
        const auto word = rc::gen::container<std::string>(rc::gen::inRange('a', 'e'));
        const std::string a = *word, b = *word;
        RC_ASSERT(changes_between(a, b) == changes_between(b, a));
        RC_ASSERT(changes_between(a, b) <= static_cast<int>(std::max(a.size(), b.size())));
        RC_ASSERT((changes_between(a, b) == 0) == (a == b));
    }));
}
