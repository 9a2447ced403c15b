// What tests of all kinds of sheets share.
#pragma once

#include "exporters/sheets/frame/options.h"
#include "kernel/layout/layout.h"

#include <functional>
#include <set>
#include <string>
#include <vector>

namespace roundlay::test {

/// Every clash of every sheet, one a line; empty where there is none.
std::string all_clashes(const std::vector<sheets::Sheet> &sheets);

/// What is written on the sheets of that chapter.
std::set<std::string> words_on(const std::vector<sheets::Sheet> &sheets, const std::string &chapter);

/// Of a ring that runs counter-clockwise; below 0 for one that runs the other way.
double area_of(const std::vector<Vec2> &ring);

/// Owner, date and weights filled in.
sheets::SheetOptions full_options(std::optional<sheets::Paper> paper = std::nullopt);

/// A shell with its layout and bodies, as the exporters have it.
struct LaidShell {
    Shell shell;
    Layout layout;
    Bodies bodies;
};
LaidShell laid(const Shell &shell);

/// A document of models-demo. Throws where it cannot be read.
LaidShell demo(const std::string &name);
inline const std::vector<std::string> all_demo_names = {"one-room", "ell-house", "long-house", "round-cabin",
                                                        "old-house"};

/// Everything that goes on paper: drawings, schedules, cut sheets, packing list, tags, templates, full-size
/// poles, in a book with cover, legend and index. `most_models` cut sheets at most.
sheets::Book whole_book(const LaidShell &shell, const sheets::SheetOptions &options,
                        std::size_t most_models = 100000);

/// Random shells to draw: `few`, or the whole number in ROUNDLAY_SHELLS.
int shells_to_draw(int few);

/// Inside a property: plain, tapered, fitted with floors, on steps, waned, of round logs, or any of the whole
/// family.
Shell any_of_all_shells();

/// Runs the rapidcheck property that often; empty where it always held, else the shrunk counterexample.
std::string counterexample(int times, const std::function<void()> &property);

} // namespace roundlay::test
