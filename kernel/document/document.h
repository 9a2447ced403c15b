// The document: a text that a person writes by hand, and the Shell and the Record it states. FORMAT.md
// describes it.
#pragma once

#include "kernel/document/problem.h"
#include "kernel/document/source_map.h"
#include "kernel/document/state.h"
#include "kernel/record/record.h"
#include "kernel/shell/shell.h"

#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace roundlay {

struct ReadResult {
    std::optional<Shell> shell; ///< nothing where a problem is an error
    Problems problems;          ///< all of them, in the order of the text
    SourceMap places;           ///< where each statement stands
    Record record = {}; ///< of a house that stands, beside the shell; empty where a problem is an error
    std::vector<HouseState> states =
        {}; ///< of the house: the document's own shell first; empty where it has but one
    /// Where the state asked for is measured, or stands on one that is: the shell as that one states it. What
    /// the record says goes over `shell`, but for what the states between have changed in it.
    std::optional<Shell> measured_on = {};
    /// Where the state asked for is put level on a new foundation, or stands on one that is: the shell of the
    /// state under that one, as it is stated over the foundation that was found.
    std::optional<Shell> levelled_on = {};
};

/// Reads a document. Every problem is reported, not only the first; only a text that is no TOML ends the
/// reading at once. `file` is only repeated in the problems. Never throws for what is in the text.
///
/// The shell is the document's own, or that of the state that is asked for by name. What is wrong in another
/// state is a warning: it hinders nobody who does not ask for it.
ReadResult read_document(std::string_view text, const std::string &file, const std::string &state = {});

/// A document that states the shell and the record, with comments for the person who goes on writing it. For
/// those within the limits of the format: read_document reads it back to equal ones, lengths to the last bit.
/// The comments are in English, or as `words` says them.
using CommentWords = std::function<std::string(std::string_view english)>;
std::string write_document(const Shell &shell, const Record &record = {}, const CommentWords &words = {});

/// All that `words` may be asked for.
std::vector<std::string> comment_words();

/// The text of a document on disk. One problem where it is missing, a folder, unreadable or too large.
std::variant<std::string, Problem> read_document_text(const std::filesystem::path &path);

/// read_document_text, then read_document.
ReadResult read_document_file(const std::filesystem::path &path, const std::string &state = {});

inline constexpr std::string_view document_extension = ".roundlay";

} // namespace roundlay
