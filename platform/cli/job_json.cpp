#include "platform/cli/job_json.h"

#include <fmt/chrono.h>
#include <fmt/format.h>

#include <ctime>

namespace undercowl::platform {
namespace {

OrderedJson toJson(const std::optional<job::TypedValue>& value) {
    if (!value)
        return nullptr;
    return {{"value", value->digits}, {"unit", value->unit}};
}

// The list of what 'one' makes of each.
template<typename T, typename One>
OrderedJson listOf(const std::vector<T>& items, One one) {
    OrderedJson list = OrderedJson::array();
    for (const T& item : items)
        list.push_back(one(item));
    return list;
}

OrderedJson toJson(const job::Finding& finding) {
    return {{"id", finding.id},           {"severity", job::code(finding.severity)},
            {"text", finding.text},       {"to_do", finding.toDo},
            {"settled", finding.settled}, {"settled_how", finding.settledHow}};
}

OrderedJson toJson(const job::Reading& reading) {
    return {{"what", reading.what},
            {"value", reading.value.digits},
            {"unit", reading.value.unit},
            {"instrument", reading.instrument},
            {"uncertainty", reading.uncertainty},
            {"low", toJson(reading.low)},
            {"high", toJson(reading.high)},
            {"limit_source", reading.limitSource},
            {"verdict", reading.verdict},
            {"probability", reading.probability ? OrderedJson(*reading.probability) : OrderedJson(nullptr)}};
}

OrderedJson toJson(const wiring::PlaceAnswer& answer) {
    OrderedJson json{{"code", colour::code(answer.wire.colour)},
                     {"words", colour::englishWords(answer.wire.colour)},
                     {"terminal", wiring::text(answer.wire.terminal)},
                     {"function", answer.wire.function},
                     {"din", answer.wire.din},
                     {"how", wiring::code(answer.how)},
                     {"probability", answer.probability}};
    if (!answer.source.empty())
        json["source"] = answer.source;
    return json;
}

} // namespace

std::string isoTime(job::TimeMs time) {
    constexpr job::TimeMs msPerSecond = 1000;
    return fmt::format("{:%Y-%m-%dT%H:%M:%SZ}", fmt::gmtime(static_cast<std::time_t>(time / msPerSecond)));
}

std::string inWords(const job::TypedValue& value) {
    return value.unit.empty() ? value.digits : value.digits + " " + value.unit;
}

OrderedJson toJson(const store::JobLine& line) {
    return {{"id", line.id},
            {"number", line.number},
            {"machine", line.machine},
            {"frame_number", line.frameNumber},
            {"owner", line.owner},
            {"reason", line.reason},
            {"moment", job::code(line.moment)},
            {"stopped", job::english(line.stopped)},
            {"next", job::english(line.next)},
            {"waits_for", job::code(line.waits.what)},
            {"why", line.waits.why.key.empty() ? job::english(line.next) : job::english(line.waits.why)},
            {"waiting", line.waiting},
            {"open_unsafe", line.openUnsafe},
            {"last_at", isoTime(line.lastAt)}};
}

OrderedJson toJson(const job::Standing& standing) {
    return {{"moment", job::code(standing.moment)},
            {"stopped", job::english(standing.stopped)},
            {"next", job::english(standing.next)},
            {"step", standing.stepId},
            {"last_at", isoTime(standing.lastAt)}};
}

OrderedJson toJson(const job::StripStep& step) {
    return {{"id", step.id},
            {"task", step.task},
            {"title", step.title},
            {"bag", step.bag},
            {"hardware", listOf(step.hardware,
                                [](const job::Hardware& each) -> OrderedJson {
                                    return {{"count", each.count},
                                            {"what", each.what},
                                            {"thread", each.thread},
                                            {"length", each.length},
                                            {"torque", toJson(each.torque)}};
                                })},
            {"routing", step.routing},
            {"ends", step.ends},
            {"as_found", step.asFound},
            {"let_out", step.letOut},
            {"note", step.note},
            {"cautions", step.cautions},
            {"runs_as_found",
             step.lineCheck ? OrderedJson(job::code(step.lineCheck->outcome)) : OrderedJson(nullptr)},
            {"stripped_at", isoTime(step.said.at)},
            {"refitted", step.refitted.has_value()}};
}

OrderedJson toJson(const wiring::Gathering& gathering) {
    OrderedJson json{{"id", gathering.id},
                     {"title", gathering.title},
                     {"kind", wiring::code(gathering.kind)},
                     {"places", gathering.places},
                     {"seen_from", wiring::code(gathering.seenFrom)},
                     {"latch", gathering.latch}};
    json["wires"] = listOf(gathering.held, [](const wiring::Place& place) {
        OrderedJson each{{"place", place.key.number},
                         {"slot", place.key.slot},
                         {"half", wiring::code(place.key.half)},
                         {"tag", place.tag}};
        for (const wiring::Answer which :
             {wiring::Answer::AsFound, wiring::Answer::AsItShouldBe, wiring::Answer::AsRefitted})
            if (const auto& answer = place.answer(which))
                each[std::string{wiring::code(which)}] = toJson(*answer);
            else if (place.saidEmpty(which))
                each[std::string{wiring::code(which)}] = {{"empty", true}};
        return each;
    });
    return json;
}

OrderedJson toJson(const job::Job& job, const job::Machine& machine, const job::Owner& owner) {
    OrderedJson json{{"id", job.id}, {"number", job.number}};
    json["machine"] = {{"make", machine.make},
                       {"model", machine.model},
                       {"year", machine.year ? OrderedJson(*machine.year) : OrderedJson(nullptr)},
                       {"frame_number", machine.frameNumber}};
    json["owner"] = owner.name;
    json["reason"] = job.reason;
    json["works"] = job.works;
    json["works_not"] = job.worksNot;
    json["odometer"] = toJson(job.odometer);
    json["opened_at"] = isoTime(job.opened.at);
    json["standing"] = toJson(job::standing(job));
    json["findings"] = listOf(job.findings, [](const job::Finding& each) { return toJson(each); });
    json["tasks"] = listOf(job.tasks, [](const job::Task& each) -> OrderedJson {
        return {{"id", each.id},
                {"title", each.title},
                {"waiting", each.waiting},
                {"waiting_for", each.waitingFor}};
    });
    json["steps"] = listOf(job.steps, [](const job::StripStep& each) { return toJson(each); });
    json["wiring"] = listOf(job.gatherings, [](const wiring::Gathering& each) { return toJson(each); });
    json["wire_checks"] = listOf(job.wireChecks, [](const job::WireCheck& each) -> OrderedJson {
        return {{"connector", each.gathering},
                {"place", each.place.number},
                {"outcome", job::code(each.outcome)}};
    });
    json["readings"] = listOf(job.readings, [](const job::Reading& each) { return toJson(each); });
    json["parts"] = listOf(job.parts, [](const job::Part& each) -> OrderedJson {
        return {{"name", each.name},
                {"number", each.number},
                {"state", job::code(each.state)},
                {"supplier", each.supplier},
                {"other_numbers", each.otherNumbers},
                {"price", toJson(each.price)},
                {"fitted", job::code(each.fitted)},
                {"fit", each.fit}};
    });
    json["rechecks"] = listOf(job.rechecks, [](const job::Recheck& each) -> OrderedJson {
        return {{"what", each.what},
                {"after", toJson(each.after)},
                {"after_days", each.afterDays ? OrderedJson(*each.afterDays) : OrderedJson(nullptr)}};
    });
    json["photos"] = listOf(job.photos, [](const job::Photo& each) -> OrderedJson {
        return {{"media", each.media}, {"purpose", job::code(each.purpose)}, {"note", each.note}};
    });
    json["approvals"] = listOf(job.approvals, [](const job::Approval& each) -> OrderedJson {
        return {{"what", each.what},
                {"given", each.given},
                {"by", each.by},
                {"how", each.how},
                {"sum", toJson(each.sum)},
                {"findings", each.findings},
                {"at", isoTime(each.said.at)}};
    });
    json["consumables"] = listOf(job.consumables, [](const job::ConsumableUse& each) -> OrderedJson {
        return {{"what", each.what},   {"grade", each.grade},   {"limit", each.limit},
                {"batch", each.batch}, {"opened", each.opened}, {"step", each.about}};
    });
    json["rounds"] = listOf(job.rounds, [](const job::Round& each) -> OrderedJson {
        return {{"title", each.title},
                {"checks", listOf(each.checks, [](const job::RoundCheck& check) -> OrderedJson {
                     return {{"group", check.group},
                             {"check", check.text},
                             {"answer",
                              check.answer ? OrderedJson(job::code(*check.answer)) : OrderedJson(nullptr)},
                             {"note", check.note}};
                 })}};
    });
    json["functions"] = listOf(job.functions, [](const job::FunctionCheck& each) -> OrderedJson {
        return {{"what", each.what}, {"answer", job::code(each.answer)}, {"note", each.note}};
    });
    json["came_back_from"] = job.cameBackFrom;
    json["handed_over"] = job.handedOver.has_value();
    return json;
}

} // namespace undercowl::platform
