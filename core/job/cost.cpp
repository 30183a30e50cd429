#include "core/job/cost.h"

#include "core/job/text.h"
#include "core/job/worktime.h"

#include <algorithm>

namespace undercowl::job {
namespace {

constexpr std::int64_t minutesInHour = 60;
constexpr std::int64_t percent = 100;

class Reckoning {
public:
    explicit Reckoning(const Job& job) : job_(job), places_(currencyPlaces(job.costTerms->currency)) {
        cost_.currency = job.costTerms->currency;
        cost_.taxPercent = job.costTerms->tax;
    }

    void addWork(const std::string& what, int minutes) {
        cost_.minutes += minutes;
        const auto rate = decimal(job_.costTerms->hourRate);
        if (minutes == 0 || !rate)
            return;
        const auto sum = scaled(*rate, *decimal(std::to_string(minutes)), minutesInHour, places_);
        if (sum)
            cost_.rows.push_back({CostRow::Kind::Work, what, minutes, *sum});
        else
            cost_.doubts.push_back({"cost.too-large", {what}});
    }

    void addPart(const Part& part) {
        if (part.state != PartState::Fitted)
            return;
        const std::string what = part.number.empty() ? part.name : part.name + " " + part.number;
        const auto sum = part.price ? decimal(part.price->digits) : std::nullopt;
        if (!sum)
            cost_.doubts.push_back({"cost.no-price", {what}});
        else if (lowered(part.price->unit) != lowered(cost_.currency))
            cost_.doubts.push_back({"cost.other-currency", {what, part.price->digits, part.price->unit}});
        else
            cost_.rows.push_back({CostRow::Kind::Part, what, 0, rounded(*sum, places_)});
    }

    void addLine(const CostLine& line) {
        if (const auto sum = decimal(line.sum))
            cost_.rows.push_back({CostRow::Kind::Line, line.what, 0, rounded(*sum, places_)});
        else
            cost_.doubts.push_back({"cost.no-price", {line.what}});
    }

    void addExpected() {
        std::vector<TypedValue> sumsSaid;
        for (const Approval& approval : job_.approvals)
            if (approval.given && approval.sum)
                sumsSaid.push_back(*approval.sum);
        cost_.approved = sums(sumsSaid);
        for (const Task& task : job_.tasks)
            cost_.minutesExpected += task.minutes.value_or(0);
        for (const Finding& finding : job_.findings)
            if (std::none_of(job_.tasks.begin(), job_.tasks.end(),
                             [&](const Task& task) { return task.finding == finding.id; }))
                cost_.minutesExpected += finding.minutes.value_or(0);
    }

    [[nodiscard]] Cost total() && {
        for (const CostRow& row : cost_.rows)
            cost_.net = cost_.net + row.net;
        const auto tax = scaled(cost_.net, decimal(cost_.taxPercent).value_or(Decimal{}), percent, places_);
        cost_.tax = tax.value_or(Decimal{});
        cost_.gross = cost_.net + cost_.tax;
        return std::move(cost_);
    }

private:
    const Job& job_;
    int places_;
    Cost cost_;
};

} // namespace

std::optional<Cost> costOf(const Job& job, TimeMs now) {
    if (!job.costTerms)
        return std::nullopt;
    Reckoning reckoning(job);
    for (const Task& task : job.tasks)
        reckoning.addWork(task.title, minutesSpent(job, task.id, now));
    reckoning.addWork({}, minutesSpent(job, "", now));
    for (const Part& part : job.parts)
        reckoning.addPart(part);
    for (const CostLine& line : job.costTerms->lines)
        reckoning.addLine(line);
    reckoning.addExpected();
    return std::move(reckoning).total();
}

std::string money(Decimal value, const std::string& currency) {
    return written(value, currencyPlaces(currency)) + "\u00A0" + currency;
}

} // namespace undercowl::job
