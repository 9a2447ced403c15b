// What an export can be told, beside which files it makes: a row for each, from which the command line, its
// help and the window's dialog are made. The rows are in option_table.cpp.
#pragma once

#include "exporters/registry/job.h"
#include "kernel/measure/said.h"

#include <functional>
#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace roundlay {

/// Numbers as they are typed, one after another: lengths in millimetres, counts, what stands behind "1:" in a
/// scale, which of the words of a choice (from 0), 0 for no and 1 for yes. Empty: nothing is stated.
using OptionValue = std::vector<double>;

/// One to three lengths, with x between.
struct LengthsOption {
    double low = 0, high = 0; ///< millimetres, of each
    Said parts;               ///< "width x depth"; empty for one length alone
    std::size_t count = 1;
    bool in_mm = false; ///< a bare number is of millimetres, whatever the document is in
};

/// One or two numbers, with x between.
struct NumbersOption {
    double low = 0, high = 0;
    Said parts; ///< as above
    std::size_t count = 1;
    bool whole = false;
};

/// "1:10", or "10".
struct ScaleOption {
    double low = 1, high = 1;
};

struct OptionWord {
    std::string_view word; ///< as it is typed
    Said called;           ///< as it is offered
};

struct ChoiceOption {
    std::string_view what; ///< "paper": there is no paper "B9"
    std::vector<OptionWord> words;
};

struct YesNoOption {
    bool flag = false; ///< typed alone for yes; else with yes or no behind it
};

using OptionKind = std::variant<LengthsOption, NumbersOption, ScaleOption, ChoiceOption, YesNoOption>;

struct ExportOption {
    std::string_view name;              ///< "board": --board
    std::string_view typed;             ///< what stands for its value in the help: "LxWxT"
    std::vector<std::string_view> asks; ///< names of the exporters that ask it
    Said called, explained;             ///< its label, and in one line what it does
    OptionKind kind;
    Said otherwise; ///< what holds where nothing is stated, if not a value
    std::function<OptionValue(const ExportOptions &)> get;
    std::function<void(ExportOptions &, const OptionValue &)> set;
};

/// In the order in which they are offered.
std::span<const ExportOption> all_export_options();
const ExportOption &export_option(std::string_view name); ///< throws std::out_of_range where there is none
std::vector<const ExportOption *> options_asked_by(std::string_view exporter);

/// Reads what a person typed, blanks round it allowed. What is wrong is told as what is expected. A bare
/// number is of the document's units, or of millimetres.
std::variant<OptionValue, Said> read_option(const ExportOption &option, const std::string &typed,
                                            UnitSystem units);

/// A text that reads back to the value, within 1e-4 mm or in; a choice as its word. Empty for no value.
std::string print_option(const ExportOption &option, const OptionValue &value, UnitSystem units);

/// In which units it is read and printed.
UnitSystem units_of(const ExportOption &option, UnitSystem document);

/// What stands against it, though each value is within its bounds.
struct OptionProblem {
    std::string_view option;
    Said what;
    bool missing = false; ///< it has not been stated, and must be
};

/// Of what this exporter asks.
std::vector<OptionProblem> option_problems(std::string_view exporter, const ExportOptions &options);

} // namespace roundlay
