// Makes keys of pointers to members: `size<&Wall::thickness>({.name = "thickness", ...},
// bounds::short_size)`. A path of several reaches through structs: `size<&Floor::joist, &TimberSize::width>`.
#pragma once

#include "kernel/document/key.h"
#include "kernel/document/words.h"

#include <type_traits>

namespace roundlay::format {

template <typename T> struct MemberOf;
template <typename Owner, typename Member> struct MemberOf<Member Owner::*> {
    using owner = Owner;
    using member = Member;
};

template <auto first, auto... rest> struct Path {
    using owner = typename MemberOf<decltype(first)>::owner;
    static auto &in(auto &from) {
        if constexpr (sizeof...(rest) == 0)
            return from.*first;
        else
            return Path<rest...>::in(from.*first);
    }
};

template <typename T> struct Stated {
    using type = T;
    static std::optional<T> of(const T &value) { return value; }
};
template <typename T> struct Stated<std::optional<T>> {
    using type = T;
    static const std::optional<T> &of(const std::optional<T> &value) { return value; }
};

template <typename T> struct ListOfWords : std::false_type {};
template <typename T> struct ListOfWords<std::vector<T>> : std::is_enum<T> {};

template <typename T> Value to_value(const T &value) {
    if constexpr (ListOfWords<T>::value) {
        ManyTexts texts;
        for (const auto &each : value)
            texts.emplace_back(word(each));
        return texts;
    } else if constexpr (std::is_enum_v<T>)
        return std::string(word(value));
    else
        return value;
}

template <typename T> T from_value(const Value &value) {
    if constexpr (ListOfWords<T>::value) {
        T all;
        for (const std::string &text : std::get<ManyTexts>(value))
            all.push_back(*find_word<typename T::value_type>(text));
        return all;
    } else if constexpr (std::is_enum_v<T>)
        return *find_word<T>(std::get<std::string>(value));
    else
        return std::get<T>(value);
}

/// How a key reaches its value: `get` and `set` of one member.
template <auto... path> struct Reach {
    using owner = typename Path<path...>::owner;
    using stated = Stated<std::remove_cvref_t<decltype(Path<path...>::in(std::declval<owner &>()))>>;
    using type = typename stated::type;

    static std::optional<Value> get(const void *from) {
        const std::optional<type> value = stated::of(Path<path...>::in(*static_cast<const owner *>(from)));
        return value ? std::optional<Value>(to_value(*value)) : std::nullopt;
    }
    static void set(void *into, const Value &value) {
        Path<path...>::in(*static_cast<owner *>(into)) = from_value<type>(value);
    }
};

/// A key with its owner's type, so that it can only be put into a table of that owner.
template <typename Owner> struct KeyOf {
    Key key;

    template <void (*function)(TableReading &, Owner &)> KeyOf &&check() && {
        key.check = [](TableReading &at, void *owner) { function(at, *static_cast<Owner *>(owner)); };
        return std::move(*this);
    }
    template <bool (*function)(const Owner &, const Owner &)> KeyOf &&asked_for() && {
        key.asked_for = [](const void *owner, const void *base) {
            return function(*static_cast<const Owner *>(owner), *static_cast<const Owner *>(base));
        };
        return std::move(*this);
    }
    template <bool (*function)(const Owner &)> KeyOf &&used() && {
        key.used = [](const void *owner) { return function(*static_cast<const Owner *>(owner)); };
        return std::move(*this);
    }
};

template <typename Way>
KeyOf<typename Way::owner> key_by(const char *name, Kind kind, const char *what, const More &more = {}) {
    return {Key{more, name, std::move(kind), what, Way::get, Way::set}};
}

/// Of a value that is no member of its own: `get` gives an optional one, `set` takes it.
template <typename Owner, auto getter, auto setter> struct Through {
    using owner = Owner;
    using type = typename decltype(getter(std::declval<const Owner &>()))::value_type;
    static std::optional<Value> get(const void *from) {
        const auto value = getter(*static_cast<const Owner *>(from));
        return value ? std::optional<Value>(*value) : std::nullopt;
    }
    static void set(void *into, const Value &value) {
        setter(*static_cast<Owner *>(into), std::get<type>(value));
    }
};

template <auto... path> using KeyAt = KeyOf<typename Path<path...>::owner>;

template <auto... path>
KeyAt<path...> size(const char *name, const LengthBounds &bounds, const char *what, const More &more = {}) {
    return key_by<Reach<path...>>(name, Size{bounds}, what, more);
}
template <auto... path> KeyAt<path...> slope(const char *name, const char *what, const More &more = {}) {
    return key_by<Reach<path...>>(name, Incline{.may_fall = false}, what, more);
}
template <auto... path>
KeyAt<path...> falling_slope(const char *name, const char *what, const More &more = {}) {
    return key_by<Reach<path...>>(name, Incline{.may_fall = true}, what, more);
}
template <auto... path>
KeyAt<path...> count(const char *name, const Count &bounds, const char *what, const More &more = {}) {
    return key_by<Reach<path...>>(name, bounds, what, more);
}
template <auto... path>
KeyAt<path...> number(const char *name, const Number &bounds, const char *what, const More &more = {}) {
    return key_by<Reach<path...>>(name, bounds, what, more);
}
template <auto... path>
KeyAt<path...> load(const char *name, const Load &bounds, const char *what, const More &more = {}) {
    return key_by<Reach<path...>>(name, bounds, what, more);
}
template <auto... path> KeyAt<path...> yes_no(const char *name, const char *what, const More &more = {}) {
    return key_by<Reach<path...>>(name, YesNo{}, what, more);
}
template <auto... path> KeyAt<path...> text(const char *name, const char *what, const More &more = {}) {
    return key_by<Reach<path...>>(name, Text{}, what, more);
}
template <auto... path>
KeyAt<path...> tag_name(const char *name, const char *of, const char *what, const More &more = {}) {
    return key_by<Reach<path...>>(name, TagName{of}, what, more);
}
template <auto... path> KeyAt<path...> wall_name(const char *name, const char *what, const More &more = {}) {
    return key_by<Reach<path...>>(name, WallName{.later = false}, what, more);
}
template <auto... path>
KeyAt<path...> later_wall_name(const char *name, const char *what, const More &more = {}) {
    return key_by<Reach<path...>>(name, WallName{.later = true}, what, more);
}
template <auto... path> KeyAt<path...> direction(const char *name, const char *what, const More &more = {}) {
    return key_by<Reach<path...>>(name, Direction{}, what, more);
}
/// All words of the enumeration but one that has no place here.
template <auto... path>
KeyAt<path...> one_of_but(const char *name, std::string_view but, const char *what, const More &more = {}) {
    OneOf kind;
    for (const auto &each : words<typename Reach<path...>::type>())
        if (each.text != but) kind.words.emplace_back(each.text);
    return key_by<Reach<path...>>(name, std::move(kind), what, more);
}
template <auto... path> KeyAt<path...> one_of(const char *name, const char *what, const More &more = {}) {
    return one_of_but<path...>(name, "", what, more);
}

template <auto... path> KeyAt<path...> some_of(const char *name, const char *what, const More &more = {}) {
    SomeOf kind;
    for (const auto &each : words<typename Reach<path...>::type::value_type>())
        kind.words.emplace_back(each.text);
    return key_by<Reach<path...>>(name, std::move(kind), what, more);
}
template <auto... path> KeyAt<path...> texts(const char *name, const char *what, const More &more = {}) {
    return key_by<Reach<path...>>(name, Texts{}, what, more);
}
template <auto... path> KeyAt<path...> noted(const char *name, const char *what, const More &more = {}) {
    return key_by<Reach<path...>>(name, Noted{}, what, more);
}

/// A table that knows its owner's type, so that it only stands where such owners are.
template <typename Owner> struct TableOf : Table {};

template <typename Owner> struct SharedBy { Shared shared; };
template <auto... path>
SharedBy<typename Path<path...>::owner> shared(const TableOf<typename Reach<path...>::type> &table,
                                               const char *left_out) {
    using Owner = typename Path<path...>::owner;
    return {{&table, [](void *owner) -> void * { return &Path<path...>::in(*static_cast<Owner *>(owner)); },
             left_out}};
}

/// Collects what belongs to one owner.
template <typename Owner> struct ItemOf {
    Item item;
    ItemOf(KeyOf<Owner> &&key) : item(std::move(key.key)) {}
    ItemOf(SharedBy<Owner> &&keys) : item(keys.shared) {}
};
template <typename Owner> std::vector<Item> items(std::initializer_list<ItemOf<Owner>> all) {
    std::vector<Item> out;
    for (const ItemOf<Owner> &each : all)
        out.push_back(each.item);
    return out;
}
template <typename Owner, void (*function)(TableReading &, Owner &)>
void checked(TableReading &at, void *owner) {
    function(at, *static_cast<Owner *>(owner));
}

/// A table whose owner is a member of the Shell.
template <auto member> Section once(const TableOf<typename MemberOf<decltype(member)>::member> &table) {
    using Reached = MemberOf<decltype(member)>;
    Section section{.table = &table};
    section.fresh = [](const Shell &) -> std::shared_ptr<void> {
        return std::make_shared<typename Reached::member>();
    };
    section.in = [](void *around) -> void * {
        return &(static_cast<typename Reached::owner *>(around)->*member);
    };
    return section;
}

/// Entries that are the elements of a vector.
template <auto member>
Section list(const TableOf<typename MemberOf<decltype(member)>::member::value_type> &table,
             std::size_t most) {
    using Around = typename MemberOf<decltype(member)>::owner;
    using Entry = typename MemberOf<decltype(member)>::member::value_type;
    Section section{.table = &table, .most = most};
    section.fresh = [](const Shell &) -> std::shared_ptr<void> { return std::make_shared<Entry>(); };
    section.size = [](const void *around) { return (static_cast<const Around *>(around)->*member).size(); };
    section.at = [](const void *around, std::size_t index) -> const void * {
        return &(static_cast<const Around *>(around)->*member)[index];
    };
    section.add = [](void *around, const void *entry) {
        (static_cast<Around *>(around)->*member).push_back(*static_cast<const Entry *>(entry));
    };
    return section;
}

/// Of those keys no two entries have the same, so that a state can say which one it changes.
inline Section told_by(std::vector<const char *> keys, Section section) {
    section.told_by = std::move(keys);
    return section;
}

/// A list whose entries read well in one line each: `peg = [{ at = "3.10.1", diameter = "1 in" }]`.
template <auto member>
Section list_in_lines(const TableOf<typename MemberOf<decltype(member)>::member::value_type> &table,
                      std::size_t most) {
    Section section = list<member>(table, most);
    section.in_lines = true;
    return section;
}

} // namespace roundlay::format
