#include "pages.h"

namespace undercowl::looks {

std::vector<Page> allPages(const MadeShop& shop) {
    const auto text = [](const std::string& id) { return QVariant(QString::fromStdString(id)); };
    const QVariantMap gathering{{"gathering", text(shop.gathering)}};
    QVariantMap place = gathering;
    place["half"] = "loom";
    place["place"] = "1/1";
    QVariantMap picking = place;
    picking["picking"] = true;
    const QVariantMap unread{{"gathering", QString(unreadGathering)}};
    const QVariantMap job{{"jobId", text(shop.job)}, {"title", "Marrowin Tern 125, 1987"}};
    const auto calculation = [](const char* name) { return QVariantMap{{"name", QString(name)}}; };
    return {
        {"first-start", "", {}, {}, Shop::Empty},
        {"home-empty", "", {}, {}, Shop::NoMachine},
        {"home", "", {}, {}},
        {"memo", "MemoPage", {{"machine", "Marrowin Tern 125, 1987"}}, {}},
        {"take-in", "TakeInPage", {}, {}, Shop::NoMachine},
        {"machine", "TakeInPage", {{"editing", true}}, {}},
        {"job", "JobPage", {}, {}},
        {"look-over", "LookOverPage", {}, {}},
        {"finding", "FindingPage", {}, {}},
        {"as-found", "AsFoundPage", {{"machine", "Marrowin Tern 125, 1987"}}, {}},
        {"functions", "FunctionsPage", {}, {}},
        {"functions-list", "FunctionsPage", {}, {"All of them"}},
        {"rounds", "RoundsPage", {}, {}},
        {"round", "RoundsPage", {}, {"Begin the round"}},
        {"round-lists", "RoundListsPage", {}, {}},
        {"round-list", "RoundListPage", {{"list", "front-disc"}}, {"front disc brake: pads, both sides"}},
        {"refusal", "RefusalPage", {{"finding", text(shop.finding)}}, {}},
        {"approval", "ApprovalPage", {}, {}},
        {"task", "TaskPage", {{"task", text(shop.task)}}, {}},
        {"parts", "PartsPage", {}, {}},
        {"part", "PartPage", {{"part", text(shop.part)}}, {}},
        {"orders", "OrdersPage", {}, {}},
        {"fluids", "ConsumablesPage", {}, {}},
        {"shop", "MorePage", {}, {}},
        {"knowledge", "KnowledgePage", {}, {}},
        {"models", "ModelsPage", {}, {}},
        {"scan", "ScanPage", {}, {}},
        {"sheets", "SheetsPage", {}, {}},
        {"labels", "LabelsPage", {}, {}},
        {"find-filters", "FindPage", {{"filters", true}}, {}, Shop::Demo, "tyre"},
        {"camera", "CameraPage", job, {}},
        {"strip", "StripPage", {}, {}},
        {"strip-correct", "StripPage", {{"step", text(shop.step)}}, {}},
        {"strip-held-by", "StripPage", {{"panel", "hardware"}}, {}},
        {"strip-bag", "StripPage", {{"panel", "bag"}}, {}},
        {"strip-steps", "StepsPage", {}, {}},
        {"wiring", "WiringPage", {}, {}},
        {"connector-new", "GatheringPage", {}, {}},
        {"connector", "GatheringPage", gathering, {}},
        {"stroke", "StrokePage", unread, {}},
        {"stroke-confirmed", "StrokePage", gathering, {}},
        {"stroke-read", "StrokePage", unread, {}, Shop::Demo, {}, true},
        {"stroke-first", "StrokePage", unread, {}, Shop::Demo, {}, false, QPointF(0.42, 0.55)},
        {"stroke-tapped", "StrokePage", unread, {}, Shop::Demo, {}, true, QPointF(0.5, 0.5)},
        {"stroke-found", "StrokePage", unread, {"Find the wires without a stroke"}},
        {"stroke-accepted", "StrokePage", unread, {"Find the wires without a stroke", "All of them"}},
        {"stroke-other", "StrokePage", unread, {"Other colour"}, Shop::Demo, {}, true},
        {"place", "PlacePage", place, {}},
        {"place-colour", "PlacePage", picking, {}},
        {"refit", "RefitPage", {}, {}},
        {"refit-steps", "RefitStepsPage", {}, {}},
        {"refit-needs", "NeedsPage", {{"step", text(shop.step)}}, {}},
        {"afterwards", "AfterwardsPage", {}, {}},
        {"read-back", "ReadBackPage", gathering, {}},
        {"read-back-wrong", "ReadBackPage", gathering, {"Does not match"}},
        {"compare", "ComparePage", gathering, {}},
        {"compare-done", "ComparePage", gathering, {}, Shop::Demo, {}, true},
        {"measure", "MeasurePage", {}, {}},
        {"measure-value", "MeasurePage", {{"about", text(shop.step)}}, {"1", "2", "3"}},
        {"measure-verdict",
         "MeasurePage",
         {{"panel", "setup"}},
         {"switch body screws, torque", "To the value", "2", ".", "5"}},
        {"measure-states",
         "MeasurePage",
         {{"panel", "setup"}},
         {"battery, at revs", "To the value", "1", "3"}},
        {"measure-setup", "MeasurePage", {{"panel", "setup"}}, {}},
        {"instruments", "InstrumentsPage", {}, {}},
        {"instrument", "InstrumentPage", {}, {}},
        {"instrument-known", "InstrumentsPage", {}, {"torque screwdriver"}},
        {"readings", "ReadingsPage", {}, {}},
        {"readings-curve", "ReadingsPage", {}, {"battery, at revs"}},
        {"calculations", "CalcListPage", {}, {}},
        {"calculation", "CalcPage", calculation("torque-adapter"), {}},
        {"calculation-number", "CalcPage", calculation("tyre-pressure-shift"), {"Temperature then"}},
        {"calculation-choice", "CalcPage", calculation("voltage-drop"), {"Part of the circuit"}},
        {"calculation-words", "CalcPage", calculation("tyre-marking"), {"Marking"}},
        {"calculation-answer", "CalcPage", calculation("torque-adapter"), {"Example"}},
        {"calculation-verdict", "CalcPage", calculation("headlamp-aim"), {"Example"}},
        {"calculation-curve", "CalcPage", calculation("charging-check"), {"Example"}},
        {"calculation-list", "CalcPage", calculation("tightening-order"), {"Example", "Working"}},
        {"prove", "ProvePage", {}, {}},
        {"prove-list", "ProvePage", {}, {"All of them"}},
        {"second-eyes", "SecondEyesPage", {}, {}},
        {"functions-after", "FunctionsPage", {{"after", true}}, {}},
        {"road", "RoadPage", {}, {}},
        {"due", "DuePage", {}, {}},
        {"cost", "CostPage", {}, {}},
        {"signature", "SignaturePage", {}, {}},
        {"hand-over", "HandOverPage", {}, {}},
        {"find", "FindPage", {}, {}},
        {"find-tyre", "FindPage", {}, {}, Shop::Demo, "tyre"},
        {"settings", "SettingsPage", {}, {}},
        {"backup", "BackupPage", {}, {}},
    };
}

QStringList galleryPages() {
    return {"Actions", "Wires", "Fields", "Marks", "Choices", "Measure"};
}

} // namespace undercowl::looks
