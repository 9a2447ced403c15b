// Work shared out over the machine's cores.
#pragma once

#include <cstddef>
#include <functional>

namespace roundlay {

/// Calls work(0) to work(count - 1) on so many threads, the caller's own among them, each index once. The
/// first failure, by index, is thrown when all threads are done. `go_on` is asked in the caller's thread how
/// to go on when so many are done; after false no other is begun. Returns whether all were.
bool for_each_index(std::size_t count, int threads, const std::function<void(std::size_t)> &work,
                    const std::function<bool(std::size_t done)> &go_on = {});

/// As many as the machine has cores.
int all_cores();

} // namespace roundlay
