// A shell for the architect: IFC 4 (ISO 16739-1:2018), millimetres.
//
// Site, building, storeys; each wall and floor an assembly of its pieces, each piece with its body. A wall
// has no body of its own, and the pieces are cut out where openings are: an opening voids the wall, as the
// standard has it, but is a box alone (IfcBoundingBox). With a body it is cut out of the wall's pieces once
// more: web-ifc lost up to 2.5 % of the round logs beside openings so (measured), though they only touch.
//
// Bodies have plane faces alone, which all programs read: plane cuts are exact (IfcFacetedBrep), a bore is a
// prism of the same volume; what has round surfaces is triangles over their flats (IfcTriangulatedFaceSet).
// How far those lie off is told in the file. Exact round faces (IfcAdvancedBrep) are read otherwise than they
// are meant by web-ifc, on which many viewers stand: a round log lost a third of its volume (measured).
#pragma once

#include "exporters/lists/cut_list.h"
#include "kernel/layout/wood/body.h"
#include "kernel/record/record.h"

#include <cstdint>
#include <optional>
#include <string>

namespace roundlay {

struct BuildingSource {
    const Shell &shell;
    const Layout &layout;
    const Bodies &bodies;
    const CutList &list; ///< of the same layout, in the language of the file
    const Record &record;
};

/// `seconds`: time stamp since 1970 UTC; else SOURCE_DATE_EPOCH, else now. The same bytes for the same house
/// and time. Throws std::invalid_argument for a layout without pieces, std::runtime_error where
/// SOURCE_DATE_EPOCH is no whole number.
std::string write_ifc(const BuildingSource &source, const std::optional<std::int64_t> &seconds = {});

} // namespace roundlay
