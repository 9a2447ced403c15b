#include "exporters/lists/table.h"
#include "kernel/measure/plain_numbers.h"

#include <nlohmann/json.hpp>

namespace roundlay {

namespace {

using Json = nlohmann::ordered_json;

struct Value {
    Json operator()(const std::string &text) const { return text; }
    Json operator()(const Number &n) const { return Json::parse(n.digits); }
    Json operator()(const std::vector<std::string> &list) const { return list; }
};

} // namespace

std::string to_json(const Table &table) {
    Json all = Json::array();
    for (const auto &row : table.rows) {
        Json object = Json::object();
        for (std::size_t i = 0; i < row.size(); ++i)
            object[table.columns[i].key] = std::visit(Value{}, row[i]);
        all.push_back(std::move(object));
    }
    constexpr int indent = 2;
    return with_short_numbers(all.dump(indent, ' ', false, Json::error_handler_t::replace)) + "\n";
}

} // namespace roundlay
