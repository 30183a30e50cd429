// A passphrase for a sealed backup, from a file or from standard input: never from the command line, where
// other programs could read it.
#pragma once

#include "platform/cli/command.h"

#include <filesystem>
#include <string>

namespace undercowl::platform {

// The first line of the file; "-" is standard input; an empty path gives none. The error has been complained
// about.
[[nodiscard]] tl::expected<std::string, Exit> passphraseFrom(const std::filesystem::path& file);

inline constexpr const char* passphraseHelp =
    "File whose first line is the passphrase of a sealed backup; - reads it from standard input";

} // namespace undercowl::platform
