// Which one of a list, as a kind of its own for each list: a wall's is no piece's, and "none" is no number
// but an empty std::optional, which subscripts nothing.
#pragma once

#include <algorithm>
#include <compare>
#include <concepts>
#include <cstddef>
#include <initializer_list>
#include <iterator>
#include <utility>
#include <vector>

namespace roundlay {

/// `Of`: what is counted. Neither a number nor the index of another list, and made into one only where that
/// is said.
template <typename Of> class Index {
  public:
    constexpr Index() = default;
    template <std::integral Number> constexpr explicit Index(Number at) : at_(static_cast<int>(at)) {}

    /// From 0: to be counted with, and for lists that are told by bare numbers.
    constexpr std::size_t at() const { return static_cast<std::size_t>(at_); }
    /// The same, to be printed or stored.
    constexpr int number() const { return at_; }

    friend constexpr auto operator<=>(Index, Index) = default;

  private:
    int at_ = 0;
};

/// Those of a list from `first` on, in their order, to be walked over.
template <typename Of> class Indices {
  public:
    class Iterator {
      public:
        using value_type = Index<Of>;
        using difference_type = std::ptrdiff_t;

        constexpr Iterator() = default;
        constexpr explicit Iterator(std::size_t at) : at_(at) {}

        constexpr Index<Of> operator*() const { return Index<Of>(at_); }
        constexpr Iterator &operator++() {
            ++at_;
            return *this;
        }
        constexpr Iterator operator++(int) { return Iterator(at_++); }
        friend constexpr bool operator==(Iterator, Iterator) = default;

      private:
        std::size_t at_ = 0;
    };

    constexpr explicit Indices(std::size_t end, std::size_t first = 0)
        : first_(std::min(first, end)), end_(end) {}
    constexpr Iterator begin() const { return Iterator(first_); }
    constexpr Iterator end() const { return Iterator(end_); }
    constexpr std::size_t size() const { return end_ - first_; }

  private:
    std::size_t first_, end_;
};

/// A list that is asked by its own kind of index alone. `Of`: what is counted, where the list holds something
/// about each of these.
template <typename Item, typename Of = Item> class Indexed {
  public:
    Indexed() = default;
    Indexed(std::initializer_list<Item> items) : items_(items) {}
    explicit Indexed(std::size_t size) : items_(size) {}
    Indexed(std::size_t size, const Item &item) : items_(size, item) {}
    explicit Indexed(std::vector<Item> items) : items_(std::move(items)) {}

    Item &operator[](Index<Of> i) { return items_[i.at()]; }
    const Item &operator[](Index<Of> i) const { return items_[i.at()]; }
    /// Throws std::out_of_range where the list is too short.
    Item &at(Index<Of> i) { return items_.at(i.at()); }
    const Item &at(Index<Of> i) const { return items_.at(i.at()); }

    std::size_t size() const { return items_.size(); }
    bool empty() const { return items_.empty(); }
    bool holds(Index<Of> i) const { return i.at() < items_.size(); }
    Item &front() { return items_.front(); }
    const Item &front() const { return items_.front(); }
    Item &back() { return items_.back(); }
    const Item &back() const { return items_.back(); }
    void clear() { items_.clear(); }
    void reserve(std::size_t size) { items_.reserve(size); }
    void resize(std::size_t size) { items_.resize(size); }
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
    Indices<Of> indices() const { return Indices<Of>(items_.size()); }
    /// Of those behind it.
    Indices<Of> after(Index<Of> i) const { return Indices<Of>(items_.size(), i.at() + 1); }
    /// Of one that is reached by walking over them.
    Index<Of> index_of(typename std::vector<Item>::const_iterator item) const {
        return Index<Of>(item - items_.begin());
    }

    /// The bare list, for whoever goes on with it.
    std::vector<Item> taken() && { return std::move(items_); }

  private:
    std::vector<Item> items_;
};

/// How many there are, where they are counted on or printed.
template <typename List> constexpr int count_of(const List &list) {
    return static_cast<int>(std::size(list));
}

} // namespace roundlay
