#include "kernel/document/edit_path.h"

#include <algorithm>
#include <charconv>

namespace roundlay {

namespace {

bool is_bare(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_' || c == '-';
}

/// Takes `key` or `key[3]` from the front.
std::optional<Step> take_step(std::string_view &text) {
    const auto key_length =
        static_cast<std::size_t>(std::find_if_not(text.begin(), text.end(), is_bare) - text.begin());
    if (key_length == 0) return std::nullopt;
    Step step{std::string(text.substr(0, key_length)), {}};
    text.remove_prefix(key_length);
    if (!text.starts_with('[')) return step;
    std::size_t index = 0;
    const char *const end = text.data() + text.size();
    const auto read = std::from_chars(text.data() + 1, end, index);
    if (read.ec != std::errc() || read.ptr == end || *read.ptr != ']') return std::nullopt;
    text.remove_prefix(static_cast<std::size_t>(read.ptr + 1 - text.data()));
    step.index = index;
    return step;
}

bool holds_nothing_but(const toml::node &node, std::span<const Step> path);

bool same_but_one_key(const toml::table &a, const toml::table &b, const std::string &key) {
    const auto covered = [&key](const toml::table &from, const toml::table &to) {
        for (const auto &[k, value] : from) {
            const toml::node *other = to.get(k.str());
            if (k.str() != key && (!other || !same(value, *other))) return false;
        }
        return true;
    };
    return covered(a, b) && covered(b, a);
}

/// Lists that differ at one place: an entry is another one, is gone, or is new at the end.
bool lists_differ_only_at(const toml::array &before, const toml::array &after, std::span<const Step> path) {
    const std::size_t index = *path.front().index;
    const bool gone = after.size() + 1 == before.size(), added = before.size() + 1 == after.size();
    if ((gone || added) && path.size() > 1) return false;
    if (!gone && !added && before.size() != after.size()) return false;
    if (added && index != before.size()) return false;
    for (std::size_t i = 0; i < before.size(); ++i) {
        if (i == index) continue;
        if (!same(before[i], after[gone && i > index ? i - 1 : i])) return false;
    }
    if (gone || added || path.size() == 1) return index < std::max(before.size(), after.size());
    const toml::table *a = index < before.size() ? before[index].as_table() : nullptr;
    const toml::table *b = index < after.size() ? after[index].as_table() : nullptr;
    return a && b && differ_only_at(*a, *b, path.subspan(1));
}

bool holds_nothing_but(const toml::node &node, std::span<const Step> path) {
    if (path.front().index) {
        const auto *list = node.as_array();
        return list && list->size() == 1 && *path.front().index == 0 && path.size() == 1;
    }
    if (path.size() == 1) return true;
    const auto *table = node.as_table();
    if (!table || table->size() != 1) return table && table->empty();
    const toml::node *inner = table->get(path[1].key);
    return inner && holds_nothing_but(*inner, path.subspan(1));
}

} // namespace

std::string entry_path(const std::string &list, std::size_t index) {
    return list + "[" + std::to_string(index) + "]";
}

std::optional<std::vector<Step>> parse_path(std::string_view text) {
    std::vector<Step> path;
    while (true) {
        auto step = take_step(text);
        if (!step) return std::nullopt;
        path.push_back(*std::move(step));
        if (text.empty()) return path;
        if (!text.starts_with('.')) return std::nullopt;
        text.remove_prefix(1);
    }
}

std::optional<Target> resolve(const toml::table &root, std::span<const Step> path) {
    Target target{&root, nullptr, nullptr};
    for (const Step &step : path) {
        const toml::table *table = target.node->as_table();
        const auto found = table ? table->find(step.key) : toml::table::const_iterator();
        if (!table || found == table->cend()) return std::nullopt;
        target = {&found->second, table, &found->first};
        if (!step.index) continue;
        const toml::array *list = target.node->as_array();
        if (!list || *step.index >= list->size()) return std::nullopt;
        target.node = list->get(*step.index);
    }
    return target;
}

bool differ_only_at(const toml::table &before, const toml::table &after, std::span<const Step> path) {
    const Step &step = path.front();
    if (!same_but_one_key(before, after, step.key)) return false;
    const toml::node *a = before.get(step.key), *b = after.get(step.key);
    if (!a && !b) return false;
    if (!a || !b) return holds_nothing_but(a ? *a : *b, path);
    if (step.index) {
        const toml::array *list_a = a->as_array(), *list_b = b->as_array();
        return list_a && list_b && lists_differ_only_at(*list_a, *list_b, path);
    }
    if (path.size() == 1) return true;
    const toml::table *table_a = a->as_table(), *table_b = b->as_table();
    return table_a && table_b && differ_only_at(*table_a, *table_b, path.subspan(1));
}

bool same(const toml::node &a, const toml::node &b) {
    return a.visit([&b](const auto &value) {
        const auto *other = b.as<std::remove_cvref_t<decltype(value)>>();
        return other && value == *other;
    });
}

} // namespace roundlay
