#include "exporters/report/parts.h"
#include "exporters/sheets/drawing/columns.h"

namespace roundlay::sheets {

namespace {

/// Agency and rule beside each, as they stand in `recording-reference.md` 9 with their sources.
struct Caution {
    Said who, what;
};

std::vector<Caution> all_cautions() {
    return {
        {said("OSHA, 29 CFR 1926.850(a)"), said("Before anything is taken down a competent person surveys "
                                                "the house in writing, and services are "
                                                "shut off.")},
        {said("OSHA, 29 CFR 1926.850(b)"),
         said("Walls and floors of a damaged house are shored or braced before anybody works inside.")},
        {said("OSHA, 29 CFR 1926.850(g)"),
         said("Openings in walls that one can fall through are guarded to about 42 in.")},
        {said("OSHA, 29 CFR 1926.305(a), (c)"), said("Jacks carry no more than is marked on them, stand on a "
                                                     "firm base, and have wood between cap and "
                                                     "load.")},
        {said("Washington State, WAC 296-307-22509(3)"),
         said("What is raised is cribbed at once; nobody works under a load that stands on jacks alone.")},
        {said("CDC, hantavirus"), said("A house with droppings of mice is aired for at least 30 minutes "
                                       "before it is cleaned; droppings are "
                                       "soaked for 5 minutes in 1 part bleach to 9 of water and wiped up, "
                                       "never swept or vacuumed dry. (An "
                                       "older page of the same agency has 1 to 10.7.)")},
        {said("NPS, Preservation Brief 47"),
         said("Large deposits of droppings are for a licensed contractor; lead paint is worked damp.")},
        {said("EPA, renovation rule (second-hand)"),
         said("In houses from before 1978 lead-safe work is asked for where more than 6 ft2 of paint in a "
              "room or "
              "20 ft2 outside are disturbed.")},
        {said("this report"), said("Figures only: it plans no lift, designs no brace and finds nothing safe. "
                                   "Local code, a licensed "
                                   "professional and whoever is on the site decide.")},
    };
}

} // namespace

void caution_part(ReportPages &pages, const Draft &, const ReportSource &) {
    pages.begin_part(pages.words().say("Cautions"), "report-cautions");
    const Words &words = pages.words();
    Table table = table_called(words, words.say("Before anybody works on the house"));
    table.columns = {flush_left(words.say("Who says so"), 55), flush_left(words.say("What"), 115)};
    for (const Caution &caution : all_cautions())
        table.rows.push_back({words.words(caution.who), words.words(caution.what)});
    pages.add(table);
    pages.add_text(words.say("Rules of the United States, as published; elsewhere ask whoever makes them."));
}

} // namespace roundlay::sheets
