#include "exporters/building/house_of.h"

#include "exporters/building/facts.h"
#include "exporters/mesh/facets.h"
#include "exporters/part21/placing.h"
#include "kernel/layout/openings/openings.h"

#include <algorithm>
#include <stdexcept>

namespace roundlay::building {

namespace {

AssemblyUse use_of(const Shell &shell, const Layout &layout, Index<LayoutPart> part) {
    if (part.at() >= layout.walls.size()) return AssemblyUse::floor;
    return part.at() < shell.walls.size() ? AssemblyUse::wall : AssemblyUse::partition;
}

PartUse use_of(const Layout &layout, const Piece &piece) {
    if (!piece.timber) return piece.mends ? PartUse::new_wood : PartUse::log;
    switch (layout.timbers[*piece.timber].use) {
    case TimberUse::joist:
    case TimberUse::trimmed:
        return PartUse::joist;
    case TimberUse::trimmer:
        return PartUse::trimmer;
    case TimberUse::beam:
        break;
    }
    return PartUse::beam;
}

/// Round logs have hundreds of narrow flats: triangles over shared points take a quarter of the room.
std::variant<Polyhedron, Mesh> shape_of(const Body &body) {
    if (body.rounds.empty()) return facets_of(body, sides_of_a_bore);
    return triangles_of(body, sides_of_a_bore);
}

class Builder {
  public:
    explicit Builder(const BuildingSource &source) : source_(source), facts_(source) {}

    House build() {
        add_head();
        add_shapes();
        add_storeys();
        const Layout &layout = source_.layout;
        for (const Index<LayoutPart> part : parts_of(layout))
            add_assembly(part);
        for (const auto index : layout.pieces.indices())
            add_piece(index);
        for (const Peg &peg : layout.pegs)
            add_peg(peg);
        for (std::size_t i = 0; i < source_.shell.openings.size(); ++i)
            add_opening(i);
        return std::move(house_);
    }

  private:
    void add_head() {
        const Shell &shell = source_.shell;
        house_.name = called(shell);
        house_.site = facts_.voice().say("site");
        house_.project = shell.project;
        house_.key = shell.name + '\n' + shell.project.number;
        house_.descriptions = {"ViewDefinition [DesignTransferView_V1.0]"};
        house_.about = facts_.house();
        house_.woods = facts_.woods();
        if (shell.pegs.square) house_.square_pegs = shell.pegs.square->mm();
    }

    void add_shapes() {
        const Layout &layout = source_.layout;
        for (const auto m : layout.models.indices()) {
            const Piece &first = layout.pieces[layout.models[m].pieces.front()];
            house_.shapes.push_back({shape_of(source_.bodies.at(m)), part_of(layout, first).number()});
            house_.uses.push_back(count_of(layout.models[m].pieces));
        }
    }

    /// The walls stand from the foundation up; floors at one level share a storey.
    void add_storeys() {
        house_.storeys.push_back({facts_.voice().say("walls, from the foundation up"), 0});
        std::vector<Storey> floors;
        for (const FloorPlace &floor : source_.layout.floors) {
            const std::string name = facts_.voice().say("floor %1", floor.name);
            const auto same = std::ranges::find_if(
                floors, [&](const Storey &storey) { return storey.elevation == floor.level; });
            if (same != floors.end())
                same->name += ", " + name;
            else
                floors.push_back({name, floor.level});
        }
        std::ranges::stable_sort(floors, {}, &Storey::elevation);
        house_.storeys.insert(house_.storeys.end(), floors.begin(), floors.end());
    }

    std::size_t storey_of(Index<LayoutPart> part) const {
        const Layout &layout = source_.layout;
        if (part.at() < layout.walls.size()) return 0;
        const double level = layout.floors[Index<FloorPlace>(part.at() - layout.walls.size())].level;
        for (std::size_t i = 1; i < house_.storeys.size(); ++i)
            if (house_.storeys[i].elevation == level) return i;
        throw std::logic_error("A floor lies in no storey.");
    }

    void add_assembly(Index<LayoutPart> part) {
        const Layout &layout = source_.layout;
        Assembly made;
        made.use = use_of(source_.shell, layout, part);
        made.letter = part_letter(layout, part);
        made.name = made.use == AssemblyUse::floor ? facts_.voice().say("floor %1", made.letter)
                                                   : facts_.voice().say("wall %1", made.letter);
        made.storey = storey_of(part);
        made.frame = part_frame(layout, part);
        made.frame.origin.z -= house_.storeys[made.storey].elevation;
        made.about = facts_.assembly(part);
        house_.assemblies.push_back(std::move(made));
    }

    Assembly &assembly_of(const Piece &piece) {
        return house_.assemblies[part_of(source_.layout, piece).at()];
    }

    void add_piece(Index<Piece> index) {
        const Layout &layout = source_.layout;
        const Piece &piece = layout.pieces[index];
        Part part;
        part.use = use_of(layout, piece);
        part.piece = index;
        part.tag = piece.tag;
        part.description = source_.list.pieces.at(index.at()).stick.kind;
        part.frame = part21::seen_from(piece.frame, part_frame(layout, part_of(layout, piece)));
        part.shape = Index<Shape>(piece.model.at());
        part.wood = facts_.wood_of_piece(index);
        part.about = facts_.piece(index);
        assembly_of(piece).parts.push_back(std::move(part));
    }

    void add_peg(const Peg &peg) {
        const Piece &upper = source_.layout.pieces[peg.upper];
        const Frame &frame = part_frame(source_.layout, part_of(source_.layout, upper));
        assembly_of(upper).pegs.push_back(
            {peg.name, frame.to_local(peg.top), peg.diameter, peg.length, peg.upper, peg.lower});
    }

    void add_opening(std::size_t i) {
        const Opening &o = source_.shell.openings[i];
        const auto wall = wall_named(source_.layout, o.wall);
        if (!wall) return;
        const Voice &voice = facts_.voice();
        house_.assemblies[wall->at()].openings.push_back(
            {voice.name(name_of(source_.shell, i)),
             o.kind == OpeningKind::door ? voice.say("door") : voice.say("window"),
             {o.from_left.mm(), 0, o.sill.mm()},
             o.width.mm(),
             o.height.mm(),
             source_.layout.walls[*wall].thickness,
             facts_.opening(i)});
    }

    const BuildingSource &source_;
    Facts facts_;
    House house_;
};

} // namespace

House house_of(const BuildingSource &source) {
    if (source.layout.pieces.empty()) throw std::invalid_argument("A layout without pieces has no IFC file.");
    if (source.bodies.size() != source.layout.models.size())
        throw std::invalid_argument("An IFC file needs one body for each model of the layout.");
    return Builder(source).build();
}

} // namespace roundlay::building
