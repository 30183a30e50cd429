// What is said between the last bolt and the owner's hand: proofs, second eyes, road tests, cost, signature.
#include "core/job/money.h"
#include "core/journal/applying.h"

#include <array>

namespace undercowl::journal {
namespace {

using job::Job;

void giveProof(Job& job, const Fields& body, const InForce& entry) {
    job::Proof proof{entry.first->subject, body.text("what"), flag(body, "left_out"), body.textOr("note"),
                     said(entry)};
    if (proof.leftOut && proof.note.empty())
        throw ShapeError("note: must say why it was left out");
    std::erase_if(job.proofs, [&](const job::Proof& old) {
        return old.subject == proof.subject && old.what == proof.what;
    });
    job.proofs.push_back(std::move(proof));
}

void giveSecondEyes(Job& job, const Fields& body, const InForce& entry) {
    job::SecondEyes eyes{entry.first->subject, body.text("what"), body.text("by"), said(entry)};
    if (eyes.by.empty())
        throw ShapeError("by: must say who looked");
    job.secondEyes.push_back(std::move(eyes));
}

void testRoad(Job& job, const Fields& body, const InForce& entry) {
    putById(job.roadTests, job::RoadTest{entry.first->subject, typedIfAny(body, "distance"),
                                         body.textOr("note"), said(entry)});
}

void seeRecheck(Job& job, const Fields& body, const InForce& entry) {
    const job::Noted seen{body.textOr("note"), said(entry)};
    if (auto* recheck = byId(job.rechecks, entry.first->subject))
        recheck->seen = seen;
}

// Digits of a sum that can be reckoned with, or nothing.
std::string sum(const Fields& body, const char* name) {
    const std::string digits = body.textOr(name);
    if (!digits.empty() && !job::decimal(digits))
        throw ShapeError(std::string(name) + ": '" + digits + "' is no decimal such as 58.50");
    return digits;
}

void settleCost(Job& job, const Fields& body, const InForce& entry) {
    job::CostTerms terms;
    terms.currency = body.text("currency");
    terms.hourRate = sum(body, "hour_rate");
    terms.tax = sum(body, "tax");
    if (body.has("lines"))
        for (const Json& item : body.list("lines")) {
            const Fields line(item, "line");
            terms.lines.push_back({line.text("what"), sum(line, "sum")});
        }
    terms.said = said(entry);
    job.costTerms = std::move(terms);
}

void sign(Job& job, const Fields& body, const InForce& entry) {
    job.signature = job::Signature{entry.first->subject, body.text("name"), body.text("media"), said(entry)};
}

constexpr std::array kinds{
    Kind{"proof.given", giveProof},   Kind{"proof.seconded", giveSecondEyes}, Kind{"road.tested", testRoad},
    Kind{"recheck.seen", seeRecheck}, Kind{"cost.settled", settleCost},       Kind{"owner.signed", sign},
};

} // namespace

ApplyToJob applyToClosing(std::string_view kind) {
    const auto found =
        std::find_if(kinds.begin(), kinds.end(), [kind](const Kind& k) { return k.name == kind; });
    return found == kinds.end() ? nullptr : found->apply;
}

} // namespace undercowl::journal
