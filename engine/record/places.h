// Where things stand in a list, found by key at once: what is taken out leaves a gap until the list
// is swept, so that no event of a long journal moves all that came before it.
#pragma once

#include <cstddef>
#include <map>
#include <optional>
#include <utility>
#include <vector>

namespace hemline {

template <class Key>
class Places {
  public:
    void add(const Key& key, std::size_t place) { at_.emplace(key, place); }
    /// The first of that key that stands.
    [[nodiscard]] std::optional<std::size_t> first(const Key& key) const {
        const auto found = at_.lower_bound(key);
        return found == at_.end() || found->first != key ? std::nullopt
                                                         : std::optional(found->second);
    }
    /// None stands.
    [[nodiscard]] bool empty() const { return at_.empty(); }

    /// The first of that key goes.
    void take_first(const Key& key) {
        const auto found = at_.lower_bound(key);
        if (found != at_.end() && found->first == key) {
            gaps_.push_back(found->second);
            at_.erase(found);
        }
    }
    /// All of that key go; how many.
    std::size_t take_all(const Key& key) { return take_between(key, key); }
    /// All from the one key to the other, both among them.
    std::size_t take_between(const Key& first, const Key& last) {
        const auto from = at_.lower_bound(first), to = at_.upper_bound(last);
        const std::size_t before = gaps_.size();
        for (auto one = from; one != to; ++one) {
            gaps_.push_back(one->second);
        }
        at_.erase(from, to);
        return gaps_.size() - before;
    }

    /// Closes the gaps. The places are no longer those of the list.
    template <class T>
    void sweep(std::vector<T>& list) {
        if (gaps_.empty()) {
            return;
        }
        std::vector<bool> goes(list.size(), false);
        for (const std::size_t gap : gaps_) {
            goes[gap] = true;
        }
        std::size_t kept = 0;
        for (std::size_t i = 0; i < list.size(); ++i) {
            if (!goes[i]) {
                if (kept != i) {
                    list[kept] = std::move(list[i]);
                }
                ++kept;
            }
        }
        list.erase(list.begin() + static_cast<std::ptrdiff_t>(kept), list.end());
        gaps_.clear();
    }

  private:
    std::multimap<Key, std::size_t> at_;  ///< of one key in the order added
    std::vector<std::size_t> gaps_;
};

}  // namespace hemline
