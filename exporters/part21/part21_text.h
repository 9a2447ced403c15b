// The clear text encoding of exchange structures, ISO 10303-21: how strings, numbers and instances are spelt.
#pragma once

#include "kernel/geometry/vec.h"

#include <array>
#include <cstdint>
#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace roundlay::part21 {

/// A name as the file spells it, quotes included: printable ASCII as it stands, apostrophe and backslash
/// doubled, everything else as \X2\ or \X4\. Bytes that are no UTF-8 become U+FFFD, control characters a
/// space.
std::string spelt(std::string_view utf8);

/// At most `most` characters (not bytes) of a name; a longer one ends in "...".
std::string shortened(std::string_view utf8, std::size_t most);

/// The shortest digits that read back as the same double, with the point that the encoding asks for.
void append_real(std::string &to, double value);

struct Ref {
    int id = 0;
};
struct Enumeration {
    std::string_view name; ///< without its dots
};
struct Typed {
    std::string_view type; ///< e.g. LENGTH_MEASURE
    double value = 0;
};
/// The same of any other kind of value: a string, a whole number, a truth.
template <typename Value> struct TypedValue {
    std::string_view type;
    Value value;
};
template <typename Value> TypedValue<Value> typed(std::string_view type, Value value) {
    return {type, std::move(value)};
}
struct Named {
    std::string_view type; ///< e.g. IDENTIFIER
    std::string_view text;
};
struct Unset {};   ///< $
struct Derived {}; ///< *

/// Writes a data section, instance by instance, numbered from 1.
class DataWriter {
  public:
    /// One simple instance, e.g. add("VERTEX_POINT", "", point).
    template <typename... Values> Ref add(std::string_view type, const Values &...values) {
        const Ref made = open();
        append_record(type, values...);
        text_ += ";\n";
        return made;
    }

    /// One complex instance from its parts, each written by `part`; see complex().
    class Complex {
      public:
        explicit Complex(DataWriter &writer) : writer_(writer), made_(writer.open()) { writer_.text_ += '('; }
        template <typename... Values> Complex &part(std::string_view type, const Values &...values) {
            writer_.append_record(type, values...);
            return *this;
        }
        Ref end() {
            writer_.text_ += ");\n";
            return made_;
        }

      private:
        DataWriter &writer_;
        Ref made_;
    };
    Complex complex() { return Complex(*this); }

    /// One instance whose text between '=' and ';' is given.
    Ref add_text(std::string_view text) {
        const Ref made = open();
        text_ += text;
        text_ += ";\n";
        return made;
    }

    void reserve(std::size_t bytes) { text_.reserve(bytes); }
    std::string take() { return std::move(text_); }

  private:
    Ref open();
    template <typename... Values> void append_record(std::string_view type, const Values &...values) {
        text_ += type;
        text_ += '(';
        [[maybe_unused]] bool first = true;
        ((separate(first), append(values)), ...);
        text_ += ')';
    }
    void separate(bool &first) {
        if (!first) text_ += ',';
        first = false;
    }
    /// Breaks a list's line, for readers with short line buffers.
    void fold(std::size_t &line);
    void append(Ref ref);
    void append(const std::vector<Ref> &refs);
    template <typename Number> void append(const std::vector<Number> &items) {
        text_ += '(';
        bool first = true;
        std::size_t line = text_.size();
        for (const Number &item : items) {
            separate(first);
            fold(line);
            append(item);
        }
        text_ += ')';
    }
    void append(std::string_view name) { text_ += spelt(name); }
    void append(const char *name) { append(std::string_view(name)); }
    void append(const std::string &name) { append(std::string_view(name)); }
    void append(bool value) { text_ += value ? ".T." : ".F."; }
    void append(int value) { text_ += std::to_string(value); }
    void append(std::int64_t value) { text_ += std::to_string(value); }
    void append(double value) { append_real(text_, value); }
    void append(Vec3 v);
    template <std::size_t count> void append(const std::array<int, count> &items) {
        append(std::vector<int>(items.begin(), items.end()));
    }
    void append(Enumeration value);
    void append(Typed value);
    void append(Named value);
    template <typename Value> void append(const TypedValue<Value> &value) {
        text_ += value.type;
        text_ += '(';
        append(value.value);
        text_ += ')';
    }
    template <typename Value> void append(const std::optional<Value> &value) {
        if (value)
            append(*value);
        else
            append(Unset{});
    }
    void append(Unset) { text_ += '$'; }
    void append(Derived) { text_ += '*'; }

    std::string text_;
    int last_ = 0;
};

} // namespace roundlay::part21
