// All that a shop knows of a model: what its own jobs taught, and what it learned from files.
#pragma once

#include "core/job/knowledge.h"
#include "core/job/text.h"
#include "core/journal/knowledgefile.h"
#include "core/store/store.h"

#include <span>
#include <string>
#include <utility>

namespace undercowl::store {

// Shop offers jobs(), job(), machine() and owner() as Store does. A job whose machine is not described
// teaches nothing; 'leftOut' is a job that is not to teach itself (empty: none).
template<typename Shop>
[[nodiscard]] Result<job::ModelKnowledge>
knowledgeOf(const Shop& shop, std::span<const journal::Entry> entries, const std::string& make,
            const std::string& model, job::TimeMs now, const Id& leftOut = {}) {
    job::ModelKnowledge known = journal::learnedOf(entries, make, model);
    const auto jobs = shop.jobs();
    if (!jobs)
        return tl::unexpected(jobs.error());
    // Only jobs whose line says the model are read: a shop may hold ten thousand.
    const std::string label = job::folded(job::folded(make) + " " + job::folded(model));
    for (const JobLine& line : *jobs) {
        if (line.id == leftOut || !job::folded(line.machine).starts_with(label))
            continue;
        const auto job = shop.job(line.id);
        if (!job)
            return tl::unexpected(job.error());
        const auto machine = shop.machine(job->machine);
        if (!machine)
            return tl::unexpected(machine.error());
        if (!job::sameModel(machine->make, machine->model, make, model))
            continue;
        job::Owner owner;
        if (!job->owner.empty()) {
            auto found = shop.owner(job->owner);
            if (!found)
                return tl::unexpected(found.error());
            owner = *std::move(found);
        }
        known = job::merged(known, job::learn(*job, *machine, owner, now));
    }
    return known;
}

} // namespace undercowl::store
