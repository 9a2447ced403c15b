#include "exporters/lists/list_cells.h"

#include "kernel/layout/names_given.h"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace roundlay {

double up_to(double mm, double step) {
    constexpr double noise = 1e-6;
    return std::ceil(mm / step - noise) * step;
}

Voice voice_of(const Shell &shell, const Layout &layout, Language language) {
    Voice voice({language, shell.units});
    voice.know(names_given(shell, layout));
    return voice;
}

std::string said(const CutList &list, double mm) {
    return list.voice.length(mm);
}

std::string said_up(const CutList &list, double mm) {
    const LengthStyle style;
    const double step =
        list.units == UnitSystem::metric ? std::pow(10.0, -style.decimals) : mm_per_inch / style.denominator;
    return said(list, up_to(mm, step));
}

Entry low_weight(const CutList &list, double in_unit) {
    if (!list.weights_known) return std::string();
    return number(shown_low_weight(in_unit), 0);
}

Entry high_weight(const CutList &list, double in_unit) {
    if (!list.weights_known) return std::string();
    return number(shown_high_weight(in_unit), 0);
}

namespace {

constexpr int weight_decimals =
    2; // of a unit: what a sum of a thousand rows is off by is less than a step shown

/// Outward to a hundredth, so that sums hold the range and no more; a person is shown what lists show.
Entry exact_weight(const CutList &list, double in_unit, bool low) {
    if (!list.weights_known) return std::string();
    constexpr double noise = 1e-6, part = 100;
    const double exact =
        low ? std::floor(in_unit * part + noise) / part : std::ceil(in_unit * part - noise) / part;
    const double shown = low ? shown_low_weight(in_unit) : shown_high_weight(in_unit);
    return Number{number(exact, weight_decimals).digits, number(shown, 0).digits};
}

} // namespace

std::vector<Column> weight_columns(const CutList &list, const std::string &weight,
                                   const WeightTitles &titles) {
    const bool metric = list.units == UnitSystem::metric;
    return {{weight + "_low_kg", metric ? titles.low_kg : ""},
            {weight + "_high_kg", metric ? titles.high_kg : ""},
            {weight + "_low_lb", metric ? "" : titles.low_lb},
            {weight + "_high_lb", metric ? "" : titles.high_lb}};
}

Column species_column(const CutList &list) {
    return {"species", list.several_woods ? list.voice.say("species") : ""};
}

void append(std::vector<Column> &columns, std::vector<Column> more) {
    std::ranges::move(more, std::back_inserter(columns));
}

void append(std::vector<Entry> &row, std::vector<Entry> more) {
    std::ranges::move(more, std::back_inserter(row));
}

void add_weights(const CutList &list, double low_kg, double high_kg, std::vector<Entry> &row) {
    for (const double unit : {1.0, kg_per_pound}) {
        if (high_kg <= 0) {
            row.insert(row.end(), 2, std::string());
            continue;
        }
        row.push_back(exact_weight(list, low_kg / unit, true));
        row.push_back(exact_weight(list, high_kg / unit, false));
    }
}

} // namespace roundlay
