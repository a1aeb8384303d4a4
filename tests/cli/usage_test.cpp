// Wrong usage and odd words: exit 2 for what no command means, never a crash.
#include <doctest/doctest.h>

#include <regex>

#include "tests/cli/program.h"

using namespace hemline::test;

TEST_CASE("--version names version and commit, or says that no commit is known") {
    const Ran ran = Desk().run({"--version"});
    CHECK(ran.exit == 0);
    CHECK(std::regex_match(ran.out,
                           std::regex("Hemline [0-9.]+, commit ([0-9a-f]{12}(, changed since)?|"
                                      "unknown: built without git)\n")));
}

TEST_CASE("wrong usage is exit 2 with words on stderr, and asking for help is exit 0") {
    const Desk desk;
    const std::vector<std::vector<std::string>> wrong = {
        {},
        {"plot"},
        {"plan"},
        {"plan", "a.csv", "b.csv"},
        {"plan", "a.csv", "--style", "fancy"},
        {"plan", "a.csv", "--unit", "ell"},
        {"plan", "a.csv", "--stock"},
        {"plan", "a.csv", "--stock", "10 ft", "--stock", "12 ft"},
        {"plan", "a.csv", "--frobnicate"},
        {"pitch"},
        {"pitch", "5/12", "--seam", "welded"},
        {"card", "a.csv", "A"},
        {"card", "a.csv", "A", "x"},
        {"journal"},
        {"new"},
        {"take", "job", "A"},
        {"take"},
        {"show"},
        {"--json"},
        {"plan", "a.csv", "--json=perhaps"},
    };
    for (const auto& words : wrong) {
        const Ran ran = desk.run(words);
        CHECK_MESSAGE(ran.exit == 2, (words.empty() ? "" : words.back()), ran.err);
        CHECK(!ran.err.empty());
        CHECK(ran.out.empty());
    }
    CHECK(desk.run({"--help"}).exit == 0);
    CHECK(desk.run({"plan", "--help"}).out.find("--stock") != std::string::npos);
}

TEST_CASE("odd words are a problem or wrong usage, never a crash") {
    const Desk desk;
    const std::string file = desk.write("a.csv",
                                        "edge,kind,trim,length,left,right,pitch\n"
                                        "plan,eave,,46 ft,gable,gable,5/12\n");
    const std::vector<std::string> odd = {"",
                                          " ",
                                          "-",
                                          "--",
                                          "---",
                                          "%%",
                                          "[1,2]",
                                          "{}",
                                          "\xFF\xFE",
                                          "a\nb",
                                          "\x1b[31m",
                                          "=",
                                          "--=",
                                          "99999999999999999999999999 ft",
                                          "../../../../etc/passwd",
                                          std::string(100'000, 'x'),
                                          std::string(5'000, '/')};
    for (const std::string& word : odd) {
        for (const auto& words :
             std::vector<std::vector<std::string>>{{word},
                                                   {"plan", word},
                                                   {"plan", file, "--stock", word},
                                                   {"plan", file, "--style", word},
                                                   {"pitch", word},
                                                   {"pitch", "5/12", "--trim", word},
                                                   {"card", file, word, "1"},
                                                   {"card", file, "plan", word},
                                                   {"card", file, "plan", "1", "--trim", word},
                                                   {"journal", word},
                                                   {"show", word},
                                                   {"take", word, "A", "1 ft"},
                                                   {"new", "job", "--from", word}}) {
            const Ran ran = desk.run(words);
            CHECK_MESSAGE((ran.exit == 0 || ran.exit == 1 || ran.exit == 2), words.front(),
                          ran.exit);
            CHECK_MESSAGE((ran.exit == 0 || !ran.err.empty()), words.front(), words.back());
        }
    }
}

TEST_CASE("a command's name may also be the name of an edge") {
    const Desk desk;
    const std::string file = desk.write("a.csv",
                                        "edge,kind,trim,length,left,right,pitch\n"
                                        "plan,eave,,46 ft,gable,gable,5/12\n");
    CHECK(desk.run({"card", file, "plan", "1"}).exit == 0);
}

TEST_CASE("a stock that cannot be right is named as the option it came from") {
    const Desk desk;
    const std::string file = desk.write("a.csv",
                                        "edge,kind,trim,length,left,right,pitch\n"
                                        "A,eave,,46 ft,gable,gable,5/12\n");
    for (const char* stock : {"10", "3 in", "6 in", "ten feet", "0 in", "10 ft 12 in", "2000 m"}) {
        const Ran ran = desk.run({"plan", file, "--stock", stock});
        CHECK_MESSAGE(ran.exit == 1, stock);
        CHECK_MESSAGE(ran.err.rfind("--stock:1:", 0) == 0, ran.err);
        CHECK(ran.out.empty());
    }
    CHECK(desk.run({"plan", file, "--stock", "120", "--unit", "in"}).exit == 0);
    CHECK(desk.run({"plan", file, "--stock=12 ft"}).exit == 0);
}
