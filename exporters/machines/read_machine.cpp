#include "exporters/machines/machine.h"
#include "exporters/machining/operation_words.h"
#include "kernel/document/parsed_text.h"
#include "kernel/measure/nearest_name.h"

#include <cmath>

namespace roundlay::machines {

namespace {

constexpr std::pair<const char *, Way> ways[] = {{"above", Way::above},
                                                 {"below", Way::below},
                                                 {"front", Way::front},
                                                 {"back", Way::back},
                                                 {"ends", Way::ends}};
constexpr std::pair<const char *, ToolShape> shapes[] = {{"flat", ToolShape::flat},
                                                         {"ball", ToolShape::ball},
                                                         {"drill", ToolShape::drill},
                                                         {"chain", ToolShape::chain}};
using machining::OperationKind;
constexpr OperationKind kinds[] = {OperationKind::plane, OperationKind::slot,   OperationKind::pocket,
                                   OperationKind::bore,  OperationKind::groove, OperationKind::saddle};

std::string listed(const std::vector<std::string> &names) {
    std::string all;
    for (const std::string &name : names)
        all += (all.empty() ? "" : ", ") + name;
    return all;
}

class Reader {
  public:
    explicit Reader(const std::string &file) : file_(file) {}

    ReadMachine take(std::string_view text) {
        auto parsed = parse_text(text, file_);
        if (auto *wrong = std::get_if<Problem>(&parsed)) {
            read_.problems.push_back(std::move(*wrong));
            return std::move(read_);
        }
        whole(std::get<ParsedText>(parsed).root());
        if (read_.problems.empty()) read_.machine = std::move(machine_);
        return std::move(read_);
    }

  private:
    void problem(int line, int column, Said what) {
        Problem made;
        made.file = file_;
        made.place = {line, column, 0};
        made.said = std::move(what);
        read_.problems.push_back(std::move(made));
    }
    void problem(const toml::node &at, Said what) {
        problem(static_cast<int>(at.source().begin.line), static_cast<int>(at.source().begin.column),
                std::move(what));
    }

    void check_keys(const toml::table &table, const std::vector<std::string> &known) {
        for (const auto &[key, value] : table) {
            const std::string name(key.str());
            if (std::find(known.begin(), known.end(), name) != known.end()) continue;
            const int line = static_cast<int>(key.source().begin.line),
                      column = static_cast<int>(key.source().begin.column);
            if (const auto meant = nearest_name(name, known))
                problem(line, column, said("there is no key %1 here; did you mean %2?", name, *meant));
            else
                problem(line, column, said("there is no key %1 here; there are %2", name, listed(known)));
        }
    }

    const toml::node *needed(const toml::table &table, const char *key) {
        if (const toml::node *node = table.get(key)) return node;
        problem(table, said("%1 is missing", std::string(key)));
        return nullptr;
    }

    /// Over 0, with its unit.
    double length(const toml::table &table, const char *key) {
        const toml::node *node = needed(table, key);
        if (!node) return 0;
        if (const auto text = node->value<std::string>(); text && node->is_string()) {
            const auto read = parse_length(*text);
            if (const auto *found = std::get_if<Length>(&read); found && found->mm() > 0) return found->mm();
        }
        problem(*node, said("%1 must be a length over 0 with its unit, such as \"400 mm\" or \"16 in\"",
                            std::string(key)));
        return 0;
    }

    /// A bare number from `low` to `high`.
    double number(const toml::node &node, const char *key, double low, double high) {
        const auto value = node.is_number() ? node.value<double>() : std::nullopt;
        if (value && *value >= low && *value <= high) return *value;
        problem(node, said("%1 must be a number from %2 to %3", std::string(key),
                           static_cast<long long>(std::ceil(low)), static_cast<long long>(high)));
        return 0;
    }

    std::string text(const toml::table &table, const char *key) {
        const toml::node *node = needed(table, key);
        if (!node) return {};
        const auto value = node->value<std::string>();
        if (node->is_string() && value && !value->empty()) return *value;
        problem(*node, said("%1 must be a name in quotes", std::string(key)));
        return {};
    }

    template <typename Table> auto one_of(const toml::node &node, const Table &table) {
        std::vector<std::string> names;
        for (const auto &[name, value] : table)
            names.emplace_back(name);
        const auto typed = node.value<std::string>();
        for (const auto &[name, value] : table)
            if (node.is_string() && typed == name) return std::optional(value);
        problem(node, said("%1 is none of %2", typed.value_or("that"), listed(names)));
        return std::optional<std::decay_t<decltype(std::begin(table)->second)>>();
    }

