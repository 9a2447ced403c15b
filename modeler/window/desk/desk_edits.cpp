// Edits of the shell and of the record, stated back into the text: where they go, and what is refused.
#include "kernel/document/restate.h"
#include "kernel/document/restate_state.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/field_words.h"
#include "modeler/window/desk/finding_words.h"
#include "modeler/window/desk/problem_words.h"
#include "modeler/window/desk/words.h"

#include <algorithm>

namespace roundlay::window {

ReadPtr read_as_seen(const SeenDocument &document) {
    auto read = std::make_shared<ReadResult>(read_document(document.text(), document.file(), document.state));
    const bool no_such = !document.state.empty() && !read->shell && read->states.empty();
    return no_such ? std::make_shared<ReadResult>(document.read()) : read;
}

std::string state_seen(const SeenDocument &document, const ReadResult &read) {
    const bool own = read.states.empty() || read.states.front().name == document.state;
    const bool there = std::ranges::find(read.states, document.state, &HouseState::name) != read.states.end();
    return own || !there ? std::string() : document.state;
}

namespace {

const HouseState *state_named(const ReadResult &read, const std::string &name) {
    const auto at = std::ranges::find(read.states, name, &HouseState::name);
    return at == read.states.end() ? nullptr : &*at;
}

} // namespace

ReadPtr Desk::read(const Document &document) const {
    if (known_.read && known_.text == document.text() && known_.state == seen_) return known_.read;
    SeenDocument asked(document);
    asked.state = seen_;
    known_ = {document.text(), seen_, read_as_seen(asked)};
    return known_.read;
}

void Desk::see(const std::string &state) {
    if (before_drag_) cancel();
    const ReadPtr now = reading();
    const bool own =
        now->states.empty() || state == now->states.front().name || state_named(*now, state) == nullptr;
    const std::string wanted = own ? std::string() : state;
    if (wanted == seen_) return;
    seen_ = wanted;
    work_out();
    emit seen_changed();
}

QString Desk::unreadable() {
    return tr("The text has errors; put them right first.");
}

Desk::Made Desk::edited(const Document &from, const ShellEdit &change) {
    const ReadPtr before = read(from);
    return before->shell ? stated(from, *before, change(*before->shell)) : Made(unreadable());
}

Desk::Made Desk::stated(const Document &from, const ReadResult &before, const Fitted &after) {
    if (!after)
        return after.why
                   ? tr("That does not fit there. %1").arg(sentence_text(*after.why, before.shell->units))
                   : tr("That does not fit there.");
    const HouseState *state = seen_.empty() ? nullptr : state_named(before, seen_);
    if (state != nullptr && state->measured)
        return tr("State %1 shows the house as it was measured. Its numbers are changed in the panel Record, "
                  "its plan in the state %2.")
            .arg(text(state->name), text(before.states.front().name));
    auto next = state != nullptr ? restated_in_state(from, state->name, *before.shell, *after.shell)
                                 : restated(from, *before.shell, *after.shell);
    if (const auto *problem = std::get_if<Problem>(&next))
        return of_the_field(text(problem->message), problem_text(*problem));
    return taken(std::get<Document>(std::move(next)));
}

/// What the document does not take would stand in the way of every edit after it.
Desk::Made Desk::taken(Document made) {
    const ReadPtr now = read(made);
    if (now->shell) return made;
    const Problem *error = first_error_of(now->problems);
    return error != nullptr ? of_the_field(text(error->message), problem_text(*error))
                            : tr("That does not fit there.");
}

bool Desk::put(const QString &name, const Made &made) {
    if (const auto *document = std::get_if<Document>(&made)) return replace_text(name, document->text());
    emit refused(std::get<QString>(made));
    return false;
}

bool Desk::edit(const QString &name, const ShellEdit &change) {
    if (before_drag_) cancel();
    return put(name, edited(document_, change));
}

bool Desk::edit_record(const QString &name, const RecordEdit &change) {
    if (before_drag_) cancel();
    return put(name, recorded(document_, change));
}

Desk::Made Desk::recorded(const Document &from, const RecordEdit &change) {
    const ReadPtr before = read(from);
    if (!before->shell) return unreadable();
    const auto after = change(before->record);
    if (!after) return tr("That log is not in the record any more.");
    auto next = restated(from, before->record, *after);
    if (const auto *problem = std::get_if<Problem>(&next)) return problem_text(*problem);
    return taken(std::get<Document>(std::move(next)));
}

bool Desk::begin_states() {
    if (before_drag_) cancel();
    const ReadPtr before = read(document_);
    if (before->shell && before->states.size() > 1) return true;
    return put(tr("Record an old house"), with_states(document_));
}

Desk::Made Desk::with_states(const Document &from) {
    const ReadPtr before = read(from);
    if (!before->shell) return unreadable();
    Shell named = *before->shell; // of several states the document's own must say which it is
    if (named.state.empty()) named.state = tr("as planned").toStdString();
    auto next = restated(from, *before->shell, named);
    if (const auto *problem = std::get_if<Problem>(&next)) return problem_text(*problem);
    const Document &own = std::get<Document>(next);
    const std::string found = tr("as found").toStdString(), wanted = tr("as it shall stand").toStdString();
    const std::string text = own.text() + (own.text().ends_with('\n') ? "\n" : "\n\n") +
                             "[[state]]\nname = \"" + found + "\"\nmeasured = true\n\n[[state]]\nname = \"" +
                             wanted + "\"\non = \"" + found + "\"\n";
    return taken(Document(text, own.file()));
}

} // namespace roundlay::window
