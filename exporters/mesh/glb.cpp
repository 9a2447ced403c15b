// Khronos Group: glTF 2.0 Specification. Sections named below are of its version 2.0.1.
#include "exporters/mesh/glb.h"

#include "exporters/mesh/mesh.h"
#include "exporters/mesh/palette.h"
#include "exporters/mesh/shading.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <bit>
#include <cstdint>
#include <cstring>
#include <limits>
#include <map>
#include <stdexcept>

namespace roundlay {
namespace {

using Json = nlohmann::ordered_json; // keeps the order of writing, so the bytes are ours to decide

// Section 3.6.2.2 and 3.7.2.1: the numbers that stand for kinds.
enum Component : int { unsigned_short = 5123, unsigned_int = 5125, single_float = 5126 };
enum Target : int { vertex_data = 34962, index_data = 34963 };
enum Mode : int { lines = 1, triangles = 4 };

using Point = std::array<float, 3>;

/// Millimetres with Z up to metres with Y up.
Point to_gltf(const Point &p) {
    constexpr float metre = 1000;
    return {p[0] / metre, p[2] / metre, -p[1] / metre};
}
Point turned(const Point &n) {
    return {n[0], n[2], -n[1]};
}

/// Unit quaternion (x, y, z, w) of a rotation, in glTF's axes. The largest part is taken from the diagonal,
/// so that nothing small is divided by.
std::array<double, 4> rotation(const Frame &f) {
    const std::array<double, 4> square{1 + f.x.x - f.y.y - f.z.z, 1 - f.x.x + f.y.y - f.z.z,
                                       1 - f.x.x - f.y.y + f.z.z, 1 + f.x.x + f.y.y + f.z.z};
    std::array<double, 4> q{};
    switch (std::max_element(square.begin(), square.end()) - square.begin()) {
    case 0:
        q = {square[0], f.x.y + f.y.x, f.z.x + f.x.z, f.y.z - f.z.y};
        break;
    case 1:
        q = {f.x.y + f.y.x, square[1], f.y.z + f.z.y, f.z.x - f.x.z};
        break;
    case 2:
        q = {f.z.x + f.x.z, f.y.z + f.z.y, square[2], f.x.y - f.y.x};
        break;
    default:
        q = {f.y.z - f.z.y, f.z.x - f.x.z, f.x.y - f.y.x, square[3]};
        break;
    }
    const double size = std::sqrt(q[0] * q[0] + q[1] * q[1] + q[2] * q[2] + q[3] * q[3]);
    for (double &part : q)
        part = part / size + 0.0; // no minus zero in the text
    return {q[0], q[2], -q[1] + 0.0, q[3]};
}

/// One stretch of the binary chunk that grows while accessors are cut from it.
class View {
  public:
    View(int number, Target target, int stride) : number_(number), target_(target), stride_(stride) {}

    template <typename T> std::size_t append(const T *from, std::size_t count) {
        const std::size_t at = bytes_.size();
        bytes_.resize(at + count * sizeof(T));
        if (count > 0) std::memcpy(bytes_.data() + at, from, count * sizeof(T));
        return at;
    }
    int number() const { return number_; }
    const std::string &bytes() const { return bytes_; }
    Json json(std::size_t offset) const {
        Json view{{"buffer", 0}, {"byteOffset", offset}, {"byteLength", bytes_.size()}};
        if (target_ == vertex_data) view["byteStride"] = stride_;
        view["target"] = static_cast<int>(target_);
        return view;
    }

  private:
    int number_;
    Target target_;
    int stride_;
    std::string bytes_;
};

/// The accessors of one model.
struct Stored {
    int positions = -1, normals = -1, triangles = -1, points = -1, edges = -1;
};

class GlbWriter {
  public:
    GlbWriter(const Layout &layout, const Bodies &bodies, const GlbOptions &options)
        : layout_(layout), options_(options) {
        std::size_t largest = 0;
        for (const Body &body : bodies) {
            models_.push_back(shaded(mesh_of(body, {options.sides})));
            largest = std::max(largest, models_.back().corners.size());
        }
        // Section 3.7.2.1: the greatest index is kept for restarting a primitive.
        short_indices_ = largest < std::numeric_limits<std::uint16_t>::max();
    }

