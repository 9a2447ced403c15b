#include "exporters/sheets/schedule/schedules.h"

#include "exporters/lists/shell_tables.h"
#include "exporters/lists/tables.h"
#include "exporters/sheets/drawing/columns.h"
#include "exporters/sheets/frame/tables.h"
#include "exporters/sheets/raising/raising.h"
#include "exporters/sheets/schedule/list_paper.h"
#include "exporters/sheets/set/scales.h"
#include "exporters/sheets/shell_view/bore_symbols.h"
#include "kernel/review/floor_screen.h"
#include "kernel/stock/totals.h"

#include <algorithm>
#include <iterator>

namespace roundlay::sheets {
namespace {

/// As the lists have it: its sentences state units, its cells by `paper_cells` do not, since the sheet does.
CutList list_of(const Draft &draft) {
    return collect_cut_list(draft.shell, draft.layout, volumes_of(draft.bodies),
                            draft.options.fields.language);
}

CutList paper_cells(CutList list, const Words &words) {
    list.voice = words;
    return list;
}

void append(std::vector<std::string> &all, std::vector<std::string> more) {
    std::ranges::move(more, std::back_inserter(all));
}

double length_in_wood(const PlacedBore &bore) {
    double sum = 0;
    for (const BoredLog &log : bore.logs)
        sum += log.length;
    return sum;
}

/// Rows of the wall's own table, each with how long its bore is.
void add_bores_of(const Draft &draft, const Words &words, Index<WallPlace> wall, Table &table) {
    Table of_wall = bore_table(draft.shell, draft.layout, words, wall);
    const std::vector<PlacedBore> all = named_bores(draft.shell, draft.layout, words);
    if (table.columns.empty()) {
        table.columns = of_wall.columns;
        table.columns.push_back(flush_right(words.say("Length in wood"), 24));
    }
    for (std::vector<std::string> &row : of_wall.rows) {
        const auto bore = std::ranges::find(all, row.front(), &PlacedBore::mark);
        row.push_back(words.length(length_in_wood(*bore)));
        table.rows.push_back(std::move(row));
    }
}

} // namespace

Schedule opening_schedule(const Draft &draft) {
    const Words words = draft.words();
    const roundlay::Table list = opening_table(draft.shell, draft.layout, words.language());
    const roundlay::Table cells = opening_table(draft.shell, draft.layout, static_cast<const Voice &>(words));
    Schedule made{on_paper(cells, words, words.say("Openings")), {}, 9};
    if (list.rows.empty()) return made;
    made.notes = {words.say(
        "Width and height are of the opening in the logs; from left: from the wall's left corner; sill: over "
        "the foundation. The frame is no higher than what is left for it under the settle space, and no "
        "wider "
        "than the opening less what its jambs and keys take. Past left and past right: how far the header "
        "log "
        "runs on beyond the opening.")};
    append(made.notes, said_once(list, "settle_basis", "opening", words));
    return made;
}

Schedule peg_schedule(const Draft &draft) {
    const Words words = draft.words();
    const CutList list = list_of(draft);
    Schedule made{on_paper(peg_table(paper_cells(list, words)), words, words.say("Pegs"),
                           {"quantity", "diameter", "length", "bores_from", "bores_to"}),
                  {}};
    if (!made.table.rows.empty()) made.notes = {words.say("Pegs: %1.", peg_words(list))};
    return made;
}

Schedule bore_schedule(const Draft &draft) {
    const Words words = draft.words();
    Schedule made{table_called(words, words.say("Rods, bolts, wiring and holes as found")), {}};
    for (const auto wall : draft.layout.walls.indices())
        add_bores_of(draft, words, wall, made.table);
    if (!made.table.rows.empty())
        made.notes = {words.say("The length in wood is that of the bore: a rod or bolt is longer, by what is "
                                "set in the foundation and by plate, washer and nut.")};
    return made;
}

Schedule order_schedule(const Draft &draft) {
    const Words words = draft.words();
    const CutList list = list_of(draft);
    const roundlay::Table order = order_table(list);
    Schedule made{on_paper(order_table(paper_cells(list, words)), words, words.say("Sticks to order")), {}};
    if (order.rows.empty()) return made;
    made.notes = {words.say("Lengths to order: %1.", order_words(list))};
    append(made.notes, said_once(order, "weight_note", "species", words));
    return made;
}

Schedule timber_schedule(const Draft &draft) {
    const Words words = draft.words();
    const roundlay::Table list = floor_table(draft.shell, draft.layout, static_cast<const Voice &>(words));
    Schedule made{on_paper(list, words, words.say("Timbers of the floors"),
                           {"tag", "kind", "floor", "from_left", "from_wall", "clear_spans", "bearings"}),
                  {}};
    if (!list.rows.empty() && screen_floors(draft.shell, draft.layout).timbers.empty())
        made.notes = said_once(list, "basis", "tag", words); // why there is no screen
    return made;
}

Schedule screen_schedule(const Draft &draft) {
    const Words words = draft.words();
    const roundlay::Table list = floor_table(draft.shell, draft.layout, words.language());
    Schedule made{
        on_paper(list, words, words.say("A screen of the floors, no approval"),
                 {"tag", "live_n_per_mm", "live_lb_per_ft", "live_deflection_mm", "live_deflection_in",
                  "span_over_deflection", "bending_mpa", "shear_mpa", "bearing_mpa", "bending_psi",
                  "shear_psi", "bearing_psi", "pulls_up_n", "pulls_up_lb"}),
        said_once(list, "basis", "tag", words)};
    std::erase_if(made.table.rows, [](const auto &row) { return row[1].empty(); }); // not screened
    if (!made.table.rows.empty())
        made.notes.push_back(words.say("Allowable stresses: %1.", words.word(no_allowable)));
    return made;
}

namespace {

constexpr double note_width = 160, between = 2; ///< mm

Table notes_of(const Schedule &schedule) {
    Table table;
    table.columns = {{"", Across::left, note_width}};
    for (const std::string &note : schedule.notes)
        table.rows.push_back({note});
    return table;
}

/// Titles of lists are in small letters, those of sheets begin with a large one.
std::string begun_large(std::string heading) {
    constexpr unsigned char lead = 0xC3, first = 0xA0, last = 0xBE, large = 0x20; // à to þ in UTF-8
    const auto at = [&](std::size_t i) { return static_cast<unsigned char>(heading[i]); };
    if (heading.empty()) return heading;
    if (at(0) >= 'a' && at(0) <= 'z') heading[0] = static_cast<char>(at(0) - large);
    if (heading.size() > 1 && at(0) == lead && at(1) >= first && at(1) <= last)
        heading[1] = static_cast<char>(at(1) - large);
    return heading;
}

/// In parts no wider than the sheet, where it may be parted.
std::vector<Table> parts_of(const Schedule &schedule, double width) {
    const Table &whole = schedule.table;
    if (schedule.parted_at == 0 || LaidTable(whole).width() <= width) return {whole};
    Table first = whole, rest = whole;
    rest.title = whole.continued;
    const auto part = [&](auto &first_cells, auto &rest_cells) {
        first_cells.resize(schedule.parted_at);
        rest_cells.erase(rest_cells.begin() + 1,
                         rest_cells.begin() + static_cast<std::ptrdiff_t>(schedule.parted_at));
    };
    part(first.columns, rest.columns);
    for (std::size_t i = 0; i < whole.rows.size(); ++i)
        part(first.rows[i], rest.rows[i]);
    return {first, rest};
}

/// One under the other, the first on top.
SharedBlock stacked(const std::vector<Table> &tables) {
    Block all{{0, 0, 0, 0}, {}};
    for (const Table &table : tables) {
        if (table.rows.empty()) continue;
        const Block next = LaidTable(table).drawn();
        const double top = all.room.y0 - (all.items.empty() ? 0 : between), low = top - next.room.height();
        all.room.x1 = std::max(all.room.x1, next.room.width());
        all.room.y0 = low;
        const Block there = placed(next, {0, low});
        all.items.insert(all.items.end(), there.items.begin(), there.items.end());
    }
    return std::make_shared<const Block>(std::move(all));
}

/// On the first of the pages that has room for all of it, else on a new one; parted only where it is higher
/// than that.
void put_schedule(std::vector<Page> &pages, PaperSize size, Schedule schedule, const Words &words) {
    for (Column &column : schedule.table.columns)
        column.heading = begun_large(std::move(column.heading));
    const double width = inner_area(size).width();
    std::vector<Table> tables = parts_of(schedule, width);
    for (Table &table : tables)
        table = narrowed(table, width);
    Table notes = notes_of(schedule);
    tables.push_back(notes);
    const SharedBlock whole = stacked(tables);
    for (Page &page : pages)
        if (page.put(whole)) return;
    Page fresh = empty_page(size);
    if (fresh.put(whole)) return pages.push_back(std::move(fresh));
    tables.pop_back();
    for (const Table &table : tables)
        put_on(pages, size, table);
    notes.title = words.say("%1: notes", schedule.table.title);
    notes.continued = words.say("%1, continued", notes.title);
    if (!notes.rows.empty()) put_on(pages, size, notes);
}

Titled schedules(const Draft &draft) {
    const PaperSize size = draft.size();
    const Words words = draft.words();
    std::vector<Page> pages{empty_page(size)};
    for (const auto &make :
         {opening_schedule, peg_schedule, bore_schedule, order_schedule, timber_schedule, screen_schedule}) {
        Schedule made = make(draft);
        if (!made.table.rows.empty()) put_schedule(pages, size, std::move(made), words);
    }
    const std::string title = words.say("Schedules");
    return {std::move(pages),
            {title, words.say("openings, pegs, sticks, floors"), title, "L-4", said_scale(nullptr, words),
             false, words.unit_note()},
            {title, "schedules", ""}};
}

} // namespace

Subject schedule_subject() {
    return {"schedules", [](const Draft &draft) { return std::vector{schedules(draft)}; }};
}

SheetSet schedule_set() {
    return {schedule_subject(), raising_subject()};
}

} // namespace roundlay::sheets
