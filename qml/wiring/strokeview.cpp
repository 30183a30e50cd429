#include "qml/wiring/strokeview.h"

#include "qml/wiring/gatherings.h"
#include "qml/wiring/words.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>
#include <utility>

namespace undercowl::ui {

namespace {

constexpr int shapeVersion = 1;
constexpr std::size_t mostChoices = 2;

} // namespace

StrokeView::StrokeView(QObject* parent) : JobScreen(parent) {
    connect(&reader_, &PhotoReader::swept, this, &StrokeView::swept);
    connect(&reader_, &PhotoReader::tapped, this, &StrokeView::answered);
    connect(&reader_, &PhotoReader::proposed, this, [this](const sight::Proposal& proposal) {
        proposal_ = proposal;
        accepted_.assign(proposal.wires.size(), false);
        emit currentChanged();
    });
    connect(&reader_, &PhotoReader::stateChanged, this, [this] {
        if (reader_.state() == PhotoReader::State::Ready && !std::exchange(fed_, true))
            photoOpened();
        if (reader_.state() == PhotoReader::State::Opening)
            fed_ = false;
    });
}

const wiring::Gathering* StrokeView::gathering() const {
    const auto now = snapshot();
    return now == nullptr ? nullptr : job::findGathering(now->job, gatheringId_.toStdString());
}

QString StrokeView::half() const {
    return text(wiring::code(half_));
}

void StrokeView::setHalf(const QString& code) {
    const auto half = wiring::halfFromCode(code.toStdString());
    if (!half || *half == half_)
        return;
    half_ = *half;
    if (begun_)
        begin();
    emit changed();
}

QString StrokeView::title() const {
    const auto* known = gathering();
    return known == nullptr ? QString() : text(known->title);
}

std::string StrokeView::photoId() const {
    const auto now = snapshot();
    const auto* known = gathering();
    const auto* photo = known == nullptr ? nullptr : photoOf(now->job, *known);
    return photo == nullptr ? std::string{} : photo->id;
}

QUrl StrokeView::photo() const {
    const auto now = snapshot();
    const auto* known = gathering();
    const auto* photo = known == nullptr ? nullptr : photoOf(now->job, *known);
    return photo == nullptr ? QUrl() : session()->mediaUrl(text(photo->media));
}

QString StrokeView::form() const {
    return QStringLiteral("stroke/%1/%2").arg(gatheringId_, half());
}

void StrokeView::show(const Snapshot& /*snapshot*/) {
    if (gathering() == nullptr)
        return;
    reader_.setFile(photo().toLocalFile());
    if (!begun_) {
        begun_ = true;
        begin();
    } else if (underway_ == 0) {
        reconcile();
    }
}

void StrokeView::begin() {
    rows_.setHalf(half_);
    rows_.reset({});
    previous_.clear();
    said_.clear();
    firstTap_.reset();
    proposal_.reset();
    current_ = named_ = -1;
    emit currentChanged();
    session()->restoreDraft(this, form(), [this, asked = form()](const QByteArray& draft) {
        if (asked == form() && rows_.count() == 0)
            restore(draft);
    });
}

void StrokeView::restore(const QByteArray& draft) {
    const auto object = QJsonDocument::fromJson(draft).object();
    std::vector<WireRow> rows;
    if (object[u"version"].toInt() == shapeVersion && object[u"photo"].toString() == text(photoId()))
        rows = rowsFromJson(QJsonDocument(object[u"rows"].toArray()).toJson(QJsonDocument::Compact));
    if (rows.empty())
        rows = rowsFromJournal();
    for (const WireRow& row : rows)
        if (row.said && row.settled())
            said_[*row.said] = row.empty ? std::nullopt : row.confirmed;
    rows_.setStart(std::max(1, object[u"start"].toInt(1)));
    rows_.reset(std::move(rows));
    reconcile();
    current_ = rows_.count() == 0 ? -1 : std::max(0, rows_.nextOpen(0));
    fed_ = reader_.state() == PhotoReader::State::Ready;
    if (fed_)
        photoOpened();
    emit currentChanged();
}

std::vector<WireRow> StrokeView::rowsFromJournal() const {
    std::vector<WireRow> rows;
    const auto* known = gathering();
    if (known == nullptr)
        return rows;
    int number = 1;
    for (const wiring::Place& held : known->held) {
        const wiring::Place* place = &held;
        const bool empty = place->saidEmpty(wiring::Answer::AsFound);
        if (place->key.half != half_ || (!empty && !place->answer(wiring::Answer::AsFound)))
            continue;
        for (; number < place->key.number; ++number)
            rows.emplace_back(); // nothing is known of it yet
        WireRow row;
        row.confirmed = place->answer(wiring::Answer::AsFound);
        row.empty = empty;
        if (row.confirmed)
            row.confirmed->entry.clear(); // see strokerows.cpp
        row.said = place->key;
        row.sharesPlace = place->key.slot > 1;
        if (row.confirmed && row.confirmed->mark && row.confirmed->mark->photo == photoId())
            row.at = QPointF(row.confirmed->mark->x, row.confirmed->mark->y);
        rows.push_back(std::move(row));
        number = place->key.number + 1;
    }
    return rows;
}

void StrokeView::keep() {
    const auto at = session()->now();
    const QJsonObject object{{QStringLiteral("version"), shapeVersion},
                             {QStringLiteral("photo"), text(photoId())},
                             {QStringLiteral("start"), rows_.start()},
                             {QStringLiteral("rows"), QJsonDocument::fromJson(toJson(rows_.rows())).array()}};
    if (rows_.openCount() == 0)
        session()->dropDraft(form()); // all of it is in the journal
    else
        session()->keepDraft({form(), tr("Wires of %1").arg(title()), jobId(), at},
                             QJsonDocument(object).toJson(QJsonDocument::Compact));
}

void StrokeView::changedRows() {
    keep();
    emit currentChanged();
}

void StrokeView::setCurrent(int row) {
    if (row == current_ || (row != -1 && !rows_.holds(row)))
        return;
    current_ = row;
    named_ = -1;
    emit currentChanged();
}

void StrokeView::goOn() {
    named_ = -1;
    const int next = rows_.nextOpen(current_ < 0 ? 0 : current_);
    current_ = next >= 0 ? next : std::min(current_, rows_.count() - 1);
}

QVariantMap StrokeView::wire() const {
    if (!rows_.holds(current_))
        return {};
    const auto at = static_cast<std::size_t>(current_);
    const WireRow& row = rows_.rows()[at];
    const QModelIndex index = rows_.index(current_);
    QVariantList choices;
    for (std::size_t i = 1; i < row.candidates.size() && i <= mostChoices && !row.settled(); ++i) {
        const auto& wire = row.candidates[i].wire;
        choices.append(QVariantMap{{QStringLiteral("base"), baseCode(wire)},
                                   {QStringLiteral("tracer"), tracerCode(wire)},
                                   {QStringLiteral("words"), words(wire)}});
    }
    const auto role = [&](WireRows::Role which) { return rows_.data(index, which); };
    return {{QStringLiteral("place"), role(WireRows::PlaceRole)},
            {QStringLiteral("base"), role(WireRows::BaseRole)},
            {QStringLiteral("tracer"), role(WireRows::TracerRole)},
            {QStringLiteral("words"), role(WireRows::WordsRole)},
            {QStringLiteral("sureness"), role(WireRows::SurenessRole)},
            {QStringLiteral("reason"), role(WireRows::ReasonRole)},
            {QStringLiteral("sure"), role(WireRows::SureRole)},
            {QStringLiteral("found"), role(WireRows::FoundRole)},
            {QStringLiteral("confirmed"), role(WireRows::ConfirmedRole)},
            {QStringLiteral("empty"), role(WireRows::EmptyRole)},
            {QStringLiteral("shares"), rows_.keys()[at].slot > 1},
            {QStringLiteral("choices"), choices}};
}

QVariantList StrokeView::marks() const {
    const auto mark = [](QPointF at, const QString& label) {
        return QVariantMap{
            {QStringLiteral("x"), at.x()}, {QStringLiteral("y"), at.y()}, {QStringLiteral("label"), label}};
    };
    QVariantList list;
    if (proposal_) {
        for (const sight::Point& place : proposal_->unfollowed)
            list.append(mark(reader_.relative(place), QStringLiteral("?")));
        return list;
    }
    if (firstTap_)
        return {mark(*firstTap_, QString::number(rows_.start()))};
    for (int row : {0, current_}) {
        if (!rows_.holds(row) || (row == 0 && current_ == 0 && !list.isEmpty()))
            continue;
        const auto at = static_cast<std::size_t>(row);
        if (rows_.rows()[at].at)
            list.append(mark(*rows_.rows()[at].at, QString::number(rows_.keys()[at].number)));
    }
    return list;
}

QString StrokeView::note() const {
    const auto* known = gathering();
    if (known == nullptr || rows_.count() == 0)
        return {};
    const int wanted = known->rows > 1 ? 0 : known->places;
    if (wanted == 0 || rows_.places() == wanted)
        return {};
    return rows_.places() < wanted
               ? tr("%1 places read, %2 places in all: add those that are missing or empty")
                     .arg(rows_.places())
                     .arg(wanted)
               : tr("%1 places read, only %2 in all: take out what is no wire of it")
                     .arg(rows_.places())
                     .arg(wanted);
}

} // namespace undercowl::ui
