// Read back by nlohmann-json and by the numbers of the glTF 2.0 specification (Khronos Group, version 2.0.1),
// independently of the writer's own tables.
#include "exporters/mesh/glb.h"
#include "exporters/mesh/mesh.h"
#include "exporters/mesh/palette.h"
#include "tests/mesh/layout_by_hand.h"
#include "tests/support/catch.h"

#include <nlohmann/json.hpp>

#include <cstring>
#include <set>

using namespace roundlay;
using Json = nlohmann::json;

namespace {

std::uint32_t word(const std::string &bytes, std::size_t at) {
    std::uint32_t value = 0;
    std::memcpy(&value, bytes.data() + at, sizeof value);
    return value;
}

struct ReadGlb {
    Json json;
    std::string data;
};

ReadGlb read(const std::string &bytes) {
    ReadGlb glb;
    REQUIRE(bytes.size() >= 20);
    REQUIRE(bytes.substr(0, 4) == "glTF");
    REQUIRE(word(bytes, 4) == 2);
    REQUIRE(word(bytes, 8) == bytes.size());
    const std::size_t text = word(bytes, 12);
    REQUIRE(bytes.substr(16, 4) == "JSON");
    REQUIRE(text % 4 == 0);
    glb.json = Json::parse(bytes.substr(20, text));
    const std::size_t data = 20 + text;
    REQUIRE(bytes.substr(data + 4, 4) == std::string("BIN\0", 4));
    REQUIRE(word(bytes, data) % 4 == 0);
    glb.data = bytes.substr(data + 8);
    REQUIRE(glb.data.size() == word(bytes, data));
    return glb;
}

struct Place {
    std::size_t start, stride, count;
};

Place place(const ReadGlb &glb, int accessor, std::size_t element) {
    const Json &a = glb.json["accessors"].at(accessor);
    const Json &view = glb.json["bufferViews"].at(a["bufferView"].get<int>());
    const std::size_t stride = view.value("byteStride", element), offset = a.value("byteOffset", 0u);
    const std::size_t count = a["count"];
    REQUIRE(offset + (count - 1) * stride + element <= view["byteLength"].get<std::size_t>());
    return {view["byteOffset"].get<std::size_t>() + offset, stride, count};
}

std::vector<Vec3> points(const ReadGlb &glb, int accessor) {
    const Json &a = glb.json["accessors"].at(accessor);
    REQUIRE(a["componentType"] == 5126);
    REQUIRE(a["type"] == "VEC3");
    const Place at = place(glb, accessor, 12);
    std::vector<Vec3> out;
    for (std::size_t i = 0; i < at.count; ++i) {
        float xyz[3];
        std::memcpy(xyz, glb.data.data() + at.start + i * at.stride, sizeof xyz);
        out.push_back({xyz[0], xyz[1], xyz[2]});
    }
    return out;
}

std::vector<std::size_t> indices(const ReadGlb &glb, int accessor) {
    const Json &a = glb.json["accessors"].at(accessor);
    REQUIRE(a["type"] == "SCALAR");
    const std::size_t size = a["componentType"] == 5123 ? 2 : 4;
    REQUIRE((size == 2 || a["componentType"] == 5125));
    const Place at = place(glb, accessor, size);
    REQUIRE(at.start % size == 0);
    std::vector<std::size_t> out;
    for (std::size_t i = 0; i < at.count; ++i) {
        std::uint32_t value = 0;
        std::memcpy(&value, glb.data.data() + at.start + i * size, size);
        out.push_back(value);
    }
    return out;
}

double volume_of(const ReadGlb &glb, const Json &primitive) {
    const auto corner = points(glb, primitive["attributes"]["POSITION"]);
    const auto index = indices(glb, primitive["indices"]);
    double six = 0;
    for (std::size_t i = 0; i + 2 < index.size(); i += 3)
        six += dot(corner.at(index[i]), cross(corner.at(index[i + 1]), corner.at(index[i + 2])));
    return six / 6;
}

Vec3 rotated(const Json &q, Vec3 p) {
    const Vec3 v{q[0], q[1], q[2]};
    const double w = q[3];
    return p + 2 * w * cross(v, p) + 2.0 * cross(v, cross(v, p));
}

const Json &node(const ReadGlb &glb, std::string_view name) {
    for (const Json &n : glb.json["nodes"])
        if (n["name"] == name) return n;
    FAIL("no node " << name);
    throw std::logic_error("not reached");
}

} // namespace

