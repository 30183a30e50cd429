#include "qml/handover/handoverview.h"

#include "core/handover/record.h"
#include "core/job/leaving.h"
#include "core/job/proving.h"
#include "core/journal/say.h"
#include "platform/plugins/plugin.h"
#include "platform/records/recordfiles.h"
#include "platform/threads/across.h"
#include "qml/handover/recordwords.h"
#include "qml/shell/words.h"

#include <QPointer>

#include <algorithm>

namespace undercowl::ui {

namespace {

QString weightCode(handover::Weight weight) {
    switch (weight) {
    case handover::Weight::Plain: return QStringLiteral("plain");
    case handover::Weight::Strong: return QStringLiteral("strong");
    case handover::Weight::Caution: return QStringLiteral("caution");
    }
    return {};
}

QString markOf(job::Weighs weighs) {
    switch (weighs) {
    case job::Weighs::Stops:
    case job::Weighs::Tells: return QStringLiteral("unsafe");
    case job::Weighs::Asks:
    case job::Weighs::Warns: break;
    }
    return QStringLiteral("soon");
}

QString pageOf(job::Against::Way way) {
    using Way = job::Against::Way;
    switch (way) {
    case Way::SettleOrRefuse: return QStringLiteral("LookOverPage");
    case Way::ReadBack: return QStringLiteral("LineBackPage");
    case Way::Prove: return QStringLiteral("ProvePage");
    case Way::SeeTo: return QStringLiteral("AfterwardsPage");
    case Way::Fit: return QStringLiteral("PartsPage");
    case Way::Answer: return QStringLiteral("FunctionsPage");
    case Way::ReadWires: return QStringLiteral("ReadBackPage");
    case Way::Measure: return QStringLiteral("MeasurePage");
    case Way::None: break;
    }
    return {};
}

QString whatToDo(const job::Job& job, const job::Against& against) {
    using Way = job::Against::Way;
    if (against.way == Way::SettleOrRefuse)
        return HandOverView::tr("Settle it, or record that the owner does not want it.");
    if (against.way == Way::ReadBack)
        return HandOverView::tr("Put it right, then read it back again.");
    if (against.way == Way::Answer && against.weighs == job::Weighs::Asks)
        return HandOverView::tr("Say whether it works now, or why it is left.");
    if (against.way == Way::Fit) {
        const auto part = std::ranges::find(job.parts, against.subject, &job::Part::id);
        return part == job.parts.end() ? QString() : words(part->state);
    }
    if (against.weighs == job::Weighs::Tells)
        return HandOverView::tr(
            "Refit it, or write under \"To be told at hand-over\" how it leaves without being ridden.");
    return {};
}

void addRows(std::vector<Line>& lines, const handover::Table& table, const handover::Words& spoken) {
    for (const auto& row : table.rows) {
        QStringList cells;
        for (const auto& cell : row.cells)
            cells << QString::fromStdString(spoken(cell));
        cells.removeAll(QString());
        lines.push_back({.id = QString::number(lines.size()),
                         .title = cells.join(QStringLiteral(", ")),
                         .mark = QStringLiteral("plain")});
    }
}

} // namespace

HandOverView::~HandOverView() {
    cancel();
}

void HandOverView::show(const Snapshot& snapshot) {
    handedOver_ = snapshot.job.handedOver.has_value();
    const auto& signature = snapshot.job.signature;
    signedBy_ =
        signature
            ? tr("signed by %1, %2").arg(text(signature->name), when(signature->said.at, session()->now()))
            : QString();
    said_ = snapshot.job.history.size();
    emit progressed();
    showWarnings(snapshot.job);
    showRecord(snapshot);
}

void HandOverView::showWarnings(const job::Job& job) {
    std::vector<Line> lines;
    const auto warn = [&](const QString& title, const QString& detail, const QString& mark) {
        lines.push_back(
            {.id = QString::number(lines.size()), .title = title, .detail = detail, .mark = mark});
    };
    stopped_ = !job::mayLeave(job);
    asks_.clear();
    tells_ = false;
    // Open proofs stand together: they are ticked on one page.
    std::vector<QString> unproved;
    for (const job::Against& against : job::againstLeaving(job)) {
        const bool stops = against.weighs == job::Weighs::Stops;
        tells_ = tells_ || against.weighs == job::Weighs::Tells;
        if (against.weighs == job::Weighs::Tells || against.weighs == job::Weighs::Asks)
            asks_ += words(against.why);
        if (stops && (against.way == job::Against::Way::Prove || against.way == job::Against::Way::SeeTo)) {
            unproved.push_back(words(against.why));
            continue;
        }
        // What was read and contradicts stands alone, with its own way to see to it.
        const bool wires = against.way == job::Against::Way::ReadWires;
        if (wires || against.way == job::Against::Way::Measure) {
            lines.push_back({.id = text(against.subject),
                             .title = words(against.why),
                             .detail = wires ? tr("Read the wires back, or say why they are left out.")
                                       : against.what == job::code(job::ProofKind::Torque)
                                           ? tr("Tighten it and measure again, or say why it is left out.")
                                       : stops
                                           ? tr("Put it right and measure again, or note it as unsafe and "
                                                "record that the owner does not want it.")
                                           : tr("Put it right and measure again, or note a finding."),
                             .more = wires ? QStringLiteral("ReadBackPage") : QStringLiteral("MeasurePage"),
                             .mark = markOf(against.weighs)});
            continue;
        }
        lines.push_back({.id = QString::number(lines.size()),
                         .title = words(against.why),
                         .detail = whatToDo(job, against),
                         .more = pageOf(against.way),
                         .mark = markOf(against.weighs)});
    }
    if (!unproved.empty()) {
        const auto at = std::ranges::find_if(lines, [](const Line& line) { return line.mark != u"unsafe"; });
        const QStringList all(unproved.begin(), unproved.end());
        lines.insert(
            at, {.id = QStringLiteral("proofs"),
                 .title = unproved.size() == 1
                              ? all.front()
                              : tr("%n not done or not proved", "", static_cast<int>(all.size())),
                 .detail = unproved.size() == 1 ? tr("Do it, or say why it is left out.") : all.join(u'\n'),
                 .more = QStringLiteral("ProofsPage"),
                 .mark = QStringLiteral("unsafe")});
    }
    for (const auto& step : job.steps)
        if (!step.refitted)
            warn(tr("Not refitted: %1").arg(text(step.title)),
                 step.bag.empty() ? QString() : tr("Bag %1 is still closed.").arg(text(step.bag)),
                 QStringLiteral("soon"));
    // Of wires that were left out all the same: the proof itself names the others.
    for (const auto& check : job.wireChecks) {
        const auto* gathering = job::findGathering(job, check.gathering);
        const bool named = std::ranges::any_of(lines, [&](const Line& line) {
            return line.id == text(check.gathering) && line.more == u"ReadBackPage";
        });
        if (check.outcome == job::MatchOutcome::DoesNotMatch && gathering != nullptr && !named)
            lines.push_back({.id = text(gathering->id),
                             .title = tr("Wire does not match: %1, place %2")
                                          .arg(text(gathering->title))
                                          .arg(check.place.number),
                             .detail = text(check.note),
                             .more = QStringLiteral("ReadBackPage"),
                             .mark = QStringLiteral("soon")});
    }
    warnings_.setLines(std::move(lines));
}

void HandOverView::showRecord(const Snapshot& snapshot) {
    const auto document =
        handover::ownersRecord(snapshot.job, snapshot.machine, snapshot.owner, session()->mechanics());
    std::vector<Line> lines;
    const handover::Words spoken = recordWordsIn(languageCode());
    const auto add = [&](const handover::Text& said, const QString& mark) {
        lines.push_back({.id = QString::number(lines.size()),
                         .title = QString::fromStdString(spoken(said)),
                         .mark = mark});
    };
    for (const auto& section : document.sections) {
        add(section.title, QStringLiteral("section"));
        for (const auto& block : section.blocks) {
            if (const auto* paragraph = std::get_if<handover::Paragraph>(&block))
                add(paragraph->text, weightCode(paragraph->weight));
            else if (const auto* table = std::get_if<handover::Table>(&block))
                addRows(lines, *table, spoken);
        }
    }
    record_.setLines(std::move(lines));
}

QStringList HandOverView::languages() {
    return languageNames();
}

QString HandOverView::languageCode() const {
    return language_.isEmpty() ? Catalogue::shown()->code() : language_;
}

int HandOverView::language() const {
    return static_cast<int>(languageCodes().indexOf(languageCode()));
}

void HandOverView::setLanguage(int language) {
    language_ = languageCodes().value(language);
    files_.clear(); // they speak another one
    if (const auto now = snapshot())
        showRecord(*now);
    emit languageChanged();
    emit progressed();
}

int HandOverView::stops() const {
    return static_cast<int>(
        std::ranges::count_if(warnings_.lines(), [](const Line& line) { return line.mark == u"unsafe"; }));
}

void HandOverView::writeFiles() {
    if (writing_ || jobId().empty()) {
        again_ = writing_;
        return;
    }
    writing_ = true;
    again_ = false;
    written_ = said_;
    progress_ = 0;
    files_.clear();
    cancelled_ = std::make_shared<std::atomic_bool>(false);
    emit progressed();
    const QString folder = QString::fromStdString(session()->folder().string()) + QStringLiteral("-records");
    const QPointer self(this);
    platform::offTouch([=, this, store = session()->folder(), job = jobId(), cancelled = cancelled_,
                        language = platform::RecordLanguage{recordWordsIn(languageCode()),
                                                            languageCode().toStdString()}] {
        const auto told = [=, this](double share) {
            platform::toTouch([=, this] {
                if (self != nullptr) {
                    progress_ = share;
                    emit progressed();
                }
            });
            return !cancelled->load();
        };
        QString missing;
        const auto* writer = platform::pluginFor<platform::RecordWriter>(QStringLiteral("records"), missing);
        auto result = writer != nullptr
                          ? writer->write(store, job, folder, language, told)
                          : tl::unexpected(store::Problem{store::Fault::InputOutput, utf8(missing)});
        platform::toTouch([=, this, result = std::move(result)] {
            if (self == nullptr)
                return;
            writing_ = false;
            if (result) {
                folder_ = result->folder;
                files_ = result->names;
            } else if (!cancelled->load()) {
                session()->report(result.error());
            }
            emit progressed();
            if (again_)
                writeFiles();
        });
    });
}

void HandOverView::cancel() {
    if (cancelled_ != nullptr)
        cancelled_->store(true);
}

void HandOverView::handOver(const QString& note, const QString& oldParts, const QString& waste) {
    if (stopped_ || handedOver_ || jobId().empty())
        return;
    setErrors({});
    if (!asks_.isEmpty() && !asking()) {
        asked_ = asks_;
        emit changed();
        return;
    }
    if (tells_ && utf8(note).empty()) {
        setErrors({{QStringLiteral("note"),
                    tr("It must not be ridden: type how it leaves, such as \"fetched with a trailer\".")}});
        return;
    }
    session()->say({journal::jobHandedOver(jobId(), utf8(note), utf8(oldParts), utf8(waste))},
                   {.undoText = tr("Handed over"), .form = {}},
                   [this, self = QPointer(this)](const Entries& said) {
                       if (self == nullptr || !said)
                           return;
                       // What was made before says "not yet".
                       writeFiles();
                       emit done();
                   });
}

} // namespace undercowl::ui
