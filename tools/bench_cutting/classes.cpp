#include "tools/bench_cutting/classes.h"

#include <algorithm>
#include <random>

namespace hemline {

namespace {

class Random {
  public:
    explicit Random(std::uint64_t seed) : engine_(seed) {}
    int between(int low, int high) {
        return low + static_cast<int>(engine_() % static_cast<std::uint64_t>(high - low + 1));
    }

  private:
    std::mt19937_64 engine_;
};

ClassJob on_sticks_of(Length stick) { return {{{{stick, std::nullopt, false}}, {}, {}}, {}}; }

/// Pieces of `low`…`high` sixteenths from sticks of 10 ft.
ClassJob from_ten_feet(Random& random, int pieces, int low, int high) {
    ClassJob own = on_sticks_of(feet(10));
    for (int i = 0; i < pieces; ++i) {
        own.job.demand.push_back({sixteenths(random.between(low, high)), 1});
    }
    return own;
}

ClassJob roof_like(Random& random) {
    return from_ten_feet(random, random.between(8, 200), 24 * 16, 120 * 16);
}

ClassJob short_flashings(Random& random) {
    return from_ten_feet(random, random.between(60, 150), 6 * 16, 40 * 16);
}

ClassJob perfect_fit(Random& random) {
    constexpr int stick = 120 * 16, least = 24 * 16, most = 60 * 16;
    ClassJob own = on_sticks_of(feet(10));
    own.optimum = 0;
    while (own.job.demand.size() < 120) {
        for (int left = stick; left > 0;) {
            const int piece = random.between(least, most);
            const int cut = left - piece < least ? left : piece;
            own.job.demand.push_back({sixteenths(cut), 1});
            left -= cut;
        }
        ++*own.optimum;
    }
    return own;
}

ClassJob uniform(Random& random, int pieces) {
    ClassJob own = on_sticks_of(millimetres(150));
    for (int i = 0; i < pieces; ++i) {
        own.job.demand.push_back({millimetres(random.between(20, 100)), 1});
    }
    return own;
}

ClassJob triplets(Random& random, int pieces) {
    ClassJob own = on_sticks_of(millimetres(1000));
    own.optimum = pieces / 3;
    for (int i = 0; i < pieces / 3; ++i) {
        const int first = random.between(380, 490);
        const int second = random.between(250, (1000 - first) / 2);
        for (const int length : {first, second, 1000 - first - second}) {
            own.job.demand.push_back({millimetres(length), 1});
        }
    }
    return own;
}

}  // namespace

std::vector<JobClass> job_classes(int count) {
    using Make = ClassJob (*)(Random&);
    struct Named {
        const char* name;
        ClassGroup group;
        Make make;
    };
    const Named named[] = {
        {"roof-like 8-200", ClassGroup::trim, roof_like},
        {"short flashings 60-150", ClassGroup::trim, short_flashings},
        {"perfect fit 120", ClassGroup::bin_packing, perfect_fit},
        {"U120", ClassGroup::bin_packing, [](Random& r) { return uniform(r, 120); }},
        {"U250", ClassGroup::bin_packing, [](Random& r) { return uniform(r, 250); }},
        {"T60", ClassGroup::bin_packing, [](Random& r) { return triplets(r, 60); }},
        {"T120", ClassGroup::bin_packing, [](Random& r) { return triplets(r, 120); }},
    };
    std::vector<JobClass> all;
    for (const Named& own : named) {
        JobClass jobs{own.name, own.group, {}};
        for (int i = 0; i < count; ++i) {
            Random random(1000 * static_cast<std::uint64_t>(all.size() + 1) +
                          static_cast<std::uint64_t>(i));
            jobs.jobs.push_back(own.make(random));
        }
        all.push_back(std::move(jobs));
    }
    return all;
}

CuttingJob reference_job(std::uint64_t seed, bool mixed) {
    Random random(seed);
    CuttingJob job;
    job.stock = {{feet(10), std::nullopt, false}};
    if (mixed) {
        job.kerf = sixteenths(random.between(0, 2));
        job.stock.push_back({feet(12), random.between(1, 5), false});
        for (int n = random.between(0, 4); n > 0; --n) {
            job.stock.push_back(
                {sixteenths(random.between(24 * 16, 110 * 16)), random.between(1, 2), true});
        }
    }
    const int kinds = random.between(8, mixed ? 22 : 40);
    std::vector<int> lengths;
    for (int i = 0; i < kinds; ++i) {
        lengths.push_back(random.between(24 * 16, 119 * 16));
    }
    std::sort(lengths.begin(), lengths.end());
    lengths.erase(std::unique(lengths.begin(), lengths.end()), lengths.end());
    for (const int length : lengths) {
        job.demand.push_back({sixteenths(length), random.between(1, mixed ? 4 : 5)});
    }
    return job;
}

}  // namespace hemline
