// When two sizes are one in a list.
#pragma once

#include <cmath>
#include <map>
#include <utility>
#include <vector>

namespace roundlay {

/// Sizes that print alike to a thousandth of a millimetre are one size in the list.
inline constexpr double same_size = 1e-3;

inline long long rank(double mm) {
    return std::llround(mm / same_size);
}

/// In the order of their keys.
template <typename Key, typename Row> std::vector<Row> values_of(std::map<Key, Row> rows) {
    std::vector<Row> values;
    for (auto &[key, row] : rows)
        values.push_back(std::move(row));
    return values;
}

} // namespace roundlay
