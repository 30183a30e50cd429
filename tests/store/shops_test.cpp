// Which of the shops on a device is the current one: after a choice, after a cut at any moment of it, and
// whatever stands in the file that says so.
#include "tests/store/faulty_disk.h"
#include "tests/store/shop.h"

#include "core/store/shops.h"

#include <fstream>

using namespace undercowl;
using namespace undercowl::store;
using namespace undercowl::store::test;

namespace {

using std::filesystem::path;

// A shop with this many jobs in the folder.
void makeShop(const path& folder, int jobs) {
    Store store = must(Store::open(folder));
    const job::Mechanic mechanic{store.newId(), "Ada"};
    must(store.append(journal::mechanicNamed(mechanic)));
    must(store.chooseMechanic(mechanic.id));
    for (int i = 0; i < jobs; ++i) {
        journal::JobPatch job;
        job.number = std::to_string(i);
        must(store.append(journal::jobOpened(store.newId(), job)));
    }
}

std::size_t jobsIn(const path& folder) {
    Store store = must(Store::open(folder));
    CHECK(must(store.check()).sound());
    return must(store.jobs()).size();
}

struct Two {
    Two() {
        makeShop(home, 1);
        makeShop(other, 2);
    }
    Folder folder;
    path home = folder.path() / "shop";
    path other = newShopFolder(home, 1'795'000'000'000);
};

} // namespace

TEST_CASE("the shop that was chosen is the current one, until another is") {
    const Two two;
    CHECK(two.other.filename() == "shop-shop-20261118T110640.000Z");
    CHECK(currentShop(two.home) == two.home);
    must(chooseShop(two.home, two.other));
    CHECK(currentShop(two.home) == two.other);
    CHECK(slurp(two.folder.path() / "shop.current") == "shop-shop-20261118T110640.000Z\n");
    CHECK(currentShop(two.home / "") == two.other); // a slash at its end is no other folder
    must(chooseShop(two.home, two.home));
    CHECK(currentShop(two.home) == two.home);
    CHECK(currentShop({}).empty());
    // A second one of the same moment gets a name of its own.
    CHECK(newShopFolder(two.home, 1'795'000'000'000) != two.other);
}

TEST_CASE("what is no shop of that folder cannot be chosen") {
    const Two two;
    const auto folder = two.folder.path();
    makeShop(folder / "foreign", 1);
    makeShop(folder / "sub" / two.other.filename(), 1);
    std::filesystem::create_directory_symlink(folder / "foreign", newShopFolder(two.home, 1));
    for (const path& wrong :
         {folder / "foreign", folder / "sub" / two.other.filename(), newShopFolder(two.home, 7),
          folder / "shop-shop-19700101T000000.001Z", folder}) {
        INFO(wrong);
        const auto refused = chooseShop(two.home, wrong);
        REQUIRE_FALSE(refused);
        CHECK(refused.error().fault == Fault::Refused);
    }
    CHECK_FALSE(std::filesystem::exists(folder / "shop.current"));
}

