// One line on a terminal that shows how far a long deed is.
#pragma once

#include "exporters/files/progress.h"

#include <chrono>
#include <functional>
#include <string>

namespace roundlay {

class TerminalProgress : public Progress {
  public:
    using Ask = std::function<bool()>;

    /// Draws on the descriptor only where it is a terminal that can go back to the start of a line.
    TerminalProgress(int descriptor, Ask cancelled);
    ~TerminalProgress() override; ///< leaves an empty line behind, ready for what is printed next

    void at(std::string_view doing, int done, int of) override;
    bool cancelled() const override { return cancelled_(); }
    void clear();

    /// The line as drawn, without the return: `[####----]  12/24  cut sheets`. At most `columns` wide.
    static std::string line(std::string_view doing, int done, int of, int columns);

  private:
    void draw(const std::string &text);

    int descriptor_;
    bool draws_;
    Ask cancelled_;
    std::size_t drawn_ = 0; ///< columns that have to be wiped
    std::string doing_;
    std::chrono::steady_clock::time_point last_{};
};

} // namespace roundlay
