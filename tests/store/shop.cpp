#include "tests/store/shop.h"

#include "core/job/message.h"

#include <fmt/format.h>

#include <cstdlib>
#include <fstream>

namespace undercowl::store::test {
namespace {

Store open(const std::filesystem::path& folder, WallClock clock, std::shared_ptr<Files> files) {
    return must(Store::open(folder, std::move(clock), std::move(files)));
}

wiring::PlaceAnswer answer(std::string_view colour, std::string function) {
    wiring::PlaceAnswer made;
    made.wire.colour = *colour::wireColourFromCode(colour);
    made.wire.terminal = *wiring::terminalFromText("blade 6.3");
    made.wire.function = std::move(function);
    made.how = wiring::HowKnown::Read;
    made.probability = 0.94;
    return made;
}

} // namespace

Folder::Folder(const std::filesystem::path& parent) {
    std::string pattern = (parent / "undercowl-test-XXXXXX").string();
    path_ = ::mkdtemp(pattern.data());
}

Folder::~Folder() {
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
}

std::span<const std::byte> bytes(std::string_view text) {
    return std::as_bytes(std::span(text));
}

std::string slurp(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

Shop::Shop(std::shared_ptr<Files> files) : store(open(folder.path() / "shop", clock(), std::move(files))) {
    mechanic = store.newId();
    say(journal::mechanicNamed({mechanic, "Ada"}));
    must(store.chooseMechanic(mechanic));
}

WallClock Shop::clock() {
    return [this] { return time; };
}

Store Shop::another() {
    return open(folder.path() / "shop", clock(), posixFiles());
}

journal::Entry Shop::say(const journal::Draft& draft) {
    time += 1000;
    return must(store.append(draft));
}

std::string Shop::photo(std::string_view content) {
    return must(store.keepMedia(bytes(content), "jpg")).name;
}

Id Shop::smallJob(const std::string& number) {
    const Id job = store.newId();
    journal::JobPatch patch;
    patch.number = number;
    patch.reason = "does not start";
    say(journal::jobOpened(job, patch));
    return job;
}

Id Shop::wholeJob(const std::string& number) {
    const Id machine = store.newId();
    const Id owner = store.newId();
    say(journal::machineDescribed({machine, "Marrowin", "Tern 125", 1987, "TRN125-0417", "two keys"}));
    say(journal::ownerDescribed({owner, "Ilse Quarmby", "555 0100", "ilse@example.org", "Mill Lane 3"}));
    const Id job = store.newId();
    journal::JobPatch patch;
    patch.number = number;
    patch.machine = machine;
    patch.owner = owner;
    patch.reason = "brake light stays on";
    say(journal::jobOpened(job, patch));
    say(journal::photoTaken(job, {store.newId(),
                                  photo("as found " + number),
                                  job::PhotoPurpose::AsFound,
                                  {},
                                  "left side, rusty",
                                  4000,
                                  3000,
                                  time,
                                  {}}));
    job::Finding finding{
        store.newId(), "front brake hose cracked", job::Severity::Unsafe, "replace", false, {}, {}};
    say(journal::findingNoted(job, finding));
    const Id task = store.newId();
    say(journal::taskNamed(job, {task, "switch cluster", false, {}, 0}));
    job::StripStep step;
    step.id = store.newId();
    step.task = task;
    step.title = "unplug 6-place connector";
    step.hardware = {{2, "screw", "M5", "16 mm", job::TypedValue{"9.3", "N.m"}}};
    step.bag = "7";
    say(journal::stepStripped(job, step));
    wiring::Gathering gathering;
    gathering.id = store.newId();
    gathering.title = "right switch cluster";
    gathering.places = 6;
    gathering.step = step.id;
    say(journal::gatheringDescribed(job, gathering));
    const wiring::PlaceKey second{wiring::Half::Loom, 2, 1};
    say(journal::wireAnswered(job, gathering.id, {wiring::Half::Loom, 1, 1}, wiring::Answer::AsFound,
                              answer("BK", "earth")));
    say(journal::wireAnswered(job, gathering.id, second, wiring::Answer::AsFound,
                              answer("GY/RD", "stop lamp")));
    say(journal::wireTagged(job, gathering.id, second, "A"));
    say(journal::wireChecked(
        job, {gathering.id, second, job::MatchOutcome::Matches, wiring::Answer::AsFound, {}, {}}));
    say(journal::partStated(
        job, {store.newId(), "brake hose", "BH-77", job::PartState::Ordered, {}, finding.id, {}}));
    job::Reading reading;
    reading.id = store.newId();
    reading.what = "battery at rest";
    reading.value = {"12.6", "V"};
    reading.repeated = {"12.5", "12.7"};
    reading.low = job::TypedValue{"12.4", "V"};
    reading.verdict = "within";
    reading.probability = 0.98;
    say(journal::readingTaken(job, reading));
    say(journal::memoKept(job, {store.newId(), {}, "owner wants the old hose back", {}, {}}));
    say(journal::recheckDue(job, {store.newId(), "spoke tension", job::TypedValue{"200", "km"}, 30, {}}));
    say(journal::stepRefitted(job, step.id, "new screws"));
    return job;
}

std::string everything(const Store& store) {
    std::string all;
    for (const auto& mechanic : must(store.mechanics())) {
        all += fmt::format("mechanic {} {}\n", mechanic.id, mechanic.name);
    }
    for (const JobLine& line : must(store.jobs())) {
        all += fmt::format("{}|{}|{}|{}|{}|{}|{}|{}|{}|{}|{}|{}|{}\n", line.id, line.number, line.machineId,
                           line.machine, line.frameNumber, line.owner, line.reason, job::code(line.moment),
                           job::english(line.stopped), job::english(line.next), line.waiting, line.openUnsafe,
                           line.lastAt);
        const job::Job job = must(store.job(line.id));
        for (const auto& history : job.history) {
            all += fmt::format("  {} {} {} {} {}\n", history.entry, history.kind, history.at,
                               history.withdrawn, history.superseded);
        }
        if (const auto machine = store.machine(line.machineId)) {
            all += fmt::format("  {} {} {}\n", machine->make, machine->frameNumber, machine->notes);
        }
        if (const auto owner = store.owner(job.owner)) {
            all += fmt::format("  {} {} {}\n", owner->name, owner->phone, owner->address);
        }
    }
    for (const std::string_view word :
         {"brake", "right", "tern", "screw", "stop", "battery", "hose", "q", "2"}) {
        for (const Hit& hit : must(store.find(word, 1000))) {
            all += fmt::format("{}: {} {} {} {} {}\n", word, hit.job, hit.subject, hit.title, hit.snippet,
                               hit.machine);
        }
    }
    return all;
}

} // namespace undercowl::store::test
