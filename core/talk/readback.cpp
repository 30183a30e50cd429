#include "core/talk/readback.h"

#include "core/job/cautions.h"
#include "core/job/lines.h"
#include "core/job/refit.h"

#include <set>
#include <utility>

namespace undercowl::talk {
namespace {

using wiring::Answer;
using wiring::Half;

void add(Sentence& sentence, std::string_view key, std::vector<Value> values = {}) {
    sentence.phrases.push_back({key, std::move(values)});
}

void addText(Sentence& sentence, std::string_view key, const std::string& text) {
    if (!text.empty())
        add(sentence, key, {Typed{text}});
}

Sentence heading(const wiring::Gathering& gathering, Half half, int known) {
    Sentence sentence{Sentence::Kind::Gathering, {}, gathering.id, {half, 1, 1}};
    add(sentence, "talk.connector", {Typed{gathering.title}, gathering.places});
    if (gathering.kind == wiring::GatheringKind::Connector)
        add(sentence, half == Half::Loom ? "talk.half.loom" : "talk.half.unit");
    addText(sentence, "talk.latch", gathering.latch);
    if (known == gathering.places - 1)
        add(sentence, "talk.unread.one");
    else if (known < gathering.places)
        add(sentence, "talk.unread", {gathering.places - known});
    return sentence;
}

void addTorques(std::vector<Sentence>& sentences, const job::StripStep& step) {
    for (const job::Hardware& hardware : step.hardware) {
        if (!hardware.torque)
            continue;
        Sentence sentence{Sentence::Kind::Torque, {}, step.id, {}};
        if (hardware.what.empty())
            add(sentence, "talk.torque", {*hardware.torque});
        else
            add(sentence, "talk.torque.of", {Typed{hardware.what}, *hardware.torque});
        sentences.push_back(std::move(sentence));
    }
}

void addHowItSits(Sentence& sentence, const job::StripStep& step) {
    addText(sentence, "talk.routing", step.routing);
    addText(sentence, "talk.ends", step.ends);
    addText(sentence, "talk.as-found", step.asFound);
    addText(sentence, "talk.let-out", step.letOut);
}

} // namespace

Phrase contradiction(Answer reads, const std::optional<colour::WireColour>& other) {
    const bool asFound = reads == Answer::AsFound;
    if (!other)
        return {asFound ? "talk.contradiction.should.empty" : "talk.contradiction.found.empty", {}};
    return {asFound ? "talk.contradiction.should" : "talk.contradiction.found", {*other}};
}

Sentence wireSentence(const wiring::ReadBackItem& item, const job::Id& gathering) {
    Sentence sentence{Sentence::Kind::Wire, {}, gathering, item.key};
    const wiring::Wire& wire = item.answer.wire;
    add(sentence, item.key.slot > 1 ? "talk.place.second" : "talk.place", {item.key.number});
    if (item.empty)
        add(sentence, "talk.empty");
    else
        add(sentence, "talk.colour", {wire.colour});
    if (wire.terminal.kind != wiring::TerminalKind::Unknown)
        add(sentence, "talk.terminal", {wire.terminal});
    addText(sentence, "talk.function", wire.function);
    addText(sentence, "talk.tag", item.tag);
    if (item.otherEmpty)
        sentence.phrases.push_back(contradiction(item.reads, std::nullopt));
    else if (item.contradicts && !item.empty && item.contradicts->colour == wire.colour)
        add(sentence, "talk.contradiction.other");
    else if (item.contradicts)
        sentence.phrases.push_back(contradiction(item.reads, item.contradicts->colour));
    if (item.tag.empty())
        for (const int twin : item.twinOf)
            add(sentence, "talk.twin", {twin});
    return sentence;
}

std::vector<Sentence> wiringSentences(const wiring::Gathering& gathering, Half half, Answer prefer) {
    const auto items = wiring::readBack(gathering, half, prefer);
    std::set<int> places;
    for (const wiring::ReadBackItem& item : items)
        places.insert(item.key.number);
    std::vector<Sentence> sentences{heading(gathering, half, static_cast<int>(places.size()))};
    for (const wiring::ReadBackItem& item : items)
        sentences.push_back(wireSentence(item, gathering.id));
    return sentences;
}

Sentence lineSentence(const job::Job& job, const job::StripStep& step) {
    Sentence sentence{Sentence::Kind::Line, {}, step.id, {}};
    addText(sentence, "talk.line", step.title);
    addHowItSits(sentence, step);
    if (!job::isDescribed(step))
        add(sentence, job::photographed(job, step) ? "talk.line.unwritten" : "talk.line.unknown");
    addText(sentence, "talk.note", step.note);
    return sentence;
}

std::vector<Sentence> stepSentences(const job::Job& job, const job::StripStep& step, int number) {
    Sentence first{Sentence::Kind::Step, {}, step.id, {}};
    if (step.title.empty())
        add(first, "talk.step.untitled", {number});
    else
        add(first, "talk.step", {number, Typed{step.title}});
    const job::Task* task = findTask(job, step.task);
    if (task != nullptr && task->waiting)
        add(first, "talk.waits", {Typed{task->waitingFor}});
    for (const std::string& key : step.cautions)
        addText(first, "talk.caution", std::string{job::englishCaution(key)});
    addText(first, "talk.bag", step.bag);
    for (const job::Hardware& hardware : step.hardware) {
        if (hardware.count == 1)
            addText(first, "talk.hardware", hardware.what);
        else if (!hardware.what.empty())
            add(first, "talk.hardware.many", {hardware.count, Typed{hardware.what}});
        addText(first, "talk.thread", hardware.thread);
        addText(first, "talk.length", hardware.length);
    }
    addHowItSits(first, step);
    addText(first, "talk.note", step.note);
    std::vector<Sentence> sentences{std::move(first)};
    addTorques(sentences, step);
    return sentences;
}

std::vector<Sentence> torqueSentences(const job::StripStep& step) {
    std::vector<Sentence> sentences;
    addTorques(sentences, step);
    if (sentences.empty()) {
        sentences.push_back({Sentence::Kind::Torque, {}, step.id, {}});
        add(sentences.back(), "talk.torque.none");
    }
    return sentences;
}

Sentence endSentence(int failing, int open) {
    Sentence sentence{Sentence::Kind::End, {}, {}, {}};
    add(sentence, "talk.end");
    const auto count = [&sentence](int number, std::string_view one, std::string_view many) {
        if (number == 1)
            add(sentence, one);
        else if (number > 1)
            add(sentence, many, {number});
    };
    count(failing, "talk.end.failing.one", "talk.end.failing");
    count(open, "talk.end.open.one", "talk.end.open");
    if (failing == 0 && open == 0)
        add(sentence, "talk.end.all");
    return sentence;
}

std::vector<Sentence> readBackSentences(const job::Job& job, Answer prefer) {
    std::vector<Sentence> sentences;
    const auto append = [&sentences](std::vector<Sentence> more) {
        sentences.insert(sentences.end(), std::make_move_iterator(more.begin()),
                         std::make_move_iterator(more.end()));
    };
    for (const wiring::Gathering& gathering : job.gatherings)
        for (const Half half : {Half::Loom, Half::Unit})
            if (!wiring::readBack(gathering, half, prefer).empty())
                append(wiringSentences(gathering, half, prefer));
    int number = 0;
    for (const job::RefitStep& step : refitOrder(job))
        if (!step.done)
            append(stepSentences(job, *step.strip, ++number));
    Sentence end{Sentence::Kind::End, {}, {}, {}};
    add(end, sentences.empty() ? "talk.nothing" : "talk.end");
    sentences.push_back(std::move(end));
    return sentences;
}

} // namespace undercowl::talk
