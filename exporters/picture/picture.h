// Pictures of a shell as files, made without any window or display.
#pragma once

#include "exporters/picture/renderer.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace roundlay {

/// Rows from top to bottom, three bytes (red, green, blue, sRGB) a pixel.
struct Picture {
    int width = 0, height = 0;
    std::vector<std::uint8_t> pixels;
};

/// For pictures that are looked at for long: twice the pixels across and up, full ambient, thin edges.
Look still_look();

/// 1 to 8192 pixels each way, else std::invalid_argument. Same scene, camera and driver give the same pixels.
/// Over 8 million pixels the look's samples are cut down, so that no more than about 1 GB of memory is asked
/// for.
Drawn<Picture> render_picture(const Scene &scene, const Camera &camera, int width, int height,
                              const Look &look = still_look());

/// The light stands over the viewer's left shoulder, as drawings have it.
double light_azimuth_for(const Camera &camera);

/// A PNG file. No time: the same picture gives the same bytes.
std::string write_png(const Picture &picture);

/// Whether these bytes begin a PNG file that write_png wrote; 200 of them tell.
bool is_own_png(std::string_view bytes);

} // namespace roundlay