    std::string write() {
        for (const ShadedMesh &model : models_)
            store(model);
        add_materials();
        add_nodes();
        add_buffers();
        return packed();
    }

  private:
    void store(const ShadedMesh &model) {
        Stored stored;
        std::vector<Point> positions, normals, points;
        for (const ShadedCorner &c : model.corners) {
            positions.push_back(to_gltf(c.position));
            normals.push_back(turned(c.normal));
        }
        stored.positions = add_points(positions, true);
        stored.normals = add_points(normals, false);
        stored.triangles = add_indices(model.triangles);
        if (options_.edges) {
            for (const Point &p : model.points)
                points.push_back(to_gltf(p));
            stored.points = add_points(points, true);
            stored.edges = add_indices(model.edges);
        }
        stored_.push_back(stored);
    }

    /// Section 3.6.2.5: positions must state their least and greatest values.
    int add_points(const std::vector<Point> &points, bool with_bounds) {
        Json accessor{{"bufferView", points_.number()},
                      {"byteOffset", points_.append(points.data(), points.size())},
                      {"componentType", static_cast<int>(single_float)},
                      {"count", points.size()},
                      {"type", "VEC3"}};
        if (with_bounds && !points.empty()) {
            Point low = points.front(), high = points.front();
            for (const Point &p : points)
                for (std::size_t i = 0; i < p.size(); ++i) {
                    low[i] = std::min(low[i], p[i]);
                    high[i] = std::max(high[i], p[i]);
                }
            accessor["min"] = low;
            accessor["max"] = high;
        }
        return add_accessor(std::move(accessor));
    }

    int add_indices(const std::vector<std::uint32_t> &indices) {
        std::size_t offset = 0;
        if (short_indices_) {
            const std::vector<std::uint16_t> narrow(indices.begin(), indices.end());
            offset = indices_.append(narrow.data(), narrow.size());
        } else {
            offset = indices_.append(indices.data(), indices.size());
        }
        return add_accessor(
            {{"bufferView", indices_.number()},
             {"byteOffset", offset},
             {"componentType", static_cast<int>(short_indices_ ? unsigned_short : unsigned_int)},
             {"count", indices.size()},
             {"type", "SCALAR"}});
    }

    int add_accessor(Json accessor) {
        json_accessors_.push_back(std::move(accessor));
        return count_of(json_accessors_) - 1;
    }

    void add_materials() {
        for (const auto part : parts_of(layout_))
            json_materials_.push_back(material(part_name(layout_, part), wall_colour(part.number())));
        if (options_.edges) json_materials_.push_back(material("edges", {0x3a, 0x2c, 0x20}));
    }

    /// Section 3.9.2: colour factors are linear light; metallic is 1 where it is not stated.
    static Json material(const std::string &name, Colour colour) {
        constexpr double roughness = 0.9;
        return {
            {"name", name},
            {"pbrMetallicRoughness",
             {{"baseColorFactor", Json::array({linear(colour.r), linear(colour.g), linear(colour.b), 1.0})},
              {"metallicFactor", 0.0},
              {"roughnessFactor", roughness}}}};
    }

    /// A material belongs to a mesh, so a model used in two walls is two meshes over the same data.
    int mesh_for(Index<Model> model, Index<LayoutPart> part) {
        const auto [found, fresh] = mesh_of_.try_emplace({model, part}, count_of(json_meshes_));
        if (!fresh) return found->second;
        const Stored &s = stored_[model.at()];
        Json primitives = Json::array();
        primitives.push_back({{"attributes", {{"POSITION", s.positions}, {"NORMAL", s.normals}}},
                              {"indices", s.triangles},
                              {"material", part.number()},
                              {"mode", static_cast<int>(triangles)}});
        if (options_.edges)
            primitives.push_back({{"attributes", {{"POSITION", s.points}}},
                                  {"indices", s.edges},
                                  {"material", count_of(parts_of(layout_))},
                                  {"mode", static_cast<int>(lines)}});
        const Piece &first = layout_.pieces[layout_.models[model].pieces.front()];
        json_meshes_.push_back({{"name", "as " + first.tag}, {"primitives", std::move(primitives)}});
        return found->second;
    }

