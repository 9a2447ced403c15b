#include "exporters/sheets/form/condition_words.h"

#include <algorithm>

namespace roundlay::sheets {

std::vector<std::vector<FormPen::Tick>> condition_ticks(const Words &words, const ConditionZone *zone) {
    const auto tick = [&](std::string word, Soundness what) {
        return FormPen::Tick{std::move(word), zone != nullptr && zone->what == what};
    };
    return {{tick(words.say("sound"), Soundness::sound), tick(words.say("checked"), Soundness::checked),
             tick(words.say("soft"), Soundness::soft)},
            {tick(words.say("rotten"), Soundness::rotten), tick(words.say("missing"), Soundness::missing)}};
}

std::vector<std::vector<FormPen::Tick>> face_ticks(const Words &words, const ConditionZone *zone) {
    const auto tick = [&](std::string word, FoundFace face) {
        return FormPen::Tick{std::move(word), zone != nullptr && std::ranges::count(zone->faces, face) > 0};
    };
    return {{tick(words.say("outside"), FoundFace::outside), tick(words.say("inside"), FoundFace::inside)},
            {tick(words.say("top"), FoundFace::top), tick(words.say("under"), FoundFace::under)}};
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
