#include "platform/demo/data.h"

#include <fmt/format.h>

#include <cstdint>
#include <fstream>
#include <iterator>

namespace undercowl::demo {
namespace {

// FNV-1a, by Fowler, Noll and Vo: enough to keep a few hundred names apart.
std::uint64_t fnv(std::string_view text, std::uint64_t start) {
    constexpr std::uint64_t prime = 0x100000001b3;
    std::uint64_t hash = start;
    for (const char letter : text) {
        hash ^= static_cast<unsigned char>(letter);
        hash *= prime;
    }
    return hash;
}

} // namespace

store::Result<std::vector<std::byte>> readBytes(const std::filesystem::path& file) {
    std::ifstream in{file, std::ios::binary};
    std::vector<char> letters{std::istreambuf_iterator<char>{in}, {}};
    if (!in.is_open() || in.bad())
        return refused(
            fmt::format("{} cannot be read: check its name and that you may read it", file.string()));
    const auto* first = reinterpret_cast<const std::byte*>(letters.data());
    return std::vector<std::byte>{first, first + letters.size()};
}

store::Result<Json> readJson(const std::filesystem::path& file) {
    const auto bytes = readBytes(file);
    if (!bytes)
        return tl::unexpected(bytes.error());
    const auto* first = reinterpret_cast<const char*>(bytes->data());
    Json json = Json::parse(first, first + bytes->size(), nullptr, false);
    if (json.is_discarded() || !json.is_object())
        return refused(fmt::format(
            "{} is not a JSON object: mend it or take the file that came with the program", file.string()));
    return json;
}

std::string text(const Json& object, std::string_view name) {
    const auto found = object.find(name);
    return found == object.end() ? std::string{} : found->get<std::string>();
}

std::optional<job::TypedValue> value(const Json& object, std::string_view name) {
    const std::string typed = text(object, name);
    if (typed.empty())
        return {};
    const std::size_t space = typed.find(' ');
    return job::TypedValue{typed.substr(0, space), space == std::string::npos ? "" : typed.substr(space + 1)};
}

job::Id idOf(std::string_view name) {
    constexpr std::uint64_t offsetBasis = 0xcbf29ce484222325;
    const std::uint64_t high = fnv(name, offsetBasis);
    const std::uint64_t low = fnv(name, high);
    // A UUID of version 8 (RFC 9562): its bits are ours to choose, but for version and variant.
    return fmt::format("{:08x}-{:04x}-8{:03x}-{:04x}-{:012x}", high >> 32U, (high >> 16U) & 0xffffU,
                       high & 0xfffU, 0x8000U | ((low >> 48U) & 0x3fffU), low & 0xffffffffffffU);
}

} // namespace undercowl::demo
