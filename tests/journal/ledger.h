// A small journal for tests: seals drafts as one or several devices would.
#pragma once

#include "core/journal/say.h"

#include <map>
#include <string>
#include <vector>

namespace undercowl::journal {

class Ledger {
public:
    // The entry's clock is the one after the newest that this ledger has seen.
    const Entry& add(const Draft& draft, const std::string& device = "device-a") {
        clock_ = tick(clock_, now_ += 1000);
        Entry entry;
        entry.id = newId(now_);
        entry.device = device;
        entry.number = ++numbers_[device];
        entry.clock = clock_;
        entry.kind = draft.kind;
        entry.stream = draft.stream;
        entry.subject = draft.subject;
        entry.mechanic = "mechanic-" + device;
        entry.supersedes = draft.supersedes;
        entry.body = draft.body;
        entry.previous = heads_[device];
        seal(entry);
        heads_[device] = entry.hash;
        entries.push_back(entry);
        return entries.back();
    }

    std::vector<Entry> entries;

private:
    Clock clock_;
    job::TimeMs now_{1'700'000'000'000};
    std::map<std::string, std::uint64_t> numbers_;
    std::map<std::string, std::string> heads_;
};

inline job::StripStep stripStep(const std::string& id, const std::string& title) {
    job::StripStep step;
    step.id = id;
    step.title = title;
    step.hardware = {{2, "screw", "M5", "16 mm", job::TypedValue{"6", "N.m"}}};
    step.bag = "7";
    step.cautions = {"battery-negative-off"};
    return step;
}

} // namespace undercowl::journal
