#include "engine/panels/relaid.h"

#include <algorithm>
#include <functional>

namespace hemline {

namespace {

bool lies(const LaidSoFar& so_far, int pan) {
    return std::find(so_far.lying.begin(), so_far.lying.end(), pan) != so_far.lying.end();
}

std::optional<Problem> unknown_in(const PanelLayout& planned, const LaidSoFar& so_far) {
    const int pans = planned.pans.empty() ? 0 : planned.pans.back().number;
    bool known = true;
    for (const SeamRead& read : so_far.read) {
        known = known && read.seam >= 1 && read.seam < pans;
    }
    for (const int pan : so_far.lying) {
        known = known && pan >= 1 && pan <= pans;
    }
    for (const SpoiledPan& spoiled : so_far.spoiled) {
        known = known && std::any_of(planned.pans.begin(), planned.pans.end(),
                                     [&](const LaidPan& pan) { return pan.name() == spoiled.pan; });
    }
    if (known) {
        return {};
    }
    return Problem{say("The plane has no such pan or seam."),
                   say("Count them from the left end of the eave.")};
}

/// Seams as they lie and go on, counted from the side where laying began.
std::vector<Length> seams_from(const PanelLayout& planned, const LaidSoFar& so_far, bool left) {
    std::vector<Length> seams;
    for (const LaidSeam& seam : planned.seams) {
        seams.push_back(seam.at);
    }
    std::vector<SeamRead> read = so_far.read;
    std::sort(read.begin(), read.end(), [&](const SeamRead& a, const SeamRead& b) {
        return left ? a.seam < b.seam : a.seam > b.seam;
    });
    const Length step = left ? planned.frame.module : -planned.frame.module;
    for (const SeamRead& one : read) {
        Length at = one.at;
        if (left) {
            for (auto i = static_cast<std::size_t>(one.seam - 1); i < seams.size(); ++i) {
                seams[i] = at;
                at += step;
            }
        } else {
            for (auto i = static_cast<std::size_t>(one.seam); i > 0; --i) {
                seams[i - 1] = at;
                at += step;
            }
        }
    }
    return seams;
}

/// With seams more or less at the side that is laid last, so that no pan there is wider than the
/// module and none is gone.
void fit_end(std::vector<Length>& seams, const SeamFrame& frame, bool left) {
    const Length module = frame.module;
    if (left) {
        while (!seams.empty() && seams.back() >= frame.right.at) {
            seams.pop_back();
        }
        const Length wider = frame.right.square ? std::max(Length(), frame.lean) : Length();
        while (!seams.empty() && frame.right.at - seams.back() + wider > module &&
               seams.back() + module < frame.right.at) {
            seams.push_back(seams.back() + module);
        }
        return;
    }
    while (!seams.empty() && seams.front() <= frame.left.at) {
        seams.erase(seams.begin());
    }
    const Length wider = frame.left.square ? std::max(Length(), -frame.lean) : Length();
    while (!seams.empty() && seams.front() - frame.left.at + wider > module &&
           seams.front() - module > frame.left.at) {
        seams.insert(seams.begin(), seams.front() - module);
    }
}

/// A pan there is: as ordered, or what is left of it.
struct Supply {
    std::pair<int, int> name;
    Length length;
    bool used = false;
};

std::vector<Supply> supplies_of(const PanelLayout& planned, const LaidSoFar& so_far) {
    std::vector<Supply> all;
    for (const LaidPan& pan : planned.pans) {
        const auto spoiled =
            std::find_if(so_far.spoiled.begin(), so_far.spoiled.end(),
                         [&](const SpoiledPan& one) { return one.pan == pan.name(); });
        if (lies(so_far, pan.number)) {
            continue;
        }
        if (spoiled == so_far.spoiled.end()) {
            all.push_back({pan.name(), pan.length});
        } else if (spoiled->left) {
            all.push_back({pan.name(), *spoiled->left});
        }
    }
    return all;
}

class Sharing {
  public:
    Sharing(Relaid& relaid, std::vector<Supply> supplies, std::vector<std::size_t> pans)
        : relaid_(relaid), supplies_(std::move(supplies)), pans_(std::move(pans)) {
        std::stable_sort(pans_.begin(), pans_.end(),
                         [&](std::size_t a, std::size_t b) { return pan(a).exact > pan(b).exact; });
        for (std::size_t i = 0; i < pans_.size(); ++i) {
            Supply* const supply = best_for(i);
            relaid_.to_lay.push_back({pan(pans_[i]).name(), {}});
            if (supply) {
                supply->used = true;
                relaid_.to_lay.back().from = supply->name;
            } else {
                relaid_.to_order.push_back(pan(pans_[i]).length);
            }
        }
        std::sort(relaid_.to_lay.begin(), relaid_.to_lay.end(),
                  [](const PanFrom& a, const PanFrom& b) { return a.pan < b.pan; });
        std::sort(relaid_.to_order.begin(), relaid_.to_order.end(), std::greater<>());
        for (const Supply& supply : supplies_) {
            if (!supply.used) {
                relaid_.left_over.push_back(supply.name);
            }
        }
    }

