// What every exporter works from: one shell, worked out once.
#pragma once

#include "exporters/picture/camera.h"
#include "exporters/sheets/drawing/paper.h"
#include "kernel/layout/body.h"
#include "kernel/shell/finding.h"
#include "kernel/shell/shell.h"

#include <optional>
#include <string>
#include <vector>

namespace roundlay {

struct PictureOptions {
    View view = View::south_east;
    bool perspective = true;
    int width = 1600, height = 1200; ///< pixels, 1 to 8192
};

struct ExportOptions {
    std::optional<sheets::Paper> paper; ///< of the cut sheets; else by the shell's units
    PictureOptions picture;
};

struct ExportJob {
    Shell shell;
    Layout layout;
    std::vector<Body> bodies; ///< of layout.models, in order
    Findings findings;        ///< of the layout and of the review
    std::string document;     ///< file name without folders, for the manifest
    std::string document_sha256;
    ExportOptions options;
};

/// Lays the shell out, cuts its bodies and reviews them. Where a finding is an error nothing can be exported;
/// bodies may be empty then.
ExportJob make_job(Shell shell);

} // namespace roundlay
