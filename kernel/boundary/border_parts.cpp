#include "kernel/boundary/border_parts.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <utility>

namespace roundlay {

namespace {

using Way = std::pair<int, int>; ///< along an edge of the polyhedron, from vertex to vertex

class Parting {
  public:
    explicit Parting(const Polyhedron &hewn) : hewn_(hewn) {}

    std::optional<BorderParts> take() {
        if (!note_ways()) return std::nullopt;
        join_flats();
        note_corners();
        for (std::size_t p = 0; p < result_.parts.size(); ++p)
            if (!trace(static_cast<int>(p))) return std::nullopt;
        if (!pair_edges()) return std::nullopt;
        return std::move(result_);
    }

  private:
    static std::size_t at(int i) { return static_cast<std::size_t>(i); }

    bool note_ways() {
        for (std::size_t f = 0; f < hewn_.faces.size(); ++f)
            for (const auto &loop : hewn_.faces[f].loops)
                for (std::size_t i = 0; i < loop.size(); ++i)
                    if (!face_of_.emplace(Way{loop[i], loop[(i + 1) % loop.size()]}, static_cast<int>(f))
                             .second)
                        return false;
        return true;
    }

    int root(int f) {
        while (parent_[at(f)] != f)
            f = parent_[at(f)] = parent_[at(parent_[at(f)])];
        return f;
    }

    /// Flats of one surface that lie side by side.
    void join_flats() {
        parent_.resize(hewn_.faces.size());
        std::iota(parent_.begin(), parent_.end(), 0);
        for (const auto &[way, f] : face_of_) {
            const int round = hewn_.faces[at(f)].plane.round;
            const auto back = face_of_.find({way.second, way.first});
            if (round != 0 && back != face_of_.end() && hewn_.faces[at(back->second)].plane.round == round)
                parent_[at(root(f))] = root(back->second);
        }
        std::vector<std::optional<int>> of_root(hewn_.faces.size());
        part_of_.resize(hewn_.faces.size());
        for (int f = 0; f < count_of(hewn_.faces); ++f) {
            std::optional<int> &part = of_root[at(root(f))];
            if (!part) {
                part = count_of(result_.parts);
                result_.parts.push_back({hewn_.faces[at(f)].plane.round, {}, {}});
            }
            result_.parts[at(*part)].faces.push_back(f);
            part_of_[at(f)] = *part;
        }
    }

    void note_corners() {
        result_.at_vertex.resize(hewn_.vertices.size());
        for (const auto &[way, f] : face_of_) {
            auto &here = result_.at_vertex[at(way.first)];
            if (std::find(here.begin(), here.end(), part_of_[at(f)]) == here.end())
                here.push_back(part_of_[at(f)]);
        }
    }

    bool is_corner(int vertex) const { return result_.at_vertex[at(vertex)].size() > 2; }

    /// The part on the other side of a way.
    std::optional<int> beyond(const Way &way) const {
        const auto back = face_of_.find({way.second, way.first});
        return back == face_of_.end() ? std::nullopt : std::optional(part_of_[at(back->second)]);
    }

    /// The ways along a part's own border, by the vertex that they start from.
    std::optional<std::map<int, int>> border_of_part(int part) const {
        std::map<int, int> next;
        for (const int f : result_.parts[at(part)].faces)
            for (const auto &loop : hewn_.faces[at(f)].loops)
                for (std::size_t i = 0; i < loop.size(); ++i) {
                    const Way way{loop[i], loop[(i + 1) % loop.size()]};
                    const auto other = beyond(way);
                    if (!other) return std::nullopt;
                    if (other != part && !next.emplace(way.first, way.second).second) return std::nullopt;
                }
        return next;
    }

    bool trace(int part) {
        const std::optional<std::map<int, int>> border = border_of_part(part);
        if (!border || border->empty()) return false;
        std::map<int, int> left = *border;
        // The loops of a plane face come in its own order, the outer one first.
        const BorderPart &p = result_.parts[at(part)];
        if (p.round == 0) {
            for (const auto &loop : hewn_.faces[at(p.faces[0])].loops)
                if (!add_loop(part, loop)) return false;
            return true;
        }
        while (!left.empty()) {
            std::vector<int> loop;
            for (auto at_way = left.begin(); at_way != left.end(); at_way = left.find(loop_next_)) {
                loop.push_back(at_way->first);
                loop_next_ = at_way->second;
                left.erase(at_way);
            }
            if (loop_next_ != loop.front() || !add_loop(part, loop)) return false;
        }
        return true;
    }

    bool add_loop(int part, const std::vector<int> &loop) {
        const auto first = std::find_if(loop.begin(), loop.end(), [&](int v) { return is_corner(v); });
        if (first == loop.end()) return false;
        std::vector<int> turned(first, loop.end());
        turned.insert(turned.end(), loop.begin(), first);
        turned.push_back(turned.front());
        std::vector<PartEdgeUse> uses;
        PartEdge edge{{turned.front()}, part, *beyond({turned[0], turned[1]})};
        for (std::size_t i = 1; i < turned.size(); ++i) {
            edge.through.push_back(turned[i]);
            if (!is_corner(turned[i])) continue;
            if (edge.through.front() == edge.through.back()) return false;
            uses.push_back({count_of(ways_), true});
            ways_.push_back(edge);
            if (i + 1 < turned.size()) edge = {{turned[i]}, part, *beyond({turned[i], turned[i + 1]})};
        }
        const bool is_ring = uses.size() != 1;
        result_.parts[at(part)].loops.push_back(std::move(uses));
        return is_ring;
    }

    /// Every edge was found from both its sides: the first one stays.
    bool pair_edges() {
        std::map<Way, int> first_way; // of each edge seen from one side
        std::vector<PartEdgeUse> named(ways_.size());
        for (std::size_t i = 0; i < ways_.size(); ++i) {
            const std::vector<int> &t = ways_[i].through;
            const auto other = first_way.find({t.back(), t[t.size() - 2]});
            if (other == first_way.end()) {
                named[i] = {count_of(result_.edges), true};
                first_way[{t[0], t[1]}] = named[i].edge;
                result_.edges.push_back(ways_[i]);
            } else {
                const PartEdge &twin = result_.edges[at(other->second)];
                if (!std::equal(t.rbegin(), t.rend(), twin.through.begin(), twin.through.end())) return false;
                named[i] = {other->second, false};
                ++paired_;
            }
        }
        for (BorderPart &part : result_.parts)
            for (auto &loop : part.loops)
                for (PartEdgeUse &use : loop)
                    use = named[at(use.edge)];
        return paired_ == result_.edges.size();
    }

    const Polyhedron &hewn_;
    BorderParts result_;
    std::map<Way, int> face_of_;
    std::vector<int> parent_, part_of_;
    std::vector<PartEdge> ways_; ///< each edge from both its sides
    int loop_next_ = 0;
    std::size_t paired_ = 0;
};

} // namespace

std::optional<BorderParts> parts_of(const Polyhedron &hewn) {
    return Parting(hewn).take();
}

} // namespace roundlay
