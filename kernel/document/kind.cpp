#include "kernel/document/kind.h"

#include "kernel/document/compass.h"
#include "kernel/document/noted_text.h"
#include "kernel/document/toml_text.h"

namespace roundlay::format {

namespace {

/// `"a"`, `"b"` or `"c"`.
std::string listed(const std::vector<std::string> &words) {
    std::string text;
    for (std::size_t i = 0; i < words.size(); ++i)
        text += (i == 0 ? "`\"" : i + 1 < words.size() ? ", `\"" : " or `\"") + words[i] + "\"`";
    return text;
}

struct Takes {
    std::string operator()(const YesNo &) const { return "`true` or `false`"; }
    std::string operator()(const Count &kind) const {
        return "a whole number from " + std::to_string(kind.low) + " to " + std::to_string(kind.high);
    }
    std::string operator()(const Number &kind) const { return kind.words; }
    std::string operator()(const Load &kind) const { return kind.words; }
    std::string operator()(const Size &kind) const { return kind.bounds.words; }
    std::string operator()(const Incline &kind) const {
        return kind.may_fall ? "a slope" : "a slope that is not negative";
    }
    std::string operator()(const Direction &) const {
        return "a direction such as \"east\", \"north-west\" or \"30 deg north of east\"";
    }
    std::string operator()(const Text &) const {
        return "text of up to " + std::to_string(limits::name_characters) + " characters";
    }
    std::string operator()(const TagName &) const {
        return "1 to " + std::to_string(limits::wall_letters) + " letters and digits";
    }
    std::string operator()(const WallName &) const { return "the name of a wall or partition"; }
    std::string operator()(const WallPair &) const { return "two names: `[\"A\", \"B\"]`"; }
    std::string operator()(const OneOf &kind) const { return listed(kind.words); }
    std::string operator()(const SomeOf &kind) const { return "a list of " + listed(kind.words); }
    std::string operator()(const Texts &) const { return "a list of texts"; }
    std::string operator()(const Noted &) const { return "a length as noted"; }
};

/// `["a", "b"]`
std::string spelled_list(const ManyTexts &texts) {
    std::string all;
    for (const std::string &text : texts)
        all += (all.empty() ? "" : ", ") + toml_text(text);
    return "[" + all + "]";
}

struct Spelled {
    UnitSystem units;
    const Kind &kind;

    std::string operator()(bool value) const { return value ? "true" : "false"; }
    std::string operator()(int value) const { return std::to_string(value); }
    std::string operator()(double value) const {
        if (std::holds_alternative<Direction>(kind)) return toml_text(spell_heading(value));
        return std::holds_alternative<Load>(kind) ? load_text(value, units) : toml_text(value);
    }
    std::string operator()(Length value) const { return toml_text(value, units); }
    std::string operator()(Slope value) const { return toml_text(value); }
    std::string operator()(const std::string &value) const { return toml_text(value); }
    std::string operator()(const TwoNames &value) const { return spelled_list({value.first, value.second}); }
    std::string operator()(const ManyTexts &value) const { return spelled_list(value); }
    std::string operator()(const NotedLength &value) const { return noted_text(value); }
};

} // namespace

std::string takes(const Kind &kind) {
    return std::visit(Takes(), kind);
}

std::string text_of(const Kind &kind, const Value &value, UnitSystem units) {
    return std::visit(Spelled{units, kind}, value);
}

} // namespace roundlay::format
