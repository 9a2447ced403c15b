// What holds for every cut sheet of a shell stands once, on a sheet of its own.
#include "exporters/sheets/cut_sheet/cut_sheet.h"
#include "exporters/sheets/cut_sheet/snap.h"
#include "exporters/sheets/drawing/columns.h"
#include "exporters/sheets/frame/tables.h"
#include "exporters/sheets/set/scales.h"

#include <algorithm>

namespace roundlay::sheets {
namespace {

constexpr double wide = 170;

Table list_called(const Words &words, std::string title) {
    Table table = table_called(words, std::move(title));
    table.columns = {flush_left("", wide)};
    return table;
}

Table lines_table(const Words &words) {
    Table table = list_called(words, words.say("Lines to snap, before anything is cut"));
    for (const std::string &line :
         {words.say(
              "LL, the level line, runs along both sides of every log. Heights are plus over it and minus "
              "under it: never from a face that is hewn away."),
          words.say("EL, the end line, goes square round the log where nothing is cut. Hold the tape to it "
                    "with the "
                    "figure that the sheet gives for it: then its zero is the datum end, sawn or not."),
          words.say(
              "PL, the plumb line, stands on both ends and crosses LL there: the log lies right when it is "
              "plumb. Snap them anew where hewing takes them away."),
          words.say("LL on the pole: how high LL lies over the zero of the story poles when the log is in "
                    "its place. "
                    "Raise: its number in the order of raising.")})
        table.rows.push_back({line});
    return table;
}

Table reading_table(const Shell &shell, const Layout &layout, const Words &words) {
    Table table = list_called(words, words.say("How the sheets are read"));
    for (const bool timber : {false, true})
        if (std::ranges::any_of(layout.pieces,
                                [&](const Piece &p) { return p.timber.has_value() == timber; }))
            table.rows.push_back({faces_words(timber, words)});
    if (!layout.pegs.empty() && shell.pegs.bored == PegBoring::in_place)
        table.rows.push_back(
            {words.say("Pegs are bored in place, as each log is laid: no sheet has their holes. "
                       "The elevation of each wall has their places.")});
    return table;
}

/// Each basis once: pieces of another wood weigh by another one.
Table weight_table(const Draft &draft, const Words &words) {
    Table table = list_called(words, words.say("What the weights rest on"));
    std::string caution;
    for (const Model &model : draft.layout.models) {
        const Piece &piece = draft.layout.pieces[model.pieces.front()];
        const auto weight =
            draft.options.weight ? draft.options.weight(piece, draft.bodies[piece.model]) : std::nullopt;
        if (!weight) continue;
        caution = weight->caution;
        if (std::ranges::find(table.rows, std::vector{weight->basis}) == table.rows.end())
            table.rows.push_back({weight->basis});
    }
    if (!caution.empty()) table.rows.push_back({caution});
    return table;
}

Titled common_notes(const Draft &draft) {
    const Words words = draft.words();
    std::vector<Page> pages{empty_page(draft.size())};
    put_on(pages, draft.size(), lines_table(words));
    put_on(pages, draft.size(), reading_table(draft.shell, draft.layout, words));
    if (const Table weights = weight_table(draft, words); !weights.rows.empty())
        put_on(pages, draft.size(), weights);
    const std::string title = words.say("Notes for all cut sheets");
    return {std::move(pages),
            {title, "", words.say("Cut sheet"), "N-1", said_scale(nullptr, words), false, words.unit_note()},
            {title, "cut-sheet-notes", words.say("Cut sheets")}};
}

} // namespace

Subject common_notes_subject() {
    return {"notes for all cut sheets", [](const Draft &d) { return std::vector{common_notes(d)}; }};
}

} // namespace roundlay::sheets
