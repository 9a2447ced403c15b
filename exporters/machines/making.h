// What a machine makes of a piece: by the reach, shape and tilt of its tools, operation by operation.
//
// None of it is proved on wood: it says what straight tools can get to, not what a machine, its clamps and
// its program do.
#pragma once

#include "exporters/machines/machine.h"
#include "exporters/machining/operation.h"
#include "kernel/measure/said.h"

#include <optional>
#include <string>
#include <vector>

namespace roundlay::machines {

enum class Verdict { whole, by_hand, not_made };

/// An inner corner that the tool does not fill: a chisel does.
struct KeptCorner {
    Vec3 from, to;     ///< in the piece's frame
    double radius = 0; ///< that stays; 0 where a sharp corner is not reached by a square end
    double volume = 0; ///< mm3 of wood that stays, at most
};

struct OperationMaking {
    Verdict verdict = Verdict::not_made;
    std::optional<LogFace> from; ///< where it is made
    std::string tool;            ///< its name; empty: the saw
    double tilt = 0;             ///< of the tool
    std::vector<KeptCorner> kept;
    /// Its slopes are cut in steps of `step_height`, for the tool does not tilt so far.
    bool in_steps = false;
    bool waved = false;      ///< its bottom keeps the waves of a chain's nose, plunged every `chain_step`
    double left = 0;         ///< mm3 for the chisel, at most
    std::optional<Said> why; ///< it is not made
};

/// mm of slopes that a tool which does not tilt cuts one over the other: assumed.
inline constexpr double step_height = 3;
/// mm from one plunge of a chain to the next: assumed.
inline constexpr double chain_step = 10;

/// The best of what this tool makes of it from that side, whatever else the machine can do.
OperationMaking made_by(const Machine &machine, const machining::Operation &operation,
                        const machining::AccessSide &access, const Tool &tool);
/// The same of its saw: a single plane alone.
OperationMaking sawn(const Machine &machine, const machining::Operation &operation,
                     const machining::AccessSide &access);

struct PieceMaking {
    Verdict verdict = Verdict::whole;
    int setups = 0;                          ///< at least; of what is made
    std::vector<Said> against;               ///< of the whole log: bed, section, weight
    std::vector<OperationMaking> operations; ///< as in the list
    double left = 0;                         ///< mm3 for the chisel, at most
};

/// `weight_kg` of its stick, at most; none where it is not known.
PieceMaking making_of(const Machine &machine, const machining::OperationList &list,
                      std::optional<double> weight_kg);

} // namespace roundlay::machines
