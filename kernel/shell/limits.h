// What can be laid out at all, and so be stated.
#pragma once

namespace roundlay {

inline constexpr int most_rounds = 200; ///< twice as many as any wall of logs has
/// One log over another in a wall: one more where it begins with a half log.
inline constexpr int most_logs_high = most_rounds + 1;

inline constexpr int most_openings = 500;
inline constexpr int most_logs_in_round = most_openings + 1; ///< that openings can part one round into

} // namespace roundlay
