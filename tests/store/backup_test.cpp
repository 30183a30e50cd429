#include "tests/store/shop.h"

#include "core/store/backup.h"
#include "core/store/hashbeside.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <fstream>

using namespace undercowl;
using namespace undercowl::store;
using namespace undercowl::store::test;

namespace {

BackupWish sealedWith(const std::string& passphrase) {
    BackupWish wish;
    wish.passphrase = passphrase;
    wish.cost = {1, 8192}; // cheap: what is tested is not how long guessing takes
    return wish;
}

std::size_t filesIn(const std::filesystem::path& folder) {
    return static_cast<std::size_t>(std::distance(std::filesystem::directory_iterator(folder), {}));
}

} // namespace

TEST_CASE("a whole shop goes into one file and comes back in a new place") {
    Shop shop;
    shop.wholeJob("2026-001");
    const Id job = shop.wholeJob("2026-002");
    must(shop.store.set("theme", "night"));
    must(shop.store.keepDraft("finding", "{}"));
    const auto file = shop.folder.path() / "shop.backup";
    const bool sealed = GENERATE(false, true);
    const auto wish = sealed ? sealedWith("four wet spark plugs") : BackupWish{};
    const auto made = must(writeBackup(shop.store, file, wish));
    CHECK(made.media == 2);
    CHECK(made.mediaHere == 2);
    CHECK(made.faults.empty());
    CHECK(made.bytes == std::filesystem::file_size(file));
    const bool readable = slurp(file).find("Ilse Quarmby") != std::string::npos;
    CHECK(readable != sealed);
    CHECK(filesIn(shop.folder.path()) == 2); // the shop and its backup
    CHECK_FALSE(std::filesystem::exists(shop.folder.path() / "shop" / "backups"));

    CHECK(must(verifyBackup(file, wish.passphrase)).entries == must(shop.store.check()).entries);
    const auto again = writeBackup(shop.store, file, wish);
    REQUIRE_FALSE(again);
    CHECK_THAT(again.error().message, Catch::Contains("exists already"));

    const auto place = shop.folder.path() / "new" / "shop";
    const auto restored = must(restoreBackup({file}, place, wish.passphrase));
    CHECK(restored.report.faults == std::vector<std::string>{});
    CHECK(restored.missing.empty());
    Store other = must(Store::open(place));
    CHECK(everything(other) == everything(shop.store));
    CHECK(other.device() != shop.store.device());
    CHECK(other.setting("theme") == "night");
    CHECK(other.draft("finding") == "{}");
    CHECK(other.mechanic() == shop.mechanic);
    // Both go on, and what was said in either can be brought together.
    must(other.append(journal::memoKept(job, {other.newId(), {}, "said there", {}, {}})));
    shop.say(journal::memoKept(job, {shop.store.newId(), {}, "said here", {}, {}}));
    CHECK(must(shop.store.merge(must(other.entries(job)))) == 1);
    CHECK(must(shop.store.check()).sound());

    for (const auto& taken : {place, shop.folder.path()}) { // never over what exists
        const auto refused = restoreBackup({file}, taken, wish.passphrase);
        REQUIRE_FALSE(refused);
        CHECK_THAT(refused.error().message, Catch::Contains("already"));
    }
    CHECK(everything(other).size() > 0);
}

TEST_CASE("a second backup copies only new media, the restored shop needs both") {
    Shop shop;
    shop.wholeJob("2026-001");
    const auto folder = shop.folder.path();
    const auto wish = sealedWith("four wet spark plugs");
    must(writeBackup(shop.store, folder / "1", wish));
    shop.time += 1000;
    shop.wholeJob("2026-002");
    auto second = sealedWith("another one for tuesday");
    second.earlier = {folder / "1"};
    second.earlierPassphrase = wish.passphrase;
    CHECK_FALSE(writeBackup(shop.store, folder / "2", [&] {
        auto wrong = second;
        wrong.earlierPassphrase = "is not this one";
        return wrong;
    }()));
    second.passphrase = wish.passphrase;
    const auto made = must(writeBackup(shop.store, folder / "2", second));
    CHECK(made.media == 2);
    CHECK(made.mediaHere == 1);

    const auto alone = restoreBackup({folder / "2"}, folder / "a", wish.passphrase);
    REQUIRE_FALSE(alone);
    CHECK_THAT(alone.error().message, Catch::Contains("earlier backups"));
    CHECK_FALSE(std::filesystem::exists(folder / "a"));
    const auto partly = must(restoreBackup({folder / "2"}, folder / "b", wish.passphrase, true));
    CHECK(partly.missing.size() == 1);
    CHECK(partly.report.faults.size() == 1);
    for (const auto& order :
         {std::vector{folder / "1", folder / "2"}, std::vector{folder / "2", folder / "1"}}) {
        const auto place = folder / ("c" + order.front().filename().string());
        const auto restored = must(restoreBackup(order, place, wish.passphrase));
        CHECK(restored.from.id == made.id);
        CHECK(everything(must(Store::open(place))) == everything(shop.store));
    }
}

