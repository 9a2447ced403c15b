// What every exporter works from: one shell, worked out once.
#pragma once

#include "exporters/picture/camera.h"
#include "exporters/print/print.h"
#include "exporters/router/router.h"
#include "exporters/sheets/drawing/paper.h"
#include "exporters/sheets/tag/label_stock.h"
#include "exporters/step/options.h"
#include "exporters/words/voice.h"
#include "kernel/compare/chosen_pieces.h"
#include "kernel/layout/wood/body.h"
#include "kernel/record/record.h"
#include "kernel/shell/finding.h"
#include "kernel/shell/shell.h"

#include <compare>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace roundlay::sheets {
class ComposedSheets;
}

namespace roundlay {

class DrawnPictures;
class SharedOrder;

/// None composed, none drawn yet.
std::shared_ptr<sheets::ComposedSheets> no_sheets();
std::shared_ptr<DrawnPictures> no_pictures();
/// Not worked out yet.
std::shared_ptr<SharedOrder> no_order();

/// Nothing is said of a house that stands.
std::shared_ptr<const Record> no_record();

struct PictureOptions {
    View view = View::south_east;
    bool perspective = true;
    int width = 1600, height = 1200; ///< pixels, 1 to 8192
    auto operator<=>(const PictureOptions &) const = default;
};

struct ExportOptions {
    Language language = Language::english; ///< of sheets, lists and the book
    std::optional<sheets::Paper> paper;    ///< of the cut sheets; else by the shell's units
    PictureOptions picture;
    PrintOptions print = {};
    StepOptions step = {};
    RouterOptions router = {};
    sheets::StatedLabels labels = {}; ///< that tags are printed on
    PieceChoice pieces = {};          ///< that files are made of; nothing stated: of all
};

/// The house as it was found, laid out: what the logs of its record are pieces of.
struct FoundHouse {
    Layout layout;
    Bodies bodies;    ///< of layout.models, in order
    Shell shell = {}; ///< that is laid out
};

struct ExportJob {
    Shell shell;
    Layout layout;
    Bodies bodies;                                      ///< of layout.models, in order
    Findings findings;                                  ///< of the layout and of the review
    std::shared_ptr<const Record> record = no_record(); ///< of the house, where the document has one
    std::shared_ptr<const FoundHouse> found;            ///< null: the record is of this shell
    std::filesystem::path folder;                       ///< of the document: what its photographs lie beside
    std::string document;                               ///< file name without folders, for the manifest
    std::string document_sha256;
    ExportOptions options;
    /// What has been composed and drawn of this shell for anybody: each exporter and the window take it from
    /// here. Copies of the job share it, so shell, layout, bodies and findings are not changed once a sheet
    /// or a picture is asked for.
    std::shared_ptr<sheets::ComposedSheets> composed = no_sheets();
    std::shared_ptr<DrawnPictures> pictures = no_pictures();
    std::shared_ptr<SharedOrder> order = no_order(); ///< of the raise
};

/// Speaks the job's language in the units of its shell.
Voice voice_of(const ExportJob &job);

/// Of the house as it was found, whichever of its states the job is.
const Layout &found_layout(const ExportJob &job);
const Bodies &found_bodies(const ExportJob &job);

/// Of the job's pieces those that are stated; all where nothing is.
ChosenPieces chosen_of(const ExportJob &job);

/// Of the house that stands, or of a new one, there is an order of taking down; of another state of a house
/// there is none: nobody takes down what it shall be.
inline bool may_come_down(const ExportJob &job) {
    return job.found == nullptr;
}

/// Lays the shell out, cuts its bodies and reviews them. Where a finding is an error nothing can be exported;
/// bodies may be empty then.
ExportJob make_job(Shell shell);

} // namespace roundlay
