// What is said between the last bolt and the owner's hand: proofs, second eyes, road tests, cost, signature.
#pragma once

#include "core/job/basics.h"

#include <optional>
#include <string>
#include <vector>

namespace undercowl::job {

// Something that the job disturbed was proved, or left out for a reason. core/job/proving.h tells what is
// due.
struct Proof {
    Id subject;       // step or gathering
    std::string what; // as the rule names it
    bool leftOut{};
    std::string note; // how; the reason when it was left out
    Said said;

    friend bool operator==(const Proof&, const Proof&) = default;
};

// Another pair of eyes looked at it and signed.
struct SecondEyes {
    Id subject;
    std::string what;
    std::string by; // who looked
    Said said;

    friend bool operator==(const SecondEyes&, const SecondEyes&) = default;
};

struct RoadTest {
    Id id;
    std::optional<TypedValue> distance;
    std::string note;
    Said said;

    friend bool operator==(const RoadTest&, const RoadTest&) = default;
};

struct CostLine {
    std::string what; // "new tyre fitted outside"
    std::string sum;  // digits, in the currency of the terms, without tax

    friend bool operator==(const CostLine&, const CostLine&) = default;
};

// What the bill is reckoned with, as it was on that day; core/job/cost.h reckons.
struct CostTerms {
    std::string currency; // "EUR"
    std::string hourRate; // digits, without tax; empty: work is not billed by time
    std::string tax;      // per cent, digits; empty: none
    std::vector<CostLine> lines{};
    Said said{};

    friend bool operator==(const CostTerms&, const CostTerms&) = default;
};

// The owner signed on the screen.
struct Signature {
    Id id;
    std::string name;
    std::string media; // picture of it in the media store
    Said said;

    friend bool operator==(const Signature&, const Signature&) = default;
};

} // namespace undercowl::job
