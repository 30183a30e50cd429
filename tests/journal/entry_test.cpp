#include "core/journal/entry.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <set>
#include <string>
#include <vector>

using namespace undercowl::journal;

namespace {

// Hashes worked out with Python's hashlib.blake2b(digest_size=32) from the encoding that docs/store.md
// states: an implementation apart from ours.
Entry known() {
    Entry entry;
    entry.id = "0190b5a0-0000-7000-8000-000000000001";
    entry.device = "0190b5a0-0000-7000-8000-0000000000d1";
    entry.number = 7;
    entry.clock = {1700000000123, 2};
    entry.kind = "finding.noted";
    entry.stream = "0190b5a0-0000-7000-8000-00000000000a";
    entry.subject = "0190b5a0-0000-7000-8000-00000000000b";
    entry.mechanic = "0190b5a0-0000-7000-8000-00000000000c";
    entry.body = "{\"text\":\"fork seal weeps \xE2\x80\x93 left\"}";
    entry.salt = "000102030405060708090a0b0c0d0e0f";
    entry.bodyHash = "7d0b54cb0d8fe4ae6f45ec7ef6fddb03d7c228cfcc9feefb5e5c47036c0b32be";
    for (int i = 0; i < 32; ++i) {
        entry.previous += "ab";
    }
    entry.hash = "6e89c4cc41020df2149ec02684fb9f5e185eb6ac3fbccd9dfa6fc08977a68ac2";
    return entry;
}

TimeMs timeOf(const Id& id) {
    return std::stoll(id.substr(0, 8) + id.substr(9, 4), nullptr, 16);
}

} // namespace

TEST_CASE("a seal made elsewhere by the stated encoding fits") {
    CHECK(sealProblem(known()) == std::nullopt);
}

TEST_CASE("sealing gives hashes that fit, with another salt each time") {
    Entry one = known();
    Entry two = known();
    seal(one);
    seal(two);
    CHECK(sealProblem(one) == std::nullopt);
    CHECK(one.salt.size() == 32);
    CHECK(one.salt != two.salt);
    CHECK(one.bodyHash != two.bodyHash);
    CHECK(one.hash != two.hash);
}

TEST_CASE("a change of any one field breaks the seal") {
    const std::vector<void (*)(Entry&)> changes{
        [](Entry& e) { e.id.back() = '2'; },
        [](Entry& e) { e.device.back() = '2'; },
        [](Entry& e) { ++e.number; },
        [](Entry& e) { ++e.clock.wallMs; },
        [](Entry& e) { ++e.clock.counter; },
        [](Entry& e) { e.kind = "finding.note"; },
        [](Entry& e) { e.stream.back() = '0'; },
        [](Entry& e) { e.subject.back() = '0'; },
        [](Entry& e) { e.mechanic.clear(); },
        [](Entry& e) { e.supersedes = e.id; },
        [](Entry& e) { e.body += ' '; },
        [](Entry& e) { e.salt.front() = 'f'; },
        [](Entry& e) { e.salt.clear(); },
        [](Entry& e) { e.bodyHash.front() = '0'; },
        [](Entry& e) { e.previous.clear(); },
        [](Entry& e) { e.hash.front() = '0'; },
        // Moving a letter from one field to the next must not go unseen.
        [](Entry& e) {
            e.subject.insert(e.subject.begin(), e.stream.back());
            e.stream.pop_back();
        },
    };
    for (std::size_t i = 0; i < changes.size(); ++i) {
        INFO("change " << i);
        Entry entry = known();
        changes[i](entry);
        const auto problem = sealProblem(entry);
        REQUIRE(problem);
        CHECK_THAT(*problem, Catch::Contains(entry.id));
    }
}

TEST_CASE("a redacted entry has lost its body, not its seal") {
    Entry entry = known();
    redact(entry);
    CHECK(entry.body.empty());
    CHECK(entry.redacted);
    CHECK(sealProblem(entry) == std::nullopt);

    entry.body = "{}";
    CHECK(sealProblem(entry));
}

TEST_CASE("a missing body that is not marked as redacted breaks the seal") {
    Entry entry = known();
    entry.body.clear();
    CHECK(sealProblem(entry));
}

TEST_CASE("the clock never goes back") {
    CHECK(tick({1000, 3}, 1001) == Clock{1001, 0});
    CHECK(tick({1000, 3}, 1000) == Clock{1000, 4});
    CHECK(tick({1000, 3}, 10) == Clock{1000, 4});
    CHECK(tick({1000, 0xFFFFFFFF}, 1000) == Clock{1001, 0});
    CHECK(tick({}, 0) == Clock{0, 1});
}

TEST_CASE("entries take effect by clock, then device, then number") {
    Entry a = known();
    Entry b = known();
    CHECK_FALSE(before(a, b));
    b.number = 8;
    CHECK(before(a, b));
    a.device.back() = '9'; // a later device outweighs an earlier number
    CHECK(before(b, a));
    a.clock.counter = 1; // an earlier clock outweighs both
    CHECK(before(a, b));
}

TEST_CASE("an id is a UUID of version 7 that carries its time") {
    // RFC 9562, appendix A.6: the example of version 7 and its time.
    REQUIRE(timeOf("017f22e2-79b0-7cc3-98c4-dc0c0c07398f") == 1645557742000);

    const TimeMs later = timeOf(newId(0)) + 1000; // whatever this process has made before
    const Id id = newId(later);
    REQUIRE(id.size() == 36);
    CHECK(timeOf(id) == later);
    CHECK(id[8] == '-');
    CHECK(id[13] == '-');
    CHECK(id[14] == '7');
    CHECK(id[18] == '-');
    CHECK(std::string("89ab").find(id[19]) != std::string::npos);
    CHECK(id[23] == '-');
    CHECK(id.find_first_not_of("0123456789abcdef-") == Id::npos);
}

TEST_CASE("ids made one after the other sort, even in one millisecond or when the clock is set back") {
    const TimeMs start = timeOf(newId(0)) + 1000;
    std::vector<Id> ids;
    for (int i = 0; i < 5000; ++i) {
        ids.push_back(newId(i % 7 == 0 ? start - 500 : start + i / 100));
    }
    CHECK(std::is_sorted(ids.begin(), ids.end()));
    CHECK(std::set<Id>(ids.begin(), ids.end()).size() == ids.size());
}
