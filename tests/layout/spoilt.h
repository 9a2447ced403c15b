// Shells in which one thing is spoilt, and the finding that must follow.
#pragma once

#include "kernel/layout/lay_out.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/shells.h"

#include <functional>
#include <string>

namespace roundlay::test {

struct Spoilt {
    std::string code;
    std::string place; ///< must stand in the finding's place
    std::string fits;  ///< must stand in its message
    std::function<void(Shell &)> spoil;
};

inline bool says(const Finding &f, const Spoilt &c) {
    const bool in_place =
        place(f).find(c.place) != std::string::npos || message(f).find(c.place) != std::string::npos;
    return f.code == c.code && in_place && message(f).find(c.fits) != std::string::npos;
}

/// Lays the plain shell out with that spoilt, and checks that it is told with that weight and, where it is a
/// warning, with its line.
inline Layout check_told(const Spoilt &c, Weight weight) {
    Shell shell = plain_shell();
    c.spoil(shell);
    Layout layout = lay_out(shell);
    std::string all;
    bool told = false;
    for (const Finding &f : layout.findings) {
        all += f.code + " @ " + place(f) + ": " + message(f) + " [" + f.subject + "]\n";
        told = told || (says(f, c) && f.weight == weight && (weight == Weight::error || !f.subject.empty()));
    }
    INFO("expected " << c.code << " / " << c.place << " / " << c.fits << ", got:\n" << all);
    CHECK(told);
    return layout;
}

inline Length mm(double v) {
    return Length::mm(v);
}

/// Of a wall, in millimetres.
inline Partition partition_at(const std::string &name, const std::string &from, double at,
                              const std::string &to) {
    return partition(name, from, Length::mm(at), to);
}
inline StatedBore bore_at(const std::string &wall, double at) {
    StatedBore bore;
    bore.wall = wall;
    bore.from_left = Length::mm(at);
    return bore;
}

} // namespace roundlay::test
