#include "exporters/files/terminal_progress.h"

#include <sys/ioctl.h>
#include <unistd.h>

#include <algorithm>
#include <cstdlib>

namespace roundlay {

namespace {

using namespace std::chrono_literals;

constexpr auto between_drawings = 80ms; // a person sees no more than about twelve changes a second
constexpr int bar_width = 24;
constexpr int usual_columns = 80;

bool can_return(int descriptor) {
    const char *term = std::getenv("TERM");
    return ::isatty(descriptor) == 1 && term && std::string_view(term) != "dumb";
}

int columns_of(int descriptor) {
    winsize size = {};
    return ::ioctl(descriptor, TIOCGWINSZ, &size) == 0 && size.ws_col > 0 ? size.ws_col : usual_columns;
}

class NoProgress : public Progress {
    void at(std::string_view, int, int) override {}
    bool cancelled() const override { return false; }
};

} // namespace

Progress &Progress::none() {
    static NoProgress nothing;
    return nothing;
}

TerminalProgress::TerminalProgress(int descriptor, Ask cancelled)
    : descriptor_(descriptor), draws_(can_return(descriptor)), cancelled_(std::move(cancelled)) {}

TerminalProgress::~TerminalProgress() {
    clear();
}

std::string TerminalProgress::line(std::string_view doing, int done, int of, int columns) {
    std::string text;
    if (of > 0) {
        const int filled = std::min(done, of) * bar_width / of;
        text = "[" + std::string(static_cast<std::size_t>(filled), '#') +
               std::string(static_cast<std::size_t>(bar_width - filled), '-') + "] " + std::to_string(done) +
               "/" + std::to_string(of) + "  ";
    }
    text += doing;
    return text.substr(0, static_cast<std::size_t>(std::max(columns - 1, 0)));
}

void TerminalProgress::at(std::string_view doing, int done, int of) {
    if (!draws_) return;
    const auto now = std::chrono::steady_clock::now();
    if (doing == doing_ && done < of && now - last_ < between_drawings) return;
    last_ = now;
    doing_ = doing;
    draw(line(doing, done, of, columns_of(descriptor_)));
}

/// Wipes with blanks: no escape codes, so it is right wherever a return is.
void TerminalProgress::draw(const std::string &text) {
    std::string all = "\r" + text;
    if (drawn_ > text.size()) all += std::string(drawn_ - text.size(), ' ') + "\r" + text;
    drawn_ = text.size();
    if (::write(descriptor_, all.data(), all.size()) < 0) draws_ = false;
}

void TerminalProgress::clear() {
    if (drawn_ == 0) return;
    draw("");
    drawn_ = 0;
}

} // namespace roundlay
