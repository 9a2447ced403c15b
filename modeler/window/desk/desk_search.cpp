// Edits that are looked for aside, and made when they are found: in the text as it is then.
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/search.h"

namespace roundlay::window {

void Desk::search(const QString &name, const ShellEdit &change, QObject *asker, const Searched &then) {
    wanted_.push_back({name, change, asker, then});
    search_next();
}

/// Not while a hand drags: what it leaves is looked at then.
void Desk::search_next() {
    if (wanted_.empty() || search_->is_under_way() || before_drag_) return;
    const ReadPtr now = reading();
    if (!now->shell) return end_search(unreadable());
    searched_ = document_.text();
    if (!told_of_search_.isActive()) told_of_search_.start();
    search_->begin(*now->shell, wanted_.front().change);
}

/// Where the shell has changed since, it is looked for again.
void Desk::take_found(const Found &found) {
    if (wanted_.empty() || before_drag_ || searched_ != document_.text()) return search_next();
    if (!found.fitted) {
        end_search(found.failure);
        emit failed(found.failure);
        return;
    }
    const Made made = stated(document_, *reading(), *found.fitted);
    if (const auto *why = std::get_if<QString>(&made)) return end_search(*why);
    const std::string text = std::get<Document>(made).text();
    replace_text(wanted_.front().name, text);
    end_search({});
}

void Desk::end_search(const QString &why) {
    const Wanted ended = std::move(wanted_.front());
    wanted_.pop_front();
    told_of_search_.stop();
    if (!why.isEmpty()) emit refused(why);
    if (ended.asker && ended.then) ended.then(why);
    if (wanted_.empty()) emit searched();
    search_next();
}

} // namespace roundlay::window
