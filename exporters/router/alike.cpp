#include "exporters/router/alike.h"

#include <algorithm>

namespace roundlay {

namespace {

constexpr double says_nothing = 1e-3; // mm

/// Of b, its corner `shift` laid on the first of a and its next line along that of a.
bool lies_on(const std::vector<Vec2> &a, const std::vector<Vec2> &b, std::size_t shift, double by) {
    const std::size_t n = a.size();
    const Vec2 origin = b[shift], along = b[(shift + 1) % n] - origin, wanted = a[1] - a[0];
    const double whole = length(along) * length(wanted);
    const double c = dot(along, wanted) / whole, s = cross(along, wanted) / whole;
    for (std::size_t i = 0; i < n; ++i) {
        const Vec2 p = b[(shift + i) % n] - origin;
        const Vec2 turned = a[0] + Vec2{c * p.x - s * p.y, s * p.x + c * p.y};
        if (length(turned - a[i]) > by) return false;
    }
    return true;
}

/// What is turned by its longest line is turned as exactly as can be.
std::vector<Vec2> from_longest(std::vector<Vec2> ring) {
    std::size_t longest = 0;
    const auto along = [&](std::size_t i) { return length(ring[(i + 1) % ring.size()] - ring[i]); };
    for (std::size_t i = 1; i < ring.size(); ++i)
        if (along(i) > along(longest)) longest = i;
    std::rotate(ring.begin(), ring.begin() + static_cast<std::ptrdiff_t>(longest),
                ring.end()); // clang 14 cannot take the range
    return ring;
}

} // namespace

std::vector<Vec2> tidied_outline(const std::vector<Vec2> &outline) {
    std::vector<Vec2> ring;
    for (const Vec2 p : outline)
        if (ring.empty() || length(p - ring.back()) > says_nothing) ring.push_back(p);
    while (ring.size() > 1 && length(ring.front() - ring.back()) <= says_nothing)
        ring.pop_back();
    for (std::size_t i = 0; i < ring.size() && ring.size() > 3;) {
        const std::size_t n = ring.size();
        const Vec2 before = ring[(i + n - 1) % n], after = ring[(i + 1) % n];
        const double off = cross(after - before, ring[i] - before) / length(after - before);
        const bool between = dot(ring[i] - before, after - ring[i]) > 0;
        if (between && std::abs(off) <= says_nothing)
            ring.erase(ring.begin() + static_cast<std::ptrdiff_t>(i));
        else
            ++i;
    }
    return ring;
}

std::vector<Vec2> turned_over(const std::vector<Vec2> &outline) {
    std::vector<Vec2> ring(outline.rbegin(), outline.rend());
    for (Vec2 &p : ring)
        p.x = -p.x;
    return ring;
}

bool are_alike(const std::vector<Vec2> &a, const std::vector<Vec2> &b, double by) {
    if (a.size() != b.size()) return false;
    const std::vector<Vec2> first = from_longest(a);
    for (std::size_t shift = 0; shift < b.size(); ++shift)
        if (lies_on(first, b, shift, by)) return true;
    return false;
}

} // namespace roundlay
