#include "qml/knowledge/modelsview.h"

#include "core/job/text.h"
#include "core/journal/knowledgefile.h"
#include "qml/shell/words.h"

#include <QDir>
#include <QFile>
#include <QPointer>

#include <map>

namespace undercowl::ui {

namespace {

constexpr qint64 largestFile = 16 * 1024 * 1024;

struct Model {
    QString name;
    Id machine;
    int jobs{};
};

// The line's label without its year.
std::string nameOf(const std::string& label) {
    const auto comma = label.rfind(", ");
    const bool year = comma != std::string::npos && label.size() - comma == 6 &&
                      label.find_first_not_of("0123456789", comma + 2) == std::string::npos;
    return year ? label.substr(0, comma) : label;
}

Result<std::vector<Model>> readModels(const ShopStore& store) {
    const auto jobs = store.jobs();
    if (!jobs)
        return tl::unexpected(jobs.error());
    std::map<std::string, Model> models;
    for (const store::JobLine& line : *jobs) {
        const std::string name = nameOf(line.machine);
        if (name.empty())
            continue;
        Model& model =
            models.try_emplace(job::folded(name), Model{text(name), line.machineId, 0}).first->second;
        ++model.jobs;
    }
    std::vector<Model> all;
    all.reserve(models.size());
    for (auto& [name, model] : models)
        all.push_back(std::move(model));
    return all;
}

} // namespace

QString ModelsView::folder() const {
    return session_ == nullptr ? QString() : text(session_->folder().string()) + QStringLiteral("-knowledge");
}

void ModelsView::componentComplete() {
    std::vector<Line> files;
    for (const QFileInfo& file : QDir(folder()).entryInfoList({QStringLiteral("*.json")}, QDir::Files))
        files.push_back({.id = file.filePath(), .title = file.fileName()});
    files_.setLines(std::move(files));
    emit changed();
    session_->ask(
        this, [](ShopStore& store) { return readModels(store); },
        [this](const Result<std::vector<Model>>& models) {
            if (!models)
                return session_->report(models.error());
            std::vector<Line> lines;
            for (const Model& model : *models)
                lines.push_back({.id = text(model.machine),
                                 .title = model.name,
                                 .detail = tr("jobs: %1").arg(model.jobs)});
            models_.setLines(std::move(lines));
        });
}

void ModelsView::choose(const QString& machine) {
    session_->ask(
        this, [id = machine.toStdString()](ShopStore& store) { return store.machine(id); },
        [this](const Result<job::Machine>& found) {
            if (found)
                emit chosen(text(found->make), text(found->model));
            else
                session_->report(found.error());
        });
}

void ModelsView::learn(const QString& path) {
    error_.clear();
    learned_.clear();
    QFile file(path.trimmed());
    if (!file.open(QIODevice::ReadOnly) || file.size() > largestFile) {
        error_ = tr("This file cannot be read, or is no knowledge of a model: %1").arg(path);
        emit changed();
        return;
    }
    const auto known = journal::readKnowledgeFile(file.readAll().toStdString());
    if (!known) {
        error_ = coreWords(known.error());
        emit changed();
        return;
    }
    const QString words =
        tr("%1 %2, facts: %3").arg(text(known->make), text(known->model)).arg(known->facts.size());
    session_->say(journal::knowledgeLearned(*known, [this] { return session_->newId(); }),
                  {.undoText = tr("Learned: %1").arg(words), .form = {}},
                  [this, self = QPointer(this), words](const Entries& said) {
                      if (!said || self == nullptr)
                          return;
                      learned_ = words;
                      emit changed();
                  });
    emit changed();
}

} // namespace undercowl::ui
