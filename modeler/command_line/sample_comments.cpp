#include "modeler/command_line/sample_comments.h"

#include "kernel/design/samples.h"
#include "kernel/document/document.h"

#include <algorithm>
#include <sstream>

namespace roundlay {

namespace {

/// What stands between empty lines.
std::vector<std::string> blocks_of(const std::string &document) {
    std::vector<std::string> blocks(1);
    std::istringstream lines(document);
    for (std::string line; std::getline(lines, line);) {
        if (line.empty())
            blocks.emplace_back();
        else if (!line.starts_with("#"))
            blocks.back() += "#" + line + "\n";
    }
    return blocks;
}

/// What the document of `with` has and that of `plain` has not, each line behind a #.
std::string added_text(const Shell &plain, const Shell &with) {
    const std::vector<std::string> before = blocks_of(write_document(plain));
    std::string text;
    for (const std::string &block : blocks_of(write_document(with)))
        if (std::find(before.begin(), before.end(), block) == before.end()) text += block;
    return text;
}

std::string comment_on(SampleKind kind) {
    switch (kind) {
    case SampleKind::door:
        return "# An opening: a door. from_left is seen from outside. A window has kind = \"window\" "
               "and a sill over 0.\n";
    case SampleKind::partition:
        return "# A partition: a log wall indoors, from one wall to another; its middle lies "
               "from_left along the first.\n";
    case SampleKind::floor:
        return "# A floor: joists from one wall to the one across the room. The loads are for a "
               "screen of spans only;\n"
               "# local code and a licensed professional decide.\n";
    }
    return {};
}

} // namespace

std::string sample_comments(const Shell &shell) {
    std::string text;
    for (const Sample &sample : samples_for(shell))
        text += "\n" + comment_on(sample.kind) + added_text(shell, sample.shell);
    if (text.empty()) return {};
    return "\n# Samples that fit this shell. To have one, take the # away in front of each of its lines.\n" +
           text;
}

} // namespace roundlay
