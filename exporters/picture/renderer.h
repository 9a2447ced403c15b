// Draws scenes with OpenGL 3.3 core, whatever made the context: a window or no display at all.
#pragma once

#include "exporters/picture/camera.h"
#include "exporters/picture/failure.h"
#include "exporters/picture/scene.h"
#include "kernel/geometry/plane.h"

#include <memory>
#include <optional>

namespace roundlay {

/// Darkening of corners, gaps and insides. `half` takes it at half the picture's size: for pictures that
/// move.
enum class Ambient { none, half, full };

struct Look {
    int samples = 4;     ///< per pixel, smooths edges; 0 = none. More than the driver has gives what it has.
    int supersample = 1; ///< 1 or 2: draws each pixel from that many, across and up
    int coarse = 1;      ///< 1 or 2: draws so many pixels across and up as one; with supersample 1 only
    Ambient ambient = Ambient::full;
    bool edges = true;
    bool ground = true;          ///< the shell's shadow on the ground; only from above
    bool shadow_may_lag = false; ///< the ground keeps an earlier shadow where it has one
    double edge_width = 1;       ///< pixels of the picture
    std::array<double, 3> background_low{0.905, 0.898, 0.882},
        background_high{0.972, 0.974, 0.976}; ///< sRGB, 0..1
    double light_azimuth = -2.2;              ///< radians counter-clockwise from east: where the sun stands
    int hovered = -1;                         ///< id that is drawn lighter
    std::optional<Plane> section; ///< shows only the side where the plane's distance is not positive
    int rows_at_once =
        0;             ///< with supersample 2: rows of pixels in memory at once; 0 = so that they take little
    double detail = 2; ///< a bore that would show smaller than this many pixels is left out
};

/// For pictures that follow a hand: all there is, but ambient light at half size. The rest is drawn with
/// Look{} when the hand stops.
Look moving_look();

/// Where even that takes too long, as without a graphics card: the more haste, up to most_haste, the less
/// there is of smooth edges, of ambient light, and of pixels.
constexpr int most_haste = 3;
Look hasty_look(int haste);

/// What lies under a pixel.
struct Picked {
    int id = -1;
    Vec3 point; ///< world
};

/// The context it was made in must be current for every call and for the end of its life. In a window:
/// create() when the context is made, show() when the shell or the options change, draw() for each frame with
/// the window's framebuffer and sizes in device pixels, pick() for the pointer. Calls expect nothing of the
/// context's state and leave the target framebuffer bound, tests and blending off, no program and no vertex
/// array.
class Renderer {
  public:
    static Drawn<std::unique_ptr<Renderer>> create();
    ~Renderer();
    Renderer(const Renderer &) = delete;
    Renderer &operator=(const Renderer &) = delete;

    /// Takes over a scene. Pieces that stand and look as before cost nothing; moved or recoloured ones only
    /// their own bytes; a change of models or of the number of pieces uploads all.
    void show(const Scene &scene);

    /// Draws the scene into a framebuffer of the caller's (0 = the context's own), width and height in
    /// pixels.
    void draw(const Camera &camera, const Look &look, int width, int height, unsigned target);

    /// The piece under the middle of a pixel, counted from the upper left corner.
    std::optional<Picked> pick(const Camera &camera, const Look &look, int width, int height, int x, int y);

    /// What draws, in the driver's words, for reports.
    std::string driver() const;

  private:
    struct Parts;
    explicit Renderer(std::unique_ptr<Parts> parts);
    std::unique_ptr<Parts> parts_;
};

} // namespace roundlay
