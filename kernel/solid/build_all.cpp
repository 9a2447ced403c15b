#include "kernel/solid/build_all.h"

#include <algorithm>
#include <atomic>
#include <exception>
#include <functional>
#include <stdexcept>
#include <thread>

namespace roundlay {

namespace {

/// Calls work(0) to work(count - 1). The first failure, by index, is thrown when all threads are done.
void for_each_index(std::size_t count, int threads, const std::function<void(std::size_t)> &work) {
    std::atomic<std::size_t> next = 0;
    std::vector<std::exception_ptr> failures(count);
    const auto run = [&] {
        for (std::size_t i = next++; i < count; i = next++) {
            try {
                work(i);
            } catch (...) {
                failures[i] = std::current_exception();
            }
        }
    };
    const auto wanted = static_cast<std::size_t>(std::max(threads, 1));
    std::vector<std::jthread> others;
    for (std::size_t t = 1; t < std::min(wanted, count); ++t)
        others.emplace_back(run);
    run();
    others.clear();
    for (const std::exception_ptr &failure : failures)
        if (failure) std::rethrow_exception(failure);
}

} // namespace

std::vector<BuiltSolid> build_all(const std::vector<Body> &bodies, int threads) {
    std::vector<BuiltSolid> solids(bodies.size());
    for_each_index(bodies.size(), threads, [&](std::size_t i) { solids[i] = build(bodies[i]); });
    return solids;
}

std::vector<BuiltSolid> build_all(const Layout &layout, int threads) {
    std::vector<BuiltSolid> solids(layout.models.size());
    for_each_index(solids.size(), threads, [&](std::size_t i) {
        const Piece &first = layout.pieces[static_cast<std::size_t>(layout.models[i].pieces.front())];
        try {
            solids[i] = build(body_of(first));
        } catch (const std::runtime_error &failure) {
            throw std::runtime_error("Piece " + first.tag + ": " + failure.what());
        }
    });
    return solids;
}

} // namespace roundlay
