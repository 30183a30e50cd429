#include "platform/cli/speech.h"

#include "core/talk/readback.h"
#include "core/units/parse.h"
#include "platform/ear/ear.h"
#include "platform/voice/voice.h"

#include <iostream>
#include <memory>
#include <string>
#include <vector>

namespace undercowl::platform {
namespace {

using Json = nlohmann::ordered_json;

struct ToJson {
    Json operator()(talk::Command command) const {
        return {{"kind", "command"}, {"name", talk::name(command)}};
    }
    Json operator()(const talk::SpokenReading& reading) const {
        Json json{{"kind", "reading"}, {"quantity", talk::name(reading.what)}};
        const auto number = units::parseNumber(reading.value.digits);
        if (number && reading.value.digits.find('.') == std::string::npos)
            json["value"] = static_cast<int>(number->value);
        else if (number)
            json["value"] = number->value;
        json["unit"] = reading.value.unit;
        return json;
    }
    Json operator()(talk::SpokenBag bag) const { return {{"kind", "bag"}, {"number", bag.number}}; }
    Json operator()(const talk::SpokenWire& said) const {
        Json json{{"kind", "wire"}, {"base", colour::code(said.wire.colour.base)}};
        if (said.wire.colour.tracer)
            json["tracer"] = colour::code(*said.wire.colour.tracer);
        if (said.wire.terminal.kind != wiring::TerminalKind::Unknown)
            json["terminal"] = wiring::text(said.wire.terminal);
        if (!said.wire.function.empty())
            json["function"] = said.wire.function;
        return json;
    }
};

std::string_view code(NotHeard why) {
    switch (why) {
    case NotHeard::Silence: return "silence";
    case NotHeard::Unsure: return "unsure";
    case NotHeard::Unknown: return "unknown";
    case NotHeard::Implausible: return "implausible";
    }
    return {};
}

Exit hear(const Context& context, const std::filesystem::path& file) {
    const auto samples = readSound(file);
    if (!samples)
        return complain(Exit::WrongUse, samples.error());
    const auto ear = openEar();
    if (!ear)
        return complain(Exit::WrongUse, ear.error());
    const Heard heard = (*ear)->hear(*samples);
    if (context.json) {
        Json json{{"accepted", heard.accepted()}, {"text", heard.text}};
        if (heard.accepted()) {
            json["intent"] = std::visit(ToJson{}, *heard.intent);
        } else {
            json["why"] = code(heard.why);
            json["message"] = heard.message;
        }
        printJson(json);
    } else if (heard.accepted()) {
        std::cout << heard.text << '\n';
    } else {
        std::cout << heard.message << '\n';
    }
    return heard.accepted() ? Exit::Done : Exit::No;
}

struct Wanted {
    std::string job;
    std::filesystem::path wav;
    double pace{1};
};

Exit say(const Context& context, const Wanted& wanted) {
    const auto store = openStore(context);
    if (!store)
        return store.error();
    const auto id = store->jobByNumberOrId(wanted.job);
    if (!id)
        return complain(id.error());
    const auto job = store->job(*id);
    if (!job)
        return complain(job.error());
    std::vector<std::string> sentences;
    for (const talk::Sentence& sentence : talk::readBackSentences(*job, wiring::Answer::AsItShouldBe))
        sentences.push_back(talk::english(sentence));
    if (!wanted.wav.empty()) {
        const auto speech = speak(sentences, wanted.pace);
        if (!speech)
            return complain(Exit::WrongUse, speech.error());
        if (const auto written = writeSound(wanted.wav, speech->samples, speech->rate); !written)
            return complain(Exit::WrongUse, written.error() + " Give a file that can be written with --wav.");
    }
    if (context.json) {
        Json json{{"job", *id}, {"sentences", sentences}};
        if (!wanted.wav.empty())
            json["wav"] = wanted.wav.string();
        printJson(json);
        return Exit::Done;
    }
    for (const std::string& sentence : sentences)
        std::cout << sentence << '\n';
    return Exit::Done;
}

} // namespace

void addSpeechCommand(CLI::App& root, Context& context) {
    CLI::App* speech = addCommand(root, "speech", "Hear spoken commands and values, say a read-back",
                                  "undercowlctl speech hear said.wav --json");
    speech->require_subcommand(1);
    CLI::App* hearing = addCommand(*speech, "hear", "Say what is meant by the sentence in a sound file",
                                   "undercowlctl speech hear said.wav --json");
    const auto file = std::make_shared<std::filesystem::path>();
    hearing->add_option("FILE", *file, "Sound file with one sentence, English")->required();
    hearing->callback(
        [&context, file] { context.action = [&context, file] { return hear(context, *file); }; });

    CLI::App* saying = addCommand(*speech, "say", "Say the read-back of a job: wiring, steps, torques",
                                  "undercowlctl speech say 2026-031 --wav read-back.wav");
    const auto wanted = std::make_shared<Wanted>();
    saying->add_option("JOB", wanted->job, "Number or id of the job")->required();
    saying->add_option("--wav", wanted->wav, "File for the sound, English")->type_name("FILE");
    saying->add_option("--pace", wanted->pace, "Length of the words: 1.5 is half as slow again")
        ->check(CLI::Range(0.5, 3.0))
        ->capture_default_str();
    saying->callback(
        [&context, wanted] { context.action = [&context, wanted] { return say(context, *wanted); }; });
}

} // namespace undercowl::platform
