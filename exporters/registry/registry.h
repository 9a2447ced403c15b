// All exporters, as the command line and the window offer them. Their table is in exporters.h.
#pragma once

#include "exporters/files/output_folder.h"
#include "exporters/files/progress.h"
#include "exporters/registry/job.h"
#include "kernel/measure/said.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace roundlay {

enum class Trouble {
    file,       ///< a file cannot be written
    in_the_way, ///< a person's own files, or those of another document, would have to be replaced
    picture,    ///< this machine can make no picture
    nothing,    ///< there is nothing of its kind to be made of this shell
    refused,    ///< it cannot be made, or not all of it, as it is asked for: the message says what is needed
    cancelled,  ///< the person stopped it
    failed,     ///< a library could not do its part
};

struct ExportFailure {
    Trouble trouble = Trouble::failed;
    std::string message; ///< one sentence
};

/// Adds an exporter's files to the folder. Asks `progress` between them whether to stop.
using ExportFunction = std::optional<ExportFailure> (*)(const ExportJob &job, OutputFolder &folder,
                                                        Progress &progress);

struct Exporter {
    std::string_view name; ///< as a person selects it
    Said called, makes;    ///< for people: one word, one phrase
    ExportFunction run;
    /// Is it made where nobody says what is wanted? Else only where it is asked for by its name.
    bool (*usual)(const ExportJob &job) = [](const ExportJob &) { return true; };
    /// Can it be made of some pieces alone (ExportOptions::pieces)? Else it shows the whole shell.
    bool of_pieces = false;
};

/// In the order in which they run: quick and often looked at first.
std::span<const Exporter> all_exporters();

const Exporter *exporter_named(std::string_view name); ///< nullptr when there is none

} // namespace roundlay
