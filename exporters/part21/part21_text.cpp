#include "exporters/part21/part21_text.h"

#include "exporters/part21/utf8.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <stdexcept>

namespace roundlay::part21 {

namespace {

/// Lists are folded after this many bytes.
constexpr std::size_t longest_line = 72;

void append_hex(std::string &to, char32_t character, int digits) {
    static constexpr char figures[] = "0123456789ABCDEF";
    for (int shift = 4 * (digits - 1); shift >= 0; shift -= 4)
        to += figures[(character >> shift) & 0xF];
}

bool is_plain(char32_t c) {
    return c >= 0x20 && c <= 0x7E;
}

/// One run of characters outside printable ASCII that fit the same directive.
std::size_t append_run(std::string &to, const std::u32string &all, std::size_t from) {
    const bool wide = all[from] > 0xFFFF;
    to += wide ? "\\X4\\" : "\\X2\\";
    std::size_t i = from;
    for (; i < all.size() && !is_plain(all[i]) && (all[i] > 0xFFFF) == wide; ++i)
        append_hex(to, all[i], wide ? 8 : 4);
    to += "\\X0\\";
    return i;
}

bool needs_no_care(std::string_view bytes) {
    return std::all_of(bytes.begin(), bytes.end(), [](char c) {
        return is_plain(static_cast<unsigned char>(c)) && c != '\'' && c != '\\';
    });
}

} // namespace

std::string spelt(std::string_view utf8) {
    std::string text = "'";
    if (needs_no_care(utf8)) return text.append(utf8) += '\'';
    const std::u32string all = utf8::characters(utf8);
    for (std::size_t i = 0; i < all.size();) {
        if (!is_plain(all[i])) {
            i = append_run(text, all, i);
            continue;
        }
        const char c = static_cast<char>(all[i++]);
        text += c;
        if (c == '\'' || c == '\\') text += c;
    }
    return text + "'";
}

std::string shortened(std::string_view utf8, std::size_t most) {
    const std::u32string all = utf8::characters(utf8);
    if (all.size() <= most) return std::string(utf8);
    return utf8::bytes(all.substr(0, most - 3)) + "...";
}

void append_real(std::string &to, double value) {
    if (!std::isfinite(value)) throw std::invalid_argument("A number in a STEP file must be finite.");
    if (value == 0) value = 0; // no negative zero
    char digits[32];
    const std::to_chars_result end = std::to_chars(digits, digits + sizeof digits, value);
    const std::string_view shortest(digits, static_cast<std::size_t>(end.ptr - digits));
    const std::size_t exponent = shortest.find('e');
    const std::string_view mantissa = shortest.substr(0, exponent);
    to += mantissa;
    if (mantissa.find('.') == std::string_view::npos) to += '.';
    if (exponent == std::string_view::npos) return;
    to += 'E';
    to += shortest.substr(exponent + 1);
}

Ref DataWriter::open() {
    text_ += '#';
    text_ += std::to_string(++last_);
    text_ += '=';
    return {last_};
}

void DataWriter::fold(std::size_t &line) {
    if (text_.size() - line <= longest_line) return;
    text_ += '\n';
    line = text_.size();
}

void DataWriter::append(Ref ref) {
    text_ += '#';
    char digits[16];
    text_.append(digits, std::to_chars(digits, digits + sizeof digits, ref.id).ptr);
}

void DataWriter::append(const std::vector<Ref> &refs) {
    text_ += '(';
    std::size_t line = text_.size();
    for (std::size_t i = 0; i < refs.size(); ++i) {
        if (i > 0) text_ += ',';
        fold(line);
        append(refs[i]);
    }
    text_ += ')';
}

void DataWriter::append(Vec3 v) {
    text_ += '(';
    append(v.x);
    text_ += ',';
    append(v.y);
    text_ += ',';
    append(v.z);
    text_ += ')';
}

void DataWriter::append(Enumeration value) {
    text_ += '.';
    text_ += value.name;
    text_ += '.';
}

void DataWriter::append(Named value) {
    text_ += value.type;
    text_ += '(';
    text_ += spelt(value.text);
    text_ += ')';
}

void DataWriter::append(Typed value) {
    text_ += value.type;
    text_ += '(';
    append(value.value);
    text_ += ')';
}

} // namespace roundlay::part21
