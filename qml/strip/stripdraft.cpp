#include "qml/strip/stripdraft.h"

#include "core/job/cautions.h"
#include "qml/wiring/words.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>

namespace undercowl::ui {

namespace {

struct Strip {
    Q_DECLARE_TR_FUNCTIONS(Strip)
};

QJsonArray toJson(const std::vector<std::string>& list) {
    QJsonArray json;
    for (const std::string& one : list) {
        json += text(one);
    }
    return json;
}

std::vector<std::string> stringsFrom(const QJsonValue& json) {
    std::vector<std::string> list;
    for (const QJsonValue one : json.toArray()) {
        list.push_back(one.toString().toStdString());
    }
    return list;
}

QJsonObject toJson(const job::Hardware& hardware) {
    QJsonObject json{{"count", hardware.count},
                     {"what", text(hardware.what)},
                     {"thread", text(hardware.thread)},
                     {"length", text(hardware.length)}};
    QJsonArray at;
    for (const wiring::PhotoMark& mark : hardware.at) {
        at += QJsonObject{{"photo", text(mark.photo)}, {"x", mark.x}, {"y", mark.y}};
    }
    if (!at.isEmpty()) {
        json["at"] = at;
    }
    if (hardware.torque) {
        json["torque"] = QJsonArray{text(hardware.torque->digits), text(hardware.torque->unit)};
    }
    return json;
}

job::Hardware hardwareFrom(const QJsonObject& json) {
    job::Hardware hardware;
    hardware.count = std::max(1, json["count"].toInt(1));
    hardware.what = json["what"].toString().toStdString();
    hardware.thread = json["thread"].toString().toStdString();
    hardware.length = json["length"].toString().toStdString();
    if (const QJsonArray torque = json["torque"].toArray(); torque.size() == 2) {
        hardware.torque = {torque.at(0).toString().toStdString(), torque.at(1).toString().toStdString()};
    }
    for (const QJsonValue one : json["at"].toArray()) {
        const QJsonObject mark = one.toObject();
        hardware.at.push_back(
            {mark["photo"].toString().toStdString(), mark["x"].toDouble(), mark["y"].toDouble()});
    }
    return hardware;
}

} // namespace

QByteArray toJson(const StripDraft& draft) {
    QJsonArray hardware;
    for (const job::Hardware& one : draft.step.hardware) {
        hardware += toJson(one);
    }
    const QJsonObject json{{"step", text(draft.step.id)},
                           {"corrects", text(draft.step.said.entry)},
                           {"task", text(draft.step.task)},
                           {"newTask", text(draft.newTask)},
                           {"title", text(draft.step.title)},
                           {"hardware", hardware},
                           {"bag", text(draft.step.bag)},
                           {"note", text(draft.step.note)},
                           {"routing", text(draft.step.routing)},
                           {"letOut", text(draft.step.letOut)},
                           {"asFound", text(draft.step.asFound)},
                           {"ends", text(draft.step.ends)},
                           {"cautions", toJson(draft.addedCautions)}};
    return QJsonDocument(json).toJson(QJsonDocument::Compact);
}

StripDraft stripDraftFromJson(const QByteArray& bytes) {
    const QJsonObject json = QJsonDocument::fromJson(bytes).object();
    const auto field = [&json](const char* name) {
        return json[QLatin1String(name)].toString().toStdString();
    };
    StripDraft draft;
    draft.step.id = field("step");
    draft.step.said.entry = field("corrects");
    draft.step.task = field("task");
    draft.newTask = field("newTask");
    draft.step.title = field("title");
    for (const QJsonValue one : json["hardware"].toArray()) {
        draft.step.hardware.push_back(hardwareFrom(one.toObject()));
    }
    draft.step.bag = field("bag");
    draft.step.note = field("note");
    draft.step.routing = field("routing");
    draft.step.letOut = field("letOut");
    draft.step.asFound = field("asFound");
    draft.step.ends = field("ends");
    draft.addedCautions = stringsFrom(json["cautions"]);
    return draft;
}

std::vector<std::string> cautionsOf(const StripDraft& draft) {
    std::vector<std::string> keys = job::cautionsFor(draft.step.title);
    for (const std::string& added : draft.addedCautions) {
        if (std::ranges::find(keys, added) == keys.end()) {
            keys.push_back(added);
        }
    }
    return keys;
}

QString hardwareText(const job::Hardware& hardware) {
    QStringList measures;
    for (const std::string& one : {hardware.thread, hardware.length}) {
        if (!one.empty()) {
            measures += text(one).replace(QLatin1Char(' '), QChar(QChar::Nbsp));
        }
    }
    QString all = hardware.count > 1 ? Strip::tr("%1 × %2").arg(hardware.count).arg(text(hardware.what))
                                     : text(hardware.what);
    if (!measures.isEmpty()) {
        all += QLatin1Char(' ') + measures.join(QStringLiteral("\u00a0×\u00a0"));
    }
    return all;
}

QStringList notesOf(const job::StripStep& step) {
    QStringList notes;
    if (!step.routing.empty())
        notes += Strip::tr("Routing: %1").arg(text(step.routing));
    if (!step.ends.empty())
        notes += Strip::tr("Ends: %1").arg(text(step.ends));
    if (!step.asFound.empty())
        notes += Strip::tr("As found: %1").arg(text(step.asFound));
    if (!step.letOut.empty())
        notes += Strip::tr("Let out: %1").arg(text(step.letOut));
    return notes;
}

const job::Photo* clearestPhoto(const job::RefitStep& step) {
    const job::Photo* best = nullptr;
    qsizetype most = 0;
    for (const job::Photo* photo : step.photos)
        if (const auto marks = marksOn(*step.strip, photo->id).size(); best == nullptr || marks >= most) {
            best = photo;
            most = marks;
        }
    return best;
}

QVariantList marksOn(const job::StripStep& step, std::string_view photo) {
    QVariantList marks;
    for (std::size_t piece = 0; piece < step.hardware.size(); ++piece) {
        for (const wiring::PhotoMark& mark : step.hardware[piece].at) {
            if (mark.photo == photo) {
                marks += QVariantMap{{QStringLiteral("x"), mark.x},
                                     {QStringLiteral("y"), mark.y},
                                     {QStringLiteral("label"), QString::number(piece + 1)}};
            }
        }
    }
    return marks;
}

QString hardwareText(const job::StripStep& step) {
    QStringList all;
    for (const job::Hardware& one : step.hardware) {
        all += hardwareText(one);
    }
    const QString list = all.join(QStringLiteral(", "));
    if (step.bag.empty()) {
        return list;
    }
    return list.isEmpty() ? Strip::tr("bag %1").arg(text(step.bag))
                          : Strip::tr("%1 in bag %2").arg(list, text(step.bag));
}

} // namespace undercowl::ui
