#include "kernel/measure/character.h"
#include "kernel/xlsx/sheet_parts.h"
#include "kernel/xlsx/xml_reader.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <optional>

namespace roundlay {

namespace {

constexpr std::size_t most_columns = 500;     ///< more are told and left out
constexpr std::size_t most_cells = 4'000'000; ///< of a sheet, empty ones in front of others counted

struct CellPlace {
    std::size_t row = 0, column = 0; ///< from 0
};

/// "AB7"; nothing where it is no such name.
std::optional<CellPlace> place_named(std::string_view name) {
    constexpr std::size_t letters = 26, furthest = 16384;
    std::size_t i = 0, column = 0;
    for (; i < name.size() && name[i] >= 'A' && name[i] <= 'Z' && column <= furthest; ++i)
        column = column * letters + static_cast<std::size_t>(name[i] - 'A') + 1;
    std::size_t row = 0;
    const auto [end, error] = std::from_chars(name.data() + i, name.data() + name.size(), row);
    if (column == 0 || error != std::errc() || end != name.data() + name.size() || row == 0) return {};
    return CellPlace{row - 1, column - 1};
}

std::optional<double> number_of(const std::string &text) {
    double value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc() || end != text.data() + text.size()) return {};
    return value;
}

/// As it is written shortest: a spreadsheet stores 3.1 as 3.1000000000000001.
std::string shortest(const std::string &number) {
    const auto value = number_of(number);
    if (!value) return number;
    std::array<char, 400> room{};
    const auto written =
        std::to_chars(room.data(), room.data() + room.size(), *value, std::chars_format::fixed);
    return {room.data(), written.ptr};
}

bool has_one_decimal(const std::string &number) {
    const std::size_t point = number.find('.');
    return point != std::string::npos && point + 2 == number.size();
}

bool is_decimal(const std::string &number) {
    return number.find_first_not_of("-.0123456789") == std::string::npos;
}

/// Of a cell that holds its day as letters: "2026-05-03T00:00:00Z". Nothing where it holds another thing.
std::optional<std::string> day_of(const std::string &text) {
    constexpr std::string_view day = "0000-00-00", midnight = "T00:00";
    const std::string_view letters(text);
    if (letters.size() < day.size()) return {};
    for (std::size_t i = 0; i < day.size(); ++i)
        if (is_digit(letters[i]) != (day[i] == '0') || (day[i] == '-' && letters[i] != '-')) return {};
    const std::string_view time = letters.substr(day.size());
    const bool none = time.empty() || (time.starts_with(midnight) &&
                                       time.find_first_of("123456789") == std::string_view::npos);
    return std::string(none ? letters.substr(0, day.size()) : letters);
}

class SheetReader {
  public:
    SheetReader(const SheetContext &context, ReadSheet &out) : context_(context), out_(out) {}

    bool read(const std::string &xml) {
        const bool formed = read_xml(
            xml, {[this](std::string_view name, const XmlAttributes &attributes) { open(name, attributes); },
                  [this](std::string_view name) { close(name); },
                  [this](std::string_view letters) { (in_content_ ? content_ : ignored_) += letters; }});
        return formed && !too_large_;
    }

  private:
    void open(std::string_view name, const XmlAttributes &attributes);
    void close(std::string_view name);
    void begin_cell(const XmlAttributes &attributes);
    void end_cell();
    void take_content(std::string text);
    void take_number(const std::string &text);
    void take_percent(const std::string &number, int decimals);
    void take_day(std::string iso, bool whole);
    void leave_time(const std::string &text);
    void put(std::string text);
    void end_row();
    void remark(std::string message) { out_.remarks.push_back({line(), name(), std::move(message)}); }
    int line() const { return static_cast<int>(at_.row) + 1; }
    std::string name() const { return cell_name(at_.row, at_.column); }

