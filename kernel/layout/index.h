// Which one of a list, as a kind of its own for each list: a wall's is no piece's, and "none" is no number.
#pragma once

#include <concepts>
#include <cstddef>
#include <initializer_list>
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

/// The first `size` of a list, in their order, to be walked over.
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

    constexpr explicit Indices(std::size_t size) : size_(size) {}
    constexpr Iterator begin() const { return Iterator(0); }
    constexpr Iterator end() const { return Iterator(size_); }
    constexpr std::size_t size() const { return size_; }

  private:
    std::size_t size_;
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
    Indices<Of> indices() const { return Indices<Of>(items_.size()); }

    /// The bare list, for whoever goes on with it.
    std::vector<Item> taken() && { return std::move(items_); }

  private:
    std::vector<Item> items_;
};

} // namespace roundlay
