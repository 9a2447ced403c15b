#include "kernel/shell/weight_words.h"

namespace roundlay {

const char *name_of(Weight weight) {
    switch (weight) {
    case Weight::error:
        return "error";
    case Weight::warning:
        return "warning";
    case Weight::note:
        break;
    }
    return "note";
}

} // namespace roundlay
