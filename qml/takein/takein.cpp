#include "qml/takein/takein.h"

#include "core/job/odometer.h"
#include "core/trade/registry.h"
#include "core/units/parse.h"
#include "qml/calc/calcwords.h"
#include "qml/shell/words.h"

#include <QDate>
#include <QDateTime>
#include <QPointer>

#include <algorithm>

namespace undercowl::ui {

namespace {

constexpr int firstYear = 1890; // no motor cycle is older

// "2026-014": the year and one more than the highest number of that year in the shop.
std::string nextNumber(const std::vector<store::JobLine>& jobs, job::TimeMs now) {
    const std::string head = std::to_string(QDateTime::fromMSecsSinceEpoch(now).date().year()) + '-';
    int highest = 0;
    for (const auto& job : jobs)
        if (job.number.rfind(head, 0) == 0)
            highest = std::max(highest, QString::fromStdString(job.number.substr(head.size())).toInt());
    return head + QStringLiteral("%1").arg(highest + 1, 3, 10, QLatin1Char('0')).toStdString();
}

// Entries hold the decimal point; the keyboard of the place may have given a comma.
std::string withPoint(std::string digits) {
    std::ranges::replace(digits, ',', '.');
    return digits;
}

std::optional<std::string> ifAny(const std::string& text) {
    return text.empty() ? std::nullopt : std::optional(text);
}

} // namespace

struct TakeIn::Entered {
    job::Machine machine;
    job::Owner owner;
    journal::JobPatch patch;

