// A shell to be printed as a class model: every piece at a stated scale, laid flat on plates of a stated bed.
//
// Lengths of a printed part are millimetres as printed; those of a piece stay millimetres of the house.
#pragma once

#include "exporters/mesh/mesh.h"
#include "kernel/layout/layout.h"
#include "kernel/layout/wood/body.h"
#include "kernel/measure/said.h"

#include <map>
#include <string>
#include <variant>
#include <vector>

namespace roundlay {

enum class PrintedPegs {
    pins,  ///< printed too, and a hole for each
    holes, ///< left for dowels of the peg's size at that scale
    none   ///< no holes
};

struct PrintOptions {
    double scale = 10;               ///< 1:scale, 1 to 1000
    double bed_x = 220, bed_y = 220; ///< of the printer, 20 to 10,000
    double clearance = 0.2;          ///< between two faces that meet, 0 to 5
    double nozzle = 0.4;             ///< what is thinner cannot be printed, 0.05 to 5
    PrintedPegs pegs = PrintedPegs::pins;
    bool tags = true; ///< each piece's tag is pressed into its underside, where its letters can be printed
};

/// One printed thing, and how many of it. It lies on z = 0 with its lower corner at x = y = 0.
struct PrintPart {
    std::string name; ///< tag of the first piece that it stands for, or what the pin is called
    Mesh mesh;
    std::vector<std::string> tags; ///< of all pieces that it is printed for; of a pin none
    std::size_t wanted = 0;
};

struct PrintPlace {
    std::size_t part = 0; ///< index into PrintJob::parts
    std::string name;     ///< tag of the piece
    double x = 0, y = 0;  ///< of its lower corner on the bed
    bool turned = false;  ///< by a quarter
};

using PrintPlate = std::vector<PrintPlace>;

struct PrintJob {
    std::vector<PrintPart> parts;
    std::vector<PrintPlate> plates;
    std::map<std::string, Said> untagged; ///< pieces that have no tag under them though they should, and why
};

/// Everything that cannot be printed so, each with what is needed.
using PrintProblems = std::vector<Said>;

/// `bodies`: of layout.models. Throws std::invalid_argument for options out of range.
std::variant<PrintJob, PrintProblems> print_job(const Layout &layout, const Bodies &bodies,
                                                const PrintOptions &options);

/// Where it lies on its plate.
Mesh placed_mesh(const PrintJob &job, const PrintPlace &place);

/// The wood of a piece with every face moved `in` (millimetres of the house) into it, blind bores that much
/// deeper and all that much wider: where two pieces meet, twice that stands between them. Without bores
/// where those are not wanted. `in` = 0 is the piece as it is.
Body eased(const Piece &piece, double in, bool with_bores);

} // namespace roundlay
