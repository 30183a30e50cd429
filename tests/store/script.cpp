#include "tests/store/script.h"

#include <algorithm>

namespace undercowl::store::test {

Tell into(Confirmed& confirmed) {
    return [&confirmed](char what, const std::string& name) {
        switch (what) {
        case 'E': confirmed.entries.insert(name); break;
        case 'M': confirmed.media.insert(name); break;
        case 'T': confirmed.triedDraft = std::stoi(name); break;
        default: confirmed.draft = std::stoi(name); break;
        }
    };
}

std::optional<Problem> Script::say(std::span<const journal::Draft> drafts) {
    const auto entries = store_.append(drafts);
    if (!entries) {
        return entries.error();
    }
    for (const auto& entry : *entries) {
        tell_('E', entry.id);
    }
    return std::nullopt;
}

std::optional<Problem> Script::photo(int turn) {
    const auto media =
        store_.keepMedia(bytes("a photo, " + std::to_string(turn) + " " + store_.newId()), "jpg");
    if (!media) {
        return media.error();
    }
    tell_('M', media->name);
    const Id finding = store_.newId();
    return say(std::vector{
        journal::findingNoted(
            job_,
            {finding, "finding " + std::to_string(turn), job::Severity::Note, "look again", false, {}, {}}),
        journal::photoTaken(
            job_, {store_.newId(), media->name, job::PhotoPurpose::Finding, finding, "", 4, 3, 0, {}})});
}

std::optional<Problem> Script::wiring(int turn) {
    wiring::Gathering gathering;
    gathering.id = store_.newId();
    gathering.title = "connector " + std::to_string(turn);
    gathering.places = 4;
    return say(std::vector{
        journal::gatheringDescribed(job_, gathering),
        journal::wireTagged(job_, gathering.id, {wiring::Half::Loom, 1, 1}, "A"),
    });
}

std::optional<Problem> Script::act(int turn) {
    switch (turn % actions) {
    case 0: {
        tell_('T', std::to_string(turn));
        const auto kept = store_.keepDraft("finding", std::to_string(turn));
        if (!kept) {
            return kept.error();
        }
        tell_('D', std::to_string(turn));
        return std::nullopt;
    }
    case 1: return photo(turn);
    case 2: {
        job::StripStep step;
        step.id = store_.newId();
        step.title = "undo the cowl, " + std::to_string(turn);
        step.hardware = {{4, "screw", "M5", "16 mm", job::TypedValue{"3", "N.m"}}};
        return say(std::vector{journal::stepStripped(job_, step), journal::stepRefitted(job_, step.id)});
    }
    case 3: return wiring(turn);
    case 4: {
        job::Reading reading;
        reading.id = store_.newId();
        reading.what = "battery at rest";
        reading.value = {"12.6", "V"};
        return say(std::vector{journal::readingTaken(job_, reading)});
    }
    default: return say(std::vector{journal::memoKept(job_, {store_.newId(), {}, "a memo", {}, {}})});
    }
}

Id beginJob(const std::filesystem::path& folder) {
    Store store = must(Store::open(folder));
    const Id mechanic = store.newId();
    must(store.append(journal::mechanicNamed({mechanic, "Ada"})));
    must(store.chooseMechanic(mechanic));
    const Id job = store.newId();
    must(store.append(journal::jobOpened(job, {})));
    return job;
}

std::vector<std::string> losses(const std::filesystem::path& folder, const Id& job,
                                const Confirmed& confirmed) {
    const auto store = Store::open(folder);
    if (!store) {
        return {"does not open: " + store.error().message};
    }
    std::vector<std::string> lost;
    const auto entries = store->entries(job);
    for (const Id& id : confirmed.entries) {
        const auto has = [&id](const journal::Entry& entry) { return entry.id == id; };
        if (!entries || !std::any_of(entries->begin(), entries->end(), has)) {
            lost.push_back("entry " + id + " was confirmed and is gone");
        }
    }
    for (const std::string& name : confirmed.media) {
        if (!store->media(name)) {
            lost.push_back("media file " + name + " was confirmed and is gone");
        }
    }
    if (confirmed.draft > 0 || confirmed.triedDraft > 0) {
        const int draft = std::stoi(store->draft("finding").value_or("0"));
        if (draft < confirmed.draft || draft > confirmed.triedDraft) {
            lost.push_back("draft " + std::to_string(confirmed.draft) + " was confirmed, there is " +
                           std::to_string(draft));
        }
    }
    if (const auto known = store->job(job)) {
        const bool half = known->photos.size() != known->findings.size() || !known->unreadable.empty() ||
                          std::any_of(known->steps.begin(), known->steps.end(),
                                      [](const job::StripStep& step) { return !step.refitted; });
        if (half) {
            lost.push_back("something half said shows");
        }
    }
    const auto report = store->check();
    if (!report) {
        lost.push_back("the check cannot be run: " + report.error().message);
    } else {
        lost.insert(lost.end(), report->faults.begin(), report->faults.end());
    }
    return lost;
}

} // namespace undercowl::store::test
