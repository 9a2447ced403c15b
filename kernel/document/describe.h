// The tables of the document, each described beside the rules that no single key can state.
#pragma once

#include "kernel/document/key_access.h"
#include "kernel/document/table_reading.h"

namespace roundlay::format {

Section shell_section();
Section wall_section();
Section partition_section();
Section rounds_section();
Section notch_section();
Section corner_section();
Section logs_section();
Section log_section();
Section opening_section();
Section step_section();
Section trim_section();
Section floor_section();
Section pegs_section();
Section bore_section();
Section mend_section();
Section wood_section();
Section project_section();
Section record_section();
Section found_section();
Section done_section();

} // namespace roundlay::format
