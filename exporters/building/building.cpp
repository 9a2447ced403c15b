#include "exporters/building/building.h"

#include "exporters/building/house_of.h"
#include "exporters/building/ifc_about.h"
#include "exporters/building/ifc_project.h"
#include "exporters/building/ifc_shapes.h"
#include "exporters/part21/header.h"

namespace roundlay {

namespace building {

namespace {

const Enumeration whole{"ELEMENT"}, on_site{"SITE"};

class HouseWriter {
  public:
    HouseWriter(IfcText &text, const House &house, const IfcProject &project)
        : text_(text), house_(house), project_(project), about_(text),
          shapes_(text, house, project.contexts) {}

    void write() {
        for (const Material &wood : house_.woods)
            woods_.push_back(about_.material(wood));
        of_wood_.resize(woods_.size());
        write_places();
        std::vector<std::vector<Ref>> in_storey(storeys_.size());
        for (const Assembly &assembly : house_.assemblies)
            in_storey[assembly.storey].push_back(write_assembly(assembly));
        write_joints();
        for (std::size_t i = 0; i < storeys_.size(); ++i)
            if (!in_storey[i].empty())
                text_.rooted("IFCRELCONTAINEDINSPATIALSTRUCTURE", "in " + storey_key(i), "", "", in_storey[i],
                             storeys_[i]);
        for (std::size_t i = 0; i < woods_.size(); ++i)
            if (!of_wood_[i].empty())
                text_.rooted("IFCRELASSOCIATESMATERIAL", "of wood " + std::to_string(i), "", "", of_wood_[i],
                             woods_[i]);
    }

  private:
    static std::string storey_key(std::size_t i) { return "storey " + std::to_string(i); }

    void holds(const std::string &key, Ref whole_one, const std::vector<Ref> &parts) {
        if (!parts.empty()) text_.rooted("IFCRELAGGREGATES", "parts of " + key, "", "", whole_one, parts);
    }

    void write_places() {
        const Unset none;
        const Ref site_place = text_.local_placement(std::nullopt, {});
        const Ref site = text_.rooted("IFCSITE", "site", house_.site, "", none, site_place, none, none, whole,
                                      none, none, none, none, none);
        const Ref building_place = text_.local_placement(site_place, {});
        const Ref building = text_.rooted("IFCBUILDING", "building", house_.name, "", none, building_place,
                                          none, none, whole, none, none, none);
        about_.tell(house_.about, building, "building");
        for (std::size_t i = 0; i < house_.storeys.size(); ++i) {
            const double up = part21::to_finest(house_.storeys[i].elevation);
            places_.push_back(text_.local_placement(building_place, {{0, 0, up}}));
            storeys_.push_back(text_.rooted("IFCBUILDINGSTOREY", storey_key(i), house_.storeys[i].name, "",
                                            none, places_.back(), none, none, whole, up));
        }
        holds("project", project_.project, {site});
        holds("site", site, {building});
        holds("building", building, storeys_);
    }

    Ref write_assembly(const Assembly &assembly) {
        const Unset none;
        const std::string key = (assembly.use == AssemblyUse::floor ? "floor " : "wall ") + assembly.letter;
        const Ref place = text_.local_placement(places_[assembly.storey], assembly.frame);
        const Ref made = assembly.use == AssemblyUse::floor
                             ? text_.rooted("IFCELEMENTASSEMBLY", key, assembly.name, "", none, place, none,
                                            assembly.letter, on_site, Enumeration{"BEAM_GRID"})
                             : text_.rooted("IFCWALL", key, assembly.name, "", none, place, none,
                                            assembly.letter, Enumeration{"ELEMENTEDWALL"});
        about_.tell(assembly.about, made, key);
        std::vector<Ref> parts;
        for (const Part &part : assembly.parts)
            parts.push_back(write_part(part, place));
        for (const Fastener &peg : assembly.pegs)
            parts.push_back(write_peg(peg, place));
        holds(key, made, parts);
        for (const Void &opening : assembly.openings)
            write_opening(opening, key, made, place);
        return made;
    }

