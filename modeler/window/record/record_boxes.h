// The boxes of one log's record, as values: what each is called, what stands in it, and what typing into it
// changes.
#pragma once

#include "kernel/record/found_log.h"

#include <QString>
#include <QStringList>
#include <array>
#include <functional>
#include <string>
#include <variant>
#include <vector>

namespace roundlay::window {

struct NumberBox {
    /// Null where it is of a part that is not there; with `make` that part is put in.
    std::function<NotedLength *(FoundLog &log, bool make)> at;
};
struct WordsBox {
    std::function<std::string(const FoundLog &log)> get;
    std::function<void(FoundLog &log, const std::string &words)> set;
};
struct FacesBox {
    std::function<std::vector<FoundFace>(const FoundLog &log)> get;
    std::function<void(FoundLog &log, const std::vector<FoundFace> &faces)> set;
};
/// One of a few words; index 0 is none of them.
struct ChoiceBox {
    QStringList words;
    std::function<int(const FoundLog &log)> get;
    std::function<void(FoundLog &log, int choice)> set;
};

struct RecordBox {
    QString name; ///< of its widget, and the same in every language
    QString label;
    std::variant<NumberBox, WordsBox, FacesBox, ChoiceBox> is;
};

/// Names of the two ends of the log at hand, where its boxes look them up. Empty: nobody knows.
using EndNames = std::array<std::string, 2>;

struct RecordGroup {
    QString name, title;
    std::vector<RecordBox> boxes;
};

std::vector<RecordGroup> groups_of_log(); ///< that are there once
std::vector<RecordBox> boxes_of_end(int end, const EndNames &names);

/// Parts of which a log has as many as were found. The first box of each tells what it is: the others wait
/// for it.
struct RecordList {
    QString name, title;
    std::function<std::size_t(const FoundLog &log)> count;
    std::function<std::vector<RecordBox>(std::size_t at)> boxes;
};
std::vector<RecordList> lists_of_log();

/// Takes out parts of which nothing is said any more.
void drop_blank_parts(FoundLog &log);

} // namespace roundlay::window
