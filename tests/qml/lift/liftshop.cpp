#include "liftshop.h"

#include <QImageReader>
#include <QTest>

#include <array>
#include <fstream>
#include <iterator>
#include <span>

namespace undercowl::ui {

namespace {

store::Store openStore(const std::filesystem::path& folder) {
    auto store = store::Store::open(folder);
    if (!store)
        qFatal("%s", store.error().message.c_str());
    return std::move(*store);
}

} // namespace

wiring::PlaceAnswer answerOf(colour::Insulation base, std::optional<colour::Insulation> tracer) {
    wiring::PlaceAnswer answer;
    answer.wire.colour = {base, tracer};
    answer.how = wiring::HowKnown::Picked;
    return answer;
}

LiftShop::LiftShop() : folder(dir.filePath(QStringLiteral("shop")).toStdString()) {
    auto store = openStore(folder);
    const auto put = [&](const journal::Draft& draft) {
        if (const auto said = store.append(draft); !said)
            qFatal("%s", said.error().message.c_str());
    };
    const job::Mechanic mechanic{store.newId(), "Ada"};
    put(journal::mechanicNamed(mechanic));
    if (!store.chooseMechanic(mechanic.id))
        qFatal("no mechanic");
    const job::Machine machine{store.newId(), "Marrowin", "Tern 125", 1987, "MT125-004711", {}};
    put(journal::machineDescribed(machine));
    job = store.newId();
    put(journal::jobOpened(job, {.number = "2026-001", .reason = "no stop lamp", .machine = machine.id}));
    task = store.newId();
    put(journal::taskNamed(job, {task, "switch cluster", false, {}, 0}));
    job::StripStep strip;
    strip.id = step = store.newId();
    strip.task = task;
    strip.title = "unplug 6-place connector";
    strip.hardware = {{2, "screw", "M5", "16 mm", job::TypedValue{"4.5", "N.m"}}};
    strip.bag = "7";
    strip.cautions = {"battery-negative-off"};
    put(journal::stepStripped(job, strip));
    strip.id = lastStep = store.newId();
    strip.title = "take the brake lever off";
    strip.hardware = {{1, "bolt", "M6", "25 mm", std::nullopt}};
    strip.bag = "8";
    strip.cautions = {"brake-dust"};
    put(journal::stepStripped(job, strip));
    wiring::Gathering connector;
    connector.id = gathering = store.newId();
    connector.title = "right switch cluster";
    connector.places = 6;
    connector.latch = "top";
    connector.step = step;
    put(journal::gatheringDescribed(job, connector));
    (void)photo("switch-before.jpg", gathering, job::PhotoPurpose::Wiring);
    (void)photo("switch-before.jpg", step, job::PhotoPurpose::Strip);
}

Id LiftShop::photo(const char* file, const Id& about, job::PhotoPurpose purpose) const {
    std::ifstream in(std::filesystem::path(UNDERCOWL_PHOTOS) / file, std::ios::binary);
    const std::string bytes{std::istreambuf_iterator<char>(in), {}};
    if (bytes.empty())
        qFatal("no photo %s", file);
    auto store = openStore(folder);
    const auto media = store.keepMedia(std::as_bytes(std::span(bytes)), "jpg");
    if (!media)
        qFatal("%s", media.error().message.c_str());
    job::Photo photo;
    photo.id = store.newId();
    photo.media = media->name;
    photo.purpose = purpose;
    photo.about = about;
    const QSize size = QImageReader(QStringLiteral(UNDERCOWL_PHOTOS "/%1").arg(QLatin1String(file))).size();
    photo.width = size.width();
    photo.height = size.height();
    photo.takenAt = store.now();
    if (const auto said = store.append(journal::photoTaken(job, photo)); !said)
        qFatal("%s", said.error().message.c_str());
    return photo.id;
}

void LiftShop::answer() const {
    using colour::Insulation;
    const std::array wires{answerOf(Insulation::GN, Insulation::WH), answerOf(Insulation::GY),
                           answerOf(Insulation::GY)};
    int number = 0;
    for (const auto& wire : wires)
        say(journal::wireAnswered(job, gathering, {wiring::Half::Loom, ++number, 1}, wiring::Answer::AsFound,
                                  wire));
}

void LiftShop::say(const journal::Draft& draft) const {
    if (const auto said = openStore(folder).append(draft); !said)
        qFatal("%s", said.error().message.c_str());
}

job::Job LiftShop::stored() const {
    return *openStore(folder).job(job);
}

std::unique_ptr<ShopSession> LiftShop::session() const {
    auto session = std::make_unique<ShopSession>(shopInFolder(folder), folder);
    session->openJob(QString::fromStdString(job));
    if (!QTest::qWaitFor([&] { return session->snapshot() != nullptr; }))
        qFatal("the job was not opened");
    return session;
}

} // namespace undercowl::ui
