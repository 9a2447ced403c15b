#include "kernel/document/read_states.h"

#include "kernel/document/read_table.h"

#include <algorithm>

namespace roundlay {

namespace {

class Declaring {
  public:
    explicit Declaring(Reading &reading)
        : reading_(reading), document_(reading, &reading.text().root(), "", {}) {}

    std::optional<DeclaredStates> states() {
        read_own();
        const format::Section &section = format::state_section();
        for (const toml::table *entry : document_.entries("state", section.most)) {
            const std::string path = path_of(states_.all.size());
            TableReader table(reading_, entry, path, reading_.place_of(path));
            HouseState state;
            read_keys(reading_, table, *section.table, &state);
            states_.all.push_back(std::move(state));
        }
        check();
        if (!right_ || has_wrong_names()) return {};
        return std::move(states_);
    }

  private:
    static std::string path_of(std::size_t state) { return "state[" + std::to_string(state) + "]"; }

    void read_own() {
        const toml::node *shell = reading_.text().root().get("shell");
        const toml::node *name = shell && shell->is_table() ? shell->as_table()->get("state") : nullptr;
        if (name && name->is_string()) own_ = name, states_.own = name->as_string()->get();
    }

    /// Reported where they were read.
    bool has_wrong_names() const {
        for (std::size_t i = 0; i < states_.all.size(); ++i)
            if (!reading_.is_right(path_of(i) + ".name")) return true;
        return false;
    }

    void tell(const std::string &path, std::string message, std::string expected) {
        right_ = false;
        reading_.error(reading_.places().locate(path).value_or(Place{}), std::move(message),
                       std::move(expected));
    }

    void check() {
        if (states_.all.empty()) return;
        if (states_.own.empty())
            tell(path_of(0), "the document has states, and its own shell has no name among them",
                 "state = \"as found\" in [shell]");
        for (std::size_t i = 0; i < states_.all.size(); ++i)
            check_name(i);
        for (std::size_t i = 0; right_ && i < states_.all.size(); ++i)
            check_on(i);
        for (std::size_t i = 0; right_ && i < states_.all.size(); ++i)
            check_ring(i);
        for (std::size_t i = 0; right_ && i < states_.all.size(); ++i)
            check_levelled(i);
    }

    /// What has not been measured has sunk nowhere; what was measured stands as it was found.
    void check_levelled(std::size_t state) {
        if (!states_.all[state].levelled) return;
        const std::string path = path_of(state) + ".levelled";
        const auto under = states_.up_to(state);
        const auto measured = [&](std::size_t each) { return states_.all[each].measured; };
        if (measured(state))
            tell(path, "a state that is measured shows the house as it was found, and cannot be levelled",
                 "a state of its own that is levelled, on this one");
        else if (std::ranges::none_of(under, measured))
            tell(path, "no state under this one is measured: nothing tells what had sunk",
                 "on = the name of a state that is measured");
    }

    void check_name(std::size_t state) {
        const std::string &name = states_.all[state].name, path = path_of(state) + ".name";
        if (name.empty()) {
            if (reading_.is_right(path))
                tell(path, "\"name\" of a state is empty", "name = \"as it shall stand\"");
            return;
        }
        std::optional<Place> other;
        if (name == states_.own) other = reading_.text().place_of(*own_);
        for (std::size_t i = 0; !other && i < state; ++i)
            if (states_.all[i].name == name) other = reading_.place_of(path_of(i) + ".name");
        if (other)
            tell(path,
                 "two states are called " + quoted_for_message(name) + "; the other one stands in line " +
                     std::to_string(other->line),
                 "a name of its own for each state");
    }

    void check_on(std::size_t state) {
        const std::string &on = states_.all[state].on;
        if (on.empty() || on == states_.own || states_.index_of(on)) return;
        const auto names = states_.names();
        std::string expected = "one of the states";
        for (std::size_t i = 0; i < names.size(); ++i)
            expected += (i ? ", " : " ") + quoted_for_message(names[i]);
        tell(path_of(state) + ".on", "there is no state " + quoted_for_message(on) + did_you_mean(on, names),
             expected);
    }

    /// Told at the first of those that stand in it.
    void check_ring(std::size_t state) {
        std::string way = quoted_for_message(states_.all[state].name);
        std::size_t at = state;
        for (std::size_t steps = 0; steps < states_.all.size(); ++steps) {
            const auto base = states_.index_of(states_.all[at].on);
            if (!base || *base < state) return; // one that stands before it tells of its own ring
            at = *base;
            way += " on " + quoted_for_message(states_.all[at].name);
            if (at != state) continue;
            tell(path_of(state) + ".on", "states stand on one another: " + way,
                 "one of them on the document's own shell");
            return;
        }
    }

    Reading &reading_;
    TableReader document_;
    DeclaredStates states_;
    const toml::node *own_ = nullptr;
    bool right_ = true;
};

} // namespace

std::optional<std::size_t> DeclaredStates::index_of(const std::string &name) const {
    const auto found = std::ranges::find(all, name, &HouseState::name);
    if (found == all.end()) return std::nullopt;
    return static_cast<std::size_t>(found - all.begin());
}

std::vector<std::size_t> DeclaredStates::up_to(std::size_t state) const {
    std::vector<std::size_t> chain{state};
    while (const auto base = index_of(all[chain.front()].on))
        chain.insert(chain.begin(), *base);
    return chain;
}

std::vector<std::string> DeclaredStates::names() const {
    std::vector<std::string> names{own};
    for (const HouseState &state : all)
        names.push_back(state.name);
    return names;
}

std::optional<DeclaredStates> read_states(Reading &reading) {
    return Declaring(reading).states();
}

} // namespace roundlay
