#include "exporters/lists/state_column.h"

namespace roundlay {

Table with_state(Table table, const Shell &shell) {
    if (shell.state.empty()) return table;
    table.columns.push_back({"state", ""});
    for (auto &row : table.rows)
        row.emplace_back(shell.state);
    return table;
}

std::string state_words(const Shell &shell, const Voice &voice) {
    return shell.state.empty() ? std::string() : voice.say("State: %1", shell.state) + "\n\n";
}

} // namespace roundlay
