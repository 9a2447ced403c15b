#include "modeler/command_line/save.h"

#include "exporters/files/safe_file.h"
#include "modeler/command_line/interrupts.h"

#include <cerrno>

namespace roundlay {

ExitCode save(const Console &console, const std::string &path, std::string_view bytes, bool replace) {
    if (path == "-") return console.print(bytes);
    const CatchInterrupts interrupts;
    if (const auto error = write_file(path, bytes, replace ? IfThere::replace : IfThere::refuse)) {
        console.error(error->message + (error->code == EEXIST ? ", or replace it with --force" : ""));
        return ExitCode::unwritable;
    }
    console.detail("wrote " + path + ", " + std::to_string(bytes.size()) + " bytes");
    return CatchInterrupts::raised() ? ExitCode::interrupted : ExitCode::fine;
}

} // namespace roundlay
