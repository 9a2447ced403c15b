#include "kernel/shell/about.h"

namespace roundlay {

namespace {

struct Called {
    Said operator()(const about::Wall &wall) const { return said("wall %1", wall.name); }
    Said operator()(const about::Walls &walls) const {
        return said("walls %1 and %2", walls.one, walls.other);
    }
    Said operator()(const about::Round &round) const { return said("round %1", round.number); }
    Said operator()(const about::Part &part) const { return said("piece %1", part.number); }
    Said operator()(const about::Corner &corner) const { return said("corner %1", corner.name); }
    Said operator()(const about::Piece &piece) const { return said("%1", piece.tag); }
    Said operator()(const about::Pieces &pieces) const { return said("%1 and %2", pieces.one, pieces.other); }
    Said operator()(const about::Floor &floor) const { return said("floor %1", floor.name); }
    Said operator()(const about::Step &step) const { return said("step %1", step.number); }

    Said operator()(const about::Opening &opening) const {
        if (!opening.name.empty()) return said("%1", opening.name);
        return opening.kind == OpeningKind::door ? said("door %1", opening.number)
                                                 : said("window %1", opening.number);
    }

    Said operator()(const about::Timber &timber) const {
        switch (timber.use) {
        case TimberUse::trimmed:
            return said("trimmed joist %1", timber.tag);
        case TimberUse::trimmer:
            return said("trimmer %1", timber.tag);
        case TimberUse::beam:
            return said("beam %1", timber.tag);
        case TimberUse::joist:
            break;
        }
        return said("joist %1", timber.tag);
    }

    Said operator()(const about::Bore &bore) const {
        if (!bore.name.empty()) return said("%1", bore.name);
        switch (bore.use) {
        case BoreUse::bolt:
            return said("bolt %1", bore.number);
        case BoreUse::rod:
            return said("rod %1", bore.number);
        case BoreUse::wire:
            return said("wiring bore %1", bore.number);
        case BoreUse::hole:
            break;
        }
        return said("hole %1", bore.number);
    }

    Said operator()(about::All all) const {
        switch (all) {
        case about::All::plan:
            return said("plan");
        case about::All::rounds:
            return said("rounds");
        case about::All::pegs:
            return said("pegs");
        case about::All::logs:
            return said("logs");
        case about::All::openings:
            return said("openings");
        case about::All::floors:
            return said("floors");
        case about::All::bores:
            return said("bores");
        case about::All::wood:
            return said("wood");
        case about::All::top_of_walls:
            break;
        }
        return said("top of the walls");
    }
};

} // namespace

Said said_of(const Thing &thing) {
    return std::visit(Called(), thing);
}

} // namespace roundlay
