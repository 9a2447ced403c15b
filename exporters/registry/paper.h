// What all exporters of paper share.
#pragma once

#include "exporters/registry/exporters.h"
#include "exporters/sheets/book/book.h"
#include "exporters/sheets/set/composed_sheets.h"

#include <string>
#include <vector>

namespace roundlay {

/// Paper, language, date of issue, weights and warnings. Refers to the job, which must outlive it.
sheets::SheetOptions sheet_options(const ExportJob &job);

/// What a PDF of the shell is called: its name, and what it is.
std::string paper_title(const ExportJob &job, const Said &what);

/// The sheets of each subject, in order, on all cores; those that the job has composed before are taken as
/// they are. Empty where the person stopped it.
std::vector<sheets::SharedSheets> sheets_of(const ExportJob &job, const sheets::SheetSet &set,
                                            std::string_view doing, Progress &progress);

/// Those that were chosen; nothing where all are.
sheets::OnlyPieces only_pieces(const ExportJob &job);

/// The cut sheet of one of Layout::models, for all that show one by itself.
sheets::SharedSheets cut_sheet_of(const ExportJob &job, Index<Model> model);

/// One after another, to be bound.
std::vector<sheets::Sheet> copied(const std::vector<sheets::SharedSheets> &composed);

/// Sentences that everything on paper must carry.
std::vector<std::string> paper_cautions(const Voice &voice);

/// A PDF of one set.
struct PaperFile {
    const char *name;
    Said what;         ///< for people
    const char *doing; ///< while it is made
    sheets::SheetSet set;
};

std::optional<ExportFailure> add_pdf(const ExportJob &job, OutputFolder &folder, const PaperFile &file,
                                     Progress &progress);

} // namespace roundlay
