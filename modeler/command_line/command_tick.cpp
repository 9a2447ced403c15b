#include "exporters/lists/progress_words.h"
#include "exporters/registry/shared_order.h"
#include "kernel/document/restate.h"
#include "kernel/document/words.h"
#include "kernel/measure/nearest_name.h"
#include "modeler/command_line/command.h"
#include "modeler/command_line/decisions.h"
#include "modeler/command_line/load.h"
#include "modeler/command_line/save.h"
#include "modeler/command_line/values.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <cstdio>

namespace roundlay {

namespace {

struct TickOptions {
    DocumentWords document;
    std::string what, by, on, note, to = "-";
    std::vector<std::string> pieces;
    bool take_back = false, force = false;
};

Deed deed_called(const std::string &typed) {
    std::vector<std::string> names;
    for (const Word<Deed> &each : words<Deed>())
        names.emplace_back(each.text);
    return *find_word<Deed>(one_of("deed", typed, names));
}

std::string no_piece(const Layout &layout, const std::string &name) {
    std::vector<std::string> tags;
    for (const Piece &piece : layout.pieces)
        tags.push_back(piece.tag);
    const auto near = nearest_name(name, tags);
    return "there is no piece \"" + name + "\" in this shell; " +
           (near ? "did you mean \"" + *near + "\"?" : "roundlay list FILE raising names all of them");
}

/// Every one of them, or what is wrong with all of the names.
bool find_pieces(const Console &console, const TickOptions &options, const Layout &layout, Done &done) {
    bool all = true;
    for (const std::string &name : options.pieces) {
        const auto pieces = pieces_called(layout, name, done.what);
        if (pieces.empty()) console.error(options.document.file + ": " + no_piece(layout, name));
        all = all && !pieces.empty();
        for (const Index<Piece> piece : pieces) {
            const std::string &tag = layout.pieces[piece].tag;
            if (std::ranges::find(done.pieces, tag) == done.pieces.end()) done.pieces.push_back(tag);
        }
    }
    return all;
}

void warn_of_none(const Console &console, const TickOptions &options, const std::vector<std::string> &tags) {
    for (const std::string &tag : tags)
        console.warn(options.document.file + ": " + tag +
                     (options.take_back ? " is not ticked as " : " is ticked already as ") + options.what);
}

std::variant<Record, ExitCode> record_with(const Console &console, const TickOptions &options,
                                           const Loaded &loaded) {
    const Input &input = loaded.input;
    Done done{deed_called(options.what), {}, {}, options.by, options.on, options.note};
    if (!input.read.states.empty()) done.state = loaded.job.shell.state;
    if (!find_pieces(console, options, loaded.job.layout, done)) return ExitCode::usage;
    Record record = input.read.record;
    warn_of_none(console, options,
                 options.take_back ? take_back(record.done, done) : tick(record.done, done));
    return record;
}

/// What is said of ticks now and was not said before.
void tell_new_problems(const Console &console, const Loaded &before, const ExportJob &job, Input &made) {
    if (console.quiet) return;
    Input old = before.input;
    old.read.problems.clear();
    add_tick_problems(old, before.job);
    made.read.problems.clear();
    add_tick_problems(made, job);
    for (const Problem &problem : made.read.problems)
        if (std::ranges::find(old.read.problems, problem.message, &Problem::message) ==
            old.read.problems.end())
            std::fputs((to_text(problem) + "\n").c_str(), stderr);
}

void tell_progress(const Console &console, const ExportJob &job, const Record &record, Deed deed) {
    const Voice voice({console.language, job.shell.units});
    const Site site = site_of(job, record);
    for (const std::string &words : progress_words(voice, job.shell, job.layout, job.bodies, site,
                                                   deed == Deed::down ? Deed::down : Deed::up))
        console.tell(words);
}

ExitCode run_tick(const Console &console, const TickOptions &options) {
    const Deed deed = deed_called(options.what); // a wrong word is told before a long document is read
    auto loaded = load(console, options.document);
    if (const auto *code = std::get_if<ExitCode>(&loaded)) return *code;
    const Loaded &before = std::get<Loaded>(loaded);
    auto with = record_with(console, options, before);
    if (const auto *code = std::get_if<ExitCode>(&with)) return *code;
    const Record &record = std::get<Record>(with);
    const std::string &file = options.to == "-" ? options.document.file : options.to;
    const auto edited = restated(Document(before.input.bytes, file), before.input.read.record, record);
    if (const auto *problem = std::get_if<Problem>(&edited)) {
        console.error(to_text(*problem));
        return ExitCode::unreadable;
    }
    const std::string &text = std::get<Document>(edited).text();
    Input made{file, text, read_document(text, file, options.document.state)};
    if (!made.read.shell) {
        tell_problems(console, made);
        return ExitCode::unreadable;
    }
    const ExitCode saved = save(console, options.to, text, options.force);
    if (saved != ExitCode::fine) return saved;
    tell_new_problems(console, before, before.job, made);
    tell_progress(console, before.job, record, deed);
    return saved;
}

} // namespace

CommandRun declare_tick(CLI::App &app) {
    auto o = std::make_shared<TickOptions>();
    add_document(app, o->document);
    app.add_option("WHAT", o->what, "down (taken down), cut, checked, up (raised) or pegged")->required();
    app.add_option("PIECES", o->pieces,
                   "their tags, or the beginning of tags: A-03 is that round of wall A, A all of the wall")
        ->required();
    app.add_option("--by", o->by, "who did it")->type_name("TEXT");
    app.add_option("--on", o->on, "when, in any words")->type_name("TEXT");
    app.add_option("--note", o->note, "whatever should be known of it")->type_name("TEXT");
    app.add_flag("--take-back", o->take_back, "take the ticks out again");
    app.add_option("--to", o->to, "the document to write; - writes to the standard output")
        ->type_name("DOCUMENT")
        ->capture_default_str();
    app.add_flag("--force", o->force, "replace a document that is there");
    return [o](const Console &console) { return run_tick(console, *o); };
}

} // namespace roundlay
