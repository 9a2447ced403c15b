// From the file a person names to a shell that is laid out.
#pragma once

#include "exporters/registry/job.h"
#include "kernel/document/document.h"
#include "modeler/command_line/console.h"

#include <optional>
#include <string>
#include <variant>

namespace CLI {
class App;
}

namespace roundlay {

/// A document as it was read. `-` is the standard input.
struct Input {
    std::string file;  ///< as it is named to people
    std::string bytes; ///< empty where it could not be read at all
    ReadResult read;
};

/// Which document, and which state of the house in it.
struct DocumentWords {
    std::string file;
    std::string state; ///< empty: the document's own shell
};

/// FILE and, for commands that show what is built, --state.
void add_document(CLI::App &app, DocumentWords &words);
void add_file(CLI::App &app, DocumentWords &words);

Input read_input(const DocumentWords &words);

/// What is wrong with a document, on the standard error.
void tell_problems(const Console &console, const Input &input);

/// Ends a command that made nothing: says so, with --json as data.
ExitCode failed(const Console &console, const Input &input, const ExportJob *job, ExitCode code);

/// make_job; with --verbose it says what was read and laid out, and how long it took.
ExportJob told_job(const Console &console, const Input &input, Shell shell);

struct Loaded {
    Input input;
    ExportJob job;
};

/// Reads and lays out, for commands that need a whole shell. Says what is wrong on stderr, with --json on
/// stdout too; what cannot be built gives the exit code to end with, unless `enough` says that what is asked
/// for can be had of the shell all the same.
std::variant<Loaded, ExitCode> load(const Console &console, const DocumentWords &words,
                                    std::optional<UnitSystem> units = {},
                                    bool (*enough)(const Shell &shell) = nullptr);

} // namespace roundlay
