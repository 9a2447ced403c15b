// What an export can be told: one row for command line, help and window, which read and print it alike.
#include "exporters/registry/export_option.h"
#include "exporters/registry/registry.h"
#include "exporters/words/words.h"
#include "tests/support/catch.h"

#include <rapidcheck.h>

#include <cmath>
#include <set>

using namespace roundlay;

namespace {

const Said *refused(const std::variant<OptionValue, Said> &read) {
    return std::get_if<Said>(&read);
}

std::string why(const char *name, const char *typed, UnitSystem units = UnitSystem::metric) {
    const auto read = read_option(export_option(name), typed, units);
    const Said *said = refused(read);
    return said != nullptr ? words_of(*said, in_english(units)) : std::string();
}

OptionValue value(const char *name, const char *typed, UnitSystem units = UnitSystem::metric) {
    const auto read = read_option(export_option(name), typed, units);
    const auto *value = std::get_if<OptionValue>(&read);
    return value != nullptr ? *value : OptionValue{};
}

double between(double low, double high) {
    constexpr int steps = 100000;
    return low + (high - low) * *rc::gen::inRange(0, steps + 1) / steps;
}

/// Any that the option allows.
OptionValue any_value(const ExportOption &option) {
    OptionValue any;
    if (const auto *lengths = std::get_if<LengthsOption>(&option.kind))
        for (std::size_t i = 0; i < lengths->count; ++i)
            any.push_back(between(lengths->low, lengths->high));
    else if (const auto *numbers = std::get_if<NumbersOption>(&option.kind))
        for (std::size_t i = 0; i < numbers->count; ++i) {
            const double number = between(numbers->low, numbers->high);
            any.push_back(numbers->whole ? std::floor(number) : number);
        }
    else if (const auto *scale = std::get_if<ScaleOption>(&option.kind))
        any.push_back(between(scale->low, scale->high));
    else if (const auto *choice = std::get_if<ChoiceOption>(&option.kind))
        any.push_back(*rc::gen::inRange<int>(0, static_cast<int>(choice->words.size())));
    else
        any.push_back(*rc::gen::inRange(0, 2));
    return any;
}

bool near(const OptionValue &a, const OptionValue &b) {
    constexpr double printed = 1e-4 * mm_per_inch;
    return a.size() == b.size() && std::ranges::equal(a, b, [](double one, double other) {
               return std::abs(one - other) <= printed;
           });
}

} // namespace

TEST_CASE("each option has a name of its own and is asked by exporters that there are") {
    std::set<std::string_view> names;
    for (const ExportOption &option : all_export_options()) {
        INFO(option.name);
        CHECK(names.insert(option.name).second);
        CHECK_FALSE(option.asks.empty());
        for (const std::string_view exporter : option.asks)
            CHECK(exporter_named(exporter) != nullptr);
        // What holds where nothing is stated is a value, or is told in words.
        CHECK((option.get({}).empty() != option.otherwise.text.empty()));
    }
    for (const char *name : {"step", "print", "router", "sheets", "picture"})
        CHECK_FALSE(options_asked_by(name).empty());
    CHECK(options_asked_by("ifc").empty());
}

TEST_CASE("what an option is told it has, and no other has it") {
    CHECK(rc::check([] {
        ExportOptions options;
        std::vector<OptionValue> told;
        for (const ExportOption &option : all_export_options()) {
            told.push_back(any_value(option));
            option.set(options, told.back());
        }
        std::size_t at = 0;
        for (const ExportOption &option : all_export_options())
            RC_ASSERT(option.get(options) == told[at++]);
        for (const ExportOption &option : all_export_options())
            option.set(options, option.get({}));
        for (const ExportOption &option : all_export_options())
            RC_ASSERT(option.get(options) == option.get({}));
    }));
}

