#include "qml/shell/draftpages.h"

#include <QStringList>

#include <algorithm>
#include <array>

namespace undercowl::ui {
namespace {

// A form is called by its kind, the job, and what of the job it is about: "strip/JOB/STEP". 'first' and
// 'second' are the page's names for what follows 'from'.
struct Form {
    QLatin1String kind;
    QLatin1String page;
    int from{2};
    QLatin1String first{};
    QLatin1String second{};
};

constexpr std::array forms{
    Form{QLatin1String("approval"), QLatin1String("ApprovalPage")},
    Form{QLatin1String("calc"), QLatin1String("CalcPage"), 1, QLatin1String("name")},
    Form{QLatin1String("cost"), QLatin1String("CostPage")},
    Form{QLatin1String("costline"), QLatin1String("CostPage")},
    Form{QLatin1String("eyes"), QLatin1String("SecondEyesPage")},
    Form{QLatin1String("finding"), QLatin1String("FindingPage"), 2, QLatin1String("finding")},
    Form{QLatin1String("fluid"), QLatin1String("ConsumablesPage")},
    Form{QLatin1String("gathering"), QLatin1String("GatheringPage"), 2, QLatin1String("gathering")},
    Form{QLatin1String("handover"), QLatin1String("HandOverPage")},
    Form{QLatin1String("hold"), QLatin1String("TaskPage"), 2, QLatin1String("task")},
    Form{QLatin1String("instrument"), QLatin1String("InstrumentPage"), 1, QLatin1String("instrument")},
    Form{QLatin1String("left-out"), QLatin1String("AfterwardsPage")},
    Form{QLatin1String("memo"), QLatin1String("MemoPage"), 2, QLatin1String("about")},
    Form{QLatin1String("needs"), QLatin1String("NeedsPage"), 2, QLatin1String("step")},
    Form{QLatin1String("part"), QLatin1String("PartsPage")},
    Form{QLatin1String("proofs"), QLatin1String("ProofsPage")},
    Form{QLatin1String("prove"), QLatin1String("ProvePage")},
    Form{QLatin1String("reading"), QLatin1String("MeasurePage"), 2, QLatin1String("about")},
    Form{QLatin1String("recheck"), QLatin1String("RoadPage")},
    Form{QLatin1String("refusal"), QLatin1String("RefusalPage"), 2, QLatin1String("finding")},
    Form{QLatin1String("road"), QLatin1String("RoadPage")},
    Form{QLatin1String("settle"), QLatin1String("SettlePage"), 2, QLatin1String("finding")},
    Form{QLatin1String("signature"), QLatin1String("SignaturePage")},
    Form{QLatin1String("strip"), QLatin1String("StripPage"), 2, QLatin1String("step")},
    Form{QLatin1String("stroke"), QLatin1String("StrokePage"), 1, QLatin1String("gathering"),
         QLatin1String("half")},
};

QVariantMap opened(QLatin1String page, const QVariantMap& properties = {}) {
    return {{QStringLiteral("page"), QString(page)}, {QStringLiteral("properties"), properties}};
}

} // namespace

QVariantMap draftPage(const QString& form) {
    const QStringList parts = form.split(u'/');
    const QString rest = parts.value(2);
    // Those whose page depends on what follows.
    if (form == QLatin1String("takein/new"))
        return opened(QLatin1String("TakeInPage"));
    if (form.startsWith(QLatin1String("takein/")))
        return opened(QLatin1String("TakeInPage"), {{QStringLiteral("editing"), true}});
    if (form.startsWith(QLatin1String("finding/")) && parts.size() > 3)
        return opened(QLatin1String("FindingPage"),
                      {{QStringLiteral("round"), rest}, {QStringLiteral("check"), parts[3]}});
    if (form.startsWith(QLatin1String("functions/")))
        return opened(QLatin1String("FunctionsPage"), {{QStringLiteral("after"), !rest.isEmpty()}});
    if (form.startsWith(QLatin1String("part/")) && !rest.isEmpty())
        return opened(QLatin1String("PartPage"), {{QStringLiteral("part"), rest}});
    if (form.startsWith(QLatin1String("memo/")) && rest.isEmpty())
        return opened(QLatin1String("JobPage"));

    const auto known = std::ranges::find(forms, parts.first(), &Form::kind);
    if (known == forms.end())
        return opened(QLatin1String("JobPage"));
    QVariantMap properties;
    for (const auto& [name, at] :
         {std::pair(known->first, known->from), std::pair(known->second, known->from + 1)})
        if (!name.isEmpty() && !parts.value(at).isEmpty())
            properties.insert(QString(name), parts.value(at));
    return opened(known->page, properties);
}

} // namespace undercowl::ui
