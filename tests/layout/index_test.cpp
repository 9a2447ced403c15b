// Indices: each list has its own kind.
#include "kernel/layout/index.h"
#include "kernel/layout/piece.h"
#include "kernel/layout/walls.h"
#include "tests/support/catch.h"

#include <concepts>
#include <string>
#include <vector>

using namespace roundlay;

namespace {

template <typename List, typename Place>
concept Answers = requires(List list, Place place) {
    list[place];
};

} // namespace

TEST_CASE("An index of one list is none of another's") {
    STATIC_REQUIRE(std::convertible_to<Index<Piece>, Index<Piece>>);
    STATIC_REQUIRE_FALSE(std::convertible_to<Index<WallPlace>, Index<Piece>>);
    STATIC_REQUIRE_FALSE(std::constructible_from<Index<Piece>, Index<WallPlace>>);
    STATIC_REQUIRE_FALSE(std::assignable_from<Index<Piece> &, Index<WallPlace>>);
    using Tags = Indexed<std::string, Piece>;
    STATIC_REQUIRE(Answers<Tags, Index<Piece>>);
    STATIC_REQUIRE_FALSE(Answers<Tags, Index<WallPlace>>);
}

TEST_CASE("A list tells where it puts a thing, where the next one goes, and gives its indices in order") {
    Indexed<std::string> list;
    CHECK(list.empty());
    const auto first = list.push_back("first"), next = list.next(), second = list.push_back("second");
    CHECK(list[first] == "first");
    CHECK(next.at() == 1);
    CHECK(list[second] == "second");
    std::vector<std::size_t> places;
    for (const auto i : list.indices())
        places.push_back(i.at());
    CHECK(places == std::vector<std::size_t>{0, 1});
    CHECK(std::move(list).taken() == std::vector<std::string>{"first", "second"});
}
