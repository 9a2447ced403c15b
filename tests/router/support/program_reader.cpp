#include "tests/router/support/program_reader.h"

#include <cmath>
#include <cstdlib>
#include <map>
#include <set>
#include <sstream>

namespace router_test {

namespace {

class Control {
  public:
    Program run(const std::string &text) {
        std::istringstream in(text);
        std::string line;
        while (std::getline(in, line)) {
            ++at_;
            if (ended_ && !line.empty()) fault("words behind M30");
            block(line);
        }
        if (!ended_) fault("no M30");
        if (turning_) fault("the spindle is left running");
        return std::move(program_);
    }

  private:
    void fault(const std::string &what) {
        program_.faults.push_back("line " + std::to_string(at_) + ": " + what);
    }

    /// The words of a line without its comments.
    void block(const std::string &line) {
        std::map<char, double> axes;
        std::vector<int> g, m;
        for (const char c : line)
            if (static_cast<unsigned char>(c) > 126 || static_cast<unsigned char>(c) < 32)
                return fault("a byte that is no ASCII");
        for (std::size_t i = 0; i < line.size();) {
            const char c = line[i];
            if (c == ' ') {
                ++i;
                continue;
            }
            if (c == '(') {
                const std::size_t end = line.find(')', i);
                if (end == std::string::npos || line.find('(', i + 1) < end)
                    return fault("a comment that does not end or holds another");
                i = end + 1;
                continue;
            }
            if (std::string("GMXYZIJFS").find(c) == std::string::npos)
                return fault(std::string("unknown word ") + c);
            const std::size_t from = ++i;
            while (i < line.size() && std::string("+-.0123456789").find(line[i]) != std::string::npos)
                ++i;
            const std::string digits = line.substr(from, i - from);
            if (digits.empty()) return fault("a word without a number");
            const bool axis = std::string("XYZIJF").find(c) != std::string::npos;
            if (axis && digits.size() - digits.find('.') != 4) return fault("not three decimals");
            const double value = std::strtod(digits.c_str(), nullptr);
            if (c == 'G')
                g.push_back(static_cast<int>(value));
            else if (c == 'M')
                m.push_back(static_cast<int>(value));
            else if (!axes.emplace(c, value).second)
                return fault("a word twice");
        }
        modal(g, m, axes);
        move(axes);
    }

    void modal(const std::vector<int> &g, const std::vector<int> &m, const std::map<char, double> &axes) {
        for (const int word : g) {
            if (word >= 0 && word <= 3)
                motion_ = word;
            else if (std::set<int>{17, 21, 40, 90, 94}.contains(word))
                said_.insert(word);
            else
                fault("G" + std::to_string(word) + " is not among the plain words");
        }
        if (axes.contains('S')) speed_ = axes.at('S');
        for (const int word : m) {
            if (word == 3)
                turning_ = speed_ > 0;
            else if (word == 5)
                turning_ = false;
            else if (word == 30)
                ended_ = true;
            else
                fault("M" + std::to_string(word) + " is not among the plain words");
        }
        if (axes.contains('F')) feed_ = axes.at('F');
    }

    void move(const std::map<char, double> &axes) {
        if (!axes.contains('X') && !axes.contains('Y') && !axes.contains('Z')) return;
        if (said_.size() != 5) return fault("a move before its units, plane and ways of counting are said");
        if (motion_ < 0) return fault("a move without its kind");
        const auto value = [&](char c, double else_) { return axes.contains(c) ? axes.at(c) : else_; };
        const Point to{value('X', x_), value('Y', y_)};
        const double z = value('Z', z_);
        if (motion_ >= 2)
            arc(to, z, {x_ + value('I', 0), y_ + value('J', 0)});
        else
            bit(to, z);
    }

    void bit(Point to, double z) {
        if (motion_ > 0 && feed_ <= 0) fault("a move without a feed");
        if (known_) program_.bits.push_back({{x_, y_}, to, z_, z, motion_ == 0, turning_, feed_, at_});
        x_ = to.x, y_ = to.y, z_ = z;
        known_ = true;
    }

    void arc(Point to, double z, Point c) {
        const double radius = std::hypot(x_ - c.x, y_ - c.y), ends = std::hypot(to.x - c.x, to.y - c.y);
        if (std::abs(radius - ends) > 0.003) return fault("an arc whose ends are not as far from its centre");
        if (to.x == x_ && to.y == y_) return fault("a whole circle");
        const double from = std::atan2(y_ - c.y, x_ - c.x);
        double turn = std::atan2(to.y - c.y, to.x - c.x) - from;
        if (motion_ == 2 && turn > 0) turn -= 2 * M_PI;
        if (motion_ == 3 && turn < 0) turn += 2 * M_PI;
        const int pieces =
            1 + static_cast<int>(std::abs(turn) / std::acos(1 - std::min(1.0, 0.001 / radius)) / 2);
        const double z0 = z_;
        for (int i = 1; i < pieces; ++i) {
            const double part = static_cast<double>(i) / pieces, a = from + turn * part;
            bit({c.x + radius * std::cos(a), c.y + radius * std::sin(a)}, z0 + part * (z - z0));
        }
        bit(to, z);
    }

    Program program_;
    int at_ = 0, motion_ = -1;
    std::set<int> said_;
    double x_ = 0, y_ = 0, z_ = 1000, feed_ = 0, speed_ = 0;
    bool known_ = true, turning_ = false, ended_ = false;
};

} // namespace

Program read_program(const std::string &text) {
    return Control().run(text);
}

} // namespace router_test
