#include "modeler/command_line/router_options.h"

#include "modeler/command_line/values.h"

#include <CLI/CLI.hpp>

#include <charconv>

namespace roundlay {

namespace {

std::optional<double> bare_number(const std::string &text) {
    double value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc() || end != text.data() + text.size()) return {};
    return value;
}

/// "6" in the document's units, or "6 mm", "1/4 in"; any sign: whether it will do is said by who cuts with
/// it.
double length_typed(std::string_view option, const std::string &text, UnitSystem units) {
    constexpr double most = 1e6;
    if (const auto bare = bare_number(text)) {
        const double mm = *bare * (units == UnitSystem::metric ? 1 : mm_per_inch);
        if (std::abs(mm) <= most) return mm;
    }
    const auto read = parse_length(text);
    if (const auto *length = std::get_if<Length>(&read); length && std::abs(length->mm()) <= most)
        return length->mm();
    throw UsageError(std::string(option) + " \"" + text + "\": expected a number of " +
                     (units == UnitSystem::metric ? "millimetres" : "inches") +
                     ", or a length with its unit such as 6 mm or 1/4 in");
}

double number_typed(std::string_view option, const std::string &text) {
    if (const auto bare = bare_number(text); bare && std::abs(*bare) <= 1e6) return *bare;
    throw UsageError(std::string(option) + " \"" + text + "\": expected a number");
}

std::vector<std::string> parts_of(const std::string &text) {
    std::vector<std::string> parts(1);
    for (const char c : text)
        if (c == 'x')
            parts.emplace_back();
        else
            parts.back().push_back(c);
    return parts;
}

RouterBoardSize board_typed(const std::string &text, UnitSystem units) {
    const auto parts = parts_of(text);
    if (parts.size() != 3)
        throw UsageError("--board \"" + text +
                         "\": expected length x width x thickness such as 2440x1220x12");
    return {length_typed("--board", parts[0], units), length_typed("--board", parts[1], units),
            length_typed("--board", parts[2], units)};
}

void set_tab(RouterOptions &options, const std::string &text, UnitSystem units) {
    const auto parts = parts_of(text);
    if (parts.size() != 2) throw UsageError("--tab \"" + text + "\": expected width x height such as 8x3");
    options.tab_width = length_typed("--tab", parts[0], units);
    options.tab_height = length_typed("--tab", parts[1], units);
}

} // namespace

void add_router_options(CLI::App &app, RouterWords &words) {
    const auto add = [&](const char *name, std::string &into, const char *help, const char *type) {
        app.add_option(name, into, help)->type_name(type);
    };
    add("--board", words.board,
        "of the router, length x width x thickness, such as 2440x1220x12; these all are in the document's "
        "units, mm or in, where no unit is typed",
        "LxWxT");
    add("--tool", words.tool, "of the router: the diameter of its straight cutter", "LENGTH");
    add("--feed", words.feed, "of the router: how far it goes along in a minute", "LENGTH");
    add("--plunge", words.plunge, "of the router: how far it goes down in a minute", "LENGTH");
    add("--spindle", words.spindle, "of the router: its turns a minute", "TURNS");
    add("--depth-step", words.depth_step, "of the router: the most that one pass takes off", "LENGTH");
    add("--safe-height", words.safe_height,
        "of the router: how far over the board it moves from place to place, over all clamps (else 20 mm)",
        "LENGTH");
    add("--scribe", words.scribe,
        "of the router: how deep shoulders and level lines are marked, by grooves as wide as the tool whose "
        "middle is the line; templates that are another's mirror image then are cut for themselves (else no "
        "marks)",
        "LENGTH");
    add("--margin", words.margin, "of the router: from the board's border to a template", "LENGTH");
    add("--spacing", words.spacing, "of the router: between two templates", "LENGTH");
    add("--tabs", words.tabs, "of the router: bridges that hold each template, 2 to 20 (else 4)", "COUNT");
    add("--tab", words.tab, "of the router: width x height of a bridge (else 8 mm x 3 mm)", "WxH");
}

RouterOptions router_options_of(const RouterWords &words, UnitSystem units) {
    RouterOptions options;
    const auto length = [&](const char *name, const std::string &text, std::optional<double> &into) {
        if (!text.empty()) into = length_typed(name, text, units);
    };
    if (!words.board.empty()) options.board = board_typed(words.board, units);
    length("--tool", words.tool, options.tool);
    length("--feed", words.feed, options.feed);
    length("--plunge", words.plunge, options.plunge);
    length("--depth-step", words.depth_step, options.depth_step);
    length("--scribe", words.scribe, options.scribe);
    length("--margin", words.margin, options.margin);
    length("--spacing", words.spacing, options.spacing);
    if (!words.spindle.empty()) options.spindle = number_typed("--spindle", words.spindle);
    if (!words.safe_height.empty())
        options.safe_height = length_typed("--safe-height", words.safe_height, units);
    if (!words.tabs.empty()) {
        const double tabs = number_typed("--tabs", words.tabs);
        if (tabs != std::floor(tabs))
            throw UsageError("--tabs \"" + words.tabs + "\": expected a whole number");
        options.tabs = static_cast<int>(tabs);
    }
    if (!words.tab.empty()) set_tab(options, words.tab, units);
    return options;
}

} // namespace roundlay
