#include "exporters/step/library_route.h"

#include <stdexcept>
namespace roundlay::step {
std::string library_data_of(const ProductTree &, const std::vector<const Body *> &, const Extras &) {
    throw std::runtime_error("x");
}
} // namespace roundlay::step
