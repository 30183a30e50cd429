#include "platform/cli/verdict.h"

#include "core/trade/json.h"
#include "core/units/format.h"
#include "core/units/parse.h"
#include "core/verdict/words.h"
#include "platform/cli/instrument.h"
#include "platform/cli/today.h"

#include <fmt/format.h>

#include <filesystem>
#include <iostream>
#include <memory>
#include <vector>

namespace undercowl::platform {
namespace {

using units::Dimension;
using units::Quantity;

using Wanted = TypedReading;

tl::unexpected<Exit> wrong(std::string_view message) {
    return tl::unexpected(complain(Exit::WrongUse, message));
}

using Kept = std::vector<journal::KeptInstrument>;

// The shop's own instruments. A verdict needs no store: without one there are the ordinary instruments alone.
tl::expected<Kept, Exit> shopInstruments(const Context& context) {
    if (!context.storeGiven && !std::filesystem::exists(context.store / "shop.db"))
        return Kept{};
    const auto store = openStore(context);
    if (!store)
        return tl::unexpected(store.error());
    return instrumentsOf(*store);
}

const verdict::Instrument* instrument(const Kept& kept, const std::string& name, Dimension dimension) {
    const auto* own = journal::instrumentNamed(kept, name, dimension);
    return own != nullptr ? own : verdict::ordinaryInstrument(name, dimension);
}

// A value as it was typed, with the option that it stood behind.
struct Field {
    std::string_view option;
    std::string* text;
};

std::vector<Field> fieldsOf(Wanted& wanted) {
    std::vector<Field> fields;
    for (std::string& measured : wanted.measured)
        fields.push_back({"--measured", &measured});
    if (!wanted.low.empty())
        fields.push_back({"--low", &wanted.low});
    if (!wanted.high.empty())
        fields.push_back({"--high", &wanted.high});
    return fields;
}

// A number beside the reading is meant in the reading's unit, as elsewhere a number is meant in its field's
// declared one. The first reading itself has nothing to take a unit from: a limit's is not lent to it,
// since what a gauge shows is the one thing that nobody may guess.
tl::expected<Wanted, Exit> withUnits(Wanted wanted) {
    std::string unit;
    for (const Field& field : fieldsOf(wanted)) {
        const auto split = units::splitQuantity(*field.text);
        if (!split)
            return wrong(fmt::format("{}: {}", field.option, split.error().message));
        const bool first = field.text == wanted.measured.data();
        if (first)
            unit = split->unitText;
        else if (unit.empty() && !split->unitText.empty())
            return wrong(fmt::format("--measured: \"{0}\" has no unit, and {1} has {2}: write the unit that "
                                     "the reading was taken in, such as \"{0} {2}\"",
                                     wanted.measured.front(), field.option, split->unitText));
        else if (split->unitText.empty() && !unit.empty())
            *field.text += " " + unit;
    }
    return wanted;
}

// A plain "psi" may be gauge, absolute or a difference: what fits all the values that were given is meant,
// and an instrument's own dimension before others.
tl::expected<Dimension, Exit> dimensionOf(Wanted& wanted, const Kept& kept) {
    const std::vector<Field> fields = fieldsOf(wanted);
    std::optional<Dimension> found;
    for (int index = 0; index < units::dimensionCount; ++index) {
        const auto dimension = static_cast<Dimension>(index);
        bool fits = true;
        for (const Field& field : fields)
            fits = fits && units::parseQuantity(*field.text, dimension).has_value();
        if (!fits)
            continue;
        if (!found || instrument(kept, wanted.instrument, dimension) != nullptr)
            found = dimension;
    }
    if (found)
        return *found;
    for (const Field& field : fields) {
        const auto unitText = units::splitQuantity(*field.text)->unitText;
        if (const auto trap = units::knownAmbiguity(unitText))
            return wrong(fmt::format("{}: \"{}\": {}", field.option, *field.text, *trap));
        if (units::findUnits(unitText).empty())
            return wrong(fmt::format("{}: \"{}\" has no unit that is known here: write one, such as 9.3 N.m",
                                     field.option, *field.text));
    }
    // Each can be read, but not as the same kind of thing.
    const std::string& measured = wanted.measured.front();
    const auto first = units::findUnits(units::splitQuantity(measured)->unitText).front().dimension();
    for (const Field& field : fields)
        if (const auto read = units::parseQuantity(*field.text, first); !read)
            return wrong(fmt::format("{}: \"{}\" does not fit --measured \"{}\": {}", field.option,
                                     *field.text, measured, read.error().message));
    return wrong("--measured, --low, --high: the units given do not fit each other");
}

struct Read {
    std::vector<Quantity> measured;
    verdict::Limits limits;
    std::optional<Quantity> uncertainty;
    const verdict::Instrument* instrument = nullptr;
};

tl::expected<Read, Exit> read(const Wanted& typed, const Kept& kept) {
    auto filled = withUnits(typed);
    if (!filled)
        return tl::unexpected(filled.error());
    Wanted& wanted = *filled;
    const auto dimension = dimensionOf(wanted, kept);
    if (!dimension)
        return tl::unexpected(dimension.error());
    Read result;
    for (const std::string& text : wanted.measured)
        result.measured.push_back(units::parseQuantity(text, *dimension)->quantity());
    if (!wanted.low.empty())
        result.limits.low = units::parseQuantity(wanted.low, *dimension)->quantity();
    if (!wanted.high.empty())
        result.limits.high = units::parseQuantity(wanted.high, *dimension)->quantity();
    result.limits.source = {verdict::Trust::ShopRecord, "as given"};
    if (!wanted.uncertainty.empty()) {
        const Dimension interval = units::intervalOf(*dimension);
        const auto uncertainty = units::parseQuantity(wanted.uncertainty, interval,
                                                      verdict::intervalUnit(result.measured.front().unit));
        if (!uncertainty)
            return wrong("--uncertainty: " + uncertainty.error().message);
        result.uncertainty = uncertainty->quantity();
        if (!(result.uncertainty->value > 0))
            return wrong("--uncertainty: must be above zero, given was \"" + wanted.uncertainty +
                         "\": no instrument is without error");
    }
    if (!wanted.instrument.empty()) {
        result.instrument = instrument(kept, wanted.instrument, *dimension);
        if (result.instrument == nullptr) {
            std::string list;
            for (const journal::KeptInstrument& own : kept)
                if (!own.retired)
                    list += fmt::format("{}{} ({}, the shop's own)", list.empty() ? "" : ", ",
                                        own.instrument.name, own.instrument.unit.symbol());
            for (const verdict::Instrument& instrument : verdict::ordinaryInstruments())
                list += fmt::format("{}{} ({})", list.empty() ? "" : ", ", instrument.name,
                                    instrument.unit.symbol());
            return wrong(fmt::format("--instrument: \"{}\" is not known for {}; there are: {}",
                                     wanted.instrument, units::englishName(*dimension), list));
        }
    }
    return result;
}

void print(const Context& context, const verdict::Judgement& judgement) {
    if (!context.json) {
        if (judgement.verdict)
            std::cout << fmt::format("{}: probability of conformity {}\n",
                                     verdict::word(judgement.verdict->answer),
                                     verdict::percentText(judgement.verdict->probability));
        else
            std::cout << fmt::format("{}: {}\n", units::format(judgement.value), judgement.noVerdict);
        for (const std::string& line : judgement.working)
            std::cout << "  " << line << '\n';
        for (const std::string& line : judgement.settle)
            std::cout << "what would settle it: " << line << '\n';
        for (const std::string& line : judgement.cautions)
            std::cout << "caution: " << line << '\n';
        return;
    }
    nlohmann::ordered_json json;
    json["verdict"] = nullptr;
    if (judgement.verdict)
        trade::addVerdict(json, *judgement.verdict);
    else
        json["reason"] = judgement.noVerdict;
    json["measured"] = trade::toJson(judgement.value);
    if (judgement.repeated)
        json["readings"] = {{"count", judgement.repeated->count}, {"spread", judgement.repeated->spread}};
    json["settle"] = judgement.settle;
    json["working"] = judgement.working;
    json["cautions"] = judgement.cautions;
    printJson(json);
}

Exit judge(const Context& context, const Wanted& wanted) {
    const auto judgement = judged(context, wanted);
    if (!judgement)
        return judgement.error();
    print(context, *judgement);
    return judgement->verdict && judgement->verdict->answer == verdict::Answer::Outside ? Exit::No
                                                                                        : Exit::Done;
}

} // namespace

tl::expected<verdict::Judgement, Exit> judged(const Context& context, const TypedReading& typed) {
    const auto kept = typed.instrument.empty() ? tl::expected<Kept, Exit>(Kept{}) : shopInstruments(context);
    if (!kept)
        return tl::unexpected(kept.error());
    const auto input = read(typed, *kept);
    if (!input)
        return tl::unexpected(input.error());
    const auto rule = typed.rule == "guard" ? verdict::Rule::GuardBand : verdict::Rule::SimpleAcceptance;
    if (input->limits.low && input->limits.high && input->limits.low->base() > input->limits.high->base())
        return wrong("--low is above --high");
    auto judgement = input->uncertainty
                         ? verdict::judge(input->measured, *input->uncertainty, &input->limits, rule)
                         : verdict::judge(input->measured, input->instrument, &input->limits, today(), rule);
    if (!judgement)
        return wrong(judgement.error());
    return *std::move(judgement);
}

void addReadingOptions(CLI::App& command, TypedReading& typed) {
    command.add_option("--low", typed.low, "Lower limit; without a unit, in that of the reading");
    command.add_option("--high", typed.high, "Upper limit; likewise");
    auto* uncertainty =
        command.add_option("--uncertainty", typed.uncertainty, "Expanded uncertainty, k = 2; likewise");
    command
        .add_option("--instrument", typed.instrument,
                    "One of the shop's own (see: instrument list) or an ordinary one, by name")
        ->excludes(uncertainty);
}

void addVerdictCommand(CLI::App& root, Context& context) {
    CLI::App* command =
        addCommand(root, "verdict", "Is a reading within its limits? Exit 1 if it is outside",
                   "undercowlctl verdict --measured \"9.3 N.m\" --low \"9 N.m\" --high \"11 N.m\" "
                   "--uncertainty \"0.4 N.m\"");
    const auto wanted = std::make_shared<Wanted>();
    command
        ->add_option("--measured", wanted->measured,
                     "Reading with its unit; several times for repeated readings")
        ->required()
        ->allow_extra_args(false);
    addReadingOptions(*command, *wanted);
    command->add_option("--rule", wanted->rule, "guard: guard band of ISO 14253-1; simple: the bare limits")
        ->check(CLI::IsMember({"guard", "simple"}))
        ->capture_default_str();
    command->callback(
        [&context, wanted] { context.action = [&context, wanted] { return judge(context, *wanted); }; });
}

} // namespace undercowl::platform
