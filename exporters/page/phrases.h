// Words that come again and again stand in the page once. Private to this room.
#pragma once

#include <map>
#include <string>
#include <vector>

namespace roundlay {

class Phrases {
  public:
    /// Where the words stand in `all`.
    std::size_t operator()(const std::string &words) {
        const auto [found, fresh] = known_.try_emplace(words, all_.size());
        if (fresh) all_.push_back(words);
        return found->second;
    }
    const std::vector<std::string> &all() const { return all_; }

  private:
    std::map<std::string, std::size_t> known_;
    std::vector<std::string> all_;
};

} // namespace roundlay
