// Works documents out on a thread of its own. The newest wins: what was asked for before is dropped unless it
// is under way.
#pragma once

#include "modeler/window/desk/model_cache.h"
#include "modeler/window/desk/state.h"

#include <QObject>
#include <chrono>
#include <condition_variable>
#include <functional>
#include <mutex>
#include <optional>
#include <thread>

namespace roundlay::window {

/// Reads, lays out, cuts and reviews, in the calling thread.
StatePtr worked_out(const SeenDocument &document, quint64 revision, ModelCache &cache);
/// The same without advice in what layout finds, which takes many layouts: for the steps of a drag.
StatePtr worked_out_in_drag(const SeenDocument &document, quint64 revision, ModelCache &cache);

using Worker = std::function<StatePtr(const SeenDocument &, quint64, ModelCache &)>;
/// What the worker makes; where it throws, a state that says so. Never throws itself.
StatePtr worked_out_safely(const Worker &worker, const SeenDocument &document, quint64 revision,
                           ModelCache &cache);

class Workshop : public QObject {
    Q_OBJECT
  public:
    explicit Workshop(Worker worker = worked_out, Worker in_drag = worked_out_in_drag);
    ~Workshop() override;

    void ask_for(const SeenDocument &document, quint64 revision, bool in_drag = false);
    /// Does anybody look at the order of the raise? Else it is not worked out: round logs take seconds.
    void want_order(bool wanted);

  signals:
    /// In the thread of whoever connects. A state that lacks bores or advice comes again with them, unless
    /// another is asked for.
    void worked(roundlay::window::StatePtr state);
    /// The order of the raise of the state that was worked out last is known now (SharedOrder).
    void ordered();

  private:
    struct Order {
        SeenDocument document;
        quint64 revision = 0;
        bool in_drag = false;
    };
    /// What is asked for: a document to be worked out, or else the order of the state that was the last.
    struct Task {
        std::optional<Order> order;
        StatePtr to_order;
    };
    void run();
    void work_out(const Order &order);
    std::optional<Task> next();
    bool is_asked_for_more(std::chrono::milliseconds within);
    void order_the_raise(const State &state, bool in_drag);
    void carve_bores(const Order &order, const StatePtr &state);
    StatePtr advised(const Order &order, const StatePtr &state);

    Worker worker_, in_drag_;
    std::mutex mutex_;
    std::condition_variable ordered_;
    std::optional<Order> order_;
    StatePtr last_, to_order_;
    bool wants_order_ = false, closing_ = false;
    ModelCache cache_; ///< of the thread
    std::thread thread_;
};

} // namespace roundlay::window
