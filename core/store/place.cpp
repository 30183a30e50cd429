#include "core/store/place.h"

#include <algorithm>

namespace undercowl::store {
namespace {

std::string quoted(const std::string& what, const std::string& title) {
    return ", " + what + " '" + title.substr(0, 120) + "'";
}

// What the id stands for in the job; empty when nothing of that name is in it.
std::string titleOf(const job::Job& job, const job::Id& id) {
    if (id.empty()) {
        return {};
    }
    if (const auto* step = job::findStep(job, id)) {
        return quoted("strip step", step->title);
    }
    if (const auto* gathering = job::findGathering(job, id)) {
        return quoted("connector", gathering->title);
    }
    if (const auto* task = job::findTask(job, id)) {
        return quoted("task", task->title);
    }
    const auto among = [&id](const auto& list) {
        return std::find_if(list.begin(), list.end(), [&id](const auto& one) { return one.id == id; });
    };
    if (const auto finding = among(job.findings); finding != job.findings.end()) {
        return quoted("finding", finding->text);
    }
    if (const auto part = among(job.parts); part != job.parts.end()) {
        return quoted("part", part->name);
    }
    if (const auto reading = among(job.readings); reading != job.readings.end()) {
        return quoted("reading", reading->what);
    }
    if (const auto photo = among(job.photos); photo != job.photos.end()) {
        return titleOf(job, photo->about) + ", photo" +
               (photo->note.empty() ? "" : " '" + photo->note.substr(0, 120) + "'");
    }
    if (const auto memo = among(job.memos); memo != job.memos.end()) {
        return titleOf(job, memo->about) + ", memo";
    }
    return {};
}

} // namespace

std::string placeInJob(const job::Job& job, const journal::Entry& entry, const std::string& otherwise) {
    std::string title = titleOf(job, entry.subject);
    if (title.empty()) {
        title = ", " + (otherwise.empty() ? entry.kind : otherwise);
    }
    return "job " + (job.number.empty() ? job.id : job.number) + title;
}

} // namespace undercowl::store
