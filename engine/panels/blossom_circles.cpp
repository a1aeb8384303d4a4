// What an odd circle does: it is closed, paired along, opened again.
#include <algorithm>

#include "engine/panels/blossoms.h"

namespace hemline {

/// The place of the part in its circle, which is turned so that an even way leads there.
std::size_t Blossoms::even_way(Node blossom, Node part) {
    auto& circle = circle_[blossom];
    const auto place =
        static_cast<std::size_t>(std::find(circle.begin(), circle.end(), part) - circle.begin());
    if (place % 2 == 0) {
        return place;
    }
    std::reverse(circle.begin() + 1, circle.end());
    return circle.size() - place;
}

/// `a`, and all in it, so that its link to `b` is a pair.
void Blossoms::pair_up(Node a, Node b) {
    const Link link = links_[a][b];
    mate_[a] = link.b;
    if (a <= people_) {
        return;
    }
    const Node part = part_with_[a][link.a];
    const std::size_t place = even_way(a, part);
    for (std::size_t i = 0; i < place; ++i) {
        pair_up(circle_[a][i], circle_[a][i ^ 1U]);
    }
    pair_up(part, b);
    std::rotate(circle_[a].begin(), circle_[a].begin() + static_cast<std::ptrdiff_t>(place),
                circle_[a].end());
}

/// From the link to the root of a's tree: pairs become links, and links pairs.
void Blossoms::swap_along(Node a, Node b) {
    for (;;) {
        const Node before = in_[mate_[a]];
        pair_up(a, b);
        if (before == 0) {
            return;
        }
        pair_up(before, in_[from_[before]]);
        a = in_[from_[before]];
        b = before;
    }
}

/// Where the ways to the roots meet; 0: two trees.
Blossoms::Node Blossoms::meeting_of(Node a, Node b) {
    for (++round_; a != 0 || b != 0; std::swap(a, b)) {
        if (a == 0) {
            continue;
        }
        if (seen_[a] == round_) {
            return a;
        }
        seen_[a] = round_;
        a = in_[mate_[a]];
        a = a == 0 ? 0 : in_[from_[a]];
    }
    return 0;
}

void Blossoms::close_circle(Node a, Node root, Node b) {
    Node blossom = people_ + 1;
    while (blossom <= nodes_ && in_[blossom] != 0) {
        ++blossom;
    }
    nodes_ = std::max(nodes_, blossom);
    price_[blossom] = 0;
    mark_[blossom] = Mark::outer;
    mate_[blossom] = mate_[root];
    auto& circle = circle_[blossom];
    circle = {root};
    const auto add_way = [&](Node from) {
        for (Node node = from; node != root;) {
            const Node next = in_[mate_[node]];
            circle.push_back(node);
            circle.push_back(next);
            queue_people(next);
            node = in_[from_[next]];
        }
    };
    add_way(a);
    std::reverse(circle.begin() + 1, circle.end());
    add_way(b);
    put_in(blossom, blossom);
    link_blossom(blossom);
    look_anew(blossom);
}

/// Of its parts' links to each node the one with the least slack.
void Blossoms::link_blossom(Node blossom) {
    for (Node node = 1; node <= nodes_; ++node) {
        links_[blossom][node].worth = links_[node][blossom].worth = 0;
    }
    std::fill(part_with_[blossom].begin(), part_with_[blossom].end(), 0);
    for (const Node part : circle_[blossom]) {
        for (Node node = 1; node <= nodes_; ++node) {
            if (links_[blossom][node].worth == 0 ||
                slack_of(links_[part][node]) < slack_of(links_[blossom][node])) {
                links_[blossom][node] = links_[part][node];
                links_[node][blossom] = links_[node][part];
            }
        }
        for (Node one = 1; one <= people_; ++one) {
            if (part_with_[part][one] != 0) {
                part_with_[blossom][one] = part;
            }
        }
    }
}

void Blossoms::open_circle(Node blossom) {
    for (const Node part : circle_[blossom]) {
        put_in(part, part);
    }
    const Node entered = part_with_[blossom][links_[blossom][from_[blossom]].a];
    const std::size_t place = even_way(blossom, entered);
    const auto& circle = circle_[blossom];
    for (std::size_t i = 0; i < place; i += 2) {
        const Node inner = circle[i], outer = circle[i + 1];
        from_[inner] = links_[outer][inner].a;
        mark_[inner] = Mark::inner;
        mark_[outer] = Mark::outer;
        nearest_[inner] = 0;
        look_anew(outer);
        queue_people(outer);
    }
    mark_[entered] = Mark::inner;
    from_[entered] = from_[blossom];
    for (std::size_t i = place + 1; i < circle.size(); ++i) {
        mark_[circle[i]] = Mark::unseen;
        look_anew(circle[i]);
    }
    in_[blossom] = 0;
}

}  // namespace hemline
