#include "core/handover/orders.h"

#include "core/handover/sections.h"
#include "core/job/csv.h"
#include "core/job/money.h"
#include "core/job/text.h"

#include <algorithm>

namespace undercowl::handover {
namespace {

std::string machineName(const job::Machine& machine) {
    std::vector<std::string> words;
    addOnce(words, machine.make);
    addOnce(words, machine.model);
    std::string name = joined(words, " ");
    if (machine.year)
        name += (name.empty() ? "" : ", ") + std::to_string(*machine.year);
    return name;
}

std::string forWhat(const job::Job& job, const job::Id& about) {
    if (const auto* finding = job::findFinding(job, about))
        return finding->text;
    const auto* step = job::findStep(job, about);
    return step == nullptr ? std::string{} : step->title;
}

void close(OrderGroup& group) {
    std::vector<job::TypedValue> prices;
    for (const WantedPart& wanted : group.parts) {
        if (wanted.part.price)
            prices.push_back(*wanted.part.price);
        else
            ++group.withoutPrice;
    }
    group.sums = job::sums(prices, &group.withoutPrice);
}

Text supplierOf(const OrderGroup& group) {
    return group.supplier.empty() ? Text{say("order.no-supplier")} : Text{group.supplier};
}

std::string sumsOf(const OrderGroup& group) {
    std::vector<std::string> all;
    for (const job::TypedValue& sum : group.sums)
        all.push_back(written(sum));
    return joined(all, " + ");
}

} // namespace

std::vector<WantedPart> toOrder(const job::Job& job, const job::Machine& machine) {
    std::vector<WantedPart> wanted;
    for (const job::Part& part : job.parts)
        if (part.state == job::PartState::Wanted || part.state == job::PartState::Asked)
            wanted.push_back({job.number, machineName(machine), forWhat(job, part.about), part});
    return wanted;
}

std::vector<OrderGroup> bySupplier(std::span<const WantedPart> parts) {
    std::vector<OrderGroup> groups;
    for (const WantedPart& wanted : parts) {
        const std::string name = job::folded(wanted.part.supplier);
        auto group = std::find_if(groups.begin(), groups.end(),
                                  [&](const OrderGroup& each) { return job::folded(each.supplier) == name; });
        if (group == groups.end())
            group = groups.insert(groups.end(), OrderGroup{wanted.part.supplier, {}, {}, 0});
        group->parts.push_back(wanted);
    }
    std::stable_sort(groups.begin(), groups.end(), [](const OrderGroup& a, const OrderGroup& b) {
        const std::string nameA = job::folded(a.supplier);
        const std::string nameB = job::folded(b.supplier);
        return nameA.empty() != nameB.empty() ? nameB.empty() : nameA < nameB;
    });
    for (OrderGroup& group : groups)
        close(group);
    return groups;
}

std::string orderText(std::span<const OrderGroup> groups, const Words& words) {
    std::string text;
    for (const OrderGroup& group : groups) {
        text += (text.empty() ? "" : "\n") + words(supplierOf(group)) + "\n";
        for (const WantedPart& wanted : group.parts) {
            std::vector<std::string> line;
            for (const std::string* piece : {&wanted.part.name, &wanted.part.number})
                addOnce(line, *piece);
            if (!wanted.part.otherNumbers.empty())
                line.push_back(words(say("order.also", {wanted.part.otherNumbers})));
            addOnce(line, wanted.machine);
            if (wanted.part.price)
                line.push_back(written(*wanted.part.price));
            text += "- " + joined(line, ", ") + "\n";
        }
        if (!group.sums.empty())
            text += words(say("order.sum", {sumsOf(group)})) + "\n";
        if (group.withoutPrice > 0)
            text += words(say("order.without-price", {std::to_string(group.withoutPrice)})) + "\n";
    }
    return text;
}

std::string orderCsv(std::span<const OrderGroup> groups) {
    std::vector<job::CsvRow> rows{{"supplier", "part", "number", "other numbers", "state", "price",
                                   "currency", "job", "machine", "for", "note"}};
    for (const OrderGroup& group : groups)
        for (const WantedPart& wanted : group.parts) {
            const job::Part& part = wanted.part;
            rows.push_back({part.supplier, part.name, part.number, part.otherNumbers,
                            std::string(job::code(part.state)), part.price ? part.price->digits : "",
                            part.price ? part.price->unit : "", wanted.jobNumber, wanted.machine,
                            wanted.forWhat, part.note});
        }
    return job::writeCsv(rows);
}

Document orderDocument(std::span<const OrderGroup> groups, const std::string& day) {
    Document document{say("order.title", {day}), {}};
    for (const OrderGroup& group : groups) {
        Table table{{say("order.part"), say("order.number"), say("order.machine"), say("order.price")}, {}};
        for (const WantedPart& wanted : group.parts) {
            const job::Part& part = wanted.part;
            table.rows.push_back(
                Row{{part.name,
                     part.otherNumbers.empty() ? Text{part.number}
                                               : Text{say("order.numbers", {part.number, part.otherNumbers})},
                     wanted.machine, part.price ? written(*part.price) : std::string{}}});
        }
        Section section{supplierOf(group), {std::move(table)}};
        if (!group.sums.empty())
            section.blocks.emplace_back(Paragraph{say("order.sum", {sumsOf(group)}), Weight::Strong});
        if (group.withoutPrice > 0)
            section.blocks.emplace_back(
                Paragraph{say("order.without-price", {std::to_string(group.withoutPrice)}), Weight::Plain});
        document.sections.push_back(std::move(section));
    }
    return document;
}

} // namespace undercowl::handover
