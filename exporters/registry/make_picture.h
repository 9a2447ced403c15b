// The picture of a shell, for the exporter and for the command that makes nothing else.
#pragma once

#include "exporters/registry/drawn_pictures.h"

#include <string>

namespace roundlay {

/// As the job wants it or as stated; where the job has drawn it before it is taken as it is.
MadePicture make_picture(const ExportJob &job);
MadePicture make_picture(const ExportJob &job, const PictureOptions &wanted);

/// `south-east`, `plan`, ...
std::string_view name_of(View view);
/// "the shell seen from the south-east".
Said pictured(View view);

} // namespace roundlay
