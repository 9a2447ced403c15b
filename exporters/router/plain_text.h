// What a control that knows nothing but capital letters and digits may be given to skip. Private to this
// room.
#pragma once

#include <string>
#include <string_view>

namespace roundlay {

/// Lines of comments in ASCII, each "(…)" and at most 76 letters long. Letters with accents lose them; what
/// has no likeness, and what would end the comment or speak to a control, becomes another sign.
std::string as_comment(std::string_view text);

} // namespace roundlay
