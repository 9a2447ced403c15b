// The document's keys, as the fields of the window are labelled: who edits there need not know the keys.
#pragma once

#include <QString>

namespace roundlay::window {

/// What the document's reader says of a key (`"from_left" of opening "door 1" is out of bounds`), of the
/// field; `words` are the same in the person's language.
QString of_the_field(const QString &problem, const QString &words);

/// A finding that names a key in the middle of its sentence (`no live_load is stated`).
QString with_labels(const QString &finding);

} // namespace roundlay::window
