#include "modeler/window/desk/search.h"

#include "modeler/window/desk/mishaps.h"

#include <system_error>

namespace roundlay::window {

Search::~Search() {
    if (thread_.joinable()) thread_.join();
}

void Search::begin(const Shell &shell, const Change &change) {
    if (thread_.joinable()) thread_.join();
    under_way_ = true;
    try {
        thread_ = std::thread([this, shell, change] { look(shell, change); });
    } catch (const std::system_error &) { // the system gives no thread: it waits, and has what it asked for
        look(shell, change);
    }
}

void Search::look(const Shell &shell, const Change &change) {
    Found found;
    const auto thrown =
        what_it_throws(QStringLiteral("looking for what fits"), [&] { found.fitted = change(shell); });
    if (thrown) found.failure = *thrown;
    QMetaObject::invokeMethod(
        this,
        [this, found] {
            under_way_ = false;
            emit ended(found);
        },
        Qt::QueuedConnection);
}

} // namespace roundlay::window
