#include "kernel/document/entry_words.h"

#include "kernel/document/table_reader.h"

#include <algorithm>
#include <charconv>
#include <vector>

namespace roundlay {

namespace {

struct Entry {
    std::string list; ///< "opening"
    std::size_t index = 0;
    const toml::table *table = nullptr;

    std::string text(std::string_view key) const {
        const toml::node *found = table->get(key);
        return found && found->is_string() ? found->as_string()->get() : std::string();
    }
    std::string number() const { return std::to_string(index + 1); }
    /// By its name where it has one.
    std::string called() const {
        const std::string name = text("name");
        return list + " " + (name.empty() ? number() : quoted_for_message(name));
    }
};

/// "floor[0].beam[1]" as its two entries; empty where one of them is no entry of a list.
std::vector<Entry> entries_on(const toml::table &root, std::string_view path) {
    std::vector<Entry> all;
    const toml::table *around = &root;
    while (around && !path.empty()) {
        const std::string_view step = path.substr(0, path.find('.'));
        path.remove_prefix(std::min(path.size(), step.size() + 1));
        const std::size_t bracket = step.find('[');
        if (bracket == std::string_view::npos) return {};
        Entry entry{std::string(step.substr(0, bracket)), 0, nullptr};
        std::from_chars(step.data() + bracket + 1, step.data() + step.size(), entry.index);
        const toml::node *list = around->get(entry.list);
        const toml::node *at = list && list->is_array() ? list->as_array()->get(entry.index) : nullptr;
        around = entry.table = at ? at->as_table() : nullptr;
        if (around) all.push_back(std::move(entry));
    }
    return around ? all : std::vector<Entry>();
}

std::string corner_in_words(const Entry &corner) {
    const toml::node *between = corner.table->get("between");
    const toml::array *names = between ? between->as_array() : nullptr;
    if (!names || names->size() != 2 || !names->get(0)->is_string() || !names->get(1)->is_string())
        return corner.called();
    return "the corner of " + quoted_for_message(names->get(0)->as_string()->get()) + " and " +
           quoted_for_message(names->get(1)->as_string()->get());
}

/// People know a log by its round.
std::string log_in_words(const Entry &log, std::string_view key) {
    const toml::node *round = log.table->get("round");
    if (key == "round" || !round || !round->is_integer())
        return log.called() + " in wall " + quoted_for_message(log.text("wall"));
    return "round " + std::to_string(round->as_integer()->get()) + " of wall " +
           quoted_for_message(log.text("wall"));
}

std::string in_words(const Entry &entry, std::string_view key) {
    if (entry.list == "found" && !entry.text("tag").empty())
        return "log " +
               quoted_for_message(entry.text("tag")); // as it is marked, whatever is stated before it
    if (entry.list == "corner") return corner_in_words(entry);
    if (entry.text("wall").empty()) return entry.called();
    if (entry.list == "log") return log_in_words(entry, key);
    return entry.called() + " in wall " + quoted_for_message(entry.text("wall"));
}

} // namespace

std::string entry_in_words(const toml::table &root, std::string_view path, std::string_view key) {
    const std::vector<Entry> entries = entries_on(root, path);
    std::string words;
    for (const Entry &entry : entries)
        words = in_words(entry, key) + (words.empty() ? "" : " of " + words);
    return words;
}

std::string entry_in_words(const std::string &list, std::size_t index, const toml::table &entry) {
    return in_words({list, index, &entry}, "");
}

bool speaks_feet(const toml::table &root) {
    const toml::node *shell = root.get("shell");
    const toml::node *units = shell && shell->is_table() ? shell->as_table()->get("units") : nullptr;
    if (!units || !units->is_string()) return false;
    std::string word = units->as_string()->get();
    std::ranges::transform(word, word.begin(),
                           [](char c) { return c >= 'A' && c <= 'Z' ? c - 'A' + 'a' : c; });
    return word == "imperial";
}

} // namespace roundlay
