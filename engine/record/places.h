// An index of a list by key. What is taken out leaves a gap until the list is swept, so that no
// event of a long journal has to move all that came before it.
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
    /// The first entry of that key.
    [[nodiscard]] std::optional<std::size_t> first(const Key& key) const {
        const auto found = at_.lower_bound(key);
        return found == at_.end() || found->first != key ? std::nullopt
                                                         : std::optional(found->second);
    }
    /// No entry is left.
    [[nodiscard]] bool empty() const { return at_.empty(); }

    /// Takes out the first entry of that key.
    void take_first(const Key& key) {
        const auto found = at_.lower_bound(key);
        if (found != at_.end() && found->first == key) {
            gaps_.push_back(found->second);
            at_.erase(found);
        }
    }
    /// Takes out all entries of that key; returns how many.
    std::size_t take_all(const Key& key) { return take_between(key, key); }
    /// All entries between the two keys, both included.
    std::size_t take_between(const Key& first, const Key& last) {
        const auto from = at_.lower_bound(first), to = at_.upper_bound(last);
        const std::size_t before = gaps_.size();
        for (auto one = from; one != to; ++one) {
            gaps_.push_back(one->second);
        }
        at_.erase(from, to);
        return gaps_.size() - before;
    }

    /// Closes the gaps. Afterwards the index no longer fits the list.
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
    std::multimap<Key, std::size_t> at_;  ///< of the same key, in the order added
    std::vector<std::size_t> gaps_;
};

}  // namespace hemline
