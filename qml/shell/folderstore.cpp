#include "qml/shell/shopstore.h"

#include <utility>

namespace undercowl::ui {

namespace {

class FolderStore : public ShopStore {
public:
    explicit FolderStore(store::Store store) : store_(std::move(store)) {}

    [[nodiscard]] std::string readOnly() const override { return store_.readOnly(); }
    [[nodiscard]] Id mechanic() const override { return store_.mechanic(); }
    Result<void> chooseMechanic(const Id& mechanic) override { return store_.chooseMechanic(mechanic); }
    [[nodiscard]] Result<std::vector<job::Mechanic>> mechanics() const override { return store_.mechanics(); }
    [[nodiscard]] std::string setting(std::string_view name) const override { return store_.setting(name); }
    Result<void> set(std::string_view name, std::string_view value) override {
        return store_.set(name, value);
    }

    [[nodiscard]] Result<std::vector<journal::Entry>>
    append(std::span<const journal::Draft> drafts) override {
        return store_.append(drafts);
    }
    [[nodiscard]] Result<store::Media> keepMedia(std::span<const std::byte> bytes,
                                                 std::string_view suffix) override {
        return store_.keepMedia(bytes, suffix);
    }

    [[nodiscard]] Result<job::Job> job(const Id& id) const override { return store_.job(id); }
    [[nodiscard]] Result<job::Machine> machine(const Id& id) const override { return store_.machine(id); }
    [[nodiscard]] Result<job::Owner> owner(const Id& id) const override { return store_.owner(id); }
    [[nodiscard]] Result<std::vector<journal::Entry>> shopEntries() const override {
        auto entries = store_.entries(std::string(journal::shopStream));
        if (!entries && entries.error().fault == store::Fault::NotFound)
            return std::vector<journal::Entry>{};
        return entries;
    }
    [[nodiscard]] Result<std::vector<store::JobLine>> jobs(std::size_t mostDone) const override {
        return store_.jobs(mostDone);
    }
    [[nodiscard]] Result<std::vector<store::Hit>> find(std::string_view words,
                                                       std::size_t most) const override {
        return store_.find(words, most);
    }

    Result<void> keepDraft(std::string_view form, std::string_view json) override {
        return store_.keepDraft(form, json);
    }
    [[nodiscard]] std::optional<std::string> draft(std::string_view form) const override {
        return store_.draft(form);
    }
    Result<void> dropDraft(std::string_view form) override { return store_.dropDraft(form); }

private:
    store::Store store_;
};

} // namespace

Result<std::vector<journal::KeptInstrument>> ShopStore::instruments() const {
    return shopEntries().map(journal::foldInstruments);
}

Result<std::vector<journal::RoundList>> ShopStore::roundLists() const {
    return shopEntries().map(journal::roundLists);
}

OpenShop shopInFolder(std::filesystem::path folder, store::WallClock clock) {
    return [folder = std::move(folder), clock = std::move(clock)]() -> Result<std::unique_ptr<ShopStore>> {
        auto opened = store::Store::open(folder, clock);
        if (!opened && store::mayBeLookedAt(opened.error().fault)) {
            if (auto looking = store::Store::openReadable(folder, clock, opened.error().fault))
                opened = std::move(looking);
        }
        if (!opened)
            return tl::unexpected(std::move(opened.error()));
        return std::make_unique<FolderStore>(std::move(*opened));
    };
}

} // namespace undercowl::ui