TEST_CASE("a backup that is changed anywhere, cut anywhere or sealed otherwise is refused") {
    Shop shop;
    shop.smallJob("2026-001");
    shop.say(journal::photoTaken(must(shop.store.jobs()).at(0).id,
                                 {shop.store.newId(), shop.photo("a photo"), {}, {}, {}, 4, 3, 0, {}}));
    const bool sealed = GENERATE(false, true);
    const auto wish = sealed ? sealedWith("four wet spark plugs") : BackupWish{};
    const auto file = shop.folder.path() / "1";
    must(writeBackup(shop.store, file, wish));
    const std::string whole = slurp(file);
    const auto refused = [&](const std::string& content) {
        std::ofstream(shop.folder.path() / "2", std::ios::binary) << content;
        const auto verified = verifyBackup(shop.folder.path() / "2", wish.passphrase);
        return !verified && !verified.error().message.empty() &&
               !restoreBackup({shop.folder.path() / "2"}, shop.folder.path() / "to", wish.passphrase) &&
               !std::filesystem::exists(shop.folder.path() / "to");
    };
    for (std::size_t i = 0; i < 40; ++i) {
        const std::size_t at = i * whole.size() / 40;
        INFO("at " << at << " of " << whole.size());
        CHECK(refused(whole.substr(0, at)));
        std::string flipped = whole;
        flipped[at] = static_cast<char>(flipped[at] ^ 1);
        // In an open TAR file there is padding, and what a header says of owner and mode, which means
        // nothing.
        CHECK((refused(flipped) || (!sealed && whole.substr(at, 1) == std::string(1, '\0'))));
    }
    CHECK_FALSE(verifyBackup(file, "some other passphrase").has_value() == sealed);
    if (sealed) {
        CHECK(refused(whole + "x"));
        CHECK(verifyBackup(file).error().fault == Fault::Refused);
        auto weak = sealedWith("short");
        CHECK(writeBackup(shop.store, shop.folder.path() / "3", weak).error().fault == Fault::Refused);
        CHECK_FALSE(std::filesystem::exists(shop.folder.path() / "3"));
    }
}

