#include "core/store/seal.h"

#include "core/journal/digest.h"

#include <sodium.h>

#include <algorithm>
#include <array>
#include <cstring>

namespace undercowl::store {
namespace {

constexpr std::size_t chunk = std::size_t{1} << 16U; // of plain text
constexpr std::size_t sealedChunk = chunk + crypto_secretstream_xchacha20poly1305_ABYTES;
constexpr std::size_t headSize =
    sealMagic.size() + 8 + 8 + crypto_pwhash_SALTBYTES + crypto_secretstream_xchacha20poly1305_HEADERBYTES;
// A hostile file could ask for all the memory and time there is.
constexpr std::uint64_t mostPasses = 16;
constexpr std::uint64_t mostBytes = std::uint64_t{1} << 30U;

using Key = std::array<unsigned char, crypto_secretstream_xchacha20poly1305_KEYBYTES>;
using Head = std::array<unsigned char, headSize>;
using State = crypto_secretstream_xchacha20poly1305_state;

unsigned char* saltOf(Head& head) {
    return head.data() + sealMagic.size() + 16;
}
unsigned char* streamHeaderOf(Head& head) {
    return saltOf(head) + crypto_pwhash_SALTBYTES;
}

void putNumber(unsigned char* to, std::uint64_t number) {
    for (int i = 0; i < 8; ++i) {
        to[i] = static_cast<unsigned char>(number >> static_cast<unsigned>(8 * i));
    }
}

std::uint64_t number(const unsigned char* from) {
    std::uint64_t made = 0;
    for (int i = 7; i >= 0; --i) {
        made = made << 8U | from[i];
    }
    return made;
}

Result<Key> keyFrom(const std::string& passphrase, const unsigned char* salt, SealCost cost) {
    Key key{};
    if (crypto_pwhash(key.data(), key.size(), passphrase.data(), passphrase.size(), salt, cost.passes,
                      static_cast<std::size_t>(cost.bytes), crypto_pwhash_ALG_ARGON2ID13) != 0) {
        return failed(Fault::InputOutput, "the key of the backup needs " + std::to_string(cost.bytes >> 20U) +
                                              " MiB of memory, which are not free; close other programs");
    }
    return key;
}

class Sealing final : public ByteSink {
public:
    Sealing(ByteSink& below, std::string passphrase, SealCost cost)
        : below_(below), passphrase_(std::move(passphrase)), cost_(cost) {}
    ~Sealing() override {
        sodium_memzero(passphrase_.data(), passphrase_.size());
        sodium_memzero(&state_, sizeof state_);
    }

    Result<void> put(std::span<const std::byte> bytes) override {
        if (!begun_) {
            if (auto begun = begin(); !begun) {
                return begun;
            }
        }
        while (!bytes.empty()) {
            if (waiting_.size() == chunk) { // more follows, so this one is not the last
                if (auto sealed = seal(crypto_secretstream_xchacha20poly1305_TAG_MESSAGE); !sealed) {
                    return sealed;
                }
            }
            const auto part = bytes.first(std::min(bytes.size(), chunk - waiting_.size()));
            waiting_.insert(waiting_.end(), part.begin(), part.end());
            bytes = bytes.subspan(part.size());
        }
        return {};
    }

    Result<void> end() override {
        Result<void> done = put({});
        if (done) {
            done = seal(crypto_secretstream_xchacha20poly1305_TAG_FINAL);
        }
        return done ? below_.end() : done;
    }

private:
    Result<void> begin() {
        journal::needRandomness();
        if (passphrase_.size() < shortestPassphrase) {
            return failed(Fault::Refused, "passphrase: must have at least 8 bytes; several words are best");
        }
        std::copy(sealMagic.begin(), sealMagic.end(), head_.begin());
        putNumber(head_.data() + sealMagic.size(), cost_.passes);
        putNumber(head_.data() + sealMagic.size() + 8, cost_.bytes);
        randombytes_buf(saltOf(head_), crypto_pwhash_SALTBYTES);
        const auto key = keyFrom(passphrase_, saltOf(head_), cost_);
        if (!key) {
            return tl::unexpected(key.error());
        }
        crypto_secretstream_xchacha20poly1305_init_push(&state_, streamHeaderOf(head_), key->data());
        begun_ = true;
        return below_.put(std::as_bytes(std::span(head_)));
    }

    // The head goes with the first chunk as what is authenticated, so that no part of it can be changed.
    Result<void> seal(unsigned char tag) {
        std::vector<unsigned char> out(waiting_.size() + crypto_secretstream_xchacha20poly1305_ABYTES);
        crypto_secretstream_xchacha20poly1305_push(
            &state_, out.data(), nullptr, reinterpret_cast<const unsigned char*>(waiting_.data()),
            waiting_.size(), first_ ? head_.data() : nullptr, first_ ? head_.size() : 0, tag);
        first_ = false;
        waiting_.clear();
        return below_.put(std::as_bytes(std::span(out)));
    }

