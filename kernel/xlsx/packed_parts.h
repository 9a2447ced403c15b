// The files inside a packed file.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <string_view>

struct zip;

namespace roundlay {

class PackedParts {
  public:
    /// The bytes must outlive it.
    explicit PackedParts(std::string_view bytes);

    bool good() const { return archive_ != nullptr; }
    /// Nothing where there is no such part, or it cannot be unpacked whole, or all that was taken grows over
    /// the limit.
    std::optional<std::string> part(const std::string &name);
    bool has(const std::string &name) const;
    bool is_too_large() const { return too_large_; }

  private:
    struct Discard {
        void operator()(zip *archive) const;
    };
    std::unique_ptr<zip, Discard> archive_;
    std::size_t left_;
    bool too_large_ = false;
};

} // namespace roundlay
