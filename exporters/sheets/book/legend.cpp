#include "exporters/sheets/book/parts.h"
#include "exporters/sheets/drawing/columns.h"
#include "exporters/sheets/drawing/dimension.h"
#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/frame/tables.h"
#include "exporters/sheets/set/scales.h"
#include "exporters/sheets/shell_view/bore_symbols.h"

#include <stdexcept>

namespace roundlay::sheets {
namespace {

constexpr double sample_width = 30, row_height = 9, next_line = 4.2, words_width = 110;

/// A sample and what it means.
struct Meaning {
    std::vector<Item> sample; ///< around (0,0), at most 30 wide and 6 high
    std::string words;
};

Item stroke(Vec2 a, Vec2 b, Line line) {
    return Path{{a, b}, false, line, ""};
}

Meaning of_line(Line line, const std::string &words) {
    return {{stroke({-14, 0}, {14, 0}, line)}, words};
}

Text sample_text(const std::string &words, Vec2 at) {
    Text text;
    text.words = words;
    text.at = at;
    text.across = Across::middle;
    text.upright = Upright::middle;
    return text;
}

Meaning of_grey(double grey, const std::string &words) {
    return {{Fill{{{{-12, -3}, {12, -3}, {12, 3}, {-12, 3}}}, grey},
             Path{{{-12, -3}, {12, -3}, {12, 3}, {-12, 3}}, true, Line::visible, ""}},
            words};
}

std::vector<Meaning> lines(const Words &words) {
    return {of_line(Line::visible, words.say("Edge that is seen")),
            of_line(Line::hidden, words.say("Edge behind wood")),
            of_line(Line::blank, words.say("Outline of the blank where wood is taken off")),
            of_line(Line::centre, words.say("Centre line; peg in its bore in an elevation; diagonal")),
            of_line(Line::dimension, words.say("Dimension line, extension line, leader")),
            of_line(Line::cut_off, words.say("Where a long log is shortened (with a zigzag)")),
            of_line(Line::strong, words.say("Foundation; emphasis"))};
}

std::string called(BoreUse use, const Words &words) {
    switch (use) {
    case BoreUse::hole:
        return words.say("Hole as found in old wood");
    case BoreUse::wire:
        return words.say("Way for wiring");
    case BoreUse::rod:
        return words.say("Hold-down rod");
    case BoreUse::bolt:
        break;
    }
    return words.say("Bolt");
}

/// Each use of bores, as in plans; on cut sheets all are circles and have these letters.
std::vector<Meaning> bores(const Words &words) {
    std::vector<Meaning> all{
        {bore_symbol(std::nullopt, {0, 0}, 2), words.say("Peg; P1, P2 … in its piece's table of bores")}};
    for (const BoreUse use : {BoreUse::bolt, BoreUse::rod, BoreUse::wire, BoreUse::hole}) {
        const std::string name = words.word(name_of(std::optional(use))), letter = letter_of(use);
        all.push_back(
            {bore_symbol(use, {0, 0}, 2.4),
             words.say("%1; \"%2 1\" … in plans and elevations, %3, %4 … in its piece's table of bores",
                       called(use, words), name, letter + "1", letter + "2")});
    }
    return all;
}

std::vector<Meaning> marks(const Words &words) {
    std::vector<Meaning> all;
    all.push_back({{Circle{{-10, 0}, 1.2, Line::dimension, ""}, stroke({-8.8, 0}, {10, 0}, Line::dimension),
                    arrowhead({10, 0}, {1, 0}), sample_text("2900", {0, 2.4})},
                   words.say("Running dimension: measured from the circle to the arrow, never from number to "
                             "number")});
    all.push_back({{Circle{{0, 0}, 2.4, Line::dimension, ""}, sample_text("3", {0, 0})},
                   words.say("Number of a cut, as in the list of cuts, in cutting order")});
    for (Meaning &meaning : bores(words))
        all.push_back(std::move(meaning));
    all.push_back({{stroke({-3, 2}, {-4, -2}, Line::visible), stroke({-4, -2}, {4, -2}, Line::visible),
                    stroke({4, -2}, {3, 2}, Line::visible)},
                   words.say("Pocket for the end of a joist, beam or trimmer; K1, K2 … as in the table of "
                             "pockets")});
    all.push_back(of_grey(0.86, words.say("End grain turned to you")));
    Meaning cut = of_grey(0.75, words.say("Log cut through: it goes on toward you"));
    for (const double way : {1.0, -1.0})
        cut.sample.push_back(stroke({-12, -3 * way}, {12, 3 * way}, Line::dimension));
    all.push_back(cut);
    return all;
}

/// Beside their samples, in lines no longer than `width` has room for. Returns how many lines they take.
std::size_t add_words(Block &block, const std::string &words, double y, double width) {
    Text text;
    text.upright = Upright::middle;
    const double room = width - sample_width - 8;
    const auto lines = wrapped(words, room, text.height, false);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        text.words = lines[i];
        text.at = {sample_width + 4, y - static_cast<double>(i) * next_line};
        block.items.emplace_back(text);
    }
    return lines.size();
}

Block drawn(const std::string &title, const std::vector<Meaning> &all, double width) {
    Block block;
    double y = 0;
    block.items.emplace_back(lettered(title, {0, y}, 3.5, true, Role::caption));
    y -= 8;
    for (const Meaning &meaning : all) {
        for (const Item &item : meaning.sample)
            block.items.push_back(moved(item, {sample_width / 2, y}));
        const std::size_t lines = add_words(block, meaning.words, y, width);
        y -= row_height + next_line * static_cast<double>(lines - 1);
    }
    block.room = bounds(block.items).grown(2);
    return block;
}

Table reading(const Words &words) {
    Table table = table_called(words, words.say("How the sheets are read"));
    table.columns = {{"", Across::left, words_width}};
    table.rows = {
        {words.say(
            "Tag: wall letter, round, piece. C-07-2 is the second piece, from the left seen from outside, "
            "of round 7 of wall C.")},
        {words.say(
            "Datum end: the left end of a log seen from outside. All lengths of a piece are from it, the "
            "tape held "
            "to the end line EL with its own figure. Heights are over (+) or under (-) the level line LL, "
            "distances across from the outside face, as hewn where the log tapers; of a round log from its "
            "outermost line.")},
        {words.say(
            "Rounds: a wall that starts with a half log has one log more than the others, and its last "
            "is counted as one round more than the shell has.")},
        {words.say(
            "The faces of a log are drawn as they show when it is rolled a quarter turn each time; the "
            "datum end stays left.")},
        {words.say(
            "Slopes are stated as rise to run and as the rise over the tail. \"Up\" is upward toward the "
            "log's end, or toward the outside.")},
        {words.say("Butt is the thick end of the log as it grew, tip the thin end.")},
        {words.say(
            "Never measure from paper, but for what is marked as full size: there check the bars first.")}};
    return table;
}

} // namespace

Titled legend_sheets(const Shell &shell, const SheetOptions &options) {
    const PaperSize size = paper_for(shell, options);
    const Words words(shell.units, options.denominator, options.fields.language);
    const double width = inner_area(size).width();
    std::vector<Page> pages{empty_page(size)};
    for (const Block &block :
         {drawn(words.say("Lines"), lines(words), width), drawn(words.say("Marks"), marks(words), width)})
        if (!put_on(pages, size, std::make_shared<const Block>(block)))
            throw std::logic_error("the legend is larger than a sheet");
    put_on(pages, size, reading(words));
    const std::string title = words.say("Legend");
    return {std::move(pages),
            {title, words.say("lines, marks and how the sheets are read"), title, "B-2",
             said_scale(nullptr, words), false, ""},
            {title, "legend", ""}};
}

} // namespace roundlay::sheets