  private:
    [[nodiscard]] const LaidPan& pan(std::size_t i) const { return relaid_.layout.pans[i]; }

    /// The pan later in line that this one is meant for; none: nobody waits for it.
    [[nodiscard]] const LaidPan* waits_for(const Supply& supply, std::size_t after) const {
        for (std::size_t i = after + 1; i < pans_.size(); ++i) {
            if (pan(pans_[i]).name() == supply.name && supply.length >= pan(pans_[i]).exact) {
                return &pan(pans_[i]);
            }
        }
        return nullptr;
    }

    /// The longest comes first, so whatever is long enough for it serves all after it too: none is
    /// wasted. Its own; else the shortest that nobody waits for; else one whose own place is
    /// shorter to order.
    Supply* best_for(std::size_t place) {
        const LaidPan& asked = pan(pans_[place]);
        Supply* best = nullptr;
        int best_rank = 3;
        for (Supply& supply : supplies_) {
            if (supply.used || supply.length + nanometres(1) < asked.exact) {
                continue;
            }
            const LaidPan* const other = waits_for(supply, place);
            const int rank = supply.name == asked.name()    ? 0
                             : !other                       ? 1
                             : other->length < asked.length ? 2
                                                            : 3;
            if (rank < best_rank || (rank == best_rank && best && supply.length < best->length)) {
                best = rank < 3 ? &supply : best;
                best_rank = std::min(rank, best_rank);
            }
        }
        return best;
    }

    Relaid& relaid_;
    std::vector<Supply> supplies_;
    std::vector<std::size_t> pans_;
};

}  // namespace

Result<Relaid> relaid(const PlaneAsked& asked, const PanelLayout& planned,
                      const LaidSoFar& so_far) {
    if (auto problem = unknown_in(planned, so_far)) {
        return *problem;
    }
    const bool left = so_far.lying.empty() || lies(so_far, 1);
    const int before = planned.pans.empty() ? 0 : planned.pans.back().number;
    SeamLayout seams{seams_from(planned, so_far, left), planned.shift, {}, {}};
    if (std::adjacent_find(seams.seams.begin(), seams.seams.end(), std::greater_equal<>()) !=
        seams.seams.end()) {
        return Problem{say("A seam cannot lie beyond the one after it."),
                       say("Read it again from the left end of the eave.")};
    }
    fit_end(seams.seams, planned.frame, left);
    seams.staying = conflicts_of(seams.seams, seam_task(asked).keep_off);
    const Result<PanelLayout> layout = lay_panels(asked, seams);
    if (!layout) {
        return layout.problem();
    }
    Relaid result{*layout, {}, {}, {}};
    const int now = result.layout.pans.empty() ? 0 : result.layout.pans.back().number;
    // Laid from the right, pans keep their names counted from there.
    const int renamed = left ? 0 : now - before;
    std::vector<Supply> supplies = supplies_of(planned, so_far);
    for (Supply& supply : supplies) {
        supply.name.first += renamed;
    }
    std::vector<std::size_t> to_lay;
    for (std::size_t i = 0; i < result.layout.pans.size(); ++i) {
        if (!lies(so_far, result.layout.pans[i].number - renamed)) {
            to_lay.push_back(i);
        }
    }
    Sharing(result, std::move(supplies), std::move(to_lay));
    for (PanFrom& one : result.to_lay) {
        if (one.from) {
            one.from->first -= renamed;
        }
    }
    for (auto& name : result.left_over) {
        name.first -= renamed;
    }
    return result;
}

}  // namespace hemline
