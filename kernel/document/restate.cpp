#include "kernel/document/restate.h"

#include "kernel/document/edit_layout.h"
#include "kernel/document/edit_path.h"
#include "kernel/document/toml_scan.h"
#include "kernel/document/writer.h"

#include <algorithm>
#include <memory>
#include <stdexcept>

namespace roundlay {

namespace {

/// A text and its tree.
class Tree {
  public:
    explicit Tree(std::string text) : text_(std::make_unique<std::string>(std::move(text))) {
        auto parsed = parse_text(*text_, "");
        if (const auto *problem = std::get_if<Problem>(&parsed)) throw std::invalid_argument(problem->message);
        parsed_.emplace(std::get<ParsedText>(std::move(parsed)));
    }

    const toml::table &root() const { return parsed_->root(); }
    std::string text_of(const toml::node &node) const {
        const std::size_t begin = parsed_->begin_of(node);
        return text_->substr(begin, value_end(*text_, begin) - begin);
    }
    /// The keys of a table in the order of the text.
    std::vector<const toml::key *> keys_of(const toml::table &table) const {
        std::vector<const toml::key *> keys;
        for (const auto &[key, value] : table)
            keys.push_back(&key);
        std::sort(keys.begin(), keys.end(), [this](const toml::key *a, const toml::key *b) {
            return parsed_->begin_of(*a) < parsed_->begin_of(*b);
        });
        return keys;
    }

  private:
    std::unique_ptr<std::string> text_; // the parsed text keeps a view of it
    std::optional<ParsedText> parsed_;
};

/// The same statement made in three ways: as before and after in full, and after as a person would write it.
struct Statements {
    const toml::table *before, *after, *plain;
    const toml::table *inherited = nullptr; ///< what counts for a key that the text leaves out; else as before
};

using Tables = std::vector<const toml::table *>;

bool is_list_of_tables(const toml::node &node) {
    return node.is_array() && !node.as_array()->empty() && node.as_array()->front().is_table();
}

Tables tables_of(const toml::table &parent, std::string_view key) {
    Tables tables;
    if (const toml::node *list = parent.get(key); list && is_list_of_tables(*list))
        for (const toml::node &entry : *list->as_array())
            tables.push_back(entry.as_table());
    return tables;
}

/// Which entries of a longer list went when it became the shorter one, last first.
std::vector<std::size_t> gone(const Tables &before, const Tables &after) {
    std::vector<std::size_t> out;
    std::size_t surplus = before.size() - std::min(before.size(), after.size());
    for (std::size_t i = 0, j = 0; i < before.size(); ++i) {
        if (surplus > 0 && (j >= after.size() || !same(*before[i], *after[j]))) {
            out.insert(out.begin(), i);
            --surplus;
        } else {
            ++j;
        }
    }
    return out;
}

std::string index_text(std::size_t index) {
    return "[" + std::to_string(index) + "]";
}

bool is(const toml::table *table, std::string_view key, std::string_view word) {
    const toml::node *node = table ? table->get(key) : nullptr;
    return node && node->value<std::string_view>() == word;
}

/// A notch whose slopes are stated has to state them both, unless what it inherits states them.
bool is_required(std::string_view key, const Statements &at) {
    return (key == "along" || key == "across") && is(at.after, "kind", "stated") &&
           !is(at.inherited, "kind", "stated");
}

/// A document that states nothing; lengths in the units of the others.
Shell untold(UnitSystem units) {
    Shell shell;
    shell.units = units;
    return shell;
}

/// Collects edits; the first that fails ends it.
class Restating {
  public:
    Restating(Document document, const Shell &before, const Shell &after)
        : edited_(std::move(document)), before_(write_in_full(before)), after_(write_in_full(after)),
          plain_(write_document(after)), untold_(write_in_full(untold(after.units))) {}

    Document::Edited restate() {
        restate_table("", {&before_.root(), &after_.root(), &plain_.root()});
        return std::move(edited_);
    }
    void state(const std::string &path, const std::string &value) {
        if (const auto *document = std::get_if<Document>(&edited_)) take_over(document->with(path, value));
    }

  private:
    void restate_table(const std::string &path, const Statements &at);
    void restate_key(const std::string &path, std::string_view key, const Statements &at);
    void restate_list(const std::string &path, std::string_view key, const Statements &at);
    Tables drop_gone(const std::string &path, Tables before, const Tables &after);
    bool add(const std::string &path, const toml::table &entry);
    std::string in_line(const toml::table &entry) const;
    const toml::table *inherited(const std::string &path) const;

    bool failed() const { return std::holds_alternative<Problem>(edited_); }
    bool stands(const std::string &path);
    void drop(const std::string &path) {
        if (const auto *document = std::get_if<Document>(&edited_)) take_over(document->without(path));
    }
    void take_over(Document::Edited next) {
        edited_ = std::move(next);
        standing_.reset();
    }

