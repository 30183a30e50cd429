#include "core/job/refit.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <random>

using namespace undercowl::job;

namespace {

StripStep stepOf(const char* id, const char* task, int order) {
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
    job.steps = {stepOf("mirror", "bars", 0), stepOf("seat", "rear", 1), stepOf("cluster", "bars", 2),
                 stepOf("tail", "rear", 3)};
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
            job.steps.push_back(stepOf(std::to_string(s).c_str(), std::to_string(dice() % 3).c_str(), s));
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

namespace {

Task taskAfter(const std::string& id, std::vector<Id> after) {
    Task task;
    task.id = id;
    task.title = id;
    task.after = std::move(after);
    return task;
}

// Bearing before wheel, wheel before brake; they were stripped in the order brake, wheel, bearing.
Job rearWheel() {
    Job job;
    job.tasks = {taskAfter("brake", {"wheel"}), taskAfter("wheel", {"bearing"}), taskAfter("bearing", {}),
                 taskAfter("lamp", {})};
    job.steps = {stepOf("rod", "brake", 0), stepOf("tail lamp", "lamp", 1), stepOf("axle", "wheel", 2),
                 stepOf("spacer", "wheel", 3), stepOf("old bearing", "bearing", 4)};
    return job;
}

void putOn(Job& job, const std::string& id) {
    const auto at =
        std::find_if(job.steps.begin(), job.steps.end(), [&](const StripStep& s) { return s.id == id; });
    REQUIRE(at != job.steps.end());
    at->refitted = Refitted{};
}

// A job with branching tasks, of which some wait and some are finished without steps.
Job anyJob(std::mt19937& dice) {
    Job job;
    const int tasks = 1 + static_cast<int>(dice() % 6);
    for (int t = 0; t < tasks; ++t) {
        Task task = taskAfter(std::to_string(t), {});
        task.waiting = dice() % 5 == 0;
        for (int other = 0; other < t; ++other) // a later task may need earlier ones: never a circle
            if (dice() % 3 == 0)
                task.after.push_back(std::to_string(other));
        job.tasks.push_back(task);
    }
    std::shuffle(job.tasks.begin(), job.tasks.end(), dice);
    for (int s = 0; s < 14; ++s)
        job.steps.push_back(
            stepOf(("s" + std::to_string(s)).c_str(),
                   dice() % 8 == 0 ? "" : std::to_string(dice() % static_cast<unsigned>(tasks)).c_str(), s));
    for (int wish = 0; wish < 6; ++wish)
        job.refitWish.push_back("s" + std::to_string(dice() % 16)); // also steps that are not there
    return job;
}

bool needsFar(const Job& job, const std::string& task, const std::string& other) {
    const Task* from = findTask(job, task);
    return from != nullptr && std::any_of(from->after.begin(), from->after.end(), [&](const Id& before) {
               return before == other || needsFar(job, before, other);
           });
}

} // namespace

TEST_CASE("A task is refitted after those that it needs, though it was stripped before them") {
    Job job = rearWheel();
    CHECK(titles(refitOrder(job)) ==
          std::vector<std::string>{"old bearing", "spacer", "axle", "tail lamp", "rod"});
    CHECK(refitOrder(job).back().needs.size() == 2);
    job.tasks[2].waiting = true; // the bearing has not come: the lamp goes on meanwhile
    CHECK(nextRefit(job)->strip->title == "tail lamp");
    putOn(job, "tail lamp");
    CHECK_FALSE(nextRefit(job));
    job.tasks[2].waiting = false;
    CHECK(nextRefit(job)->strip->title == "old bearing");
    putOn(job, "old bearing");
    CHECK(finished(job, job.tasks[2]));
    CHECK(nextRefit(job)->strip->title == "spacer");
}

TEST_CASE("A task without steps is finished by saying so, and one that waits is not") {
    Job job = rearWheel();
    job.tasks.push_back(taskAfter("paint", {}));
    job.tasks[1].after.push_back("paint");
    CHECK_FALSE(finished(job, job.tasks.back()));
    putOn(job, "old bearing");
    CHECK(nextRefit(job)->strip->title == "tail lamp"); // the wheel needs the paint to be dry
    job.tasks.back().done = true;
    CHECK(finished(job, job.tasks.back()));
    CHECK(nextRefit(job)->strip->title == "spacer");
    job.tasks.back().waiting = true;
    CHECK_FALSE(finished(job, job.tasks.back()));
}

TEST_CASE(
    "A task that is on again without a part that belongs to it is not finished, unless it is said to be") {
    Job job = twoTasks();
    job.tasks[0].finding = "lever bent";
    for (StripStep& step : job.steps)
        step.refitted.emplace();
    REQUIRE(finished(job, job.tasks[0]));
    Part part;
    part.name = "lever";
    part.about = "lever bent";
    part.state = PartState::Ordered;
    job.parts.push_back(part);
    CHECK_FALSE(finished(job, job.tasks[0]));
    CHECK(finished(job, job.tasks[1])); // not its part
    REQUIRE(partsToFit(job, job.tasks[0]).size() == 1);
    CHECK(partsToFit(job, job.tasks[0])[0]->name == "lever");
    job.parts[0].about = "cluster"; // a step of the same task
    CHECK_FALSE(finished(job, job.tasks[0]));
    job.parts[0].state = PartState::Here; // in the shop, not on the machine
    CHECK_FALSE(finished(job, job.tasks[0]));
    job.tasks[0].done = true;
    CHECK(finished(job, job.tasks[0]));
    job.tasks[0].done = false;
    job.parts[0].state = PartState::Fitted;
    CHECK(finished(job, job.tasks[0]));
    job.parts[0].state = PartState::NotNeeded; // the old one was straightened
    CHECK(finished(job, job.tasks[0]));
    job.parts[0].state = PartState::Ordered;
    job.parts[0].about.clear(); // belongs to nothing
    CHECK(finished(job, job.tasks[0]));
}

TEST_CASE("A circle of needs is told beforehand, and does not lose a step") {
    Job job = rearWheel();
    CHECK(closesCircle(job, "bearing", "brake"));
    CHECK(closesCircle(job, "bearing", "bearing"));
    CHECK_FALSE(closesCircle(job, "lamp", "brake"));
    job.tasks[2].after = {"brake"}; // said on two phones that did not know of each other
    CHECK(refitOrder(job).size() == job.steps.size());
    CHECK(refitOrder(job).front().needs.empty() == false);
}

TEST_CASE("The refit order respects strip order, tasks and wish over random jobs") {
    std::mt19937 dice(20261126);
    for (int round = 0; round < 400; ++round) {
        const Job job = anyJob(dice);
        const auto order = refitOrder(job);
        REQUIRE(order.size() == job.steps.size()); // every step once
        for (std::size_t early = 0; early < order.size(); ++early)
            for (std::size_t late = early + 1; late < order.size(); ++late) {
                const StripStep& first = *order[early].strip;
                const StripStep& second = *order[late].strip;
                REQUIRE(&first != &second);
                if (first.task == second.task) // nothing before what lies over it
                    REQUIRE(first.order > second.order);
                REQUIRE_FALSE(needsFar(job, first.task, second.task)); // nothing before what it needs
            }
    }
}

TEST_CASE("Going by the next step puts everything on, and breaks no rule on the way") {
    std::mt19937 dice(5);
    for (int round = 0; round < 200; ++round) {
        Job job = anyJob(dice);
        for (Task& task : job.tasks) // what has no steps and does not wait is finished in time
            task.done = true;
        while (const auto next = nextRefit(job)) {
            for (const StripStep& other : job.steps)
                if (!other.refitted) {
                    REQUIRE_FALSE((other.task == next->strip->task && other.order > next->strip->order));
                }
            for (const Task& task : job.tasks)
                if (needsFar(job, next->strip->task, task.id))
                    REQUIRE_FALSE(task.waiting);
            putOn(job, next->strip->id);
        }
        // What is left waits, or needs a task that waits.
        for (const StripStep& left : job.steps) {
            if (left.refitted)
                continue;
            const Task* task = findTask(job, left.task);
            REQUIRE(task != nullptr);
            REQUIRE((task->waiting || std::any_of(job.tasks.begin(), job.tasks.end(), [&](const Task& other) {
                         return other.waiting && needsFar(job, left.task, other.id);
                     })));
        }
    }
}

TEST_CASE("The mechanic's wish goes first where nothing speaks against it") {
    Job job = rearWheel();
    job.refitWish = {"rod", "tail lamp"};
    CHECK(titles(refitOrder(job)) ==
          std::vector<std::string>{"tail lamp", "old bearing", "spacer", "axle", "rod"});
}

TEST_CASE("A step is moved by hand where nothing forbids it, and otherwise the reason is given") {
    Job job = rearWheel();
    const auto up = moved(job, "tail lamp", true);
    REQUIRE(up);
    job.refitWish = *up;
    CHECK(titles(refitOrder(job)) ==
          std::vector<std::string>{"old bearing", "spacer", "tail lamp", "axle", "rod"});
    CHECK(english(moved(job, "rod", true).error()) ==
          "Not before: the task wheel has to be finished before brake.");
    CHECK(english(moved(job, "axle", false).error()) ==
          "Not before: the task wheel has to be finished before brake.");
    job.refitWish = *moved(job, "tail lamp", true);
    CHECK(titles(refitOrder(job))[1] == "tail lamp");
    CHECK(english(moved(job, "axle", true).error()) ==
          "Not before: spacer came off after axle, so it goes on first.");
    CHECK(english(moved(job, "old bearing", true).error()) == "That is the first one already.");
    CHECK(english(moved(job, "rod", false).error()) == "That is the last one already.");
    putOn(job, "old bearing");
    CHECK(english(moved(job, "old bearing", false).error()) == "That is on again already.");
    CHECK_FALSE(moved(job, "no such step", true));
}

TEST_CASE("Whatever is moved, the order is the one that was shown with two places changed") {
    std::mt19937 dice(77);
    int accepted = 0;
    for (int round = 0; round < 300; ++round) {
        Job job = anyJob(dice);
        for (StripStep& each : job.steps)
            if (dice() % 4 == 0)
                each.refitted = Refitted{};
        const auto open = [](const Job& of) {
            std::vector<Id> ids;
            for (const RefitStep& each : refitOrder(of))
                if (!each.done)
                    ids.push_back(each.strip->id);
            return ids;
        };
        std::vector<Id> before = open(job);
        if (before.size() < 2)
            continue;
        const std::size_t at = dice() % before.size();
        const bool earlier = dice() % 2 == 0;
        const auto wish = moved(job, before[at], earlier);
        if (!wish)
            continue;
        ++accepted;
        job.refitWish = *wish;
        std::swap(before[at], before[earlier ? at - 1 : at + 1]);
        REQUIRE(open(job) == before);
    }
    CHECK(accepted > 50);
}
