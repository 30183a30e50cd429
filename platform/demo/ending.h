// What a sitting says of rounds, maps, proofs, cost and signature. Not for use outside this folder.
#pragma once

#include "platform/demo/data.h"

#include "core/journal/entry.h"

#include <filesystem>
#include <string>
#include <vector>

namespace undercowl::demo {

using journal::Draft;

// {"round": traits, "key", "found": {check: finding}, "not done": {check: why}, "to come": [checks]}: all
// other checks are fine. A check that the round does not ask is refused by its words.
[[nodiscard]] store::Result<std::vector<Draft>> toldRound(const std::string& number, const Json& saying);

// {"map": title, "key", "wires": [[colour, terminal, function], ...]}: loose terminals as found, place by
// place, typed.
[[nodiscard]] store::Result<std::vector<Draft>> toldMap(const std::string& number, const Json& saying);

// {"matches": key of a map, "places", "how"}: each of its wires read back, and right.
[[nodiscard]] std::vector<Draft> toldMatches(const std::string& number, const Json& saying);

// {"sign": who}: signed with the picture assets/demo/signature.png, which is kept on the way.
[[nodiscard]] store::Result<std::vector<Draft>> toldSignature(store::Store& store,
                                                              const std::filesystem::path& assets,
                                                              const std::string& number, const Json& saying);

// {"prove": step or gathering, "what", "how"}, {"seconded": step, "what", "who"}, {"ridden": distance,
// "note"},
// {"cost": currency, "rate", "tax", "lines": {what: sum}}, {"works now": function}.
[[nodiscard]] Draft proof(const std::string& number, const Json& saying);
[[nodiscard]] Draft seconded(const std::string& number, const Json& saying);
[[nodiscard]] Draft ridden(const std::string& number, const Json& saying);
[[nodiscard]] Draft rechecked(const std::string& number,
                              const Json& saying); // {"rechecked": recheck, "note"}
[[nodiscard]] Draft cost(const std::string& number, const Json& saying);
[[nodiscard]] Draft worksNow(const std::string& number, const Json& saying);

} // namespace undercowl::demo
