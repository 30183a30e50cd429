// How drafts are made of bodies. Not for use outside this folder.
#pragma once

#include "core/journal/body.h"
#include "core/journal/entry.h"

#include <string>
#include <vector>

namespace undercowl::journal {

[[nodiscard]] inline Draft draft(const char* kind, const Id& stream, const Id& subject, const Json& body,
                                 const Id& supersedes = {}) {
    // A body typed by hand may hold bytes that are no UTF-8; they are shown as a replacement mark, not lost
    // with the rest.
    return {kind, stream, subject, body.dump(-1, ' ', false, Json::error_handler_t::replace), supersedes};
}

inline void put(Json& body, const char* name, const std::vector<std::string>& texts) {
    if (!texts.empty())
        body[name] = texts;
}

} // namespace undercowl::journal
