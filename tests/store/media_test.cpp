#include "core/store/media.h"
#include "tests/store/faulty_disk.h"
#include "tests/store/shop.h"

#include "core/journal/digest.h"

#include <fstream>

using namespace undercowl;
using namespace undercowl::store;
using namespace undercowl::store::test;

TEST_CASE("a photo's name is the hash of its content") {
    Shop shop;
    const auto media = must(shop.store.keepMedia(bytes("abc"), "jpg"));
    // BLAKE2b-256 of "abc", as 'b2sum -l 256' of GNU coreutils gives it.
    CHECK(media.name == "bddd813c634239723171ef3fee98579b94964e3bb1cb3e427262c8c068d52319.jpg");
    CHECK(std::filesystem::file_size(media.file) == 3);
    CHECK(must(shop.store.media(media.name)) == media.file);
    CHECK(must(shop.store.keepMedia(bytes("abc"), "jpg")).name == media.name);

    CHECK(shop.store.keepMedia(bytes("abc"), "exe").error().fault == Fault::Refused);
    CHECK(shop.store.keepMedia(bytes("abc"), "../x").error().fault == Fault::Refused);
    CHECK(shop.store.keepMedia({}, "jpg").error().fault == Fault::Refused);
    CHECK(shop.store.media("../shop.db").error().fault == Fault::Refused);
    CHECK(shop.store.media(std::string(64, 'a') + ".jpg").error().fault == Fault::NotFound);
    CHECK(shop.store.media(std::string(64, 'A') + ".jpg").error().fault == Fault::Refused);
}

TEST_CASE("a file that has rotted is written anew when its content comes again") {
    Shop shop;
    const auto media = must(shop.store.keepMedia(bytes("a good photo"), "jpg"));
    std::ofstream(media.file) << "rot";
    CHECK(must(shop.store.check()).faults.size() == 1);
    must(shop.store.keepMedia(bytes("a good photo"), "jpg"));
    CHECK(must(shop.store.check()).sound());
}

TEST_CASE("what a cut left half written is gone after the next opening, whole files stay") {
    Shop shop;
    const auto media = must(shop.store.keepMedia(bytes("whole"), "jpg"));
    const auto left = media.file.parent_path().parent_path() / ".incoming" / "0190b5a0";
    std::ofstream(left) << "half";
    Store again = shop.another();
    CHECK_FALSE(std::filesystem::exists(left));
    CHECK(std::filesystem::exists(media.file));
}

TEST_CASE("a link in the place of a photo is not followed") {
    Shop shop;
    const auto media = must(shop.store.keepMedia(bytes("photo"), "jpg"));
    std::filesystem::remove(media.file);
    std::filesystem::create_symlink("/etc/hostname", media.file);
    CHECK_FALSE(shop.store.media(media.name));
    CHECK_FALSE(must(shop.store.check()).sound());
}

TEST_CASE("every operation may fail once: a photo is kept whole or not at all, and a confirmed one stays") {
    const std::string content = "a photo of the left side, as found";
    const std::string name = journal::blake2b256(content) + ".jpg";
    for (int m = 0; m < mishaps; ++m) {
        const auto mishap = static_cast<Mishap>(m);
        bool reached = true;
        int failures = 0;
        for (int n = 0; reached; ++n) {
            INFO("mishap " << m << " at operation " << n);
            Folder folder;
            auto disk = std::make_shared<FaultyDisk>(static_cast<unsigned>(n));
            MediaFolder media(folder.path() / "media", disk);
            must(media.prepare());
            const std::string earlier = must(media.keep(bytes("an earlier photo"), "jpg", "1"));
            disk->failAt(n, mishap);
            const auto kept = media.keep(bytes(content), "jpg", "2");
            reached = disk->happened();
            failures += kept ? 0 : 1;
            disk->restart();

            for (const std::string& found : must(media.names())) {
                REQUIRE(media.problem(found) == std::nullopt); // what was left half written has another name
            }
            REQUIRE(media.find(earlier));
            if (kept) {
                REQUIRE(media.find(name));
            } else {
                REQUIRE((kept.error().fault == Fault::DiskFull) == (mishap == Mishap::DiskFull));
            }
            // Trying again is all that it takes.
            must(media.keep(bytes(content), "jpg", "3"));
            REQUIRE(media.find(name));
        }
        // Short writes are none of the caller's business; all else is told, but for the clean-up's own
        // failures.
        CHECK((mishap == Mishap::ShortWrite ? failures == 0 : failures >= 3));
    }
}
