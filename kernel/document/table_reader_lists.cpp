// Statements that hold more than one value: lists, and numbers with what is said of them.
#include "kernel/document/limits.h"
#include "kernel/document/noted_text.h"
#include "kernel/document/table_reader.h"
#include "kernel/document/words.h"

namespace roundlay {

bool TableReader::plain_texts(std::string_view key, std::vector<std::string> &into) {
    std::vector<std::string> read;
    if (!texts(key, read)) return false;
    if (read.size() > limits::texts)
        return refuse(key, "has too many texts", "at most " + std::to_string(limits::texts));
    for (const std::string &text : read)
        if (!plain(key, text)) return false;
    into = std::move(read);
    return true;
}

bool TableReader::choices(std::string_view key, std::vector<std::string> &into,
                          const std::vector<std::string> &words) {
    std::vector<std::string> read;
    if (!plain_texts(key, read)) return false;
    for (std::string &typed : read)
        if (!word_of(key, typed, words)) return false;
    into = std::move(read);
    return true;
}

bool TableReader::noted(std::string_view key, NotedLength &into) {
    const toml::node *found = node(key);
    if (found && !found->is_string() && !found->is_table()) {
        take(key);
        return wrong_type(key, "a length as it was noted, in quotes, such as \"3.10.1\" or \"215 mm\"");
    }
    if (!found || !found->is_table()) return text(key, into.written);
    take(key);
    TableReader parts(reading_, found->as_table(), path_of(key), place_of(key));
    parts.require("note", "the length as it was noted: note = \"3.10.1\"");
    NotedLength read;
    std::string is = word(read.certainty);
    const bool right = parts.text("note", read.written);
    parts.choice("is", is, certainty_words());
    parts.text("by", read.by);
    parts.text("on", read.on);
    parts.finish();
    read.certainty = *find_word<Certainty>(is);
    if (right && read.is_taken()) into = std::move(read); // else there is no number that anything is said of
    return right;
}

} // namespace roundlay
