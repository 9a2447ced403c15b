#include "modeler/window/desk/kernel_words.h"

#include "exporters/words/catalogue.h"
#include "modeler/window/desk/finding_words.h"
#include "modeler/window/desk/kernel_phrases.h"
#include "modeler/window/desk/words.h"

#include <QCoreApplication>
#include <QHash>
#include <QRegularExpression>
#include <QSet>
#include <algorithm>
#include <vector>

namespace roundlay::window {

namespace {

constexpr int most_holes = 9;
constexpr qsizetype most_kept = 20'000; // sentences: a shell has some thousands of different ones

/// A phrase with holes, ready to be recognised.
struct Phrase {
    const char *source;
    QRegularExpression pattern;
    std::vector<int> holes; ///< their numbers, from left to right
    qsizetype fixed = 0;    ///< letters outside the holes
};

/// A hole that comes twice must hold the same words twice.
Phrase phrase_of(const char *source) {
    static const QRegularExpression hole(QStringLiteral("%([1-9])"));
    Phrase phrase{source, {}, {}, 0};
    const QString words = QString::fromUtf8(source);
    QString pattern;
    qsizetype from = 0;
    for (auto found = hole.globalMatch(words); found.hasNext();) {
        const auto match = found.next();
        const int number = match.captured(1).toInt();
        const QString fixed = words.mid(from, match.capturedStart() - from);
        const auto before = std::find(phrase.holes.begin(), phrase.holes.end(), number);
        pattern += QRegularExpression::escape(fixed);
        if (before == phrase.holes.end()) {
            pattern += QStringLiteral("(.+?)");
            phrase.holes.push_back(number);
        } else {
            pattern += QStringLiteral("\\%1").arg(before - phrase.holes.begin() + 1);
        }
        phrase.fixed += fixed.size();
        from = match.capturedEnd();
    }
    pattern += QRegularExpression::escape(words.mid(from));
    phrase.fixed += words.size() - from;
    phrase.pattern.setPattern(QRegularExpression::anchoredPattern(pattern));
    return phrase;
}

const std::vector<const char *> &all_phrases() {
    static const std::vector<const char *> all = [] {
        std::vector<const char *> made;
        for (const auto &table : {kernel_phrases(), document_phrases()})
            made.insert(made.end(), table.begin(), table.end());
        return made;
    }();
    return all;
}

/// Those with the most fixed words first: "trimmed joist %1" before "%1 and %2".
const std::vector<Phrase> &phrases_with_holes() {
    static const std::vector<Phrase> all = [] {
        std::vector<Phrase> made;
        for (const char *source : all_phrases())
            if (QByteArrayView(source).contains('%')) made.push_back(phrase_of(source));
        std::stable_sort(made.begin(), made.end(),
                         [](const Phrase &a, const Phrase &b) { return a.fixed > b.fixed; });
        return made;
    }();
    return all;
}

bool stands_alone(const QString &english) {
    static const QSet<QString> all = [] {
        QSet<QString> made;
        for (const char *source : all_phrases())
            made.insert(QString::fromUtf8(source));
        return made;
    }();
    return all.contains(english);
}

QHash<QString, QString> &known() {
    static QHash<QString, QString> all;
    return all;
}

QString filled(const Phrase &phrase, const QRegularExpressionMatch &match, int depth);

QString look_up(const QString &english, int depth) {
    constexpr int deepest = 3;
    if (stands_alone(english)) return QCoreApplication::translate("kernel", english.toUtf8().constData());
    if (const auto word = translation_of(english.toStdString(), language())) return text(*word);
    if (depth > deepest) return english;
    for (const Phrase &phrase : phrases_with_holes())
        if (const auto match = phrase.pattern.match(english); match.hasMatch())
            return filled(phrase, match, depth);
    return english;
}

/// Hole by hole from the left: words put into one are never taken for another.
QString filled(const Phrase &phrase, const QRegularExpressionMatch &match, int depth) {
    QStringList holes(most_holes);
    for (std::size_t i = 0; i < phrase.holes.size(); ++i)
        holes[phrase.holes[i] - 1] = look_up(match.captured(static_cast<int>(i) + 1), depth + 1);
    const QString words = QCoreApplication::translate("kernel", phrase.source);
    QString made;
    for (qsizetype i = 0; i < words.size(); ++i) {
        const bool hole =
            words[i] == u'%' && i + 1 < words.size() && words[i + 1] >= u'1' && words[i + 1] <= u'9';
        if (hole)
            made += holes[words[++i].unicode() - u'1'];
        else
            made += words[i];
    }
    return made;
}

} // namespace

QString kernel_words(const QString &english) {
    if (english.isEmpty() || language() == Language::english) return english;
    if (known().size() > most_kept) known().clear();
    const auto found = known().constFind(english);
    if (found != known().constEnd()) return *found;
    return *known().insert(english, look_up(english, 0));
}

QString kernel_words(const std::string &english) {
    return kernel_words(QString::fromStdString(english));
}

} // namespace roundlay::window
