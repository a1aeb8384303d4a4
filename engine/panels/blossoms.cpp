#include "engine/panels/blossoms.h"

#include <algorithm>
#include <limits>

namespace hemline {

Blossoms::Blossoms(std::size_t people, std::span<const Match> matches)
    : people_(people), nodes_(people) {
    const std::size_t most = 2 * people + 1;
    links_.assign(most, std::vector<Link>(most));
    part_with_.assign(most, std::vector<Node>(people + 1));
    circle_.resize(most);
    mark_.resize(most);
    price_.resize(most);
    for (auto* list : {&mate_, &nearest_, &in_, &from_, &seen_}) {
        list->resize(most);
    }
    std::int64_t most_worth = 0;
    for (const Match& match : matches) {
        links_[match.a + 1][match.b + 1].worth = links_[match.b + 1][match.a + 1].worth =
            match.worth;
        most_worth = std::max(most_worth, match.worth);
    }
    for (Node a = 1; a <= people; ++a) {
        in_[a] = part_with_[a][a] = a;
        price_[a] = most_worth;
        for (Node b = 1; b <= people; ++b) {
            links_[a][b].a = a;
            links_[a][b].b = b;
        }
    }
}

void Blossoms::look_nearer(Node from, Node node) {
    if (nearest_[node] == 0 || slack_of(links_[from][node]) < slack_at(node)) {
        nearest_[node] = from;
    }
}

void Blossoms::look_anew(Node node) {
    nearest_[node] = 0;
    for (Node a = 1; a <= people_; ++a) {
        if (links_[a][node].worth > 0 && in_[a] != node && mark_[in_[a]] == Mark::outer) {
            look_nearer(a, node);
        }
    }
}

void Blossoms::queue_people(Node node) {
    if (node <= people_) {
        queue_.push_back(node);
        return;
    }
    for (const Node part : circle_[node]) {
        queue_people(part);
    }
}

void Blossoms::put_in(Node node, Node blossom) {
    in_[node] = blossom;
    if (node > people_) {
        for (const Node part : circle_[node]) {
            put_in(part, blossom);
        }
    }
}

/// A link without slack from an outer node: true once it makes a pair more.
bool Blossoms::use(const Link& link) {
    const Node a = in_[link.a], b = in_[link.b];
    if (mark_[b] == Mark::unseen) {
        from_[b] = link.a;
        mark_[b] = Mark::inner;
        const Node next = in_[mate_[b]];
        nearest_[b] = nearest_[next] = 0;
        mark_[next] = Mark::outer;
        queue_people(next);
    } else if (mark_[b] == Mark::outer) {
        const Node root = meeting_of(a, b);
        if (root == 0) {
            swap_along(a, b);
            swap_along(b, a);
            return true;
        }
        close_circle(a, root, b);
    }
    return false;
}

bool Blossoms::use_queued() {
    while (!queue_.empty()) {
        const Node a = queue_.front();
        queue_.pop_front();
        if (mark_[in_[a]] == Mark::inner) {
            continue;
        }
        for (Node b = 1; b <= people_; ++b) {
            const Link link = links_[a][b];
            if (link.worth == 0 || in_[a] == in_[b]) {
                continue;
            }
            if (slack_of(link) > 0) {
                look_nearer(a, in_[b]);
            } else if (use(link)) {
                return true;
            }
        }
    }
    return false;
}

std::int64_t Blossoms::most_change() const {
    std::int64_t most = std::numeric_limits<std::int64_t>::max();
    for (Node node = 1; node <= nodes_; ++node) {
        if (!is_outermost(node)) {
            continue;
        }
        if (node > people_ && mark_[node] == Mark::inner) {
            most = std::min(most, price_[node] / 2);
        }
        if (nearest_[node] != 0 && mark_[node] != Mark::inner) {
            most = std::min(most, slack_at(node) / (mark_[node] == Mark::outer ? 2 : 1));
        }
    }
    return most;
}

/// False once somebody's price would be 0: to stay alone is then as good.
bool Blossoms::change_prices(std::int64_t by) {
    for (Node one = 1; one <= people_; ++one) {
        if (mark_[in_[one]] == Mark::outer && price_[one] <= by) {
            return false;
        }
    }
    for (Node one = 1; one <= people_; ++one) {
        const Mark mark = mark_[in_[one]];
        price_[one] += mark == Mark::outer ? -by : mark == Mark::inner ? by : 0;
    }
    for (Node blossom = people_ + 1; blossom <= nodes_; ++blossom) {
        if (is_outermost(blossom) && mark_[blossom] != Mark::unseen) {
            price_[blossom] += mark_[blossom] == Mark::outer ? 2 * by : -2 * by;
        }
    }
    return true;
}

bool Blossoms::use_what_became_tight() {
    queue_.clear();
    for (Node node = 1; node <= nodes_; ++node) {
        const Node from = nearest_[node];
        if (is_outermost(node) && from != 0 && in_[from] != node && slack_at(node) == 0 &&
            use(links_[from][node])) {
            return true;
        }
    }
    for (Node blossom = people_ + 1; blossom <= nodes_; ++blossom) {
        if (is_outermost(blossom) && mark_[blossom] == Mark::inner && price_[blossom] == 0) {
            open_circle(blossom);
        }
    }
    return false;
}

bool Blossoms::make_one_more() {
    std::fill(mark_.begin(), mark_.end(), Mark::unseen);
    std::fill(nearest_.begin(), nearest_.end(), 0);
    queue_.clear();
    for (Node node = 1; node <= nodes_; ++node) {
        if (is_outermost(node) && mate_[node] == 0) {
            from_[node] = 0;
            mark_[node] = Mark::outer;
            queue_people(node);
        }
    }
    if (queue_.empty()) {
        return false;
    }
    while (!use_queued()) {
        if (!change_prices(most_change())) {
            return false;
        }
        if (use_what_became_tight()) {
            return true;
        }
    }
    return true;
}

}  // namespace hemline
