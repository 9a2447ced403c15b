// A number of a record that was read.
#pragma once

#include "kernel/record/noted_length.h"

#include <string>

namespace roundlay::test {

inline NotedLength noted(double mm) {
    NotedLength number;
    number.written = std::to_string(mm), number.value = Length::mm(mm);
    return number;
}

} // namespace roundlay::test
