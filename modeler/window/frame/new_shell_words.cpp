#include "modeler/window/frame/new_shell_words.h"

#include "kernel/document/edit.h"
#include "kernel/document/length_bounds.h"
#include "modeler/window/desk/finding_words.h"
#include "modeler/window/desk/kernel_words.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/frame/new_shell.h"

#include <QSettings>

namespace roundlay::window {

namespace {

const QString units_key = QStringLiteral("new_shell/units");
const QString feet = QStringLiteral("imperial"), metres = QStringLiteral("metric"); // as the format has them

} // namespace

UnitSystem units_to_begin_with(const QLocale &locale) {
    const QString last = QSettings().value(units_key).toString();
    if (last == feet) return UnitSystem::imperial;
    if (last == metres) return UnitSystem::metric;
    return locale.measurementSystem() == QLocale::MetricSystem ? UnitSystem::metric : UnitSystem::imperial;
}

void remember_units(UnitSystem units) {
    QSettings().setValue(units_key, units == UnitSystem::metric ? metres : feet);
}

QString refusal(const Shell &shell, const Layout &layout) {
    for (const Problem &p : Document(write_document(shell), {}).read().problems)
        if (p.weight == Weight::error)
            return kernel_words(p.message) + QStringLiteral("; ") + kernel_words(p.expected);
    for (const Finding &f : layout.findings)
        if (f.weight == Weight::error) return sentence_text(f, shell.units);
    return {};
}

QString out_of_bounds(const QString &field, Length size, const LengthBounds &bounds, UnitSystem units) {
    const bool high_enough = bounds.low_is_in ? size.mm() >= bounds.low_mm : size.mm() > bounds.low_mm;
    if (high_enough && size.mm() <= bounds.high_mm) return {};
    const char *expected = units == UnitSystem::metric ? bounds.words : bounds.words_in_feet;
    return NewShellDialog::tr("%1: %2 is out of bounds; expected %3")
        .arg(field, length_text(size.mm(), units), kernel_words(QString::fromUtf8(expected)));
}

/// A wall under a metre is no part of a house that people walk into.
QString doubt_of_wall(Length length, UnitSystem units) {
    constexpr double tiny = 1000; // mm
    if (length.mm() >= tiny) return {};
    return NewShellDialog::tr("%1 is short for a wall.").arg(length_text(length.mm(), units)) + u' ' +
           bare_number_words(units);
}

} // namespace roundlay::window
