// Writes a Shell as a new document, part by part.
#pragma once

#include "kernel/document/toml_text.h"
#include "kernel/shell/shell.h"

#include <optional>
#include <string>
#include <string_view>

namespace roundlay {

/// Builds the text line by line.
class Writer {
  public:
    explicit Writer(const Shell &shell) : shell_(shell) {}

    std::string take() { return std::move(text_); }

    void comment(std::string_view words) { text_ += "# " + std::string(words) + "\n"; }
    void gap() { text_ += "\n"; }
    void header(std::string_view line) { text_ += std::string(line) + "\n"; }
    void line(std::string_view key, const std::string &value, std::string_view remark = {}) {
        text_ += std::string(key) + " = " + value;
        if (!remark.empty()) text_ += " # " + std::string(remark);
        text_ += "\n";
    }
    void line(std::string_view key, Length value, std::string_view remark = {}) {
        line(key, toml_text(value, shell_.units), remark);
    }
    void line(std::string_view key, const std::optional<Length> &value, std::string_view remark = {}) {
        if (value) line(key, *value, remark);
    }

    void shell();
    void walls();
    void rounds();
    void notch(const NotchRule &rule, const NotchRule &base, bool whole);
    void shoulder(Length shoulder);
    void partitions();
    void steps();
    void log_notch(const LogNotch &notch);
    void corners();
    void sizes(const LogSizes &sizes);
    void logs();
    void openings();
    void trim();
    void floors();
    void pegs();
    void bores();
    void wood();

  private:
    void floor(const Floor &floor);

    const Shell &shell_;
    std::string text_;
};

} // namespace roundlay
