#include "qml/shell/session.h"

#include "core/journal/say.h"
#include "qml/shell/words.h"

#include <QRegularExpression>

#include <algorithm>
#include <array>

namespace undercowl::ui {

namespace {

// Settings that the shell reads at its start; each is an empty text until it is chosen.
constexpr std::array settingNames{"theme",        "text-scale", "hand",     "motion",     "pictures",
                                  "backup-place", "location",   "slowness", "measuring",  "fluid-days",
                                  "currency",     "hour-rate",  "tax",      "vision",     "vision-degree",
                                  "language",     "voice",      "memo-end", "hands-free", "screen",
                                  "dim-after",    "sounds"};

} // namespace

struct ShopSession::Opened {
    std::optional<store::Problem> problem;
    std::string readOnly;
    Id mechanic;
    std::vector<job::Mechanic> mechanics;
    std::map<QString, QString> settings;
    std::vector<WaitingDraft> waiting;
    bool full{}; // only to be looked at, and there is no room on the disk
};

std::vector<WaitingDraft> readDraftIndex(std::string_view json); // sessiondrafts.cpp

namespace {

bool roomIn(const std::filesystem::path& folder) {
    constexpr std::uintmax_t enough = 32U << 20U; // a few photos, and the log of the database
    std::error_code error;
    const auto space = std::filesystem::space(folder, error);
    return !error && space.available >= enough;
}

} // namespace

ShopSession::ShopSession(OpenShop open, std::filesystem::path folder, store::WallClock clock, QObject* parent)
    : QObject(parent), open_(std::move(open)), folder_(std::move(folder)), clock_(std::move(clock)) {
    writeSoon_.setSingleShot(true);
    writeSoon_.setInterval(150);
    connect(&writeSoon_, &QTimer::timeout, this, &ShopSession::flush);
    roomAgain_.setInterval(2000);
    connect(&roomAgain_, &QTimer::timeout, this, &ShopSession::lookForRoom);
    start();
}

ShopSession::~ShopSession() {
    flush();
}

void ShopSession::start() {
    setState(State::Opening);
    worker_.give([this, open = open_, folder = folder_](std::unique_ptr<ShopStore>& store) {
        Opened result;
        auto opened = open();
        if (opened) {
            store = std::move(*opened);
            result.readOnly = store->readOnly();
            result.full = !result.readOnly.empty() && !roomIn(folder);
            result.mechanic = store->mechanic();
            if (auto mechanics = store->mechanics())
                result.mechanics = std::move(*mechanics);
            for (const char* name : settingNames)
                result.settings[QString::fromLatin1(name)] = text(store->setting(name));
            result.waiting = readDraftIndex(store->draft("index").value_or(std::string{}));
        } else {
            result.problem = std::move(opened.error());
        }
        platform::across(this, [this, result = std::move(result)] { this->opened(result); });
    });
}

void ShopSession::opened(const Opened& opened) {
    if (opened.problem) {
        problem_ = words(*opened.problem);
        emit problemChanged();
        setState(State::Failed);
        return;
    }
    mechanic_ = opened.mechanic;
    mechanics_ = opened.mechanics;
    settings_ = opened.settings;
    waiting_ = opened.waiting;
    emit mechanicChanged();
    emit settingsChanged();
    emit draftsChanged();
    readOnly_ = !opened.readOnly.empty();
    if (readOnly_) {
        problem_ = coreWords(opened.readOnly);
        emit problemChanged();
    }
    setDiskFull(opened.full);
    setState(mechanic_.empty() && !readOnly_ ? State::NoMechanic : State::Ready);
}

void ShopSession::tryAgain() {
    if (state_ != State::Failed)
        return;
    clearProblem();
    start();
}

QString ShopSession::mechanicName() const {
    return mechanicName(mechanic_);
}

QString ShopSession::mechanicName(const Id& id) const {
    const auto found = std::ranges::find(mechanics_, id, &job::Mechanic::id);
    return found == mechanics_.end() ? QString() : text(found->name);
}

QString ShopSession::jobId() const {
    return snapshot_ ? text(snapshot_->job.id) : QString();
}

std::shared_ptr<const job::Job> ShopSession::job() const {
    return snapshot_ ? std::shared_ptr<const job::Job>(snapshot_, &snapshot_->job) : nullptr;
}

Id ShopSession::newId() const {
    return journal::newId(now());
}

QString ShopSession::setting(const QString& name) const {
    const auto found = settings_.find(name);
    return found == settings_.end() ? QString() : found->second;
}

void ShopSession::set(const QString& name, const QString& value) {
    if (setting(name) == value)
        return;
    settings_[name] = value;
    emit settingsChanged();
    ask(
        this,
        [name = name.toStdString(), value = value.toStdString()](ShopStore& store) {
            return store.set(name, value);
        },
        [this](const Result<void>& done) {
            if (!done)
                report(done.error());
        });
}

void ShopSession::nameMechanic(const QString& name) {
    const job::Mechanic mechanic{newId(), utf8(name)};
    if (mechanic.name.empty()) {
        report({store::Fault::Refused, tr("Type the name of the one who works here.").toStdString()});
        return;
    }
    sayFrom(
        [mechanic](ShopStore& store) -> Entries {
            auto said = store.append(std::array{journal::mechanicNamed(mechanic)});
            if (said) {
                if (auto chosen = store.chooseMechanic(mechanic.id); !chosen)
                    return tl::unexpected(chosen.error());
            }
            return said;
        },
        {.undoText = {}, .form = QStringLiteral("mechanic")},
        [this, mechanic](const Entries& said) {
            if (!said)
                return;
            mechanics_.push_back(mechanic);
            mechanic_ = mechanic.id;
            emit mechanicChanged();
            setState(State::Ready);
        });
}

void ShopSession::chooseMechanic(const QString& id) {
    ask(
        this, [id = id.toStdString()](ShopStore& store) { return store.chooseMechanic(id); },
        [this, id = id.toStdString()](const Result<void>& done) {
            if (!done) {
                report(done.error());
                return;
            }
            mechanic_ = id;
            emit mechanicChanged();
            setState(State::Ready);
        });
}

QUrl ShopSession::mediaUrl(const QString& name) const {
    static const QRegularExpression shape(QStringLiteral("^[0-9a-f]{64}\\.[a-z0-9]{2,4}$"));
    if (!shape.match(name).hasMatch())
        return {};
    return QUrl::fromLocalFile(text((folder_ / "media" / name.toStdString()).string()));
}

void ShopSession::report(const store::Problem& problem) {
    tell(words(problem));
}

void ShopSession::tell(const QString& failure) {
    problem_ = failure;
    emit problemChanged();
}

void ShopSession::setDiskFull(bool full) {
    full ? roomAgain_.start() : roomAgain_.stop();
    if (std::exchange(diskFull_, full) != full)
        emit diskFullChanged();
}

void ShopSession::lookForRoom() {
    ask(
        this, [folder = folder_](ShopStore& /*store*/) { return roomIn(folder); },
        [this](bool room) {
            if (!room)
                return;
            if (!readOnly_) {
                setDiskFull(false);
                return;
            }
            roomAgain_.stop(); // opened() tells how it went
            clearProblem();
            start();
        });
}

void ShopSession::clearProblem() {
    if (problem_.isEmpty())
        return;
    problem_.clear();
    emit problemChanged();
}

void ShopSession::setState(State state) {
    if (state_ == state)
        return;
    state_ = state;
    emit stateChanged();
}

} // namespace undercowl::ui
