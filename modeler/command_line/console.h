// The two streams of the program: data on stdout, words for people on stderr.
#pragma once

#include "exporters/words/speech.h"
#include "modeler/command_line/exit_code.h"

#include <string>
#include <string_view>
#include <vector>

namespace roundlay {

enum class Paint { bold, red, yellow, blue };

class Console {
  public:
    bool json = false;                     ///< data as JSON
    bool quiet = false;                    ///< no hints, no warnings, no progress
    bool verbose = false;                  ///< say what is being done
    Language language = Language::english; ///< of words for people, in files too

    /// Settles colours and the log. Colours only on a terminal, never with NO_COLOR (no-color.org),
    /// TERM=dumb or `no_color`.
    void start(bool no_color);

    /// With --json a failure is data too: what went wrong is printed where nothing else was.
    void print_failure(ExitCode code) const;

    /// Writes data to stdout. A reader that went away is fine; a full disk is not.
    ExitCode print(std::string_view data) const;
    bool stdout_is_terminal() const;

    /// Coloured where stdout may be.
    std::string painted(std::string_view text, Paint paint) const;

    /// A hint for a person who sits at a terminal.
    void hint(const std::string &text) const;
    /// What was done, on stderr, for people and logs of scripts; nothing with --quiet.
    void tell(const std::string &text) const;
    void warn(const std::string &text) const;
    void error(const std::string &text) const;
    /// An error of a line of some file, as editors can follow it.
    void error_at(const std::string &file, int line, const std::string &message) const;
    /// An error that is worded with its place.
    void error_line(const std::string &text) const;
    void detail(const std::string &text) const; ///< with --verbose only

  private:
    bool colour_out_ = false;
    mutable bool printed_ = false;
    struct InFile {
        std::string file, message;
        int line = 0;
    };
    mutable std::vector<std::string> errors_;
    mutable std::vector<InFile> in_files_; ///< those of errors_ that have a place
};

} // namespace roundlay
