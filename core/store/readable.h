// What can be read of a database, whatever state it is in.
#pragma once

#include "core/journal/entry.h"
#include "core/store/result.h"

#include <filesystem>
#include <map>
#include <string>
#include <vector>

namespace undercowl::store {

struct Readable {
    std::vector<journal::Entry> entries; // whose seals fit, each once; device by device, in order of number
    std::vector<std::string> faults;     // what could not be read or does not fit its seal, in words
    std::map<std::string, std::string> settings;
    std::map<std::string, std::string> device; // of device_state
    std::map<std::string, std::string> drafts; // form and JSON
    int schema{};
};

// Reads past damaged pages, from both ends and then row by row; then whatever lies on pages to which no way
// leads (core/store/pages.h). Where the database cannot be opened at all, the pages alone are read: settings,
// drafts and the schema are lost then. Never writes. Fails when no entry is found that way.
[[nodiscard]] Result<Readable> readWhatCanBe(const std::filesystem::path& database);

} // namespace undercowl::store
