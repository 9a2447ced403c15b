// Bodies as text. Private to this room.
#pragma once

#include "exporters/building/house.h"
#include "exporters/building/ifc_project.h"
#include "exporters/building/ifc_text.h"

#include <map>
#include <tuple>

namespace roundlay::building {

class IfcShapes {
  public:
    IfcShapes(IfcText &text, const House &house, const IfcContexts &contexts)
        : text_(text), house_(house), contexts_(contexts) {}

    /// Its IfcProductDefinitionShape. What several parts have is written once, and shared as a mapped item.
    Ref of_part(const Part &part);
    /// A peg hangs from its origin; those of one size share their body.
    Ref of_peg(const Fastener &peg);
    Ref of_opening(const Void &opening);

  private:
    Ref solid(const Polyhedron &border);
    Ref solid(const Mesh &triangles);
    Ref face(const Face &face, const std::vector<Ref> &points);
    Ref body(const Shape &shape);
    Ref peg_solid(const Fastener &peg);
    Ref map_of(const char *kind, Ref solid);
    Ref mapped(Ref map);
    Ref defined(Ref representation);
    Ref represented(const char *kind, Ref item);
    void paint(Ref solid, int part);
    Ref extruded(Ref profile, Vec3 from, Vec3 along, double depth);

    IfcText &text_;
    const House &house_;
    IfcContexts contexts_;
    std::map<Index<Shape>, Ref> maps_;
    std::map<std::tuple<double, double>, Ref> peg_maps_;
    std::map<int, Ref> styles_;
    std::optional<Ref> same_place_;
};

} // namespace roundlay::building
