#include "core/journal/sheet.h"

#include "core/job/csv.h"
#include "core/job/money.h"
#include "core/job/odometer.h"
#include "core/job/text.h"
#include "core/journal/body.h"
#include "core/journal/say.h"
#include "core/units/parse.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <map>

namespace undercowl::journal {
namespace {

using job::CsvRow;

constexpr std::array<std::string_view, 13> machineColumns{
    "job",  "make",    "model",  "year",     "frame number", "owner",      "phone",
    "mail", "address", "reason", "odometer", "taken in",     "handed over"};
constexpr std::array<std::string_view, 11> partColumns{"job",      "part",  "number", "other numbers",
                                                       "supplier", "state", "price",  "currency",
                                                       "fitted",   "fit",   "note"};
constexpr std::size_t longestCell = 4000; // bytes; a reason or a note may be a page
constexpr int firstYear = 1880;
constexpr int lastYear = 2200;

bool isUtf8(const std::string& text) {
    try {
        (void)Json(text).dump(); // strict
        return true;
    } catch (const Json::exception&) {
        return false;
    }
}

// The cells of one line by the names in the head.
class Cells {
public:
    Cells(const std::map<std::string, std::size_t>& columns, const CsvRow& row)
        : columns_(columns), row_(row) {}

    [[nodiscard]] std::string at(const char* column) const {
        const auto found = columns_.find(column);
        if (found == columns_.end() || found->second >= row_.size())
            return {};
        const std::string& cell = row_[found->second];
        const auto first = cell.find_first_not_of(" \t\r\n");
        return first == std::string::npos ? std::string{}
                                          : cell.substr(first, cell.find_last_not_of(" \t\r\n") - first + 1);
    }

    // What the shop's journal could not keep, by column.
    void look(SheetLine& line) const {
        for (const auto& [name, place] : columns_) {
            if (place >= row_.size())
                continue;
            const std::string& cell = row_[place];
            if (cell.size() > longestCell)
                line.problems.push_back(name + ": has " + std::to_string(cell.size()) + " bytes, at most " +
                                        std::to_string(longestCell) + " are kept; shorten the text");
            else if (!isUtf8(cell))
                line.problems.push_back(
                    name + ": is not written in UTF-8; save the sheet as CSV in UTF-8, or type it anew");
            else if (cell.find('\0') != std::string::npos)
                line.problems.push_back(name + ": holds a NUL character; type it anew");
        }
    }

private:
    const std::map<std::string, std::size_t>& columns_;
    const CsvRow& row_;
};

class Planner {
public:
    Planner(std::vector<KnownJob> known, std::function<std::vector<job::Part>(const Id&)> partsOf,
            std::function<Id()> newId, std::function<std::string()> nextNumber)
        : known_(std::move(known)), partsOf_(std::move(partsOf)), newId_(std::move(newId)),
          nextNumber_(std::move(nextNumber)) {}

    void machine(const Cells& cells, SheetLine& line) {
        job::Machine machine{newId_(), cells.at("make"), cells.at("model"), {}, cells.at("frame number"), {}};
        if (machine.make.empty() && machine.model.empty())
            line.problems.emplace_back("make, model: one of them must be there");
        if (const std::string year = cells.at("year"); !year.empty()) {
            int value = 0;
            const auto read = std::from_chars(year.data(), year.data() + year.size(), value);
            if (read.ec != std::errc{} || read.ptr != year.data() + year.size() || value < firstYear ||
                value > lastYear)
                line.problems.push_back("year: '" + year + "' is no year such as 1987");
            else
                machine.year = value;
        }
        JobPatch patch;
        patch.odometer = length(cells.at("odometer"), line);
        const std::string number = cells.at("job");
        if (const auto* here = jobOf(number, machine.frameNumber); here != nullptr && line.problems.empty()) {
            line.says = "passed over: is here as job " + here->number;
            return;
        }
        const job::Owner owner{newId_(), cells.at("owner"), cells.at("phone"), cells.at("mail"),
                               cells.at("address")};
        const bool owned = !owner.name.empty() || !owner.phone.empty() || !owner.mail.empty();
        patch.number = number.empty() ? nextNumber_() : number;
        patch.machine = machine.id;
        if (owned)
            patch.owner = owner.id;
        const std::string reason = cells.at("reason");
        patch.reason = reason.empty() ? "brought in from a list" : reason;
        const Id job = newId_();
        line.says = "opens job " + *patch.number + ": " + machine.make + " " + machine.model;
        if (!line.problems.empty())
            return;
        known_.push_back({job, *patch.number, machine.frameNumber});
        line.drafts.push_back(machineDescribed(machine));
        if (owned)
            line.drafts.push_back(ownerDescribed(owner));
        line.drafts.push_back(jobOpened(job, patch));
    }

