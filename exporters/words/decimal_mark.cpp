#include "exporters/words/decimal_mark.h"

#include <algorithm>

namespace roundlay {

std::string with_decimal_mark(std::string digits, Language language) {
    if (language == Language::french) std::ranges::replace(digits, '.', ',');
    return digits;
}

} // namespace roundlay
