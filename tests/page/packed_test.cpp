// What the page carries, unpacked again.
#include "exporters/files/deflated.h"
#include "exporters/page/parts.h"
#include "tests/mesh/hewn_by_hand.h"
#include "tests/support/catch.h"

#include <nlohmann/json.hpp>
#include <rapidcheck.h>
#include <zlib.h>

#include <cstring>

using namespace roundlay;
using Json = nlohmann::json;

namespace {

std::string inflated(const std::string &bytes, std::size_t size) {
    z_stream stream{};
    REQUIRE(inflateInit2(&stream, -15) == Z_OK);
    std::string in = bytes, out(size + 1, '\0');
    stream.next_in = reinterpret_cast<Bytef *>(in.data());
    stream.avail_in = static_cast<uInt>(in.size());
    stream.next_out = reinterpret_cast<Bytef *>(out.data());
    stream.avail_out = static_cast<uInt>(out.size());
    CHECK(inflate(&stream, Z_FINISH) == Z_STREAM_END);
    out.resize(stream.total_out);
    inflateEnd(&stream);
    return out;
}

template <typename Number> Number at(const std::string &bytes, std::size_t &place) {
    Number number{};
    std::memcpy(&number, bytes.data() + place, sizeof number);
    place += sizeof number;
    return number;
}

} // namespace

TEST_CASE("what is made small is large again") {
    CHECK(inflated(deflated(""), 0).empty());
    CHECK(rc::check("any bytes", [](const std::string &bytes) {
        RC_ASSERT(inflated(deflated(bytes), bytes.size()) == bytes);
    }));
}

TEST_CASE("a mesh keeps its corners to a step of its size, its triangles and its edges") {
    Yard yard;
    const Mesh mesh = mesh_of(by_hand::log_with_two_tails(), {12});
    yard.meshes.push_back(mesh);
    const std::string bytes = packed_meshes(yard);
    std::size_t place = 0;
    float low[3], size[3];
    for (float &number : low)
        number = at<float>(bytes, place);
    for (float &number : size)
        number = at<float>(bytes, place);
    const Box3 box = bounds(mesh);
    CHECK(size[0] == static_cast<float>(box.high.x - box.low.x));
    const auto corners = at<std::uint32_t>(bytes, place), triangles = at<std::uint32_t>(bytes, place);
    const auto ends = at<std::uint32_t>(bytes, place), edges = at<std::uint32_t>(bytes, place);
    CHECK(triangles == mesh.triangles.size());
    CHECK(edges == mesh.edges.size());
    CHECK(bytes.size() == place + corners * 9u + triangles * 12u + ends * 6u + edges * 8u);
    double off = 0;
    for (std::uint32_t i = 0; i < corners; ++i) {
        Vec3 point;
        for (double *part : {&point.x, &point.y, &point.z}) {
            const int axis = part == &point.x ? 0 : part == &point.y ? 1 : 2;
            *part = low[axis] + at<std::uint16_t>(bytes, place) / 65535.0 * size[axis];
        }
        double nearest = 1e9;
        for (const Vec3 &own : mesh.points)
            nearest = std::min(nearest, length(own - point));
        off = std::max(off, nearest);
    }
    CHECK(off < 0.1);
}

TEST_CASE("a sheet keeps its lines, areas and words") {
    using namespace sheets;
    Sheet sheet;
    sheet.size = {420, 297};
    sheet.title = "A-01-1";
    sheet.items = {Path{{{10, 10}, {20, 10}, {20, 30.04}}, true, Line::hidden, ""},
                   Fill{{{{0, 0}, {5, 0}, {5, 5}}}, 0.5}, Path{{{1, 1}, {2, 2}}, false, Line::visible, ""},
                   Text{{10, 287}, 2.5, "A < B & \"C\"", Across::left, Upright::baseline, 90}};
    Yard yard;
    yard.meshes.resize(1);
    yard.sheets = {std::make_shared<const std::vector<Sheet>>(std::vector<Sheet>{sheet})};
    const Json all = Json::parse(packed_sheets(yard));
    const Json &one = all["models"][0][0];
    CHECK(one["w"] == 4200);
    CHECK(one["h"] == 2970);
    CHECK(one["d"] ==
          Json::parse(
              R"([[1,"M100 2870l100 0 0 -200z"],["g",50,"M0 2970l50 0 0 -50z"],[0,"M10 2960l10 -10"]])"));
    CHECK(all["words"][one["x"][0][0].get<std::size_t>()] == "A < B & \"C\"");
    CHECK(one["x"][0][1] == 100);
    CHECK(one["x"][0][2] == 100);
    CHECK(one["x"][0][6] == -90);
    CHECK(all["lines"].size() == std::size(all_lines));
}
