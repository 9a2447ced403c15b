#include "modeler/window/desk/finding_words.h"

#include "exporters/words/words.h"
#include "modeler/window/desk/field_words.h"

#include <QCoreApplication>

namespace roundlay::window {

Language language() {
    //: The language of this translation, by its English name; those that the catalogue of words has are
    //: known.
    const QString name = QCoreApplication::translate("Language", "English");
    return name == QStringLiteral("French") ? Language::french : Language::english;
}

QString in_words(const Said &said, UnitSystem units) {
    return QString::fromStdString(words_of(said, {language(), units}));
}

QString place_text(const Finding &finding, UnitSystem units) {
    return QString::fromStdString(words_of(finding.about, {language(), units}));
}

QString message_text(const Finding &finding, UnitSystem units) {
    return with_labels(QString::fromStdString(message_of(finding, {language(), units})));
}

QString sentence_text(const Finding &finding, UnitSystem units) {
    return with_labels(QString::fromStdString(sentence_of(finding, {language(), units})));
}

} // namespace roundlay::window
