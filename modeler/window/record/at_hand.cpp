#include "modeler/window/record/at_hand.h"

#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/record/record_boxes.h"

#include <algorithm>
#include <utility>

namespace roundlay::window {

namespace {

/// Whoever refers to the log by its tag goes on doing so.
void call_anew(Record &record, const std::string &before, const std::string &now) {
    for (FoundLog &log : record.logs) {
        std::ranges::replace(log.scarfed_to, before, now);
        if (log.replaces == before) log.replaces = now;
    }
}

std::optional<Record> with_change(const Record &record, const LogAtHand &log, const AtHand::Change &change) {
    Record next = record;
    auto at = std::ranges::find(next.logs, log.found.tag, &FoundLog::tag);
    if (at == next.logs.end()) {
        if (log.recorded) return {};
        next.logs.push_back(log.found);
        at = next.logs.end() - 1;
    }
    const std::string before = at->tag;
    change(*at);
    drop_blank_parts(*at);
    if (const std::string now = at->tag; now != before) call_anew(next, before, now);
    return next;
}

} // namespace

AtHand::AtHand(Desk &desk, Selection &selection, QObject *parent)
    : QObject(parent), desk_(desk), selection_(selection) {
    connect(&desk_, &Desk::began, this, [this] { tag_.clear(); });
    for (const auto signal :
         {&Desk::text_changed, &Desk::state_changed, &Desk::seen_changed, &Desk::file_changed})
        connect(&desk_, signal, this, &AtHand::changed);
    connect(&selection_, &Selection::changed, this, &AtHand::changed);
}

/// Only where the record or the layout has changed.
void AtHand::look_again() {
    const ReadPtr read = desk_.reading();
    const StatePtr &standing = desk_.standing();
    if (of_read_ == read && of_state_ == standing) return;
    of_read_ = read;
    of_state_ = standing;
    logs_ = logs_at_hand(read->record, standing ? standing->job.layout : Layout());
    // Nobody knows where a log of another state was found.
    if (!desk_.seen().empty()) std::erase_if(logs_, [](const LogAtHand &log) { return !log.recorded; });
    call(tag_);
}

void AtHand::call(const std::string &tag) {
    tag_ = tag;
    const auto at = log_tagged(logs_, tag_);
    if (at && desk_.standing()) propose(logs_[*at], desk_.standing()->job.layout, desk_.units());
}

/// The log that lies where the selection is; where that tells nothing, the one that was at hand.
void AtHand::pick() {
    look_again();
    const auto now = log_tagged(logs_, tag_);
    const Chosen &chosen = selection_.chosen();
    const auto piece = desk_.standing() && chosen.kind == Chosen::Kind::piece
                           ? piece_tagged(desk_.standing()->job.layout, chosen.name)
                           : std::nullopt;
    if (piece) {
        if (now && std::ranges::find(logs_[*now].pieces, *piece) != logs_[*now].pieces.end()) return;
        const auto at = log_of_piece(logs_, *piece);
        return call(at ? logs_[*at].found.tag : std::string());
    }
    if (chosen.kind != Chosen::Kind::wall || (now && logs_[*now].wall == chosen.name)) return;
    const auto first = std::ranges::find(logs_, chosen.name, &LogAtHand::wall);
    if (first != logs_.end()) call(first->found.tag);
}

const std::vector<LogAtHand> &AtHand::logs() {
    pick();
    return logs_;
}

std::optional<std::size_t> AtHand::place() {
    pick();
    return log_tagged(logs_, tag_);
}

const LogAtHand *AtHand::log() {
    const auto at = place();
    return at ? &logs_[*at] : nullptr;
}

const Chosen &AtHand::chosen() const {
    return selection_.chosen();
}

const std::string &AtHand::tag() {
    pick();
    return tag_;
}

void AtHand::take(std::size_t at) {
    if (at >= logs().size()) return;
    const LogAtHand log = logs_[at];
    call(log.found.tag);
    if (!log.pieces.empty() && desk_.standing())
        return selection_.choose_piece(desk_.standing()->job.layout, log.pieces.front());
    if (selection_.chosen().kind != Chosen::Kind::nothing)
        selection_.clear(); // it is elsewhere
    else
        emit changed();
}

bool AtHand::take_opening(int step) {
    if (selection_.chosen().kind != Chosen::Kind::opening || !desk_.drawn()) return false;
    const Shell &shell = desk_.drawn()->job.shell;
    const int next = selection_.chosen().opening + step;
    if (next < 0 || next >= static_cast<int>(shell.openings.size())) return false;
    selection_.choose_opening(shell, next);
    return true;
}

std::optional<std::string> AtHand::tag_of(Index<Piece> piece) {
    look_again();
    const auto at = log_of_piece(logs_, piece);
    return at ? std::optional(logs_[*at].found.tag) : std::nullopt;
}

bool AtHand::edit(const QString &name, const LogAtHand &log, const Change &change) {
    FoundLog after = log.found;
    change(after);
    const std::string before = tag_;
    if (tag_ == log.found.tag) tag_ = after.tag; // what is shown at once is the log anew
    const bool made =
        desk_.edit_record(name, [&](const Record &record) { return with_change(record, log, change); });
    if (!made) tag_ = before;
    return made;
}

} // namespace roundlay::window
