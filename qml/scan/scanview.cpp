#include "qml/scan/scanview.h"

#include "core/job/text.h"
#include "platform/plugins/plugin.h"
#include "platform/scanner/scanner.h"
#include "platform/threads/across.h"
#include "qml/shell/words.h"

#include <QImageReader>

#include <algorithm>

namespace undercowl::ui {

namespace {

// Capitals, blanks and hyphens do not tell numbers apart: scanners and printers drop them.
std::string bare(std::string_view number) {
    std::string letters = job::lowered(number);
    std::erase_if(letters, [](char c) { return c == ' ' || c == '-' || c == '.'; });
    return letters;
}

bool hasNumber(const job::Part& part, const std::string& wanted) {
    if (bare(part.number) == wanted)
        return true;
    for (const QString& other : text(part.otherNumbers).split(u','))
        if (bare(utf8(other)) == wanted)
            return true;
    return false;
}

struct Hit {
    Id job;
    Line line;
};

Result<std::vector<Hit>> partsNumbered(const ShopStore& store, const std::string& wanted) {
    const auto jobs = store.jobs(0); // a job that is handed over waits for no part
    if (!jobs)
        return tl::unexpected(jobs.error());
    std::vector<Hit> hits;
    for (const store::JobLine& line : *jobs) {
        const auto job = store.job(line.id);
        if (!job)
            return tl::unexpected(job.error());
        for (const job::Part& part : job->parts)
            if (hasNumber(part, wanted))
                hits.push_back(
                    {line.id, Line{.id = text(part.id),
                                   .title = text(part.name),
                                   .detail = text(part.number) + QStringLiteral(" · ") + words(part.state),
                                   .more = text(line.machine)}});
    }
    return hits;
}

} // namespace

void ScanView::hookUp(platform::Camera& camera) {
    connect(&camera, &platform::Camera::frame, this, [this](const QImage& picture) {
        if (active())
            read([picture](QString&) { return picture; }, false);
    });
}

void ScanView::readFile(const QString& file) {
    read(
        [file](QString& problem) {
            QImageReader reader(file);
            reader.setAutoTransform(true);
            QImage picture = reader.read();
            if (picture.isNull())
                problem = tr("This picture cannot be read: %1").arg(reader.errorString());
            return picture;
        },
        true);
}

// One picture at a time: those that come meanwhile are passed over.
void ScanView::read(std::function<QImage(QString&)> picture, bool fromFile) {
    if (reading_)
        return;
    reading_ = true;
    platform::offTouch([self = QPointer(this), picture = std::move(picture), fromFile] {
        QString unreadable;
        QString missing;
        const QImage seen = picture(unreadable);
        const auto* scanner = platform::pluginFor<platform::Scanner>(QStringLiteral("scanner"), missing);
        const QStringList codes = scanner == nullptr || seen.isNull() ? QStringList() : scanner->read(seen);
        platform::toTouch([self, codes, missing, unreadable, fromFile] {
            if (self == nullptr)
                return;
            self->reading_ = false;
            if (!unreadable.isEmpty())
                self->tell(unreadable);
            else if (!missing.isEmpty())
                self->session()->tell(missing);
            else if (!codes.isEmpty() && codes.front() != self->code_)
                self->look(codes.front());
            else if (codes.isEmpty() && fromFile)
                self->tell(tr("No code is read in this picture: take it closer and straight on."));
        });
    });
}

void ScanView::tell(const QString& answer) {
    answer_ = answer;
    emit scanned();
}

void ScanView::look(const QString& code) {
    code_ = code.trimmed();
    parts_.setLines({});
    if (const auto bag = handover::bagCode(code_.toStdString()))
        look(*bag);
    else if (!code_.isEmpty())
        lookForParts(code_);
}

void ScanView::look(const handover::BagCode& bag) {
    session()->ask(
        this, [id = bag.job](ShopStore& store) { return store.job(id); },
        [this, bag](const Result<job::Job>& job) {
            if (!job)
                return tell(tr("This label is of a job that is not in this shop."));
            const auto* step = handover::stepOfBag(*job, bag.bag);
            if (step == nullptr)
                return tell(tr("Job %1 has no bag %2 any more.").arg(text(job->number), text(bag.bag)));
            session()->openJob(text(job->id));
            tell(tr("Bag %1: %2").arg(text(bag.bag), text(step->title)));
            emit bagFound(text(job->id), text(step->id));
        });
}

void ScanView::lookForParts(const QString& number) {
    session()->ask(
        this, [wanted = bare(utf8(number))](ShopStore& store) { return partsNumbered(store, wanted); },
        [this, number](const Result<std::vector<Hit>>& hits) {
            if (!hits)
                return session()->report(hits.error());
            std::vector<Line> lines;
            partJobs_.clear();
            for (const Hit& hit : *hits) {
                lines.push_back(hit.line);
                partJobs_.push_back(hit.job);
            }
            tell(lines.empty() ? tr("No open job waits for a part with the number %1.").arg(number)
                               : tr("Parts with the number %1").arg(number));
            parts_.setLines(std::move(lines));
        });
}

void ScanView::openPart(const QString& part) {
    const auto found = std::ranges::find(parts_.lines(), part, &Line::id);
    if (found == parts_.lines().end())
        return;
    session()->openJob(text(partJobs_[static_cast<std::size_t>(found - parts_.lines().begin())]));
    emit partFound(part);
}

} // namespace undercowl::ui
