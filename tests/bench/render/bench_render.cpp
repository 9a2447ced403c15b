// How long pictures take, and pictures to look at.
//   bench_render still WIDTH HEIGHT VIEW FILE.png [perspective] [explode X] [upto N] [section]
#include "exporters/picture/picture.h"
#include "tests/picture/house.h"

#include <chrono>
#include <cstdlib>
#include <cstring>
#include <fstream>
#include <iostream>
#include <map>

namespace {

using namespace roundlay;
using Clock = std::chrono::steady_clock;

double ms_since(Clock::time_point start) {
    return std::chrono::duration<double, std::milli>(Clock::now() - start).count();
}

int still(int argc, char **argv) {
    static const std::map<std::string, View> views{
        {"south", View::south}, {"east", View::east}, {"north", View::north}, {"west", View::west},
        {"plan", View::plan}, {"south_east", View::south_east}, {"north_east", View::north_east},
        {"north_west", View::north_west}, {"south_west", View::south_west}};
    const int width = std::atoi(argv[2]), height = std::atoi(argv[3]);
    SceneOptions options;
    Look look = still_look();
    Projection projection = Projection::parallel;
    double zoom = 1;
    for (int i = 6; i < argc; ++i) {
        const std::string word = argv[i];
        if (word == "perspective") projection = Projection::perspective;
        if (word == "explode") options.explode = std::atof(argv[++i]);
        if (word == "upto") options.raised_up_to = std::atoi(argv[++i]);
        if (word == "section") look.section = Plane{{0, -1, 0}, -2300};
        if (word == "zoom") zoom = std::atof(argv[++i]);
        if (word == "quick") look = Look{};
        if (word == "half") look.ambient = Ambient::half;
    }
    auto start = Clock::now();
    const Layout layout = lay_out(test::house());
    for (const Finding &f : layout.findings) std::cerr << f.place << ": " << f.message << '\n';
    const auto bodies = test::bodies_of(layout);
    std::cout << layout.pieces.size() << " pieces, " << layout.models.size() << " models, layout " << ms_since(start);
    start = Clock::now();
    const Scene scene = scene_of(layout, bodies, options);
    std::cout << " ms, scene " << ms_since(start);
    Camera camera = looking_at(bounds(scene), views.at(argv[4]), double(width) / height, projection);
    camera.view_height /= zoom;
    look.light_azimuth = light_azimuth_for(camera);
    start = Clock::now();
    const auto picture = render_picture(scene, camera, width, height, look);
    if (const auto *failed = std::get_if<PictureFailure>(&picture)) {
        std::cerr << failed->message << '\n';
        return 1;
    }
    std::cout << " ms, picture " << ms_since(start);
    start = Clock::now();
    const std::string png = write_png(std::get<Picture>(picture));
    std::cout << " ms, png " << ms_since(start) << " ms, " << png.size() / 1024 << " kB\n";
    std::ofstream(argv[5], std::ios::binary) << png;
    return 0;
}

} // namespace

int main(int argc, char **argv) {
    if (argc >= 6 && std::strcmp(argv[1], "still") == 0) return still(argc, argv);
    std::cerr << "usage: bench_render still WIDTH HEIGHT VIEW FILE.png ...\n";
    return 2;
}
