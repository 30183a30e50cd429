#include "platform/cli/instrument.h"

#include "core/units/format.h"
#include "core/verdict/specify.h"
#include "platform/cli/today.h"

#include <fmt/format.h>

#include <algorithm>
#include <iostream>
#include <memory>

namespace undercowl::platform {
namespace {

using journal::KeptInstrument;
using verdict::errorText;
using verdict::Instrument;

nlohmann::ordered_json toJson(const Instrument& instrument, std::string_view whose) {
    nlohmann::ordered_json json{{"name", instrument.name},
                                {"kind", verdict::code(instrument.kind)},
                                {"unit", instrument.unit.symbol()},
                                {"low", instrument.rangeLow},
                                {"high", instrument.rangeHigh},
                                {"resolution", instrument.resolution},
                                {"limit_of_error", errorText(instrument)},
                                {"source", instrument.limitSource},
                                {"whose", whose}};
    if (instrument.calibrated)
        json["calibrated"] = units::formatDate(*instrument.calibrated);
    if (instrument.due)
        json["due"] = units::formatDate(*instrument.due);
    if (const auto caution = verdict::calibrationCaution(instrument, today()); caution && whose == "shop")
        json["caution"] = *caution;
    return json;
}

void print(const Context& context, nlohmann::ordered_json& all, const Instrument& instrument,
           std::string_view whose) {
    if (context.json) {
        all.push_back(toJson(instrument, whose));
        return;
    }
    std::cout << fmt::format("{:22} {:9} {} to {}, limit of error {} ({})\n", instrument.name, whose,
                             units::formatSignificant(instrument.rangeLow),
                             units::format({instrument.rangeHigh, instrument.unit}), errorText(instrument),
                             instrument.limitSource);
    if (whose != "shop")
        return;
    if (const auto caution = verdict::calibrationCaution(instrument, today()))
        std::cout << "  caution: " << *caution << '\n';
}

Exit list(const Context& context) {
    std::vector<KeptInstrument> kept;
    if (context.storeGiven || std::filesystem::exists(context.store / "shop.db")) {
        const auto store = openStore(context);
        if (!store)
            return store.error();
        auto read = instrumentsOf(*store);
        if (!read)
            return read.error();
        kept = *std::move(read);
    }
    auto all = nlohmann::ordered_json::array();
    for (const KeptInstrument& one : kept)
        if (!one.retired)
            print(context, all, one.instrument, "shop");
    for (const Instrument& one : verdict::ordinaryInstruments())
        if (journal::instrumentNamed(kept, one.name, one.unit.dimension()) == nullptr)
            print(context, all, one, "ordinary");
    if (context.json)
        printJson({{"instruments", all}});
    return Exit::Done;
}

Exit keep(const Context& context, const verdict::InstrumentSheet& sheet, const std::string& by) {
    auto made = verdict::instrumentFrom(sheet);
    if (!made)
        return complain(Exit::WrongUse,
                        fmt::format("--{}: {}",
                                    made.error().field == "gaugeClass" ? "class" : made.error().field,
                                    made.error().message));
    auto store = openStore(context, Opening::MayCreate);
    if (!store)
        return store.error();
    if (const auto someone = beSomeone(*store, by); !someone)
        return someone.error();
    const auto kept = instrumentsOf(*store);
    if (!kept)
        return kept.error();
    // The same name for the same quantity is the same instrument, described anew.
    KeptInstrument instrument{store->newId(), *std::move(made), false};
    for (const KeptInstrument& old : *kept)
        if (old.instrument.name == instrument.instrument.name &&
            old.instrument.unit.dimension() == instrument.instrument.unit.dimension())
            instrument.id = old.id;
    if (const auto said = store->append(journal::instrumentKept(instrument)); !said)
        return complain(said.error());
    if (context.json)
        printJson(toJson(instrument.instrument, "shop"));
    else
        std::cout << fmt::format("kept: {}, limit of error {} ({})\n", instrument.instrument.name,
                                 errorText(instrument.instrument), instrument.instrument.limitSource);
    return Exit::Done;
}

Exit retire(const Context& context, const std::string& name, const std::string& by) {
    auto store = openStore(context);
    if (!store)
        return store.error();
    if (const auto someone = beSomeone(*store, by); !someone)
        return someone.error();
    auto kept = instrumentsOf(*store);
    if (!kept)
        return kept.error();
    std::vector<journal::Draft> drafts;
    for (KeptInstrument& one : *kept)
        if (one.instrument.name == name && !one.retired) {
            one.retired = true;
            drafts.push_back(journal::instrumentKept(one));
        }
    if (drafts.empty())
        return complain(Exit::No, fmt::format("the shop keeps no instrument \"{}\"", name));
    if (const auto said = store->append(drafts); !said)
        return complain(said.error());
    return Exit::Done;
}

} // namespace

tl::expected<std::vector<KeptInstrument>, Exit> instrumentsOf(const store::Store& store) {
    const auto entries = store.entries(std::string(journal::shopStream));
    if (!entries && entries.error().fault != store::Fault::NotFound)
        return tl::unexpected(complain(entries.error()));
    return entries ? journal::foldInstruments(*entries) : std::vector<KeptInstrument>{};
}

void addInstrumentCommand(CLI::App& root, Context& context) {
    CLI::App* instrument = addCommand(root, "instrument", "The shop's measuring instruments",
                                      "undercowlctl instrument list --store SHOP");
    instrument->require_subcommand(1);
    addCommand(*instrument, "list", "The shop's own, and the ordinary ones where it has none",
               "undercowlctl instrument list --json")
        ->callback([&context] { context.action = [&context] { return list(context); }; });

    CLI::App* add =
        addCommand(*instrument, "keep", "Keep an instrument, or describe it anew",
                   "undercowlctl instrument keep \"wrench red\" --kind torque-wrench --low 5 --high "
                   "\"25 N.m\" --resolution 0.1 --wrench \"II A\" --calibrated 2026-03-01 --due "
                   "2027-03-01");
    const auto sheet = std::make_shared<verdict::InstrumentSheet>();
    const auto by = std::make_shared<std::string>();
    add->add_option("name", sheet->name, "As the shop calls it")->required();
    add->add_option(
           "--kind", sheet->kind,
           "torque-wrench, pressure-gauge, multimeter, caliper, feeler-gauge, hydrometer, thermometer, "
           "other")
        ->required();
    add->add_option("--high", sheet->high, "Largest reading with its unit")->required();
    add->add_option("--low", sheet->low, "Least reading; 0 without it");
    add->add_option("--resolution", sheet->resolution, "One division or the last digit")->required();
    add->add_option("--wrench", sheet->wrench,
                    "Torque wrench: type and class of ISO 6789-1, such as \"II A\"");
    add->add_option("--class", sheet->gaugeClass, "Pressure gauge: class of EN 837-1, such as 1.6");
    add->add_option("--percent", sheet->percent, "Limit of error, per cent of the reading");
    add->add_option("--digits", sheet->digits, "Limit of error, counts of the last digit");
    add->add_option("--error", sheet->error, "Limit of error, fixed");
    add->add_option("--feel", sheet->feel, "Half of what two people would read differently");
    add->add_option("--source", sheet->source, "Where the limit of error stands");
    add->add_option("--calibrated", sheet->calibrated, "Day of calibration, such as 2026-03-01");
    add->add_option("--due", sheet->due, "Day on which it is due again");
    add->add_option("--by", *by, "Who says it, where nobody works on this device yet");
    add->callback([&context, sheet, by] {
        context.action = [&context, sheet, by] { return keep(context, *sheet, *by); };
    });

    CLI::App* drop = addCommand(*instrument, "retire", "An instrument that is used no more",
                                "undercowlctl instrument retire \"wrench red\"");
    const auto name = std::make_shared<std::string>();
    drop->add_option("name", *name, "As the shop calls it")->required();
    drop->add_option("--by", *by, "Who says it, where nobody works on this device yet");
    drop->callback([&context, name, by] {
        context.action = [&context, name, by] { return retire(context, *name, *by); };
    });
}

} // namespace undercowl::platform