TEST_CASE("what can be read of a damaged backup comes back when that is wished") {
    Shop shop;
    for (const char* number : {"2026-001", "2026-002", "2026-003"}) {
        shop.wholeJob(number);
    }
    // The last that is written, and most of the file.
    std::string large = "as found 2026-002";
    for (unsigned i = 0; large.size() < 1'500'000; ++i) {
        large += std::to_string(i * 2'654'435'761U);
    }
    shop.say(journal::photoTaken(must(shop.store.jobs()).at(0).id,
                                 {shop.store.newId(), shop.photo(large), {}, {}, {}, 4, 3, 0, {}}));
    const std::string shown = everything(shop.store);
    const std::size_t entries = must(shop.store.check()).entries;
    const std::size_t media = must(shop.store.check()).mediaFiles;
    REQUIRE(media >= 2);
    const auto file = shop.folder.path() / "1.backup";
    const auto wish = GENERATE(false, true) ? sealedWith("four wet spark plugs") : BackupWish{};
    const bool open = wish.passphrase.empty();
    must(writeBackup(shop.store, file, wish));
    std::string content = slurp(file);
    const auto damage = GENERATE(as<std::string>{}, "photo", "database", "cut");
    CAPTURE(open, damage);
    if (damage == "photo" && open) {
        content.replace(content.find(large), 2, "xx");
    } else if (damage == "photo") {
        content[content.size() * 9 / 10] ^= 1;
    } else if (damage == "database" && open) { // the header of the database
        content.replace(content.find("SQLite format 3"), 6, "sqlite");
    } else if (damage == "database") {
        return; // a sealed one says nothing behind its first damaged place
    } else {
        content.resize(content.size() * 9 / 10);
    }
    std::ofstream(file, std::ios::binary) << content;

    const auto to = shop.folder.path() / "again";
    const auto refused = restoreBackup({file}, to, wish.passphrase);
    REQUIRE_FALSE(refused);
    CHECK_THAT(refused.error().message, Catch::Contains("--incomplete"));
    CHECK_FALSE(std::filesystem::exists(to));
    const auto restored = must(restoreBackup({file}, to, wish.passphrase, true));
    CHECK(restored.damage.size() >= 1);
    Store again = must(Store::open(to));
    CHECK(must(again.check()).entries == entries);
    CHECK(everything(again) == shown);
    if (open && damage == "photo") {
        CHECK(must(again.check()).mediaFiles == media - 1);
    }
    if (again.mechanic().empty()) { // was in the database that could not be opened
        must(again.chooseMechanic(shop.mechanic));
    }
    must(again.append(journal::memoKept(must(again.jobs()).at(0).id, {again.newId(), {}, "on", {}, {}})));

    // The same for a photo that is wanting in the shop.
    const std::string name = shop.photo("as found 2026-003");
    std::filesystem::remove(must(shop.store.media(name)));
    const auto mended = must(mendMedia(shop.store, {file}, wish.passphrase));
    CHECK_FALSE(mended.damage.empty());
    CHECK((mended.brought == std::vector{name} || damage == "cut" || !open));
}

TEST_CASE("a long stream has the same hash when another thread takes it") {
    std::vector<std::byte> all(9'000'001);
    for (std::size_t i = 0; i < all.size(); ++i) {
        all[i] = static_cast<std::byte>((i * i) >> 7U);
    }
    HashBeside hash;
    HashBeside dropped;
    for (std::span<const std::byte> rest(all); !rest.empty();) {
        const auto piece = rest.first(std::min<std::size_t>(rest.size(), 70'003));
        hash.add(piece);
        dropped.add(piece);
        rest = rest.subspan(piece.size());
    }
    CHECK(hash.finish() == journal::blake2b256({reinterpret_cast<const char*>(all.data()), all.size()}));
}

TEST_CASE("a cancelled backup or restore leaves nothing behind, progress reaches its end") {
    Shop shop;
    shop.wholeJob("2026-001");
    const auto file = shop.folder.path() / "1";
    for (const std::size_t tenths : {0U, 4U, 6U, 9U}) { // also while it is being verified
        BackupWish wish;
        wish.progress = [&](std::size_t done, std::size_t total) { return done * 10 < total * tenths; };
        const auto cancelled = writeBackup(shop.store, file, wish);
        REQUIRE_FALSE(cancelled);
        CHECK_THAT(cancelled.error().message, Catch::Contains("cancelled"));
        CHECK(filesIn(shop.folder.path()) == 1);
    }
    std::size_t last = 0;
    std::size_t all = 1;
    BackupWish wish;
    wish.progress = [&](std::size_t done, std::size_t total) {
        CHECK(done >= last);
        last = done;
        all = total;
        return true;
    };
    must(writeBackup(shop.store, file, wish));
    CHECK(last == all);
    const auto to = shop.folder.path() / "to";
    // Cancelled when progress is told for the n-th time, for every n that there is: how many there are.
    const auto cancels = [&](bool incomplete) {
        for (int n = 0;; ++n) {
            const auto restored =
                restoreBackup({file}, to, {}, incomplete,
                              [calls = 0, n](std::size_t, std::size_t) mutable { return calls++ < n; });
            if (restored) {
                std::filesystem::remove_all(to);
                return n;
            }
            INFO("at " << n);
            CHECK_THAT(restored.error().message, Catch::Contains("cancelled"));
            CHECK(filesIn(shop.folder.path()) == 2);
        }
    };
    CHECK(cancels(false) > 3); // while it is unpacked, and while it is checked
    std::string content = slurp(file);
    content.replace(content.find("SQLite format 3"), 6, "sqlite");
    std::ofstream(file, std::ios::binary) << content;
    CHECK(cancels(true) > 5); // and while the entries of a damaged one are gathered
}

TEST_CASE("a backup tells how it begins, and which earlier ones of its folder it needs") {
    Shop shop;
    shop.wholeJob("2026-001");
    const auto folder = shop.folder.path() / "stick";
    std::filesystem::create_directory(folder);
    const bool sealed = GENERATE(false, true);
    auto wish = sealed ? sealedWith("four wet spark plugs") : BackupWish{};
    const auto first = must(writeBackup(shop.store, folder / "1.backup", wish));
    shop.time += 1000;
    shop.wholeJob("2026-002");
    wish.earlier = {folder / "1.backup"};
    wish.earlierPassphrase = wish.passphrase;
    const auto second = must(writeBackup(shop.store, folder / "2.backup", wish));
    auto other = sealedWith("another passphrase");
    must(writeBackup(shop.store, folder / "0.backup", other)); // is nothing to it
    std::ofstream(folder / "3.backup") << "no backup at all";

    const auto head = must(readBackupHead(folder / "2.backup", wish.passphrase));
    CHECK(head.sealed == sealed);
    CHECK(head.id == second.id);
    CHECK(head.follows == std::vector{first.id});
    CHECK(head.at == second.at);
    CHECK(head.entries == second.entries);
    const auto closed = must(readBackupHead(folder / "0.backup"));
    CHECK(closed.sealed);
    CHECK(closed.id.empty());
    CHECK(readBackupHead(folder / "0.backup", "not this one").error().fault == Fault::Refused);
    CHECK(readBackupHead(folder / "3.backup").error().fault == Fault::Refused);
    CHECK(readBackupHead(folder / "4.backup").error().fault == Fault::NotFound);

    const auto set = must(withEarlier(folder / "2.backup", wish.passphrase));
    CHECK(set.files == std::vector{folder / "2.backup", folder / "1.backup"});
    CHECK(set.wanting == 0);
    const auto stopped = withEarlier(folder / "2.backup", wish.passphrase, [] { return false; });
    CHECK_THAT(stopped.error().message, Catch::Contains("cancelled"));
    must(restoreBackup(set.files, shop.folder.path() / "again", wish.passphrase));
    CHECK(must(withEarlier(folder / "1.backup", wish.passphrase)).files.size() == 1);
    std::filesystem::rename(folder / "1.backup", shop.folder.path() / "1.backup");
    const auto alone = must(withEarlier(folder / "2.backup", wish.passphrase));
    CHECK(alone.files.size() == 1);
    CHECK(alone.wanting == 1);
}

TEST_CASE("rotten or missing media are told, and do not keep the rest from being backed up") {
    Shop shop;
    shop.wholeJob("2026-001");
    shop.wholeJob("2026-002");
    const std::string name = shop.photo("as found 2026-001");
    std::ofstream(must(shop.store.media(name))) << "rot";
    const auto made = must(writeBackup(shop.store, shop.folder.path() / "1"));
    CHECK(made.media == 1);
    REQUIRE(made.faults.size() == 1);
    CHECK_THAT(made.faults[0], Catch::Contains(name));
}

TEST_CASE("rolling copies are made beside the database, and thinned out") {
    Shop shop;
    const Id job = shop.wholeJob("2026-001");
    const auto folder = shop.folder.path() / "shop";
    CHECK(rollingBackups(folder).empty());
    CHECK(backupIsDue(folder, shop.time));
    constexpr job::TimeMs hour = 3'600'000;
    for (int i = 0; i < 24 * 40; i += 6) { // four a day for forty days
        shop.time += 6 * hour;
        if (i % 24 == 0) {
            shop.say(
                journal::memoKept(job, {shop.store.newId(), {}, "day " + std::to_string(i / 24), {}, {}}));
        }
        const auto made = must(backUpDatabase(shop.store));
        CHECK(made.at == shop.time);
    }
    const auto all = rollingBackups(folder);
    CHECK(all.size() >= 3 + 6);
    CHECK(all.size() <= 3 + 7 + 4);
    CHECK(all.front().at == shop.time);
    CHECK(shop.time - all.back().at > 14 * 24 * hour);
    CHECK_FALSE(backupIsDue(folder, shop.time + 23 * hour));
    CHECK(backupIsDue(folder, shop.time + 25 * hour));
    CHECK(must(shop.store.check()).sound());
    // A copy is a database by itself.
    SQLite::Database copy(all.front().file.string());
    CHECK(copy.execAndGet("SELECT count(*) FROM entry").getInt64() ==
          static_cast<std::int64_t>(must(shop.store.check()).entries));
    CHECK(filesIn(folder / "backups") == all.size());
}
