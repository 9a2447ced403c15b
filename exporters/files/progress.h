// How a long deed says how far it is, and asks whether it should stop.
#pragma once

#include <string_view>

namespace roundlay {

class Progress {
  public:
    virtual ~Progress() = default;
    /// `done` of `of` steps of `doing` ("cut sheets") are behind. of = 0: not known.
    virtual void at(std::string_view doing, int done, int of) = 0;
    /// Asked between steps. Once true it stays true.
    virtual bool cancelled() const = 0;

    /// Says nothing and never cancels.
    static Progress &none();
};

} // namespace roundlay
