#include "qml/shell/formdraft.h"

#include "qml/shell/words.h"

#include <QJsonDocument>
#include <QJsonObject>

namespace undercowl::ui {

namespace {

constexpr int shapeVersion = 1;

} // namespace

FormDraft::~FormDraft() {
    if (session_ != nullptr)
        session_->flush();
}

void FormDraft::componentComplete() {
    complete_ = true;
    restore();
}

void FormDraft::setForm(const QString& form) {
    if (form_ == form)
        return;
    form_ = form;
    emit formChanged();
    // Once a job is there, another form of it is what was just said under its own name, and begins empty.
    if (complete_ && askedWithoutJob_ && values_.isEmpty())
        restore();
}

void FormDraft::restore() {
    askedWithoutJob_ = jobId_.isEmpty();
    session_->restoreDraft(this, form_, [this, asked = form_](const QByteArray& json) {
        if (asked != form_) { // the answer for the form that was here before
            restore();
            return;
        }
        const auto object = QJsonDocument::fromJson(json).object();
        if (object[u"version"].toInt() == shapeVersion && values_.isEmpty()) {
            values_ = object[u"values"].toObject().toVariantMap();
            restored_ = when(static_cast<job::TimeMs>(object[u"at"].toDouble()), session_->now());
            emit valuesChanged();
        }
        ready_ = true;
        emit readyChanged();
    });
}

void FormDraft::fill(const QVariantMap& known) {
    filled_ = known;
    values_ = known;
    emit valuesChanged();
}

void FormDraft::set(const QString& name, const QVariant& value) {
    if (values_.value(name) == value)
        return;
    values_[name] = value;
    discarded_.clear();
    emit valuesChanged();
    keep();
}

void FormDraft::replace(const QVariantMap& values) {
    if (values_ == values)
        return;
    values_ = values;
    discarded_.clear();
    emit valuesChanged();
    if (begun())
        keep();
    else
        session_->dropDraft(form_);
}

QString FormDraft::text(const QString& name) const {
    return values_.value(name).toString();
}

void FormDraft::discard() {
    discarded_ = values_;
    values_.clear();
    restored_.clear();
    session_->dropDraft(form_);
    emit valuesChanged();
    emit readyChanged();
}

void FormDraft::bringBack() {
    values_ = discarded_;
    discarded_.clear();
    emit valuesChanged();
    keep();
}

void FormDraft::said() {
    values_.clear();
    filled_.clear();
    discarded_.clear();
    restored_.clear();
    emit valuesChanged();
    emit readyChanged();
}

void FormDraft::keep() {
    const auto at = session_->now();
    const QJsonObject object{{QStringLiteral("version"), shapeVersion},
                             {QStringLiteral("at"), static_cast<double>(at)},
                             {QStringLiteral("values"), QJsonObject::fromVariantMap(values_)}};
    session_->keepDraft({form_, title_, jobId_.toStdString(), at},
                        QJsonDocument(object).toJson(QJsonDocument::Compact));
}

} // namespace undercowl::ui
