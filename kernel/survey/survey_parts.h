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

/// What a row tells: the log itself, one thing of a list inside it, or one of the house as a whole.
struct SurveyPart {
    std::string name, french;                 ///< "end", "bout": what stands in the column `row`
    const format::Section *section = nullptr; ///< of the document
    /// Of the house: the key that stands in the column `tag`, as it is known by it; empty where it has none.
    std::string by = {};
    bool of_house = false;
};

/// The log first, then the lists in the order of the document.
std::span<const SurveyPart> survey_parts();
/// Field sheets, level planes, walls, corners, diagonals, openings: lists of `[record]`.
std::span<const SurveyPart> house_parts();

/// The head of the forms: what the record says of the survey as a whole. Its owner is the record itself.
const SurveyPart &survey_head();
/// Head, logs with their lists, and those of the house.
std::vector<const SurveyPart *> all_survey_parts();

/// What one of the house is known by: its name, of a diagonal its two corners, in whatever order.
std::string known_as(const SurveyPart &part, const void *owner);
/// That one of the record's; null where it has none.
const void *one_known_as(const SurveyPart &part, const Record &record, const std::string &name);

/// A column of the table. One may belong to several parts: `at` to stations, pegs and others.
struct SurveyColumn {
    std::string name, french;      ///< "shoulder_outside"
    std::vector<std::string> also; ///< other French names of it, which are read
};

inline constexpr const char *survey_tag = "tag";
inline constexpr const char *survey_row = "row"; ///< holds the name of a part

/// `row`, `tag`, then every key of any part once, in the order of the document. Not the tag first: a line
/// that begins with # is a comment, and a tag may.
std::span<const SurveyColumn> survey_columns();

/// The key of a part that stands in that column; null where it has none.
const format::Key *survey_key(const SurveyPart &part, const std::string &column);

} // namespace roundlay