    template <typename Table, typename Value>
    void several(const toml::table &table, const char *key, const Table &words, std::set<Value> &into) {
        const toml::node *node = table.get(key);
        if (!node) return;
        if (!node->is_array())
            return problem(*node, said("%1 must be a list of words in [brackets]", std::string(key)));
        for (const toml::node &each : *node->as_array())
            if (const auto value = one_of(each, words)) into.insert(*value);
    }

    void whole(const toml::table &table) {
        check_keys(table, {"name", "works_from", "tilt_degrees", "may_not", "bed", "saw", "tool"});
        machine_.name = text(table, "name");
        if (needed(table, "works_from")) several(table, "works_from", ways, machine_.works_from);
        if (const toml::node *tilt = table.get("tilt_degrees"))
            machine_.tilt = number(*tilt, "tilt_degrees", 0, most_tilt);
        std::vector<std::pair<std::string, OperationKind>> words;
        for (const OperationKind kind : kinds)
            words.emplace_back(machining::key_of(kind), kind);
        several(table, "may_not", words, machine_.may_not);
        bed(table);
        saw(table);
        tools(table);
    }

    void bed(const toml::table &table) {
        const toml::node *node = needed(table, "bed");
        if (!node) return;
        const toml::table *inner = node->as_table();
        if (!inner) return problem(*node, said("%1 must be a table", std::string("bed")));
        check_keys(*inner, {"length", "width", "height", "weight_kg"});
        machine_.length = length(*inner, "length");
        machine_.width = length(*inner, "width");
        machine_.height = length(*inner, "height");
        if (const toml::node *at = inner->get("length"))
            machine_.length_line = static_cast<int>(at->source().begin.line);
        if (const toml::node *weight = needed(*inner, "weight_kg"))
            machine_.weight = number(*weight, "weight_kg", 1, most_weight);
    }

    void saw(const toml::table &table) {
        const toml::node *node = table.get("saw");
        if (!node) return;
        const toml::table *inner = node->as_table();
        if (!inner) return problem(*node, said("%1 must be a table", std::string("saw")));
        check_keys(*inner, {"depth", "tilt_degrees"});
        Saw saw;
        saw.depth = length(*inner, "depth");
        if (const toml::node *tilt = inner->get("tilt_degrees"))
            saw.tilt = number(*tilt, "tilt_degrees", 0, most_tilt);
        machine_.saw = saw;
    }

    void tools(const toml::table &table) {
        const toml::node *node = table.get("tool");
        if (!node) {
            if (!machine_.saw)
                problem(table, said("a machine without a [saw] and without a [[tool]] makes nothing"));
            return;
        }
        if (!node->is_array_of_tables())
            return problem(*node, said("each tool is a table of its own: [[tool]]"));
        for (const toml::node &each : *node->as_array())
            tool(*each.as_table());
    }

    void tool(const toml::table &table) {
        check_keys(table, {"name", "shape", "diameter", "thickness", "length", "reach"});
        Tool tool;
        tool.name = text(table, "name");
        tool.line = static_cast<int>(table.source().begin.line);
        if (const toml::node *shape = needed(table, "shape"))
            tool.shape = one_of(*shape, shapes).value_or(ToolShape::flat);
        tool.diameter = length(table, "diameter");
        if (tool.shape == ToolShape::chain)
            tool.thickness = length(table, "thickness");
        else if (const toml::node *thick = table.get("thickness"))
            problem(*thick, said("only a chain has a thickness"));
        tool.length = length(table, "length");
        tool.reach = length(table, "reach");
        if (tool.length > tool.reach && tool.reach > 0)
            problem(
                *table.get("length"),
                said("the tool %1 is %2 long and reaches %3: no tool cuts deeper than it reaches; a reach "
                     "of %2 or more is needed, or shorter edges",
                     tool.name, in_mm(tool.length), in_mm(tool.reach)));
        machine_.tools.push_back(std::move(tool));
    }

    static constexpr double most_tilt = 60, most_weight = 100000;
    std::string file_;
    Machine machine_;
    ReadMachine read_;
};

} // namespace

ReadMachine read_machine(std::string_view text, const std::string &file) {
    return Reader(file).take(text);
}

} // namespace roundlay::machines
