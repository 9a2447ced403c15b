#include "exporters/print/print.h"

#include "exporters/print/emboss.h"
#include "exporters/print/printable.h"
#include "kernel/geometry/packing.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <stdexcept>

namespace roundlay {

namespace {

constexpr int sides_of_a_bore = 24, sides_of_a_pin = 12;
constexpr double between_prints = 3; // mm of air

void check(const PrintOptions &options) {
    const auto within = [](double value, double low, double high) { return value >= low && value <= high; };
    if (!within(options.scale, 1, 1000) || !within(options.bed_x, 20, 10000) ||
        !within(options.bed_y, 20, 10000) || !within(options.clearance, 0, 5) ||
        !within(options.nozzle, 0.05, 5))
        throw std::invalid_argument("options of a print are out of range");
}

/// Scaled, and on the bed with its lower corner at the origin.
Mesh laid(Mesh mesh, double scale) {
    const Vec3 low = bounds(mesh).low;
    for (Vec3 &point : mesh.points)
        point = (1 / scale) * (point - low);
    return mesh;
}

/// A prism that lies on one of its sides, whose corners lie on the pin's circle.
Mesh pin_mesh(double diameter, double along) {
    Mesh mesh;
    const int n = sides_of_a_pin;
    const double r = diameter / 2, to_side = r * std::cos(std::numbers::pi / n);
    for (const double x : {0.0, along})
        for (int i = 0; i < n; ++i) {
            const double a = 2 * std::numbers::pi * (i + 0.5) / n - std::numbers::pi / 2;
            mesh.points.push_back({x, to_side + r * std::cos(a), to_side + r * std::sin(a)});
        }
    for (int i = 0; i < n; ++i) {
        const int j = (i + 1) % n;
        mesh.triangles.push_back({{i, j, n + j}, 0});
        mesh.triangles.push_back({{i, n + j, n + i}, 0});
        if (i == 0 || j == 0) continue;
        mesh.triangles.push_back({{0, j, i}, 0});
        mesh.triangles.push_back({{n, n + i, n + j}, 0});
    }
    mesh.surfaces.resize(1);
    return mesh;
}

class Printer {
  public:
    Printer(const Layout &layout, const PrintOptions &options) : layout_(layout), options_(options) {}

    void add_pieces() {
        const double in = options_.clearance * options_.scale / 2;
        for (const Model &model : layout_.models) {
            const Piece &first = layout_.pieces[model.pieces.front()];
            const Body body = printable(eased(first, in, options_.pegs != PrintedPegs::none),
                                        options_.nozzle * options_.scale, sides_of_a_bore);
            std::vector<std::string> plain;
            for (const Index<Piece> piece : model.pieces) {
                const std::string &tag = layout_.pieces[piece].tag;
                if (!options_.tags || !add_tagged(body, tag)) plain.push_back(tag);
            }
            if (!plain.empty()) add_part(body, std::move(plain));
        }
        pieces_ = job_.parts.size();
    }

    void add_pins() {
        if (options_.pegs != PrintedPegs::pins) return;
        std::map<std::pair<long long, long long>, std::size_t> by_size; // hundredths of a millimetre
        constexpr double hundredths = 100;
        for (const Peg &peg : layout_.pegs)
            ++by_size[{std::llround(peg.diameter * hundredths), std::llround(peg.length * hundredths)}];
        for (const auto &[size, wanted] : by_size) {
            const double thick =
                static_cast<double>(size.first) / hundredths / options_.scale - options_.clearance;
            const double along =
                static_cast<double>(size.second) / hundredths / options_.scale - options_.clearance;
            if (thick <= 0 || along <= 0) continue; // refused elsewhere, by the name of a peg
            job_.parts.push_back({"pin-" + std::to_string(job_.parts.size() - pieces_ + 1),
                                  laid(pin_mesh(thick, along), 1),
                                  {},
                                  wanted});
        }
    }

    /// False where the bed is too small for one of them.
    bool lay() {
        std::vector<Footprint> prints;
        std::vector<PrintPlace> places;
        for (std::size_t i = 0; i < job_.parts.size(); ++i) {
            const Box3 box = bounds(job_.parts[i].mesh);
            for (std::size_t k = 0; k < job_.parts[i].wanted; ++k) {
                prints.push_back({box.high.x, box.high.y});
                places.push_back({i, job_.parts[i].tags.empty() ? job_.parts[i].name : job_.parts[i].tags[k],
                                  0, 0, false});
            }
        }
        const auto found = packed(prints, options_.bed_x, options_.bed_y, between_prints);
        for (std::size_t i = 0; i < found.size(); ++i) {
            if (!found[i]) return false;
            job_.plates.resize(std::max(job_.plates.size(), found[i]->plate + 1));
            places[i].x = found[i]->x, places[i].y = found[i]->y, places[i].turned = found[i]->turned;
            job_.plates[found[i]->plate].push_back(places[i]);
        }
        return true;
    }

    PrintJob take() { return std::move(job_); }

  private:
    void add_part(const Body &body, std::vector<std::string> tags) {
        PrintPart part;
        part.name = tags.front();
        part.mesh = laid(mesh_of(body, {sides_of_a_bore}), options_.scale);
        part.wanted = tags.size();
        part.tags = std::move(tags);
        job_.parts.push_back(std::move(part));
    }

    /// False where the tag finds no place under it; that is noted.
    bool add_tagged(const Body &body, const std::string &tag) {
        auto made = embossed(body, tag, options_.scale, options_.nozzle);
        if (const auto *tagged = std::get_if<Body>(&made)) {
            add_part(*tagged, {tag});
            return true;
        }
        job_.untagged.emplace(tag, std::get<Said>(std::move(made)));
        return false;
    }

    const Layout &layout_;
    const PrintOptions &options_;
    PrintJob job_;
    std::size_t pieces_ = 0; ///< parts that are no pins
};

} // namespace

Mesh placed_mesh(const PrintJob &job, const PrintPlace &place) {
    Mesh mesh = job.parts[place.part].mesh;
    const double depth = bounds(mesh).high.y;
    for (Vec3 &p : mesh.points)
        p = place.turned ? Vec3{place.x + depth - p.y, place.y + p.x, p.z}
                         : Vec3{place.x + p.x, place.y + p.y, p.z};
    return mesh;
}

std::variant<PrintJob, PrintProblems> print_job(const Layout &layout, const Bodies &bodies,
                                                const PrintOptions &options) {
    check(options);
    if (PrintProblems problems = what_cannot_be_printed(layout, bodies, options); !problems.empty())
        return problems;
    Printer printer(layout, options);
    printer.add_pieces();
    printer.add_pins();
    if (!printer.lay()) throw std::logic_error("a part that fits on the bed finds no place on it");
    return printer.take();
}

} // namespace roundlay
