#include "exporters/registry/make_picture.h"
#include "exporters/registry/option_values.h"

#include <stdexcept>

namespace roundlay {

namespace {

using Asks = std::vector<std::string_view>;

/// `place`: of options, const or not, the member that holds it, or a tie of two of them.
template <typename Place>
ExportOption row(std::string_view name, std::string_view typed, const Asks &asks, Said called, Said explained,
                 OptionKind kind, Place place, Said otherwise = {}) {
    return {name,
            typed,
            asks,
            std::move(called),
            std::move(explained),
            std::move(kind),
            std::move(otherwise),
            [place](const ExportOptions &options) { return values_in(place(options)); },
            [place](ExportOptions &options, const OptionValue &value) { put_in(place(options), value); }};
}

/// A word for each value of the enumeration, in its order.
ChoiceOption views() {
    ChoiceOption choice{"view", {}};
    for (int view = 0; view <= static_cast<int>(View::south_west); ++view)
        choice.words.push_back({name_of(static_cast<View>(view)), pictured(static_cast<View>(view))});
    return choice;
}

ChoiceOption papers() {
    ChoiceOption choice{"paper", {}};
    for (const std::string_view name : {"A4", "A3", "A2", "A1", "Letter", "Tabloid"})
        choice.words.push_back({name, phrase(name)});
    return choice;
}

LengthsOption length(double low, double high) {
    return {.low = low, .high = high, .parts = {}};
}
LengthsOption millimetres(double low, double high) {
    return {.low = low, .high = high, .parts = {}, .in_mm = true};
}

std::vector<ExportOption> of_paper_and_pictures() {
    constexpr int most_pixels = 8192;
    const Asks paper = {"sheets", "bench",  "drawings", "templates", "tags",
                        "forms",  "report", "book",     "page",      "operation-sheets"};
    return {
        row(
            "paper", "PAPER", paper, said("Paper of the sheets"),
            said("of drawings and cut sheets; tags, forms, templates and story poles come on A4 or Letter, "
                 "whichever goes with it"),
            papers(), [](auto &o) -> auto & { return o.paper; }, said("as the units")),
        row(
            "view", "VIEW", {"picture", "book"}, said("View"), said("from where the shell is seen"), views(),
            [](auto &o) -> auto & { return o.picture.view; }),
        row("size", "WxH", {"picture"}, said("Size of the picture"), said("in pixels"),
            NumbersOption{1, most_pixels, said("width x height in pixels"), 2, true},
            [](auto &o) { return std::tie(o.picture.width, o.picture.height); })};
}

std::vector<ExportOption> of_labels() {
    constexpr double most = 1000;
    constexpr int most_labels = 100;
    const Asks tags = {"tags"};
    const auto pair = [](const Said &parts, double low) { return LengthsOption{low, most, parts, 2, true}; };
    return {row(
                "label", "WxH", tags, said("Label"), said("one label of the sheets that tags are printed on"),
                pair(said("width x height"), sheets::least_label_height),
                [](auto &o) -> auto & { return o.labels.size; }, said("eight to a sheet, to be cut apart")),
            row(
                "label-grid", "CxR", tags, said("Labels on a sheet"), said("how many across and down"),
                NumbersOption{1, most_labels, said("columns x rows"), 2, true},
                [](auto &o) -> auto & { return o.labels.grid; }, said("as the labels are stated")),
            row(
                "label-margins", "LxT", tags, said("Margins of labels"),
                said("from the paper's left and top border to the first label"), pair(said("left x top"), 0),
                [](auto &o) -> auto & { return o.labels.margins; }),
            row(
                "label-gaps", "AxD", tags, said("Gaps of labels"), said("between labels across and down"),
                pair(said("across x down"), 0), [](auto &o) -> auto & { return o.labels.gaps; })};
}

std::vector<ExportOption> of_step() {
    const Asks step = {"step"};
    return {row(
                "step-schema", "SCHEMA", step, said("Schema"), said("edition of the format"),
                ChoiceOption{"STEP schema",
                             {{"ap214", said("AP214, which shops ask for")},
                              {"ap242", said("AP242, ISO 10303-242 edition 2")}}},
                [](auto &o) -> auto & { return o.step.schema; }),
            row(
                "step-unit", "UNIT", step, said("Unit"), said("in which its lengths are"),
                ChoiceOption{"unit of STEP files", {{"mm", said("millimetres")}, {"in", said("inches")}}},
                [](auto &o) -> auto & { return o.step.unit; }),
            row(
                "step-colours", "WAY", step, said("Colours"), said("what tells solids apart"),
                ChoiceOption{
                    "colouring of STEP files",
                    {{"wall", said("by wall")}, {"wood", said("by wood: new, replacement, patched, kept")}}},
                [](auto &o) -> auto & { return o.step.colours; }),
            row(
                "step-linked", "", step, said("Linked"),
                said("shell.step refers to the files of its pieces and is small: keep them together"),
                YesNoOption{true}, [](auto &o) -> auto & { return o.step.linked; }),
            row(
                "step-stock", "", step, said("With stock"),
                said("in each piece's file a second solid: the stick that it is cut from"), YesNoOption{true},
                [](auto &o) -> auto & { return o.step.with_stock; })};
}

std::vector<ExportOption> of_print() {
    constexpr double most_scale = 1000, least_bed = 20, most_bed = 10000, widest = 5, finest = 0.05;
    const Asks print = {"print"};
    return {row(
                "scale", "SCALE", print, said("Scale"), said("of the model"), ScaleOption{1, most_scale},
                [](auto &o) -> auto & { return o.print.scale; }),
            row("bed", "WxD", print, said("Bed"), said("of the printer: what it can print on"),
                LengthsOption{least_bed, most_bed, said("width x depth"), 2, true},
                [](auto &o) { return std::tie(o.print.bed_x, o.print.bed_y); }),
            row(
                "clearance", "MM", print, said("Clearance"), said("between two printed faces that meet"),
                millimetres(0, widest), [](auto &o) -> auto & { return o.print.clearance; }),
            row(
                "nozzle", "MM", print, said("Nozzle"), said("of the printer: what is thinner is refused"),
                millimetres(finest, widest), [](auto &o) -> auto & { return o.print.nozzle; }),
            row(
                "pegs", "WAY", print, said("Pegs"), said("what becomes of them in the model"),
                ChoiceOption{"way to print pegs",
                             {{"pins", said("printed too")},
                              {"holes", said("holes for dowels")},
                              {"none", said("no holes")}}},
                [](auto &o) -> auto & { return o.print.pegs; }),
            row(
                "print-tags", "yes|no", print, said("Tags"),
                said("each piece's tag is pressed into its underside, where the nozzle can make its letters; "
                     "places.csv says where not, and why"),
                YesNoOption{}, [](auto &o) -> auto & { return o.print.tags; })};
}

/// What must be stated has no value to begin with, and option_problems asks for it.
std::vector<ExportOption> of_router_cuts() {
    using B = RouterBounds;
    const Asks router = {"router"};
    const Said needed = said("to be stated");
    return {row(
                "board", "LxWxT", router, said("Board"), said("what is cut, its length along X"),
                LengthsOption{B::thinnest, B::longest, said("length x width x thickness"), 3, false},
                [](auto &o) -> auto & { return o.router.board; }, needed),
            row(
                "tool", "LENGTH", router, said("Tool"), said("the diameter of its straight cutter"),
                length(B::thinnest_tool, B::thickest_tool), [](auto &o) -> auto & { return o.router.tool; },
                needed),
            row(
                "feed", "LENGTH", router, said("Feed"), said("how far it goes along in a minute"),
                length(B::slowest, B::fastest), [](auto &o) -> auto & { return o.router.feed; }, needed),
            row(
                "plunge", "LENGTH", router, said("Plunge feed"), said("how far it goes down in a minute"),
                length(B::slowest, B::fastest), [](auto &o) -> auto & { return o.router.plunge; }, needed),
            row(
                "spindle", "TURNS", router, said("Spindle"), said("its turns a minute"),
                NumbersOption{1, B::most_turns, {}, 1, false},
                [](auto &o) -> auto & { return o.router.spindle; }, needed),
            row(
                "depth-step", "LENGTH", router, said("Depth of a pass"),
                said("the most that one pass takes off"), length(B::least_step, B::thickest_tool),
                [](auto &o) -> auto & { return o.router.depth_step; }, needed)};
}

std::vector<ExportOption> of_router_ways() {
    using B = RouterBounds;
    const Asks router = {"router"};
    const Said as_the_tool = said("as the tool asks");
    return {row(
                "safe-height", "LENGTH", router, said("Safe height"),
                said("how far over the board it moves from place to place, over all clamps"),
                length(1, B::longest), [](auto &o) -> auto & { return o.router.safe_height; }),
            row(
                "through", "LENGTH", router, said("Through"),
                said("how far below the board it cuts, into what that lies on"),
                length(0, B::deepest_through), [](auto &o) -> auto & { return o.router.through; }),
            row(
                "scribe", "LENGTH", router, said("Depth of marks"),
                said("how deep shoulders and level lines are marked, by grooves as wide as the tool whose "
                     "middle is "
                     "the line; templates that are another's mirror image then are cut for themselves"),
                length(B::finest_mark, B::thickest_tool), [](auto &o) -> auto & { return o.router.scribe; },
                said("no marks")),
            row(
                "margin", "LENGTH", router, said("Margin"), said("from the board's border to a template"),
                length(0, B::longest), [](auto &o) -> auto & { return o.router.margin; }, as_the_tool),
            row(
                "spacing", "LENGTH", router, said("Spacing"), said("between two templates"),
                length(0, B::longest), [](auto &o) -> auto & { return o.router.spacing; }, as_the_tool),
            row(
                "tabs", "COUNT", router, said("Tabs"), said("bridges that hold each template"),
                NumbersOption{B::fewest_tabs, B::most_tabs, {}, 1, true},
                [](auto &o) -> auto & { return o.router.tabs; }),
            row("tab", "WxH", router, said("Size of a tab"), said("how wide and high a bridge is"),
                LengthsOption{B::finest_mark, B::longest, said("width x height"), 2, false},
                [](auto &o) { return std::tie(o.router.tab_width, o.router.tab_height); })};
}

} // namespace

std::span<const ExportOption> all_export_options() {
    static const std::vector<ExportOption> table = [] {
        std::vector<ExportOption> all;
        for (const auto &part : {of_paper_and_pictures(), of_labels(), of_step(), of_print(),
                                 of_router_cuts(), of_router_ways()})
            all.insert(all.end(), part.begin(), part.end());
        return all;
    }();
    return table;
}

const ExportOption &export_option(std::string_view name) {
    for (const ExportOption &option : all_export_options())
        if (option.name == name) return option;
    throw std::out_of_range("no export option " + std::string(name));
}

std::vector<const ExportOption *> options_asked_by(std::string_view exporter) {
    std::vector<const ExportOption *> asked;
    for (const ExportOption &option : all_export_options())
        for (const std::string_view asks : option.asks)
            if (asks == exporter) asked.push_back(&option);
    return asked;
}

std::vector<OptionProblem> option_problems(std::string_view exporter, const ExportOptions &options) {
    std::vector<OptionProblem> problems;
    if (exporter == "router")
        for (const RouterProblem &each : against(options.router))
            problems.push_back({each.option, each.what, each.missing});
    if (exporter == "tags" && options.labels.size.has_value() != options.labels.grid.has_value())
        problems.push_back({options.labels.size ? "label-grid" : "label",
                            said("labels are stated by their size and by how many are on a sheet"), true});
    return problems;
}

} // namespace roundlay
