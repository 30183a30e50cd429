// Writes every text that the core can list as a source that lupdate reads: coretexts FILE. What it cannot
// list stands in qml/language/sentences_*.cpp.
#include "core/colour/insulation.h"
#include "core/handover/phrases.h"
#include "core/job/cautions.h"
#include "core/job/message.h"
#include "core/job/needs.h"
#include "core/journal/rounds.h"
#include "core/trade/registry.h"
#include "core/units/dimension.h"
#include "core/verdict/decide.h"
#include "core/verdict/instrument.h"
#include "core/verdict/limits.h"
#include "core/verdict/words.h"
#include "core/wiring/din72552.h"
#include "core/wiring/map.h"
#include "core/wiring/terminal.h"

#include <cctype>
#include <cstdio>
#include <fstream>
#include <set>
#include <string>
#include <string_view>

using namespace undercowl;

namespace {

// Context and text, each once. Numbers and signs alone need no translation.
using Texts = std::set<std::pair<std::string_view, std::string>>;

void add(Texts& texts, std::string_view text, std::string_view context = "Core") {
    for (std::size_t i = 0; i + 1 < text.size(); ++i)
        if (std::isalpha(static_cast<unsigned char>(text[i])) != 0 &&
            std::isalpha(static_cast<unsigned char>(text[i + 1])) != 0) {
            texts.emplace(context, text);
            return;
        }
}

void addJob(Texts& texts) {
    for (const std::string_view pattern : job::englishPatterns())
        add(texts, pattern);
    for (const handover::Phrase& phrase : handover::phrases())
        add(texts, phrase.english, "Record");
    for (const job::Caution& caution : job::cautions())
        add(texts, caution.english);
    for (const std::string_view text : job::suggestions())
        add(texts, text);
    for (const journal::RoundList& list : journal::builtInRounds()) {
        add(texts, list.title);
        for (const journal::RoundGroup& group : list.groups) {
            add(texts, group.name);
            for (const std::string& check : group.checks)
                add(texts, check);
        }
    }
}

void addWiring(Texts& texts) {
    for (const colour::Insulation one : colour::allInsulations)
        add(texts, colour::englishWord(one));
    for (const wiring::Designation& one : wiring::din72552())
        add(texts, one.meaning);
    using Terminal = wiring::TerminalKind;
    for (const auto kind :
         {Terminal::Blade, Terminal::Receptacle, Terminal::Bullet, Terminal::BulletSocket, Terminal::Ring,
          Terminal::Fork, Terminal::Pin, Terminal::Socket, Terminal::Splice, Terminal::Bare})
        add(texts, wiring::text(wiring::Terminal{kind, std::nullopt}));
    using Kind = wiring::GatheringKind;
    for (const auto kind : {Kind::Connector, Kind::LooseTerminals, Kind::Splice, Kind::SharedEarth})
        add(texts, wiring::code(kind));
    for (const auto side : {wiring::Side::WireSide, wiring::Side::MatingFace})
        add(texts, wiring::code(side));
}

void addMeasuring(Texts& texts) {
    for (int i = 0; i < units::dimensionCount; ++i)
        add(texts, units::englishName(static_cast<units::Dimension>(i)));
    for (int i = 0; i <= static_cast<int>(verdict::InstrumentKind::Other); ++i)
        add(texts, verdict::englishName(static_cast<verdict::InstrumentKind>(i)));
    for (const verdict::Instrument& one : verdict::ordinaryInstruments())
        add(texts, one.name);
    using enum verdict::Answer;
    for (const auto answer : {Within, Outside, TooClose})
        add(texts, verdict::word(answer));
    using enum verdict::Trust;
    for (const auto trust : {Manual, ShopRecord, Standard, WorkedOutHere})
        add(texts, verdict::englishName(trust));
}

// Formulas and the standards they come from stay as they are printed.
void addCalculations(Texts& texts) {
    for (const trade::Calculation& calculation : trade::calculations()) {
        const trade::Declaration& one = calculation.declaration;
        add(texts, one.title);
        add(texts, one.purpose);
        for (const trade::Input& input : one.inputs) {
            add(texts, input.label);
            add(texts, input.why);
            for (const trade::Choice& choice : input.choices)
                if (choice.label.find_first_of("0123456789") ==
                    std::string::npos) // "12 V", "UNECE R53", "8.8"
                    add(texts, choice.label);
        }
        for (const trade::Output& output : one.outputs)
            add(texts, output.label);
        for (const auto* list : {&one.cautions, &one.validity})
            for (const std::string& text : *list)
                add(texts, text);
    }
}

void write(std::ofstream& out, const Texts& texts) {
    for (const auto& [context, text] : texts) {
        out << "QT_TRANSLATE_NOOP(\"" << context << "\", \"";
        for (const char each : text) {
            if (each == '"' || each == '\\')
                out << '\\';
            out << each;
        }
        out << "\")\n";
    }
}

} // namespace

int main(int argc, char** argv) {
    Texts texts;
    addJob(texts);
    addWiring(texts);
    addMeasuring(texts);
    addCalculations(texts);
    std::ofstream out(argc > 1 ? argv[1] : "");
    write(out, texts);
    if (!out.flush()) {
        std::fprintf(stderr, "coretexts: wants a file that can be written\n");
        return 2;
    }
    std::printf("%zu texts of the core\n", texts.size());
    return 0;
}
