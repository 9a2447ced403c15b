#include "exporters/sheets/frame/plain_sheets.h"

#include "exporters/sheets/frame/title_block.h"

namespace roundlay::sheets {

std::vector<Sheet> plainly_framed(const std::vector<std::vector<Item>> &pages, PaperSize size,
                                  const PlainSheets &about, const Words &words) {
    const Rect frame = drawing_area(size);
    std::vector<Sheet> sheets;
    for (const std::vector<Item> &items : pages) {
        const std::size_t number = sheets.size() + 1;
        Sheet sheet;
        sheet.size = size;
        sheet.drawing = frame;
        sheet.subject = about.subject;
        sheet.title = about.subject;
        if (pages.size() > 1) sheet.title += words.say(", %1 of %2", number, pages.size());
        sheet.chapter = about.chapter;
        sheet.anchor = about.anchor + ":" + std::to_string(number);
        sheet.items.emplace_back(
            Path{{{frame.x0, frame.y0}, {frame.x1, frame.y0}, {frame.x1, frame.y1}, {frame.x0, frame.y1}},
                 true,
                 Line::frame,
                 ""});
        about.head(sheet.items, number);
        sheet.items.insert(sheet.items.end(), items.begin(), items.end());
        sheets.push_back(std::move(sheet));
    }
    return sheets;
}

} // namespace roundlay::sheets
