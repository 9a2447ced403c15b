#include "exporters/print/printable.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace roundlay {

namespace {

/// For people: a scale as "1:12", never larger than what fits, and a number without a tail.
std::string scale_text(double scale) {
    return "1:" + std::to_string(static_cast<long long>(scale));
}

/// A length on the printer's bed, in the millimetres of the nozzle: whole ones, or sixteenths, would say 0.
LengthAmount as_printed(double length) {
    constexpr double hundredths = 100;
    return exactly_in_mm(std::round(length * hundredths) / hundredths);
}

class Judge {
  public:
    Judge(const Layout &layout, const Bodies &bodies, const PrintOptions &options)
        : layout_(layout), bodies_(bodies), options_(options) {}

    PrintProblems all() {
        pegs();
        beds();
        walls();
        return std::move(problems_);
    }

  private:
    /// A pin is as thick as the peg less the clearance, a hole for a dowel as thick as the peg.
    void pegs() {
        if (options_.pegs == PrintedPegs::none || layout_.pegs.empty()) return;
        const Peg &thinnest = *std::ranges::min_element(layout_.pegs, {}, &Peg::diameter);
        const double less = options_.pegs == PrintedPegs::pins ? options_.clearance : 0;
        if (thinnest.diameter / options_.scale - less >= options_.nozzle) return;
        problems_.push_back(
            said("peg %1, %2 thick, is %3 at %4 less the clearance: thinner than the nozzle of %5; %6 or "
                 "larger is needed, "
                 "a finer nozzle, or no pegs",
                 thinnest.name, in_mm(thinnest.diameter),
                 as_printed(std::max(0.0, thinnest.diameter / options_.scale - less)),
                 scale_text(options_.scale), exactly_in_mm(options_.nozzle),
                 scale_text(std::max(1.0, std::floor(thinnest.diameter / (options_.nozzle + less))))));
    }

    /// The longest piece must lie on the bed along one of its sides.
    void beds() {
        const double bed = std::max(options_.bed_x, options_.bed_y),
                     side = std::min(options_.bed_x, options_.bed_y);
        for (const Index<Model> model : layout_.models.indices()) {
            const Box3 box = bounds(bodies_[model].hewn);
            const double in = options_.clearance * options_.scale;
            const double along = box.high.x - box.low.x - in, across = box.high.y - box.low.y - in;
            if (along / options_.scale <= bed && across / options_.scale <= side) continue;
            if (longest_ && along <= longest_along_) continue;
            longest_ = model, longest_along_ = along;
        }
        if (!longest_) return;
        problems_.push_back(said(
            "log %1 is %2 long at %3 and the bed %4: %5 or smaller is needed, or a larger bed",
            tag_of_model(*longest_), as_printed(longest_along_ / options_.scale), scale_text(options_.scale),
            exactly_in_mm(bed), scale_text(std::ceil(longest_along_ / bed))));
    }

    /// A log that is thinner than two lines of the nozzle would not hold.
    void walls() {
        for (const Index<Model> model : layout_.models.indices()) {
            const Box3 box = bounds(bodies_[model].hewn);
            const double thin = std::min(box.high.y - box.low.y, box.high.z - box.low.z);
            const double least = 2 * options_.nozzle + options_.clearance;
            if (thin / options_.scale >= least) continue;
            problems_.push_back(
                said("log %1 is %2 thin at %3: less than two lines of the nozzle of %4 and the clearance; "
                     "%5 or larger is needed, or a finer nozzle",
                     tag_of_model(model), as_printed(thin / options_.scale), scale_text(options_.scale),
                     exactly_in_mm(options_.nozzle), scale_text(std::max(1.0, std::floor(thin / least)))));
            return;
        }
    }

    const std::string &tag_of_model(Index<Model> model) const {
        return layout_.pieces[layout_.models[model].pieces.front()].tag;
    }

    const Layout &layout_;
    const Bodies &bodies_;
    const PrintOptions &options_;
    PrintProblems problems_;
    std::optional<Index<Model>> longest_;
    double longest_along_ = 0;
};

} // namespace

PrintProblems what_cannot_be_printed(const Layout &layout, const Bodies &bodies,
                                     const PrintOptions &options) {
    return Judge(layout, bodies, options).all();
}

Body printable(Body body, double thinnest_bore, int sides) {
    std::erase_if(body.bores, [&](const Bore &bore) { return bore.diameter < thinnest_bore; });
    for (Bore &bore : body.bores)
        bore.diameter /= std::cos(std::numbers::pi / sides);
    body.bores_clear = body.bores.empty();
    return body;
}

} // namespace roundlay
