#include "modeler/window/views/scene_colours.h"

#include "kernel/layout/finding_pieces.h"
#include "modeler/window/views/tints.h"

#include <cmath>

namespace roundlay::window {

namespace {

constexpr Colour pale{0xd9, 0xd3, 0xc6};
constexpr Colour chosen_colour{0x2f, 0xa5, 0x86};

Colour of(const QColor &c) {
    return {static_cast<std::uint8_t>(c.red()), static_cast<std::uint8_t>(c.green()),
            static_cast<std::uint8_t>(c.blue())};
}

/// Hues a golden section apart never meet.
Colour of_model(int model, std::size_t pieces) {
    if (pieces < 2) return pale;
    const double hue = std::fmod(model * 0.618033988749895, 1.0);
    return of(QColor::fromHsvF(static_cast<float>(hue), 0.42F, 0.86F));
}

Colour of_fabric(Fabric fabric) {
    switch (fabric) {
    case Fabric::kept:
        return {0x8c, 0x6f, 0x52};
    case Fabric::patched:
        return {0x9c, 0x8f, 0xb5};
    case Fabric::replacement:
        return {0x6f, 0xa3, 0xc4};
    case Fabric::newly_cut:
        break;
    }
    return {0xe8, 0xcf, 0x98};
}

void colour_by_finding(Scene &scene, const State &state) {
    for (Instance &instance : scene.instances)
        instance.colour = pale;
    for (const Weight weight : {Weight::note, Weight::warning, Weight::error})
        for (const Finding &finding : state.job.findings) {
            if (finding.weight != weight) continue;
            const QColor tint = weight == Weight::error     ? tints().error
                                : weight == Weight::warning ? tints().warning
                                                            : QColor("#7da3c0");
            for (const int piece : pieces_of(finding, state.job.shell, state.job.layout))
                scene.instances[static_cast<std::size_t>(piece)].colour = of(tint);
        }
}

bool is_chosen(const Piece &piece, const Layout &layout, const Shell &shell, const Chosen &chosen) {
    switch (chosen.kind) {
    case Chosen::Kind::piece:
        return piece.tag == chosen.name;
    case Chosen::Kind::wall:
        return piece.timber < 0 && layout.walls[static_cast<std::size_t>(piece.wall)].name == chosen.name;
    case Chosen::Kind::corner:
        return piece.timber < 0 && (piece.datum.at == chosen.name || piece.far.at == chosen.name);
    case Chosen::Kind::opening: {
        if (chosen.opening >= static_cast<int>(shell.openings.size())) return false;
        const std::string &name = shell.openings[static_cast<std::size_t>(chosen.opening)].name;
        return !name.empty() && (piece.datum.at == name || piece.far.at == name);
    }
    case Chosen::Kind::nothing:
        break;
    }
    return false;
}

Colour mixed(Colour a, Colour b, double part) {
    const auto channel = [part](std::uint8_t x, std::uint8_t y) {
        return static_cast<std::uint8_t>(std::lround(x + part * (y - x)));
    };
    return {channel(a.r, b.r), channel(a.g, b.g), channel(a.b, b.b)};
}

} // namespace

void colour(Scene &scene, const State &state, Colouring colouring, const Chosen &chosen) {
    const Layout &layout = state.job.layout;
    if (colouring == Colouring::finding) colour_by_finding(scene, state);
    for (Instance &instance : scene.instances) {
        const Piece &piece = layout.pieces[static_cast<std::size_t>(instance.id)];
        if (colouring == Colouring::alike)
            instance.colour =
                of_model(piece.model, layout.models[static_cast<std::size_t>(piece.model)].pieces.size());
        if (colouring == Colouring::fabric) instance.colour = of_fabric(piece.fabric);
        const double strong = chosen.kind == Chosen::Kind::piece ? 0.9 : 0.45;
        if (is_chosen(piece, layout, state.job.shell, chosen))
            instance.colour = mixed(instance.colour, chosen_colour, strong);
    }
}

} // namespace roundlay::window
