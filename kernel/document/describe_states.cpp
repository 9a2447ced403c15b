#include "kernel/document/describe.h"
#include "kernel/document/state.h"

namespace roundlay::format {

namespace {

const TableOf<HouseState> &state_table() {
    static const TableOf<HouseState> table{
        {.name = "state",
         .summary =
             "Another state of the house: what differs from the document's own shell, or from the state "
             "that it is on, in the tables of the shell over again, [state.rounds], [[state.opening]].",
         .items = items<HouseState>(
             {text<&HouseState::name>("name", "what the state is called, each its own",
                                      {.missing = "what it is called: name = \"as it shall stand\""}),
              text<&HouseState::on>("on", "the state that it changes",
                                    {.left_out = "the document's own shell"}),
              yes_no<&HouseState::measured>(
                  "measured",
                  "whether the numbers of `[record]` and `[[found]]` go over what is stated: the "
                  "house as it was measured",
                  {.left_out = "`false`"}),
              yes_no<&HouseState::levelled>(
                  "levelled",
                  "whether the house comes to stand level on a new foundation: every corner is lifted by "
                  "what it had sunk; only on a state that is `measured`",
                  {.left_out = "as in the state that it is on"})})}};
    return table;
}

} // namespace

const Section &state_section() {
    static const Section section = [] {
        Section made{.table = &state_table(), .most = limits::states};
        made.fresh = [](const Shell &) -> std::shared_ptr<void> { return std::make_shared<HouseState>(); };
        return made;
    }();
    return section;
}

} // namespace roundlay::format
