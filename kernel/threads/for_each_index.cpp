#include "kernel/threads/for_each_index.h"

#include <algorithm>
#include <atomic>
#include <exception>
#include <system_error>
#include <thread>
#include <vector>

namespace roundlay {

namespace {

/// What the threads share.
struct Shared {
    std::size_t count;
    const std::function<void(std::size_t)> &work;
    std::vector<std::exception_ptr> failures;
    std::atomic<std::size_t> next = 0, done = 0;
    std::atomic<bool> stopped = false;

    /// Does one piece of work; false where there is none left.
    bool step() {
        const std::size_t i = stopped ? count : next++;
        if (i >= count) return false;
        try {
            work(i);
        } catch (...) {
            failures[i] = std::current_exception();
        }
        ++done;
        return true;
    }
};

} // namespace

bool for_each_index(std::size_t count, int threads, const std::function<void(std::size_t)> &work,
                    const std::function<bool(std::size_t done)> &go_on) {
    Shared shared{count, work, std::vector<std::exception_ptr>(count)};
    const auto may_go_on = [&] { return !go_on || go_on(shared.done); };
    {
        std::vector<std::jthread> others;
        const auto wanted = std::min(static_cast<std::size_t>(std::max(threads, 1)), count);
        const auto work_on = [&] {
            while (shared.step()) {
            }
        };
        try {
            for (std::size_t t = 1; t < wanted; ++t)
                others.emplace_back(work_on);
        } catch (const std::system_error &) { // the system gives no more threads: those there are will do
        }
        while (!(shared.stopped = !may_go_on()) && shared.step()) {
        }
    }
    for (const std::exception_ptr &failure : shared.failures)
        if (failure) std::rethrow_exception(failure);
    return shared.done == count;
}

int all_cores() {
    return std::max(1, static_cast<int>(std::thread::hardware_concurrency()));
}

} // namespace roundlay
