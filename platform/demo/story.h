// What shop.json tells, as drafts of entries. Not for use outside this folder.
#pragma once

#include "platform/demo/data.h"

#include "core/journal/say.h"

#include <filesystem>
#include <string>
#include <vector>

namespace undercowl::demo {

// Turns one sitting's sayings into drafts. Photos that it names are kept in the store on the way.
class Teller {
public:
    Teller(store::Store& store, const std::filesystem::path& assets, const Json& shop)
        : store_(store), assets_(assets), shop_(shop) {}

    // The drafts of one saying of the job with that number. Throws nlohmann's exceptions for a saying that
    // has not the shape it should have.
    [[nodiscard]] store::Result<std::vector<journal::Draft>> tell(const std::string& number,
                                                                  const Json& saying);

    // The id of what a saying of that job calls by 'key'.
    [[nodiscard]] static job::Id id(const std::string& number, const std::string& key);

private:
    [[nodiscard]] store::Result<std::vector<journal::Draft>> open(const std::string& number);
    [[nodiscard]] store::Result<std::vector<journal::Draft>> photo(const std::string& number,
                                                                   const Json& saying);

    store::Store& store_;
    const std::filesystem::path& assets_;
    const Json& shop_;
};

} // namespace undercowl::demo
