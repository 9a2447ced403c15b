#include "tests/router/support/board.h"

#include <algorithm>
#include <cmath>
#include <functional>

namespace router_test {

namespace {

constexpr double cell = 0.5; // mm

class Board {
  public:
    explicit Board(const Setting &setting)
        : s_(setting), columns_(static_cast<int>(setting.length / cell)),
          rows_(static_cast<int>(setting.width / cell)),
          depth_(static_cast<std::size_t>(columns_) * static_cast<std::size_t>(rows_), 0.0F) {}

    void run(const std::vector<Bit> &bits) {
        for (const Bit &bit : bits) {
            const double low = std::min(bit.za, bit.zb);
            if (low >= 0) continue;
            bool hits = false;
            under(bit, [&](float &depth) {
                if (bit.rapid && depth > low + 1e-3) hits = true; // wood stands over the tool's end
                depth = std::min(depth, static_cast<float>(bit.rapid ? std::max(bit.za, bit.zb) : low));
            });
            if (hits && bit.rapid && (bit.za > bit.zb || bit.a.x != bit.b.x || bit.a.y != bit.b.y))
                faults_.push_back("line " + std::to_string(bit.line) + ": a rapid move through wood");
            steps(bit);
        }
    }

    /// Above the tabs each template is free; at the board's foot it hangs on the board's border.
    void look(const std::vector<Wanted> &wanted) {
        const std::vector<int> foot = parts(-s_.thickness), over = parts(s_.tab_height - s_.thickness);
        for (const Wanted &one : wanted) {
            const std::size_t here = well_within(one);
            if (foot[here] != foot[0]) faults_.push_back(one.name + " lies loose on the machine");
            if (over[here] == over[0]) faults_.push_back(one.name + " is not cut free above its tabs");
        }
        loose(foot);
    }

    std::vector<std::string> take() { return std::move(faults_); }

  private:
    void under(const Bit &bit, const std::function<void(float &)> &cut) {
        const double r = s_.tool / 2 - cell / 2; // cells that are wholly under it
        const int x0 = std::max(0, static_cast<int>((std::min(bit.a.x, bit.b.x) - r) / cell)),
                  x1 = std::min(columns_ - 1, static_cast<int>((std::max(bit.a.x, bit.b.x) + r) / cell)),
                  y0 = std::max(0, static_cast<int>((std::min(bit.a.y, bit.b.y) - r) / cell)),
                  y1 = std::min(rows_ - 1, static_cast<int>((std::max(bit.a.y, bit.b.y) + r) / cell));
        const double dx = bit.b.x - bit.a.x, dy = bit.b.y - bit.a.y, square = dx * dx + dy * dy;
        for (int y = y0; y <= y1; ++y)
            for (int x = x0; x <= x1; ++x) {
                const double px = (x + 0.5) * cell - bit.a.x, py = (y + 0.5) * cell - bit.a.y;
                const double t = square > 0 ? std::clamp((px * dx + py * dy) / square, 0.0, 1.0) : 0;
                if (std::hypot(px - t * dx, py - t * dy) <= r) cut(depth_[index(x, y)]);
            }
    }

    /// No pass takes off more than is stated: told by the program's own depths.
    void steps(const Bit &bit) {
        if (bit.rapid || bit.zb >= bit.za) return;
        const double from = std::min(0.0, bit.za), step = from - bit.zb;
        if (bit.za <= 0 && bit.a.x == bit.b.x && step > s_.depth_step + 0.0011 && deepest_ > bit.zb + 0.001)
            faults_.push_back("line " + std::to_string(bit.line) + ": goes down more than a step");
        if (bit.za > 0 && -bit.zb > s_.depth_step + 0.0011)
            faults_.push_back("line " + std::to_string(bit.line) + ": the first pass is deeper than a step");
        deepest_ = bit.za > 0 ? bit.zb : std::min(deepest_, bit.zb);
    }

