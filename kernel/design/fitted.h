// What became of an edit that has to fit.
#pragma once

#include "kernel/shell/finding.h"
#include "kernel/shell/shell.h"

#include <cstddef>
#include <optional>

namespace roundlay {

/// The changed shell; or none, and what the layout has against it where that is known.
struct Fitted {
    Fitted() = default;
    Fitted(std::optional<Shell> changed) : shell(std::move(changed)) {}
    Fitted(Shell changed) : shell(std::move(changed)) {}
    Fitted(std::optional<Finding> against) : why(std::move(against)) {}

    explicit operator bool() const { return shell.has_value(); }

    std::optional<Shell> shell;
    std::optional<Finding> why;
};

/// A shell is laid out with each change that is tried, and holds where that has no error more than before.
class FittingTrial {
  public:
    explicit FittingTrial(const Shell &before);

    /// True where it holds; else what is against it is kept, first what is about `subject`.
    bool holds(const Shell &changed, const std::string &subject = {});
    bool is_clean() const { return clean_; } ///< what held last brings no warning either
    int trials() const { return trials_; }
    const std::optional<Finding> &why() const { return why_; }

  private:
    std::ptrdiff_t errors_before_ = 0, warnings_before_ = 0;
    bool clean_ = false;
    std::optional<Finding> why_;
    int trials_ = 0;
};

} // namespace roundlay
