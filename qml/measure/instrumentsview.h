// The shop's own measuring instruments: listed, kept, changed, retired.
#pragma once

#include "core/journal/instruments.h"
#include "core/verdict/specify.h"
#include "qml/shell/formdraft.h"
#include "qml/shell/linemodel.h"

#include <QObject>
#include <QQmlParserStatus>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// inUse, retired   title name, aside kind, range and limit of error; detail when it is due, in words; mark
//                  "caution" where it is overdue or was never calibrated
// kinds            in words, in the order of the form's "kind" (an index)
// errors           by field of the form: name, kind, low, high, resolution, wrench, gaugeClass, percent,
// digits,
//                  error, feel, calibrated, due
class InstrumentsView : public QObject, public QQmlParserStatus {
    Q_OBJECT
    QML_ELEMENT
    Q_INTERFACES(QQmlParserStatus)
    Q_PROPERTY(undercowl::ui::ShopSession* session MEMBER session_ REQUIRED)
    Q_PROPERTY(bool ready READ ready NOTIFY changed)
    Q_PROPERTY(undercowl::ui::LineModel* inUse READ inUse CONSTANT)
    Q_PROPERTY(undercowl::ui::LineModel* retired READ retired CONSTANT)
    Q_PROPERTY(QStringList kinds READ kinds CONSTANT)
    Q_PROPERTY(QVariantMap errors READ errors NOTIFY errorsChanged)

public:
    explicit InstrumentsView(QObject* parent = nullptr) : QObject(parent) {}

    void classBegin() override {}
    void componentComplete() override;

    [[nodiscard]] bool ready() const { return ready_; } // the store has answered
    [[nodiscard]] LineModel* inUse() { return &inUse_; }
    [[nodiscard]] LineModel* retired() { return &retired_; }
    [[nodiscard]] QStringList kinds() const;
    [[nodiscard]] const QVariantMap& errors() const { return errors_; }

    // What the form shows of a kept instrument; empty for an unknown one.
    Q_INVOKABLE QVariantMap known(const QString& instrument) const;
    Q_INVOKABLE bool isRetired(const QString& instrument) const;
    // How an instrument of the kind is tested by its standard; empty where nothing is known.
    Q_INVOKABLE QString advice(int kind) const;
    // Says the instrument of the form's values; a new one where 'instrument' is empty.
    Q_INVOKABLE void keep(undercowl::ui::FormDraft* draft, const QString& instrument);
    Q_INVOKABLE void retire(const QString& instrument, bool retired);

signals:
    void changed();
    void errorsChanged();
    void kept(); // said; the sync has returned

private:
    void read();
    void show();
    void setErrors(const QVariantMap& errors);
    [[nodiscard]] const journal::KeptInstrument* byId(const QString& instrument) const;

    ShopSession* session_{};
    bool ready_{};
    std::vector<journal::KeptInstrument> kept_;
    LineModel inUse_, retired_;
    QVariantMap errors_;
};

} // namespace undercowl::ui
