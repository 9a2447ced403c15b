#include "kernel/measured/least_squares.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace roundlay {

namespace {

using Row = std::vector<double>;
using Rows = std::vector<Row>;

/// Leaves nothing under the diagonal; the right side is the last of each row.
void eliminate(Rows &rows) {
    const std::size_t n = rows.size();
    for (std::size_t k = 0; k < n; ++k) {
        const auto larger = [k](const Row &a, const Row &b) { return std::abs(a[k]) < std::abs(b[k]); };
        std::swap(rows[k], *std::max_element(rows.begin() + std::ptrdiff_t(k), rows.end(), larger));
        for (std::size_t i = k + 1; i < n; ++i) {
            const double part = rows[i][k] / rows[k][k];
            for (std::size_t j = k; j <= n; ++j)
                rows[i][j] -= part * rows[k][j];
        }
    }
}

Row solved(Rows rows) {
    eliminate(rows);
    Row x(rows.size());
    for (std::size_t k = rows.size(); k-- > 0;) {
        double rest = rows[k].back();
        for (std::size_t j = k + 1; j < rows.size(); ++j)
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

/// By how much the numbers are to move.
Row next_move(const Row &numbers, const Off &off, double step) {
    const Rows by = slopes(numbers, off, step);
    const Row now = off(numbers);
    Rows normal(numbers.size(), Row(numbers.size() + 1));
    for (std::size_t i = 0; i < numbers.size(); ++i) {
        for (std::size_t j = 0; j < numbers.size(); ++j)
            normal[i][j] = product(by[i], by[j]);
        normal[i].back() = -product(by[i], now);
    }
    return solved(std::move(normal));
}

} // namespace

std::vector<double> least_squares(std::vector<double> start, const Off &off, double step) {
    constexpr int most_rounds = 20;
    for (int round = 0; round < most_rounds; ++round) {
        double moved = 0;
        const Row move = next_move(start, off, step);
        for (std::size_t i = 0; i < start.size(); ++i) {
            start[i] += move[i];
            moved = std::max(moved, std::abs(move[i]));
        }
        if (moved < step * 1e-6) break;
    }
    return start;
}

} // namespace roundlay
