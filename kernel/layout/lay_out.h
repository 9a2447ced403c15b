// From a shell to its layout, stage by stage. Pure: the same shell gives the same layout.
#pragma once

#include "kernel/layout/layout.h"

namespace roundlay {

/// Works out every piece of a shell. Never throws for what a person stated: that comes back as findings.
Layout lay_out(const Shell &shell);

/// The same without advice in its findings, which takes many layouts: for whoever tries shells by the dozen.
Layout lay_out_to_try(const Shell &shell);

} // namespace roundlay
