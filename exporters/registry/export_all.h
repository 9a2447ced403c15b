// Runs exporters into a folder, with a manifest of what they made.
#pragma once

#include "exporters/files/manifest.h"
#include "exporters/files/safe_file.h"
#include "exporters/registry/registry.h"

#include <variant>
#include <vector>

namespace roundlay {

struct ExportReport {
    Manifest manifest;
    std::vector<OutputFile> written;     ///< now, the manifest included; it may list more, of before
    std::vector<ExportFailure> left_out; ///< exporters that could not do their part; the rest is written
    std::vector<std::string>
        outdated; ///< files of an earlier state of the document, or of another, that lie there
    std::vector<std::string> folders; ///< that were missing and were made, the outermost first
};

/// All or nothing: what is returned is either on the disk or the folder is as it was. Only a missing picture,
/// what there is nothing to be made of, and what is refused as it is asked for do not stop the rest. Files of
/// an earlier export by the same exporters that no longer belong go away, unless a person changed them. What
/// is no file of an earlier export, or was changed since, is a person's own and is only replaced where `own`
/// says so; so are the files of another document's export, before anything is made.
std::variant<ExportReport, ExportFailure> export_all(const ExportJob &job,
                                                     const std::vector<const Exporter *> &exporters,
                                                     const std::filesystem::path &folder, Progress &progress,
                                                     IfThere own = IfThere::refuse);

} // namespace roundlay
