// Wires that are found without a stroke, and the wire next to another, in tests/photos.
//
//   found    share of the wires in view that are proposed
//   again    proposals of a wire that was proposed already, as a share of all proposals
//   false    proposals that lie on no wire, as a share of all
//   beside   share of steps to the next wire of a stroke that land on that wire
#include "core/sight/reader.h"
#include "tests/sight/further.h"
#include "tests/sight/truth.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <limits>

namespace undercowl {
namespace {

using tests::distance;
using tests::TruePhoto;
using tests::TrueWire;

// The wire that a place lies on; none where it is bare.
const TrueWire* wireAt(const TruePhoto& photo, sight::Point place) {
    const TrueWire* nearest = nullptr;
    double least = 1e9;
    for (const TrueWire& wire : photo.wires) {
        // The centre line's points lie some pixels apart.
        const double away = distance(wire.centreLine, place) / (0.5 * wire.diameterPx + 4.0);
        if (away < least) {
            least = away;
            nearest = &wire;
        }
    }
    return least < 1.2 ? nearest : nullptr;
}

// The wire that most of a path lies on.
const TrueWire* wireUnder(const TruePhoto& photo, const sight::Polyline& path) {
    std::vector<const TrueWire*> under;
    for (const sight::Point& p : path)
        if (const TrueWire* wire = wireAt(photo, p))
            under.push_back(wire);
    if (under.size() * 2 < path.size())
        return nullptr;
    return *std::max_element(under.begin(), under.end(), [&](const TrueWire* a, const TrueWire* b) {
        return std::count(under.begin(), under.end(), a) < std::count(under.begin(), under.end(), b);
    });
}

double share(int part, int all) {
    return all == 0 ? 0.0 : double(part) / all;
}

struct Proposed {
    int wires = 0;
    int found = 0;
    int again = 0;
    int bare = 0;
    int perhaps = 0;

