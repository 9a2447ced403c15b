// Entities of ISO 16739-1 as text: what all of them share. Private to this room.
#pragma once

#include "exporters/building/guid.h"
#include "exporters/part21/part21_text.h"
#include "exporters/part21/placing.h"

#include <map>
#include <optional>
#include <set>
#include <string>
#include <tuple>
#include <vector>

namespace roundlay::building {

using part21::Derived;
using part21::Enumeration;
using part21::Ref;
using part21::Unset;

/// A name or description as a label: none where it is empty, cut where it is longer than the standard allows.
std::optional<std::string> label_of(const std::string &words);

class IfcText {
  public:
    /// `house`: what makes its identifiers its own.
    explicit IfcText(std::string house) : house_(std::move(house)) {}

    template <typename... Values> Ref add(std::string_view type, const Values &...values) {
        return data_.add(type, values...);
    }

    /// One with an identifier. `what`: of this house, and of nothing else in it.
    template <typename... Values>
    Ref rooted(std::string_view type, const std::string &what, const std::string &name,
               const std::string &description, const Values &...values) {
        return data_.add(type, guid(what), owner_, label_of(name), label_of(description), values...);
    }

    /// Who made what is written from here on.
    void owned_by(Ref history) { owner_ = history; }

    Ref point(Vec3 at) { return data_.add("IFCCARTESIANPOINT", part21::to_finest(at)); }
    /// Each is written once.
    Ref direction(Vec3 unit);
    Ref placement(const Frame &frame);
    Ref local_placement(std::optional<Ref> within, const Frame &frame);

    void reserve(std::size_t bytes) { data_.reserve(bytes); }
    std::string take() { return data_.take(); }

  private:
    std::string guid(const std::string &what);

    std::string house_;
    part21::DataWriter data_;
    std::optional<Ref> owner_;
    std::map<std::tuple<double, double, double>, Ref> directions_;
    std::set<std::string> given_;
};

} // namespace roundlay::building
