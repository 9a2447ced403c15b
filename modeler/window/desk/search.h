// Looks aside for a change that fits, which takes hundreds of layouts: the thread that draws never waits for
// it.
#pragma once

#include "kernel/design/fitted.h"

#include <QObject>
#include <QString>
#include <functional>
#include <optional>
#include <thread>

namespace roundlay::window {

/// What became of it. Nothing where the program itself failed.
struct Found {
    std::optional<Fitted> fitted;
    QString failure; ///< of the program, in words
};

/// One at a time, in a thread of its own.
class Search : public QObject {
    Q_OBJECT
  public:
    using Change = std::function<Fitted(const Shell &)>;
    ~Search() override; ///< waits for the one under way

    bool is_under_way() const { return under_way_; }
    /// Only where none is under way. `change` is called in that thread.
    void begin(const Shell &shell, const Change &change);

  signals:
    /// In the thread that began it.
    void ended(const roundlay::window::Found &found);

  private:
    void look(const Shell &shell, const Change &change);

    bool under_way_ = false;
    std::thread thread_;
};

} // namespace roundlay::window
