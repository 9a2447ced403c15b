#include "exporters/sheets/form/condition_words.h"

#include "kernel/record/found_words.h"

#include <algorithm>

namespace roundlay::sheets {

std::vector<std::vector<FormPen::Tick>> condition_ticks(const Words &words, const ConditionZone *zone) {
    const auto tick = [&](Soundness what) {
        return FormPen::Tick{words.words(said_of(what)), zone != nullptr && zone->what == what};
    };
    return {{tick(Soundness::sound), tick(Soundness::checked), tick(Soundness::soft)},
            {tick(Soundness::rotten), tick(Soundness::missing)}};
}

std::vector<std::vector<FormPen::Tick>> face_ticks(const Words &words, const ConditionZone *zone) {
    const auto tick = [&](FoundFace face) {
        return FormPen::Tick{words.words(said_of(face)),
                             zone != nullptr && std::ranges::count(zone->faces, face) > 0};
    };
    return {{tick(FoundFace::outside), tick(FoundFace::inside)},
            {tick(FoundFace::top), tick(FoundFace::under)}};
}

ZoneColumns zone_columns(const Words &words, double left) {
    ZoneColumns c;
    c.what = left;
    c.from = c.what + FormPen::width_of(condition_ticks(words, nullptr));
    c.to = c.from + place_width;
    c.faces = c.to + place_width + 2;
    c.depth = c.faces + FormPen::width_of(face_ticks(words, nullptr));
    c.note = c.depth + size_width;
    return c;
}

} // namespace roundlay::sheets
