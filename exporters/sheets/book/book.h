// Sets of sheets: the drawings of the whole shell, and the book of everything with cover, index and legend.
#pragma once

#include "exporters/sheets/set/subject.h"

#include <functional>
#include <string>
#include <utility>
#include <vector>

namespace roundlay::sheets {

/// Foundation, walls from outside and inside, sections, rounds, floors, story poles reduced.
SheetSet drawing_set(const Layout &layout);

Subject tag_subject(OnlyPieces only = {});
Subject template_subject(OnlyPieces only = {});
Subject full_size_pole_subject();

/// Everything that goes on paper, in the order in which it is bound: drawings, cut sheets, raising, taking
/// down where it `stands` so, packing list, tags, templates, story poles at full size.
SheetSet whole_set(const Layout &layout, bool stands = true);

/// What a book says before its sheets.
struct BookWords {
    std::string picture_png; ///< for the cover; empty = none could be made
    std::string pictured;    ///< what it shows, e.g. "seen from the south-east"
    std::vector<std::pair<std::string, std::string>> facts; ///< for the cover, e.g. "Logs", "164"
    std::vector<std::string> cautions;                      ///< whole sentences
};

/// Cover, index, legend and cautions, then `sheets`, every page numbered in its margin. Lines of the index
/// lead to their sheets.
Book bound_book(const Shell &shell, const SheetOptions &options, const BookWords &words,
                std::vector<Sheet> sheets);

/// Numbers every page in its margin: "7 / 120".
void number_pages(std::vector<Sheet> &sheets);

} // namespace roundlay::sheets