    Ref write_part(const Part &part, Ref within) {
        const std::string key = "piece " + part.tag;
        const Ref place = text_.local_placement(within, part.frame), shape = shapes_.of_part(part);
        const auto write = [&](const char *entity, const std::string &own_kind, const char *kind) {
            return text_.rooted(entity, key, part.tag, part.description, label_of(own_kind), place, shape,
                                label_of(part.tag), Enumeration{kind});
        };
        const Ref made = part.use == PartUse::log        ? write("IFCMEMBER", "WALL_LOG", "USERDEFINED")
                         : part.use == PartUse::new_wood ? write("IFCMEMBER", "NEW_WOOD", "USERDEFINED")
                         : part.use == PartUse::joist    ? write("IFCBEAM", "", "JOIST")
                         : part.use == PartUse::beam     ? write("IFCBEAM", "", "BEAM")
                                                         : write("IFCBEAM", "TRIMMER", "USERDEFINED");
        about_.tell(part.about, made, key);
        of_wood_[part.wood.at()].push_back(made);
        by_piece_.emplace(part.piece, made);
        return made;
    }

    Ref write_peg(const Fastener &peg, Ref within) {
        const Unset none;
        const std::string key = "peg " + peg.name;
        const Ref place = text_.local_placement(within, {peg.top}), shape = shapes_.of_peg(peg);
        const Ref made = text_.rooted("IFCMECHANICALFASTENER", key, peg.name, "", none, place, shape,
                                      label_of(peg.name), peg.diameter, peg.length, Enumeration{"DOWEL"});
        joints_.push_back({key, made, peg.upper, peg.lower});
        return made;
    }

    /// When all pieces are written.
    void write_joints() {
        const Unset none;
        for (const Joint &joint : joints_)
            text_.rooted("IFCRELCONNECTSWITHREALIZINGELEMENTS", "joins " + joint.key, "", "", none,
                         by_piece_.at(joint.upper), by_piece_.at(joint.lower), std::vector{joint.peg}, none);
    }

    void write_opening(const Void &opening, const std::string &wall, Ref in, Ref within) {
        const Unset none;
        const std::string key = "opening " + opening.name + " in " + wall;
        const Ref place = text_.local_placement(within, {opening.corner}),
                  shape = shapes_.of_opening(opening);
        const Ref made = text_.rooted("IFCOPENINGELEMENT", key, opening.name, opening.description, none,
                                      place, shape, none, Enumeration{"OPENING"});
        about_.tell(opening.about, made, key);
        text_.rooted("IFCRELVOIDSELEMENT", key + "\nof", "", "", in, made);
    }

    struct Joint {
        std::string key;
        Ref peg;
        Index<Piece> upper, lower;
    };

    IfcText &text_;
    const House &house_;
    const IfcProject &project_;
    IfcAbout about_;
    IfcShapes shapes_;
    std::vector<Ref> woods_, storeys_, places_;
    std::vector<std::vector<Ref>> of_wood_;
    std::vector<Joint> joints_;
    std::map<Index<Piece>, Ref> by_piece_;
};

std::string header_for(const House &house, std::int64_t seconds) {
    constexpr std::size_t longest = 200; // ISO 10303-21 lets readers stop at 256 characters
    const auto fitting = [](const std::string &text) { return part21::shortened(text, longest); };
    return part21::header_of({house.descriptions, fitting(house.name), fitting(house.project.creator),
                              fitting(house.project.owner), fitting(house.project.approved), seconds,
                              "IFC4"});
}

} // namespace

} // namespace building

std::string write_ifc(const BuildingSource &source, const std::optional<std::int64_t> &seconds) {
    using namespace building;
    const House house = house_of(source);
    const std::int64_t when = part21::time_of_export(seconds);
    constexpr std::size_t usual_shape = 12'000, usual_part = 3'000; // so that the text seldom moves
    IfcText text(house.key);
    text.reserve(house.shapes.size() * usual_shape + source.layout.pieces.size() * usual_part);
    const IfcProject project = add_project(text, house, when);
    HouseWriter(text, house, project).write();
    return header_for(house, when) + text.take() + part21::footer();
}

} // namespace roundlay
