// From the members of the options to numbers and back. Private to this room.
#pragma once

#include "exporters/registry/export_option.h"

#include <optional>
#include <tuple>
#include <type_traits>

namespace roundlay {

template <typename T>
concept PlainNumber = std::is_arithmetic_v<T> || std::is_enum_v<T>;

template <PlainNumber T> OptionValue values_in(const T &from) {
    return {static_cast<double>(from)};
}
template <PlainNumber T> void put_in(T &into, const OptionValue &value) {
    if constexpr (std::is_enum_v<T>)
        into = static_cast<T>(static_cast<int>(value.front()));
    else
        into = static_cast<T>(value.front());
}

inline OptionValue values_in(const RouterBoardSize &from) {
    return {from.length, from.width, from.thickness};
}
inline void put_in(RouterBoardSize &into, const OptionValue &value) {
    into = {value.at(0), value.at(1), value.at(2)};
}

inline OptionValue values_in(const sheets::AcrossDown &from) {
    return {from.across, from.down};
}
inline void put_in(sheets::AcrossDown &into, const OptionValue &value) {
    into = {value.at(0), value.at(1)};
}

template <typename T> OptionValue values_in(const std::optional<T> &from) {
    return from ? values_in(*from) : OptionValue{};
}
template <typename T> void put_in(std::optional<T> &into, const OptionValue &value) {
    if (value.empty())
        into.reset();
    else
        put_in(into.emplace(), value);
}

template <typename T> OptionValue values_in(const std::tuple<T &, T &> &from) {
    return {static_cast<double>(std::get<0>(from)), static_cast<double>(std::get<1>(from))};
}
template <typename T> void put_in(const std::tuple<T &, T &> &into, const OptionValue &value) {
    std::get<0>(into) = static_cast<T>(value.at(0));
    std::get<1>(into) = static_cast<T>(value.at(1));
}

} // namespace roundlay
