#include "kernel/document/lines.h"

#include <algorithm>

namespace roundlay {

namespace {

/// Every byte but those inside a character starts one.
bool starts_character(char c) {
    return (static_cast<unsigned char>(c) & 0xc0) != 0x80;
}

} // namespace

Lines::Lines(std::string_view text) : text_(text) {
    starts_.push_back(text.starts_with(byte_order_mark) ? byte_order_mark.size() : 0);
    for (std::size_t i = starts_.front(); i < text.size(); ++i)
        if (text[i] == '\n') starts_.push_back(i + 1);
}

std::size_t Lines::index_of_line(std::size_t offset) const {
    const auto behind = std::upper_bound(starts_.begin(), starts_.end(), offset);
    return behind == starts_.begin() ? 0 : static_cast<std::size_t>(behind - starts_.begin()) - 1;
}

Place Lines::place_at(std::size_t offset) const {
    offset = std::min(offset, text_.size());
    const std::size_t line = index_of_line(offset);
    const std::size_t from = std::min(starts_[line], offset);
    const auto characters =
        std::count_if(text_.begin() + static_cast<std::ptrdiff_t>(from),
                      text_.begin() + static_cast<std::ptrdiff_t>(offset), starts_character);
    return {static_cast<int>(line) + 1, static_cast<int>(characters) + 1, offset};
}

std::size_t Lines::offset_of(std::size_t line, std::size_t column) const {
    if (line == 0 || line > starts_.size()) return text_.size();
    std::size_t at = starts_[line - 1];
    const std::size_t end = line < starts_.size() ? starts_[line] - 1 : text_.size();
    for (std::size_t c = 1; c < column && at < end; ++c)
        for (++at; at < end && !starts_character(text_[at]);)
            ++at;
    return at;
}

std::size_t Lines::line_start(std::size_t offset) const {
    return starts_[index_of_line(offset)];
}

std::size_t Lines::line_end(std::size_t offset) const {
    const std::size_t line = index_of_line(offset);
    return line + 1 < starts_.size() ? starts_[line + 1] : text_.size();
}

} // namespace roundlay
