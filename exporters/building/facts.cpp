#include "exporters/building/facts.h"

#include "exporters/mesh/facets.h"
#include "kernel/fabric/fabric.h"
#include "kernel/layout/openings/openings.h"
#include "kernel/measure/weights.h"
#include "kernel/record/found_words.h"
#include "kernel/trade/weight.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace roundlay::building {

namespace {

constexpr std::string_view label = "IFCLABEL", text = "IFCTEXT", identifier = "IFCIDENTIFIER",
                           count = "IFCINTEGER", truth = "IFCBOOLEAN", length = "IFCPOSITIVELENGTHMEASURE",
                           mass = "IFCMASSMEASURE";

/// What nobody has said is left out.
void add_words(PropertySet &to, const char *name, std::string_view type, const std::string &words) {
    if (!words.empty()) to.properties.push_back({name, type, words});
}

void add_length(PropertySet &to, const char *name, double mm) {
    if (mm > 0) to.properties.push_back({name, length, mm});
}

/// The standard's own word for what is there already and what is to be built.
Property status_of(const Piece &piece) {
    return {"Status", label, std::string(is_old_wood(piece) ? "EXISTING" : "NEW"), "PEnum_ElementStatus"};
}

bool tells_fabric(const Layout &layout) {
    return std::ranges::any_of(layout.pieces,
                               [](const Piece &piece) { return piece.fabric != Fabric::newly_cut; });
}

Indexed<std::string, Piece> decisions(const BuildingSource &source) {
    Indexed<std::string, Piece> words(source.layout.pieces.size());
    for (const DecidedLog &log : decided_logs(source.record, source.layout))
        for (const Index<Piece> piece : log.found_as)
            if (log.what) words[piece] = source.list.voice.words(said_of(*log.what));
    return words;
}

/// Of the stick across; none where wane cuts into it, and its section is no plain figure.
std::optional<double> section_of(const Blank &stock, const Body &body) {
    if (body.stick.empty()) return stock.width * stock.height;
    constexpr double even = 1e-6;
    const double radius = body.stick.front().radius;
    const bool whole = body.stick.size() == 1 && std::min(stock.width, stock.height) > 2 * radius - even;
    if (!whole) return std::nullopt;
    return std::numbers::pi * radius * radius;
}

} // namespace

Facts::Facts(const BuildingSource &source)
    : source_(source), told_fabric_(tells_fabric(source.layout)), decided_(decisions(source)) {
    std::vector<std::string> known;
    for (const Piece &piece : source.layout.pieces) {
        const Wood wood = wood_of(source.shell, piece.species);
        const auto at = std::ranges::find(known, species_of(wood));
        wood_of_.push_back(Index<Material>(at - known.begin()));
        if (at != known.end()) continue;
        known.push_back(species_of(wood));
        add_wood(wood);
    }
}

void Facts::add_wood(const Wood &wood) {
    constexpr double cubic_metre = 1e9;
    const WeightEstimate weight = weigh(cubic_metre, wood);
    woods_.push_back({voice().word(species_of(wood)), std::floor(weight.low_kg), std::ceil(weight.high_kg),
                      voice().words(weight.basis)});
}

About Facts::piece(Index<Piece> index) const {
    return {{own(index), common(index)}, quantities(index)};
}

PropertySet Facts::own(Index<Piece> index) const {
    const Piece &piece = source_.layout.pieces[index];
    const PieceRow &row = source_.list.pieces.at(index.at());
    PropertySet set{"Roundlay_Piece", {{"Tag", identifier, piece.tag}}};
    add_words(set, piece.timber ? "Floor" : "Wall", label, row.wall);
    if (!piece.timber) add_log(set, piece, row);
    set.properties.push_back({"RaiseNumber", count, piece.raise});
    add_words(set, "Kind", label, row.stick.kind);
    add_words(set, "Species", label, row.stick.species);
    add_words(set, "Finish", label, row.finish);
    add_words(set, "ButtEnd", label, row.butt_left ? voice().say("left") : voice().say("right"));
    add_words(set, "LeftEnd", label, row.left);
    add_words(set, "RightEnd", label, row.right);
    add_length(set, "StockLength", row.stick.blank.length);
    add_length(set, "StockWidth", row.stick.blank.width);
    add_length(set, "StockHeight", row.stick.blank.height);
    if (row.stick.high_kg > 0) {
        set.properties.push_back({"WeightFrom", mass, shown_low_weight(row.stick.low_kg)});
        set.properties.push_back({"WeightTo", mass, shown_high_weight(row.stick.high_kg)});
    }
    add_found(set, index, row);
    add_length(set, "BodyWithin", facets_off(source_.bodies[piece.model], sides_of_a_bore));
    return set;
}

void Facts::add_log(PropertySet &to, const Piece &piece, const PieceRow &row) const {
    to.properties.push_back({"Round", count, row.round});
    to.properties.push_back({"Place", count, row.number});
    if (piece.mends) add_words(to, "NewWoodIn", identifier, source_.layout.pieces[*piece.mends].tag);
}