    std::size_t index(int x, int y) const {
        return static_cast<std::size_t>(y) * static_cast<std::size_t>(columns_) + static_cast<std::size_t>(x);
    }

    /// What hangs together there: a number for each cell, -1 where there is no wood.
    std::vector<int> parts(double level) const {
        std::vector<int> of(depth_.size(), -1);
        std::vector<std::size_t> stack;
        int count = 0;
        const auto wood = [&](std::size_t i) { return of[i] < 0 && depth_[i] > level + 0.01; };
        for (std::size_t first = 0; first < depth_.size(); ++first) {
            if (!wood(first)) continue;
            of[first] = count;
            stack = {first};
            while (!stack.empty()) {
                const std::size_t at = stack.back();
                stack.pop_back();
                const auto x = static_cast<int>(at % static_cast<std::size_t>(columns_)),
                           y = static_cast<int>(at / static_cast<std::size_t>(columns_));
                for (const auto &[nx, ny] : {std::pair{x - 1, y}, {x + 1, y}, {x, y - 1}, {x, y + 1}}) {
                    if (nx < 0 || ny < 0 || nx >= columns_ || ny >= rows_ || !wood(index(nx, ny))) continue;
                    of[index(nx, ny)] = count;
                    stack.push_back(index(nx, ny));
                }
            }
            ++count;
        }
        return of;
    }

    /// The cell of the template that lies farthest from its outline.
    std::size_t well_within(const Wanted &one) const {
        std::size_t best = 0;
        double farthest = -1;
        Point low{INFINITY, INFINITY}, high{-INFINITY, -INFINITY};
        for (const Point p : one.outline)
            low = {std::min(low.x, p.x), std::min(low.y, p.y)},
            high = {std::max(high.x, p.x), std::max(high.y, p.y)};
        for (double x = low.x; x < high.x; x += 3)
            for (double y = low.y; y < high.y; y += 3) {
                double off = INFINITY;
                bool in = false;
                for (std::size_t i = 0; i < one.outline.size(); ++i) {
                    const Point a = one.outline[i], b = one.outline[(i + 1) % one.outline.size()];
                    off = std::min({off, std::hypot(a.x - x, a.y - y), std::hypot(b.x - x, b.y - y),
                                    std::hypot((a.x + b.x) / 2 - x, (a.y + b.y) / 2 - y)});
                    if ((a.y > y) != (b.y > y) && x < a.x + (y - a.y) / (b.y - a.y) * (b.x - a.x)) in = !in;
                }
                for (const auto &[middle, diameter] : one.holes)
                    off = std::min(off, std::hypot(middle.x - x, middle.y - y) - diameter / 2);
                if (in && off > farthest)
                    farthest = off, best = index(static_cast<int>(x / cell), static_cast<int>(y / cell));
            }
        return best;
    }

    /// Offcuts that nothing holds.
    void loose(const std::vector<int> &foot) {
        std::vector<int> size(1);
        for (const int part : foot)
            if (part >= 0) {
                size.resize(std::max(size.size(), static_cast<std::size_t>(part) + 1));
                ++size[static_cast<std::size_t>(part)];
            }
        constexpr int crumbs = 60; // cells
        for (std::size_t part = 1; part < size.size(); ++part)
            if (size[part] > crumbs && static_cast<int>(part) != foot[0])
                faults_.push_back("a piece of " + std::to_string(size[part] * cell * cell) +
                                  " mm2 lies loose");
    }

    const Setting &s_;
    int columns_, rows_;
    std::vector<float> depth_;
    std::vector<std::string> faults_;
    double deepest_ = 0;
};

} // namespace

std::vector<std::string> board_faults(const std::vector<Bit> &bits, const Setting &setting,
                                      const std::vector<Wanted> &wanted) {
    Board board(setting);
    board.run(bits);
    board.look(wanted);
    return board.take();
}

} // namespace router_test
