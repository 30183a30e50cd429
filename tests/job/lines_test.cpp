#include "core/job/leaving.h"
#include "core/job/lines.h"
#include "core/job/proving.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace undercowl::job;

namespace {

StripStep step(const char* id, const char* title, int order) {
    StripStep made;
    made.id = id;
    made.title = title;
    made.order = order;
    return made;
}

std::vector<Id> ids(const std::vector<RefitStep>& lines) {
    std::vector<Id> all;
    for (const RefitStep& line : lines)
        all.push_back(line.strip->id);
    return all;
}

bool stopsForLine(const Job& job) {
    const auto against = againstLeaving(job);
    return std::any_of(against.begin(), against.end(), [](const Against& each) {
        return each.way == Against::Way::ReadBack && each.weighs == Weighs::Stops;
    });
}

} // namespace

TEST_CASE("hoses, vents and cables are known by their title, in five languages, or by their ends") {
    for (const char* title : {"throttle cable off", "fuel hose at the tap", "battery vent",
                              "carburettor breather", "Gaszug aush\u00e4ngen", "Benzinschlauch ab",
                              "cavo frizione", "durite de frein", "cable de freno"}) {
        INFO(title);
        CHECK(isLine(step("s", title, 0)));
    }
    for (const char* title : {"mirror off", "cut the cable tie", "unplug 6-place connector", "seat"}) {
        INFO(title);
        CHECK_FALSE(isLine(step("s", title, 0)));
    }
    StripStep plain = step("s", "the thin black one", 0);
    plain.ends = "tap, lower nipple; air box";
    CHECK(isLine(plain));
}

TEST_CASE("they are read back in refit order, also those that are on again") {
    Job job;
    job.steps = {step("hose", "fuel hose off", 0), step("seat", "seat off", 1),
                 step("cable", "clutch cable off", 2)};
    CHECK(ids(linesOf(job)) == std::vector<Id>{"cable", "hose"});
    job.steps[2].refitted = Refitted{};
    const auto lines = linesOf(job);
    CHECK(lines.size() == 2);
    CHECK(linesOf({}).empty());
}

TEST_CASE("one that does not run as it was found stops the machine until it was read back again") {
    Job job;
    job.steps = {step("cable", "throttle cable off", 0)};
    job.steps[0].refitted = Refitted{};
    CHECK_FALSE(stopsForLine(job));
    job.steps[0].lineCheck = LineCheck{MatchOutcome::DoesNotMatch, "over the fork stop", {}};
    CHECK(stopsForLine(job));
    CHECK_FALSE(mayLeave(job));
    job.steps[0].lineCheck = LineCheck{MatchOutcome::Matches, {}, {}};
    CHECK_FALSE(stopsForLine(job));
}

TEST_CASE("a hose is proved by its photo, by what was written down, or by the manual, as there is") {
    Job job;
    job.steps = {step("hose", "breather hose off", 0)};
    const auto words = [&] { return english(toProve(job).back().words); };
    CHECK(words() == "runs as the machine's manual shows, clipped, dry under pressure: breather hose off");
    job.steps[0].routing = "behind the frame tube";
    CHECK(words() == "runs as it was written down, clipped, dry under pressure: breather hose off");
    Photo photo;
    photo.about = "hose";
    photo.purpose = PhotoPurpose::Strip;
    job.photos = {photo};
    CHECK(words() == "runs as on its photo, clipped, dry under pressure: breather hose off");
}
