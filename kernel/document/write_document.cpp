#include "kernel/document/document.h"
#include "kernel/document/limits.h"
#include "kernel/document/statements.h"

#include <algorithm>

namespace roundlay {

using namespace format;

namespace {

constexpr const char *about_lengths =
    "A shell of hewn logs. Lengths stand in quotes with their unit, in either system:";
constexpr const char *slopes = "Slopes:";
constexpr const char *version = "version of the format";

/// Builds the text line by line.
class Writer {
  public:
    Writer(const Whole &whole, const CommentWords &words)
        : whole_(whole), shell_(whole.shell), words_(words) {}

    std::string take() { return std::move(text_); }
    void opening_words();
    void section(const Section &section);

  private:
    void line(const std::string &words) { text_ += words + "\n"; }
    std::string said(const char *words) const { return words_ ? words_(words) : words; }
    void comment(const char *words) {
        if (words) line("# " + said(words));
    }
    void key(const Key &key, const void *owner, const void *base, bool whole);
    void items(const Table &table, const void *owner, const void *base, bool whole);
    void once(const Section &section);
    void entries(const Section &section);
    void entry(const Section &section, const void *owner, const void *base);

    const Whole &whole_;
    const Shell &shell_;
    const CommentWords &words_;
    std::string text_;
};

void Writer::opening_words() {
    comment(about_lengths);
    line("# \"8 1/2 in\", \"7 ft 6 in\", \"215 mm\", \"2.4 m\". " + said(slopes) +
         " \"1:8\", \"7 deg\", \"1 in in 8 in\", \"level\".");
    line("roundlay = " + std::to_string(limits::version) + " # " + said(version));
}

/// `whole`: what is understood is told too, so that a person finds it.
bool is_written(const Key &key, const void *owner, const void *base, bool whole) {
    if (key.needed(owner, base) || key.value(owner) != key.value(base)) return true;
    return whole && !key.only_where_other && (!key.used || key.used(owner));
}

void Writer::key(const Key &key, const void *owner, const void *base, bool whole) {
    const auto value = key.value(owner);
    if (!value) return comment(key.absent);
    if (!is_written(key, owner, base, whole)) return;
    line(std::string(key.name) + " = " + text_of(key.kind, *value, shell_.units) +
         (key.remark ? " # " + said(key.remark) : ""));
}

void Writer::items(const Table &table, const void *owner, const void *base, bool whole) {
    for (const Item &item : table.items)
        if (const auto *part = std::get_if<Shared>(&item))
            items(*part->table, part->of(owner), part->of(base), false);
        else
            key(std::get<Key>(item), owner, base, whole);
}

void Writer::entry(const Section &section, const void *owner, const void *base) {
    line(header(section));
    comment(section.table->under_header);
    items(*section.table, owner, base, true);
    for (const Section &inner :
         section.table->lists) // under the header of their entry, before those of others
        if (inner.in_lines && inner.size(owner) > 0)
            line(inner.table->key() + " = " +
                 entries_text(stated_list(inner, owner, shell_, shell_.units), "\n"));
    for (const Section &inner : section.table->lists)
        for (std::size_t i = 0; !inner.in_lines && i < inner.size(owner); ++i)
            entry(inner, inner.at(owner, i), inner.fresh(shell_).get());
}

void Writer::once(const Section &section) {
    if (section.only_where_other && state_alike(section, whole_, {Shell(), Record()})) return;
    line("");
    comment(section.table->comment);
    entry(section, section.of(whole_.around(section)), section.fresh(shell_).get());
}

void Writer::entries(const Section &section) {
    const Table &table = *section.table;
    const void *around = whole_.around(section);
    const std::size_t size = section.size(around);
    const auto base = section.fresh(shell_);
    if (size == 0 && section.missing) line(""), comment(table.comment); // for whoever states the first
    for (std::size_t i = 0; i < size; ++i) {
        line("");
        if (i == 0 || table.comment_each) comment(table.comment);
        entry(section, section.at(around, i), base.get());
    }
}

void Writer::section(const Section &section) {
    if (section.is_list())
        entries(section);
    else
        once(section);
}

/// Those of a table and of what stands inside it. What begins with a quote is the format's own words.
void add_comments(const Table &table, std::vector<std::string> &all) {
    const auto add = [&all](const char *words) {
        if (words && *words != '"' && std::ranges::find(all, words) == all.end()) all.emplace_back(words);
    };
    add(table.comment), add(table.under_header);
    for (const Item &item : table.items)
        if (const auto *part = std::get_if<Shared>(&item))
            add_comments(*part->table, all);
        else
            add(std::get<Key>(item).remark), add(std::get<Key>(item).absent);
    for (const Section &inner : table.lists)
        add_comments(*inner.table, all);
}

} // namespace

std::vector<std::string> comment_words() {
    std::vector<std::string> all{about_lengths, slopes, version};
    for (const Section &section : sections())
        add_comments(*section.table, all);
    return all;
}

std::string write_document(const Shell &shell, const Record &record, const CommentWords &words) {
    const Whole whole{shell, record};
    Writer writer(whole, words);
    writer.opening_words();
    for (const Section &section : sections())
        writer.section(section);
    return writer.take();
}

} // namespace roundlay
