#include "tests/store/shop.h"
#include "tests/store/tables.h"

#include "core/journal/digest.h"
#include "core/store/archive.h"
#include "core/store/entryjson.h"
#include "core/store/zip.h"

#include <nlohmann/json.hpp>

#include <fstream>
#include <map>

using namespace undercowl;
using namespace undercowl::store;
using namespace undercowl::store::test;

namespace {

using Members = std::vector<std::pair<std::string, std::string>>;

std::string text(std::span<const std::byte> piece) {
    return {reinterpret_cast<const char*>(piece.data()), piece.size()};
}

Members read(const std::filesystem::path& file) {
    Members members;
    must(readZip(file, [&](ZipMember& member) {
        std::string content;
        auto done = member.read(1 << 30, [&](auto piece) { content += text(piece); });
        members.emplace_back(member.name(), content);
        return done;
    }));
    return members;
}

void write(const std::filesystem::path& file, const Members& members) {
    ZipWriter zip(file, posixFiles());
    for (const auto& [name, content] : members) {
        must(zip.add(name, content.size(), true, 0,
                     [&, &content = content](const ZipWriter::Take& take) { return take(bytes(content)); }));
    }
    must(zip.finish());
}

std::string& at(Members& members, const std::string& name) {
    for (auto& [member, content] : members) {
        if (member == name) {
            return content;
        }
    }
    FAIL("no member " + name);
    return members.front().second;
}

void mendChecksums(Members& members) {
    std::string sums;
    for (const auto& [name, content] : members) {
        if (name != "checksums.txt") {
            sums += journal::blake2b256(content) + "  " + name + "\n";
        }
    }
    at(members, "checksums.txt") = sums;
}

void spill(const std::filesystem::path& file, const std::string& content) {
    std::ofstream(file, std::ios::binary) << content;
}

struct Exported {
    Shop shop;
    Id job = shop.wholeJob("2026-001");
    std::filesystem::path file = shop.folder.path() / "job.zip";
    ArchiveContent content = must(exportJob(shop.store, job, file, bytes("%PDF-1.7 the record")));
};

// Nothing of a refused archive is left behind.
void checkRefused(const std::filesystem::path& file, const std::string& says) {
    INFO("to say: " << says);
    const auto verified = verifyArchive(file);
    REQUIRE_FALSE(verified);
    CHECK(verified.error().fault == Fault::Refused);
    CHECK_THAT(verified.error().message, Catch::Contains(says));
    Shop other;
    const std::string before = projections(other.folder.path() / "shop");
    const auto refused = importArchive(other.store, file);
    REQUIRE_FALSE(refused);
    CHECK(must(other.store.check()).entries == 1);
    CHECK(projections(other.folder.path() / "shop") == before);
    CHECK(std::filesystem::is_empty(other.folder.path() / "shop" / "media"));
}

} // namespace

TEST_CASE("a job goes into another store whole, and a second time changes nothing") {
    Exported exported;
    CHECK(exported.content.entries > 15);
    CHECK(exported.content.media == 1);
    CHECK(exported.content.record);
    const auto verified = must(verifyArchive(exported.file));
    CHECK(verified.number == "2026-001");
    CHECK(verified.entries == exported.content.entries);

    Shop other;
    const auto imported = must(importArchive(other.store, exported.file));
    CHECK(imported.newEntries == exported.content.entries);
    CHECK(imported.newMedia == 1);
    CHECK(must(other.store.job(exported.job)) == must(exported.shop.store.job(exported.job)));
    CHECK(must(other.store.jobs()).at(0).owner == "Ilse Quarmby");
    CHECK(must(other.store.mechanics()).size() == 2);
    CHECK(must(other.store.check()).faults == std::vector<std::string>{});

    const std::string before = projections(other.folder.path() / "shop");
    const auto again = must(importArchive(other.store, exported.file));
    CHECK(again.newEntries == 0);
    CHECK(again.newMedia == 0);
    CHECK(projections(other.folder.path() / "shop") == before);

    // There and back: what the other one adds comes home.
    other.say(
        journal::memoKept(exported.job, {other.store.newId(), {}, "seen by a second pair of eyes", {}, {}}));
    must(exportJob(other.store, exported.job, exported.file));
    CHECK(must(importArchive(exported.shop.store, exported.file)).newEntries == 2); // and who said it
    CHECK(must(exported.shop.store.find("eyes")).size() == 1);
    CHECK(must(exported.shop.store.check()).faults == std::vector<std::string>{});
}

