#include "kernel/measured/least_squares.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace roundlay {

namespace {

using Row = std::vector<double>;
using Rows = std::vector<Row>;

/// By elimination; `rows` hold the right side as their last.
Row solved(Rows rows) {
    const std::size_t n = rows.size();
    for (std::size_t k = 0; k < n; ++k) {
        const auto best =
            std::max_element(rows.begin() + std::ptrdiff_t(k), rows.end(),
                             [k](const Row &a, const Row &b) { return std::abs(a[k]) < std::abs(b[k]); });
        std::swap(rows[k], *best);
        for (std::size_t i = k + 1; i < n; ++i) {
            const double part = rows[i][k] / rows[k][k];
            for (std::size_t j = k; j <= n; ++j)
                rows[i][j] -= part * rows[k][j];
        }
    }
    Row x(n);
    for (std::size_t k = n; k-- > 0;) {
        double rest = rows[k][n];
        for (std::size_t j = k + 1; j < n; ++j)
            rest -= rows[k][j] * x[j];
        x[k] = rest / rows[k][k];
    }
    return x;
}

/// How each observation changes with each number; by number.
Rows slopes(const Row &numbers, const Off &off, double step) {
    Rows by_number;
    for (std::size_t i = 0; i < numbers.size(); ++i) {
        Row more = numbers, less = numbers;
        more[i] += step, less[i] -= step;
        Row high = off(more);
        const Row low = off(less);
        for (std::size_t k = 0; k < high.size(); ++k)
            high[k] = (high[k] - low[k]) / (2 * step);
        by_number.push_back(std::move(high));
    }
    return by_number;
}

double product(const Row &a, const Row &b) {
    return std::inner_product(a.begin(), a.end(), b.begin(), 0.0);
}

} // namespace

std::vector<double> least_squares(std::vector<double> start, const Off &off, double step) {
    constexpr int most_rounds = 20;
    for (int round = 0; round < most_rounds; ++round) {
        const Rows by = slopes(start, off, step);
        const Row now = off(start);
        Rows normal(start.size(), Row(start.size() + 1));
        for (std::size_t i = 0; i < start.size(); ++i) {
            for (std::size_t j = 0; j < start.size(); ++j)
                normal[i][j] = product(by[i], by[j]);
            normal[i].back() = -product(by[i], now);
        }
        double moved = 0;
        const Row move = solved(std::move(normal));
        for (std::size_t i = 0; i < start.size(); ++i) {
            start[i] += move[i];
            moved = std::max(moved, std::abs(move[i]));
        }
        if (moved < step * 1e-6) break;
    }
    return start;
}

} // namespace roundlay
