#include "exporters/sheets/book/book.h"

#include "exporters/sheets/book/parts.h"
#include "exporters/sheets/cut_sheet/cut_sheet.h"
#include "exporters/sheets/elevation/elevation.h"
#include "exporters/sheets/elevation/house_section.h"
#include "exporters/sheets/elevation/section.h"
#include "exporters/sheets/pattern/templates.h"
#include "exporters/sheets/plan/floor_plan.h"
#include "exporters/sheets/plan/round_plan.h"
#include "exporters/sheets/pole/story_pole.h"
#include "exporters/sheets/raising/raising.h"
#include "exporters/sheets/schedule/schedules.h"
#include "exporters/sheets/tag/tags.h"

namespace roundlay::sheets {
namespace {

void append(std::vector<Sheet> &all, std::vector<Sheet> more) {
    for (Sheet &sheet : more)
        all.push_back(std::move(sheet));
}

/// What tells a set of some pieces from one of others, and from that of all.
std::string of_these(const OnlyPieces &only) {
    std::string these;
    for (const Index<Piece> piece : only.value_or(std::vector<Index<Piece>>()))
        these += (these.empty() ? " of " : ", ") + std::to_string(piece.number() + 1);
    return these;
}

} // namespace

SheetSet drawing_set(const Layout &layout) {
    SheetSet set;
    if (!layout.walls.empty()) set.push_back(foundation_subject());
    for (const auto wall : layout.walls.indices())
        set.push_back(wall_subject(layout, wall));
    set.push_back(section_subject());
    if (!layout.pieces.empty()) set.push_back(house_section_subject());
    set.push_back(round_subject());
    for (const auto floor : layout.floors.indices())
        set.push_back(floor_subject(layout, floor));
    set.push_back(pole_subject());
    return set;
}

Subject tag_subject(OnlyPieces only) {
    const std::string about = "tags" + of_these(only);
    return {about, [only = std::move(only)](const Draft &d) { return tag_sheets(d, only); }};
}

Subject template_subject(OnlyPieces only) {
    const std::string about = "templates" + of_these(only);
    return {about, [only = std::move(only)](const Draft &d) {
                return template_sheets(d.shell, d.layout, d.options, only);
            }};
}

Subject full_size_pole_subject() {
    return {"story poles at full size",
            [](const Draft &d) { return full_size_poles(d.shell, d.layout, d.options); }};
}

SheetSet whole_set(const Layout &layout, bool stands) {
    SheetSet set = drawing_set(layout);
    set.push_back(schedule_subject());
    for (Subject &subject : cut_sheets_with_notes(layout))
        set.push_back(std::move(subject));
    set.push_back(raising_subject());
    if (stands) set.push_back(taking_down_subject());
    for (Subject &subject :
         SheetSet{packing_subject(), tag_subject(), template_subject(), full_size_pole_subject()})
        set.push_back(std::move(subject));
    return set;
}

void number_pages(std::vector<Sheet> &sheets) {
    const std::string of = " / " + std::to_string(sheets.size());
    for (std::size_t i = 0; i < sheets.size(); ++i) {
        constexpr double from_edge = 10, over_edge = 5;
        Text number;
        number.words = std::to_string(i + 1) + of;
        number.at = {sheets[i].size.width - from_edge, over_edge};
        number.across = Across::right;
        number.role = Role::page;
        sheets[i].items.emplace_back(number);
    }
}

Book bound_book(const Shell &shell, const SheetOptions &options, const BookWords &words,
                std::vector<Sheet> sheets) {
    Book book;
    const Voice voice({options.fields.language, shell.units});
    book.title = called(shell).empty() ? voice.say("Log shell") : called(shell);
    book.author = options.fields.creator;
    book.subject = voice.say("cover, index, legend and all sheets of the shell");
    book.language = tag_of(options.fields.language);
    const auto frame = [&](const Titled &titled) {
        return framed(titled, paper_for(shell, options), options, called(shell));
    };
    book.sheets = frame(cover_sheets(shell, options, words));
    append(book.sheets, frame(legend_sheets(shell, options)));
    append(book.sheets, frame(index_sheets(shell, options, sheets, book.sheets.size())));
    append(book.sheets, std::move(sheets));
    number_pages(book.sheets);
    return book;
}

} // namespace roundlay::sheets
