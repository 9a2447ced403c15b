// The house as an IFC file tells it, put together of what is laid out. Private to this room.
#pragma once

#include "exporters/building/building.h"
#include "exporters/building/house.h"

namespace roundlay::building {

House house_of(const BuildingSource &source);

} // namespace roundlay::building
