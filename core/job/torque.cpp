#include "core/job/torque.h"

#include "core/job/readings.h"
#include "core/units/parse.h"

#include <algorithm>

namespace undercowl::job {
namespace {

std::optional<units::Quantity> torque(const TypedValue& value) {
    const auto read = units::parseQuantity(value.digits + " " + value.unit, units::Dimension::Torque);
    return read ? std::optional(read->quantity()) : std::nullopt;
}

std::string named(const Hardware& piece) {
    return piece.thread.empty() ? piece.what : piece.what + " " + piece.thread;
}

TorqueSeen::State stateOf(const Hardware& piece, const Reading& reading) {
    using State = TorqueSeen::State;
    const auto value = torque(reading.value);
    const auto wanted = torqueOf(piece);
    const auto low = reading.low ? torque(*reading.low) : std::nullopt;
    const auto high = reading.high ? torque(*reading.high) : std::nullopt;
    if (reading.verdict == "outside")
        return State::Outside;
    if (!low && !high) { // nobody judged it: it can only speak against
        const auto around = torqueLimits(piece).limits;
        const bool off = value->base() < around.low->base() || value->base() > around.high->base();
        return off ? State::Outside : State::Unread;
    }
    const bool holds = low && high && low->base() <= wanted->base() && wanted->base() <= high->base();
    return holds && reading.verdict == "within" ? State::Inside : State::Unread;
}

} // namespace

std::optional<units::Quantity> torqueOf(const Hardware& piece) {
    const auto value = piece.torque ? torque(*piece.torque) : std::nullopt;
    return value && value->value > 0 ? value : std::nullopt;
}

std::string torqueName(const StripStep& step, const Hardware& piece) {
    const auto alike = std::count_if(step.hardware.begin(), step.hardware.end(), [&](const Hardware& other) {
        return other.torque && named(other) == named(piece);
    });
    return alike > 1 && !piece.length.empty() ? named(piece) + " x " + piece.length : named(piece);
}

const Hardware* torqueMeant(const StripStep& step, std::string_view what) {
    const Hardware* only = nullptr;
    const Hardware* meant = nullptr;
    int torqued = 0;
    std::size_t longest = 0;
    for (const Hardware& piece : step.hardware) {
        if (!torqueOf(piece))
            continue;
        only = &piece;
        ++torqued;
        const std::string name = torqueName(step, piece);
        if (name.empty() || name.size() < longest || what.find(name) == std::string_view::npos)
            continue;
        meant = name.size() == longest ? nullptr : &piece; // two of one name: not clear
        longest = name.size();
    }
    return torqued == 1 ? only : meant;
}

verdict::TargetLimits torqueLimits(const Hardware& piece) {
    return verdict::limitsAround(*torqueOf(piece),
                                 piece.torque->digits + " " + piece.torque->unit + " in the step");
}

bool heldAgainstStep(const Job& job, const Reading& reading) {
    const StripStep* step = findStep(job, reading.about);
    const Hardware* piece = step == nullptr ? nullptr : torqueMeant(*step, reading.what);
    return piece != nullptr && reading.limitSource == torqueLimits(*piece).limits.source.text();
}

std::vector<TorqueSeen> torquesSeen(const Job& job, const StripStep& step) {
    std::vector<const Reading*> last;
    for (const Reading& reading : job.readings)
        if (reading.about == step.id && torque(reading.value) && !measuredAgain(job, reading))
            last.push_back(&reading);
    std::vector<TorqueSeen> seen;
    for (const Hardware& piece : step.hardware) {
        if (!torqueOf(piece))
            continue;
        TorqueSeen one{&piece};
        for (const Reading* reading : last) {
            const Hardware* meant = torqueMeant(step, reading->what);
            if (meant != nullptr && meant != &piece)
                continue;
            const auto state = stateOf(piece, *reading);
            // Without a word on which it was, it proves what its limits hold and accuses nothing else.
            if (state > one.state && (meant != nullptr || state == TorqueSeen::State::Inside)) {
                one.state = state;
                one.reading = reading;
            }
        }
        seen.push_back(one);
    }
    return seen;
}

} // namespace undercowl::job
