#include "exporters/sheets/pdf/finish.h"

#include "exporters/sheets/pdf/packed.h"

#include <algorithm>

namespace roundlay::sheets::pdf {
namespace {

std::vector<PageLink> links_of(const Book &book) {
    std::vector<PageLink> found;
    for (std::size_t page = 0; page < book.sheets.size(); ++page)
        for (const Item &item : book.sheets[page].items) {
            const Link *link = std::get_if<Link>(&item);
            if (link == nullptr) continue;
            const auto target = std::find_if(book.sheets.begin(), book.sheets.end(),
                                             [&](const Sheet &s) { return s.anchor == link->to; });
            if (target == book.sheets.end()) continue;
            const Rect &box = link->box;
            found.push_back({page,
                             {box.x0, box.y0, box.x1, box.y1},
                             static_cast<std::size_t>(target - book.sheets.begin())});
        }
    return found;
}

} // namespace

std::string finished(const std::string &pdf, const Book &book) {
    return packed(pdf, links_of(book), book.language);
}

} // namespace roundlay::sheets::pdf
