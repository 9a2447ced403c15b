// Draws one picture and says what came of it, for tests that change the program's surroundings.
#include "exporters/picture/picture.h"
#include "kernel/layout/lay_out.h"
#include "tests/picture/house.h"

#include <iostream>
#include <set>

int main() {
    using namespace roundlay;
    const Layout layout = lay_out(test::house(3));
    const Scene scene = scene_of(layout, bodies_of(layout));
    const auto drawn = render_picture(scene, looking_at(bounds(scene), View::south_east, 1.6), 480, 300);
    if (const auto *failure = std::get_if<PictureFailure>(&drawn)) {
        std::cout << "failed: " << failure->message << '\n';
        return 3;
    }
    const Picture &picture = std::get<Picture>(drawn);
    std::set<int> colours;
    for (std::size_t i = 0; i + 2 < picture.pixels.size(); i += 3)
        colours.insert(picture.pixels[i] << 16 | picture.pixels[i + 1] << 8 | picture.pixels[i + 2]);
    std::cout << picture.width << " x " << picture.height << ", " << colours.size() << " colours\n";
    return colours.size() > 100 ? 0 : 1;
}