TEST_CASE("an archive holds its own job and nothing of the others") {
    Exported exported;
    exported.shop.wholeJob("2026-002");
    const auto second = exported.shop.folder.path() / "again.zip";
    must(exportJob(exported.shop.store, exported.job, second, bytes("%PDF-1.7 the record")));
    CHECK(slurp(second) == slurp(exported.file)); // the same job gives the same bytes
    const auto names = read(second);
    REQUIRE(names.size() == 4);
    CHECK(names[0].first == "job.json");
    CHECK(names[2].first == "record.pdf");
    CHECK(names[3].first == "checksums.txt");
    CHECK(exportJob(exported.shop.store, "unknown", second).error().fault == Fault::NotFound);
}

TEST_CASE("an archive that is cut short anywhere is refused") {
    Exported exported;
    const std::string whole = slurp(exported.file);
    const auto cut = exported.shop.folder.path() / "cut.zip";
    for (std::size_t length = 0; length < whole.size(); length += 1 + whole.size() / 97) {
        INFO("cut to " << length << " of " << whole.size());
        spill(cut, whole.substr(0, length));
        const auto verified = verifyArchive(cut);
        REQUIRE_FALSE(verified);
        CHECK(verified.error().fault == Fault::Refused);
    }
    spill(cut, whole.substr(0, whole.size() - 1));
    checkRefused(cut, "archive");
    CHECK(verifyArchive(exported.shop.folder.path() / "none.zip").error().fault == Fault::NotFound);
}

TEST_CASE("a flipped byte is noticed, or changes nothing that is taken") {
    Exported exported;
    const std::string whole = slurp(exported.file);
    const std::string expected = toJson({exported.job, "", must(exported.shop.store.entries(exported.job))});
    const auto flipped = exported.shop.folder.path() / "flipped.zip";
    int accepted = 0;
    for (std::size_t place = 0; place < whole.size(); place += 1 + whole.size() / 499) {
        INFO("byte " << place);
        std::string content = whole;
        content[place] = static_cast<char>(content[place] ^ 0x10);
        spill(flipped, content);
        if (verifyArchive(flipped)) {
            ++accepted; // a time or an attribute of the ZIP, which nothing reads
            Folder folder;
            Store store = must(Store::open(folder.path()));
            must(importArchive(store, flipped));
            CHECK(toJson({exported.job, "", must(store.entries(exported.job))}) == expected);
        }
    }
    CHECK(accepted < 60);
}

TEST_CASE("a hostile or damaged archive is refused with the reason") {
    Exported exported;
    const Members good = read(exported.file);
    const auto bad = exported.shop.folder.path() / "bad.zip";
    const std::string photo = good[1].first;
    const auto with = [&](const std::string& says, const auto& change) {
        Members members = good;
        change(members);
        write(bad, members);
        checkRefused(bad, says);
    };
    const auto adding = [&](const std::string& name, const std::string& says) {
        with(says, [&](Members& members) {
            members.emplace(members.begin(), name, "x");
            mendChecksums(members);
        });
    };
    adding("../evil.jpg", "leads out");
    adding("media/../../evil.jpg", "leads out");
    adding("/etc/passwd", "leads out");
    adding("media\\evil.jpg", "no place"); // some readers of ZIP make it a solidus
    adding("C:evil", "leads out");
    adding("extra.txt", "no place");
    adding("media/photo.jpg", "no place");
    adding("media/" + std::string(64, 'a') + ".jpg", "does not fit its name");
    adding("media/" + journal::blake2b256("x") + ".jpg", "no entry names it");
    adding("job.json", "twice");
    with("checksum", [&](Members& members) { at(members, "record.pdf") += "!"; });
    with("checksum", [&](Members& members) { at(members, photo) += "!"; });
    with("does not fit its name", [&](Members& members) {
        at(members, photo) += "!";
        mendChecksums(members);
    });
    with("not in the archive", [&](Members& members) {
        members.erase(members.begin() + 1);
        mendChecksums(members);
    });
    with("missing", [&](Members& members) { members.erase(members.begin() + 1); });
    with("job.json is missing", [&](Members& members) { members.erase(members.begin()); });
    with("checksums.txt is missing", [&](Members& members) { members.pop_back(); });
    with("line 1", [&](Members& members) { at(members, "checksums.txt") = "nonsense\n"; });
    with("not listed", [&](Members& members) { at(members, "checksums.txt").clear(); });

    const auto withJson = [&](const std::string& says, const auto& change) {
        with(says, [&](Members& members) {
            auto json = nlohmann::ordered_json::parse(at(members, "job.json"));
            change(json);
            at(members, "job.json") = json.dump();
            mendChecksums(members);
        });
    };
    withJson("format", [](auto& json) { json["format"] = "something"; });
    withJson("Update this program", [](auto& json) { json["version"] = 2; });
    withJson("entries", [](auto& json) { json["entries"] = 5; });
    withJson("not an object", [](auto& json) { json["entries"][0] = 5; });
    withJson("number", [](auto& json) { json["entries"][0]["number"] = -1; });
    withJson("body", [](auto& json) { json["entries"][0].erase("body"); });
    withJson("body", [](auto& json) { json["entries"][2]["body"] = "{}"; });
    withJson("hash", [](auto& json) { json["entries"][2]["mechanic"] = "someone-else"; });
    withJson("no entry names it", [](auto& json) { json["entries"].clear(); });
    with("job.json", [&](Members& members) {
        at(members, "job.json") = std::string(2'000'000, '[');
        mendChecksums(members);
    });
    with("job.json", [&](Members& members) {
        at(members, "job.json") = "\xFF\xFE";
        mendChecksums(members);
    });
    spill(bad, "PK but no ZIP");
    checkRefused(bad, "ZIP");
    spill(bad, "");
    checkRefused(bad, "ZIP");
}