void Facts::add_found(PropertySet &to, Index<Piece> index, const PieceRow &row) const {
    if (told_fabric_) add_words(to, "Fabric", label, row.fabric);
    add_words(to, "State", label, source_.shell.state);
    add_words(to, "Decision", label, decided_[index]);
    add_words(to, "AsFound", text, row.as_found);
    add_words(to, "PegsAsFound", label, row.pegs_found);
    add_words(to, "Mark", label, row.mark);
    add_length(to, "Bow", row.bow);
    add_words(to, "Note", text, row.note);
}

PropertySet Facts::common(Index<Piece> index) const {
    const Piece &piece = source_.layout.pieces[index];
    PropertySet set{piece.timber ? "Pset_BeamCommon" : "Pset_MemberCommon",
                    {{"Reference", identifier, source_.list.pieces.at(index.at()).like}}};
    if (told_fabric_) set.properties.push_back(status_of(piece));
    if (!piece.timber) return set;
    const std::vector<double> &spans = source_.layout.timbers[*piece.timber].spans;
    if (!spans.empty()) add_length(set, "Span", *std::ranges::max_element(spans));
    return set;
}

QuantitySet Facts::quantities(Index<Piece> index) const {
    const Piece &piece = source_.layout.pieces[index];
    const Stick &stick = source_.list.pieces.at(index.at()).stick;
    QuantitySet set{piece.timber ? "Qto_BeamBaseQuantities" : "Qto_MemberBaseQuantities",
                    {{"Length", Measured::length, stick.blank.length}}};
    if (const auto section = section_of(stick.blank, source_.bodies[piece.model])) {
        set.quantities.push_back({"CrossSectionArea", Measured::area, *section});
        set.quantities.push_back({"GrossVolume", Measured::volume, *section * stick.blank.length});
    }
    set.quantities.push_back({"NetVolume", Measured::volume, stick.volume});
    if (stick.high_kg > 0)
        set.quantities.push_back({"NetWeight", Measured::weight, shown_high_weight(stick.high_kg),
                                  voice().say("the heavier end of an estimate; no lift plan: see Caution of "
                                              "the building")});
    return set;
}

About Facts::assembly(Index<LayoutPart> part) const {
    const Layout &layout = source_.layout;
    double volume = 0, high = 0;
    bool known = true;
    for (const auto index : layout.pieces.indices()) {
        if (part_of(layout, layout.pieces[index]) != part) continue;
        const Stick &stick = source_.list.pieces.at(index.at()).stick;
        volume += stick.volume, high += stick.high_kg, known = known && stick.high_kg > 0;
    }
    About about{{}, {"Qto_WallBaseQuantities", {}}};
    const bool is_wall = part.at() < layout.walls.size();
    if (!is_wall) return {};
    const auto wall = Index<WallPlace>(part.at());
    const WallPlace &place = layout.walls[wall];
    const bool outside = part.at() < source_.shell.walls.size();
    about.properties = {
        {"Pset_WallCommon", {{"Reference", identifier, place.name}, {"IsExternal", truth, outside}}}};
    about.quantities.quantities = {{"Length", Measured::length, place.length},
                                   {"Width", Measured::length, place.thickness},
                                   {"Height", Measured::length, layout.heights[wall].top},
                                   {"NetVolume", Measured::volume, volume}};
    if (known)
        about.quantities.quantities.push_back(
            {"NetWeight", Measured::weight, shown_high_weight(high),
             voice().say("the heavier end of an estimate; no lift plan: see Caution of the building")});
    return about;
}

About Facts::opening(std::size_t opening) const {
    const Opening &o = source_.shell.openings[opening];
    const double width = o.width.mm(), height = o.height.mm(),
                 depth = source_.layout.walls[*wall_named(source_.layout, o.wall)].thickness;
    About about{{{"Roundlay_Opening", {}}},
                {"Qto_OpeningElementBaseQuantities",
                 {{"Width", Measured::length, width},
                  {"Height", Measured::length, height},
                  {"Depth", Measured::length, depth},
                  {"Area", Measured::area, width * height},
                  {"Volume", Measured::volume, width * height * depth}}}};
    PropertySet &set = about.properties.front();
    add_words(set, "Kind", label, o.kind == OpeningKind::door ? voice().say("door") : voice().say("window"));
    set.properties.push_back({"Sill", "IFCLENGTHMEASURE", o.sill.mm()});
    set.properties.push_back({"FromLeft", "IFCLENGTHMEASURE", o.from_left.mm()});
    return about;
}

About Facts::house() const {
    PropertySet set{"Roundlay_House", {}};
    const Project &project = source_.shell.project;
    add_words(set, "State", label, source_.shell.state);
    add_words(set, "ProjectNumber", label, project.number);
    add_words(set, "Revision", label, project.revision);
    add_words(set, "Approved", label, project.approved);
    add_words(set, "WeightsRestOn", text, source_.list.weight_basis);
    add_words(set, "Caution", text, voice().word(weight_caution));
    add_words(set, "Bodies", text,
              voice().say("Bodies have plane faces alone. Cuts that are plane are exact, a bore is a prism "
                          "of %1 sides and of its volume, round surfaces are flats; BodyWithin says how far "
                          "off those lie. NetVolume is of the wood itself.",
                          sides_of_a_bore));
    add_words(
        set, "Openings", text,
        voice().say("Walls have no body of their own, and the pieces are cut out where openings are: an "
                    "opening is told as a box, to be cut out of nothing."));
    return {{set}, {}};
}

} // namespace roundlay::building
