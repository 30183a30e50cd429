#include "qml/talk/liftear.h"

#include "core/talk/grammar.h"
#include "core/talk/speak.h"
#include "core/wiring/map.h"
#include "qml/shell/words.h"
#include "qml/talk/saidwords.h"

#include <array>
#include <utility>

namespace undercowl::ui {

namespace {

// By the order of the variant's alternatives after commands, which have names of their own.
constexpr std::array kinds{"", "reading", "bag", "wire"};

QString nameOf(const talk::Intent& intent) {
    const auto* command = std::get_if<talk::Command>(&intent);
    return command == nullptr ? QString::fromLatin1(kinds.at(intent.index())) : text(talk::name(*command));
}

} // namespace

struct LiftEar::Tell {
    LiftEar& ear;

    void operator()(talk::Command command) const { emit ear.commanded(text(talk::name(command))); }
    void operator()(const talk::SpokenReading& said) const {
        emit ear.reading(text(talk::name(said.what)), text(said.value.digits), text(said.value.unit));
    }
    void operator()(talk::SpokenBag said) const { emit ear.bag(said.number); }
    void operator()(const talk::SpokenWire& said) const {
        const colour::WireColour& wire = said.wire.colour;
        const wiring::Terminal& terminal = said.wire.terminal;
        emit ear.wire(
            text(colour::code(wire.base)), wire.tracer ? text(colour::code(*wire.tracer)) : QString(),
            text(wiring::text({terminal.kind, std::nullopt})),
            terminal.sizeMm ? QString::number(*terminal.sizeMm) : QString(), text(said.wire.function));
    }
};

LiftEar::~LiftEar() {
    if (listener_ == nullptr)
        return;
    if (active_)
        listener_->stop();
    listener_->wantHandsFree(this, false);
}

void LiftEar::setListener(platform::Listener* listener) {
    if (listener == listener_)
        return;
    if (listener_ != nullptr) {
        disconnect(listener_, nullptr, this, nullptr);
        listener_->wantHandsFree(this, false);
    }
    attending_ = false;
    listener_ = listener;
    if (listener_ != nullptr) {
        connect(listener_, &platform::Listener::stateChanged, this, &LiftEar::changed);
        connect(listener_, &platform::Listener::heard, this, &LiftEar::hear);
    }
    attend();
    emit changed();
}

void LiftEar::setVoice(Voice* voice) {
    if (voice == voice_)
        return;
    if (voice_ != nullptr)
        disconnect(voice_, nullptr, this, nullptr);
    voice_ = voice;
    // Nothing that the device says itself is taken for what the mechanic says.
    if (voice_ != nullptr)
        connect(voice_, &Voice::changed, this, [this] {
            if (attending_ && listener_ != nullptr)
                listener_->setDeaf(voice_->speaking());
        });
    emit changed();
}

void LiftEar::setHandsFree(bool handsFree) {
    if (handsFree == handsFree_)
        return;
    handsFree_ = handsFree;
    attend();
    emit changed();
}

void LiftEar::attend() {
    const bool wanted = active_ && handsFree_;
    if (wanted == attending_ || listener_ == nullptr)
        return;
    attending_ = wanted;
    listener_->wantHandsFree(this, wanted);
}

QString LiftEar::wakePhrase() const {
    return text(talk::wakePhrase());
}

void LiftEar::setActive(bool active) {
    if (active == active_)
        return;
    if (active_ && listener_ != nullptr)
        listener_->stop();
    active_ = active;
    attend();
    emit changed();
}

QString LiftEar::told() const {
    return listener_ != nullptr && !listener_->problem().isEmpty() ? listener_->problem() : told_;
}

void LiftEar::press() {
    if (!active_ || listener_ == nullptr)
        return;
    if (voice_ != nullptr)
        voice_->hush(); // or it would hear itself
    listener_->start();
}

void LiftEar::release() {
    if (active_ && listener_ != nullptr)
        listener_->stop();
}

void LiftEar::refuse(const QString& why) {
    told_ = why;
    heard_.clear();
    emit changed();
}

void LiftEar::remark(const QString& words) {
    remark_ = words;
}

void LiftEar::forget() {
    heard_.clear();
    told_.clear();
    emit changed();
}

void LiftEar::sayAgain() {
    if (voice_ != nullptr)
        voice_->say(said_);
}

void LiftEar::say(const QString& words) {
    said_ = words;
    if (voice_ != nullptr)
        voice_->say(words);
}

QString LiftEar::hint() const {
    QStringList all;
    for (const QString& name : takes_) {
        if (name == u"reading")
            all += tr("a reading");
        else if (name == u"bag")
            all += tr("the number of a bag");
        else if (name == u"wire")
            all += tr("a wire");
        else
            all += name;
    }
    return all.join(QStringLiteral(", "));
}

void LiftEar::hear(const platform::Heard& what) {
    if (!active_)
        return;
    forget(); // so that the same once more is seen as something new
    remark_.clear();
    bool understood = false;
    if (!what.accepted()) {
        told_ = words(what.why);
    } else if (const QString name = nameOf(*what.intent); !takes_.contains(name)) {
        told_ = tr("Heard \"%1\". Here say: %2.").arg(text(what.text), hint());
    } else {
        understood = true;
        heard_ = words(*what.intent);
        emit changed();
        const QString said = text(talk::spoken(*what.intent));
        const bool command = std::holds_alternative<talk::Command>(*what.intent);
        // Before what it does, which may say something itself.
        if (command && sayBack_ && voice_ != nullptr)
            voice_->say(said);
        std::visit(Tell{*this}, *what.intent);
        if (told_.isEmpty() && !command)
            say(remark_.isEmpty() ? said : said + QStringLiteral(", ") + remark_);
    }
    emit changed();
    if (!told_.isEmpty())
        say(understood ? QStringLiteral("not taken") : QStringLiteral("say it again"));
}

} // namespace undercowl::ui
