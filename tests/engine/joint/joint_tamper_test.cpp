// Random certificates that claim one stick too many: none may be accepted.
#include <doctest/doctest.h>

#include <random>

#include "tests/engine/joint/joint_checker.h"
#include "tests/reference/joint_jobs.h"

using namespace hemline;

namespace {

class Tamperer {
  public:
    explicit Tamperer(std::uint64_t seed) : random_(seed) {}

    int between(int low, int high) {
        return low + static_cast<int>(random_() % static_cast<std::uint64_t>(high - low + 1));
    }

    /// Two parts and the rest in place of a part: shorter and longer pieces of a class of an edge.
    void split_part(const JointJob& job, std::vector<JointPart>& parts) {
        const JointPart of = any(parts);
        const auto e = static_cast<std::size_t>(between(0, static_cast<int>(job.edges.size()) - 1));
        if (of.edges[e].classes == 0) {
            return;
        }
        int own = 0;
        while ((of.edges[e].classes >> own & 1U) == 0) {
            ++own;
        }
        JointPart shorter = of, rest = of;
        rest.edges[e].classes &= ~(1U << own);
        shorter.edges[e].classes = 1U << own;
        std::vector<LengthRange>& ranges = shorter.edges[e].ranges;
        const auto pieces =
            static_cast<std::size_t>(joint_checker::edge_of(job.edges[e].rule).fewest + own / 2);
        ranges.resize(pieces, {Length(), job.edges[e].rule.stock});
        JointPart longer = shorter;
        const auto place = static_cast<std::size_t>(between(0, static_cast<int>(pieces) - 1));
        const int most = between(1, 25);
        for (std::size_t i = 0; i < pieces; ++i) {
            LengthRange& below = ranges[i];
            LengthRange& above = longer.edges[e].ranges[i];
            below.most = i <= place ? std::min(below.most, sixteenths(most)) : below.most;
            above.least = i >= place ? std::max(above.least, sixteenths(most + 1)) : above.least;
        }
        parts.insert(parts.end(), {shorter, longer, rest});
    }

    void change(std::vector<JointPart>& parts) {
        JointPart& part = any(parts);
        DivisionSet& set = any(part.edges);
        JointWorths& worths = part.worths;
        switch (between(0, 9)) {
            case 0:
                set.classes ^= 1U << between(0, 5);
                break;
            case 1:
                set.classes = between(0, 1) == 0 ? 0U : ~0U;
                break;
            case 2:
                if (!set.ranges.empty()) {
                    LengthRange& range = any(set.ranges);
                    (between(0, 1) == 0 ? range.least : range.most) += sixteenths(between(-3, 3));
                }
                break;
            case 3:
                set.ranges.assign(static_cast<std::size_t>(between(0, 4)),
                                  {Length(), sixteenths(between(1, 30))});
                break;
            case 4:
                worths.share = std::max<std::int64_t>(1, worths.share * between(1, 3) / 2);
                break;
            case 5:
                any(worths.worth) += between(0, 1'000'000);
                break;
            case 6:
                any(worths.stick_worth) = worths.share * between(0, 2);
                break;
            case 7:
                (between(0, 1) == 0 ? worths.lap : worths.unbalanced) = between(0, 1 << 30);
                break;
            case 8:
                part.worths = JointWorths(any(parts).worths);
                break;
            default:
                parts.erase(parts.begin() + between(0, static_cast<int>(parts.size()) - 1));
        }
    }

  private:
    template <class T>
    T& any(std::vector<T>& all) {
        return all[static_cast<std::size_t>(between(0, static_cast<int>(all.size()) - 1))];
    }

    std::mt19937_64 random_;
};

}  // namespace

TEST_CASE("No certificate changed by chance shows a stick more than a proved plan takes") {
    Tamperer tamperer(41);
    int tried = 0, believed = 0, still_fine = 0;
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        const JointJob job = seed % 2 == 0 ? reference::odd_joint_job(seed)
                                           : reference::joint_job(seed, 5, reference::Stock::mixed);
        for (JointPlan& plan : choices(job, Prefer::sticks)) {
            plan.parts = parts_of_bound(job, plan, {});
            if (!plan.proved || plan.parts.empty()) {
                continue;
            }
            for (int splits = tamperer.between(0, 3); splits > 0; --splits) {
                tamperer.split_part(job, plan.parts);
            }
            for (int n = 0; n < 50; ++n) {
                JointPlan other = plan;
                for (int k = tamperer.between(1, 3); k > 0 && !other.parts.empty(); --k) {
                    tamperer.change(other.parts);
                }
                ++tried;
                still_fine += joint_checker::wrong_parts(job, other).empty() ? 1 : 0;
                ++other.lower_bound;
                believed += joint_checker::wrong_parts(job, other).empty() ? 1 : 0;
            }
        }
    }
    MESSAGE(tried << " changed, of which " << still_fine << " still show the bound itself");
    CHECK(tried > 2000);
    CHECK(still_fine > 100);
    CHECK(believed == 0);
}
