// Indices: each list has its own kind.
#include "kernel/layout/index.h"
#include "kernel/layout/layout.h"
#include "tests/support/catch.h"

#include <concepts>
#include <optional>
#include <stdexcept>
#include <string>
#include <vector>

using namespace roundlay;

namespace {

template <typename List, typename Place>
concept Answers = requires(List list, Place place) {
    list[place];
};

/// A list of things of one kind that also answers to the index of another.
template <typename List, typename Of, typename... Others>
constexpr bool answers_others = ((!std::same_as<Of, Others> && Answers<List, Index<Others>>) || ...);

/// By its own kind of index alone: by no other list's, by no number, and not by "none".
template <typename List, typename Of>
concept AnswersItsOwn =
    Answers<List, Index<Of>> && !Answers<List, std::optional<Index<Of>>> && !Answers<List, int> &&
    !Answers<List, std::size_t> &&
    !answers_others<List, Of, WallPlace, CornerPlace, Piece, Model, Timber, FloorPlace, Peg>;

} // namespace

TEST_CASE("An index is no number, and a number becomes one only where that is said") {
    STATIC_REQUIRE_FALSE(std::convertible_to<Index<Piece>, int>);
    STATIC_REQUIRE_FALSE(std::convertible_to<Index<Piece>, std::size_t>);
    STATIC_REQUIRE_FALSE(std::convertible_to<int, Index<Piece>>);
    STATIC_REQUIRE(std::constructible_from<Index<Piece>, int>);
    STATIC_REQUIRE_FALSE(std::equality_comparable_with<Index<Piece>, int>);
    STATIC_REQUIRE_FALSE(std::equality_comparable_with<Index<Piece>, Index<WallPlace>>);
    CHECK(Index<Piece>(7).at() == 7);
    CHECK(Index<Piece>(7).number() == 7);
    CHECK(Index<Piece>(6) < Index<Piece>(7));
}

TEST_CASE("Each list of a layout is asked by its own kind of index alone") {
    STATIC_REQUIRE(AnswersItsOwn<decltype(Layout::walls), WallPlace>);
    STATIC_REQUIRE(AnswersItsOwn<decltype(Layout::heights), WallPlace>);
    STATIC_REQUIRE(AnswersItsOwn<decltype(Layout::corners), CornerPlace>);
    STATIC_REQUIRE(AnswersItsOwn<decltype(Layout::pieces), Piece>);
    STATIC_REQUIRE(AnswersItsOwn<decltype(Layout::models), Model>);
    STATIC_REQUIRE(AnswersItsOwn<decltype(Layout::timbers), Timber>);
    STATIC_REQUIRE(AnswersItsOwn<decltype(Layout::floors), FloorPlace>);
    STATIC_REQUIRE(AnswersItsOwn<decltype(Layout::pegs), Peg>);
}

TEST_CASE("Where there is none, nothing can be subscripted with it") {
    STATIC_REQUIRE_FALSE(Answers<decltype(Layout::walls), decltype(wall_named(Plan(), ""))>);
    STATIC_REQUIRE_FALSE(Answers<decltype(Layout::walls), decltype(CornerPlace::runs_on)>);
    STATIC_REQUIRE_FALSE(Answers<decltype(Layout::timbers), decltype(Piece::timber)>);
    STATIC_REQUIRE_FALSE(Answers<decltype(Layout::timbers), decltype(TimberHold::carrier)>);
    STATIC_REQUIRE_FALSE(Answers<decltype(Layout::pegs), decltype(Bore::peg)>);
}

TEST_CASE("Indices are walked over from the first on, or from the one behind another") {
    const Indexed<std::string> list{"a", "b", "c"};
    std::string all, behind;
    for (const auto i : list.indices())
        all += list[i];
    for (const auto i : list.after(Index<std::string>(0)))
        behind += list[i];
    CHECK(all == "abc");
    CHECK(behind == "bc");
    CHECK(list.after(Index<std::string>(2)).size() == 0);
    CHECK(Indices<std::string>(2, 3).size() == 0);
    CHECK(list.index_of(list.begin() + 1) == Index<std::string>(1));
    CHECK(list.holds(Index<std::string>(2)));
    CHECK_FALSE(list.holds(Index<std::string>(3)));
    CHECK_THROWS_AS(list.at(Index<std::string>(3)), std::out_of_range);
}

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
