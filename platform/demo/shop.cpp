#include "platform/demo/shop.h"

#include "platform/demo/data.h"
#include "platform/demo/story.h"

#include "core/journal/instruments.h"
#include "core/verdict/specify.h"

#include <fmt/format.h>

#include <chrono>
#include <cmath>
#include <memory>
#include <stdexcept>

namespace undercowl::demo {
namespace {

constexpr double msPerDay = 24.0 * 60 * 60 * 1000;
constexpr std::string_view progressSetting = "demo.sittings"; // how many of them have been told

// Sittings are told in the past: the store asks this clock.
using Hands = std::shared_ptr<job::TimeMs>;

Shop shopOf(const Json& shop) {
    const std::string number = text(shop, "follow");
    return {Teller::id(number, ""), number, Teller::id(number, "gathering"),
            Teller::id(number, text(shop, "unplugged by")), false};
}

IdFor idsOf(const Shop& shop) {
    return [&shop](const std::string& name) { return Teller::id(shop.number, name); };
}

// Its days are counted from the day on which the shop is made.
journal::Draft instrument(const Json& told, job::TimeMs today) {
    const auto day = [&](const char* name, int direction) {
        const std::chrono::sys_time<std::chrono::milliseconds> now{std::chrono::milliseconds{today}};
        return units::formatDate(std::chrono::floor<std::chrono::days>(now) +
                                 std::chrono::days{direction * told.at(name).get<int>()});
    };
    verdict::InstrumentSheet sheet;
    sheet.name = text(told, "name");
    sheet.kind = text(told, "kind");
    sheet.low = text(told, "low");
    sheet.high = text(told, "high");
    sheet.resolution = text(told, "resolution");
    sheet.wrench = text(told, "wrench");
    sheet.gaugeClass = text(told, "gaugeClass");
    sheet.percent = text(told, "percent");
    sheet.source = text(told, "source");
    sheet.calibrated = day("calibrated ago", -1);
    sheet.due = day("due in", 1);
    auto made = verdict::instrumentFrom(sheet);
    if (!made)
        throw std::invalid_argument(sheet.name + ": " + made.error().field + ": " + made.error().message);
    return journal::instrumentKept({idOf("instrument " + sheet.name), *std::move(made), false});
}

store::Result<void> nameShop(store::Store& store, const Json& shop, job::TimeMs today) {
    std::vector<journal::Draft> drafts;
    for (const Json& name : shop.at("mechanics"))
        drafts.push_back(
            journal::mechanicNamed({idOf("mechanic " + name.get<std::string>()), name.get<std::string>()}));
    if (auto said = store.append(drafts); !said)
        return tl::unexpected(said.error());
    // Somebody has to say what the shop measures with.
    const std::string first = shop.at("mechanics").at(0).get<std::string>();
    if (auto chosen = store.chooseMechanic(idOf("mechanic " + first)); !chosen)
        return chosen;
    drafts.clear();
    for (const Json& told : shop.at("instruments"))
        drafts.push_back(instrument(told, today));
    if (auto said = store.append(drafts); !said)
        return tl::unexpected(said.error());
    return {};
}

store::Result<void> tellSitting(store::Store& store, const std::filesystem::path& assets, const Json& shop,
                                const Json& sitting, const WiringPlan& wiring) {
    if (auto chosen = store.chooseMechanic(idOf("mechanic " + text(sitting, "by"))); !chosen)
        return chosen;
    const std::string number = text(sitting, "job");
    Teller teller{store, assets, shop};
    std::vector<journal::Draft> drafts;
    const auto say = [&]() -> store::Result<void> {
        if (drafts.empty())
            return {};
        auto said = store.append(drafts);
        drafts.clear();
        return said ? store::Result<void>{} : tl::unexpected(said.error());
    };
    for (const Json& saying : sitting.at("say")) {
        if (!saying.contains("wiring")) {
            auto told = teller.tell(number, saying);
            if (!told)
                return tl::unexpected(told.error());
            drafts.insert(drafts.end(), told->begin(), told->end());
            continue;
        }
        if (auto said = say(); !said) // the step that the wiring belongs to
            return said;
        const auto read = sighted(wiring.before);
        if (!read)
            return tl::unexpected(read.error());
        if (auto kept = keepMap(store, shopOf(shop), wiring, *read); !kept)
            return kept;
    }
    return say();
}

store::Result<Shop> tellAll(store::Store& store, const Hands& clock, const std::filesystem::path& assets,
                            const Json& shop, const WiringPlan& wiring) {
    Shop made = shopOf(shop);
    const Json& sittings = shop.at("sittings");
    const job::TimeMs today = *clock;
    const auto setClock = [&](const Json& sitting) {
        *clock = today - static_cast<job::TimeMs>(std::llround(sitting.at("ago").get<double>() * msPerDay));
    };
    const std::string progress = store.setting(progressSetting);
    if (progress.empty()) {
        const auto others = store.jobs();
        if (!others)
            return tl::unexpected(others.error());
        if (!others->empty())
            return refused("the store in this folder holds a shop of its own: give the demo another folder "
                           "with --store DIR");
        setClock(sittings.at(0)); // a journal's time never runs backwards: the first entry is the oldest
        if (auto named = nameShop(store, shop, today); !named)
            return tl::unexpected(named.error());
        // From here on the folder is known as the demo's, should the rest be cut short.
        if (auto kept = store.set(progressSetting, "0"); !kept)
            return tl::unexpected(kept.error());
    }
    for (std::size_t at = progress.empty() ? 0 : std::stoul(progress); at < sittings.size(); ++at) {
        const Json& sitting = sittings.at(at);
        setClock(sitting);
        if (auto told = tellSitting(store, assets, shop, sitting, wiring); !told)
            return tl::unexpected(told.error());
        if (auto kept = store.set(progressSetting, std::to_string(at + 1)); !kept)
            return tl::unexpected(kept.error());
        made.made = true;
    }
    return made;
}

} // namespace

std::filesystem::path builtInAssets() {
    std::error_code none;
    const auto program = std::filesystem::read_symlink("/proc/self/exe", none); // where a system has it
    const auto installed = program.parent_path() / ".." / "share" / "undercowl" / "demo";
    return !none && std::filesystem::exists(installed, none) ? installed : UNDERCOWL_DEMO_ASSETS;
}

store::Result<Shop> makeShop(const std::filesystem::path& folder, const std::filesystem::path& assets,
                             const WiringPlan& wiring) {
    const auto shop = readJson(assets / "shop.json");
    if (!shop)
        return tl::unexpected(shop.error());
    const Hands clock = std::make_shared<job::TimeMs>(store::systemClock()());
    auto store = store::Store::open(folder, [clock] { return *clock; });
    if (!store)
        return tl::unexpected(store.error());
    try {
        return tellAll(*store, clock, assets, *shop, wiring);
    } catch (const std::exception& wrong) {
        return refused(fmt::format("{}: {}: take the file that came with the program",
                                   (assets / "shop.json").string(), wrong.what()));
    }
}

store::Result<void> keepMap(store::Store& store, const Shop& shop, const WiringPlan& plan,
                            const Sighted& before) {
    return keepMap(store, shop.job, shop.step, plan, before, idsOf(shop));
}

store::Result<void> keepChecks(store::Store& store, const Shop& shop, const WiringPlan& plan,
                               const Sighted& after, const sight::Comparison& comparison) {
    return keepChecks(store, shop.job, shop.gathering, plan, after, comparison, idsOf(shop));
}

} // namespace undercowl::demo
