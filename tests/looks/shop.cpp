#include "shop.h"

#include "core/journal/rounds.h"
#include "core/journal/say.h"
#include "core/journal/saywork.h"
#include "core/store/backup.h"
#include "core/store/shops.h"

#include <QTest>

#include <algorithm>
#include <fstream>
#include <iterator>
#include <span>
#include <string>

namespace undercowl::looks {
namespace {

// Into "FOLDER-stick"; of the open one's files only the cut one stays, so that pages have both kinds.
void backUp(const store::Store& store, MadeShop& made) {
    const std::filesystem::path stick = store.folder().string() + "-stick";
    made.cut = stick / "undercowl-2026-11-20-181500.backup";
    made.sealed = stick / "undercowl-2026-11-25-180200.backup";
    std::filesystem::create_directories(stick);
    store::BackupWish wish;
    const auto whole = store::writeBackup(store, made.cut, wish);
    wish.passphrase = "four wet spark plugs";
    wish.cost = {1, 8192}; // nobody guesses it here
    const auto sealed = store::writeBackup(store, made.sealed, wish);
    const auto restored =
        store::restoreBackup({made.cut}, store::newShopFolder(store.folder(), 1'795'780'800'000));
    if (!whole || !sealed || !restored)
        qFatal("the demo shop cannot be backed up");
    std::filesystem::resize_file(made.cut, whole->bytes / 2);
}

} // namespace

MadeShop makeShop(const std::filesystem::path& folder) {
    const auto plan = demo::wiringOf(demo::builtInAssets());
    if (!plan)
        qFatal("%s", plan.error().message.c_str());
    auto shop = demo::makeShop(folder, demo::builtInAssets(), *plan);
    if (!shop)
        qFatal("%s", shop.error().message.c_str());
    auto store = store::Store::open(folder);
    const auto before = demo::sighted(plan->before);
    if (!store || !before)
        qFatal("the demo shop cannot be read");
    // The mechanic confirms what was read, the second wire as a twin of the third.
    const auto known = store->job(shop->job);
    const auto* gathering = known ? job::findGathering(*known, shop->gathering) : nullptr;
    if (gathering == nullptr)
        qFatal("the demo shop has no connector");
    for (std::size_t i = 0; i < before->wires.size(); ++i) {
        const auto& reading = before->wires[i == 1 ? 2 : i];
        if (!reading.found())
            continue;
        wiring::PlaceAnswer answer;
        answer.wire.colour = reading.candidates.front().wire;
        answer.how = wiring::HowKnown::Picked;
        if (i < plan->functions.size())
            answer.wire.function = plan->functions[i];
        const sight::Point at = before->wires[i].at;
        answer.mark = {gathering->photo, at.x / before->photo.width(), at.y / before->photo.height()};
        const auto said = store->append(journal::wireAnswered(
            shop->job, shop->gathering, {wiring::Half::Loom, static_cast<int>(i) + 1, 1},
            wiring::Answer::AsFound, answer));
        if (!said)
            qFatal("%s", said.error().message.c_str());
    }
    wiring::Gathering unread = *gathering;
    unread.id = unreadGathering;
    unread.places = static_cast<int>(before->wires.size());
    const auto photo = std::ranges::find(known->photos, gathering->photo, &job::Photo::id);
    if (photo == known->photos.end())
        qFatal("the demo's connector has no photo");
    job::Photo again = *photo;
    again.id = store->newId();
    again.about = unread.id;
    unread.photo = again.id;
    unread.first.reset();
    wiring::Gathering fresh = unread;
    fresh.id = freshGathering;
    fresh.title = "new switch, other make";
    fresh.replaces = shop->gathering;
    fresh.photo.clear();
    fresh.places = 8;
    std::vector more{journal::photoTaken(shop->job, again), journal::gatheringDescribed(shop->job, unread),
                     journal::gatheringDescribed(shop->job, fresh)};
    const std::vector<std::string> serves{"horn",           "",     "stop lamp", "hazard warning", "",
                                          "left indicator", "earth"};
    for (std::size_t i = 0; i < serves.size(); ++i) {
        wiring::PlaceAnswer answer;
        answer.wire.function = serves[i];
        answer.how = wiring::HowKnown::Typed;
        answer.source = "sheet that came with it";
        if (!serves[i].empty())
            more.push_back(journal::wireAnswered(shop->job, fresh.id,
                                                 {wiring::Half::Unit, static_cast<int>(i) + 1, 1},
                                                 wiring::Answer::AsItShouldBe, answer));
    }
    job::Round round = journal::composed(journal::builtInRounds(), {});
    round.id = begunRound;
    more.push_back(journal::roundBegun(shop->job, round));
    if (const auto said = store->append(more); !said)
        qFatal("%s", said.error().message.c_str());
    // As it is now, with two wires exchanged: to be compared.
    std::ifstream in(std::filesystem::path(UNDERCOWL_PHOTOS) / "switch-after.jpg", std::ios::binary);
    const std::string bytes{std::istreambuf_iterator<char>(in), {}};
    const auto media = store->keepMedia(std::as_bytes(std::span(bytes)), "jpg");
    if (!media)
        qFatal("%s", media.error().message.c_str());
    job::Photo after = *photo; // of the same size
    after.id = store->newId();
    after.media = media->name;
    after.about = shop->gathering;
    after.purpose = job::PhotoPurpose::Refit;
    if (const auto said = store->append(journal::photoTaken(shop->job, after)); !said)
        qFatal("%s", said.error().message.c_str());
    const auto finding = std::ranges::find(known->findings, false, &job::Finding::settled);
    if (finding == known->findings.end() || known->tasks.empty())
        qFatal("the demo's job has no open finding or no task");
    if (known->parts.empty())
        qFatal("the demo's job has no part");
    const auto placed = std::ranges::find_if(known->steps, [](const job::StripStep& step) {
        return !step.hardware.empty() && !step.hardware.front().at.empty();
    });
    if (placed == known->steps.end())
        qFatal("the demo's job has no hardware on a photo");
    MadeShop made{*shop, finding->id, known->tasks.front().id, known->parts.front().id, placed->id, {}, {}};
    backUp(*store, made);
    return made;
}

std::unique_ptr<ui::ShopSession> sessionOn(const std::filesystem::path& folder, const job::Id& job) {
    auto session = std::make_unique<ui::ShopSession>(ui::shopInFolder(folder), folder);
    if (!QTest::qWaitFor([&] { return session->state() != ui::ShopSession::State::Opening; }))
        qFatal("the shop was not opened");
    if (job.empty())
        return session;
    session->openJob(QString::fromStdString(job));
    if (!QTest::qWaitFor([&] { return session->snapshot() != nullptr; }))
        qFatal("the job was not opened");
    return session;
}

} // namespace undercowl::looks
