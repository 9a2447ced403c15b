// What a record is made of, as rows of one table: a row for each log and for each thing that is told of it.
//
// Rows and columns come from the description of the document (`kernel/document/describe_found*.cpp`): a new
// key there is a new column here.
#pragma once

#include "kernel/document/key.h"

#include <span>
#include <string>
#include <vector>

namespace roundlay {

/// What a row tells: the log itself, or one thing of a list inside it.
struct SurveyPart {
    std::string name, french;                 ///< "end", "bout": what stands in the column `row`
    const format::Section *section = nullptr; ///< of the document
};

/// The log first, then the lists in the order of the document.
std::span<const SurveyPart> survey_parts();

/// A column of the table. One may belong to several parts: `at` to stations, pegs and others.
struct SurveyColumn {
    std::string name, french; ///< "shoulder_outside"
};

inline constexpr const char *survey_tag = "tag";
inline constexpr const char *survey_row = "row"; ///< holds the name of a part

/// `row`, `tag`, then every key of any part once, in the order of the document. Not the tag first: a line
/// that begins with # is a comment, and a tag may.
std::span<const SurveyColumn> survey_columns();

/// The key of a part that stands in that column; null where it has none.
const format::Key *survey_key(const SurveyPart &part, const std::string &column);

} // namespace roundlay
