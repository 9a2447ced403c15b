#include "kernel/document/document.h"
#include "kernel/document/limits.h"
#include "kernel/document/statements.h"

namespace roundlay {

using namespace format;

namespace {

/// Builds the text line by line.
class Writer {
  public:
    explicit Writer(const Whole &whole) : whole_(whole), shell_(whole.shell) {}

    std::string take() { return std::move(text_); }
    void opening_words();
    void section(const Section &section);

  private:
    void line(const std::string &words) { text_ += words + "\n"; }
    void comment(const char *words) {
        if (words) line(std::string("# ") + words);
    }
    void key(const Key &key, const void *owner, const void *base, bool whole);
    void items(const Table &table, const void *owner, const void *base, bool whole);
    void once(const Section &section);
    void entries(const Section &section);
    void entry(const Section &section, const void *owner, const void *base);

    const Whole &whole_;
    const Shell &shell_;
    std::string text_;
};

void Writer::opening_words() {
    comment("A shell of hewn logs. Lengths stand in quotes with their unit, in either system:");
    comment("\"8 1/2 in\", \"7 ft 6 in\", \"215 mm\", \"2.4 m\". Slopes: \"1:8\", \"7 deg\", \"1 in in 8 "
            "in\", \"level\".");
    line("roundlay = " + std::to_string(limits::version) + " # version of the format");
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
         (key.remark ? std::string(" # ") + key.remark : ""));
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

} // namespace

std::string write_document(const Shell &shell, const Record &record) {
    const Whole whole{shell, record};
    Writer writer(whole);
    writer.opening_words();
    for (const Section &section : sections())
        writer.section(section);
    return writer.take();
}

} // namespace roundlay