    void part(const Cells& cells, SheetLine& line) {
        job::Part part;
        part.id = newId_();
        part.name = cells.at("part");
        part.number = cells.at("number");
        part.otherNumbers = cells.at("other numbers");
        part.supplier = cells.at("supplier");
        part.note = cells.at("note");
        part.fit = cells.at("fit");
        if (part.name.empty())
            line.problems.emplace_back("part: must say what part it is");
        part.state = word(cells, "state", job::partStateFromCode, job::PartState::Wanted, line);
        part.fitted = word(cells, "fitted", job::partFitFromCode, job::PartFit::NotSaid, line);
        if (std::string price = cells.at("price"); !price.empty()) {
            const std::string currency = cells.at("currency");
            if (!job::decimal(price))
                line.problems.push_back("price: '" + price + "' is no number such as 18.50");
            if (currency.empty())
                line.problems.emplace_back("currency: a price needs its currency, such as EUR");
            std::replace(price.begin(), price.end(), ',', '.');
            part.price = job::TypedValue{price, currency};
        }
        const std::string number = cells.at("job");
        const auto* here = number.empty() ? nullptr : jobOf(number, {});
        if (here == nullptr) {
            line.problems.push_back("job: there is no job '" + number + "' in this shop");
            return;
        }
        if (hasPart(*here, part)) {
            line.says = "passed over: job " + here->number + " has it";
            line.problems.clear();
            return;
        }
        line.says =
            "adds to job " + here->number + ": " + part.name + (part.number.empty() ? "" : " ") + part.number;
        if (line.problems.empty())
            line.drafts.push_back(partStated(here->id, part));
    }

private:
    [[nodiscard]] const KnownJob* jobOf(const std::string& number, const std::string& frame) const {
        const auto found = std::find_if(known_.begin(), known_.end(), [&](const KnownJob& each) {
            return (!number.empty() && job::folded(each.number) == job::folded(number)) ||
                   (!frame.empty() && job::folded(each.frameNumber) == job::folded(frame));
        });
        return found == known_.end() ? nullptr : &*found;
    }

    // In the shop, or on a line before.
    bool hasPart(const KnownJob& job, const job::Part& part) {
        const auto [parts, fresh] = parts_.try_emplace(job.id);
        if (fresh)
            parts->second = partsOf_(job.id);
        const bool has = std::any_of(parts->second.begin(), parts->second.end(), [&](const job::Part& each) {
            return job::folded(each.name) == job::folded(part.name) &&
                   job::folded(each.number) == job::folded(part.number);
        });
        if (!has)
            parts->second.push_back(part);
        return has;
    }

    static std::optional<job::TypedValue> length(const std::string& text, SheetLine& line) {
        if (text.empty())
            return std::nullopt;
        const auto read = units::parseQuantity(text, units::Dimension::Length,
                                               units::findUnit("km", units::Dimension::Length));
        if (!read) {
            line.problems.push_back("odometer: " + read.error().message);
            return std::nullopt;
        }
        if (const auto doubt = job::odometerDoubt(read->number)) {
            line.problems.push_back("odometer: " + *doubt);
            return std::nullopt;
        }
        std::string digits = read->number.text;
        std::replace(digits.begin(), digits.end(), ',', '.');
        return job::TypedValue{digits, std::string(read->unit.symbol())};
    }

    template<typename Read, typename Value>
    static Value word(const Cells& cells, const char* column, Read read, Value fallback, SheetLine& line) {
        const std::string text = job::lowered(cells.at(column));
        if (text.empty())
            return fallback;
        const auto value = read(text);
        if (!value)
            line.problems.push_back(std::string(column) + ": '" + text + "' is not known");
        return value.value_or(fallback);
    }

    std::vector<KnownJob> known_;
    std::function<std::vector<job::Part>(const Id&)> partsOf_;
    std::function<Id()> newId_;
    std::function<std::string()> nextNumber_;
    std::map<Id, std::vector<job::Part>> parts_;
};

template<std::size_t N>
bool among(const std::array<std::string_view, N>& columns, const std::string& name) {
    return std::find(columns.begin(), columns.end(), name) != columns.end();
}

} // namespace

std::vector<Draft> SheetPlan::drafts() const {
    std::vector<Draft> all;
    for (const SheetLine& line : lines)
        if (line.problems.empty())
            all.insert(all.end(), line.drafts.begin(), line.drafts.end());
    return all;
}

tl::expected<SheetPlan, std::string>
planSheet(std::string_view text, const std::vector<KnownJob>& known,
          const std::function<std::vector<job::Part>(const Id& job)>& partsOf,
          const std::function<Id()>& newId, const std::function<std::string()>& nextNumber) {
    const auto rows = job::readCsv(text);
    if (!rows)
        return tl::unexpected(rows.error());
    if (rows->empty())
        return tl::unexpected(std::string("the file is empty"));
    std::map<std::string, std::size_t> columns;
    for (std::size_t i = 0; i < rows->front().size(); ++i)
        if (std::string name = job::folded(rows->front()[i]); isUtf8(name))
            columns.try_emplace(std::move(name), i);
    SheetPlan plan;
    plan.parts = columns.contains("part");
    if (!plan.parts && !columns.contains("make") && !columns.contains("model"))
        return tl::unexpected(
            std::string("the first line names no column that is known: a sheet of machines has "
                        "\"make\" and \"model\", one of parts has \"job\" and \"part\""));
    // What is not brought in may hold what it likes.
    std::erase_if(columns, [&plan](const auto& column) {
        const std::string& name = column.first;
        const bool wanted = plan.parts ? among(partColumns, name) : among(machineColumns, name);
        if (!wanted && !name.empty())
            plan.unknown.push_back(name);
        return !wanted;
    });
    Planner planner(known, partsOf, newId, nextNumber);
    for (std::size_t at = 1; at < rows->size(); ++at) {
        SheetLine line;
        line.line = at + 1;
        const Cells cells(columns, (*rows)[at]);
        cells.look(line);
        if (line.problems.empty())
            plan.parts ? planner.part(cells, line) : planner.machine(cells, line);
        plan.lines.push_back(std::move(line));
    }
    return plan;
}

} // namespace undercowl::journal
