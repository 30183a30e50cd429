// The way a shop is backed up, lost and brought back by hand.
#include "tests/platform/tool.h"

#include <catch2/catch.hpp>

#include <filesystem>

using namespace undercowl::tests;
using Catch::Contains;

TEST_CASE("a shop is written into one sealed file, verified, lost and brought back") {
    const Scratch scratch;
    const std::string shop = scratch / "shop";
    REQUIRE(ctl("demo --only-shop --store '" + shop + "'").exit == 0);
    const std::string in = " --store '" + shop + "' ";
    const auto jobs = ctl("job list --json" + in).json();
    write(scratch / "word", "four wet spark plugs\n");
    const std::string word = " --passphrase-file '" + (scratch / "word") + "' ";

    CHECK(ctl("backup list" + in).exit == 1);
    CHECK(ctl("backup now" + in).exit == 0);
    CHECK(ctl("backup list --json" + in).json().at("copies").size() == 1);

    const std::string one = "'" + (scratch / "1.backup") + "'";
    const auto made = ctl("backup write " + one + word + "--json" + in);
    CHECK(made.exit == 0);
    CHECK(made.json().at("media_here") == made.json().at("media"));
    CHECK(ctl("backup write " + one + word + in).exit == 2); // never over what exists
    const auto second =
        ctl("backup write '" + (scratch / "2.backup") + "' --since " + one + word + "--json" + in);
    CHECK(second.json().at("media_here") == 0);

    CHECK(ctl("backup verify " + one + word).exit == 0);
    CHECK(ctl("backup verify " + one).exit == 2);
    write(scratch / "wrong", "three wet spark plugs");
    const Ran wrong = ctl("backup verify " + one + " --passphrase-file '" + (scratch / "wrong") + "'");
    CHECK(wrong.exit == 2);
    CHECK_THAT(wrong.err, Contains("passphrase"));
    CHECK(run("sh", "-c 'printf \"four wet spark plugs\" | \"" UNDERCOWLCTL "\" backup verify " +
                        (scratch / "1.backup") + " --passphrase-file -'")
              .exit == 0);

    std::filesystem::remove_all(shop);
    const Ran partly = ctl("backup restore '" + (scratch / "2.backup") + "' --to '" + shop + "'" + word);
    CHECK(partly.exit == 2);
    CHECK_THAT(partly.err, Contains("earlier backups"));
    CHECK(
        ctl("backup restore '" + (scratch / "2.backup") + "' " + one + " --to '" + shop + "'" + word).exit ==
        0);
    CHECK(ctl("job list --json" + in).json() == jobs);
    CHECK(ctl("store check" + in).exit == 0);
    CHECK(ctl("backup restore " + one + " --to '" + shop + "'" + word).exit == 2);

    // What is not there is told by the exit status too.
    const Ran wanting = ctl("backup restore '" + (scratch / "2.backup") + "' --to '" + (scratch / "wanting") +
                            "' --incomplete --json" + word);
    CHECK(wanting.exit == 1);
    CHECK_FALSE(wanting.json().at("missing").empty());
}

TEST_CASE("photos are mended from a backup, and a damaged shop is brought into a new place") {
    const Scratch scratch;
    const std::string shop = scratch / "shop";
    REQUIRE(ctl("demo --only-shop --store '" + shop + "'").exit == 0);
    const std::string in = " --store '" + shop + "' ";
    const auto jobs = ctl("job list --json" + in).json();
    REQUIRE(ctl("backup write '" + (scratch / "1.backup") + "'" + in).exit == 0);
    REQUIRE(ctl("backup now" + in).exit == 0);

    std::string photo;
    for (const auto& file : std::filesystem::directory_iterator(shop + "/media"))
        photo = file.path().string();
    write(photo, "rot");
    const Ran check = ctl("store check" + in);
    CHECK(check.exit == 3);
    CHECK_THAT(check.err, Contains("[job 20"));
    CHECK(ctl("store mend --from '" + (scratch / "1.backup") + "'" + in).exit == 0);
    CHECK(ctl("store check" + in).exit == 0);

    write(shop + "/shop.db", "not even a database any more");
    CHECK(ctl("job list" + in).exit == 3);
    const Ran saved = ctl("store salvage --to '" + (scratch / "again") + "' --json" + in);
    CHECK(saved.exit == 0);
    CHECK(saved.json().at("from_backups") == saved.json().at("entries"));
    CHECK(ctl("job list --json --store '" + (scratch / "again") + "'").json() == jobs);
    CHECK(contentOf(shop + "/shop.db") == "not even a database any more");
}

TEST_CASE("without --store the command line works on the shop that was chosen in the app") {
    const Scratch scratch;
    const std::string data = scratch / "data";
    const auto list = [&](const std::string& more) {
        return run("env", "XDG_DATA_HOME='" + data + "' '" UNDERCOWLCTL "' job list --json" + more);
    };
    const std::string other = data + "/undercowl-shop-20261127T120000.000Z";
    REQUIRE(ctl("demo --only-shop --store '" + other + "'").exit == 0);
    CHECK(list("").exit == 3); // none was chosen, and there is nothing in the usual place
    write(data + "/undercowl.current", "undercowl-shop-20261127T120000.000Z\n");
    CHECK(list("").json() == list(" --store '" + other + "'").json());
    write(data + "/undercowl.current", "../data/undercowl-shop-20261127T120000.000Z\n");
    CHECK(list("").exit == 3);
}
