#include "qml/wiring/gatherings.h"

#include "core/job/wires.h"

#include "qml/shell/session.h"
#include "qml/wiring/words.h"

#include <QCoreApplication>

#include <algorithm>

namespace undercowl::ui {

namespace {

struct Wiring {
    Q_DECLARE_TR_FUNCTIONS(Wiring)
};

} // namespace

const job::Photo* photoOf(const job::Job& job, const wiring::Gathering& gathering) {
    if (const auto* photo = job::findPhoto(job, gathering.photo))
        return photo;
    for (const std::string& about : {gathering.id, gathering.step}) {
        if (about.empty())
            continue;
        // A photo of the refit shows how it was put back, not how it was found.
        const auto photos = job::photosAbout(job, about);
        const auto found = std::find_if(photos.rbegin(), photos.rend(), [](const job::Photo* photo) {
            return photo->purpose != job::PhotoPurpose::Refit;
        });
        if (found != photos.rend())
            return *found;
    }
    return nullptr;
}

QString listed(const QStringList& items) {
    if (items.size() < 2)
        return items.value(0);
    return Wiring::tr("%1 and %2")
        .arg(items.mid(0, items.size() - 1).join(QStringLiteral(", ")), items.back());
}

QString adviceOn(const wiring::TwinGroup& group) {
    QStringList numbers;
    QStringList terminals;
    QStringList tags;
    for (const wiring::Place* place : group.places) {
        numbers += QString::number(place->key.number);
        terminals += words(place->answer(wiring::Answer::AsFound)->wire.terminal);
        tags += place->tag.empty() ? Wiring::tr("no tag") : Wiring::tr("tag %1").arg(text(place->tag));
    }
    const QString head = Wiring::tr("%1 × %2: places %3.")
                             .arg(QString::number(group.places.size()), words(group.colour), listed(numbers));
    if (group.apartByTag)
        return head + u' ' + Wiring::tr("Told apart by %1.").arg(listed(tags));
    if (group.apartByTerminal)
        return head + u' ' +
               Wiring::tr("Tag them, or tell them apart by terminal: %1.").arg(listed(terminals));
    return head + u' ' + Wiring::tr("Tag them before they are unplugged.");
}

QString adviceOn(const wiring::TagPlan& plan) {
    QStringList all;
    for (const auto& [one, other] : plan.alike)
        all += Wiring::tr("To you places %1 and %2 look alike: %3 and %4.")
                   .arg(one->key.number)
                   .arg(other->key.number)
                   .arg(words(one->answer(wiring::Answer::AsFound)->wire.colour),
                        words(other->answer(wiring::Answer::AsFound)->wire.colour));
    QStringList numbers;
    for (const wiring::Place* place : plan.toTag)
        numbers += QString::number(place->key.number);
    if (!all.isEmpty() && !numbers.isEmpty())
        all += Wiring::tr("With tags at %1 every wire can be told apart.").arg(listed(numbers));
    return all.join(u' ');
}

colour::Vision visionIn(const ShopSession& session) {
    const QString kind = session.setting(QStringLiteral("vision"));
    const bool slight = session.setting(QStringLiteral("vision-degree")) == u"slight";
    return {kind == u"red"     ? colour::Deficiency::Protan
            : kind == u"green" ? colour::Deficiency::Deutan
            : kind == u"blue"  ? colour::Deficiency::Tritan
                               : colour::Deficiency::None,
            slight ? 0.5 : 1.0};
}

QString describe(const wiring::Gathering& gathering) {
    QStringList parts{words(gathering.kind),
                      Wiring::tr("%n places", nullptr, gathering.places).replace(u' ', QChar(QChar::Nbsp))};
    if (gathering.kind == wiring::GatheringKind::Connector)
        parts += Wiring::tr("seen from the %1").arg(words(gathering.seenFrom));
    if (!gathering.latch.empty())
        parts += Wiring::tr("latch %1").arg(text(gathering.latch));
    return parts.join(QStringLiteral(", "));
}

QString wiresLeftWords(const job::Job& job, const wiring::Gathering& gathering) {
    QStringList all;
    for (const job::Message& each : job::wiresAgainst(job::wiresLeft(job, gathering)))
        all += words(each);
    return all.join(QStringLiteral("; "));
}

QString progressOf(const wiring::Gathering& gathering) {
    std::size_t found = 0;
    for (const auto half : {wiring::Half::Loom, wiring::Half::Unit})
        found = std::max(found, wiring::placesOf(gathering, half, wiring::Answer::AsFound).size());
    if (found == 0)
        return Wiring::tr("no wire confirmed yet");
    return Wiring::tr("%1 wires confirmed, %2 places").arg(found).arg(gathering.places);
}

} // namespace undercowl::ui
