// The exporters that the registry lists; each in a file of its own.
#pragma once

#include "exporters/registry/registry.h"

namespace roundlay {

std::optional<ExportFailure> export_picture(const ExportJob &job, OutputFolder &folder, Progress &progress);
std::optional<ExportFailure> export_list(const ExportJob &job, OutputFolder &folder, Progress &progress);
std::optional<ExportFailure> export_sheets(const ExportJob &job, OutputFolder &folder, Progress &progress);
std::optional<ExportFailure> export_drawings(const ExportJob &job, OutputFolder &folder, Progress &progress);
std::optional<ExportFailure> export_templates(const ExportJob &job, OutputFolder &folder, Progress &progress);
std::optional<ExportFailure> export_tags(const ExportJob &job, OutputFolder &folder, Progress &progress);
std::optional<ExportFailure> export_forms(const ExportJob &job, OutputFolder &folder, Progress &progress);
std::optional<ExportFailure> export_report(const ExportJob &job, OutputFolder &folder, Progress &progress);
std::optional<ExportFailure> export_book(const ExportJob &job, OutputFolder &folder, Progress &progress);
std::optional<ExportFailure> export_step(const ExportJob &job, OutputFolder &folder, Progress &progress);
std::optional<ExportFailure> export_mesh(const ExportJob &job, OutputFolder &folder, Progress &progress);

/// What is said when a person stops an export.
ExportFailure stopped();

/// Adds one file; a failure to write is one of kind `file`.
std::optional<ExportFailure> add_file(OutputFolder &folder, std::string_view name, std::string_view bytes,
                                      std::string_view what);

} // namespace roundlay
