// Rows as JSON: only ever read back by this program on this device, from a draft.
#include "qml/wiring/wirerows.h"
#include "qml/wiring/words.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace undercowl::ui {

namespace {

QJsonArray toJson(QPointF point) {
    return {point.x(), point.y()};
}

QPointF pointFrom(const QJsonValue& json) {
    const QJsonArray pair = json.toArray();
    return {pair.at(0).toDouble(), pair.at(1).toDouble()};
}

QString codeOf(const colour::WireColour& wire) {
    return QString::fromStdString(colour::code(wire));
}

std::optional<colour::WireColour> colourFrom(const QJsonValue& json) {
    return colour::wireColourFromCode(json.toString().toStdString());
}

// Only what a row needs to be shown and said again; the details are the journal's.
QJsonObject toJson(const wiring::PlaceAnswer& answer) {
    return {{"wire", codeOf(answer.wire.colour)},
            {"how", text(wiring::code(answer.how))},
            {"probability", answer.probability}};
}

std::optional<wiring::PlaceAnswer> answerFrom(const QJsonObject& json) {
    const auto wire = colourFrom(json["wire"]);
    const auto how = wiring::howKnownFromCode(json["how"].toString().toStdString());
    if (!wire || !how) {
        return std::nullopt;
    }
    wiring::PlaceAnswer answer;
    answer.wire.colour = *wire;
    answer.how = *how;
    answer.probability = json["probability"].toDouble();
    return answer;
}

QJsonObject toJson(const WireRow& row) {
    QJsonArray candidates;
    for (const Proposed& one : row.candidates) {
        candidates += QJsonArray{codeOf(one.wire), one.probability};
    }
    QJsonArray doubts;
    for (const sight::Doubt doubt : row.doubts) {
        doubts += static_cast<int>(doubt);
    }
    QJsonArray path;
    for (const QPointF& point : row.path) {
        path += toJson(point);
    }
    QJsonObject json{
        {"candidates", candidates}, {"sure", row.sure},          {"doubts", doubts},    {"path", path},
        {"empty", row.empty},       {"shares", row.sharesPlace}, {"across", row.across}};
    if (row.at) {
        json["at"] = toJson(*row.at);
    }
    if (row.confirmed) {
        json["confirmed"] = toJson(*row.confirmed);
    }
    if (row.said) {
        json["said"] = QJsonArray{text(wiring::code(row.said->half)), row.said->number, row.said->slot};
    }
    return json;
}

WireRow rowFrom(const QJsonObject& json) {
    WireRow row;
    for (const QJsonValue one : json["candidates"].toArray()) {
        if (const auto wire = colourFrom(one.toArray().at(0))) {
            row.candidates.push_back({*wire, one.toArray().at(1).toDouble()});
        }
    }
    row.sure = json["sure"].toBool();
    for (const QJsonValue one : json["doubts"].toArray()) {
        if (const int doubt = one.toInt(-1);
            doubt >= 0 && doubt <= static_cast<int>(sight::Doubt::BesideWire)) {
            row.doubts.push_back(static_cast<sight::Doubt>(doubt));
        }
    }
    for (const QJsonValue one : json["path"].toArray()) {
        row.path.push_back(pointFrom(one));
    }
    row.across = json["across"].toDouble();
    row.empty = json["empty"].toBool();
    row.sharesPlace = json["shares"].toBool();
    if (json.contains("at")) {
        row.at = pointFrom(json["at"]);
    }
    row.confirmed = answerFrom(json["confirmed"].toObject());
    const QJsonArray said = json["said"].toArray();
    if (const auto half = wiring::halfFromCode(said.at(0).toString().toStdString())) {
        row.said = wiring::PlaceKey{*half, said.at(1).toInt(), said.at(2).toInt()};
    }
    return row;
}

} // namespace

QByteArray toJson(const std::vector<WireRow>& rows) {
    QJsonArray list;
    for (const WireRow& row : rows) {
        list += toJson(row);
    }
    return QJsonDocument(list).toJson(QJsonDocument::Compact);
}

std::vector<WireRow> rowsFromJson(const QByteArray& json) {
    std::vector<WireRow> rows;
    for (const QJsonValue one : QJsonDocument::fromJson(json).array()) {
        rows.push_back(rowFrom(one.toObject()));
    }
    return rows;
}

} // namespace undercowl::ui
