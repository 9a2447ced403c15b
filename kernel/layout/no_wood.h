// From where on there is nothing to cut.
#pragma once

namespace roundlay {

/// Wood thinner than this cannot be left standing: what would leave less is refused, in millimetres. What
/// leaves more, but less than practice asks for, is cut as it is stated and warned of. Common practice, no
/// source.
inline constexpr double no_wood = 10;

} // namespace roundlay
