#include "exporters/lists/table.h"
#include "kernel/csv/csv_field.h"

namespace roundlay {

namespace {

std::string joined(const std::vector<std::string> &list) {
    std::string text;
    for (const std::string &entry : list)
        text += (text.empty() ? "" : " ") + entry;
    return text;
}

struct Field {
    std::string operator()(const std::string &text) const { return csv_field(text); }
    std::string operator()(const Number &n) const { return n.digits; }
    std::string operator()(const std::vector<std::string> &list) const { return csv_field(joined(list)); }
};

} // namespace

std::string to_csv(const Table &table) {
    std::string csv;
    for (std::size_t i = 0; i < table.columns.size(); ++i)
        csv += (i ? "," : "") + csv_field(table.columns[i].key);
    csv += "\r\n";
    for (const auto &row : table.rows) {
        for (std::size_t i = 0; i < row.size(); ++i)
            csv += (i ? "," : "") + std::visit(Field{}, row[i]);
        csv += "\r\n";
    }
    return csv;
}

} // namespace roundlay
