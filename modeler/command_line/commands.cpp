#include "modeler/command_line/command.h"

#include <array>

namespace roundlay {

namespace {

constexpr std::array<Command, 12> table = {{
    {"new", "Write a document for a new shell",
     "  roundlay new cabin.roundlay                       a plain rectangle to begin with\n"
     "  roundlay new cabin.roundlay --shape L --width 40ft --depth 30ft --rounds 13\n"
     "  roundlay new - --width 6m --depth 5m --height 2.6m | roundlay check -\n",
     declare_new},
    {"check", "Say what is wrong with a shell and what would fit",
     "  roundlay check cabin.roundlay                     findings with line numbers, and a summary\n"
     "  roundlay check cabin.roundlay --json | jq .findings\n",
     declare_check},
    {"list", "Print a list: cut list, pegs, sticks to order, openings, floors, seams",
     "  roundlay list cabin.roundlay                      distinct pieces, as a table\n"
     "  roundlay list cabin.roundlay order                what to order, by section and length\n"
     "  roundlay list house.roundlay fabric               how much of the old wood stays, by the decisions\n"
     "  roundlay list cabin.roundlay seams                where sills and heads leave no sliver of a log\n"
     "  roundlay list cabin.roundlay pieces --csv > pieces.csv\n",
     declare_list},
    {"compare", "Hold two states of a house against each other, piece by piece",
     "  roundlay compare house.roundlay --to \"as it shall stand\"\n"
     "                                                    from the document's own shell: pieces new, gone,\n"
     "                                                    longer, shorter, re-cut and moved\n"
     "  roundlay compare house.roundlay --from \"as first built\" --to \"as it shall stand\" --csv\n"
     "  roundlay compare house.roundlay --to \"as first built\" --pdf both.pdf\n"
     "                                                    and each wall with what differs, on paper\n",
     declare_compare},
    {"export", "Make STEP, cut sheets, cut lists and pictures",
     "  roundlay export cabin.roundlay --to out           everything\n"
     "  roundlay export cabin.roundlay --to out --only step,list\n"
     "  roundlay export barn.roundlay --to out --only sheets,step --pieces new,A-05\n"
     "  roundlay export cabin.roundlay --to out --only sheets --paper A4 --units metric\n",
     declare_export},
    {"makeable", "Say which pieces a machine makes, as a small file describes it",
     "  roundlay makeable cabin.roundlay --machine router.toml\n"
     "                                                    each piece: makeable, by hand after it, or why "
     "not,\n"
     "                                                    and what change of its joints would do\n"
     "  roundlay makeable cabin.roundlay --machine router.toml --operations --csv > tools.csv\n",
     declare_makeable},
    {"picture", "Make one picture",
     "  roundlay picture cabin.roundlay --to cabin.png\n"
     "  roundlay picture cabin.roundlay --to south.png --view south --size 3000x2000\n",
     declare_picture},
    {"level", "Choose which log of a measured pile lies where, so that walls stay level",
     "  roundlay level cabin.roundlay --pile yard.csv     the choice, and the errors before and after\n"
     "  roundlay level cabin.roundlay --pile yard.csv --to levelled.roundlay\n",
     declare_level},
    {"record", "State logs as they were measured in a house that stands",
     "  roundlay record house.roundlay --logs measured.csv --to recorded.roundlay\n", declare_record},
    {"survey", "The record of a house that stands as rows of a table, out and back",
     "  roundlay survey house.roundlay > house.csv        what is recorded of each log\n"
     "  roundlay survey house.roundlay --blank --to blank.xlsx\n"
     "                                                    rows to fill in for every log of the plan\n"
     "  roundlay survey house.roundlay --rows filled.xlsx --to recorded.roundlay\n",
     declare_survey},
    {"tick", "Note what is done of each piece: taken down, cut, checked, up, pegged",
     "  roundlay tick house.roundlay up A-01-1 B-01-1 --on \"2 May\" --to house.roundlay --force\n"
     "  roundlay tick house.roundlay pegged A-02 --by Saturday --to house.roundlay --force\n"
     "                                                    all pieces of round 2 of wall A\n"
     "  roundlay tick house.roundlay up A-01-1 --take-back --to house.roundlay --force\n",
     declare_tick},
    {"format", "Tell what may stand in a document: its tables and their keys",
     "  roundlay format                                   the tables\n"
     "  roundlay format opening                           the keys of one, and what they are when left out\n"
     "  roundlay format --schema > roundlay.schema.json   for editors that complete and check TOML\n",
     declare_format},
}};

} // namespace

std::span<const Command> all_commands() {
    return table;
}

} // namespace roundlay
