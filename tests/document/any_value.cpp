#include "tests/document/any_value.h"

#include "kernel/measure/load.h"
#include "kernel/measure/spelling.h"

#include <rapidcheck.h>

#include <algorithm>
#include <cmath>

namespace roundlay::test {

using namespace format;
using rc::gen::inRange;

bool once_in(int times) {
    return *inRange(0, times) == 0;
}

namespace {

/// As a person could have typed it.
Length typed(double mm) {
    return std::get<Length>(parse_length(spell_length(Length::mm(mm), UnitSystem::metric)));
}

} // namespace

Length any_size(double most) {
    const double part = *inRange(1, 1'000'001) / 1e6;
    const double raw = part * most;
    switch (*inRange(0, 4)) {
    case 0:
        return Length::mm(std::ceil(raw));
    case 1:
        return typed(std::max(1.0, std::floor(raw / 25.4 * 64)) * 25.4 / 64);
    case 2:
        return typed(std::max(1.0, std::floor(raw / 25.4 * 12)) * 25.4 / 12);
    default:
        return typed(raw);
    }
}

std::string any_wall(const Shell &shell) {
    return (*rc::gen::elementOf(shell.walls)).name;
}

namespace {

Length any_gap(double most) {
    return once_in(4) ? Length() : any_size(most);
}

Slope any_slope(bool may_fall) {
    const double sign = may_fall && *rc::gen::arbitrary<bool>() ? -1 : 1;
    switch (*inRange(0, 4)) {
    case 0:
        return Slope();
    case 1:
        return Slope::rise_per_run(sign / *inRange(1, 40));
    default:
        return Slope::rise_per_run(sign * *inRange(0, 1'000'000'000) / 1e8);
    }
}

std::string any_name() {
    const auto part =
        rc::gen::elementOf(std::vector<std::string>{"a", "Z", "3", " ", "\"", "'", "\\", "#", "=", "[", "]",
                                                    "\u00e9", "\u2033", "\U0001F332", "'''", "\"\"\""});
    std::string name;
    for (const std::string &p : *rc::gen::resize(30, rc::gen::container<std::vector<std::string>>(part)))
        name += p;
    return name;
}

/// A name that no other wall, partition or floor has, nor any in another shell over the same walls has for
/// another thing.
std::string free_name(const Shell &shell, const std::string &of) {
    if (of == "floor") return "fl" + std::to_string(shell.floors.size());
    const std::size_t taken = shell.walls.size() + shell.partitions.size();
    return std::string(1, static_cast<char>('A' + taken)) + *rc::gen::element<std::string>("", "x", "2");
}

/// As somebody could have noted it, over 0 and up to 2 m; 3.10 and 3.10.1 may stay open.
std::string any_note() {
    const auto number = [](int low, int high) { return std::to_string(*inRange(low, high)); };
    switch (*inRange(0, 5)) {
    case 0:
        return number(0, 6) + "." + number(1, 12) + "." + number(0, 4);
    case 1:
        return number(0, 2) + "." + number(1, 10);
    case 2:
        return number(1, 2001) + " mm";
    case 3:
        return number(1, 78) + " " + number(1, 8) + "/8 in";
    default:
        return number(0, 6) + "\u2032\u2014" + number(1, 12) + "\u2033";
    }
}

NotedLength any_noted() {
    NotedLength length{.written = any_note()};
    if (once_in(3)) length.certainty = *rc::gen::element(Certainty::proposed, Certainty::contradicted);
    if (once_in(3)) length.by = any_name();
    if (once_in(3)) length.on = any_name();
    return length;
}

ManyTexts some_of(const ManyTexts &words) {
    ManyTexts some;
    for (const std::string &word : words)
        if (once_in(3)) some.push_back(word);
    return some;
}

/// Over all that the kind takes.
struct AnyValue {
    const Shell &shell;

    Value operator()(const YesNo &) const { return *rc::gen::arbitrary<bool>(); }
    Value operator()(const Count &kind) const { return *inRange(kind.low, kind.high + 1); }
    Value operator()(const Number &kind) const {
        constexpr double parts = 1e6;
        const auto low = static_cast<long>(kind.low * parts) + (kind.low_is_in ? 0 : 1);
        return static_cast<double>(*inRange(low, static_cast<long>(kind.high * parts) + 1)) / parts;
    }
    Value operator()(const Load &kind) const { // as stated in kPa or in psf
        const double figure = *inRange(1, static_cast<int>(kind.most * 1000) + 1) / 1000.0;
        return once_in(2) ? figure : std::min(kind.most, std::round(20 * figure) * kpa_per_psf);
    }
    Value operator()(const Size &kind) const {
        const LengthBounds &b = kind.bounds;
        if (b.low_mm < 0 && once_in(2)) return Length() - any_size(-b.low_mm);
        return b.low_is_in ? any_gap(b.high_mm) : any_size(b.high_mm);
    }
    Value operator()(const Incline &kind) const { return any_slope(kind.may_fall); }
    Value operator()(const Direction &) const {
        return once_in(2) ? 45.0 * *inRange(0, 8) : *inRange(0, 360'000'000) / 1e6;
    }
    Value operator()(const Text &) const { return any_name(); }
    Value operator()(const TagName &kind) const { return free_name(shell, kind.of); }
    Value operator()(const WallName &) const { return any_wall(shell); }
    Value operator()(const WallPair &) const { return TwoNames(any_wall(shell), any_wall(shell)); }
    Value operator()(const OneOf &kind) const { return *rc::gen::elementOf(kind.words); }
    Value operator()(const SomeOf &kind) const { return some_of(kind.words); }
    Value operator()(const Texts &) const { return some_of({any_name(), any_name(), "IV"}); }
    Value operator()(const Noted &) const { return any_noted(); }
};

} // namespace

void draw_key(const Key &key, void *owner, const Shell &shell) {
    key.set(owner, std::visit(AnyValue{shell}, key.kind));
}

} // namespace roundlay::test
