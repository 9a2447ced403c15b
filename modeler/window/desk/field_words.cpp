#include "modeler/window/desk/field_words.h"

#include <QCoreApplication>
#include <QHash>
#include <QRegularExpression>

namespace roundlay::window {

namespace {

const QHash<QString, const char *> &labels() {
    static const QHash<QString, const char *> all = {
        {QStringLiteral("name"), QT_TRANSLATE_NOOP("Labels", "Name")},
        {QStringLiteral("thickness"), QT_TRANSLATE_NOOP("Labels", "Thickness")},
        {QStringLiteral("count"), QT_TRANSLATE_NOOP("Labels", "Rounds")},
        {QStringLiteral("pitch"), QT_TRANSLATE_NOOP("Labels", "Pitch")},
        {QStringLiteral("gap"), QT_TRANSLATE_NOOP("Labels", "Gap")},
        {QStringLiteral("slope"), QT_TRANSLATE_NOOP("Labels", "Slope")},
        {QStringLiteral("along"), QT_TRANSLATE_NOOP("Labels", "Along the log")},
        {QStringLiteral("across"), QT_TRANSLATE_NOOP("Labels", "Across it")},
        {QStringLiteral("overhang"), QT_TRANSLATE_NOOP("Labels", "Overhang")},
        {QStringLiteral("least_tail"), QT_TRANSLATE_NOOP("Labels", "Least tail")},
        {QStringLiteral("species"), QT_TRANSLATE_NOOP("Labels", "Wood")},
        {QStringLiteral("from_left"), QT_TRANSLATE_NOOP("Labels", "From the left")},
        {QStringLiteral("from_wall"), QT_TRANSLATE_NOOP("Labels", "From the wall")},
        {QStringLiteral("sill"), QT_TRANSLATE_NOOP("Labels", "Sill")},
        {QStringLiteral("width"), QT_TRANSLATE_NOOP("Labels", "Width")},
        {QStringLiteral("height"), QT_TRANSLATE_NOOP("Labels", "Height")},
        {QStringLiteral("length"), QT_TRANSLATE_NOOP("Labels", "Length")},
        {QStringLiteral("mark"), QT_TRANSLATE_NOOP("Labels", "Mark on the log")},
        {QStringLiteral("note"), QT_TRANSLATE_NOOP("Labels", "Note")},
        {QStringLiteral("butt_height"), QT_TRANSLATE_NOOP("Labels", "Butt height")},
        {QStringLiteral("tip_height"), QT_TRANSLATE_NOOP("Labels", "Tip height")},
        {QStringLiteral("butt_width"), QT_TRANSLATE_NOOP("Labels", "Butt width")},
        {QStringLiteral("tip_width"), QT_TRANSLATE_NOOP("Labels", "Tip width")},
        {QStringLiteral("diameter"), QT_TRANSLATE_NOOP("Labels", "Diameter of the stick")},
        {QStringLiteral("bow"), QT_TRANSLATE_NOOP("Labels", "Bow")},
        {QStringLiteral("level"), QT_TRANSLATE_NOOP("Labels", "Level of their tops")},
        {QStringLiteral("spacing"), QT_TRANSLATE_NOOP("Labels", "Spacing")},
        {QStringLiteral("first"), QT_TRANSLATE_NOOP("Labels", "First space")},
        {QStringLiteral("bearing"), QT_TRANSLATE_NOOP("Labels", "Bearing")},
        {QStringLiteral("pocket"), QT_TRANSLATE_NOOP("Labels", "Pocket")},
        {QStringLiteral("tail"), QT_TRANSLATE_NOOP("Labels", "Each cheek widens by")},
        {QStringLiteral("live_load"), QT_TRANSLATE_NOOP("Labels", "Live load")},
        {QStringLiteral("numbers_in"), QT_TRANSLATE_NOOP("Labels", "Numbers are in")},
        {QStringLiteral("dead_load"), QT_TRANSLATE_NOOP("Labels", "Dead load")},
    };
    return all;
}

/// Empty where no field is of that key.
QString label_of(const QString &key) {
    const char *label = labels().value(key);
    return label == nullptr ? QString() : QCoreApplication::translate("Labels", label);
}

QString quoted(const QString &label) {
    return QCoreApplication::translate("Labels", "“%1”").arg(label);
}

} // namespace

/// In English the key stands first, elsewhere perhaps last; names in quotes are the person's own.
QString of_the_field(const QString &problem, const QString &words) {
    static const QRegularExpression first(QStringLiteral("^\"([a-z_]+)\""));
    const QString key = first.match(problem).captured(1), label = label_of(key);
    if (label.isEmpty()) return words;
    const QRegularExpression named(QStringLiteral("[\"«]\\s*%1\\s*[\"»]").arg(key));
    QRegularExpressionMatch here = named.match(words);
    if (here.capturedStart() != 0)
        for (auto all = named.globalMatch(words); all.hasNext();)
            here = all.next();
    if (!here.hasMatch()) return words;
    return QString(words).replace(here.capturedStart(), here.capturedLength(),
                                  here.capturedStart() == 0 ? label : quoted(label));
}

QString with_labels(const QString &finding) {
    static const QRegularExpression key(QStringLiteral("\\b[a-z]+_[a-z]+\\b"));
    QString words = finding;
    qsizetype from = 0;
    for (auto found = key.match(words); found.hasMatch(); found = key.match(words, from)) {
        const QString label = label_of(found.captured());
        if (!label.isEmpty()) words.replace(found.capturedStart(), found.capturedLength(), quoted(label));
        from = found.capturedStart() + (label.isEmpty() ? found.capturedLength() : quoted(label).size());
    }
    return words;
}

} // namespace roundlay::window
