#include "exporters/report/parts.h"
#include "exporters/report/photograph.h"
#include "exporters/sheets/drawing/text.h"

#include <algorithm>
#include <map>

namespace roundlay::sheets {

namespace {

constexpr double photo_width = 84, photo_height = 63; ///< mm of paper, at most; two in a row

struct Named {
    std::string file;
    std::vector<std::string> tags;
};

/// Each file once, in the order of the record.
std::vector<Named> named_in(const Record &record) {
    std::vector<Named> all;
    for (const FoundLog &log : record.logs)
        for (const std::string &file : log.photographs) {
            auto known = std::ranges::find(all, file, &Named::file);
            if (known == all.end()) known = all.insert(all.end(), {file, {}});
            known->tags.push_back(log.tag);
        }
    return all;
}

void add_lines(Block &block, const std::string &text, double &y, bool bold) {
    for (const std::string &line : wrapped(text, photo_width - 2, least_lettering, bold)) {
        y -= 4.2;
        block.items.emplace_back(lettered(line, {1, y}, least_lettering, bold, Role::note));
    }
}

void add_box(Block &block, const Rect &box) {
    block.items.emplace_back(Path{
        {{box.x0, box.y0}, {box.x1, box.y0}, {box.x1, box.y1}, {box.x0, box.y1}}, true, Line::dimension, ""});
}

/// The picture, or why there is none, and under it its name and what it shows.
Block photo_block(const Named &photo, const std::filesystem::path &folder, const Words &words) {
    Block block;
    double y = 0;
    const auto read = read_photograph(folder, photo.file);
    if (const auto *picture = std::get_if<Photograph>(&read)) {
        const double scale = std::min(photo_width / picture->width, photo_height / picture->height);
        const Rect box{0, -picture->height * scale, picture->width * scale, 0};
        block.items.emplace_back(Picture{box, picture->png, photo.file});
        add_box(block, box);
        y = box.y0;
    } else {
        constexpr double tall = 20;
        add_box(block, {0, -tall, photo_width, 0});
        double line = -4;
        add_lines(block, words.say("Not shown: %1", words.words(std::get<Said>(read))), line, false);
        y = -tall;
    }
    add_lines(block, photo.file, y, true);
    add_lines(block, joined(photo.tags), y, false);
    block.room = {0, y - 2, photo_width, 0};
    return block;
}

} // namespace

void photograph_part(ReportPages &pages, const Draft &, const ReportSource &source) {
    const std::vector<Named> photos = named_in(*source.record);
    if (photos.empty()) return;
    const Words &words = pages.words();
    pages.begin_part(words.say("Photographs"), "report-photographs");
    std::vector<Block> blocks;
    for (const Named &photo : photos)
        blocks.push_back(photo_block(photo, source.folder, words));
    pages.add_side_by_side(std::move(blocks));
    pages.add_text(words.say("Shown from where they lie, by the names that the record has; the files "
                             "themselves stay with whoever took them."));
}

} // namespace roundlay::sheets
