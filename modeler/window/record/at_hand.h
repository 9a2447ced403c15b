// Which log is at hand for all that shows or changes its record: the one that is chosen, or was picked from
// the record.
#pragma once

#include "modeler/window/record/log_at_hand.h"

#include <QObject>
#include <functional>

namespace roundlay::window {

class Desk;
class Selection;
struct Chosen;

class AtHand : public QObject {
    Q_OBJECT
  public:
    AtHand(Desk &desk, Selection &selection, QObject *parent = nullptr);

    const std::vector<LogAtHand> &logs();
    const LogAtHand *log(); ///< null: none. With what the plan proposes for its ends
    const std::string &tag();
    const Chosen &chosen() const;       ///< in the views, whatever it is
    std::optional<std::size_t> place(); ///< of it among logs()

    void take(std::size_t at);   ///< of logs(); the views choose it too
    bool take_opening(int step); ///< so many behind the one that is chosen; false where there is none
    /// Of the log that was found in place of that piece, or that it would be recorded as; none where it
    /// cannot be.
    std::optional<std::string> tag_of(Index<Piece> piece);

    using Change = std::function<void(FoundLog &log)>;
    /// One edit of that log's record, which begins with it where it has none; false where the desk refuses.
    bool edit(const QString &name, const LogAtHand &log, const Change &change);

  signals:
    void changed(); ///< the log, or anything said of it

  private:
    void look_again();
    void pick();
    void call(const std::string &tag);

    Desk &desk_;
    Selection &selection_;
    std::vector<LogAtHand> logs_;
    std::shared_ptr<const void> of_read_, of_state_; ///< what logs_ are of
    std::string tag_;
};

} // namespace roundlay::window
