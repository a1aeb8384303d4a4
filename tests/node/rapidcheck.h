// The few rapidcheck words that our tests use, for Node: Debian ships that library as native code
// only. There are as many random cases, from a fixed seed; a failing case is not made smaller.
#pragma once

#include <cstdint>
#include <cstdio>
#include <functional>
#include <initializer_list>
#include <random>
#include <sstream>
#include <string>
#include <type_traits>
#include <utility>
#include <vector>

namespace rc {

struct Failure {
    const char* what;
    const char* file;
    int line;
};
struct Discard {};

inline std::mt19937_64& random_bits() {
    static std::mt19937_64 bits(20'240'229);
    return bits;
}

template <class T>
struct Gen {
    std::function<T()> make;
    T operator*() const { return make(); }
};

namespace gen {

template <class T>
Gen<T> inRange(T low, T high) {
    return {[=] {
        const auto span = static_cast<std::uint64_t>(high) - static_cast<std::uint64_t>(low);
        return static_cast<T>(static_cast<std::uint64_t>(low) + random_bits()() % span);
    }};
}

template <class T>
Gen<T> elementOf(const std::vector<T>& all) {
    return {[=] { return all[random_bits()() % all.size()]; }};
}

inline Gen<char> elementOf(const std::string& all) {
    return {[=] { return all[random_bits()() % all.size()]; }};
}

template <class T, class... Rest>
Gen<T> element(T first, Rest... rest) {
    return elementOf(std::vector<T>{first, static_cast<T>(rest)...});
}

template <class C, class T>
Gen<C> container(Gen<T> of) {
    return {[=] {
        C all;
        for (std::uint64_t left = random_bits()() % 60; left > 0; --left) {
            all.push_back(*of);
        }
        return all;
    }};
}

template <class C, class T>
Gen<C> container(std::size_t size, Gen<T> of) {
    return {[=] {
        C all;
        while (all.size() < size) {
            all.push_back(*of);
        }
        return all;
    }};
}

template <class T>
struct Arbitrary {
    static T make() {
        // Small numbers and edges of the range are met more often than by plain chance.
        const std::uint64_t bits = random_bits()();
        return static_cast<T>(bits >> (random_bits()() % 64));
    }
};
template <>
struct Arbitrary<bool> {
    static bool make() { return (random_bits()() & 1) != 0; }
};
template <>
struct Arbitrary<std::string> {
    static std::string make() { return *container<std::string>(inRange<int>(1, 256)); }
};
template <class T>
struct Arbitrary<std::vector<T>> {
    static std::vector<T> make() { return *container<std::vector<T>>(Gen<T>{Arbitrary<T>::make}); }
};

template <class T>
Gen<T> arbitrary() {
    return {Arbitrary<T>::make};
}

}  // namespace gen

template <class Property, class... Arguments>
void run_once(const Property& property, void (Property::*)(Arguments...) const) {
    property(gen::Arbitrary<std::decay_t<Arguments>>::make()...);
}

template <class Property>
bool check(const char* name, const Property& property) {
    constexpr int cases = 100;
    for (int done = 0, tried = 0; done < cases; ++tried) {
        if (tried == 10 * cases) {
            std::printf("%s: too few cases suit\n", name);
            return false;
        }
        try {
            run_once(property, &Property::operator());
            ++done;
        } catch (const Discard&) {
        } catch (const Failure& failure) {
            std::printf("%s: case %d: %s:%d: %s\n", name, done + 1, failure.file, failure.line,
                        failure.what);
            return false;
        }
    }
    return true;
}

template <class Property>
bool check(const Property& property) {
    return check("property", property);
}

}  // namespace rc

#define RC_ASSERT(...)                                           \
    do {                                                         \
        if (!(__VA_ARGS__)) {                                    \
            throw rc::Failure{#__VA_ARGS__, __FILE__, __LINE__}; \
        }                                                        \
    } while (false)
#define RC_PRE(...)              \
    do {                         \
        if (!(__VA_ARGS__)) {    \
            throw rc::Discard{}; \
        }                        \
    } while (false)
#define RC_TAG(...) \
    do {            \
    } while (false)
/// What the real library prints of a failing case; here nobody listens.
#define RC_LOG() std::ostringstream()
