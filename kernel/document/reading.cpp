#include "kernel/document/reading.h"

#include "kernel/document/limits.h"
#include "kernel/document/said_text.h"

#include <algorithm>

namespace roundlay {

void Reading::report(Weight weight, const Place &place, const Said &said, const LengthStyle &style) {
    keep({weight, file_, place, english_of(said, style), {}, with_quoted_names(said), style.system});
}

void Reading::keep(Problem problem) {
    const bool error = problem.weight == Weight::error;
    const std::size_t of_weight = error ? errors_ : problems_.size() - errors_;
    if (of_weight < limits::problems) { // many warnings hide no error
        errors_ += error ? 1 : 0;
        problems_.push_back(std::move(problem));
        return;
    }
    ++left_out_;
    left_out_error_ = left_out_error_ || error;
}

Problems Reading::take_problems() {
    std::stable_sort(problems_.begin(), problems_.end(),
                     [](const Problem &a, const Problem &b) { return a.place.offset < b.place.offset; });
    if (left_out_ > 0)
        problems_.push_back({left_out_error_ ? Weight::error : Weight::warning,
                             file_,
                             {},
                             std::to_string(left_out_) + " further problems are not listed",
                             {}});
    return std::move(problems_);
}

} // namespace roundlay
