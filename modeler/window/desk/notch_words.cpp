#include "modeler/window/desk/notch_words.h"

#include "exporters/words/voice.h"
#include "modeler/window/desk/finding_words.h"
#include "modeler/window/desk/words.h"

namespace roundlay::window {

QString notch_word(NotchKind kind) {
    return text(Voice(language(), {}).word(name_of(kind)));
}

QStringList notch_words() {
    QStringList words;
    for (const KindOfNotch &each : all_kinds_of_notch)
        words += notch_word(each.kind);
    return words;
}

} // namespace roundlay::window
