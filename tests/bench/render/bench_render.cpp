// How long pictures take, and pictures to look at.
//   bench_render orbit COPIES FRAMES WIDTH HEIGHT [words as below]
//   bench_render still WIDTH HEIGHT VIEW FILE.png [perspective] [explode X] [upto N] [section]
#include "exporters/picture/context.h"
#include "exporters/picture/gl.h"
#include "exporters/picture/picture.h"
#include "exporters/words/words.h"
#include "kernel/layout/lay_out.h"
#include "tests/picture/house.h"

#include <chrono>
#include <cstdlib>
#include <cstring>
#include <ctime>
#include <fstream>
#include <iostream>
#include <map>

namespace {

using namespace roundlay;
using Clock = std::chrono::steady_clock;

double ms_since(Clock::time_point start) {
    return std::chrono::duration<double, std::milli>(Clock::now() - start).count();
}

/// Processor time of the whole program: other work on the machine does not count in it.
double cpu_ms() {
    timespec t{};
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &t);
    return 1e3 * static_cast<double>(t.tv_sec) + 1e-6 * static_cast<double>(t.tv_nsec);
}

struct Words {
    SceneOptions options;
    Look look;
    Projection projection = Projection::parallel;
    double zoom = 1;
    std::optional<Vec3> at; ///< what the camera looks at instead of the middle
};

Words words(int argc, char **argv, int from, Look look) {
    Words w;
    w.look = look;
    for (int i = from; i < argc; ++i) {
        const std::string word = argv[i];
        if (word == "perspective")
            w.projection = Projection::perspective;
        else if (word == "explode")
            w.options.explode = std::atof(argv[++i]);
        else if (word == "upto")
            w.options.raised_up_to = std::atoi(argv[++i]);
        else if (word == "section")
            w.look.section = Plane{{0, -1, 0}, -2300};
        else if (word == "level_section")
            w.look.section = Plane{{0, 0, 1}, 1300};
        else if (word == "zoom")
            w.zoom = std::atof(argv[++i]);
        else if (word == "at")
            w.at = Vec3{std::atof(argv[i + 1]), std::atof(argv[i + 2]), std::atof(argv[i + 3])}, i += 3;
        else if (word == "quick")
            w.look = Look{};
        else if (word == "full")
            w.look.ambient = Ambient::full;
        else if (word == "half")
            w.look.ambient = Ambient::half;
        else if (word == "no_ambient")
            w.look.ambient = Ambient::none;
        else if (word == "no_ground")
            w.look.ground = false;
        else if (word == "no_edges")
            w.look.edges = false;
        else if (word == "single")
            w.look.supersample = 1;
        else if (word == "no_samples")
            w.look.samples = 0;
        else if (word == "detail")
            w.look.detail = std::atof(argv[++i]);
        else
            std::cerr << "not understood: " << word << '\n';
    }
    return w;
}

/// Copies of the house beside one another, until there are as many pieces as asked for.
Scene village(int pieces, const Words &w) {
    const Layout layout = lay_out(test::house());
    const Scene one = scene_of(layout, bodies_of(layout), w.options);
    Scene all{one.models, {}};
    constexpr double apart = 14000;
    for (int copy = 0; static_cast<int>(all.instances.size()) < pieces; ++copy)
        for (Instance instance : one.instances) {
            instance.frame.origin = instance.frame.origin + Vec3{apart * (copy % 3), apart * (copy / 3), 0};
            instance.id = static_cast<int>(all.instances.size());
            if (static_cast<int>(all.instances.size()) < pieces) all.instances.push_back(instance);
        }
    return all;
}

