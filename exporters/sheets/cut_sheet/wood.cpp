#include "exporters/sheets/cut_sheet/wood.h"

namespace roundlay::sheets {
namespace {

Frame shifted_along(double by) {
    Frame frame;
    frame.origin = {by, 0, 0};
    return frame;
}

std::vector<Cell> stretch_of(const std::vector<Cell> &cells, const Shown &shown) {
    std::vector<Cell> kept;
    for (const Cell &cell : cells) {
        Cell part = clipped(clipped(cell, {{-1, 0, 0}, -shown.from}), {{1, 0, 0}, shown.to});
        if (!part.empty()) kept.push_back(std::move(part));
    }
    return kept;
}

} // namespace

Scene whole_scene(const Body &body, View view) {
    Scene scene;
    scene.solids = {body.hewn};
    // An end view would show all pegs one behind the other.
    if (view == View::datum_end || view == View::far_end) return scene;
    scene.bores = body.bores;
    scene.rims = view != View::top && view != View::under;
    return scene;
}

Scene broken_scene(const Body &body, const Ruler &ruler) {
    Scene scene;
    const auto &shown = ruler.shown();
    for (std::size_t i = 0; i < shown.size(); ++i) {
        const double shift = ruler.start_of(i) / ruler.scale() - shown[i].from;
        std::vector<Cell> cells = stretch_of(body.cells, shown[i]);
        for (Cell &cell : cells)
            cell = moved(cell, shifted_along(shift));
        scene.solids.push_back(border_of(cells));
        if (i > 0) scene.breaks.push_back(shown[i].from + shift);
        if (i + 1 < shown.size()) scene.breaks.push_back(shown[i].to + shift);
        for (Bore bore : body.bores) {
            if (bore.x < shown[i].from || bore.x > shown[i].to) continue;
            bore.x += shift;
            scene.bores.push_back(bore);
        }
    }
    return scene;
}

} // namespace roundlay::sheets
