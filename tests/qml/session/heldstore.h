// The real store in a folder, whose appends can be held back or refused.
#pragma once

#include "qml/shell/shopstore.h"

#include <condition_variable>
#include <memory>
#include <mutex>
#include <optional>

namespace undercowl::ui {

class Gate {
public:
    void hold() { set(true); }
    void release() { set(false); }
    void refuse(std::optional<store::Problem> problem) {
        const std::lock_guard lock(mutex_);
        problem_ = std::move(problem);
    }
    // On the worker: waits while held; the problem if the append is to be refused.
    [[nodiscard]] std::optional<store::Problem> pass() {
        std::unique_lock lock(mutex_);
        changed_.wait(lock, [this] { return !held_; });
        return problem_;
    }

private:
    void set(bool held) {
        {
            const std::lock_guard lock(mutex_);
            held_ = held;
        }
        changed_.notify_all();
    }
    std::mutex mutex_;
    std::condition_variable changed_;
    bool held_{};
    std::optional<store::Problem> problem_;
};

class HeldStore : public ShopStore {
public:
    HeldStore(std::unique_ptr<ShopStore> real, std::shared_ptr<Gate> gate)
        : real_(std::move(real)), gate_(std::move(gate)) {}

    [[nodiscard]] std::string readOnly() const override { return real_->readOnly(); }
    [[nodiscard]] Id mechanic() const override { return real_->mechanic(); }
    Result<void> chooseMechanic(const Id& id) override { return real_->chooseMechanic(id); }
    [[nodiscard]] Result<std::vector<job::Mechanic>> mechanics() const override { return real_->mechanics(); }
    [[nodiscard]] std::string setting(std::string_view name) const override { return real_->setting(name); }
    Result<void> set(std::string_view name, std::string_view value) override {
        return real_->set(name, value);
    }
    [[nodiscard]] Result<std::vector<journal::Entry>>
    append(std::span<const journal::Draft> drafts) override {
        if (auto problem = gate_->pass())
            return tl::unexpected(*problem);
        return real_->append(drafts);
    }
    [[nodiscard]] Result<store::Media> keepMedia(std::span<const std::byte> bytes,
                                                 std::string_view suffix) override {
        return real_->keepMedia(bytes, suffix);
    }
    [[nodiscard]] Result<job::Job> job(const Id& id) const override { return real_->job(id); }
    [[nodiscard]] Result<job::Machine> machine(const Id& id) const override { return real_->machine(id); }
    [[nodiscard]] Result<job::Owner> owner(const Id& id) const override { return real_->owner(id); }
    [[nodiscard]] Result<std::vector<journal::Entry>> shopEntries() const override {
        return real_->shopEntries();
    }
    [[nodiscard]] Result<std::vector<store::JobLine>> jobs(std::size_t mostDone) const override {
        return real_->jobs(mostDone);
    }
    [[nodiscard]] Result<std::vector<store::Hit>> find(std::string_view words,
                                                       std::size_t most) const override {
        return real_->find(words, most);
    }
    Result<void> keepDraft(std::string_view form, std::string_view json) override {
        return real_->keepDraft(form, json);
    }
    [[nodiscard]] std::optional<std::string> draft(std::string_view form) const override {
        return real_->draft(form);
    }
    Result<void> dropDraft(std::string_view form) override { return real_->dropDraft(form); }

private:
    std::unique_ptr<ShopStore> real_;
    std::shared_ptr<Gate> gate_;
};

[[nodiscard]] inline OpenShop heldShop(const std::filesystem::path& folder, std::shared_ptr<Gate> gate) {
    return [open = shopInFolder(folder), gate = std::move(gate)]() -> Result<std::unique_ptr<ShopStore>> {
        auto real = open();
        if (!real)
            return tl::unexpected(real.error());
        return std::make_unique<HeldStore>(std::move(*real), gate);
    };
}

} // namespace undercowl::ui
