// What one reading of a document gathers on its way: the problems, and where each statement stands.
#pragma once

#include "kernel/document/parsed_text.h"
#include "kernel/document/source_map.h"

#include <set>
#include <string>

namespace roundlay {

class Reading {
  public:
    Reading(const ParsedText &text, std::string file) : text_(text), file_(std::move(file)) {}

    const ParsedText &text() const { return text_; }
    const SourceMap &places() const { return places_; }

    void error(const Place &place, std::string message, std::string expected = {}) {
        report(Weight::error, place, std::move(message), std::move(expected));
    }
    void warning(const Place &place, std::string message, std::string expected = {}) {
        report(Weight::warning, place, std::move(message), std::move(expected));
    }
    /// In the units of that style; names in it are quoted, and cut where they are long.
    void report(Weight weight, const Place &place, const Said &said, const LengthStyle &style);
    void stated(std::string path, const Place &place) { places_.add(std::move(path), place); }
    /// What is stated there does not hold; it is reported.
    void wrong(std::string path) { wrong_.insert(std::move(path)); }
    bool is_right(const std::string &path) const { return places_.states(path) && !wrong_.contains(path); }
    /// A statement that was read before. Only for paths that are stated.
    Place place_of(const std::string &path) const { return places_.locate(path).value_or(Place{}); }

    /// In the order of the text. After limits::problems errors, and as many warnings, one more says that
    /// there are others.
    Problems take_problems();
    SourceMap take_places() { return std::move(places_); }

  private:
    void report(Weight weight, const Place &place, std::string message, std::string expected) {
        keep({weight, file_, place, std::move(message), std::move(expected)});
    }
    void keep(Problem problem);

    const ParsedText &text_;
    std::string file_;
    Problems problems_;
    SourceMap places_;
    std::set<std::string> wrong_;
    std::size_t errors_ = 0; ///< among problems_
    bool left_out_error_ = false;
    std::size_t left_out_ = 0;
};

} // namespace roundlay
