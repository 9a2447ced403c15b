#include "modeler/window/desk/typed_text.h"

#include <QStringList>
#include <algorithm>
#include <vector>

namespace roundlay::window {

namespace {

std::vector<std::string> lines_of(const std::string &text) {
    std::vector<std::string> lines;
    std::size_t begin = 0;
    for (std::size_t end = 0; (end = text.find('\n', begin)) != std::string::npos; begin = end + 1)
        lines.push_back(text.substr(begin, end - begin));
    lines.push_back(text.substr(begin));
    return lines;
}

bool ends_as_elsewhere(const std::vector<std::string> &lines) {
    return lines.size() > 1 && lines.front().ends_with('\r');
}

} // namespace

std::string with_typed(const std::string &stood, const QString &shown, const QString &typed) {
    const std::vector<std::string> old = lines_of(stood);
    const QStringList before = shown.split(u'\n'), after = typed.split(u'\n');
    if (before.size() != static_cast<qsizetype>(old.size()))
        return typed.toStdString(); // other ends of lines
    const qsizetype shorter = std::min(before.size(), after.size());
    qsizetype same = 0, same_below = 0;
    while (same < shorter && before[same] == after[same])
        ++same;
    while (same_below < shorter - same &&
           before[before.size() - 1 - same_below] == after[after.size() - 1 - same_below])
        ++same_below;
    std::string made;
    for (qsizetype i = 0; i < after.size(); ++i) {
        const bool below = i >= after.size() - same_below;
        const bool last = i + 1 == after.size();
        if (i < same || below)
            made += old[static_cast<std::size_t>(below ? i + before.size() - after.size() : i)];
        else
            made += after[i].toStdString() + (ends_as_elsewhere(old) && !last ? "\r" : "");
        if (!last) made += '\n';
    }
    return made;
}

} // namespace roundlay::window
