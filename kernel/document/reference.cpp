#include "kernel/document/reference.h"

#include "kernel/measure/spelling.h"

namespace roundlay::format {

namespace {

/// A value as it is told in a sentence: lengths without their quotes, words of the format in backquotes.
std::string told(const Key &key, const Value &value) {
    if (const auto *length = std::get_if<Length>(&value))
        return *length == Length() ? "0" : spell_length(*length, UnitSystem::metric);
    if (const auto *slope = std::get_if<Slope>(&value); slope && *slope == Slope()) return "level";
    const std::string text = text_of(key.kind, value, UnitSystem::metric);
    return std::holds_alternative<int>(value) || std::holds_alternative<double>(value) ? text
                                                                                       : "`" + text + "`";
}

std::string understood(const Key &key, const void *fresh) {
    if (key.missing) return "refused";
    if (key.left_out) return key.left_out;
    const auto value = key.value(fresh);
    if (std::holds_alternative<Noted>(key.kind)) return "not taken";
    if (std::holds_alternative<Texts>(key.kind) || std::holds_alternative<SomeOf>(key.kind)) return "none";
    return value ? told(key, *value) : "empty";
}

ReferenceRow row_of(const Key &key, const void *fresh) {
    return {{key.name}, takes(key.kind), key.what, understood(key, fresh), key.missing != nullptr, {}};
}

void add(std::vector<ReferenceRow> &rows, ReferenceRow row) {
    ReferenceRow *last = rows.empty() ? nullptr : &rows.back();
    if (!last || last->takes != row.takes || last->what != row.what) {
        rows.push_back(std::move(row));
        return;
    }
    last->keys.push_back(row.keys.front());
    if (!last->left_out.ends_with(row.left_out)) last->left_out += ", " + row.left_out;
}

std::string cells(const std::string &key, const std::string &takes, const std::string &what,
                  const std::string &left_out) {
    const auto cell = [](const std::string &text) {
        return text.empty() ? std::string(" |") : " " + text + " |";
    };
    return "|" + cell(key) + cell(takes) + cell(what) + cell(left_out) + "\n";
}

} // namespace

std::vector<ReferenceRow> reference_rows(const Section &section) {
    const auto fresh = section.fresh(Shell());
    std::vector<ReferenceRow> rows;
    for (const Item &item : section.table->items)
        if (const auto *part = std::get_if<Shared>(&item))
            rows.push_back({{}, {}, {}, part->left_out, false, "[" + part->table->name + "]"});
        else
            add(rows, row_of(std::get<Key>(item), fresh.get()));
    return rows;
}

std::string markdown_table(const Section &section) {
    std::string text = cells("key", "takes", "what", "left out") + "|---|---|---|---|\n";
    for (const ReferenceRow &row : reference_rows(section)) {
        std::string keys = row.shared.empty() ? "" : "all keys of `" + row.shared + "`";
        for (const std::string &key : row.keys)
            keys += (keys.empty() ? "`" : ", `") + key + "`";
        text += cells(keys, row.takes, row.what, row.left_out);
    }
    return text;
}

} // namespace roundlay::format