TEST_CASE("a choice that is damaged or foreign leads nowhere but to the usual shop") {
    const Two two;
    const auto folder = two.folder.path();
    const auto choice = folder / "shop.current";
    const std::string good = two.other.filename().string();
    makeShop(folder / "foreign", 1);
    makeShop(folder / "shop-shop-x", 1);
    std::filesystem::create_directory_symlink(folder / "foreign", newShopFolder(two.home, 1));
    for (const std::string& said : {std::string(),
                                    std::string("\n"),
                                    good,
                                    good + "\n\n",
                                    good + "\n" + good + "\n",
                                    "../" + good + "\n",
                                    "./" + good + "\n",
                                    good + "/\n",
                                    good + "/../foreign\n",
                                    (folder / "foreign").string() + "\n",
                                    std::string("foreign\n"),
                                    std::string("..\n"),
                                    std::string(".\n"),
                                    std::string("shop-shop-x\n"),
                                    std::string("shop-shop-../../foreign.000Z\n"),
                                    std::string("shop-shop-19700101T000000.001Z\n"),
                                    std::string("shop-shop-20990101T000000.000Z\n"),
                                    good + std::string("\0\n", 2),
                                    std::string(100'000, 's') + "\n",
                                    good.substr(0, 20) + "\n"}) {
        INFO(said.substr(0, 80));
        std::ofstream(choice, std::ios::binary) << said;
        CHECK(currentShop(two.home) == two.home);
    }
    std::filesystem::remove(choice);
    std::ofstream(folder / "elsewhere") << good << '\n';
    std::filesystem::create_symlink(folder / "elsewhere", choice);
    CHECK(currentShop(two.home) == two.home);
    std::filesystem::remove(choice);
    std::filesystem::create_directory(choice);
    CHECK(currentShop(two.home) == two.home);
    std::filesystem::remove(choice);
    // And a good one is followed all the same.
    std::ofstream(choice) << good << '\n';
    CHECK(currentShop(two.home) == two.other);
    std::filesystem::remove_all(two.other); // it has gone
    CHECK(currentShop(two.home) == two.home);
}

TEST_CASE("a cut or a fault at any moment of choosing leaves the one or the other shop current, both whole") {
    const Two two;
    int injected = 0;
    // One choice on a disk that fails at its n-th operation; false when it has no such operation.
    const auto chooses = [&](bool first, Mishap mishap, int n) {
        INFO("mishap " << static_cast<int>(mishap) << " at operation " << n
                       << (first ? ", the first choice" : ""));
        std::filesystem::remove(two.folder.path() / "shop.current");
        auto disk = std::make_shared<FaultyDisk>(static_cast<unsigned>(n));
        const path before = first ? two.home : two.other;
        const path after = first ? two.other : two.home;
        must(first ? Result<void>{} : chooseShop(two.home, two.other, disk));
        disk->failAt(n, mishap);
        const bool chosen = chooseShop(two.home, after, disk).has_value();
        const bool happened = disk->happened();
        disk->restart();
        const path now = currentShop(two.home);
        CHECK((now == before || now == after));
        CHECK((!chosen || now == after)); // what was told stays
        CHECK((happened || chosen));
        injected += happened ? 1 : 0;
        return happened;
    };
    for (int m = 0; m < mishaps; ++m) {
        for (const bool first : {true, false}) {
            for (int n = 0; chooses(first, static_cast<Mishap>(m), n); ++n) {
            }
        }
    }
    CHECK(jobsIn(two.home) == 1);
    CHECK(jobsIn(two.other) == 2);
    CHECK(injected > 20);
}

TEST_CASE("the shops of a device are told with their jobs, the last worked on first") {
    const Two two;
    const auto folder = two.folder.path();
    must(Store::open(newShopFolder(two.home, 1))); // nothing was ever said in it
    const path damaged = newShopFolder(two.home, 2);
    makeShop(damaged, 1);
    std::ofstream(damaged / "shop.db", std::ios::binary) << "not even a database any more";
    makeShop(folder / "foreign", 1);
    std::filesystem::create_directories(newShopFolder(two.home, 3));

    const auto shops = shopsBeside(two.home);
    REQUIRE(shops.size() == 3);
    CHECK(shops[0].folder == two.other);
    CHECK(shops[0].jobs == 2);
    CHECK(shops[0].lastAt > 0);
    CHECK(shops[0].readable);
    CHECK(shops[1].folder == two.home);
    CHECK(shops[1].jobs == 1);
    const auto size = [](const path& folderOfOne) {
        return std::filesystem::file_size(folderOfOne / "shop.db");
    };
    CHECK(shops[1].bytes >= size(two.home));
    CHECK(shops[1].bytes < 4 * size(two.home));
    CHECK(shops[2].folder == damaged);
    CHECK_FALSE(shops[2].readable);
    CHECK(shopsBeside(folder / "none").empty());
}

TEST_CASE("what a restoring left that was cut off is cleared away, and nothing else") {
    const Two two;
    const auto folder = two.folder.path();
    const std::string left = two.other.string() + ".incoming-0190";
    std::filesystem::create_directories(path(left) / "media");
    std::ofstream(left + ".incoming-1-0") << "a database";
    const std::vector<path> stays{two.home, two.other, folder / "shop.incoming-1", folder / ".incoming-2",
                                  folder / "shop-shop-x.incoming-3"};
    for (const path& one : stays) {
        std::filesystem::create_directories(one);
    }
    clearCutOff(two.home);
    CHECK_FALSE(std::filesystem::exists(left));
    CHECK_FALSE(std::filesystem::exists(left + ".incoming-1-0"));
    for (const path& one : stays) {
        CHECK(std::filesystem::exists(one));
    }
}

TEST_CASE("a shop is removed with all that is in it, and only that one") {
    const Two two;
    std::filesystem::create_directories(two.other / "media" / "ab");
    std::ofstream(two.other / "media" / "ab" / "photo.jpg") << "a photo";
    must(removeShop(two.home, two.other));
    CHECK_FALSE(std::filesystem::exists(two.other));
    CHECK(jobsIn(two.home) == 1);
    std::size_t names = 0;
    for (const auto& entry : std::filesystem::directory_iterator(two.folder.path())) {
        INFO(entry.path());
        CHECK(entry.path() == two.home);
        ++names;
    }
    CHECK(names == 1);
}

TEST_CASE("the first shop can be removed too, once another is the current one") {
    const Two two;
    const auto refused = removeShop(two.home, two.home);
    REQUIRE_FALSE(refused);
    CHECK(refused.error().fault == Fault::Refused);
    CHECK(jobsIn(two.home) == 1);
    must(chooseShop(two.home, two.other));
    const auto current = removeShop(two.home, two.other);
    REQUIRE_FALSE(current);
    CHECK(current.error().fault == Fault::Refused);
    must(removeShop(two.home, two.home));
    CHECK_FALSE(std::filesystem::exists(two.home));
    CHECK(currentShop(two.home) == two.other);
    CHECK(jobsIn(two.other) == 2);
    CHECK(shopsBeside(two.home).size() == 1);
}

TEST_CASE("what is no shop of that folder is not removed") {
    const Two two;
    const auto folder = two.folder.path();
    makeShop(folder / "foreign", 1);
    std::filesystem::create_directory_symlink(folder / "foreign", newShopFolder(two.home, 1));
    for (const path& wrong :
         {folder / "foreign", newShopFolder(two.home, 1), newShopFolder(two.home, 7), folder}) {
        INFO(wrong);
        const auto refused = removeShop(two.home, wrong);
        REQUIRE_FALSE(refused);
        CHECK(refused.error().fault == Fault::Refused);
    }
    CHECK(jobsIn(folder / "foreign") == 1);
}

TEST_CASE("a shop that cannot be removed stays whole") {
    for (const Mishap mishap : {Mishap::InputOutput, Mishap::ReadOnly}) {
        const Two two;
        const auto disk = std::make_shared<FaultyDisk>();
        disk->failAt(0, mishap, true);
        CHECK_FALSE(removeShop(two.home, two.other, disk));
        CHECK(disk->happened());
        CHECK(jobsIn(two.other) == 2);
        CHECK(shopsBeside(two.home).size() == 2);
    }
}

TEST_CASE("what a removing left that was cut off is no shop any more") {
    const Two two;
    const path left = newShopFolder(two.home, 0).string() + ".incoming-removed";
    std::filesystem::rename(two.other, left);
    CHECK(shopsBeside(two.home).size() == 1);
    makeShop(two.other, 3);
    must(removeShop(two.home, two.other)); // it is not in the way
    CHECK_FALSE(std::filesystem::exists(left));
    CHECK_FALSE(std::filesystem::exists(two.other));
    CHECK(jobsIn(two.home) == 1);
}
