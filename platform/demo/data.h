// The demo's data files as JSON, with errors that name the file. Not for use outside this folder.
#pragma once

#include "core/store/store.h"

#include <nlohmann/json.hpp>

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace undercowl::demo {

using Json = nlohmann::json;

[[nodiscard]] store::Result<Json> readJson(const std::filesystem::path& file);
[[nodiscard]] store::Result<std::vector<std::byte>> readBytes(const std::filesystem::path& file);

[[nodiscard]] inline tl::unexpected<store::Problem> refused(std::string message) {
    return tl::unexpected(store::Problem{store::Fault::Refused, std::move(message)});
}

// The text under that name; empty when there is none. Throws nlohmann's type_error when it is no text.
[[nodiscard]] std::string text(const Json& object, std::string_view name);

// "18423 km"; nothing when there is none.
[[nodiscard]] std::optional<job::TypedValue> value(const Json& object, std::string_view name);

// The same name gives the same id in every demo shop, so that a making that was cut short can be gone on
// with.
[[nodiscard]] job::Id idOf(std::string_view name);

} // namespace undercowl::demo
