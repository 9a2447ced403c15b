// Sheets that have been composed, for everybody who wants them: each subject once.
#pragma once

#include "exporters/sheets/set/subject.h"

#include <atomic>
#include <map>
#include <memory>
#include <mutex>

namespace roundlay::sheets {

/// Never changed once they are composed.
using SharedSheets = std::shared_ptr<const std::vector<Sheet>>;

/// Belongs to one shell that is worked out: drafts may differ in paper, date and language, and in nothing
/// else. All of it may be asked by several threads at once.
class ComposedSheets {
  public:
    /// Composes the subject where nobody has yet; waits where somebody is at it. What composing throws is
    /// thrown, and the next to ask tries again.
    SharedSheets of(const Subject &subject, const Draft &draft);

    /// How many times a subject has been composed.
    int compositions() const { return compositions_; }

  private:
    struct Slot {
        std::once_flag once;
        SharedSheets sheets;
    };
    std::shared_ptr<Slot> slot(const std::string &name);

    std::mutex mutex_;
    std::map<std::string, std::shared_ptr<Slot>> slots_;
    std::atomic<int> compositions_ = 0;
};

/// Told in the caller's own thread how many subjects are done; false stops before the next.
using GoOn = std::function<bool(std::size_t done)>;

/// Composes the set on so many threads. In the order of the set; empty where it was stopped.
std::vector<SharedSheets> composed(const SheetSet &set, const Draft &draft, ComposedSheets &known,
                                   int threads, const GoOn &go_on);

} // namespace roundlay::sheets
