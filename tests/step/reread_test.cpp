// What comes back when another process reads our files with OpenCASCADE, against the layout they were made
// of.
#include "exporters/mesh/palette.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/pieces/hewn_faces.h"
#include "kernel/layout/pieces/stock.h"
#include "kernel/layout/wood/interference.h"
#include "tests/step/other_process.h"
#include "tests/step/samples.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"
#include "tests/support/temporary_folder.h"
#include "tests/support/thrown_away.h"

#include <nlohmann/json.hpp>
#include <rapidcheck.h>

#include <cctype>
#include <cmath>
#include <filesystem>
#include <map>
#include <numbers>
#include <set>

using namespace roundlay;
using nlohmann::json;

namespace {

json reread(const std::string &bytes) {
    const test::TemporaryFolder folder;
    test::put(folder / "file.step", bytes);
    return json::parse(test::output_of(std::string(REREAD_TOOL) + " " + (folder / "file.step").string()));
}

bool is_colour(const json &found, const Colour &expected) {
    const double channels[] = {expected.r / 255.0, expected.g / 255.0, expected.b / 255.0};
    for (std::size_t i = 0; i < 3; ++i)
        if (std::abs(found.at(i).get<double>() - channels[i]) > 1e-6) return false; // floats in the library
    return true;
}

const Piece &first_of(const Layout &layout, const Model &model) {
    return layout.pieces[model.pieces.front()];
}

double stated(const json &product, const char *what) {
    return product.at("stated").at(what).get<double>();
}
double measured(const json &product, const char *what) {
    return product.at("measured").at(what).get<double>();
}

/// The frame that a row-wise 3 x 4 matrix stands for.
Frame frame_of(const json &place) {
    const auto at = [&](std::size_t row, std::size_t column) {
        return place.at(4 * row + column).get<double>();
    };
    const auto column = [&](std::size_t c) { return Vec3{at(0, c), at(1, c), at(2, c)}; };
    return {column(3), column(0), column(1), column(2)};
}

double apart(const Frame &a, const Frame &b) {
    double most = length(a.origin - b.origin);
    for (const Vec3 reach : {Vec3{10000, 0, 0}, Vec3{0, 10000, 0}, Vec3{0, 0, 10000}})
        most = std::max(most, length(a.to_world(reach) - b.to_world(reach)));
    return most;
}

std::map<std::string, json> by_name(const json &all) {
    std::map<std::string, json> named;
    for (const json &each : all)
        named[each.at("name").get<std::string>()] = each;
    return named;
}

constexpr double of_round_bodies =
    3e-4; ///< a body works on flats: what of random shells is seen at worst, as in tests/solid
/// The library's integration over what it reads as approximations: of even logs; of any, 6e-6 at worst seen.
constexpr double of_round_house = 1e-7, of_round_logs = 2e-5;

void check_products(const test::StepSample &sample, const json &found, double relative,
                    double of_round = of_round_logs) {
    const std::map<std::string, json> products = by_name(found.at("products"));
    REQUIRE(found.at("products").size() == sample.layout.models.size());
    REQUIRE(products.size() == sample.layout.models.size());
    for (const auto m : sample.layout.models.indices()) {
        const Piece &piece = first_of(sample.layout, sample.layout.models[m]);
        INFO(piece.tag);
        const json &product = products.at(piece.tag);
        CHECK(product.at("valid").get<bool>());
        CHECK(product.at("solids") == 1);
        CHECK(product.at("shells") == 1);
        CHECK(product.at("free_edges") == 0);
        const bool round = !sample.bodies[m].rounds.empty();
        if (sample.bodies[m].bores_clear || round)
            CHECK(measured(product, "volume") ==
                  Approx(sample.bodies[m].volume).epsilon(round ? of_round_bodies : relative));
        const double off = round ? of_round : relative;
        CHECK(stated(product, "volume") == Approx(measured(product, "volume")).epsilon(off));
        CHECK(stated(product, "area") == Approx(measured(product, "area")).epsilon(off));
        for (std::size_t i = 0; i < 3; ++i)
            CHECK(product.at("stated").at("centroid").at(i).get<double>() ==
                  Approx(product.at("measured").at("centroid").at(i).get<double>())
                      .margin(round ? 1e-3 : 1e-6));
        CHECK(is_colour(product.at("colour"), wall_colour(part_of(sample.layout, piece).number())));
    }
}

void check_uses(const test::StepSample &sample, const json &found) {
    const std::map<std::string, json> uses = by_name(found.at("uses"));
    std::set<Index<LayoutPart>> parts;
    for (const Piece &piece : sample.layout.pieces)
        parts.insert(part_of(sample.layout, piece));
    REQUIRE(uses.size() == sample.layout.pieces.size() + parts.size());
    for (const Piece &piece : sample.layout.pieces) {
        INFO(piece.tag);
        const json &use = uses.at(piece.tag);
        const Index<LayoutPart> part = part_of(sample.layout, piece);
        std::string group = part_name(sample.layout, part); // "wall A" is shown as "Wall A"
        group[0] = static_cast<char>(std::toupper(group[0]));
        CHECK(use.at("in") == group);
        CHECK(use.at("of") == first_of(sample.layout, sample.layout.models[piece.model]).tag);
        CHECK(is_colour(use.at("colour"), wall_colour(part.number())));
        const Frame in_wall = frame_of(use.at("place")), of_wall = frame_of(uses.at(group).at("place"));
        const Frame in_world{of_wall.to_world(in_wall.origin), of_wall.direction_to_world(in_wall.x),
                             of_wall.direction_to_world(in_wall.y), of_wall.direction_to_world(in_wall.z)};
        CHECK(apart(in_world, piece.frame) < 1e-6);
    }
}

} // namespace

