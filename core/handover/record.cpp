#include "core/handover/record.h"

#include "core/handover/phrases.h"
#include "core/handover/sections.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <ctime>
#include <utility>

namespace undercowl::handover {
namespace {

constexpr job::TimeMs msPerSecond = 1000;

void addRow(Table& table, std::string_view label, Text value) {
    if (const auto* typed = std::get_if<std::string>(&value); typed && typed->empty()) {
        return;
    }
    table.rows.push_back(Row{{say(label), std::move(value)}});
}

std::string nameOf(const job::Machine& machine) {
    std::vector<std::string> words;
    addOnce(words, machine.make);
    addOnce(words, machine.model);
    std::string name = joined(words, " ");
    if (machine.year) {
        name += fmt::format("{}{}", name.empty() ? "" : ", ", *machine.year);
    }
    return name;
}

// Who did anything in the job, the one who opened it first.
std::string everyone(const Subject& subject) {
    std::vector<std::string> names;
    addOnce(names, subject.nameOf(subject.job.opened.mechanic));
    for (const job::HistoryLine& line : subject.job.history) {
        if (!line.withdrawn) {
            addOnce(names, subject.nameOf(line.mechanic));
        }
    }
    return joined(names, ", ");
}

Message caption(const job::Photo& photo) {
    const std::string when = day(photo.takenAt != 0 ? photo.takenAt : photo.said.at);
    switch (photo.purpose) {
    case job::PhotoPurpose::AsFound: return say("record.photo.as-found", {when});
    case job::PhotoPurpose::Finding: return say("record.photo.finding", {when});
    case job::PhotoPurpose::Strip: return say("record.photo.strip", {when});
    case job::PhotoPurpose::Wiring: return say("record.photo.wiring", {when});
    case job::PhotoPurpose::Refit: return say("record.photo.refit", {when});
    case job::PhotoPurpose::Other: break;
    }
    return say("record.photo.other", {when});
}

// What an owner wants to see first: the machine as it came, then what was wrong with it, then the work.
int rank(job::PhotoPurpose purpose) {
    switch (purpose) {
    case job::PhotoPurpose::AsFound: return 0;
    case job::PhotoPurpose::Finding: return 1;
    case job::PhotoPurpose::Wiring: return 2;
    case job::PhotoPurpose::Refit: return 3;
    case job::PhotoPurpose::Strip: return 4;
    case job::PhotoPurpose::Other: break;
    }
    return 5;
}

// One photo of each kind in turn, so that many pictures of one kind do not crowd out the others.
std::vector<const job::Photo*> chosen(const std::vector<job::Photo>& photos, std::size_t most) {
    struct Candidate {
        int round;
        int rank;
        const job::Photo* photo;
    };
    std::vector<Candidate> candidates;
    std::array<int, 6> seen{};
    for (const job::Photo& photo : photos) {
        const int kind = rank(photo.purpose);
        candidates.push_back({seen.at(static_cast<std::size_t>(kind))++, kind, &photo});
    }
    std::stable_sort(candidates.begin(), candidates.end(), [](const Candidate& a, const Candidate& b) {
        return std::pair{a.round, a.rank} < std::pair{b.round, b.rank};
    });
    candidates.resize(std::min(most, candidates.size()));
    std::stable_sort(candidates.begin(), candidates.end(),
                     [](const Candidate& a, const Candidate& b) { return a.rank < b.rank; });
    std::vector<const job::Photo*> result;
    result.reserve(candidates.size());
    for (const Candidate& candidate : candidates) {
        result.push_back(candidate.photo);
    }
    return result;
}

} // namespace

std::string Subject::nameOf(const job::Id& mechanic) const {
    const auto found = std::find_if(mechanics.begin(), mechanics.end(),
                                    [&](const job::Mechanic& known) { return known.id == mechanic; });
    return found == mechanics.end() ? std::string{} : found->name;
}

std::string written(const job::TypedValue& value) {
    return value.unit.empty() ? value.digits : value.digits + "\u00A0" + value.unit;
}

std::string day(job::TimeMs time) {
    const auto seconds = static_cast<std::time_t>(time / msPerSecond);
    std::tm local{};
    if (localtime_r(&seconds, &local) == nullptr) {
        return {};
    }
    constexpr int tmYearZero = 1900; // std::tm counts years from 1900, and months from 0
    return fmt::format("{:04}-{:02}-{:02}", local.tm_year + tmYearZero, local.tm_mon + 1, local.tm_mday);
}

void addOnce(std::vector<std::string>& names, const std::string& name) {
    if (!name.empty() && std::find(names.begin(), names.end(), name) == names.end()) {
        names.push_back(name);
    }
}

std::string joined(const std::vector<std::string>& words, std::string_view between) {
    return fmt::format("{}", fmt::join(words, between));
}

Section machineSection(const Subject& subject) {
    const job::Job& job = subject.job;
    Table table;
    addRow(table, "record.machine.what", nameOf(subject.machine));
    addRow(table, "record.machine.frame", subject.machine.frameNumber);
    if (job.odometer) {
        addRow(table, "record.machine.odometer", written(*job.odometer));
    }
    addRow(table, "record.machine.owner", subject.owner.name);
    addRow(table, "record.machine.reason", job.reason);
    addRow(table, "record.machine.works", job.works);
    addRow(table, "record.machine.works-not", job.worksNot);
    if (job.altitude) {
        addRow(table, "record.machine.ridden", written(*job.altitude));
    }
    addRow(table, "record.machine.received", job.received);
    addRow(table, "record.machine.load", job.load);
    addRow(table, "record.machine.taken-in", day(job.opened.at));
    if (job.handedOver) {
        addRow(table, "record.machine.handed-over", day(job.handedOver->said.at));
        addRow(table, "record.machine.note", job.handedOver->note);
    } else {
        addRow(table, "record.machine.handed-over", say("record.machine.not-yet"));
    }
    addRow(table, "record.machine.by", everyone(subject));
    return {say("record.machine.title"), {std::move(table)}};
}

MaybeSection photosSection(const Subject& subject, std::size_t most) {
    Pictures pictures;
    for (const job::Photo* photo : chosen(subject.job.photos, most)) {
        const Message plain = caption(*photo);
        if (photo->note.empty()) {
            pictures.pictures.push_back({photo->media, plain});
        } else {
            pictures.pictures.push_back(
                {photo->media, say("record.photo.noted", {photo->note, plain.values.at(0)})});
        }
    }
    if (pictures.pictures.empty()) {
        return {};
    }
    return Section{say("record.photos.title"), {std::move(pictures)}};
}

Section noteSection() {
    return {say("record.note.title"),
            {Paragraph{say("record.note.first"), Weight::Plain},
             Paragraph{say("record.note.day"), Weight::Plain}}};
}

Document ownersRecord(const job::Job& job, const job::Machine& machine, const job::Owner& owner,
                      const std::vector<job::Mechanic>& mechanics, std::size_t mostPictures) {
    const Subject subject{job, machine, owner, mechanics};
    Document document;
    document.title = job.number.empty() ? say("record.title") : say("record.title.number", {job.number});
    const auto add = [&document](MaybeSection section) {
        if (section) {
            document.sections.push_back(std::move(*section));
        }
    };
    add(machineSection(subject));
    add(heedSection(subject));
    add(foundSection(subject));
    add(doneSection(subject));
    add(wiringSection(subject));
    add(linesSection(subject));
    add(measuredSection(subject));
    add(provedSection(subject));
    add(partsSection(subject));
    add(dueSection(subject));
    add(leftSection(subject));
    add(beforeAfterSection(subject));
    add(costSection(subject));
    add(photosSection(subject, mostPictures));
    add(signedSection(subject));
    add(noteSection());
    return document;
}

Words englishWords() {
    return [](const Text& text) -> std::string {
        if (const auto* typed = std::get_if<std::string>(&text)) {
            return *typed;
        }
        const auto& message = std::get<Message>(text);
        const std::string_view phrase = englishPhrase(message.key);
        return phrase.empty() ? job::english(message) : job::filled(phrase, message.values);
    };
}

} // namespace undercowl::handover