TEST_CASE("A written shell has one node per piece under its wall and shares alike pieces") {
    const auto shell = by_hand::small_shell();
    const ReadGlb glb = read(write_glb(shell.layout, shell.bodies));
    CHECK(glb.json["asset"]["version"] == "2.0");
    std::set<std::string> tags;
    for (const Json &n : glb.json["nodes"])
        if (n.contains("mesh")) tags.insert(n["name"]);
    CHECK(tags == std::set<std::string>{"A-01-1", "A-02-1", "A-03-1", "B-01-1", "B-02-1", "B-03-1"});
    CHECK(node(glb, "A-01-1")["mesh"] == node(glb, "A-03-1")["mesh"]);
    CHECK(glb.json["meshes"].size() == 4); // two models in two walls each ...
    std::set<int> used;
    for (const Json &m : glb.json["meshes"])
        used.insert(m["primitives"][0]["indices"].get<int>());
    CHECK(used.size() == 2); // ... over the data of two
    const Json &root = glb.json["nodes"].at(glb.json["scenes"][0]["nodes"][0].get<int>());
    CHECK(root["name"] == "Small shell");
    CHECK(root["children"].size() == 2);
    CHECK(node(glb, "wall A")["children"].size() == 3);
    CHECK(node(glb, "B-02-1")["extras"]["round"] == 2);
    CHECK(node(glb, "B-02-1")["extras"]["raise"] == 5);
}

TEST_CASE("Written geometry is in metres, closed by volume, with bounds and unit normals") {
    const auto shell = by_hand::small_shell();
    const ReadGlb glb = read(write_glb(shell.layout, shell.bodies));
    const Json &primitive = glb.json["meshes"][node(glb, "A-01-1")["mesh"].get<int>()]["primitives"][0];
    const double expected = volume(mesh_of(shell.bodies.front())) * 1e-9;
    CHECK(volume_of(glb, primitive) == Approx(expected).epsilon(1e-5)); // single precision
    const int positions = primitive["attributes"]["POSITION"], normals = primitive["attributes"]["NORMAL"];
    const Json &accessor = glb.json["accessors"][positions];
    double low = 1e9, high = -1e9;
    for (const Vec3 p : points(glb, positions)) {
        low = std::min(low, p.x);
        high = std::max(high, p.x);
    }
    CHECK(accessor["min"][0] == low);
    CHECK(accessor["max"][0] == high);
    CHECK(high == Approx(4.0));
    for (const Vec3 n : points(glb, normals))
        CHECK(length(n) == Approx(1).margin(1e-6));
    CHECK(points(glb, normals).size() == points(glb, positions).size());
}

TEST_CASE("A node puts its piece where the layout does, with Y up") {
    auto shell = by_hand::small_shell();
    // Frames turned every way, not only upright ones.
    const double third = 1.0 / 3, two = 2.0 / 3;
    shell.layout.pieces[Index<Piece>(1)].frame = {
        {100, -200, 300}, {two, two, third}, {-two, third, two}, {third, -two, two}};
    shell.layout.pieces[Index<Piece>(2)].frame = {{0, 0, 0}, {-1, 0, 0}, {0, -1, 0}, {0, 0, 1}};
    shell.layout.pieces[Index<Piece>(3)].frame = {{0, 0, 0}, {-1, 0, 0}, {0, 1, 0}, {0, 0, -1}};
    shell.layout.pieces[Index<Piece>(4)].frame = {{0, 0, 0}, {1, 0, 0}, {0, -1, 0}, {0, 0, -1}};
    const ReadGlb glb = read(write_glb(shell.layout, shell.bodies));
    for (const Piece &piece : shell.layout.pieces) {
        CAPTURE(piece.tag);
        const Json &n = node(glb, piece.tag);
        for (const Vec3 p : {Vec3{1000, 0, 0}, Vec3{0, 1000, 0}, Vec3{0, 0, 1000}, Vec3{123, -456, 789}}) {
            const Vec3 world = 1e-3 * piece.frame.to_world(p);
            const Vec3 local = 1e-3 * Vec3{p.x, p.z, -p.y};
            const Vec3 placed = rotated(n["rotation"], local) +
                                Vec3{n["translation"][0], n["translation"][1], n["translation"][2]};
            CHECK(length(placed - Vec3{world.x, world.z, -world.y}) < 1e-9);
        }
    }
}