TEST_CASE("an archive may not speak of other jobs or machines") {
    Exported exported;
    const Id other = exported.shop.wholeJob("2026-002");
    const auto stray = must(exported.shop.store.entries(must(exported.shop.store.job(other)).machine));
    const auto strayJob = must(exported.shop.store.entries(other));
    for (const auto& entry : {stray.front(), strayJob.front()}) {
        Members members = read(exported.file);
        auto file = must(jobFileFromJson(at(members, "job.json")));
        file.entries.push_back(entry);
        at(members, "job.json") = toJson(file);
        mendChecksums(members);
        const auto bad = exported.shop.folder.path() / "bad.zip";
        write(bad, members);
        checkRefused(bad, "does not belong");
    }
}

TEST_CASE("a bomb is not unpacked") {
    Exported exported;
    Members members = read(exported.file);
    const std::string name = "media/" + std::string(64, 'b') + ".wav";
    members.emplace(members.begin(), name, std::string((std::size_t{256} << 20U) + 1, '\0'));
    const auto bomb = exported.shop.folder.path() / "bomb.zip";
    write(bomb, members);
    REQUIRE(std::filesystem::file_size(bomb) < 2'000'000);
    checkRefused(bomb, "at most");

    // The same with a size that lies: the four bytes of it in the directory at the end.
    std::string lying = slurp(bomb);
    const std::string size{"\x01\x00\x00\x10", 4};
    REQUIRE(lying.rfind(size) != std::string::npos);
    for (std::size_t place = lying.find(size); place != std::string::npos;
         place = lying.find(size, place + 4)) {
        lying.replace(place, 4, std::string("\x10\x00\x00\x00", 4));
    }
    spill(bomb, lying);
    const auto refused = verifyArchive(bomb);
    REQUIRE_FALSE(refused);
    CHECK(refused.error().fault == Fault::Refused);
}

TEST_CASE("an export that fails leaves neither a part of it nor what stood there spoilt") {
    Exported exported;
    const std::string before = slurp(exported.file);
    const auto media = exported.shop.folder.path() / "shop" / "media";
    for (const auto& file : std::filesystem::directory_iterator(media)) {
        spill(file, "rotten");
    }
    const auto failedExport = exportJob(exported.shop.store, exported.job, exported.file);
    REQUIRE_FALSE(failedExport);
    CHECK(failedExport.error().fault == Fault::Damaged);
    CHECK(slurp(exported.file) == before);
    std::size_t files = 0;
    for (const auto& entry : std::filesystem::directory_iterator(exported.shop.folder.path())) {
        files += entry.is_regular_file() ? 1 : 0;
    }
    CHECK(files == 1);
}