    void add(const TruePhoto& truth, const sight::Proposal& proposal) {
        std::vector<const TrueWire*> seen;
        for (std::size_t i = 0; i < proposal.wires.size(); ++i) {
            const TrueWire* wire = wireUnder(truth, proposal.wires[i].path);
            if (proposal.perhaps[i])
                ++perhaps; // it says itself that it may be another one again, and counts as nothing
            else if (wire == nullptr)
                ++bare;
            else if (std::find(seen.begin(), seen.end(), wire) != seen.end())
                ++again;
            else
                seen.push_back(wire);
        }
        wires += int(truth.wires.size());
        found += int(seen.size());
    }
};

} // namespace

TEST_CASE("The wires of a whole photo are proposed, each once") {
    Proposed all;
    for (const TruePhoto& truth : tests::truthOf(UNDERCOWL_TESTS "/photos")) {
        sight::Reader reader(sight::Photo::read(truth.file).value(), {.card = truth.card, .confirmed = {}});
        const sight::Proposal proposal = reader.propose().value();
        REQUIRE(proposal.perhaps.size() == proposal.wires.size());
        Proposed here;
        here.add(truth, proposal);
        std::printf(
            "%s: %d of %d wires found, %d again, %d false, %d perhaps again, %zu places not followed\n",
            truth.file.filename().c_str(), here.found, here.wires, here.again, here.bare, here.perhaps,
            proposal.unfollowed.size());
        // Whoever misses a wire without a word is not to be trusted with the rest.
        CHECK((here.found == here.wires || !proposal.unfollowed.empty()));
        all.add(truth, proposal);
    }
    const int proposed = all.found + all.again + all.bare;
    std::printf("found %.3f of %d, again %.3f, false %.3f of %d\n", share(all.found, all.wires), all.wires,
                share(all.again, proposed), share(all.bare, proposed), proposed);
    REQUIRE(all.wires > 60);
    CHECK(share(all.found, all.wires) >= 0.97);
    CHECK(share(all.again, proposed) <= 0.1);
    CHECK(share(all.bare, proposed) <= 0.02);
}

TEST_CASE("Thin wires of a whole photo are proposed from nearer") {
    constexpr double smaller = 0.4; // wires of 17 to 32 pixels become some of 7 to 13
    Proposed all;
    std::vector<TruePhoto> photos = tests::truthOf(UNDERCOWL_TESTS "/photos");
    for (TruePhoto& truth : photos) {
        sight::Reader reader(tests::fromFurther(truth, smaller));
        all.add(truth, reader.propose().value());
    }
    const int proposed = all.found + all.again + all.bare;
    std::printf("thin: found %.3f of %d, again %.3f, false %.3f of %d, %d perhaps again\n",
                share(all.found, all.wires), all.wires, share(all.again, proposed), share(all.bare, proposed),
                proposed, all.perhaps);
    REQUIRE(all.wires > 60);
    CHECK(share(all.found, all.wires) >= 0.95);
    CHECK(share(all.again, proposed) <= 0.1);
    CHECK(share(all.bare, proposed) <= 0.02);
}

TEST_CASE("Only the wires of the connector are proposed when its mouth is known") {
    int wires = 0;
    int found = 0;
    int others = 0;
    for (const TruePhoto& truth : tests::truthOf(UNDERCOWL_TESTS "/photos")) {
        if (truth.sweeps.empty())
            continue;
        const tests::TrueSweep& sweep = truth.sweeps.front();
        sight::Reader reader(sight::Photo::read(truth.file).value(), {.card = truth.card, .confirmed = {}});
        const sight::Proposal proposal = reader.propose(sweep.along).value();
        std::vector<const TrueWire*> seen;
        for (const sight::WireReading& reading : proposal.wires) {
            const TrueWire* wire = wireUnder(truth, reading.path);
            const bool wanted = std::find(sweep.wires.begin(), sweep.wires.end(), wire) != sweep.wires.end();
            if (!wanted || std::find(seen.begin(), seen.end(), wire) != seen.end())
                ++others;
            else
                seen.push_back(wire);
        }
        wires += int(sweep.wires.size());
        found += int(seen.size());
    }
    std::printf("from the mouth: found %.3f of %d, others %d\n", share(found, wires), wires, others);
    REQUIRE(wires > 50);
    CHECK(share(found, wires) >= 0.95);
    CHECK(share(others, found + others) <= 0.08);
}

TEST_CASE("A mouth that cannot be is refused, and a cancelled search proposes nothing") {
    const TruePhoto truth = tests::truthOf(UNDERCOWL_TESTS "/photos").front();
    sight::Reader reader(sight::Photo::read(truth.file).value());
    CHECK(reader.propose({{-5.0, 10.0}, {50.0, 60.0}}).error() ==
          "the mouth of the connector leaves the photo: keep it inside");
    CHECK(reader.propose({{5.0, 10.0}}).error() ==
          "the mouth of the connector needs two different points: draw it across the wires");
    const auto stopped = reader.propose({}, [] { return true; });
    REQUIRE(stopped);
    CHECK(stopped->wires.empty());
    CHECK(stopped->unfollowed.empty());
    CHECK_FALSE(stopped->complete());
}

TEST_CASE("There is no neighbour to a wire that was not read") {
    const TruePhoto truth = tests::truthOf(UNDERCOWL_TESTS "/photos").front();
    sight::Reader reader(sight::Photo::read(truth.file).value());
    CHECK_FALSE(reader.beside({}, sight::Side::After));
}

TEST_CASE("The next wire on either side is the neighbour along a stroke") {
    int steps = 0;
    int right = 0;
    int nothing = 0;
    for (const TruePhoto& truth : tests::truthOf(UNDERCOWL_TESTS "/photos")) {
        sight::Reader reader(sight::Photo::read(truth.file).value(), {.card = truth.card, .confirmed = {}});
        for (const tests::TrueSweep& sweep : truth.sweeps) {
            const auto row = reader.sweep(sweep.along).value();
            for (const sight::WireReading& reading : row) {
                const TrueWire* here = wireAt(truth, reading.at);
                const auto place = std::find(sweep.wires.begin(), sweep.wires.end(), here);
                if (place == sweep.wires.end() || place + 1 == sweep.wires.end() || reading.path.size() < 2)
                    continue;
                // Which side the stroke goes on to, seen from this wire.
                const auto middle = reading.path.size() / 2;
                const sight::Point a = reading.path[middle - 1];
                const sight::Point b = reading.path[middle];
                const sight::Point end = sweep.along.back();
                const sight::Point start = sweep.along.front();
                const bool level = std::abs(b.x - a.x) > std::abs(b.y - a.y);
                const bool after = level ? end.y > start.y : end.x > start.x;
                const auto next = reader.beside(reading, after ? sight::Side::After : sight::Side::Before);
                ++steps;
                nothing += next ? 0 : 1;
                right += next && wireAt(truth, next->at) == place[1] ? 1 : 0;
            }
        }
    }
    std::printf("beside %.3f of %d, nothing found %d\n", share(right, steps), steps, nothing);
    REQUIRE(steps > 100);
    CHECK(share(right, steps) >= 0.9);
}

} // namespace undercowl
