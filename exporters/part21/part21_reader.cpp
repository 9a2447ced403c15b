#include "exporters/part21/part21_reader.h"

#include <charconv>
#include <stdexcept>

namespace roundlay::part21 {

namespace {

[[noreturn]] void fail(const std::string &what) {
    throw std::runtime_error("The STEP text cannot be taken over: " + what + ".");
}

/// Goes through the text character by character; knows when it is inside a string or a comment.
class Scanner {
  public:
    explicit Scanner(std::string_view text) : text_(text) {}

    bool at_end() {
        skip_blank();
        return place_ >= text_.size();
    }

    int read_id() {
        skip_blank();
        if (place_ >= text_.size() || text_[place_] != '#')
            fail("an instance does not start with its number");
        ++place_;
        return read_number();
    }

    void expect(char c) {
        skip_blank();
        if (place_ >= text_.size() || text_[place_] != c) fail(std::string("\"") + c + "\" is missing");
        ++place_;
    }

    /// Everything up to the next ';', blanks outside strings left out.
    Instance read_instance() {
        Instance made;
        for (skip_blank(); place_ < text_.size() && text_[place_] != ';'; skip_blank()) {
            if (text_[place_] == '\'')
                read_string(made.text);
            else if (text_[place_] == '#')
                read_reference(made);
            else
                made.text += text_[place_++];
        }
        expect(';');
        return made;
    }

  private:
    void skip_blank() {
        while (place_ < text_.size()) {
            if (static_cast<unsigned char>(text_[place_]) <= ' ') {
                ++place_;
            } else if (text_.substr(place_, 2) == "/*") {
                const std::size_t end = text_.find("*/", place_ + 2);
                place_ = end == std::string_view::npos ? text_.size() : end + 2;
            } else {
                return;
            }
        }
    }

    int read_number() {
        int number = 0;
        const char *from = text_.data() + place_;
        const auto end = std::from_chars(from, text_.data() + text_.size(), number);
        if (end.ec != std::errc{}) fail("a number is missing behind \"#\"");
        place_ += static_cast<std::size_t>(end.ptr - from);
        return number;
    }

    void read_string(std::string &to) {
        const std::size_t end = text_.find('\'', place_ + 1);
        if (end == std::string_view::npos) fail("a string has no end");
        // A doubled apostrophe simply reads as two strings side by side.
        to += text_.substr(place_, end + 1 - place_);
        place_ = end + 1;
    }

    void read_reference(Instance &made) {
        const std::size_t from = place_++;
        const int id = read_number();
        made.references.push_back({made.text.size(), place_ - from, id});
        made.text += text_.substr(from, place_ - from);
    }

    std::string_view text_;
    std::size_t place_ = 0;
};

std::string_view data_section(std::string_view file) {
    static constexpr std::string_view opening = "DATA;", closing = "ENDSEC;";
    const std::size_t from = file.find(opening);
    const std::size_t to = file.rfind(closing);
    if (from == std::string_view::npos || to == std::string_view::npos || to < from)
        fail("it has no data section");
    return file.substr(from + opening.size(), to - from - opening.size());
}

} // namespace

std::string_view Instance::type() const {
    return std::string_view(text).substr(0, text.find('('));
}

Instances read_data(std::string_view file) {
    Instances all;
    for (Scanner scanner(data_section(file)); !scanner.at_end();) {
        const int id = scanner.read_id();
        scanner.expect('=');
        if (!all.try_emplace(id, scanner.read_instance()).second)
            fail("#" + std::to_string(id) + " is given twice");
    }
    for (const auto &[id, instance] : all)
        for (const Instance::Reference &reference : instance.references)
            if (!all.contains(reference.id))
                fail("#" + std::to_string(id) + " refers to #" + std::to_string(reference.id) +
                     ", which is not there");
    return all;
}

} // namespace roundlay::part21
