#include "exporters/building/ifc_shapes.h"

#include "exporters/mesh/palette.h"

namespace roundlay::building {

namespace {
constexpr const char *plane_faces = "Brep", *triangles = "Tessellation", *swept = "SweptSolid";
constexpr int of_pegs = -1; ///< their colour
} // namespace

Ref IfcShapes::of_part(const Part &part) {
    const Shape &shape = house_.shapes[part.shape];
    const char *kind = std::holds_alternative<Mesh>(shape.body) ? triangles : plane_faces;
    if (house_.uses[part.shape.at()] == 1) return defined(represented(kind, body(shape)));
    const auto [entry, is_new] = maps_.try_emplace(part.shape);
    if (is_new) entry->second = map_of(kind, body(shape));
    return mapped(entry->second);
}

Ref IfcShapes::body(const Shape &shape) {
    const Ref made = std::visit([&](const auto &each) { return solid(each); }, shape.body);
    paint(made, shape.part);
    return made;
}

Ref IfcShapes::solid(const Polyhedron &border) {
    std::vector<Ref> points, faces;
    points.reserve(border.vertices.size());
    for (const Vec3 &at : border.vertices)
        points.push_back(text_.point(at));
    for (const Face &each : border.faces)
        faces.push_back(face(each, points));
    return text_.add("IFCFACETEDBREP", text_.add("IFCCLOSEDSHELL", faces));
}

Ref IfcShapes::face(const Face &face, const std::vector<Ref> &points) {
    std::vector<Ref> bounds;
    for (const std::vector<int> &loop : face.loops) {
        std::vector<Ref> corners;
        for (const int corner : loop)
            corners.push_back(points[static_cast<std::size_t>(corner)]);
        const Ref polygon = text_.add("IFCPOLYLOOP", corners);
        bounds.push_back(text_.add(bounds.empty() ? "IFCFACEOUTERBOUND" : "IFCFACEBOUND", polygon, true));
    }
    return text_.add("IFCFACE", bounds);
}

Ref IfcShapes::solid(const Mesh &mesh) {
    std::vector<Vec3> points;
    for (const Vec3 &at : mesh.points)
        points.push_back(part21::to_finest(at));
    std::vector<std::array<int, 3>> corners; // counted from 1
    for (const MeshTriangle &triangle : mesh.triangles)
        corners.push_back({triangle.corners[0] + 1, triangle.corners[1] + 1, triangle.corners[2] + 1});
    const Ref list = text_.add("IFCCARTESIANPOINTLIST3D", points);
    return text_.add("IFCTRIANGULATEDFACESET", list, Unset{}, true, corners, Unset{});
}

Ref IfcShapes::of_peg(const Fastener &peg) {
    const auto [entry, is_new] = peg_maps_.try_emplace({peg.diameter, peg.length});
    if (is_new) entry->second = map_of(swept, peg_solid(peg));
    return mapped(entry->second);
}

Ref IfcShapes::peg_solid(const Fastener &peg) {
    const Enumeration area{"AREA"};
    const Ref middle = text_.add("IFCCARTESIANPOINT", std::vector{0.0, 0.0});
    const Ref place = text_.add("IFCAXIS2PLACEMENT2D", middle, Unset{});
    const Ref profile = house_.square_pegs
                            ? text_.add("IFCRECTANGLEPROFILEDEF", area, Unset{}, place, *house_.square_pegs,
                                        *house_.square_pegs)
                            : text_.add("IFCCIRCLEPROFILEDEF", area, Unset{}, place, peg.diameter / 2);
    const Ref solid = extruded(profile, {0, 0, -peg.length}, {0, 0, 1}, peg.length);
    paint(solid, of_pegs);
    return solid;
}

/// Its pieces are cut out there already. Programs cut the opening of a whole out of its parts once more where
/// it has a body, even one that the standard says is not to be subtracted: a box alone is left in peace.
Ref IfcShapes::of_opening(const Void &opening) {
    const Ref corner = text_.point({});
    const Ref box = text_.add("IFCBOUNDINGBOX", corner, opening.width, opening.depth, opening.height);
    return defined(
        text_.add("IFCSHAPEREPRESENTATION", contexts_.box, "Box", "BoundingBox", std::vector{box}));
}

Ref IfcShapes::extruded(Ref profile, Vec3 from, Vec3 along, double depth) {
    const Ref place = text_.placement({from, {1, 0, 0}, {0, 1, 0}, {0, 0, 1}});
    const Ref way = text_.direction(along);
    return text_.add("IFCEXTRUDEDAREASOLID", profile, place, way, depth);
}

Ref IfcShapes::represented(const char *kind, Ref item) {
    return text_.add("IFCSHAPEREPRESENTATION", contexts_.body, "Body", kind, std::vector{item});
}

Ref IfcShapes::defined(Ref representation) {
    return text_.add("IFCPRODUCTDEFINITIONSHAPE", Unset{}, Unset{}, std::vector{representation});
}

Ref IfcShapes::map_of(const char *kind, Ref solid) {
    const Ref origin = text_.placement({}), body = represented(kind, solid);
    return text_.add("IFCREPRESENTATIONMAP", origin, body);
}

Ref IfcShapes::mapped(Ref map) {
    if (!same_place_) {
        const Ref origin = text_.point({});
        same_place_ =
            text_.add("IFCCARTESIANTRANSFORMATIONOPERATOR3D", Unset{}, Unset{}, origin, Unset{}, Unset{});
    }
    return defined(represented("MappedRepresentation", text_.add("IFCMAPPEDITEM", map, *same_place_)));
}

/// Walls are told apart by their colours, as in pictures.
void IfcShapes::paint(Ref solid, int part) {
    const auto [entry, is_new] = styles_.try_emplace(part);
    if (is_new) {
        constexpr double full = 255;
        constexpr Colour dark{0x6b, 0x4a, 0x32};
        const Colour colour = part == of_pegs ? dark : wall_colour(part);
        const Ref rgb = text_.add("IFCCOLOURRGB", Unset{}, colour.r / full, colour.g / full, colour.b / full);
        const Ref shading = text_.add("IFCSURFACESTYLESHADING", rgb, 0.0);
        entry->second = text_.add("IFCSURFACESTYLE", Unset{}, Enumeration{"BOTH"}, std::vector{shading});
    }
    text_.add("IFCSTYLEDITEM", solid, std::vector{entry->second}, Unset{});
}

} // namespace roundlay::building
