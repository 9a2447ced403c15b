// What the sources say, read from the sources themselves.
#pragma once

#include <map>
#include <string>

namespace roundlay::test {

/// The literal of every said("...") and say("...") in the rooms, and a file that has it.
std::map<std::string, std::string> said_texts();

} // namespace roundlay::test
