// What the program says about its version and commit.
#include <doctest/doctest.h>

#include "engine/handover/job_pages.h"
#include "engine/trim/practice.h"
#include "engine/words/program_version.h"

using namespace hemline;

TEST_CASE("A version says its commit, what was changed since, and where none is known") {
    CHECK(words_of({"0.1.0", "1a2b3c4d5e6f"}).english() == "Hemline 0.1.0, commit 1a2b3c4d5e6f");
    CHECK(words_of({"0.1.0", "1a2b3c4d5e6f", true}).english() ==
          "Hemline 0.1.0, commit 1a2b3c4d5e6f, changed since");
    CHECK(words_of({"0.1.0", ""}).english() == "Hemline 0.1.0, commit unknown: built without git");
}

TEST_CASE("The page of a packed job names the program that packed it") {
    const std::string page = pages_of({}, Practice{}).at("job.html");
    CHECK(page.find(words_of(program_version()).english()) != std::string::npos);
}
