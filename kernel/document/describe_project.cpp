#include "kernel/document/describe.h"

namespace roundlay::format {

namespace {

const TableOf<Project> &project_table() {
    static const TableOf<Project> table{
        {.name = "project",
         .summary = "Whose the drawings and files are: in title blocks and in the headers of STEP files.",
         .items = items<Project>(
             {text<&Project::number>("number", "of the job; stands before the numbers of sheets",
                                     {.left_out = "nothing"}),
              text<&Project::owner>("owner", "legal owner of the drawings, such as a workshop",
                                    {.left_out = "a field to be filled in by hand"}),
              text<&Project::creator>("creator", "who made them",
                                      {.left_out = "a field to be filled in by hand"}),
              text<&Project::approved>("approved", "who said that they are right",
                                       {.left_out = "a field to be filled in by hand"}),
              text<&Project::revision>("revision", "of the shell, as you count them; in STEP of its products",
                                       {.left_out = "nothing"})})}};
    return table;
}

} // namespace

Section project_section() {
    Section section = once<&Shell::project>(project_table());
    section.only_where_other = true;
    return section;
}

} // namespace roundlay::format