TEST_CASE("what is printed reads back, in the units of any document") {
    CHECK(rc::check([] {
        for (const ExportOption &option : all_export_options())
            for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial}) {
                const OptionValue any = any_value(option);
                const std::string printed = print_option(option, any, units);
                const auto read = read_option(option, printed, units);
                if (const Said *said = refused(read)) { // at a bound, rounded past it
                    RC_LOG(std::string(option.name) + " " + printed + " " + words_of(*said, {}));
                    const auto *lengths = std::get_if<LengthsOption>(&option.kind);
                    RC_ASSERT(lengths != nullptr && std::ranges::any_of(any, [&](double mm) {
                                  return mm - lengths->low < 0.01 || lengths->high - mm < 0.01;
                              }));
                    continue;
                }
                RC_ASSERT(near(std::get<OptionValue>(read), any));
            }
    }));
}

TEST_CASE("what is past a bound is refused with the bounds") {
    for (const ExportOption &option : all_export_options()) {
        const auto *lengths = std::get_if<LengthsOption>(&option.kind);
        if (lengths == nullptr) continue;
        for (const double wrong : {lengths->low - 0.5, lengths->high + 0.5}) {
            OptionValue each(lengths->count, wrong);
            const std::string typed = print_option(option, each, UnitSystem::metric);
            INFO(option.name << " " << typed);
            CHECK(refused(read_option(option, typed, UnitSystem::metric)));
        }
    }
    CHECK(why("tool", "60") == "expected a length of 1 mm to 50 mm");
    CHECK(why("tool", "60 mm", UnitSystem::imperial) == "expected a length of 0.0394 in to 1.9685 in");
    CHECK(why("board", "2440x1220") == "expected length x width x thickness, each 0.5 mm to 20000 mm");
    CHECK(why("tabs", "2.5") == "expected a whole number from 2 to 20");
    CHECK(why("spindle", "fast") == "expected a number from 1 to 60000");
    CHECK(why("scale", "2:1") == "expected a scale such as 1:10, 1:1 to 1:1000");
    CHECK(why("feed", "1,500") ==
          "a comma in a number can be read in two ways; expected a decimal point and no thousands mark");
    for (const char *odd : {"", "nan", "inf", "1e3", "0x10", "6 kg", "--", "x", "6 6"})
        CHECK_FALSE(why("tool", odd).empty());
}

TEST_CASE("lengths are read as a person types them") {
    CHECK(value("tool", "6") == OptionValue{6});
    CHECK(value("tool", "0.25", UnitSystem::imperial) == OptionValue{6.35});
    CHECK(value("tool", " 1/4 in ") == OptionValue{6.35});
    CHECK(value("nozzle", "0,4") == OptionValue{0.4});
    CHECK(value("nozzle", "0.4", UnitSystem::imperial) == OptionValue{0.4}); // of printers: millimetres
    CHECK(value("board", "2440x1220 × 12") == OptionValue{2440, 1220, 12});
    CHECK(value("board", "8 ftx4 ft x 1/2 in") == OptionValue{2438.4, 1219.2, 12.7});
    CHECK(value("paper", "letter") == OptionValue{4});
    CHECK(value("scale", "1: 20") == OptionValue{20});
}

TEST_CASE("what must be stated of a router is asked for, option by option") {
    std::set<std::string_view> missing;
    for (const OptionProblem &problem : option_problems("router", {})) {
        CHECK(problem.missing);
        missing.insert(problem.option);
        CHECK_NOTHROW(export_option(problem.option));
    }
    CHECK(missing == std::set<std::string_view>{"board", "tool", "feed", "plunge", "spindle", "depth-step"});
    CHECK(option_problems("print", {}).empty());
    ExportOptions near_each_other;
    export_option("tool").set(near_each_other, {12});
    export_option("spacing").set(near_each_other, {5});
    std::set<std::string_view> against;
    for (const OptionProblem &problem : option_problems("router", near_each_other))
        if (!problem.missing) against.insert(problem.option);
    CHECK(against == std::set<std::string_view>{"spacing"});
}
