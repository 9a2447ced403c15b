// Places along found logs that no log reaches to.
#include "kernel/fabric/along_log.h"
#include "kernel/fabric/fabric.h"
#include "kernel/measured/found_piece.h"
#include "kernel/record/numbers.h"
#include "kernel/record/places.h"

namespace roundlay {

namespace {

/// Of one log whose length the layout knows and nobody has taped: what was taped, the record holds itself.
class PastLog {
  public:
    PastLog(const Record &record, const Layout &layout, std::size_t log, const LogRun &run,
            std::vector<DecisionProblem> &problems)
        : record_(record), layout_(layout), log_(record.logs[log]), path_(log_path(log)), run_(run),
          problems_(problems) {}

    void look() {
        for (const PlaceAlong &place : places_along(log_))
            if (lies_past(record_, layout_, log_, place.number)) tell(path_of(place), place.number);
    }

  private:
    void tell(const std::string &at, const NotedLength &place) {
        const double a = run_.dimension(run_.log.from), b = run_.dimension(run_.log.to);
        problems_.push_back(
            {path_ + "." + at,
             said(
                 "log %1: %2 from %3 was noted, and the log lies from %4 to %5 there: look at the number and "
                 "the corner again; it is drawn nowhere",
                 log_.tag, amount_of(place), log_.zero, in_mm(std::max(0.0, std::min(a, b))),
                 in_mm(std::max(a, b)))});
    }

    static Amount amount_of(const NotedLength &place) { return in_mm(place.value->mm()); }

    const Record &record_;
    const Layout &layout_;
    const FoundLog &log_;
    std::string path_;
    const LogRun &run_;
    std::vector<DecisionProblem> &problems_;
};

} // namespace

std::vector<DecisionProblem> places_past_log(const Record &record, const Layout &found) {
    std::vector<DecisionProblem> problems;
    for (std::size_t i = 0; i < record.logs.size(); ++i) {
        const FoundLog &log = record.logs[i];
        if (!log.place.timber.empty() && !found.pieces.empty() && pieces_at(found, log.place).empty())
            problems.push_back(
                {log_path(i) + ".timber",
                 said("log %1 is told to be timber %2, and no floor of the house as it was found "
                      "has one of that tag: mend the tag, or the floor",
                      log.tag, log.place.timber)});
        if (log.length.value) continue;
        if (const auto run = run_of(record, found, log)) PastLog(record, found, i, *run, problems).look();
    }
    return problems;
}

} // namespace roundlay
