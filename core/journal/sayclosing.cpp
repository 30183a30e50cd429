#include "core/journal/sayclosing.h"

#include "core/journal/saying.h"

namespace undercowl::journal {

Draft proofGiven(const Id& job, const job::Proof& proof) {
    Json body{{"what", proof.what}};
    if (proof.leftOut)
        body["left_out"] = true;
    put(body, "note", proof.note);
    return draft("proof.given", job, proof.subject, body);
}

Draft secondEyesGiven(const Id& job, const job::SecondEyes& eyes) {
    return draft("proof.seconded", job, eyes.subject, {{"what", eyes.what}, {"by", eyes.by}});
}

Draft functionProved(const Id& job, const job::FunctionCheck& check) {
    Json body{{"what", check.what}, {"answer", job::code(check.answer)}};
    put(body, "note", check.note);
    return draft("function.proved", job, job, body);
}

Draft roadTested(const Id& job, const job::RoadTest& test, const Id& supersedes) {
    Json body = Json::object();
    put(body, "distance", test.distance);
    put(body, "note", test.note);
    return draft("road.tested", job, test.id, body, supersedes);
}

Draft recheckSeen(const Id& job, const Id& recheck, const std::string& note) {
    Json body = Json::object();
    put(body, "note", note);
    return draft("recheck.seen", job, recheck, body);
}

Draft costSettled(const Id& job, const job::CostTerms& terms) {
    Json body{{"currency", terms.currency}};
    put(body, "hour_rate", terms.hourRate);
    put(body, "tax", terms.tax);
    if (!terms.lines.empty())
        body["lines"] = Json::array();
    for (const job::CostLine& line : terms.lines)
        body["lines"].push_back({{"what", line.what}, {"sum", line.sum}});
    return draft("cost.settled", job, job, body);
}

Draft ownerSigned(const Id& job, const job::Signature& signature) {
    return draft("owner.signed", job, signature.id, {{"name", signature.name}, {"media", signature.media}});
}

} // namespace undercowl::journal
