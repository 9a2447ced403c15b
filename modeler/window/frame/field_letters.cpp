#include "modeler/window/frame/field_letters.h"

#include <QAbstractButton>
#include <QAction>
#include <QLabel>
#include <QMenuBar>
#include <QSet>
#include <vector>

namespace roundlay::window {

namespace {

using Letters = QSet<QChar>;

/// Of `words` the letter behind a single '&'; null where there is none.
QChar letter_of(const QString &words) {
    for (qsizetype i = 0; i + 1 < words.size(); ++i) {
        if (words[i] != u'&') continue;
        if (words[i + 1] != u'&') return words[i + 1].toLower();
        ++i; // two of them are one that is read
    }
    return {};
}

QString without_letter(QString words) {
    for (qsizetype i = 0; i + 1 < words.size(); ++i)
        if (words[i] == u'&' && words[i + 1] != u'&')
            return words.remove(i, 1);
        else if (words[i] == u'&')
            ++i;
    return words;
}

/// With the first letter that nobody has; accents are on no key of their own everywhere.
QString with_free_letter(const QString &words, Letters &taken) {
    const QString bare = without_letter(words);
    for (qsizetype i = 0; i < bare.size(); ++i) {
        const QChar letter = bare[i].toLower();
        if (letter < u'a' || letter > u'z' || taken.contains(letter)) continue;
        taken.insert(letter);
        return QString(bare).insert(i, u'&');
    }
    return bare;
}

/// The words of a label that leads to a field, or of a button; null elsewhere.
struct Worded {
    QLabel *label = nullptr;
    QAbstractButton *button = nullptr;
    QString text() const { return label != nullptr ? label->text() : button->text(); }
    void set(const QString &words) const {
        label != nullptr ? label->setText(words) : button->setText(words);
    }
};

std::vector<Worded> lettered(const QWidget &inside) {
    std::vector<Worded> all;
    for (QWidget *each : inside.findChildren<QWidget *>()) {
        Worded worded{qobject_cast<QLabel *>(each), qobject_cast<QAbstractButton *>(each)};
        if (worded.label != nullptr && worded.label->buddy() == nullptr) continue;
        if ((worded.label != nullptr || worded.button != nullptr) && !letter_of(worded.text()).isNull())
            all.push_back(worded);
    }
    return all;
}

} // namespace

void leave_letters_to(const QMenuBar &menus, const QWidget &inside) {
    Letters of_menus;
    for (const QAction *menu : menus.actions())
        of_menus.insert(letter_of(menu->text()));
    const std::vector<Worded> all = lettered(inside);
    Letters taken = of_menus; // those that are right as they are stay
    for (const Worded &worded : all)
        taken.insert(letter_of(worded.text()));
    for (const Worded &worded : all)
        if (of_menus.contains(letter_of(worded.text()))) worded.set(with_free_letter(worded.text(), taken));
}

} // namespace roundlay::window