    ByteSink& below_;
    std::string passphrase_;
    SealCost cost_;
    Head head_{};
    State state_{};
    std::vector<std::byte> waiting_;
    bool begun_{};
    bool first_{true};
};

class Unsealing final : public ByteSource {
public:
    Unsealing(ByteSource& below, std::string passphrase)
        : below_(below), passphrase_(std::move(passphrase)) {}
    ~Unsealing() override {
        sodium_memzero(passphrase_.data(), passphrase_.size());
        sodium_memzero(&state_, sizeof state_);
    }

    Result<std::size_t> get(std::span<std::byte> into) override {
        if (!begun_) {
            if (auto begun = begin(); !begun) {
                return tl::unexpected(begun.error());
            }
        }
        while (at_ == plain_.size() && !ended_) {
            if (auto opened = open(); !opened) {
                return tl::unexpected(opened.error());
            }
        }
        const std::size_t part = std::min(into.size(), plain_.size() - at_);
        std::memcpy(into.data(), plain_.data() + at_, part);
        at_ += part;
        return part;
    }

private:
    // As many as there are, at most the span.
    Result<std::size_t> fill(std::span<std::byte> into) {
        std::size_t got = 0;
        while (got < into.size()) {
            const auto more = below_.get(into.subspan(got));
            if (!more) {
                return more;
            }
            if (*more == 0) {
                break;
            }
            got += *more;
        }
        return got;
    }

    Result<void> begin() {
        const auto got = fill(std::as_writable_bytes(std::span(head_)));
        if (!got) {
            return tl::unexpected(got.error());
        }
        const std::string_view magic(reinterpret_cast<const char*>(head_.data()), sealMagic.size());
        if (*got < head_.size() || magic != sealMagic) {
            return failed(Fault::Refused, "backup: this is no sealed backup, or it was cut short");
        }
        const SealCost cost{number(head_.data() + sealMagic.size()),
                            number(head_.data() + sealMagic.size() + 8)};
        if (cost.passes < crypto_pwhash_argon2id_OPSLIMIT_MIN || cost.passes > mostPasses ||
            cost.bytes < crypto_pwhash_argon2id_MEMLIMIT_MIN || cost.bytes > mostBytes) {
            return failed(Fault::Refused, "backup: asks for more memory or time for its key than is given");
        }
        const auto key = keyFrom(passphrase_, saltOf(head_), cost);
        if (!key) {
            return tl::unexpected(key.error());
        }
        if (crypto_secretstream_xchacha20poly1305_init_pull(&state_, streamHeaderOf(head_), key->data()) !=
            0) {
            return failed(Fault::Refused, "backup: its head is damaged");
        }
        begun_ = true;
        return {};
    }

    Result<void> open() {
        std::vector<std::byte> sealed(sealedChunk);
        const auto got = fill(sealed);
        if (!got) {
            return tl::unexpected(got.error());
        }
        unsigned char tag = 0;
        plain_.resize(chunk);
        unsigned long long size = 0;
        if (*got < crypto_secretstream_xchacha20poly1305_ABYTES ||
            crypto_secretstream_xchacha20poly1305_pull(
                &state_, reinterpret_cast<unsigned char*>(plain_.data()), &size, &tag,
                reinterpret_cast<const unsigned char*>(sealed.data()), *got, first_ ? head_.data() : nullptr,
                first_ ? head_.size() : 0) != 0) {
            plain_.clear();
            at_ = 0;
            return failed(Fault::Refused, first_
                                              ? "backup: the passphrase does not fit, or the file is damaged"
                                              : "backup: the file is damaged or cut short");
        }
        first_ = false;
        plain_.resize(static_cast<std::size_t>(size));
        at_ = 0;
        if (tag == crypto_secretstream_xchacha20poly1305_TAG_FINAL) {
            ended_ = true;
            std::byte more{};
            const auto after = below_.get({&more, 1});
            if (!after || *after != 0) {
                return failed(Fault::Refused, "backup: something was added to the file's end");
            }
        }
        return {};
    }

    ByteSource& below_;
    std::string passphrase_;
    Head head_{};
    State state_{};
    std::vector<std::byte> plain_;
    std::size_t at_{};
    bool begun_{};
    bool first_{true};
    bool ended_{};
};

} // namespace

bool isSealed(std::string_view begin) {
    return begin.starts_with(sealMagic);
}

std::unique_ptr<ByteSink> sealing(ByteSink& below, const std::string& passphrase, SealCost cost) {
    return std::make_unique<Sealing>(below, passphrase, cost);
}

std::unique_ptr<ByteSource> unsealing(ByteSource& below, const std::string& passphrase) {
    return std::make_unique<Unsealing>(below, passphrase);
}

} // namespace undercowl::store
