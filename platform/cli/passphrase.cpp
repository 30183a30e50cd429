#include "platform/cli/passphrase.h"

#include <fmt/format.h>

#include <fstream>
#include <iostream>

namespace undercowl::platform {

tl::expected<std::string, Exit> passphraseFrom(const std::filesystem::path& file) {
    std::string line;
    if (file.empty()) {
        return line;
    }
    std::ifstream in;
    if (file != "-") {
        in.open(file);
    }
    if (!std::getline(file == "-" ? std::cin : in, line)) {
        return tl::unexpected(
            complain(Exit::WrongUse, fmt::format("cannot read a passphrase from {}: its first line is wanted",
                                                 file == "-" ? "standard input" : file.string())));
    }
    if (line.ends_with('\r')) {
        line.pop_back();
    }
    return line;
}

} // namespace undercowl::platform
