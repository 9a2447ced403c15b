#include "tests/fuzz/mutate_document.h"

#include "kernel/document/key.h"

#include <algorithm>
#include <array>
#include <random>
#include <vector>

namespace roundlay::test {

namespace {

using Random = std::mt19937;
using Lines = std::vector<std::string>;

std::size_t below(Random &random, std::size_t bound) {
    return bound == 0 ? 0 : random() % bound;
}

template <typename List> auto one_of(Random &random, const List &list) {
    return list[below(random, list.size())];
}

Lines lines_of(const std::string &text) {
    Lines lines;
    for (std::size_t from = 0; from < text.size();) {
        const std::size_t to = std::min(text.find('\n', from), text.size());
        lines.push_back(text.substr(from, to - from));
        from = to + 1;
    }
    return lines;
}

std::string joined(const Lines &lines) {
    std::string text;
    for (const std::string &line : lines)
        text += line + "\n";
    return text;
}

/// Lengths near what walls are made of, and some that lie on bounds.
std::string any_length(Random &random) {
    static const std::array<int, 24> steps{0,   1,   2,   12,  20,  38,  50,  75,   99,   100,  150,  199,
                                           200, 220, 240, 300, 440, 600, 900, 1200, 1800, 2000, 6000, 12000};
    const double v =
        one_of(random, steps) + (below(random, 4) == 0 ? static_cast<double>(below(random, 1000)) / 10 : 0);
    std::string text = std::to_string(v);
    text.resize(text.find('.') + 3);
    return "\"" + std::string(below(random, 40) == 0 ? "-" : "") + text + " mm\"";
}

std::string any_value(Random &random) {
    static const std::array<std::string, 40> words{"\"A\"",
                                                   "\"B\"",
                                                   "\"C\"",
                                                   "\"D\"",
                                                   "\"P\"",
                                                   "\"Q\"",
                                                   "\"east\"",
                                                   "\"north\"",
                                                   "\"west\"",
                                                   "\"south\"",
                                                   "\"north-east\"",
                                                   "\"30 deg north of east\"",
                                                   "\"full dovetail\"",
                                                   "\"half dovetail\"",
                                                   "\"square lap\"",
                                                   "\"stated\"",
                                                   "\"saddle\"",
                                                   "\"level\"",
                                                   "\"staggered\"",
                                                   "\"left\"",
                                                   "\"right\"",
                                                   "\"door\"",
                                                   "\"window\"",
                                                   "\"rod\"",
                                                   "\"hole\"",
                                                   "\"tailed\"",
                                                   "\"1:8\"",
                                                   "\"1:20\"",
                                                   "\"-1:6\"",
                                                   "0.125",
                                                   "true",
                                                   "false",
                                                   "\"imperial\"",
                                                   "\"sawn\"",
                                                   "\"patched\"",
                                                   "0.5",
                                                   "1",
                                                   "0.01",
                                                   "\"balsam\"",
                                                   "[\"A\", \"B\"]"};
    switch (below(random, 4)) {
    case 0:
        return one_of(random, words);
    case 1:
        return std::to_string(below(random, 14));
    default:
        return any_length(random);
    }
}

/// What a shell may have besides its walls; each entry of it may be put in as it stands.
const std::array<std::string, 15> entries{
    "[[opening]]\nname = \"w\"\nwall = \"A\"\nfrom_left = \"1200 mm\"\nsill = \"600 mm\"\nwidth = \"900 "
    "mm\"\nheight = \"800 mm\"",
    "[[opening]]\nkind = \"door\"\nwall = \"C\"\nfrom_left = \"1500 mm\"\nsill = 0\nwidth = \"900 "
    "mm\"\nheight = \"1200 mm\"",
    "[[step]]\nwall = \"A\"\nfrom_left = 0\nwidth = \"6 m\"\nrise = \"440 mm\"",
    "[[step]]\nwall = \"B\"\nfrom_left = \"1500 mm\"\nwidth = \"900 mm\"\nrise = \"300 mm\"",
    "[[floor]]\nname = \"G\"\nfrom = \"A\"\nto = \"C\"\nlevel = \"600 mm\"\npocket = \"tailed\"\nlive_load = "
    "1.9",
    "[[floor.beam]]\nfrom_wall = \"2000 mm\"\nwidth = \"200 mm\"\nheight = \"200 mm\"",
    "[[floor.opening]]\nname = \"stair\"\nfrom_left = \"800 mm\"\nfrom_wall = \"900 mm\"\nwidth = \"900 "
    "mm\"\nlength = \"1200 mm\"",
    "[[bore]]\nuse = \"rod\"\nwall = \"A\"\nfrom_left = \"800 mm\"\ndiameter = \"25 mm\"",
    "[[bore]]\nuse = \"hole\"\nwall = \"B\"\nfrom_left = \"900 mm\"\ndiameter = \"40 mm\"\nfrom_round = "
    "2\nto_round = 4\ndrift = \"3 mm\"",
    "[[partition]]\nname = \"P\"\nfrom = \"A\"\nfrom_left = \"3000 mm\"\nto = \"C\"",
    "[[partition]]\nname = \"Q\"\nfrom = \"B\"\nfrom_left = \"2400 mm\"\nto = \"P\"",
    "[[log]]\nwall = \"A\"\nround = 2\nmark = \"x\"\nbutt_height = \"205 mm\"\noverhang_left = \"90 "
    "mm\"\nbow = \"20 mm\"",
    "[[corner]]\nbetween = [\"A\", \"B\"]\nkind = \"half dovetail\"\noverhang = \"150 mm\"",
    "[trim]\nspline_width = \"50 mm\"\nspline_depth = \"38 mm\"\nsill_slope = \"1:12\"",
    "[logs]\nbutt_height = \"205 mm\"\ntip_height = \"195 mm\"\ntip_width = \"180 mm\"\ndiameter = \"300 "
    "mm\""};

/// Every key that the format describes, of whichever table.
Lines all_keys() {
    Lines keys;
    for (const format::Section *section : format::all_sections())
        for (const format::Item &item : section->table->items)
            if (const auto *key = std::get_if<format::Key>(&item)) keys.emplace_back(key->name);
    return keys;
}

/// The lines of an entry: its header and what stands under it.
std::pair<std::size_t, std::size_t> entry_at(const Lines &lines, std::size_t at) {
    std::size_t from = std::min(at, lines.size()), to = from;
    while (from > 0 && !lines[std::min(from, lines.size() - 1)].starts_with("["))
        --from;
    to = std::min(from + 1, lines.size());
    while (to < lines.size() && !lines[to].starts_with("["))
        ++to;
    return {from, to};
}

std::ptrdiff_t step(std::size_t i) {
    return static_cast<std::ptrdiff_t>(i);
}

void stroke(Random &random, Lines &lines) {
    const std::size_t at = below(random, lines.size());
    const auto [from, to] = entry_at(lines, at);
    switch (below(random, 12)) {
    case 0:
        lines.erase(lines.begin() + step(at));
        break;
    case 1: {
        static const Lines keys = all_keys();
        lines.insert(lines.begin() + step(at) + 1, one_of(random, keys) + " = " + any_value(random));
        break;
    }
    case 2: {
        const Lines copy(lines.begin() + step(from), lines.begin() + step(to));
        lines.insert(lines.end(), copy.begin(), copy.end());
        break;
    }
    case 3:
        lines.erase(lines.begin() + step(from), lines.begin() + step(to));
        break;
    case 4:
    case 5: {
        const Lines more = lines_of(one_of(random, entries));
        lines.insert(lines.end(), more.begin(), more.end());
        break;
    }
    default:
        if (const std::size_t is = lines[at].find('='); is != std::string::npos)
            lines[at] = lines[at].substr(0, is) + "= " + any_value(random);
    }
}

} // namespace

std::string mutated_document(const std::string &text, unsigned seed) {
    Random random(seed);
    Lines lines = lines_of(text);
    for (std::size_t strokes = 1 + below(random, 4); strokes > 0; --strokes) {
        if (lines.empty()) lines.push_back("roundlay = 1");
        stroke(random, lines);
    }
    return joined(lines);
}

} // namespace roundlay::test
