#include "exporters/router/stated.h"

#include <cmath>

namespace roundlay {

namespace {

constexpr double web = 4; // mm of board that stays between two grooves

LengthAmount fine(double mm) {
    constexpr int decimals = 2;
    return finely_in_mm(mm, decimals);
}

using B = RouterBounds;

class Judge {
  public:
    explicit Judge(const RouterOptions &options) : o_(options) {}

    std::vector<RouterProblem> all() {
        board();
        tool();
        speeds();
        depths();
        marks();
        airs();
        tabs();
        return std::move(problems_);
    }

  private:
    void tell(std::string_view option, Said what) { problems_.push_back({option, std::move(what)}); }
    void ask(std::string_view option, Said what) { problems_.push_back({option, std::move(what), true}); }

    void board() {
        if (!o_.board)
            return ask("board", said("no board is stated: its length, width and thickness are needed"));
        if (!(o_.board->length > 0 && o_.board->width > 0 && o_.board->thickness > 0))
            tell("board", said("a board of %1 by %2, %3 thick, is none: each must be over 0",
                               fine(o_.board->length), fine(o_.board->width), fine(o_.board->thickness)));
    }

    void tool() {
        if (!o_.tool) return ask("tool", said("no tool is stated: its diameter is needed"));
        if (!(*o_.tool >= B::thinnest_tool && *o_.tool <= B::thickest_tool))
            tell("tool", said("a tool of %1 does not cut templates: %2 to %3 is needed", fine(*o_.tool),
                              fine(B::thinnest_tool), fine(B::thickest_tool)));
    }

    void speeds() {
        if (!o_.feed)
            ask("feed", said("no feed is stated: how far the tool may go along in a minute is needed"));
        else if (!(*o_.feed > 0 && *o_.feed <= B::fastest))
            tell("feed", said("a feed of %1 a minute: over 0 and at most %2 is needed", fine(*o_.feed),
                              fine(B::fastest)));
        if (!o_.plunge)
            ask("plunge",
                said("no plunge feed is stated: how far the tool may go down in a minute is needed"));
        else if (!(*o_.plunge > 0 && *o_.plunge <= B::fastest))
            tell("plunge", said("a plunge feed of %1 a minute: over 0 and at most %2 is needed",
                                fine(*o_.plunge), fine(B::fastest)));
        if (!o_.spindle)
            ask("spindle", said("no spindle speed is stated: turns a minute are needed"));
        else if (!(*o_.spindle >= 1 && *o_.spindle <= B::most_turns))
            tell("spindle", said("a spindle that turns %1 times a minute: 1 to %2 is needed",
                                 static_cast<long long>(std::floor(*o_.spindle)),
                                 static_cast<long long>(B::most_turns)));
    }

    void depths() {
        if (!o_.depth_step)
            ask("depth-step", said("no depth step is stated: how much one pass may take off is needed"));
        else if (!(*o_.depth_step >= B::least_step))
            tell("depth-step", said("a depth step of %1 never gets through: %2 or more is needed",
                                    fine(*o_.depth_step), fine(B::least_step)));
        if (!(o_.safe_height >= 1))
            tell("safe-height",
                 said("the safe height of %1 lies below the board’s top or on it, and rapid moves would run "
                      "through wood: %2 or more is needed, and more than the clamps stand up",
                      fine(o_.safe_height), fine(1)));
        if (!(o_.through >= 0 && o_.through <= B::deepest_through))
            tell("through", said("a cut of %1 below the board: 0 to %2 is needed", fine(o_.through),
                                 fine(B::deepest_through)));
    }

    void marks() {
        if (!o_.scribe) return;
        if (!(*o_.scribe > 0) || (o_.board && *o_.scribe > o_.board->thickness / 2))
            tell("scribe", said("marks %1 deep: over 0 and at most half of the board's thickness is needed",
                                fine(*o_.scribe)));
        else if (o_.depth_step && *o_.scribe > *o_.depth_step)
            tell("scribe", said("marks %1 deep are more than one pass takes off: at most %2 is needed",
                                fine(*o_.scribe), fine(*o_.depth_step)));
    }

    void airs() {
        if (!o_.tool) return;
        const double least = least_air(*o_.tool);
        if (o_.margin && !(*o_.margin >= least))
            tell("margin",
                 said("a margin of %1 leaves no board beside the groove of a tool of %2: %3 is needed",
                      fine(*o_.margin), fine(*o_.tool), fine(least)));
        if (o_.spacing && !(*o_.spacing >= least))
            tell("spacing",
                 said("templates %1 apart leave no board between the grooves of a tool of %2: %3 is needed",
                      fine(*o_.spacing), fine(*o_.tool), fine(least)));
    }

    void tabs() {
        if (o_.tabs < B::fewest_tabs || o_.tabs > B::most_tabs)
            tell("tabs",
                 said("%1 tabs: %2 to %3 are needed, or a template that comes loose is thrown by the tool",
                      o_.tabs, B::fewest_tabs, B::most_tabs));
        if (!(o_.tab_width >= 1))
            tell("tab", said("tabs %1 wide hold nothing: %2 or more is needed", fine(o_.tab_width), fine(1)));
        if (!(o_.tab_height > 0) || (o_.board && o_.tab_height >= o_.board->thickness))
            tell("tab", said("tabs %1 high: over 0 and less than the board is thick is needed",
                             fine(o_.tab_height)));
    }

    const RouterOptions &o_;
    std::vector<RouterProblem> problems_;
};

} // namespace

double least_air(double tool) {
    constexpr double groove_and_lead = 2.5;
    return groove_and_lead * tool + web;
}

double usual_air(double tool) {
    constexpr double two_leads = 3;
    return two_leads * tool + web;
}

std::vector<double> pass_depths(const RouterOptions &complete) {
    const double deepest = complete.board->thickness + complete.through;
    constexpr double rounding = 1e-9;
    const int passes = static_cast<int>(std::ceil(deepest / *complete.depth_step - rounding));
    std::vector<double> depths;
    for (int pass = 1; pass <= passes; ++pass)
        depths.push_back(-deepest * pass / passes);
    return depths;
}

std::vector<RouterProblem> against(const RouterOptions &options) {
    return Judge(options).all();
}

RouterOptions completed(RouterOptions options) {
    if (!options.margin) options.margin = usual_air(*options.tool);
    if (!options.spacing) options.spacing = usual_air(*options.tool);
    return options;
}

} // namespace roundlay
