// BLAKE2b-256 (RFC 7693), the hash of entries and media.
#pragma once

#include <sodium/crypto_generichash.h>

#include <cstddef>
#include <string>
#include <string_view>

namespace undercowl::journal {

class Blake2b256 {
public:
    Blake2b256();

    void add(std::string_view bytes);
    // Length first, eight bytes, little end first: so no two lists of fields give the same stream of bytes.
    void addField(std::string_view bytes);
    // 64 hex digits; to be called once.
    [[nodiscard]] std::string finish();

private:
    crypto_generichash_state state_{};
};

[[nodiscard]] std::string blake2b256(std::string_view bytes);

// Random bytes from the system, in hex. A machine without them cannot make ids at all and nothing a caller
// could do would help: the only function here that throws (std::runtime_error).
[[nodiscard]] std::string randomHex(std::size_t bytes);
void needRandomness();

} // namespace undercowl::journal
