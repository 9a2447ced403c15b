// The header of an exchange structure, and everything around its data section.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace roundlay::part21 {

struct HeaderFacts {
    std::vector<std::string> descriptions; ///< what is in the file, a phrase each
    std::string name;                      ///< of the shell or the piece
    std::string author, organisation, approved;
    std::int64_t seconds = 0; ///< since 1970, UTC
    std::string schema;       ///< that the data follow, as FILE_SCHEMA has it
};

/// HEADER and the opening of DATA, as ISO 10303-21 asks.
std::string header_of(const HeaderFacts &facts);

/// What closes the file behind the data section.
std::string footer();

/// `stated`, else the environment's SOURCE_DATE_EPOCH, else the clock. Throws std::runtime_error where
/// SOURCE_DATE_EPOCH is no whole number of seconds.
std::int64_t time_of_export(const std::optional<std::int64_t> &stated);

} // namespace roundlay::part21
