// undercowlctl: the same core without a screen.
#include "core/store/shops.h"
#include "platform/cli/archive.h"
#include "platform/cli/backup.h"
#include "platform/cli/calc.h"
#include "platform/cli/command.h"
#include "platform/cli/consumable.h"
#include "platform/cli/demo.h"
#include "platform/cli/find.h"
#include "platform/cli/handover.h"
#include "platform/cli/instrument.h"
#include "platform/cli/job.h"
#include "platform/cli/knows.h"
#include "platform/cli/labels.h"
#include "platform/cli/orders.h"
#include "platform/cli/rounds.h"
#include "platform/cli/sheet.h"
#include "platform/cli/speech.h"
#include "platform/cli/store.h"
#include "platform/cli/verdict.h"
#include "platform/cli/wires_command.h"
#include "platform/data_folder.h"

#include <exception>

namespace {

using undercowl::platform::Context;
using undercowl::platform::Exit;

int run(int argc, char** argv) {
    Context context;
    CLI::App app{
        "Undercowl on the command line: what a mechanic knows about the machine once the cowl is off.",
        "undercowlctl"};
    app.footer(
        "Exit: 0 done, 1 the answer is no, 2 wrong use or unreadable input, 3 the store is damaged or\n"
        "cannot be opened. COMMAND --help shows an example of each command.");
    app.require_subcommand(1);
    app.fallthrough(); // so that --json and --store may stand after the command's name too
    app.add_flag("--json", context.json, "Answer in JSON");
    app.add_option("--store", context.store, "Folder of the shop's store")
        ->type_name("DIR")
        ->default_str("the shop that the app opens");

    using namespace undercowl::platform;
    addArchiveCommand(app, context);
    addBackupCommand(app, context);
    addCalcCommand(app, context);
    addConsumableCommand(app, context);
    addDemoCommand(app, context);
    addFindCommand(app, context);
    addHandoverCommand(app, context);
    addInstrumentCommand(app, context);
    addJobCommand(app, context);
    addKnowsCommand(app, context);
    addLabelsCommand(app, context);
    addOrdersCommand(app, context);
    addRoundsCommand(app, context);
    addSheetCommand(app, context);
    addSpeechCommand(app, context);
    addStoreCommand(app, context);
    addVerdictCommand(app, context);
    addWiresCommand(app, context);

    try {
        app.parse(argc, argv);
    } catch (const CLI::CallForHelp& help) {
        return app.exit(help);
    } catch (const CLI::ParseError& wrong) {
        app.exit(wrong);
        return static_cast<int>(Exit::WrongUse);
    }
    context.storeGiven = !context.store.empty();
    if (!context.storeGiven) {
        context.store = undercowl::store::currentShop(undercowl::platform::dataFolder());
    }
    const auto exit = context.action();
    return static_cast<int>(exit == Exit::Done && context.damaged ? Exit::Store : exit);
}

} // namespace

int main(int argc, char** argv) {
    try {
        return run(argc, argv);
    } catch (const std::exception& unexpected) {
        return static_cast<int>(undercowl::platform::complain(Exit::WrongUse, unexpected.what()));
    }
}
