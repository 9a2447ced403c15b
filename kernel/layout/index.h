// Which one of a list, as a kind of its own for each list: a wall's is no piece's, and "none" is no number.
#pragma once

#include <concepts>
#include <cstddef>
#include <initializer_list>
#include <ranges>
#include <utility>
#include <vector>

namespace roundlay {

/// `Of`: what is counted. It still turns into a number by itself and a number into it, but never into the
/// index of another list.
template <typename Of> class Index {
  public:
    constexpr Index() = default;
    template <std::integral Number> constexpr Index(Number at) : at_(static_cast<int>(at)) {}

    constexpr operator int() const { return at_; }
    /// From 0.
    constexpr std::size_t at() const { return static_cast<std::size_t>(at_); }

  private:
    int at_ = 0;
};

/// A list that is asked by its own kind of index alone. `Of`: what is counted, where the list holds something
/// about each of these.
template <typename Item, typename Of = Item> class Indexed {
  public:
    Indexed() = default;
    Indexed(std::initializer_list<Item> items) : items_(items) {}
    explicit Indexed(std::size_t size) : items_(size) {}
    explicit Indexed(std::vector<Item> items) : items_(std::move(items)) {}

    Item &operator[](Index<Of> i) { return items_[i.at()]; }
    const Item &operator[](Index<Of> i) const { return items_[i.at()]; }

    std::size_t size() const { return items_.size(); }
    bool empty() const { return items_.empty(); }
    auto begin() { return items_.begin(); }
    auto begin() const { return items_.begin(); }
    auto end() { return items_.end(); }
    auto end() const { return items_.end(); }

    /// Where it lies now.
    Index<Of> push_back(Item item) {
        items_.push_back(std::move(item));
        return Index<Of>(items_.size() - 1);
    }
    /// Where the next one will lie.
    Index<Of> next() const { return Index<Of>(items_.size()); }

    /// Of all, in their order.
    auto indices() const {
        return std::views::iota(std::size_t{0}, items_.size()) |
               std::views::transform([](std::size_t at) { return Index<Of>(at); });
    }

    /// The bare list, for whoever goes on with it.
    std::vector<Item> taken() && { return std::move(items_); }

  private:
    std::vector<Item> items_;
};

} // namespace roundlay