TEST_CASE("A shell read back by another process is the layout it was made of") {
    // Our own text rounds points to 1e-10 mm, the library's to twelve digits. An ellipse on a cylinder the
    // library reads as an approximation of its own.
    struct Row {
        const char *name;
        double relative;
    };
    for (const auto &[name, relative] :
         {Row{"rectangle", 1e-11}, Row{"openings", 1e-11}, Row{"tapered", 1e-9}, Row{"alike", 1e-11},
          Row{"library", 1e-9}, Row{"tapered-library", 1e-9}, Row{"mixed", 1e-9}}) {
        INFO(name);
        const test::StepSample sample = test::step_sample(name);
        const json found = reread(sample.write());
        CHECK(found.at("unit") == "millimetre");
        CHECK(found.at("solids") == sample.layout.pieces.size());
        CHECK(found.at("roots") == json::array({sample.layout.name}));
        check_products(sample, found, relative);
        check_uses(sample, found);
    }
}

namespace {

/// Random shells written and read back by another process; at least so many must have been built.
void check_random_shells(Shell (*draw)(), int least) {
    test::ThrownAway thrown(test::refusals());
    int read = 0;
    CHECK(rc::check([&] {
        test::StepSample sample;
        sample.shell = draw();
        sample.layout = lay_out(sample.shell);
        thrown.discard_refused(sample.layout.findings);
        sample.bodies = bodies_of(sample.layout);
        const json found = reread(sample.write());
        RC_ASSERT(found.at("solids") == sample.layout.pieces.size());
        // Bores come out of slanting faces in ellipses, over which the library integrates to 2.5e-9 at worst
        // seen.
        check_products(sample, found, 1e-8);
        check_uses(sample, found);
        ++read;
    }));
    CHECK(read >= least);
    INFO(thrown.words());
    CHECK_FALSE(thrown.too_many());
}

Shell any_hewn_shell() {
    const int kind = *rc::gen::inRange(0, 3);
    return kind == 0   ? test::any_tapered_shell()
           : kind == 1 ? test::any_family_shell()
                       : test::any_fitted_shell();
}

Shell any_round_shell() {
    return *rc::gen::element(0, 1, 2) == 0 ? test::any_waned_shell() : test::any_saddle_shell();
}

} // namespace

TEST_CASE("Shells of the whole family read back as their layouts") {
    check_random_shells(any_hewn_shell, 10);
}

TEST_CASE("A house of round logs reads back as its layout, volume by volume") {
    test::StepSample sample;
    sample.shell = test::round_shell();
    sample.layout = lay_out(sample.shell);
    REQUIRE_FALSE(sample.layout.pieces.empty());
    sample.bodies = bodies_of(sample.layout);
    const json found = reread(sample.write());
    CHECK(found.at("solids") == sample.layout.pieces.size());
    check_products(sample, found, 1e-9, of_round_house);
    check_uses(sample, found);
}

TEST_CASE("Random round and waned shells read back with the volumes of their bodies") {
    check_random_shells(any_round_shell, 5);
}

TEST_CASE("A piece read back by another process lies in its own frame under its own tag") {
    const test::StepSample sample = test::step_sample("last-piece");
    const Piece &piece = sample.layout.pieces.back();
    const Body &body = sample.bodies[piece.model];
    const json found = reread(sample.write());
    CHECK(found.at("unit") == "millimetre");
    CHECK(found.at("roots") == json::array({piece.tag}));
    CHECK(found.at("uses").empty());
    REQUIRE(found.at("products").size() == 1);
    const json &product = found.at("products").at(0);
    CHECK(product.at("valid").get<bool>());
    CHECK(product.at("solids") == 1);
    CHECK(measured(product, "volume") == Approx(body.volume).epsilon(1e-11));
    CHECK(product.at("measured").at("centroid").at(0).get<double>() == Approx(body.centroid.x).margin(1e-6));
    CHECK(product.at("measured").at("centroid").at(2).get<double>() == Approx(body.centroid.z).margin(1e-6));
}

