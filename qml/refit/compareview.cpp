#include "qml/refit/compareview.h"

#include "qml/wiring/gatherings.h"
#include "qml/wiring/words.h"

#include <algorithm>

namespace undercowl::ui {

CompareView::CompareView(QObject* parent) : JobScreen(parent) {
    connect(&reader_, &PhotoReader::swept, this, [this](const std::vector<sight::WireReading>& readings) {
        read_ = readings;
        compareNow();
    });
}

const wiring::Gathering* CompareView::find() const {
    const auto now = snapshot();
    return now == nullptr ? nullptr : job::findGathering(now->job, gatheringId_.toStdString());
}

QString CompareView::half() const {
    return text(wiring::code(half_));
}

void CompareView::setHalf(const QString& code) {
    const auto half = wiring::halfFromCode(code.toStdString());
    if (!half || *half == half_)
        return;
    half_ = *half;
    if (const auto now = snapshot())
        show(*now);
    emit changed();
}

void CompareView::show(const Snapshot& snapshot) {
    before_.clear();
    places_.clear();
    beforePhoto_.clear();
    const auto* known = find();
    if (known == nullptr)
        return;
    for (const wiring::Place* place : wiring::placesOf(*known, half_, wiring::Answer::AsFound)) {
        const auto& answer = *place->answer(wiring::Answer::AsFound);
        if (!answer.mark || (!beforePhoto_.empty() && answer.mark->photo != beforePhoto_))
            continue; // where it was seen is needed to compare the gaps
        const auto* photo = job::findPhoto(snapshot.job, answer.mark->photo);
        if (photo == nullptr)
            continue;
        beforePhoto_ = photo->id;
        sight::WireReading reading;
        reading.candidates = {{answer.wire.colour, 1.0}};
        reading.sure = true;
        reading.at = {answer.mark->x * photo->width, answer.mark->y * photo->height};
        before_.push_back(std::move(reading));
        places_.push_back(place->key.number);
    }
    const auto* before = job::findPhoto(snapshot.job, beforePhoto_);
    std::vector<Line> afters;
    for (auto photo = snapshot.job.photos.rbegin(); photo != snapshot.job.photos.rend(); ++photo) {
        const bool ours = photo->about == known->id || (!known->step.empty() && photo->about == known->step);
        // One of the strip shows how it was, and the same picture may stand in the job twice: compared with
        // itself it would always be the same.
        const bool earlier = photo->purpose == job::PhotoPurpose::Strip ||
                             (before != nullptr && photo->media == before->media);
        if (!ours || earlier)
            continue;
        afters.push_back({.id = text(photo->id),
                          .title = photo->note.empty() ? words(photo->purpose) : text(photo->note),
                          .aside = when(photo->said.at, session()->now()),
                          .picture = session()->mediaUrl(text(photo->media)),
                          .on = text(photo->id) == after_});
    }
    const bool stillThere =
        std::ranges::any_of(afters, [this](const Line& line) { return line.id == after_; });
    if (!stillThere)
        after_ = afters.empty() ? QString() : afters.front().id;
    for (Line& line : afters)
        line.on = line.id == after_;
    afters_.setLines(std::move(afters));
    reader_.setFile(after().toLocalFile());
    // What was compared before the map changed no longer holds.
    if (comparison_)
        comparison_ = sight::compare(before_, read_);
}

QString CompareView::hint() const {
    if (!possible())
        return tr("Confirm the wires on the photo before first: there is nothing yet to compare with.");
    if (after_.isEmpty())
        return tr("Take a photo of the wires as they are now, from about the same side.");
    return {};
}

QUrl CompareView::before() const {
    const auto now = snapshot();
    const auto* photo = now == nullptr ? nullptr : job::findPhoto(now->job, beforePhoto_);
    return photo == nullptr ? QUrl() : session()->mediaUrl(text(photo->media));
}

QUrl CompareView::after() const {
    const auto now = snapshot();
    const auto* photo = now == nullptr ? nullptr : job::findPhoto(now->job, after_.toStdString());
    return photo == nullptr ? QUrl() : session()->mediaUrl(text(photo->media));
}

void CompareView::chooseAfter(const QString& photo) {
    after_ = photo;
    again();
    if (const auto now = snapshot())
        show(*now);
    emit changed();
}

void CompareView::stroke(const QVariantList& points) {
    QList<QPointF> along;
    for (const QVariant& point : points)
        along.append(point.toPointF());
    firstTap_.reset();
    comparison_.reset();
    emit changed();
    reader_.sweep(along);
}

void CompareView::tap(qreal x, qreal y) {
    if (firstTap_) {
        stroke({*firstTap_, QPointF(x, y)});
        return;
    }
    comparison_.reset();
    firstTap_ = QPointF(x, y);
    emit changed();
}

void CompareView::reverse() {
    std::reverse(read_.begin(), read_.end());
    compareNow();
}

void CompareView::again() {
    read_.clear();
    comparison_.reset();
    firstTap_.reset();
    emit changed();
}

void CompareView::compareNow() {
    if (possible())
        comparison_ = sight::compare(before_, read_);
    emit changed();
}

int CompareView::placeAt(std::size_t row) const {
    return row < places_.size() ? places_[row] : static_cast<int>(row) + 1;
}

QString CompareView::verdict() const {
    return comparison_ ? text(sight::code(comparison_->verdict)) : QString();
}

QString CompareView::result() const {
    if (!comparison_)
        return {};
    if (comparison_->verdict == sight::CompareVerdict::Same)
        return tr("The same: no wire has changed its place.");
    if (comparison_->verdict == sight::CompareVerdict::CannotTell)
        return tr("Cannot tell. Read the wires back one by one.");
    QStringList all;
    for (const sight::Change& change : comparison_->changes) {
        QStringList numbers;
        for (const int row : change.places)
            numbers += QString::number(
                change.kind == sight::ChangeKind::Extra ? row : placeAt(static_cast<std::size_t>(row) - 1));
        const QString places = listed(numbers);
        switch (change.kind) {
        case sight::ChangeKind::Swapped: all += tr("Changed: places %1 swapped.").arg(places); break;
        case sight::ChangeKind::Missing:
            all += tr("The wire of place %1 was not found: it is missing, or was not read.").arg(places);
            break;
        case sight::ChangeKind::Extra:
            all += tr("Changed: a wire more, number %1 of this stroke.").arg(places);
            break;
        case sight::ChangeKind::Different: all += tr("Changed: another wire in place %1.").arg(places); break;
        }
    }
    return all.join(u'\n');
}

QString CompareView::reasons() const {
    if (!comparison_ || comparison_->verdict == sight::CompareVerdict::Same)
        return {};
    QStringList all;
    if (read_.size() != before_.size())
        all += tr("%1 wires were read, %2 are in the map: stroke across all of them, and only them")
                   .arg(read_.size())
                   .arg(before_.size());
    if (comparison_->verdict == sight::CompareVerdict::Changed)
        return all.join(QString());
    for (const sight::WireReading& reading : read_)
        for (const sight::Doubt doubt : reading.doubts)
            if (const QString reason = words(doubt); !all.contains(reason))
                all += reason;
    return all.join(QStringLiteral("; "));
}

QVariantList CompareView::marks(const std::vector<sight::WireReading>& row, bool isBefore) const {
    QVariantList list;
    const auto now = snapshot();
    const auto* photo =
        now == nullptr ? nullptr : job::findPhoto(now->job, isBefore ? beforePhoto_ : after_.toStdString());
    if (!comparison_ || photo == nullptr || photo->width <= 0 || photo->height <= 0)
        return list;
    // A missing wire is marked where it was, an extra one where it is.
    const auto elsewhere = isBefore ? sight::ChangeKind::Extra : sight::ChangeKind::Missing;
    std::vector<std::size_t> wanted;
    for (const sight::Change& change : comparison_->changes)
        for (const int place : change.places)
            if (change.kind != elsewhere)
                wanted.push_back(static_cast<std::size_t>(place) - 1);
    for (std::size_t i = 0; i < row.size(); ++i) {
        if (comparison_->verdict == sight::CompareVerdict::Changed &&
            std::ranges::find(wanted, i) == wanted.end())
            continue;
        list.append(
            QVariantMap{{QStringLiteral("x"), row[i].at.x / photo->width},
                        {QStringLiteral("y"), row[i].at.y / photo->height},
                        {QStringLiteral("label"), QString::number(isBefore ? placeAt(i) : int(i) + 1)}});
    }
    list.append(expected(isBefore));
    return list;
}

QVariantList CompareView::marksBefore() const {
    return marks(before_, true);
}

QVariantList CompareView::marksAfter() const {
    const auto now = snapshot();
    if (firstTap_ && now != nullptr)
        return {QVariantMap{{QStringLiteral("x"), firstTap_->x()},
                            {QStringLiteral("y"), firstTap_->y()},
                            {QStringLiteral("label"), QStringLiteral("1")}}};
    return marks(read_, false);
}

} // namespace undercowl::ui
