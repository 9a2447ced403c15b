// Works documents out on a thread of its own. The newest wins: what was asked for before is dropped unless it
// is under way.
#pragma once

#include "modeler/window/desk/model_cache.h"
#include "modeler/window/desk/state.h"

#include <QObject>
#include <condition_variable>
#include <mutex>
#include <optional>
#include <thread>

namespace roundlay::window {

/// Reads, lays out, cuts and reviews, in the calling thread.
StatePtr worked_out(const Document &document, quint64 revision, ModelCache &cache);

class Workshop : public QObject {
    Q_OBJECT
  public:
    explicit Workshop(QObject *parent = nullptr);
    ~Workshop() override;

    void ask_for(const Document &document, quint64 revision);

  signals:
    void worked(roundlay::window::StatePtr state); ///< in the thread of whoever connects

  private:
    struct Order {
        Document document;
        quint64 revision = 0;
    };
    void run();
    std::optional<Order> next();

    std::mutex mutex_;
    std::condition_variable ordered_;
    std::optional<Order> order_;
    bool closing_ = false;
    ModelCache cache_; ///< of the thread
    std::thread thread_;
};

} // namespace roundlay::window