TEST_CASE("Materials carry the wall's colour as linear light and are not metal") {
    const auto shell = by_hand::small_shell();
    const ReadGlb glb = read(write_glb(shell.layout, shell.bodies));
    REQUIRE(glb.json["materials"].size() == 2);
    for (int wall = 0; wall < 2; ++wall) {
        const Json &pbr = glb.json["materials"][wall]["pbrMetallicRoughness"];
        CHECK(pbr["metallicFactor"] == 0.0);
        CHECK(pbr["baseColorFactor"][0] == Approx(linear(wall_colour(wall).r)));
    }
    // IEC 61966-2-1: the ends of the scale, its straight part and mid grey.
    CHECK(linear(0) == 0);
    CHECK(linear(255) == Approx(1));
    CHECK(linear(10) == Approx(10 / 255.0 / 12.92));
    CHECK(linear(128) == Approx(0.21586).epsilon(1e-4));
}

TEST_CASE("Edges are written as lines when asked for") {
    const auto shell = by_hand::small_shell();
    const ReadGlb glb = read(write_glb(shell.layout, shell.bodies, {24, true}));
    const Json &primitives = glb.json["meshes"][0]["primitives"];
    REQUIRE(primitives.size() == 2);
    CHECK(primitives[1]["mode"] == 1);
    CHECK(indices(glb, primitives[1]["indices"]).size() == 2 * mesh_of(shell.bodies.front()).edges.size());
    CHECK(primitives[1]["material"] == 2);
}

TEST_CASE("The same shell gives the same bytes, and quotes in names do no harm") {
    auto shell = by_hand::small_shell();
    shell.layout.name = "Ä \"quoted\" \\ name";
    const std::string bytes = write_glb(shell.layout, shell.bodies);
    CHECK(bytes == write_glb(shell.layout, shell.bodies));
    CHECK(node(read(bytes), "Ä \"quoted\" \\ name")["children"].size() == 2);
}

TEST_CASE("A large model gets long indices") {
    auto shell = by_hand::small_shell();
    for (int i = 0; i < 60; ++i)
        shell.bodies[Index<Model>(1)].bores.push_back(by_hand::bore(50 + 65 * i, 100, 0, 220));
    const ReadGlb glb = read(write_glb(shell.layout, shell.bodies, {360, false}));
    const Json &primitive = glb.json["meshes"][node(glb, "A-02-1")["mesh"].get<int>()]["primitives"][0];
    CHECK(glb.json["accessors"][primitive["indices"].get<int>()]["componentType"] == 5125);
    CHECK(volume_of(glb, primitive) ==
          Approx(volume(mesh_of(shell.bodies[Index<Model>(1)], {360})) * 1e-9).epsilon(1e-4));
}

TEST_CASE("An empty layout gives a file that can be read, a wrong number of bodies is refused") {
    Layout empty;
    const std::string bytes = write_glb(empty, {});
    CHECK(bytes.substr(0, 4) == "glTF");
    CHECK(Json::parse(bytes.substr(20))["scenes"].size() == 1);
    CHECK_THROWS_AS(write_glb(empty, Bodies(1)), std::invalid_argument);
}
