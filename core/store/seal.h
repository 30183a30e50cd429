// Encryption of a stream with a passphrase: Argon2id makes the key, libsodium's secretstream (XChaCha20 with
// Poly1305) seals piece after piece, so that nothing can be changed, left out, put in another order or cut
// off unnoticed. The format is described in docs/backup.md.
#pragma once

#include "core/store/stream.h"

#include <cstdint>
#include <memory>
#include <string>
#include <string_view>

namespace undercowl::store {

// What guessing one passphrase costs whoever tries, and opening once costs the owner.
struct SealCost {
    std::uint64_t passes{3};
    std::uint64_t bytes{std::uint64_t{256} << 20U};
};

inline constexpr std::size_t shortestPassphrase = 8; // bytes

// Whether a file that begins with these bytes is sealed.
[[nodiscard]] bool isSealed(std::string_view begin);
inline constexpr std::string_view sealMagic = "undercowl sealed 1\n";

// Both refuse at their first use when the key cannot be made for want of memory. The stream below has to
// outlive them.
[[nodiscard]] std::unique_ptr<ByteSink> sealing(ByteSink& below, const std::string& passphrase,
                                                SealCost cost = {});
// Refused: a wrong passphrase, which cannot be told from a changed file; a file that is cut short.
[[nodiscard]] std::unique_ptr<ByteSource> unsealing(ByteSource& below, const std::string& passphrase);

} // namespace undercowl::store