    void add_nodes() {
        Indexed<Json, LayoutPart> children(parts_of(layout_).size(), Json::array());
        for (const Piece &piece : layout_.pieces) {
            children.at(part_of(layout_, piece)).push_back(json_nodes_.size());
            json_nodes_.push_back(node_of(piece));
        }
        Json parts = Json::array();
        for (const auto i : children.indices()) {
            if (children[i].empty()) continue;
            parts.push_back(json_nodes_.size());
            json_nodes_.push_back({{"name", part_name(layout_, i)}, {"children", children[i]}});
        }
        Json root{{"name", layout_.name.empty() ? "shell" : layout_.name}};
        if (!parts.empty()) root["children"] = parts;
        json_nodes_.push_back(root);
    }

    Json node_of(const Piece &piece) {
        constexpr double metre = 1000;
        const Vec3 o = piece.frame.origin;
        return {{"name", piece.tag},
                {"mesh", mesh_for(piece.model, part_of(layout_, piece))},
                {"translation", Json::array({o.x / metre + 0.0, o.z / metre + 0.0, -o.y / metre + 0.0})},
                {"rotation", rotation(piece.frame)},
                {"extras", {{"round", piece.round}, {"raise", piece.raise}}}};
    }

    void add_buffers() {
        for (const View *view : {&points_, &indices_}) {
            if (view->bytes().empty()) continue;
            json_views_.push_back(view->json(binary_.size()));
            binary_ += view->bytes();
            pad(binary_, '\0');
        }
    }

    static void pad(std::string &bytes, char with) {
        while (bytes.size() % 4 != 0)
            bytes += with;
    }

    Json document() const {
        Json doc{{"asset", {{"version", "2.0"}, {"generator", "roundlay"}}},
                 {"scene", 0},
                 {"scenes", Json::array({Json{{"nodes", Json::array({json_nodes_.size() - 1})}}})},
                 {"nodes", json_nodes_}};
        // Section 5: empty arrays are not allowed at the top.
        const auto put = [&doc](const char *key, const Json &value) {
            if (!value.empty()) doc[key] = value;
        };
        put("meshes", json_meshes_);
        put("materials", json_meshes_.empty() ? Json::array() : json_materials_);
        put("accessors", json_accessors_);
        put("bufferViews", json_views_);
        if (!binary_.empty()) doc["buffers"] = Json::array({Json{{"byteLength", binary_.size()}}});
        return doc;
    }

    /// Section 4.4: a header and two chunks, the text padded by spaces and the data by zeros.
    std::string packed() const {
        constexpr std::uint32_t magic = 0x46546c67, version = 2, text_chunk = 0x4e4f534a,
                                data_chunk = 0x004e4942;
        constexpr std::size_t header = 12, chunk_header = 8;
        std::string text = document().dump(-1, ' ', false, Json::error_handler_t::replace);
        pad(text, ' ');
        const std::size_t data = binary_.empty() ? 0 : chunk_header + binary_.size();
        std::string out;
        for (const std::size_t word :
             {std::size_t{magic}, std::size_t{version}, header + chunk_header + text.size() + data,
              text.size(), std::size_t{text_chunk}})
            append_word(out, word);
        out += text;
        if (data == 0) return out;
        append_word(out, binary_.size());
        append_word(out, data_chunk);
        return out + binary_;
    }

    static void append_word(std::string &out, std::size_t value) {
        for (int shift = 0; shift < 32; shift += 8)
            out += static_cast<char>(value >> shift & 0xff);
    }

    const Layout &layout_;
    GlbOptions options_;
    std::vector<ShadedMesh> models_;
    bool short_indices_ = true;
    View points_{0, vertex_data, 3 * sizeof(float)}, indices_{1, index_data, 0};
    std::vector<Stored> stored_;
    std::map<std::pair<Index<Model>, Index<LayoutPart>>, int> mesh_of_;
    std::string binary_;
    Json json_accessors_ = Json::array(), json_materials_ = Json::array(), json_meshes_ = Json::array(),
         json_nodes_ = Json::array(), json_views_ = Json::array();
};

} // namespace

std::string write_glb(const Layout &layout, const Bodies &bodies, const GlbOptions &options) {
    static_assert(std::endian::native == std::endian::little,
                  "glTF data is little-endian and is written as it lies");
    if (bodies.size() != layout.models.size())
        throw std::invalid_argument("write_glb: one body for each model of the layout is needed");
    return GlbWriter(layout, bodies, options).write();
}

} // namespace roundlay
