// Reads the statements of one table, each with its type and bounds, and reports what does not fit.
#pragma once

#include "kernel/document/length_bounds.h"
#include "kernel/document/reading.h"
#include "kernel/measure/measure.h"
#include "kernel/record/noted_length.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace roundlay {

/// Every call names one key of the table; after the last one, finish() warns of the keys that nobody named.
/// The readers return true when the key is stated and right, and leave `into` alone otherwise.
class TableReader {
  public:
    /// `table` may be null: then nothing is stated. `path` is "" for the document itself.
    TableReader(Reading &reading, const toml::table *table, std::string path, Place place)
        : reading_(reading), table_(table), path_(std::move(path)), place_(place) {}

    bool length(std::string_view key, Length &into, const LengthBounds &bounds);
    bool slope(std::string_view key, Slope &into, bool may_fall);
    bool text(std::string_view key, std::string &into);
    bool flag(std::string_view key, bool &into);
    bool count(std::string_view key, int &into, int low, int high);
    /// Over `low` (or from it, where `low_is_in`), up to `high`.
    bool number(std::string_view key, double &into, double low, bool low_is_in, double high,
                const char *expected);
    /// A load in kPa: a number up to 10, or text with its unit. Over 0, up to `most`.
    bool load(std::string_view key, double &into, double most, const char *expected);
    bool texts(std::string_view key, std::vector<std::string> &into); ///< a list of texts
    bool heading(std::string_view key, double &into);                 ///< degrees counter-clockwise from east
    /// One of the words, in capitals or not, with - or _ for blanks; `into` becomes the word as it is listed.
    bool choice(std::string_view key, std::string &into, const std::vector<std::string> &words);

    /// Any number of the words, as for choice().
    bool choices(std::string_view key, std::vector<std::string> &into, const std::vector<std::string> &words);
    /// Texts that people see, as for text().
    bool plain_texts(std::string_view key, std::vector<std::string> &into);
    /// A length as it was noted: a text, or a table of the note and what is said of it. What it says is not
    /// looked at.
    bool noted(std::string_view key, NotedLength &into);

    /// Reports a missing key unless it is stated (rightly or wrongly).
    void require(std::string_view key, const char *expected);
    bool states(std::string_view key) const { return node(key) != nullptr; }
    /// It is stated, was read, and nothing was wrong with it.
    bool is_right(std::string_view key) const { return reading_.is_right(path_of(key)); }

    /// A table inside this one; null where it is not stated or is none (which is reported).
    const toml::table *table(std::string_view key);
    /// The entries written with [[key]]; empty where none is stated.
    std::vector<const toml::table *> entries(std::string_view key, std::size_t most);

    /// Of a key that somebody else reads.
    void knows(std::string_view key) { known_.emplace_back(key); }

    void finish();

    const std::string &path() const { return path_; }
    Place place() const { return place_; }      ///< of the table itself
    Place place_of(std::string_view key) const; ///< of a statement; of the table where it is not stated
    std::string path_of(std::string_view key) const {
        return path_.empty() ? std::string(key) : path_ + "." + std::string(key);
    }

  private:
    bool plain(std::string_view key, const std::string &text); ///< fit to be shown
    bool word_of(std::string_view key, std::string &typed, const std::vector<std::string> &words);
    bool bare_load(std::string_view key, double &into, double most, const char *expected);
    const toml::node *node(std::string_view key) const { return table_ ? table_->get(key) : nullptr; }
    const toml::node *take(std::string_view key); ///< names the key and notes where it stands
    // Each reports one error at the statement and returns false.
    bool refuse(std::string_view key, const std::string &what, std::string expected);
    bool wrong_type(std::string_view key, std::string expected);
    bool wrong_measure(std::string_view key, const MeasureError &error);
    bool out_of_bounds(std::string_view key, std::string expected);

    Reading &reading_;
    const toml::table *table_;
    std::string path_;
    Place place_;
    std::vector<std::string> known_;
};

/// `"name"` for a message, cut where it is long.
std::string quoted_for_message(std::string_view text);
/// ` (did you mean "x"?)` or nothing.
std::string did_you_mean(std::string_view typed, const std::vector<std::string> &known);

} // namespace roundlay
