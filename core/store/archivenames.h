// The names in an archive; docs/archive.md.
#pragma once

#include <string>

namespace undercowl::store {

inline const std::string jobFileName = "job.json";
inline const std::string recordName = "record.pdf";
inline const std::string checksumsName = "checksums.txt";
inline const std::string mediaFolder = "media/";

} // namespace undercowl::store
