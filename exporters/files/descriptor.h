// A file descriptor that closes itself, and the two calls every writer here needs.
#pragma once

#include <unistd.h>

#include <cerrno>
#include <string_view>
#include <utility>

namespace roundlay {

class Descriptor {
  public:
    explicit Descriptor(int number = -1) : number_(number) {}
    Descriptor(Descriptor &&other) noexcept : number_(std::exchange(other.number_, -1)) {}
    Descriptor &operator=(Descriptor &&other) noexcept {
        std::swap(number_, other.number_);
        return *this;
    }
    ~Descriptor() {
        if (number_ >= 0) ::close(number_);
    }

    bool open() const { return number_ >= 0; }
    int number() const { return number_; }
    /// 0 or the errno: some file systems only report a full disk here.
    int close() { return ::close(std::exchange(number_, -1)) == 0 ? 0 : errno; }

  private:
    int number_;
};

/// Writes everything; 0 or the errno.
inline int write_all(const Descriptor &to, std::string_view bytes) {
    while (!bytes.empty()) {
        const ssize_t n = ::write(to.number(), bytes.data(), bytes.size());
        if (n < 0 && errno == EINTR) continue;
        if (n < 0) return errno;
        bytes.remove_prefix(static_cast<std::size_t>(n));
    }
    return 0;
}

} // namespace roundlay