    [[nodiscard]] bool ownerKnown() const {
        return !owner.name.empty() || !owner.phone.empty() || !owner.mail.empty() || !owner.address.empty();
    }
};

bool TakeIn::read(Entered& entered) {
    QVariantMap errors;
    const auto field = [this](const char* name) { return utf8(draft_->text(QString::fromLatin1(name))); };
    auto& machine = entered.machine;
    machine.make = field("make");
    machine.model = field("model");
    machine.frameNumber = field("frame");
    machine.notes = field("notes");
    if (machine.make.empty() && machine.model.empty())
        errors[QStringLiteral("model")] = tr("Type the make or the model, whatever is readable.");
    if (const auto year = field("year"); !year.empty()) {
        bool whole = false;
        const int value = QString::fromStdString(year).toInt(&whole);
        const int next = QDateTime::fromMSecsSinceEpoch(session_->now()).date().year() + 1;
        if (!whole || value < firstYear || value > next)
            errors[QStringLiteral("year")] =
                tr("The year is a number from %1 to %2; leave it empty if it is not known.")
                    .arg(firstYear)
                    .arg(next);
        else
            machine.year = value;
    }
    const auto quantity = [&](const char* name, const char* unitName, const char* fallback, auto& into,
                              units::Dimension dimension = units::Dimension::Length) {
        const auto digits = field(name);
        if (digits.empty())
            return;
        const auto chosen = field(unitName);
        const std::string unit = chosen.empty() ? fallback : chosen;
        const auto typed = units::parseQuantity(digits + ' ' + unit, dimension);
        if (!typed)
            errors[QString::fromLatin1(name)] = coreWords(typed.error().message);
        else if (typed->number.value < 0)
            errors[QString::fromLatin1(name)] = tr("A number that is not below 0.");
        else if (const auto doubt = job::odometerDoubt(typed->number);
                 doubt && std::string_view(name) == "odometer")
            errors[QString::fromLatin1(name)] = coreWords(*doubt);
        else
            into = job::TypedValue{withPoint(typed->number.text), unit};
    };
    quantity("odometer", "odometerUnit", "km", entered.patch.odometer);
    quantity("altitude", "altitudeUnit", "m", entered.patch.altitude);
    quantity("rider", "massUnit", "kg", entered.patch.riderMass, units::Dimension::Mass);
    quantity("luggage", "massUnit", "kg", entered.patch.luggageMass, units::Dimension::Mass);
    entered.owner = {{}, field("owner"), field("phone"), field("mail"), field("address")};
    entered.patch.reason = ifAny(field("reason"));
    if (!entered.patch.reason && !editing_)
        errors[QStringLiteral("reason")] = tr("Type why it is here, such as \"no lights\".");
    entered.patch.works = ifAny(field("works"));
    entered.patch.worksNot = ifAny(field("worksNot"));
    entered.patch.load = ifAny(field("load"));
    entered.patch.received = ifAny(field("received"));
    errors_ = errors;
    emit errorsChanged();
    return errors.isEmpty();
}

QVariantMap TakeIn::known() const {
    const auto snapshot = session_->snapshot();
    if (!snapshot)
        return {};
    const auto& [job, machine, owner, standing] = *snapshot;
    QVariantMap known;
    const auto put = [&](const char* name, const std::string& value) {
        if (!value.empty())
            known[QString::fromLatin1(name)] = text(value);
    };
    put("make", machine.make);
    put("model", machine.model);
    put("year", machine.year ? std::to_string(*machine.year) : std::string{});
    put("frame", machine.frameNumber);
    put("notes", machine.notes);
    put("odometer", job.odometer ? job.odometer->digits : std::string{});
    put("odometerUnit", job.odometer ? job.odometer->unit : std::string{});
    put("owner", owner.name);
    put("phone", owner.phone);
    put("mail", owner.mail);
    put("address", owner.address);
    put("reason", job.reason);
    put("works", job.works);
    put("worksNot", job.worksNot);
    put("altitude", job.altitude ? job.altitude->digits : std::string{});
    put("load", job.load);
    put("received", job.received);
    put("rider", job.riderMass ? job.riderMass->digits : std::string{});
    put("luggage", job.luggageMass ? job.luggageMass->digits : std::string{});
    return known;
}

QString TakeIn::frameHint(const QString& number) const {
    const auto typed = utf8(number);
    const auto* vin = trade::findCalculation("vin");
    if (typed.empty() || vin == nullptr)
        return {};
    const auto outcome = trade::run(*vin, {{"number", typed}}, dayOf(session_->now()));
    if (!outcome)
        return tr("%1; possible: %2")
            .arg(calcWords(outcome.error().reason), coreWords(outcome.error().possible));
    const auto* valid = outcome->find("valid");
    if (valid == nullptr)
        return {};
    const auto* yes = std::get_if<bool>(&valid->value);
    if (yes == nullptr || *yes)
        return typed.size() == 17 ? tr("Check digit fits.")
                                  : tr("Taken as an older number without check digit.");
    // "no: position 9 should be 6": what is wrong with it.
    QStringList words{
        tr("Look at it once more: %1").arg(calcWords(valid->text).section(QStringLiteral(": "), 1))};
    for (const std::string& caution : outcome->cautions)
        words += calcWords(caution);
    return words.join(QStringLiteral("; "));
}

void TakeIn::save() {
    Entered entered;
    if (busy_ || !read(entered))
        return;
    const auto snapshot = session_->snapshot();
    const bool editing = editing_ && snapshot != nullptr;
    const Id job = editing ? snapshot->job.id : session_->newId();
    entered.machine.id = editing && !snapshot->machine.id.empty() ? snapshot->machine.id : session_->newId();
    entered.owner.id = editing && !snapshot->owner.id.empty() ? snapshot->owner.id : session_->newId();
    if (const auto returned = utf8(draft_->text(QStringLiteral("returned"))); !editing && !returned.empty()) {
        entered.patch.cameBackFrom = returned;
        const auto same = [this](const char* name, Id& id) {
            if (const auto known = utf8(draft_->text(QString::fromLatin1(name))); !known.empty())
                id = known; // the same machine and owner, not a second one of each
        };
        same("returnedMachine", entered.machine.id);
        same("returnedOwner", entered.owner.id);
    }
    entered.patch.machine = entered.machine.id;
    if (entered.ownerKnown())
        entered.patch.owner = entered.owner.id;
    busy_ = true;
    emit busyChanged();
    session_->sayFrom(
        [entered, job, editing, now = session_->now()](ShopStore& store) -> Entries {
            auto patch = entered.patch;
            std::vector<journal::Draft> drafts{journal::machineDescribed(entered.machine)};
            if (entered.ownerKnown())
                drafts.push_back(journal::ownerDescribed(entered.owner));
            if (!editing) {
                const auto jobs = store.jobs();
                if (!jobs)
                    return tl::unexpected(jobs.error());
                patch.number = nextNumber(*jobs, now);
            }
            drafts.push_back(editing ? journal::jobDescribed(job, patch) : journal::jobOpened(job, patch));
            return store.append(drafts);
        },
        {.undoText = editing ? tr("Changed") : QString(), .form = draft_->property("form").toString()},
        [self = QPointer(this), job](const Entries& said) {
            if (self != nullptr)
                self->finish(said, text(job));
        });
}

void TakeIn::finish(const Entries& said, const QString& jobId) {
    busy_ = false;
    emit busyChanged();
    if (!said)
        return;
    draft_->said();
    session_->openJob(jobId);
    emit saved(jobId);
}

} // namespace undercowl::ui
