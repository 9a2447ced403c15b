// The yard page: the whole shell as one HTML file that opens on a phone without a network.
//
// Values first: what the page says and shows, in the person's words. `write_page` makes the file of it.
#pragma once

#include "exporters/mesh/mesh.h"
#include "exporters/mesh/palette.h"
#include "exporters/sheets/drawing/sheet.h"
#include "kernel/layout/layout.h"

#include <memory>
#include <string>
#include <vector>

namespace roundlay {

/// One line about a log. Where it names other logs they stand in `tags`, to be tapped, and `words` is empty.
struct YardLine {
    std::string name, words;
    std::vector<std::string> tags;
};

struct YardLog {
    std::string tag;
    std::string code; ///< that its tag ends with: another one means another state of the log
    Index<Model> model;
    int part = 0; ///< index into Yard::parts
    Frame frame;
    std::vector<YardLine> lines;
};

/// What is lifted at once: a log, and the new wood that has been put into it.
struct YardStep {
    std::vector<Index<YardLog>> logs; ///< the log itself first
    std::string lift;                 ///< what it weighs, or that this is not known
    std::string then;                 ///< what is done when it lies there; may be empty
};

struct YardPart {
    std::string name; ///< "wall A"
    Colour colour;
};

/// What the page itself says: buttons, and sentences with %1 for what is only known there.
struct YardLabel {
    std::string key, words;
};

struct Yard {
    std::string language; ///< BCP 47
    std::string name;     ///< of the shell
    std::vector<YardPart> parts;
    Indexed<YardLog> logs; ///< as Layout::pieces
    std::vector<YardStep> steps;
    std::string caution; ///< of the order of the raise
    std::size_t up = 0;  ///< so many steps from the first one on are ticked as done
    std::vector<YardLabel> labels;
    Indexed<Mesh, Model> meshes;
    Indexed<std::shared_ptr<const std::vector<sheets::Sheet>>, Model> sheets; ///< cut sheets; null = none
};

/// UTF-8; the same yard gives the same bytes (with the same zlib). Nothing in it is fetched from anywhere,
/// and a policy in the page forbids that it were. Throws std::logic_error where lists do not fit each other.
std::string write_page(const Yard &yard);

} // namespace roundlay
