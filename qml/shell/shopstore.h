// What the session needs of the store: the seam between the shell and core/store, so that tests can hold an
// append back or let it fail. Every call happens on the session's worker thread.
#pragma once

#include "core/job/model.h"
#include "core/journal/entry.h"
#include "core/journal/instruments.h"
#include "core/journal/rounds.h"
#include "core/store/store.h"

#include <cstddef>
#include <filesystem>
#include <functional>
#include <limits>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace undercowl::ui {

using job::Id;
using store::Result;

// Contracts are those of store::Store; append returns after the sync has returned.
class ShopStore {
public:
    ShopStore() = default;
    ShopStore(const ShopStore&) = delete;
    ShopStore& operator=(const ShopStore&) = delete;
    virtual ~ShopStore() = default;

    // Why nothing can be said in this shop, with the remedy; empty for one that can be worked in.
    [[nodiscard]] virtual std::string readOnly() const { return {}; }
    [[nodiscard]] virtual Id mechanic() const = 0;
    virtual Result<void> chooseMechanic(const Id& mechanic) = 0;
    [[nodiscard]] virtual Result<std::vector<job::Mechanic>> mechanics() const = 0;
    [[nodiscard]] virtual std::string setting(std::string_view name) const = 0;
    virtual Result<void> set(std::string_view name, std::string_view value) = 0;

    [[nodiscard]] virtual Result<std::vector<journal::Entry>>
    append(std::span<const journal::Draft> drafts) = 0;
    [[nodiscard]] virtual Result<store::Media> keepMedia(std::span<const std::byte> bytes,
                                                         std::string_view suffix) = 0;

    [[nodiscard]] virtual Result<job::Job> job(const Id& id) const = 0;
    [[nodiscard]] virtual Result<job::Machine> machine(const Id& id) const = 0;
    [[nodiscard]] virtual Result<job::Owner> owner(const Id& id) const = 0;
    // Of the shop's own stream; none in a shop that has said nothing yet.
    [[nodiscard]] virtual Result<std::vector<journal::Entry>> shopEntries() const = 0;
    // The shop's own, by name; the retired as well.
    [[nodiscard]] Result<std::vector<journal::KeptInstrument>> instruments() const;
    // The lists of checks as the shop wants them.
    [[nodiscard]] Result<std::vector<journal::RoundList>> roundLists() const;
    [[nodiscard]] virtual Result<std::vector<store::JobLine>>
    jobs(std::size_t mostDone = std::numeric_limits<std::int64_t>::max()) const = 0;
    [[nodiscard]] virtual Result<std::vector<store::Hit>> find(std::string_view words,
                                                               std::size_t most) const = 0;

    virtual Result<void> keepDraft(std::string_view form, std::string_view json) = 0;
    [[nodiscard]] virtual std::optional<std::string> draft(std::string_view form) const = 0;
    virtual Result<void> dropDraft(std::string_view form) = 0;
};

// Called once on the worker thread when the session starts, and again when opening is tried again.
using OpenShop = std::function<Result<std::unique_ptr<ShopStore>>()>;

// The store in a folder; see store::Store::open. One that is damaged or of a newer version is opened for
// looking only, where it can be read at all.
[[nodiscard]] OpenShop shopInFolder(std::filesystem::path folder,
                                    store::WallClock clock = store::systemClock());

} // namespace undercowl::ui
