#include "kernel/record/check_names.h"

#include <set>
#include <tuple>

namespace roundlay {

void tell_ticked_twice(const Record &record, std::vector<RecordProblem> &problems) {
    std::set<std::tuple<Deed, std::string, std::string>> ticked;
    for (std::size_t i = 0; i < record.done.size(); ++i)
        for (const std::string &tag : record.done[i].pieces)
            if (!ticked.emplace(record.done[i].what, record.done[i].state, tag).second)
                problems.push_back({false, "done[" + std::to_string(i) + "].pieces",
                                    said("piece %1 is ticked twice for the same thing, and counts once: take "
                                         "one of the two out",
                                         tag)});
}

} // namespace roundlay
