// A pile written the ways that people and spreadsheets write it reads back as the same pile.
#include "kernel/levelling/pile.h"
#include "tests/support/catch.h"

#include <rapidcheck.h>

#include <algorithm>
#include <cmath>
#include <cstdio>

using namespace roundlay;

namespace {

/// How one program or hand writes a table of logs.
struct Dialect {
    char separator = ',';
    bool decimal_commas = false, quoted = false, marked = false, wide = false;
    std::string line_end = "\n";
    bool unit_in_header = false;
    std::string unit = "mm";
    std::vector<std::string> columns;
    bool comments = false, titles = false, empty_rows = false, empty_column = false, unknown_column = false;
};

Dialect any_dialect() {
    const auto coin = [] { return *rc::gen::arbitrary<bool>(); };
    Dialect d;
    d.separator = *rc::gen::element(',', ';', '\t');
    d.decimal_commas = d.separator != ',' && coin();
    d.quoted = coin(), d.marked = coin(), d.wide = coin();
    d.line_end = *rc::gen::element<std::string>("\n", "\r\n", "\r");
    d.unit_in_header = coin();
    d.unit = *rc::gen::element<std::string>("mm", "cm", "m", "in");
    d.columns = {"mark", "length", "butt_height", "tip_height"};
    if (coin()) d.columns.emplace_back("butt_width");
    const auto first = d.columns.begin() + *rc::gen::inRange<std::ptrdiff_t>(0, 4);
    std::rotate(d.columns.begin(), first, d.columns.end());
    d.comments = coin(), d.titles = coin(), d.empty_rows = coin(), d.empty_column = coin(),
    d.unknown_column = coin();
    return d;
}

std::string heading(const Dialect &d, const std::string &column) {
    std::string text = column;
    switch (*rc::gen::inRange(0, 3)) {
    case 0:
        for (char &c : text)
            c = static_cast<char>(std::toupper(c));
        break;
    case 1:
        std::ranges::replace(text, '_', ' ');
        text[0] = static_cast<char>(std::toupper(text[0]));
        break;
    default:
        break;
    }
    if (!d.unit_in_header || column == "mark") return text;
    return text + *rc::gen::element<std::string>(" (" + d.unit + ")", " [" + d.unit + "]", " " + d.unit,
                                                 "_" + d.unit, " in " + d.unit);
}

std::string amount(const Dialect &d, double mm) {
    const double unit = d.unit == "mm" ? 1 : d.unit == "cm" ? 10 : d.unit == "m" ? 1000 : 25.4;
    char text[40];
    std::snprintf(text, sizeof text, "%.4f", mm / unit);
    std::string number = text;
    if (d.decimal_commas) std::ranges::replace(number, '.', ',');
    return number + (d.unit_in_header ? "" : " " + d.unit);
}

std::string cell(const Dialect &d, const std::string &text) {
    const bool must = text.find(d.separator) != std::string::npos || text.find('"') != std::string::npos;
    if (!must && !d.quoted) return text;
    std::string quoted = "\"";
    for (const char c : text)
        quoted += c == '"' ? std::string("\"\"") : std::string(1, c);
    return quoted + "\"";
}

void add_row(const Dialect &d, std::string &text, std::vector<std::string> cells) {
    if (d.empty_column) cells.emplace_back();
    if (d.unknown_column) cells.insert(cells.begin() + 1, cells.front() == "" ? "" : "knots");
    for (std::size_t i = 0; i < cells.size(); ++i)
        text += (i ? std::string(1, d.separator) : "") + cell(d, cells[i]);
    text += d.line_end;
}

std::string utf16(const std::string &text) {
    std::string wide = "\xff\xfe";
    for (const char c : text)
        wide += c, wide += '\0';
    return wide;
}

std::string written(const Dialect &d, const std::vector<PileLog> &pile) {
    std::string text;
    if (d.titles) text += "The north yard" + d.line_end;
    if (d.comments) text += "# measured \"by eye" + d.line_end;
    std::vector<std::string> names;
    for (const std::string &column : d.columns)
        names.push_back(heading(d, column));
    add_row(d, text, names);
    for (const PileLog &log : pile) {
        std::vector<std::string> cells;
        for (const std::string &column : d.columns)
            cells.push_back(column == "mark"          ? log.mark
                            : column == "length"      ? amount(d, log.length)
                            : column == "butt_height" ? amount(d, log.butt_height)
                            : column == "tip_height"  ? amount(d, log.tip_height)
                                                      : amount(d, *log.butt_width));
        add_row(d, text, cells);
        if (d.empty_rows) text += std::string(3, d.separator) + d.line_end;
        if (d.comments) text += "# 99" + std::string(1, d.separator) + " fell off" + d.line_end;
    }
    if (d.wide) return utf16(text);
    return (d.marked ? "\xef\xbb\xbf" : "") + text;
}

std::vector<PileLog> any_logs() {
    std::vector<PileLog> pile;
    for (int i = *rc::gen::inRange(1, 8); i > 0; --i) {
        PileLog log;
        log.mark = *rc::gen::element<std::string>("L", "a, b", "x;y", "7\"", "IV ") + std::to_string(i);
        log.length = *rc::gen::inRange(2000, 12000);
        log.butt_height = *rc::gen::inRange(1500, 4000) / 10.0;
        log.tip_height = *rc::gen::inRange(1500, 4000) / 10.0;
        log.butt_width = *rc::gen::inRange(1500, 4000) / 10.0;
        pile.push_back(log);
    }
    return pile;
}

} // namespace

TEST_CASE("A pile reads the same from whatever dialect of CSV it was written in") {
    CHECK(rc::check([] {
        const Dialect d = any_dialect();
        const auto pile = any_logs();
        const std::string text = written(d, pile);
        const auto read = read_pile(text);
        if (!read.problems.empty())
            RC_FAIL(std::to_string(read.problems[0].line) + ": " + read.problems[0].message + "\n" + text);
        RC_ASSERT(read.rows.size() == pile.size());
        const double band = 1; // four decimals of a unit
        for (std::size_t i = 0; i < pile.size(); ++i) {
            RC_ASSERT(read.rows[i].mark == pile[i].mark);
            RC_ASSERT(std::abs(read.rows[i].length - pile[i].length) < band);
            RC_ASSERT(std::abs(read.rows[i].butt_height - pile[i].butt_height) < band);
            RC_ASSERT(std::abs(read.rows[i].tip_height - pile[i].tip_height) < band);
            RC_ASSERT(read.rows[i].butt_width.has_value() == (d.columns.size() == 5));
        }
    }));
}

TEST_CASE("Any bytes at all are read or refused, with a line") {
    CHECK(rc::check([] {
        std::string text =
            *rc::gen::element<std::string>("", "wall,round,mark\n", "mark;length;butt_height;tip_height\n");
        for (int i = *rc::gen::inRange(0, 60); i > 0; --i)
            text += *rc::gen::oneOf(rc::gen::element('"', ',', ';', '\n', '\r', '#', '1', '.', ' '),
                                    rc::gen::arbitrary<char>());
        for (const CsvProblem &p : read_pile(text).problems)
            RC_ASSERT(p.line >= 1);
        for (const CsvProblem &p : read_record(text).problems)
            RC_ASSERT(p.line >= 1);
    }));
}
