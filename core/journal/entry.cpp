#include "core/journal/entry.h"

#include "core/journal/digest.h"

#include <sodium.h>

#include <array>
#include <mutex>
#include <tuple>

namespace undercowl::journal {
namespace {

constexpr std::size_t saltBytes = 16;
constexpr std::string_view hashDomain = "undercowl.entry.1"; // a later encoding would be another domain

bool isHex(std::string_view text, std::size_t bytes) {
    return text.size() == bytes * 2 && text.find_first_not_of("0123456789abcdef") == std::string_view::npos;
}

std::string hashOfBody(const Entry& entry) {
    Blake2b256 hash;
    hash.add(entry.salt); // always 32 digits, so that the join is unambiguous
    hash.add(entry.body);
    return hash.finish();
}

std::string hashOfEntry(const Entry& entry) {
    Blake2b256 hash;
    hash.addField(hashDomain);
    hash.addField(entry.id);
    hash.addField(entry.device);
    hash.addField(std::to_string(entry.number));
    hash.addField(std::to_string(entry.clock.wallMs));
    hash.addField(std::to_string(entry.clock.counter));
    hash.addField(entry.kind);
    hash.addField(entry.stream);
    hash.addField(entry.subject);
    hash.addField(entry.mechanic);
    hash.addField(entry.supersedes);
    hash.addField(entry.salt);
    hash.addField(entry.bodyHash);
    hash.addField(entry.previous);
    return hash.finish();
}

// The 74 bits of a UUIDv7 that are not its time, counted up within one millisecond.
struct Tail {
    std::uint16_t high{}; // 12 bits
    std::uint64_t low{};  // 62 bits
};

constexpr std::string_view digits = "0123456789abcdef";
constexpr std::uint16_t tailHighMask = 0x0FFF;
constexpr std::uint64_t tailLowMask = 0x3FFF'FFFF'FFFF'FFFF;

Tail randomTail() {
    Tail tail;
    randombytes_buf(&tail.high, sizeof tail.high);
    randombytes_buf(&tail.low, sizeof tail.low);
    tail.high &= tailHighMask;
    tail.low &= tailLowMask;
    return tail;
}

// Adds a random step; answers false when the tail has run over.
bool advance(Tail& tail) {
    tail.low += std::uint64_t{1} + randombytes_random();
    if (tail.low <= tailLowMask) {
        return true;
    }
    tail.low &= tailLowMask;
    return ++tail.high <= tailHighMask;
}

Id text(std::uint64_t ms, const Tail& tail) {
    std::array<unsigned char, 16> bytes{};
    for (std::size_t i = 0; i < 6; ++i) {
        bytes.at(i) = static_cast<unsigned char>(ms >> (8 * (5 - i)));
    }
    bytes[6] = static_cast<unsigned char>(0x70U | static_cast<unsigned>(tail.high >> 8U)); // version 7
    bytes[7] = static_cast<unsigned char>(tail.high & 0xFFU);
    for (std::size_t i = 0; i < 8; ++i) {
        bytes.at(8 + i) = static_cast<unsigned char>(tail.low >> (8 * (7 - i)));
    }
    bytes[8] |= 0x80U; // variant 10
    Id id;
    for (const unsigned char byte : bytes) {
        id += digits[byte >> 4U];
        id += digits[byte & 0xFU];
    }
    for (const std::size_t at : {8U, 13U, 18U, 23U}) {
        id.insert(at, 1, '-');
    }
    return id;
}

} // namespace

Clock tick(const Clock& newest, TimeMs wallMs) {
    if (wallMs > newest.wallMs) {
        return {wallMs, 0};
    }
    const std::uint32_t counter = newest.counter + 1;
    return counter != 0 ? Clock{newest.wallMs, counter} : Clock{newest.wallMs + 1, 0};
}

bool before(const Entry& a, const Entry& b) {
    return std::tie(a.clock, a.device, a.number) < std::tie(b.clock, b.device, b.number);
}

void seal(Entry& entry) {
    entry.salt = randomHex(saltBytes);
    entry.bodyHash = hashOfBody(entry);
    entry.hash = hashOfEntry(entry);
}

std::optional<std::string> sealProblem(const Entry& entry) {
    if (!isHex(entry.salt, saltBytes)) {
        return "entry " + entry.id + ": its salt is not 32 hex digits";
    }
    if (entry.redacted && !entry.body.empty()) {
        return "entry " + entry.id + ": it is redacted but has a body";
    }
    if (!entry.redacted && hashOfBody(entry) != entry.bodyHash) {
        return "entry " + entry.id + ": its body does not fit its body hash";
    }
    if (hashOfEntry(entry) != entry.hash) {
        return "entry " + entry.id + ": its content does not fit its hash";
    }
    return std::nullopt;
}

void redact(Entry& entry) {
    entry.body.clear();
    entry.redacted = true;
}

Id newId(TimeMs now) {
    needRandomness();
    static std::mutex guard;
    static std::uint64_t lastMs = 0;
    static Tail tail = randomTail();
    const std::scoped_lock lock(guard);
    const auto ms = static_cast<std::uint64_t>(now > 0 ? now : 0);
    if (ms > lastMs) {
        lastMs = ms;
        tail = randomTail();
    } else if (!advance(tail)) { // same millisecond, or the clock was set back: go on counting
        ++lastMs;
        tail = randomTail();
    }
    return text(lastMs, tail);
}

} // namespace undercowl::journal
