#include "exporters/machining/operations.h"

#include "exporters/machining/access.h"
#include "exporters/machining/raw_stock.h"
#include "exporters/machining/setups.h"
#include "exporters/machining/taken.h"
#include "kernel/boundary/measures.h"

#include <algorithm>
#include <set>
#include <stdexcept>

namespace roundlay::machining {

namespace {

/// Every face that it may leave, where nobody can tell which it does.
std::vector<std::string> all_faces(const Operation &operation) {
    std::set<std::string> names;
    for (const TakenSide &side : operation.sides)
        names.insert(side.face);
    if (operation.round) names.insert({operation.round->face, operation.round->cheek});
    if (operation.bore) {
        names.insert(operation.bore->wall);
        if (!operation.bore->bottom.empty()) names.insert(operation.bore->bottom);
    }
    return {names.begin(), names.end()};
}

/// Of the finished piece, by the cut that made each.
void say_what_is_made(std::vector<Operation> &operations, const Piece &piece, const Boundary &border,
                      const FaceNames &names) {
    for (const MadeBy &made : made_by(piece, border)) {
        const std::string name = names.name(made);
        for (Operation &operation : operations) {
            if (operation.cut != made.cut) continue;
            const auto may = all_faces(operation);
            const bool its_own = std::ranges::find(may, name) != may.end();
            if (its_own && std::ranges::find(operation.makes, name) == operation.makes.end())
                operation.makes.push_back(name);
        }
    }
}

} // namespace

OperationList operations_of(const Layout &layout, Index<Model> model, const Body &body) {
    if (!layout.models.holds(model)) throw std::invalid_argument("There is no such piece to machine.");
    const auto &alike = layout.models[model].pieces;
    const Piece &piece = layout.pieces[alike.front()];
    const FaceNames names(piece, alike.size() == 1);
    OperationList list;
    list.tag = piece.tag;
    for (const Index<Piece> each : alike)
        list.pieces.push_back(layout.pieces[each].tag);
    list.stock = raw_stock(piece, names);
    list.operations = taken(piece, list.stock, names);
    const Cell stock = cell_of(list.stock.stock);
    for (Operation &operation : list.operations)
        find_access(operation, stock);
    list.setups = lay_for(list.operations, list.stock);
    const auto border = boundary_of(body);
    list.faces_named = border.has_value();
    if (border) list.volume = measures_of(*border).volume;
    if (border)
        say_what_is_made(list.operations, piece, *border, names);
    else
        for (Operation &operation : list.operations)
            operation.makes = all_faces(operation);
    return list;
}

} // namespace roundlay::machining
