#include "core/journal/digest.h"

#include <sodium.h>

#include <array>
#include <cstdint>
#include <stdexcept>
#include <vector>

namespace undercowl::journal {
namespace {

constexpr std::size_t hashBytes = 32;

std::string hex(const unsigned char* bytes, std::size_t count) {
    std::string text(count * 2 + 1, '\0');
    sodium_bin2hex(text.data(), text.size(), bytes, count);
    text.pop_back();
    return text;
}

} // namespace

void needRandomness() {
    static const bool ready = sodium_init() >= 0;
    if (!ready) {
        throw std::runtime_error("the system gives no random numbers");
    }
}

Blake2b256::Blake2b256() {
    crypto_generichash_init(&state_, nullptr, 0, hashBytes);
}

void Blake2b256::add(std::string_view bytes) {
    crypto_generichash_update(&state_, reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size());
}

void Blake2b256::addField(std::string_view bytes) {
    std::array<char, 8> length{};
    auto rest = static_cast<std::uint64_t>(bytes.size());
    for (char& byte : length) {
        byte = static_cast<char>(rest & 0xFFU);
        rest >>= 8U;
    }
    add({length.data(), length.size()});
    add(bytes);
}

std::string Blake2b256::finish() {
    std::array<unsigned char, hashBytes> digest{};
    crypto_generichash_final(&state_, digest.data(), digest.size());
    return hex(digest.data(), digest.size());
}

std::string blake2b256(std::string_view bytes) {
    Blake2b256 hash;
    hash.add(bytes);
    return hash.finish();
}

std::string randomHex(std::size_t bytes) {
    needRandomness();
    std::vector<unsigned char> random(bytes);
    randombytes_buf(random.data(), random.size());
    return hex(random.data(), random.size());
}

} // namespace undercowl::journal
