#include "kernel/threads/for_each_index.h"
#include "tests/support/catch.h"

#include <atomic>
#include <chrono>
#include <stdexcept>
#include <string>
#include <thread>
#include <vector>

using namespace roundlay;

TEST_CASE("each index is worked on once, on however many threads") {
    for (const int threads : {-1, 0, 1, 2, 7, 64})
        for (const std::size_t count : {0, 1, 2, 50}) {
            std::vector<std::atomic<int>> times(count);
            CHECK(for_each_index(count, threads, [&](std::size_t i) { ++times[i]; }));
            for (const std::atomic<int> &t : times)
                CHECK(t == 1);
        }
}

TEST_CASE("of several failures the first by index is told, and all the rest is done") {
    std::atomic<int> done = 0;
    std::string told;
    try {
        for_each_index(20, 4, [&](std::size_t i) {
            ++done;
            if (i == 3 || i == 12) throw std::runtime_error(std::to_string(i));
        });
    } catch (const std::runtime_error &failure) {
        told = failure.what();
    }
    CHECK(told == "3");
    CHECK(done == 20);
}

TEST_CASE("the caller is asked in its own thread and can stop") {
    const auto me = std::this_thread::get_id();
    std::atomic<int> begun = 0;
    bool elsewhere = false;
    const bool whole = for_each_index(
        1000, 3,
        [&](std::size_t) {
            ++begun;
            std::this_thread::sleep_for(std::chrono::milliseconds(1));
        },
        [&](std::size_t) {
            elsewhere = elsewhere || std::this_thread::get_id() != me;
            return begun < 5;
        });
    CHECK_FALSE(whole);
    CHECK_FALSE(elsewhere);
    CHECK(begun < 1000);
}
