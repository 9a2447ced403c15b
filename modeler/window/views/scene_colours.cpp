#include "modeler/window/views/scene_colours.h"

#include "kernel/layout/pieces/finding_pieces.h"
#include "modeler/window/desk/about.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/views/record_marks.h"
#include "modeler/window/views/tints.h"
#include "modeler/window/views/zone_skins.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace roundlay::window {

namespace {

constexpr Colour pale{0xd9, 0xd3, 0xc6};
constexpr Colour chosen_colour{0x2f, 0xa5, 0x86};

constexpr Colour note_colour{0x7d, 0xa3, 0xc0};

class Words {
    Q_DECLARE_TR_FUNCTIONS(SceneColours)
};

Colour of(const QColor &c) {
    return {static_cast<std::uint8_t>(c.red()), static_cast<std::uint8_t>(c.green()),
            static_cast<std::uint8_t>(c.blue())};
}

/// Hues a golden section apart never meet.
Colour of_model(Index<Model> model, std::size_t pieces) {
    if (pieces < 2) return pale;
    const double hue = std::fmod(model.number() * 0.618033988749895, 1.0);
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
            const QColor tint = weight == Weight::error ? tints().error
                                : weight == Weight::warning
                                    ? tints().warning
                                    : QColor(note_colour.r, note_colour.g, note_colour.b);
            for (const Index<Piece> piece : pieces_of(finding, state.job.shell, state.job.layout))
                scene.instances[piece.at()].colour = of(tint);
        }
}

void colour_by_record(Scene &scene, const State &state, Colouring colouring, const ZoneSkins *skins) {
    const auto marks = record_marks(colouring);
    const auto marked = skins != nullptr && colouring == Colouring::condition
                            ? skins->whole
                            : marked_pieces(*state.job.record, state.job, colouring);
    for (Instance &instance : scene.instances)
        instance.colour = of(marks[marked[Index<Piece>(instance.id)]].fill);
}

Colour mixed(Colour a, Colour b, double part) {
    const auto channel = [part](std::uint8_t x, std::uint8_t y) {
        return static_cast<std::uint8_t>(std::lround(x + part * (y - x)));
    };
    return {channel(a.r, b.r), channel(a.g, b.g), channel(a.b, b.b)};
}

LegendEntry plain(Colour colour, const QString &words) {
    return {QColor(colour.r, colour.g, colour.b), tints().faint, Qt::NoBrush, {}, words};
}

QString fabric_word(Fabric fabric) {
    switch (fabric) {
    case Fabric::kept:
        return Words::tr("kept");
    case Fabric::patched:
        return Words::tr("patched");
    case Fabric::replacement:
        return Words::tr("replacement");
    case Fabric::newly_cut:
        break;
    }
    return Words::tr("new");
}

/// Walls and floors by their letters; those of one colour share a line.
std::vector<LegendEntry> parts_legend(const Layout &layout) {
    std::vector<LegendEntry> entries;
    for (const auto part : parts_of(layout)) {
        const LegendEntry entry = plain(wall_colour(part.number()), text(part_letter(layout, part)));
        const auto same = std::find_if(entries.begin(), entries.end(),
                                       [&](const LegendEntry &e) { return e.colour == entry.colour; });
        if (same == entries.end())
            entries.push_back(entry);
        else
            same->words += QStringLiteral(", ") + entry.words;
    }
    return entries;
}

} // namespace

void colour(Scene &scene, const State &state, Colouring colouring, const Chosen &chosen,
            const ZoneSkins *skins) {
    const Layout &layout = state.job.layout;
    if (colouring == Colouring::finding) colour_by_finding(scene, state);
    if (is_of_record(colouring)) colour_by_record(scene, state, colouring, skins);
    for (Instance &instance : scene.instances) {
        const Piece &piece = layout.pieces[Index<Piece>(instance.id)];
        if (colouring == Colouring::alike)
            instance.colour = of_model(piece.model, layout.models[piece.model].pieces.size());
        if (colouring == Colouring::fabric) instance.colour = of_fabric(piece.fabric);
        const double strong = chosen.kind == Chosen::Kind::piece ? 0.9 : 0.45;
        if (!is_part_of(chosen, piece, layout, state.job.shell)) continue;
        instance.colour = mixed(instance.colour, chosen_colour, strong);
        instance.marked =
            chosen.kind != Chosen::Kind::corner; // two whole walls: its name stands there instead
    }
}

std::vector<LegendEntry> legend_of(const State &state, Colouring colouring) {
    std::vector<LegendEntry> entries;
    switch (colouring) {
    case Colouring::wall:
        entries = parts_legend(state.job.layout);
        break;
    case Colouring::finding:
        entries = {plain(of(tints().error), Words::tr("error")),
                   plain(of(tints().warning), Words::tr("to decide")),
                   plain(note_colour, Words::tr("worth knowing")), plain(pale, Words::tr("no finding"))};
        break;
    case Colouring::alike:
        entries = {plain(pale, Words::tr("the only one of its kind")),
                   plain(of_model(Index<Model>(1), 2), Words::tr("every other colour: equal pieces"))};
        break;
    case Colouring::fabric:
        for (const Fabric fabric : {Fabric::kept, Fabric::patched, Fabric::replacement, Fabric::newly_cut})
            entries.push_back(plain(of_fabric(fabric), fabric_word(fabric)));
        break;
    case Colouring::condition:
    case Colouring::decision:
    case Colouring::certainty:
    case Colouring::progress:
        entries = record_legend(colouring, true);
        for (LegendEntry &entry : entries) // the model shows no patterns
            entry.pattern = Qt::NoBrush;
        break;
    }
    entries.push_back({QColor(chosen_colour.r, chosen_colour.g, chosen_colour.b), tints().ink,
                       Qt::FDiagPattern, tints().ink, chosen_entry().words});
    return entries;
}

} // namespace roundlay::window