    const SheetContext &context_;
    ReadSheet &out_;
    CellPlace at_{0, 0}, next_{0, 0};
    std::string type_, content_, ignored_, formula_;
    std::size_t style_ = 0;
    std::vector<std::string> row_;
    std::size_t cells_ = 0;
    bool in_cell_ = false, in_content_ = false, has_formula_ = false, said_how_ = false;
    bool too_large_ = false, told_columns_ = false;
};

void SheetReader::open(std::string_view name, const XmlAttributes &attributes) {
    ignored_.clear();
    if (name == "row") {
        const std::string number = attributes["r"];
        std::size_t row = 0;
        const auto [end, error] = std::from_chars(number.data(), number.data() + number.size(), row);
        if (error == std::errc() && row > 0) next_.row = row - 1;
        next_.column = 0;
        at_ = next_;
    }
    if (name == "c") begin_cell(attributes);
    if (name == "rPh") said_how_ = true;
    if (in_cell_ && (name == "v" || (name == "t" && !said_how_))) in_content_ = true;
    if (in_cell_ && name == "f") has_formula_ = true;
    if (name == "mergeCell") {
        const std::string range = attributes["ref"];
        const auto first = place_named(range.substr(0, range.find(':')));
        if (first && range.find(':') != std::string::npos)
            out_.remarks.push_back({static_cast<int>(first->row) + 1, range,
                                    "these cells are merged, and only the first of them holds anything: part "
                                    "them and write into each what belongs there"});
    }
}

void SheetReader::begin_cell(const XmlAttributes &attributes) {
    const auto place = place_named(attributes["r"]);
    at_ = place.value_or(CellPlace{next_.row, next_.column});
    next_ = {at_.row, at_.column + 1};
    type_ = attributes["t"];
    const std::string style = attributes["s"];
    style_ = 0;
    std::from_chars(style.data(), style.data() + style.size(), style_);
    content_.clear();
    in_cell_ = true, has_formula_ = false;
}

void SheetReader::close(std::string_view name) {
    if (in_cell_ && name == "f") formula_ = ignored_;
    if (name == "v" || name == "t") in_content_ = false;
    if (name == "rPh") said_how_ = false;
    if (name == "c") end_cell();
    if (name == "row") end_row();
}

void SheetReader::end_cell() {
    in_cell_ = false;
    if (has_formula_) {
        const std::string is = content_.empty() || type_ == "s" ? "" : ", last worked out as " + content_;
        return remark("this is a formula (=" + formula_ + is + "), and is left out: type what was measured");
    }
    take_content(std::move(content_));
}

void SheetReader::take_content(std::string text) {
    if (type_ == "e") return remark(text + " is an error of the spreadsheet, and is left out");
    if (type_ == "s") {
        std::size_t index = context_.texts.size();
        std::from_chars(text.data(), text.data() + text.size(), index);
        return index < context_.texts.size() ? put(context_.texts[index]) : void();
    }
    if (type_ == "b") return put(text == "1" ? "true" : "false");
    if (type_ == "d") {
        auto day = day_of(text);
        return day ? take_day(*std::move(day), true) : leave_time(text);
    }
    if (!type_.empty() && type_ != "n") return put(std::move(text));
    if (!text.empty()) take_number(text);
}

void SheetReader::take_number(const std::string &text) {
    const NumberLook look = style_ < context_.looks.size() ? context_.looks[style_] : NumberLook{};
    std::string number = shortest(text);
    switch (look.as) {
    case ShownAs::percent:
        return is_decimal(number) ? take_percent(number, look.decimals) : put(number);
    case ShownAs::date:
        if (auto day = iso_date(number_of(text).value_or(0), context_.from_1904))
            return take_day(*std::move(day), look.whole);
        return leave_time(text);
    case ShownAs::time:
        return leave_time(text);
    case ShownAs::number:
        break;
    }
    if (has_one_decimal(number)) out_.one_decimal.push_back({line(), at_.column, name(), number});
    put(std::move(number));
}

/// With all digits that it has, be they shown or not.
void SheetReader::take_percent(const std::string &number, int decimals) {
    const std::string percent = hundredfold(number);
    const std::size_t point = std::min(percent.find('.'), percent.size());
    if (percent.size() > point + 1 + static_cast<std::size_t>(decimals))
        out_.doubts.push_back({line(), name(),
                               "the spreadsheet shows fewer digits than it holds: " + percent +
                                   " % is taken, look whether that was measured"});
    put(percent + " %");
}

void SheetReader::take_day(std::string iso, bool whole) {
    out_.dates.push_back({line(), at_.column, name(), iso, whole});
    put(std::move(iso));
}

void SheetReader::leave_time(const std::string &text) {
    remark("the spreadsheet has made a date or a time of what was typed (it holds " + text +
           "), and it is left out: format the cell as text and type it again");
}

void SheetReader::put(std::string text) {
    if (text.empty()) return;
    if (at_.column >= most_columns) {
        if (!told_columns_) remark("what stands in this column and further right is left out");
        told_columns_ = true;
        return;
    }
    if (row_.size() <= at_.column) row_.resize(at_.column + 1);
    row_[at_.column] = std::move(text);
}

void SheetReader::end_row() {
    cells_ += row_.size();
    too_large_ = too_large_ || cells_ > most_cells;
    const bool filled =
        std::ranges::any_of(row_, [](const std::string &cell) { return !trimmed(cell).empty(); });
    if (filled && !too_large_) {
        const auto first =
            std::ranges::find_if(row_, [](const std::string &cell) { return !trimmed(cell).empty(); });
        const bool remark = trimmed(*first).starts_with('#');
        out_.rows.rows.push_back({line(), std::move(row_), remark});
    }
    row_.clear();
    next_ = {next_.row + 1, 0};
}

} // namespace

std::string cell_name(std::size_t row, std::size_t column) {
    constexpr std::size_t letters = 26;
    std::string name;
    for (std::size_t c = column + 1; c > 0; c = (c - 1) / letters)
        name.insert(name.begin(), static_cast<char>('A' + (c - 1) % letters));
    return name + std::to_string(row + 1);
}

bool read_sheet(const std::string &xml, const SheetContext &context, ReadSheet &out) {
    return SheetReader(context, out).read(xml);
}

} // namespace roundlay
