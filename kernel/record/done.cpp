#include "kernel/record/done.h"

#include <algorithm>

namespace roundlay {

namespace {

bool counts_for(const Done &entry, const Done &done) {
    return entry.what == done.what &&
           (entry.state.empty() || done.state.empty() || entry.state == done.state);
}

bool names(const Done &entry, const std::string &tag) {
    return std::ranges::find(entry.pieces, tag) != entry.pieces.end();
}

bool is_ticked(const std::vector<Done> &all, const Done &done, const std::string &tag) {
    return std::ranges::any_of(
        all, [&](const Done &entry) { return counts_for(entry, done) && names(entry, tag); });
}

bool says_the_same(const Done &a, const Done &b) {
    return a.what == b.what && a.state == b.state && a.by == b.by && a.on == b.on && a.note == b.note;
}

void add(std::vector<Done> &all, const Done &done, const std::string &tag) {
    if (all.empty() || !says_the_same(all.back(), done) || all.back().pieces.size() >= pieces_of_one_entry) {
        all.push_back(done);
        all.back().pieces.clear();
    }
    all.back().pieces.push_back(tag);
}

} // namespace

std::vector<std::string> tick(std::vector<Done> &all, const Done &done) {
    std::vector<std::string> before;
    for (const std::string &tag : done.pieces)
        if (is_ticked(all, done, tag))
            before.push_back(tag);
        else
            add(all, done, tag);
    return before;
}

std::vector<std::string> take_back(std::vector<Done> &all, const Done &done) {
    std::vector<std::string> never;
    for (const std::string &tag : done.pieces)
        if (!is_ticked(all, done, tag)) never.push_back(tag);
    for (Done &entry : all)
        if (counts_for(entry, done))
            std::erase_if(entry.pieces, [&](const std::string &tag) { return names(done, tag); });
    std::erase_if(all, [](const Done &entry) { return entry.pieces.empty(); });
    return never;
}

} // namespace roundlay
