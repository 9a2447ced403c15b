#include "exporters/registry/list_sheets.h"

#include "exporters/registry/record_tables.h"
#include "kernel/survey/survey_sheet.h"

#include <algorithm>
#include <string_view>

namespace roundlay {

namespace {

bool ends_with_any(std::string_view key, std::initializer_list<std::string_view> units) {
    return std::ranges::any_of(units, [&](std::string_view unit) { return key.ends_with(unit); });
}

bool is_weight(std::string_view key) {
    return ends_with_any(key, {"_low_kg", "_high_kg", "_low_lb", "_high_lb"});
}

/// By the end of its key: amounts that add up.
bool adds_up(std::string_view key) {
    return is_weight(key) || ends_with_any(key, {"_m3", "_ft3", "_feet_each"});
}

} // namespace

SheetTable sheet_of(const Table &list, const std::string &name) {
    SheetTable sheet;
    sheet.name = name;
    sheet.stays = 1;
    sheet.in_others = list.in_others;
    for (const auto &row : list.rows) {
        sheet.rows.emplace_back();
        for (const Entry &entry : row)
            sheet.rows.back().push_back(cell_text(entry));
    }
    for (std::size_t c = 0; c < list.columns.size(); ++c) {
        bool numbers = false;
        for (const auto &row : list.rows)
            numbers = numbers || std::holds_alternative<Number>(row[c]);
        const std::string &key = list.columns[c].key;
        sheet.columns.push_back({key, sheet_width(key, sheet.rows, c), numbers});
    }
    return sheet;
}

SheetTable summed_sheet(const Table &list, const std::string &name, const Voice &voice) {
    SheetTable sheet = sheet_of(list, name);
    sheet.filter = true;
    sheet.total = voice.say("total");
    const auto quantity = std::ranges::find(list.columns, "quantity", &Column::key);
    for (std::size_t c = 0; c < list.columns.size(); ++c) {
        SheetColumn &column = sheet.columns[c];
        if (!column.numbers) continue;
        if (quantity == list.columns.end())
            column.summed = adds_up(column.name);
        else if (list.columns[c].key == quantity->key)
            column.summed = true;
        else if (adds_up(column.name))
            column.times = static_cast<std::size_t>(quantity - list.columns.begin());
    }
    const bool weighs = std::ranges::any_of(sheet.columns, [](const SheetColumn &column) {
        return (column.summed || column.times) && is_weight(column.name);
    });
    if (weighs)
        sheet.note =
            voice.say("Weights are estimates. Their decimals stand there so that a sum holds the range of "
                      "the totals, lows rounded down and highs up, not because they are known.");
    return sheet;
}

} // namespace roundlay
