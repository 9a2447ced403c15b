#include "kernel/document/describe.h"

namespace roundlay::format {

namespace {

constexpr char as_record[] = "as in `[record]`";

const TableOf<FieldSheet> &sheet_table() {
    static const TableOf<FieldSheet> table{
        {.name = "record.sheet",
         .summary =
             "A sheet of field notes that counts otherwise than [record] says, or was written by somebody "
             "else.",
         .items = items<FieldSheet>(
             {text<&FieldSheet::name>("name", "its number or name, which `sheet` of a log refers to",
                                      {.missing = "its number or name: name = \"3\""}),
              count<&FieldSheet::notation, &Notation::denominator>(
                  "denominator", {4, 16},
                  "what the third field of 3.10.1 counts on it: 4, 8 or 16 parts of an inch",
                  {.left_out = as_record}),
              one_of<&FieldSheet::notation, &Notation::two_fields>("two_fields", "what 3.10 is on it",
                                                                   {.left_out = as_record}),
              one_of<&FieldSheet::notation, &Notation::unit>(
                  "numbers_in", "the unit of its numbers that have none", {.left_out = as_record}),
              text<&FieldSheet::by>("by", "who says so", {.left_out = as_record}),
              text<&FieldSheet::on>("on", "when, in any words", {.left_out = as_record})})}};
    return table;
}

const TableOf<LevelPlane> &level_table() {
    static const TableOf<LevelPlane> table{
        {.name = "record.level",
         .summary = "A level plane through the house that heights are read from, up and down.",
         .items =
             items<LevelPlane>({text<&LevelPlane::name>("name", "what `plane` refers to",
                                                        {.missing = "its name: name = \"L1\""}),
                                noted<&LevelPlane::offset>(
                                    "offset", "how much higher it lies than the plane that all are told from",
                                    {.left_out = "it is that plane"}),
                                text<&LevelPlane::where>("where", "its marks on the house"),
                                text<&LevelPlane::sheet>("sheet", "that its number stands on")})}};
    return table;
}

const TableOf<RecordedWall> &wall_table() {
    static const TableOf<RecordedWall> table{
        {.name = "record.wall",
         .summary = "From which side a wall is read, and how long it is.",
         .items = items<RecordedWall>(
             {text<&RecordedWall::wall>("wall", "its name",
                                        {.missing = "the name of the wall: wall = \"A\""}),
              one_of<&RecordedWall::read_from>("read_from",
                                               "the side that it is seen from where its logs are recorded"),
              noted<&RecordedWall::length>("length", "from corner to corner on that side"),
              text<&RecordedWall::sheet>("sheet", "that its number stands on"),
              text<&RecordedWall::note>("note", "whatever should be known of it")})}};
    return table;
}

const TableOf<RecordedCorner> &corner_table() {
    static const TableOf<RecordedCorner> table{
        {.name = "record.corner",
         .summary = "A corner of the house, by the name that ends of logs are told by.",
         .items = items<RecordedCorner>(
             {text<&RecordedCorner::name>("name", "what `corner`, `zero` and `butt` of logs refer to",
                                          {.missing = "its name: name = \"NE\""}),
              texts<&RecordedCorner::walls>("walls", "the walls that meet in it: `[\"A\", \"B\"]`"),
              noted<&RecordedCorner::level>("level",
                                            "how high its mark lies over the plane; a sign says up or down"),
              text<&RecordedCorner::plane>("plane", "the `[[record.level]]` that its level is read from"),
              noted<&RecordedCorner::lean_first>(
                  "lean_first", "how far its arris leans outward on the face of the first, and of "
                                "the second of its walls, over the height `lean_over`"),
              noted<&RecordedCorner::lean_second>(
                  "lean_second", "how far its arris leans outward on the face of the first, and of "
                                 "the second of its walls, over the height `lean_over`"),
              noted<&RecordedCorner::lean_over>("lean_over", "the height that its lean is measured over"),
              text<&RecordedCorner::sheet>("sheet", "that its numbers stand on"),
              text<&RecordedCorner::note>("note", "whatever should be known of it")})}};
    return table;
}

const TableOf<Diagonal> &diagonal_table() {
    static const TableOf<Diagonal> table{
        {.name = "record.diagonal",
         .summary = "From corner to corner through the house: what tells how far it is off square.",
         .items = items<Diagonal>(
             {text<&Diagonal::from>("from", "the corners that it runs between",
                                    {.missing = "a corner: from = \"NE\""}),
              text<&Diagonal::to>("to", "the corners that it runs between",
                                  {.missing = "a corner: to = \"SW\""}),
              one_of<&Diagonal::side>("side", "between the corners on which side of the walls"),
              noted<&Diagonal::length>("length", "from corner to corner"),
              text<&Diagonal::sheet>("sheet", "that its number stands on")})}};
    return table;
}

const TableOf<RecordedOpening> &opening_table() {
    static const TableOf<RecordedOpening> table{
        {.name = "record.opening",
         .summary = "A door, a window or another opening of the plan, where it was found: measured on the "
                    "outside face.",
         .items = items<RecordedOpening>(
             {text<&RecordedOpening::name>("name",
                                           "its name in the plan; one without a name is `window 1 in wall A`",
                                           {.missing = "the name of the opening: name = \"front door\""}),
              text<&RecordedOpening::wall>("wall", "the wall that it is in",
                                           {.left_out = "the one that the plan has it in"}),
              text<&RecordedOpening::zero>(
                  "zero", "the corner that its jambs are measured from, along the outside face"),
              noted<&RecordedOpening::near_at_sill>(
                  "near_at_sill", "from that corner to the jamb nearer to it, at the sill and at the head"),
              noted<&RecordedOpening::near_at_head>(
                  "near_at_head", "from that corner to the jamb nearer to it, at the sill and at the head"),
              noted<&RecordedOpening::far_at_sill>(
                  "far_at_sill", "from that corner to the jamb further from it, at the sill and at the head"),
              noted<&RecordedOpening::far_at_head>(
                  "far_at_head", "from that corner to the jamb further from it, at the sill and at the head"),
              noted<&RecordedOpening::width>("width", "clear, from jamb to jamb and from sill to head"),
              noted<&RecordedOpening::height>("height", "clear, from jamb to jamb and from sill to head"),
              noted<&RecordedOpening::sill>(
                  "sill", "how high its underside and its top lie over the plane; a sign says up or down"),
              noted<&RecordedOpening::head>(
                  "head", "how high its underside and its top lie over the plane; a sign says up or down"),
              text<&RecordedOpening::plane>("plane", "the `[[record.level]]` that its levels are read from"),
              text<&RecordedOpening::sheet>("sheet", "that its numbers stand on"),
              text<&RecordedOpening::note>("note", "whatever should be known of it")})}};
    return table;
}

const TableOf<Record> &record_table() {
    static const TableOf<Record> table{
        {.name = "record",
         .summary =
             "The survey of a house that stands: who, when, how exact, and how its numbers are to be read.",
         .items = items<Record>(
             {text<&Record::by>("by", "who measured"), text<&Record::on>("on", "when, in any words"),
              text<&Record::exactness>("exactness", "how exact the numbers are, and how they were taken"),
              text<&Record::not_seen>("not_seen", "what could not be looked at"),
              text<&Record::new_work>("new_work", "how new wood is marked, so that it is told from the old"),
              count<&Record::notation, &Notation::denominator>(
                  "denominator", {4, 16},
                  "what the third field of 3.10.1 counts: 4, 8 or 16 parts of an inch; never guessed",
                  {.left_out = "such notes stay open"}),
              one_of<&Record::notation, &Notation::two_fields>("two_fields", "what 3.10 is; never guessed",
                                                               {.left_out = "such notes stay open"}),
              one_of<&Record::notation, &Notation::unit>("numbers_in", "the unit of numbers that have none",
                                                         {.left_out = "such numbers are refused"})}),
         .lists = {list<&Record::sheets>(sheet_table(), limits::walls),
                   list<&Record::planes>(level_table(), limits::walls),
                   list<&Record::walls>(wall_table(), limits::walls),
                   list<&Record::corners>(corner_table(), limits::walls),
                   list<&Record::diagonals>(diagonal_table(), limits::walls),
                   list<&Record::openings>(opening_table(), limits::openings)},
         .comment = "The house as it was found. Numbers stay as they were noted."}};
    return table;
}

} // namespace

Section record_section() {
    Section section{.table = &record_table()};
    section.only_where_other = true;
    section.of_record = true;
    section.fresh = [](const Shell &) -> std::shared_ptr<void> { return std::make_shared<Record>(); };
    section.in = [](void *around) { return around; };
    return section;
}

} // namespace roundlay::format
