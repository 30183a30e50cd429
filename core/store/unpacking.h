// A new store's folder that appears whole or not at all. Only core/store includes this.
#pragma once

#include "core/journal/entry.h"
#include "core/store/files.h"
#include "core/store/result.h"

#include <filesystem>
#include <memory>
#include <system_error>

namespace undercowl::store {

// The folder while it is being filled, FOLDER.incoming-...; gone unless it was kept.
class Unpacking {
public:
    explicit Unpacking(const std::filesystem::path& folder)
        : folder_(folder.string() + ".incoming-" + journal::newId(0)), files_(posixFiles()) {}
    Unpacking(const Unpacking&) = delete;
    Unpacking& operator=(const Unpacking&) = delete;
    ~Unpacking() {
        if (!folder_.empty()) {
            std::error_code ignored;
            std::filesystem::remove_all(folder_, ignored);
        }
    }

    [[nodiscard]] const std::filesystem::path& folder() const { return folder_; }
    [[nodiscard]] const std::shared_ptr<Files>& files() const { return files_; }

    Result<void> keepAs(const std::filesystem::path& folder) {
        if (auto renamed = files_->rename(folder_, folder); !renamed) {
            return renamed;
        }
        folder_.clear();
        return files_->syncFolder(folder.parent_path());
    }

private:
    std::filesystem::path folder_;
    std::shared_ptr<Files> files_;
};

} // namespace undercowl::store
