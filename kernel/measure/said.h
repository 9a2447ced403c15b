// What is said to a person, as a text with holes and what stands in them: a value, no sentence.
//
// The English text is the key into the catalogues of the other languages, as gettext has it (room `words`),
// so it stands where it is said and nowhere else. What fills the holes keeps its kind, so that each reader
// sees lengths in their own units and machines get numbers.
#pragma once

#include <concepts>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace roundlay {

struct Said;

/// A length in millimetres, any sign.
struct LengthAmount {
    double mm = 0;
    bool exact =
        false; ///< advice that was tried with just this length: spelled out where rounding would change it
    int decimals = 0; ///< over 0: told to so many decimal places of a millimetre or an inch
};

/// A load in kilopascals.
struct LoadAmount {
    double kpa = 0;
};

/// What fills one hole.
class Amount {
  public:
    /// A length; a load; a whole number; a name or tag as the person wrote it, which no language changes; or
    /// a phrase that is translated in its turn (always one, in a vector as it is of a kind with what holds
    /// it).
    using Value = std::variant<LengthAmount, LoadAmount, long long, std::string, std::vector<Said>>;

    inline Amount(LengthAmount length);
    inline Amount(LoadAmount load);
    template <std::integral Count>
    requires(!std::same_as<Count, bool>) Amount(Count count);
    inline Amount(std::string name);
    Amount(const char *) = delete; // words of our own are said()
    inline Amount(Said phrase);
    // Below, where the vector of phrases is complete.
    inline Amount(const Amount &);
    inline Amount(Amount &&) noexcept;
    inline Amount &operator=(const Amount &);
    inline Amount &operator=(Amount &&) noexcept;
    inline ~Amount();

    const Value &value() const { return value_; }

  private:
    Value value_;
};

/// `text` lives as long as the program: a literal, or an entry of a table of words.
struct Said {
    std::string_view text;       ///< in English, with holes %1 to %9
    std::vector<Amount> amounts; ///< of %1, %2 and so on; each is used
};

inline Amount::Amount(LengthAmount length) : value_(length) {}
inline Amount::Amount(LoadAmount load) : value_(load) {}
template <std::integral Count>
requires(!std::same_as<Count, bool>) Amount::Amount(Count count) : value_(static_cast<long long>(count)) {}
inline Amount::Amount(std::string name) : value_(std::move(name)) {}
inline Amount::Amount(const Amount &) = default;
inline Amount::Amount(Amount &&) noexcept = default;
inline Amount &Amount::operator=(const Amount &) = default;
inline Amount &Amount::operator=(Amount &&) noexcept = default;
inline Amount::~Amount() = default;

inline Amount::Amount(Said phrase) : value_(std::vector<Said>{}) {
    std::get<std::vector<Said>>(value_).push_back(std::move(phrase));
}

/// The number of a hole that begins there, 1 to 9; 0 where none does.
constexpr int hole_at(std::string_view text, std::size_t at) {
    if (at + 1 >= text.size() || text[at] != '%' || text[at + 1] < '1' || text[at + 1] > '9') return 0;
    return text[at + 1] - '0';
}

/// One bit for each hole that a text has: %1 is the lowest. Texts with the same holes can translate one
/// another.
constexpr unsigned holes_of(std::string_view text) {
    unsigned holes = 0;
    for (std::size_t at = 0; at < text.size(); ++at)
        if (const int hole = hole_at(text, at)) holes |= 1U << (hole - 1);
    return holes;
}

/// A literal whose holes are %1 up to %`Count`, all of them: anything else does not compile.
template <std::size_t Count> struct SaidText {
    std::string_view text;
    consteval SaidText(const char *literal) : text(literal) {
        if (holes_of(text) != (1U << Count) - 1) throw "the holes of the text are not its amounts";
    }
};

/// `said("its pocket leaves only %1 of %2 under it", in_mm(under), tag)`.
template <typename... Amounts> Said said(SaidText<sizeof...(Amounts)> text, Amounts &&...amounts) {
    Said all{text.text, {}};
    all.amounts.reserve(sizeof...(Amounts));
    (all.amounts.emplace_back(std::forward<Amounts>(amounts)), ...);
    return all;
}

/// A word out of a table of words (a species, a rule), said as it stands there.
inline Said phrase(std::string_view word) {
    return {word, {}};
}

inline LengthAmount in_mm(double length) {
    return {length};
}
inline LengthAmount exactly_in_mm(double length) {
    return {length, true};
}
inline LengthAmount finely_in_mm(double length, int decimals) {
    return {length, false, decimals};
}
inline LoadAmount in_kpa(double load) {
    return {load};
}

} // namespace roundlay
