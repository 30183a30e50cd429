#include "core/job/proving.h"

#include "core/job/lines.h"
#include "core/job/needs.h"
#include "core/job/safety.h"
#include "core/job/text.h"
#include "core/job/torque.h"
#include "core/job/wires.h"

#include <algorithm>
#include <array>

namespace undercowl::job {
namespace {

constexpr std::array<std::string_view, 8> kindCodes{"afterwards", "torque", "wires",     "hose",
                                                    "cable",      "fluid",  "fasteners", "sits"};

// "2 x screw M5 x 16 mm, 4.5 N.m"
std::string hardwareWords(const StripStep& step, bool torqued) {
    std::string words;
    for (const Hardware& piece : step.hardware) {
        if (torqued && !piece.torque)
            continue;
        words += (words.empty() ? "" : "; ") + std::to_string(piece.count) + " x " + piece.what;
        if (!piece.thread.empty())
            words += " " + piece.thread;
        if (!piece.length.empty())
            words += " x " + piece.length;
        if (piece.torque)
            words += ", " + piece.torque->digits + " " + piece.torque->unit;
    }
    return words;
}

// What was read outside its torque, one message for each hardware.
std::vector<Message> torquesAgainst(const std::vector<TorqueSeen>& seen, const StripStep& step) {
    std::vector<Message> against;
    for (const TorqueSeen& one : seen)
        if (one.state == TorqueSeen::State::Outside)
            against.push_back(
                {"prove.against.torque",
                 {torqueName(step, *one.piece), one.reading->value.digits + " " + one.reading->value.unit,
                  one.piece->torque->digits + " " + one.piece->torque->unit}});
    return against;
}

class Collector {
public:
    explicit Collector(const Job& job) : job_(job) {}

    void addStep(const StripStep& step) {
        const std::size_t before = found_.size();
        for (const std::string& what : needsOf(step).afterwards)
            add(step, ProofKind::Afterwards, {"prove.afterwards", {what, step.title}}, what);
        if (const std::string torqued = hardwareWords(step, true); !torqued.empty()) {
            ToProve& proof = add(step, ProofKind::Torque, {"prove.torque", {step.title, torqued}});
            const auto seen = torquesSeen(job_, step);
            // A touch alone shows no torque: without a reading it has to be said how it was tightened.
            const bool said = proof.state == ToProve::State::Proved && !proof.note.empty();
            const bool read = !seen.empty() && std::all_of(seen.begin(), seen.end(), [](const auto& one) {
                return one.state == TorqueSeen::State::Inside;
            });
            proof.needsHow = !read;
            if (proof.state != ToProve::State::LeftOut)
                proof.state = said || read ? ToProve::State::Proved : ToProve::State::Open;
            standAgainst(proof, torquesAgainst(seen, step));
        } else if (!step.hardware.empty()) {
            add(step, ProofKind::Fasteners, {"prove.fasteners", {step.title, hardwareWords(step, false)}});
        }
        if (isHose(step.title))
            add(step, ProofKind::Hose, {hoseWords(step), {step.title}});
        if (isCable(step.title))
            add(step, ProofKind::Cable, {"prove.cable", {step.title}});
        if (!step.letOut.empty() && folded(step.letOut) != "none")
            add(step, ProofKind::Fluid, {"prove.fluid", {step.title, step.letOut}});
        for (const wiring::Gathering& gathering : job_.gatherings)
            if (gathering.step == step.id)
                addGathering(gathering, !step.refitted);
        if (found_.size() == before)
            add(step, ProofKind::Sits, {"prove.sits", {step.title}});
    }

    void addGathering(const wiring::Gathering& gathering, bool apart) {
        ToProve proof;
        proof.kind = ProofKind::Wires;
        proof.subject = gathering.id;
        proof.title = gathering.title;
        proof.words = {"prove.wires", {gathering.title}};
        proof.what = code(proof.kind);
        proof.apart = apart;
        answer(proof);
        const WiresLeft left = wiresLeft(job_, gathering);
        if (proof.state == ToProve::State::Open && left.known > 0 && left.none())
            proof.state = ToProve::State::Proved;
        standAgainst(proof, wiresAgainst(left));
        found_.push_back(std::move(proof));
    }

    [[nodiscard]] std::vector<ToProve> found() && { return std::move(found_); }

private:
    // A photo that was never taken proves nothing.
    [[nodiscard]] std::string_view hoseWords(const StripStep& step) const {
        if (photographed(job_, step))
            return "prove.hose";
        return isDescribed(step) ? "prove.hose.written" : "prove.hose.manual";
    }

    ToProve& add(const StripStep& step, ProofKind kind, Message words, std::string what = {}) {
        ToProve proof;
        proof.kind = kind;
        proof.subject = step.id;
        proof.title = step.title;
        proof.words = std::move(words);
        proof.what = what.empty() ? std::string(code(kind)) : std::move(what);
        proof.secondEyes = holdsOrStops(step.title);
        proof.apart = !step.refitted.has_value();
        if (kind == ProofKind::Afterwards) {
            if (const SeenTo* seen = seenTo(step, proof.what)) {
                proof.state = seen->leftOut ? ToProve::State::LeftOut : ToProve::State::Proved;
                proof.note = seen->note;
            }
        }
        answer(proof);
        return found_.emplace_back(std::move(proof));
    }

    // What speaks against it outweighs every word that it is proved; only a reason for leaving it out stands.
    static void standAgainst(ToProve& proof, std::vector<Message> against) {
        proof.against = std::move(against);
        if (!proof.against.empty() && proof.state == ToProve::State::Proved)
            proof.state = ToProve::State::Open;
    }

    void answer(ToProve& proof) const {
        for (const Proof& given : job_.proofs)
            if (given.subject == proof.subject && given.what == proof.what) {
                proof.state = given.leftOut ? ToProve::State::LeftOut : ToProve::State::Proved;
                proof.note = given.note;
            }
        for (const SecondEyes& eyes : job_.secondEyes)
            if (eyes.subject == proof.subject && eyes.what == proof.what)
                proof.secondedBy = eyes.by;
    }

    const Job& job_;
    std::vector<ToProve> found_;
};

} // namespace

std::vector<ToProve> toProve(const Job& job) {
    Collector collector(job);
    for (const StripStep& step : job.steps)
        collector.addStep(step);
    for (const wiring::Gathering& gathering : job.gatherings)
        if (findStep(job, gathering.step) == nullptr)
            collector.addGathering(gathering, false);
    return std::move(collector).found();
}

std::string againstText(const ToProve& proof) {
    std::string all;
    for (const Message& each : proof.against)
        all += (all.empty() ? "" : "; ") + english(each);
    return all;
}

std::vector<ToProve> openProofs(const Job& job) {
    std::vector<ToProve> open = toProve(job);
    std::erase_if(open,
                  [](const ToProve& proof) { return proof.apart || proof.state != ToProve::State::Open; });
    return open;
}

std::optional<TimeMs> dueAt(const Job& job, const Recheck& recheck) {
    constexpr TimeMs msPerDay = TimeMs{24} * 60 * 60 * 1000;
    if (!recheck.afterDays || recheck.seen)
        return std::nullopt;
    return (job.handedOver ? job.handedOver->said.at : recheck.said.at) + *recheck.afterDays * msPerDay;
}

std::string_view code(ProofKind kind) {
    return kindCodes.at(static_cast<std::size_t>(kind));
}

} // namespace undercowl::job
