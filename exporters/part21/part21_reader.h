// Reads the data section of an exchange structure apart, as far as taking instances over into another needs.
#pragma once

#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace roundlay::part21 {

/// One instance: its text between '=' and ';', and where that text refers to others.
struct Instance {
    struct Reference {
        std::size_t at = 0, length = 0; ///< of "#12" in the text
        int id = 0;
    };
    std::string text;
    std::vector<Reference> references;

    /// The entity's name, empty for a complex instance.
    std::string_view type() const;
};

using Instances = std::unordered_map<int, Instance>;

/// All instances between "DATA;" and "ENDSEC;". Throws std::runtime_error where the text is no such
/// section, gives an id twice or refers to an id that is not there.
Instances read_data(std::string_view file);

} // namespace roundlay::part21
