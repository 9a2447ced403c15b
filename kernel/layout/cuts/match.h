// The one way to ask which kind a cut is: a visit that says for every kind what it means there. A kind that
// is left out does not compile, and neither does a handler that would take any.
//
//     match(cut, [&](const BoxCut &box) { ... }, [&](const FaceCut &face) { ... },
//           passing<SeamCut, ScopeCut>); // they lie at corners, and this is about openings
//
// A kind that does not matter is named all the same, and why it does not is said beside it: whoever adds a
// kind is led there and decides.
#pragma once

#include "kernel/layout/cuts/cut.h"

#include <type_traits>
#include <utility>
#include <variant>

namespace roundlay {

/// For kinds that do not matter: nothing is done.
template <typename... Kinds> struct Passing {
    template <typename Kind>
    requires(std::is_same_v<Kind, Kinds> || ...) void operator()(const Kind &) const {}
};
template <typename... Kinds> inline constexpr Passing<Kinds...> passing{};

template <typename... Families> struct PassingAll;
template <typename... Kinds> struct PassingAll<KindsOfCut<Kinds...>> : Passing<Kinds...> {};
template <typename... Kinds, typename... Others>
struct PassingAll<KindsOfCut<Kinds...>, KindsOfCut<Others...>> : Passing<Kinds..., Others...> {};
/// The same for all that are hewn, all joinery or all that is bored: only where it can be told of what is yet
/// to come that it does not matter.
template <typename... Families> inline constexpr PassingAll<Families...> passing_all{};

/// For kinds that are all answered alike.
template <typename Value, typename... Kinds> struct Giving {
    Value value;
    template <typename Kind>
    requires(std::is_same_v<Kind, Kinds> || ...) Value operator()(const Kind &) const { return value; }
};
template <typename... Kinds, typename Value> constexpr Giving<Value, Kinds...> giving(Value value) {
    return {std::move(value)};
}

namespace matching {

template <typename... Handlers> struct Joined : Handlers... { using Handlers::operator()...; };
template <typename... Handlers> Joined(Handlers...) -> Joined<Handlers...>;

/// No cut: who takes it takes whatever comes.
struct Stranger {};

template <typename Handler> constexpr bool takes_any() {
    return std::is_invocable_v<Handler &, const Stranger &> || std::is_invocable_v<Handler &, const Cut &>;
}

template <typename Handler, typename Kind> constexpr bool must_handle() {
    constexpr bool handled = std::is_invocable_v<Handler &, const Kind &>;
    static_assert(handled, "this kind of cut is forgotten here");
    return handled;
}

/// What comes of a visit that does not compile, so that nothing else is said of it.
struct Anything {
    template <typename Result> operator Result() const;
};

/// A kind that could pass for another would be handled as that one where it is forgotten.
template <typename... Kinds> constexpr bool are_apart(const std::variant<Kinds...> *) {
    constexpr auto passes_for = []<typename Kind>(const Kind *) {
        return (0 + ... + (std::is_convertible_v<const Kind &, const Kinds &> ? 1 : 0));
    };
    return ((passes_for(static_cast<const Kinds *>(nullptr)) == 1) && ...);
}
static_assert(are_apart(static_cast<const Cut *>(nullptr)));

template <typename Kind, typename... Kinds> constexpr int times_in(KindsOfCut<Kinds...> /*family*/) {
    return (0 + ... + (std::is_same_v<Kind, Kinds> ? 1 : 0));
}
template <typename... Kinds> constexpr bool are_each_of_one_family(const std::variant<Kinds...> *) {
    return ((times_in<Kinds>(Hewing()) + times_in<Kinds>(Joinery()) + times_in<Kinds>(Boring()) == 1) && ...);
}
static_assert(are_each_of_one_family(static_cast<const Cut *>(nullptr)));

template <typename Handler, typename... Kinds>
auto visited(const std::variant<Kinds...> &cut, Handler &handler) {
    static_assert(!takes_any<Handler>(), "each kind of cut is named, none is caught by a handler for all");
    if constexpr ((must_handle<Handler, Kinds>() && ...)) {
        using Result = std::common_type_t<std::invoke_result_t<Handler &, const Kinds &>...>;
        return std::visit<Result>(handler, cut);
    } else {
        return Anything();
    }
}

} // namespace matching

/// Calls the one of the handlers that takes the cut's kind, and gives what it gives. Handlers are functions
/// of one kind or objects of several (a reference to one that keeps something is called itself, not a copy).
template <typename Handler> auto match(const Cut &cut, Handler &&handler) {
    return matching::visited(cut, handler);
}
template <typename First, typename Second, typename... More>
auto match(const Cut &cut, First &&first, Second &&second, More &&...more) {
    matching::Joined handlers{std::forward<First>(first), std::forward<Second>(second),
                              std::forward<More>(more)...};
    return matching::visited(cut, handlers);
}

/// Whether `match` takes these handlers: every kind has one, and none takes any.
template <typename... Handlers, typename... Kinds>
constexpr bool handles_each(const std::variant<Kinds...> *) {
    using All = matching::Joined<Handlers...>;
    return !matching::takes_any<All>() && (std::is_invocable_v<All &, const Kinds &> && ...);
}

} // namespace roundlay
