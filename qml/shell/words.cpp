#include "qml/shell/words.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>

namespace undercowl::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Words)
};

} // namespace

std::string utf8(const QString& text) {
    return text.trimmed().toStdString();
}

QString words(const job::Message& message) {
    const std::string pattern(job::englishPattern(message.key));
    return filled(Catalogue::shown()->translated("Core", pattern.c_str()), message.values);
}

QString filled(const QString& pattern, const std::vector<std::string>& values, const Catalogue& in) {
    // Not QString::arg: a value that holds "%2" must stay as it was typed.
    QString result;
    for (qsizetype i = 0; i < pattern.size(); ++i) {
        const int place = i + 1 < pattern.size() && pattern[i] == u'%' ? pattern[i + 1].digitValue() : -1;
        if (place < 1) {
            result += pattern[i];
            continue;
        }
        ++i;
        if (static_cast<std::size_t>(place) <= values.size())
            result += knownWords(values[static_cast<std::size_t>(place) - 1], in);
    }
    return result;
}

QString words(const store::Problem& problem) {
    const QString detail = coreWords(problem.message);
    switch (problem.fault) {
    case store::Fault::DiskFull:
        return Words::tr(
            "Not saved: the disk is full. Make room, then try again; what you entered is still here.");
    case store::Fault::InputOutput:
        return Words::tr(
                   "Not saved: the system refused to write. What you entered is still here; try again.") +
               u'\n' + detail;
    case store::Fault::CannotOpen: return Words::tr("The shop's store cannot be opened.") + u'\n' + detail;
    case store::Fault::Damaged:
        return Words::tr(
                   "The shop's store is damaged. Nothing was deleted; keep a copy of it before anything "
                   "else.") +
               u'\n' + detail;
    case store::Fault::TooNew:
        return Words::tr("The shop's store was written by a newer version. Bring this app up to date.") +
               u'\n' + detail;
    case store::Fault::Refused: return Words::tr("Not saved.") + u' ' + detail;
    case store::Fault::NotFound: return detail;
    }
    return detail;
}

QString words(job::Severity severity) {
    switch (severity) {
    case job::Severity::Unsafe: return Words::tr("unsafe");
    case job::Severity::Soon: return Words::tr("soon");
    case job::Severity::Note: return Words::tr("note");
    }
    return {};
}

QString words(job::PartState state) {
    switch (state) {
    case job::PartState::Wanted: return Words::tr("wanted");
    case job::PartState::Asked: return Words::tr("asked for");
    case job::PartState::Ordered: return Words::tr("on order");
    case job::PartState::Here: return Words::tr("here");
    case job::PartState::Wrong: return Words::tr("wrong one");
    case job::PartState::Fitted: return Words::tr("fitted");
    case job::PartState::NotNeeded: return Words::tr("not needed");
    }
    return {};
}

QString words(job::Waits waits) {
    switch (waits) {
    case job::Waits::Bench: return Words::tr("For bench time");
    case job::Waits::Prove: return Words::tr("To be proved");
    case job::Waits::HandOver: return Words::tr("Ready to hand over");
    case job::Waits::Owner: return Words::tr("For the owner's answer");
    case job::Waits::Parts: return Words::tr("For parts");
    case job::Waits::Outside: return Words::tr("For something else");
    case job::Waits::Nothing: return Words::tr("Handed over");
    }
    return {};
}

QString words(job::PhotoPurpose purpose) {
    switch (purpose) {
    case job::PhotoPurpose::AsFound: return Words::tr("as found");
    case job::PhotoPurpose::Finding: return Words::tr("finding");
    case job::PhotoPurpose::Strip: return Words::tr("strip step");
    case job::PhotoPurpose::Wiring: return Words::tr("wiring");
    case job::PhotoPurpose::Refit: return Words::tr("refitted");
    case job::PhotoPurpose::Other: return Words::tr("photo");
    }
    return {};
}

QString machineName(const job::Machine& machine) {
    QString name = (text(machine.make) + u' ' + text(machine.model)).trimmed();
    if (name.isEmpty())
        return Words::tr("Machine not described yet");
    if (machine.year)
        name += QStringLiteral(", %1").arg(*machine.year);
    return name;
}

QString minuteWords(int minutes) {
    constexpr int perHour = 60;
    return minutes < perHour ? Words::tr("%1 min").arg(minutes)
                             : Words::tr("%1 h %2 min").arg(minutes / perHour).arg(minutes % perHour);
}

std::optional<int> wholeMinutes(const QString& typed) {
    constexpr int longest = 100'000;
    bool number = false;
    const int minutes = typed.trimmed().toInt(&number);
    return number && minutes >= 0 && minutes <= longest ? std::optional(minutes) : std::nullopt;
}

units::Date dayOf(job::TimeMs at) {
    const QDate date = QDateTime::fromMSecsSinceEpoch(at).date();
    return units::Date{std::chrono::year{date.year()}, std::chrono::month{unsigned(date.month())},
                       std::chrono::day{unsigned(date.day())}};
}

QString dateWords(units::Date day) {
    return QLocale().toString(QDate(static_cast<int>(day.year()),
                                    static_cast<int>(static_cast<unsigned>(day.month())),
                                    static_cast<int>(static_cast<unsigned>(day.day()))),
                              QStringLiteral("d MMM yyyy"));
}

QString dateWords(const std::string& typed) {
    const auto day = units::parseDate(typed);
    return day ? dateWords(*day) : text(typed);
}

QString when(job::TimeMs at, job::TimeMs now) {
    if (at <= 0)
        return {};
    const QDateTime then = QDateTime::fromMSecsSinceEpoch(at);
    const QDate today = QDateTime::fromMSecsSinceEpoch(now).date();
    const QLocale locale;
    const QString clock = then.time().toString(QStringLiteral("HH:mm"));
    const qint64 days = then.date().daysTo(today);
    if (days <= 0)
        return clock;
    if (days == 1)
        return Words::tr("yesterday %1").arg(clock);
    const QString date = then.date().year() == today.year()
                             ? locale.toString(then.date(), QStringLiteral("d MMM"))
                             : locale.toString(then.date(), QStringLiteral("d MMM yyyy"));
    if (days < 14)
        return Words::tr("%1, %2 days ago").arg(date).arg(days);
    if (days < 60)
        return Words::tr("%1, %2 weeks ago").arg(date).arg(days / 7);
    return Words::tr("%1, %2 months ago").arg(date).arg(days / 30);
}

} // namespace undercowl::ui
