#include "modeler/command_line/console.h"

#include "exporters/files/descriptor.h"

#include <nlohmann/json.hpp>
#include <spdlog/sinks/stdout_color_sinks.h>
#include <spdlog/sinks/stdout_sinks.h>
#include <spdlog/spdlog.h>

#include <cstdio>
#include <cstdlib>
#include <cstring>

namespace roundlay {

namespace {

bool colours_wanted(bool no_color) {
    const char *refused = std::getenv("NO_COLOR");
    const char *term = std::getenv("TERM");
    return !no_color && !(refused && *refused) && term && *term && std::string_view(term) != "dumb";
}

spdlog::sink_ptr stderr_sink(bool colours) {
    if (colours) return std::make_shared<spdlog::sinks::stderr_color_sink_mt>(spdlog::color_mode::always);
    return std::make_shared<spdlog::sinks::stderr_sink_mt>();
}

const char *code(Paint paint) {
    switch (paint) {
    case Paint::bold:
        return "\x1b[1m";
    case Paint::red:
        return "\x1b[1;31m";
    case Paint::yellow:
        return "\x1b[1;33m";
    case Paint::blue:
        return "\x1b[1;34m";
    }
    return "";
}

} // namespace

void Console::start(bool no_color) {
    const bool colours = colours_wanted(no_color);
    colour_out_ = colours && stdout_is_terminal();
    const bool colour_err = colours && ::isatty(STDERR_FILENO) == 1;
    auto log = std::make_shared<spdlog::logger>("roundlay", stderr_sink(colour_err));
    log->set_pattern("roundlay: %^%l%$: %v");
    log->set_level(quiet ? spdlog::level::err : verbose ? spdlog::level::info : spdlog::level::warn);
    spdlog::set_default_logger(std::move(log));
}

void Console::print_failure(ExitCode code) const {
    if (!json || printed_ || code == ExitCode::fine) return;
    nlohmann::ordered_json all = {{"exit", static_cast<int>(code)}};
    for (const ExitMeaning &exit : exit_meanings)
        if (exit.code == code) all["meaning"] = exit.meaning;
    all["errors"] = errors_;
    for (const InFile &e : in_files_)
        all["problems"].push_back({{"file", e.file}, {"line", e.line}, {"message", e.message}});
    constexpr int indent = 2;
    (void)print(all.dump(indent, ' ', false, nlohmann::ordered_json::error_handler_t::replace) + "\n");
}

ExitCode Console::print(std::string_view data) const {
    printed_ = true;
    // Borrowed for the call: the stream is not ours to close.
    Descriptor out(::dup(STDOUT_FILENO));
    int trouble = out.open() ? write_all(out, data) : errno;
    if (!trouble) trouble = out.close();
    if (trouble == 0 || trouble == EPIPE) return ExitCode::fine;
    error(std::string("cannot write to the standard output: ") + std::strerror(trouble));
    return ExitCode::unwritable;
}

bool Console::stdout_is_terminal() const {
    return ::isatty(STDOUT_FILENO) == 1;
}

std::string Console::painted(std::string_view text, Paint paint) const {
    if (!colour_out_) return std::string(text);
    return code(paint) + std::string(text) + "\x1b[0m";
}

void Console::hint(const std::string &text) const {
    if (quiet || ::isatty(STDERR_FILENO) != 1) return;
    std::fputs((text + "\n").c_str(), stderr);
}

void Console::tell(const std::string &text) const {
    if (!quiet) std::fputs((text + "\n").c_str(), stderr);
}

void Console::warn(const std::string &text) const {
    spdlog::warn("{}", text);
}
void Console::error(const std::string &text) const {
    errors_.push_back(text);
    spdlog::error("{}", text);
}
void Console::error_at(const std::string &file, int line, const std::string &message) const {
    const std::string place = file + ":" + std::to_string(line) + ": ";
    std::fputs((place + "error: " + message + "\n").c_str(), stderr);
    errors_.push_back(place + message);
    in_files_.push_back({file, message, line});
}
void Console::error_line(const std::string &text) const {
    std::fputs((text + "\n").c_str(), stderr);
    errors_.push_back(text);
}
void Console::detail(const std::string &text) const {
    spdlog::info("{}", text);
}

} // namespace roundlay
