// Tests of the window on a house that stands, recorded.
#pragma once

#include "tests/window/support/window_test.h"

namespace roundlay::window {

class OldHouseTest : public WindowTest {
  protected:
    /// The old house of the documents' tests, with more behind it.
    QString old_house(const QByteArray &more = {}) const {
        const QString demo = QStringLiteral(ROUNDLAY_DEMOS "/../tests/document/documents/old-house.roundlay");
        return written(QStringLiteral("old-house.roundlay"), QByteArray::fromStdString(text_of(demo)) + more);
    }
};

} // namespace roundlay::window
