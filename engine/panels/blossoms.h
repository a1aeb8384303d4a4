// Growing trees of pairs, and odd circles in them shrunk to a single node: how the pairing of most
// weight is found (Edmonds 1965). Prices are whole numbers, twice what a match is worth.
//
//    outer ═ inner ─ outer      a pair ═, a link without slack ─; two outer nodes that are linked
//      └───── circle ─────┘     close a circle, or join two trees: then there is a pair more
#pragma once

#include <cstddef>
#include <cstdint>
#include <deque>
#include <span>
#include <vector>

#include "engine/panels/most_weight_matching.h"

namespace hemline {

/// A node is somebody (1…n), or a blossom of an odd circle of nodes (past n); 0 is nobody. Prices
/// cover each match twice: price(a) + price(b) ≥ 2 · worth; those with no slack may be used.
class Blossoms {
  public:
    Blossoms(std::size_t people, std::span<const Match> matches);
    /// Makes one pair more; false once that is worth nothing.
    bool make_one_more();
    [[nodiscard]] std::size_t mate(std::size_t one) const { return mate_[one]; }

  private:
    using Node = std::size_t;
    enum class Mark { unseen, outer, inner };
    struct Link {
        Node a = 0, b = 0;  ///< people, also between blossoms
        std::int64_t worth = 0;
    };

    [[nodiscard]] std::int64_t slack_of(const Link& link) const {
        return price_[link.a] + price_[link.b] - 2 * links_[link.a][link.b].worth;
    }
    [[nodiscard]] std::int64_t slack_at(Node node) const {
        return slack_of(links_[nearest_[node]][node]);
    }
    [[nodiscard]] bool is_outermost(Node node) const { return in_[node] == node; }
    void look_nearer(Node from, Node node);
    void look_anew(Node node);
    void queue_people(Node node);
    void put_in(Node node, Node blossom);
    std::size_t even_way(Node blossom, Node part);
    void pair_up(Node a, Node b);
    void swap_along(Node a, Node b);
    Node meeting_of(Node a, Node b);
    void close_circle(Node a, Node root, Node b);
    void link_blossom(Node blossom);
    void open_circle(Node blossom);
    bool use(const Link& link);
    bool use_queued();
    [[nodiscard]] std::int64_t most_change() const;
    bool change_prices(std::int64_t by);
    bool use_what_became_tight();

    Node people_, nodes_;
    std::vector<std::vector<Link>> links_;
    std::vector<std::int64_t> price_;
    std::vector<Node> mate_, nearest_, in_, from_, seen_;
    std::vector<Mark> mark_;
    std::vector<std::vector<Node>> circle_, part_with_;
    std::deque<Node> queue_;
    Node round_ = 0;
};

}  // namespace hemline
