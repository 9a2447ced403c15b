#include "tests/machining/support/rebuilt.h"

#include "tests/machining/support/tools.h"

#include <BRepAdaptor_Surface.hxx>
#include <BRepAlgoAPI_Common.hxx>
#include <BRepAlgoAPI_Cut.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS.hxx>

#include <algorithm>
#include <stdexcept>

namespace operations_check {

namespace {

constexpr double same_place = 1e-4, aside = 0.01, same_way = 1e-6;

/// Something of the file that may leave faces: a plane or a cylinder by its name.
struct Claim {
    std::string name;
    bool round = false;
    Vector point, way; ///< on the plane and out of the wood, or the axis
    double radius = 0;
    const Json *operation = nullptr; ///< that takes what lies outside the face; none: the stock's
};

bool lies_on(const Claim &claim, const FaceAt &face) {
    if (claim.round != face.round) return false;
    if (!claim.round)
        return length(claim.way - face.way) < same_way &&
               std::abs(dot(face.point - claim.point, claim.way)) < same_place;
    const Vector off = face.axis - claim.point;
    return std::abs(std::abs(dot(claim.way, face.way)) - 1) < same_way &&
           length(off - dot(off, claim.way) * claim.way) < same_place &&
           std::abs(claim.radius - face.radius) < same_place;
}

bool takes(const Json &operation, Vector p) {
    for (const Json &side : operation["sides"])
        if (dot(p - vector(side["point"]), vector(side["normal"])) > same_place) return false;
    if (operation.contains("round")) {
        const Json &round = operation["round"];
        const Vector along = vector(round["along"]), across = cross({0, 0, 1}, along);
        const Vector off = p - vector(round["point"]);
        const double y = dot(off, across), r = round["radius"], half = round["half_width"];
        if (std::abs(y) > half + same_place) return false;
        return off.z < std::sqrt(std::max(0.0, r * r - y * y)) + same_place;
    }
    if (operation.contains("bore")) {
        const Json &bore = operation["bore"];
        const Vector off = p - vector(bore["entry"]), way = vector(bore["along"]);
        const double depth = dot(off, way), r = bore["diameter"].get<double>() / 2;
        const double deepest = bore["depth"].get<double>() + (bore["through"] ? r : same_place);
        return depth > -r && depth < deepest && length(off - depth * way) < r + same_place;
    }
    return true;
}

void claim_bore(std::vector<Claim> &claims, const Json &operation) {
    const Json &bore = operation["bore"];
    const Vector entry = vector(bore["entry"]), way = vector(bore["along"]);
    claims.push_back({bore["face"], true, entry, way, bore["diameter"].get<double>() / 2, &operation});
    if (!bore["through"])
        claims.push_back(
            {bore["bottom"], false, entry + bore["depth"].get<double>() * way, -1.0 * way, 0, &operation});
}

void claim_round(std::vector<Claim> &claims, const Json &operation) {
    const Json &round = operation["round"];
    const Vector at = vector(round["point"]), along = vector(round["along"]),
                 across = cross({0, 0, 1}, along);
    const double half = round["half_width"];
    claims.push_back({round["face"], true, at, along, round["radius"], &operation});
    for (const double sign : {-1.0, 1.0})
        claims.push_back({round["cheek"], false, at + sign * half * across, -sign * across, 0, &operation});
}

std::vector<Claim> claims_of(const Json &list) {
    std::vector<Claim> claims;
    for (const Json &operation : list["operations"]) {
        for (const Json &side : operation["sides"])
            claims.push_back(
                {side["face"], false, vector(side["point"]), -1.0 * vector(side["normal"]), 0, &operation});
        if (operation.contains("round")) claim_round(claims, operation);
        if (operation.contains("bore")) claim_bore(claims, operation);
    }
    for (const Json &face : list["stock"]["faces"])
        claims.push_back({face["face"], false, vector(face["point"]), vector(face["normal"])});
    for (const Json &round : list["stock"]["rounds"])
        claims.push_back(
            {round["face"], true, vector(round["point"]), vector(round["along"]), round["radius"]});
    return claims;
}

std::vector<std::string> names_of(const FaceAt &face, const std::vector<Claim> &claims) {
    std::vector<std::string> names;
    for (const Claim &claim : claims) {
        if (!lies_on(claim, face)) continue;
        if (claim.operation && !takes(*claim.operation, face.point + aside * face.out)) continue;
        if (!claim.operation && !names.empty()) continue; // the stock's own, where nothing takes it
        if (std::find(names.begin(), names.end(), claim.name) == names.end()) names.push_back(claim.name);
    }
    return names;
}

template <typename Boolean> TopoDS_Shape done(Boolean &&operation, const std::string &what) {
    if (!operation.IsDone() || operation.HasErrors()) throw std::runtime_error("no boolean of " + what);
    return operation.Shape();
}

TopoDS_Shape stock_of(const Json &stock, const Room &room) {
    std::vector<HalfSpace> planes;
    for (const Json &face : stock["faces"])
        planes.push_back({vector(face["point"]), vector(face["normal"])});
    TopoDS_Shape wood = convex(planes, room);
    for (const Json &round : stock["rounds"])
        wood = done(BRepAlgoAPI_Common(wood, stick(round, room)), "the stick");
    return wood;
}

} // namespace

Rebuilt rebuilt_from(std::string_view json) {
    const Json list = Json::parse(json);
    const Room room = room_round(list["stock"]);
    Rebuilt made;
    if (list.contains("volume")) made.told = list["volume"].get<double>();
    made.names_faces = list["step_names_faces"];
    made.round = !list["stock"]["rounds"].empty();
    made.solid = stock_of(list["stock"], room);
    for (const Json &operation : list["operations"]) {
        made.round = made.round || operation.contains("round");
        made.solid = done(BRepAlgoAPI_Cut(made.solid, tool_of(operation, room)),
                          "operation " + operation["number"].dump());
    }
    const std::vector<Claim> claims = claims_of(list);
    for (TopExp_Explorer each(made.solid, TopAbs_FACE); each.More(); each.Next())
        made.faces.push_back({each.Current(), names_of(face_at(TopoDS::Face(each.Current())), claims)});
    return made;
}

} // namespace operations_check
