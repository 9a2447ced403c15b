// The global settings of OpenCASCADE's STEP writer, changed for a while and put back.
#pragma once

#include <mutex>
#include <string>
#include <vector>

namespace roundlay::step {

/// Holds the one lock of the process for the library's STEP writing, which is not safe on two threads at
/// once, and sets what our files ask for. The destructor puts every setting back.
class LibrarySettings {
  public:
    LibrarySettings();
    ~LibrarySettings();
    LibrarySettings(const LibrarySettings &) = delete;
    LibrarySettings &operator=(const LibrarySettings &) = delete;

  private:
    /// The library prints statistics of every transfer to standard output, where a caller's data may go.
    void quieten();
    void set(const char *name, const char *value);
    void set(const char *name, int value);

    struct Saved {
        const char *name = nullptr;
        bool is_text = false;
        int number = 0;
        std::string text;
    };
    std::scoped_lock<std::mutex> lock_;
    std::vector<Saved> saved_;
    std::vector<int> loudness_; ///< of the library's printers
};

} // namespace roundlay::step
