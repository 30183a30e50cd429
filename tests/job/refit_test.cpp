#include "core/job/refit.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <random>

using namespace undercowl::job;

namespace {

StripStep step(const char* id, const char* task, int order) {
    StripStep step;
    step.id = id;
    step.task = task;
    step.title = id;
    step.order = order;
    return step;
}

// Two tasks whose steps were stripped in turn.
Job twoTasks() {
    Job job;
    job.tasks = {{"bars", "handlebar", false, "", 0}, {"rear", "rear loom", false, "", 1}};
    job.steps = {step("mirror", "bars", 0), step("seat", "rear", 1), step("cluster", "bars", 2),
                 step("tail", "rear", 3)};
    return job;
}

std::vector<std::string> titles(const std::vector<RefitStep>& order) {
    std::vector<std::string> out;
    for (const RefitStep& refit : order)
        out.push_back(refit.strip->title);
    return out;
}

} // namespace

TEST_CASE("The refit order is the strip order backwards") {
    CHECK(titles(refitOrder(twoTasks())) == std::vector<std::string>{"tail", "cluster", "seat", "mirror"});
    CHECK(nextRefit(twoTasks())->strip->id == "tail");
}

TEST_CASE("One task can be refitted while another waits") {
    Job job = twoTasks();
    job.tasks[1].waiting = true;
    CHECK(nextRefit(job)->strip->id == "cluster");
    job.steps[2].refitted = Refitted{};
    CHECK(nextRefit(job)->strip->id == "mirror");
    job.steps[0].refitted = Refitted{};
    CHECK_FALSE(nextRefit(job));
    job.tasks[1].waiting = false;
    CHECK(nextRefit(job)->strip->id == "tail");
}

TEST_CASE("A refit step carries the photos of its strip step") {
    Job job = twoTasks();
    Photo photo;
    photo.id = "p1";
    photo.about = "tail";
    job.photos = {photo};
    CHECK(refitOrder(job)[0].photos.at(0)->id == "p1");
    CHECK(refitOrder(job)[1].photos.empty());
}

TEST_CASE("Nothing is offered for refitting before what lies over it, whatever is done and waits") {
    std::mt19937 dice(7);
    for (int round = 0; round < 300; ++round) {
        Job job;
        for (int t = 0; t < 3; ++t)
            job.tasks.push_back({std::to_string(t), "task", dice() % 3 == 0, "", t});
        for (int s = 0; s < 12; ++s)
            job.steps.push_back(step(std::to_string(s).c_str(), std::to_string(dice() % 3).c_str(), s));
        std::size_t done = 0;
        while (const auto next = nextRefit(job)) {
            for (const StripStep& other : job.steps)
                if (other.task == next->strip->task && other.order > next->strip->order)
                    REQUIRE(other.refitted);
            REQUIRE_FALSE(findTask(job, next->strip->task)->waiting);
            std::find_if(job.steps.begin(), job.steps.end(), [&](const auto& s) {
                return s.id == next->strip->id;
            })->refitted = Refitted{};
            ++done;
        }
        const auto open = std::count_if(job.steps.begin(), job.steps.end(),
                                        [&](const StripStep& s) { return findTask(job, s.task)->waiting; });
        REQUIRE(done + static_cast<std::size_t>(open) == job.steps.size());
    }
}
