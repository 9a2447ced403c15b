// What can be laid out at all, and so be stated.
#pragma once

namespace roundlay {

inline constexpr int most_rounds = 200; ///< twice as many as any wall of logs has

} // namespace roundlay
