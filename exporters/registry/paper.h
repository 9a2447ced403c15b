// What all exporters of paper share.
#pragma once

#include "exporters/registry/exporters.h"
#include "exporters/sheets/book/book.h"
#include "exporters/sheets/frame/options.h"

#include <string>
#include <vector>

namespace roundlay {

/// Paper, date of issue, weights and warnings. Refers to the job, which must outlive it.
sheets::SheetOptions sheet_options(const ExportJob &job);

/// The cut sheets of all models; empty where the person stopped it.
std::vector<sheets::Sheet> all_cut_sheets(const ExportJob &job, Progress &progress);

/// Sentences that everything on paper must carry.
std::vector<std::string> paper_cautions();

/// Adds the sheets as one PDF.
std::optional<ExportFailure> add_pdf(const ExportJob &job, OutputFolder &folder, const std::string &name,
                                     const std::string &what, std::vector<sheets::Sheet> pages);

} // namespace roundlay