int orbit(int argc, char **argv) {
    const int pieces = std::atoi(argv[2]), frames = std::atoi(argv[3]);
    const int width = std::atoi(argv[4]), height = std::atoi(argv[5]);
    Words w = words(argc, argv, 6, moving_look());
    const Scene scene = village(pieces, w);
    const auto context = OffscreenContext::create();
    if (const auto *failed = std::get_if<PictureFailure>(&context))
        return std::cerr << failed->message << '\n', 1;
    auto made = Renderer::create();
    if (const auto *failed = std::get_if<PictureFailure>(&made))
        return std::cerr << failed->message << '\n', 1;
    Renderer &renderer = *std::get<0>(made);
    const gl::Handle colour = gl::make_texture({width, height}, GL_RGBA8, GL_NEAREST),
                     target = gl::make_framebuffer();
    glBindFramebuffer(GL_FRAMEBUFFER, target.id());
    glFramebufferTexture2D(GL_FRAMEBUFFER, GL_COLOR_ATTACHMENT0, GL_TEXTURE_2D, colour.id(), 0);
    std::size_t triangles = 0, edges = 0;
    for (const Instance &i : scene.instances) {
        triangles += scene.models[i.model]->levels[0].triangles.size() / 3;
        edges += scene.models[i.model]->levels[0].edges.size() / 2;
    }
    std::cout << renderer.driver() << ", " << scene.instances.size() << " pieces, " << triangles
              << " triangles, " << edges << " edges at the finest\n";
    auto start = Clock::now();
    double cpu = cpu_ms();
    const auto report = [&](const std::string &what, int times) {
        std::cout << what << ": " << ms_since(start) / times << " ms (processor " << (cpu_ms() - cpu) / times
                  << ")\n";
        start = Clock::now();
        cpu = cpu_ms();
    };
    renderer.show(scene);
    glFinish();
    report("upload", 1);
    Camera camera = looking_at(bounds(scene), View::south_east, double(width) / height, w.projection);
    camera.view_height /= w.zoom;
    renderer.draw(camera, w.look, width, height, target.id());
    glFinish();
    report("first frame", 1);
    double least = 1e9;
    for (int i = 0; i < frames; ++i) {
        const auto frame_start = Clock::now();
        camera = orbited(camera, 0.02, 0);
        renderer.draw(camera, w.look, width, height, target.id());
        glFinish();
        least = std::min(least, ms_since(frame_start));
    }
    std::cout << "quickest frame: " << least << " ms\n"; // other programs on the machine delay it least
    report("frame", frames);
    for (int i = 0; i < frames; ++i)
        renderer.pick(camera, w.look, width, height, width / 2 + i, height / 2);
    report("pick", frames);
    Scene moved = scene;
    for (Instance &i : moved.instances)
        i.frame.origin.z *= 1.5;
    renderer.show(moved);
    glFinish();
    report("move every piece", 1);
    return 0;
}

int still(int argc, char **argv) {
    static const std::map<std::string, View> views{{"south", View::south},
                                                   {"east", View::east},
                                                   {"north", View::north},
                                                   {"west", View::west},
                                                   {"plan", View::plan},
                                                   {"south_east", View::south_east},
                                                   {"north_east", View::north_east},
                                                   {"north_west", View::north_west},
                                                   {"south_west", View::south_west}};
    const int width = std::atoi(argv[2]), height = std::atoi(argv[3]);
    auto [options, look, projection, zoom, at] = words(argc, argv, 6, still_look());
    auto start = Clock::now();
    const Layout layout = lay_out(test::house());
    for (const Finding &f : layout.findings)
        std::cerr << sentence_of(f, in_english(UnitSystem::metric)) << '\n';
    const auto bodies = bodies_of(layout);
    std::cout << layout.pieces.size() << " pieces, " << layout.models.size() << " models, layout "
              << ms_since(start);
    start = Clock::now();
    const Scene scene = scene_of(layout, bodies, options);
    std::cout << " ms, scene " << ms_since(start);
    Camera camera = looking_at(bounds(scene), views.at(argv[4]), double(width) / height, projection);
    camera.view_height /= zoom;
    if (at) camera.eye = camera.eye + (*at - camera.target), camera.target = *at;
    look.light_azimuth = light_azimuth_for(camera);
    start = Clock::now();
    const double cpu = cpu_ms();
    const auto picture = render_picture(scene, camera, width, height, look);
    if (const auto *failed = std::get_if<PictureFailure>(&picture)) {
        std::cerr << failed->message << '\n';
        return 1;
    }
    std::cout << " ms, picture " << ms_since(start) << " (processor " << cpu_ms() - cpu << ")";
    start = Clock::now();
    const std::string png = write_png(std::get<Picture>(picture));
    std::cout << " ms, png " << ms_since(start) << " ms, " << png.size() / 1024 << " kB\n";
    std::ofstream(argv[5], std::ios::binary) << png;
    return 0;
}

} // namespace

int main(int argc, char **argv) {
    if (argc >= 6 && std::strcmp(argv[1], "orbit") == 0) return orbit(argc, argv);
    if (argc >= 6 && std::strcmp(argv[1], "still") == 0) return still(argc, argv);
    std::cerr << "usage: bench_render still WIDTH HEIGHT VIEW FILE.png ...\n";
    return 2;
}
