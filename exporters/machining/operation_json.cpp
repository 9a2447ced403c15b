#include "exporters/machining/operation_files.h"
#include "exporters/machining/operation_words.h"
#include "kernel/measure/plain_numbers.h"

#include <nlohmann/json.hpp>

namespace roundlay::machining {

namespace {

using Json = nlohmann::ordered_json;

/// What the schema states: last digits beyond these are of the reckoning, not of the wood.
constexpr int length_places = 9, way_places = 12, degree_places = 9, volume_places = 6;

double length_of(double mm) {
    return to_places(mm, length_places);
}

double degrees(double angle) {
    return to_places(angle, degree_places);
}

Json point(Vec3 p) {
    return Json::array({length_of(p.x), length_of(p.y), length_of(p.z)});
}

/// A unit vector.
Json way(Vec3 v) {
    return Json::array({to_places(v.x, way_places), to_places(v.y, way_places), to_places(v.z, way_places)});
}

/// By the place of the plane that lies nearest to one on it, for whoever looks at it.
Json plane_json(const Plane &plane, Vec3 near) {
    return {{"point", point(near - plane.distance(near) * plane.normal)}, {"normal", way(plane.normal)}};
}

Json named(Json plane, const std::string &face) {
    plane["face"] = face;
    return plane;
}

Json stock_json(const RawStock &raw) {
    const Stock &stock = raw.stock;
    Json faces = Json::array(), rounds = Json::array();
    const Vec3 middle =
        stock.frame.to_world({stock.size.length / 2, stock.size.width / 2, stock.size.height / 2});
    for (const StockFace &face : raw.faces) {
        Json one = named(plane_json(face.plane, middle), face.face);
        one["side"] = key_of(face.side);
        faces.push_back(std::move(one));
    }
    for (const RoundStick &round : raw.rounds)
        rounds.push_back({{"point", point(round.at)},
                          {"along", way(round.along)},
                          {"radius", length_of(round.radius)},
                          {"face", round.face}});
    return {{"length", length_of(stock.size.length)},
            {"width", length_of(stock.size.width)},
            {"height", length_of(stock.size.height)},
            {"origin", point(stock.frame.origin)},
            {"x", way(stock.frame.x)},
            {"y", way(stock.frame.y)},
            {"z", way(stock.frame.z)},
            {"faces", faces},
            {"rounds", rounds}};
}

Json stretches(const std::vector<Stretch> &all) {
    Json made = Json::array();
    for (const Stretch &each : all)
        made.push_back({{"from", length_of(each.from)}, {"to", length_of(each.to)}});
    return made;
}

Json setups_json(const std::vector<Setup> &setups) {
    Json made = Json::array();
    for (const Setup &setup : setups)
        made.push_back({{"number", made.size() + 1},
                        {"down", key_of(setup.down)},
                        {"up", key_of(setup.up)},
                        {"lies_on", setup.lies_on_flat ? "face" : "round"},
                        {"packing", length_of(setup.packing)},
                        {"hold", key_of(setup.hold)},
                        {"clamp", stretches(setup.clamp)},
                        {"keep_clear", stretches(setup.keep_clear)}});
    return made;
}

Json bore_json(const Drilled &bore) {
    Json made{
        {"entry", point(bore.entry)},     {"along", way(bore.along)}, {"diameter", length_of(bore.diameter)},
        {"depth", length_of(bore.depth)}, {"through", bore.through},  {"face", bore.wall}};
    if (!bore.through) made["bottom"] = bore.bottom;
    return made;
}

Json access_json(const std::vector<AccessSide> &all) {
    Json made = Json::array();
    for (const AccessSide &access : all)
        made.push_back({{"side", key_of(access.side)},
                        {"reach", length_of(access.reach)},
                        {"tilt", degrees(access.tilt)}});
    return made;
}

/// What is cut, in shape and place.
void tell_shape(Json &made, const Operation &operation) {
    Json sides = Json::array();
    const Vec3 middle = 0.5 * (operation.box.low + operation.box.high);
    for (const TakenSide &side : operation.sides)
        sides.push_back(named(plane_json(side.plane, middle), side.face));
    made["sides"] = std::move(sides);
    if (const auto &round = operation.round)
        made["round"] = {{"point", point(round->at)},
                         {"along", way(round->along)},
                         {"radius", length_of(round->radius)},
                         {"half_width", length_of(round->half_width)},
                         {"face", round->face},
                         {"cheek", round->cheek}};
    if (operation.bore) made["bore"] = bore_json(*operation.bore);
    made["box"] = {{"from", point(operation.box.low)}, {"to", point(operation.box.high)}};
}

/// What it asks of a tool.
void tell_tool(Json &made, const Operation &operation) {
    made["access"] = access_json(operation.access);
    Json corners = Json::array();
    for (const InsideCorner &corner : operation.corners)
        corners.push_back(
            {{"from", point(corner.from)}, {"to", point(corner.to)}, {"angle", degrees(corner.angle)}});
    made["corners"] = std::move(corners);
    if (operation.inside_radius) made["inside_radius"] = length_of(*operation.inside_radius);
    made["tolerance"] = operation.tolerance;
    made["makes"] = operation.makes;
}

Json operation_json(const Operation &operation, std::size_t number, const Voice &voice) {
    Json made{{"number", number}, {"mark", operation.mark}, {"kind", key_of(operation.kind)}};
    made["what"] = words_of(operation.kind, voice);
    made["for"] = operation.made_for;
    if (operation.from) {
        made["setup"] = operation.setup;
        made["from"] = key_of(*operation.from);
    }
    tell_shape(made, operation);
    tell_tool(made, operation);
    return made;
}

} // namespace

std::string operations_json(const OperationList &list, const std::string &shell, const Voice &voice) {
    Json operations = Json::array();
    for (const Operation &operation : list.operations)
        operations.push_back(operation_json(operation, operations.size() + 1, voice));
    Json made{{"$schema", schema_name},
              {"format", "roundlay-operations"},
              {"version", 1},
              {"units", "mm"},
              {"caution", caution(voice)},
              {"shell", shell},
              {"tag", list.tag},
              {"pieces", list.pieces},
              {"step_names_faces", list.faces_named},
              {"stock", stock_json(list.stock)},
              {"setups", setups_json(list.setups)},
              {"operations", operations}};
    if (list.volume) made["volume"] = to_places(*list.volume, volume_places);
    return with_short_numbers(made.dump(1, ' ', false, Json::error_handler_t::replace)) + "\n";
}

} // namespace roundlay::machining