    Document::Edited edited_;
    std::optional<Tree> standing_; ///< of the text as it is now
    Tree before_, after_, plain_, untold_;
    toml::table empty_;
};

bool Restating::stands(const std::string &path) {
    if (failed()) return false;
    if (!standing_) standing_.emplace(std::get<Document>(edited_).text());
    return resolve(standing_->root(), *parse_path(path)).has_value();
}

/// What a notch leaves out: a corner's is as the shell's, the shell's as in a document that states none.
const toml::table *Restating::inherited(const std::string &path) const {
    if (path == "notch") return untold_.root().get("notch")->as_table();
    if (path.starts_with("corner[")) return after_.root().get("notch")->as_table();
    return nullptr;
}

void Restating::restate_table(const std::string &path, const Statements &at) {
    Statements here = at;
    here.inherited = inherited(path);
    const std::string front = path.empty() ? "" : path + ".";
    const auto name = [&](const toml::key *key) { return front + std::string(key->str()); };
    for (const toml::key *key : before_.keys_of(*at.before)) {
        const toml::node &node = *at.before->get(key->str());
        if (at.after->get(key->str()) || is_list_of_tables(node)) continue;
        if (node.is_table())
            restate_table(name(key), {node.as_table(), &empty_, &empty_});
        else if (stands(name(key)))
            drop(name(key));
    }
    for (const toml::key *key : after_.keys_of(*at.after))
        restate_key(name(key), key->str(), here);
    for (const toml::key *key : before_.keys_of(*at.before))
        if (!at.after->get(key->str()) && is_list_of_tables(*at.before->get(key->str())))
            restate_list(name(key), key->str(), here);
}

void Restating::restate_key(const std::string &path, std::string_view key, const Statements &at) {
    const toml::node &after = *at.after->get(key);
    const toml::node *before = at.before->get(key);
    if (is_list_of_tables(after)) return restate_list(path, key, at);
    if (const toml::table *table = after.as_table()) {
        const toml::table *plain = at.plain->get(key)->as_table();
        return restate_table(path, {before ? before->as_table() : &empty_, table, plain});
    }
    const bool standing = (at.inherited || !before || !same(*before, after)) && stands(path);
    const toml::node *now = at.inherited && !standing ? at.inherited->get(key) : before;
    if (!now || !same(*now, after) || (!standing && is_required(key, at))) state(path, after_.text_of(after));
}

Tables Restating::drop_gone(const std::string &path, Tables before, const Tables &after) {
    for (const std::size_t index : gone(before, after)) {
        drop(path + index_text(index));
        before.erase(before.begin() + static_cast<std::ptrdiff_t>(index));
    }
    return before;
}

void Restating::restate_list(const std::string &path, std::string_view key, const Statements &at) {
    const Tables after = tables_of(*at.after, key), plain = tables_of(*at.plain, key);
    const Tables before = drop_gone(path, tables_of(*at.before, key), after);
    for (std::size_t i = 0; i < before.size(); ++i)
        restate_table(path + index_text(i), {before[i], after[i], plain[i]});
    for (std::size_t i = before.size(); i < after.size() && !failed(); ++i) {
        if (add(path, *plain[i])) continue;
        std::string list; // written in line: all of it anew
        for (const toml::table *entry : plain)
            list += (list.empty() ? "" : ", ") + in_line(*entry);
        return state(path, "[" + list + "]");
    }
}

/// False where the list has no headers. Lists inside the entry follow it.
bool Restating::add(const std::string &path, const toml::table &entry) {
    Document::Keys keys;
    for (const toml::key *key : plain_.keys_of(entry))
        if (const toml::node &node = *entry.get(key->str()); !is_list_of_tables(node))
            keys.emplace_back(key->str(), plain_.text_of(node));
    auto next = std::get<Document>(edited_).with_entry(path, keys);
    if (std::holds_alternative<Problem>(next)) return false;
    std::size_t index = 0;
    while (stands(path + index_text(index)))
        ++index;
    take_over(std::move(next));
    for (const toml::key *key : plain_.keys_of(entry))
        for (const toml::table *inner : tables_of(entry, key->str()))
            if (!add(path + index_text(index) + "." + std::string(key->str()), *inner)) return false;
    return true;
}

std::string Restating::in_line(const toml::table &entry) const {
    std::string text;
    for (const toml::key *key : plain_.keys_of(entry)) {
        std::string value;
        for (const toml::table *inner : tables_of(entry, key->str()))
            value += (value.empty() ? "[" : ", ") + in_line(*inner);
        value = value.empty() ? plain_.text_of(*entry.get(key->str())) : value + "]";
        text += (text.empty() ? "{ " : ", ") + std::string(key->str()) + " = " + value;
    }
    return text + " }";
}

/// What long lists say the same need not be compared as text.
void leave_out_equal(Shell &a, Shell &b) {
    const auto leave_out = [&](auto... lists) {
        ((a.*lists == b.*lists ? ((a.*lists).clear(), (b.*lists).clear()) : void()), ...);
    };
    leave_out(&Shell::own_logs, &Shell::openings, &Shell::floors, &Shell::bores, &Shell::steps);
}

Problem refusal(const Document &document, const ReadResult &read) {
    for (const Problem &problem : read.problems)
        if (problem.weight == Weight::error) return problem;
    return {Weight::error, document.file(), {}, "this cannot be stated in the document as it is written",
            "the text edited by hand"};
}

} // namespace

Document::Edited restated(const Document &document, const Shell &before, const Shell &after) {
    Shell from = before, to = after;
    leave_out_equal(from, to);
    from.units = to.units; // so that both write a length alike
    Restating restating(document, from, to);
    if (before.units != after.units)
        restating.state("shell.units", after.units == UnitSystem::metric ? "\"metric\"" : "\"imperial\"");
    Document::Edited edited = restating.restate();
    if (const auto *next = std::get_if<Document>(&edited)) {
        const ReadResult read = next->read();
        if (!read.shell || *read.shell != after) return refusal(*next, read);
    }
    return edited;
}

} // namespace roundlay