TEST_CASE("Names outside ASCII come back as they were, long ones cut at a whole character") {
    const test::StepSample sample = test::step_sample("accents");
    const json found = reread(sample.write());
    const std::string root = found.at("roots").at(0).get<std::string>();
    const std::string beginning =
        "Bj\u00f6rkd\u00e4ng 'n\u00f6rdliche' H\u00fctte \\ \u4e38\u592a \U0001F332 und";
    CHECK(root.substr(0, beginning.size()) == beginning);
    CHECK(root.substr(root.size() - 3) == "...");
    CHECK(found.at("products").size() == sample.layout.models.size());
}

TEST_CASE("In inches and in AP242 the same solids come back") {
    for (const char *name : {"inches", "inches-library", "ap242"}) {
        INFO(name);
        const test::StepSample sample = test::step_sample(name);
        const json found = reread(sample.write());
        CHECK(found.at("unit") == (sample.options.unit == StepUnit::inch ? "INCH" : "millimetre"));
        CHECK(found.at("solids") == sample.layout.pieces.size());
        const std::map<std::string, json> products = by_name(found.at("products"));
        for (const auto m : sample.layout.models.indices()) {
            const json &product = products.at(first_of(sample.layout, sample.layout.models[m]).tag);
            CHECK(product.at("valid").get<bool>());
            CHECK(measured(product, "volume") == Approx(sample.bodies[m].volume).epsilon(1e-9));
        }
        check_uses(sample, found); // places are read as millimetres
    }
}

TEST_CASE("Each solid lies on the layers of the walls that it is used in") {
    const test::StepSample sample = test::step_sample("alike");
    const std::map<std::string, json> products = by_name(reread(sample.write()).at("products"));
    for (const Piece &piece : sample.layout.pieces) {
        const json &layers =
            products.at(first_of(sample.layout, sample.layout.models[piece.model]).tag).at("layers");
        std::string wall = part_name(sample.layout, part_of(sample.layout, piece));
        wall[0] = static_cast<char>(std::toupper(wall[0]));
        INFO(piece.tag << " " << layers.dump());
        CHECK(std::ranges::find(layers, json(wall)) != layers.end());
    }
}

namespace {

/// Of a round stick that is hewn flat at one side, so high.
double round_section(double r, double height) {
    const double d = std::min(height - r, r); // from the axis to the flat
    return std::numbers::pi * r * r - (r * r * std::acos(d / r) - d * std::sqrt(r * r - d * d));
}

} // namespace

TEST_CASE("The stock comes beside the finished piece, in the same frame, and holds all its wood") {
    for (const char *name : {"stock", "stock-tapered", "stock-round"}) {
        INFO(name);
        const test::StepSample sample = test::step_sample(name);
        const Piece &piece = sample.layout.pieces[*sample.piece];
        const json found = reread(sample.write());
        CHECK(found.at("roots") == json::array({piece.tag, piece.tag + " stock"}));
        const std::map<std::string, json> products = by_name(found.at("products"));
        REQUIRE(products.size() == 2);
        const json &stick = products.at(piece.tag + " stock"), &finished = products.at(piece.tag);
        CHECK(stick.at("valid").get<bool>());
        const json &layers = stick.at("layers"); // of the product and of its solid
        CHECK(std::ranges::count(layers, json("Stock")) == static_cast<long>(layers.size()));
        CHECK_FALSE(layers.empty());
        CHECK(measured(stick, "volume") > measured(finished, "volume"));
        const Blank size = stock_of(piece).size;
        const RoundCut *round = hewn_faces(piece).round;
        const double section = round ? round_section(round->radius, size.height) : size.width * size.height;
        CHECK(measured(stick, "volume") == Approx(section * size.length).epsilon(round ? 1e-6 : 1e-11));
    }
}

TEST_CASE("A linked shell finds its pieces in the files beside it, and stands as the whole one does") {
    const test::StepSample sample = test::step_sample("openings");
    const test::TemporaryFolder folder;
    std::filesystem::create_directory(folder / "pieces");
    Indexed<std::string, Model> files;
    for (const auto m : sample.layout.models.indices()) {
        const Piece &piece = first_of(sample.layout, sample.layout.models[m]);
        files.push_back("pieces/" + piece.tag + ".step");
        test::put(folder / files[m], write_piece_step(sample.shell, sample.layout, piece, sample.bodies[m]));
    }
    const std::string whole = sample.write(),
                      linked = write_linked_step(sample.shell, sample.layout, sample.bodies, files);
    test::put(folder / "shell.step", linked);
    CHECK(linked.find("MANIFOLD_SOLID_BREP") == std::string::npos);
    CHECK(5 * linked.size() < 4 * whole.size());
    const json found =
        json::parse(test::output_of(std::string(REREAD_TOOL) + " " + (folder / "shell.step").string()));
    CHECK(found.at("solids") == sample.layout.pieces.size());
    const std::map<std::string, json> products = by_name(found.at("products"));
    for (const auto m : sample.layout.models.indices())
        CHECK(measured(products.at(first_of(sample.layout, sample.layout.models[m]).tag), "volume") ==
              Approx(sample.bodies[m].volume).epsilon(1e-11));
}
