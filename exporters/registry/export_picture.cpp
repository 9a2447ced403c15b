#include "exporters/picture/picture.h"
#include "exporters/registry/exporters.h"
#include "exporters/registry/make_picture.h"

#include <array>

namespace roundlay {

namespace {

struct NamedView {
    View view;
    std::string_view name;
};

constexpr std::array<NamedView, 9> names = {{
    {View::south_east, "south-east"},
    {View::north_east, "north-east"},
    {View::north_west, "north-west"},
    {View::south_west, "south-west"},
    {View::south, "south"},
    {View::east, "east"},
    {View::north, "north"},
    {View::west, "west"},
    {View::plan, "plan"},
}};

bool looks_on_a_corner(View view) {
    return name_of(view).find('-') != std::string_view::npos;
}

} // namespace

std::string_view name_of(View view) {
    for (const NamedView &named : names)
        if (named.view == view) return named.name;
    return "";
}

Said pictured(View view) {
    switch (view) {
    case View::south_east:
        return said("the shell seen from the south-east");
    case View::north_east:
        return said("the shell seen from the north-east");
    case View::north_west:
        return said("the shell seen from the north-west");
    case View::south_west:
        return said("the shell seen from the south-west");
    case View::south:
        return said("the shell seen from the south");
    case View::east:
        return said("the shell seen from the east");
    case View::north:
        return said("the shell seen from the north");
    case View::west:
        return said("the shell seen from the west");
    case View::plan:
        break;
    }
    return said("the shell seen from the plan");
}

namespace {

MadePicture drawn_anew(const ExportJob &job, const PictureOptions &wanted) {
    const Scene scene = scene_of(job.layout, job.bodies);
    const double aspect = static_cast<double>(wanted.width) / wanted.height;
    const Projection projection =
        looks_on_a_corner(wanted.view) && wanted.perspective ? Projection::perspective : Projection::parallel;
    const Camera camera = looking_at(bounds(scene), wanted.view, aspect, projection);
    Look look = still_look();
    look.light_azimuth = light_azimuth_for(camera);
    const auto drawn = render_picture(scene, camera, wanted.width, wanted.height, look);
    if (const auto *failure = std::get_if<PictureFailure>(&drawn))
        return ExportFailure{Trouble::picture, failure->message};
    return write_png(std::get<Picture>(drawn));
}

} // namespace

MadePicture make_picture(const ExportJob &job) {
    return make_picture(job, job.options.picture);
}

MadePicture make_picture(const ExportJob &job, const PictureOptions &wanted) {
    return job.pictures->of(wanted, [&] { return drawn_anew(job, wanted); });
}

std::optional<ExportFailure> export_picture(const ExportJob &job, OutputFolder &folder, Progress &progress) {
    progress.at("picture", 0, 1);
    auto made = make_picture(job);
    if (auto *failure = std::get_if<ExportFailure>(&made)) return std::move(*failure);
    return add_file(folder, "picture.png", std::get<std::string>(made),
                    Voice().words(pictured(job.options.picture.view)));
}

} // namespace roundlay
