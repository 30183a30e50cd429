#include "core/job/cautions.h"

#include "core/job/text.h"

#include <algorithm>
#include <array>
#include <string>

namespace undercowl::job {
namespace {

constexpr std::array texts{
    Caution{"battery-negative-off", "battery negative off first, on last"},
    Caution{"fuel-safe", "fuel off and away from sparks; no flame, rags in a closed tin"},
    Caution{"ignition-off", "ignition off; high tension can hurt: stop the engine before you touch a lead"},
    Caution{"strap-on-lift", "strap the machine on the lift before weight comes off"},
    Caution{"brake-dust", "no compressed air on old brake dust; mask, wipe wet"},
    Caution{"brake-fluid",
            "brake fluid eats paint and skin; only fresh fluid of the grade that the manual names"},
    Caution{"brake-proof",
            "do not ride before the brake is proved; the machine's manual and licensed practice come first"},
    Caution{"acid",
            "battery acid: goggles and gloves, water at hand, acid into water and never the other way"},
    Caution{"hot-parts", "let the exhaust and the engine cool down first"},
    Caution{"spring", "springs under load: hold them before the last bolt comes out"},
};

struct Trigger {
    std::string_view word;
    std::string_view key;
};

// Several triggers may name the same caution; it is given once, in the order of the texts above.
constexpr std::array triggers{
    Trigger{"connector", "battery-negative-off"},
    Trigger{"wire", "battery-negative-off"},
    Trigger{"wiring", "battery-negative-off"},
    Trigger{"loom", "battery-negative-off"},
    Trigger{"switch", "battery-negative-off"},
    Trigger{"battery", "battery-negative-off"},
    Trigger{"starter", "battery-negative-off"},
    Trigger{"lamp", "battery-negative-off"},
    Trigger{"battery", "acid"},
    Trigger{"fuel", "fuel-safe"},
    Trigger{"tank", "fuel-safe"},
    Trigger{"carburettor", "fuel-safe"},
    Trigger{"ignition coil", "ignition-off"},
    Trigger{"spark", "ignition-off"},
    Trigger{"magneto", "ignition-off"},
    Trigger{"wheel", "strap-on-lift"},
    Trigger{"axle", "strap-on-lift"},
    Trigger{"fork", "strap-on-lift"},
    Trigger{"engine", "strap-on-lift"},
    Trigger{"brake", "brake-dust"},
    Trigger{"brake", "brake-proof"},
    Trigger{"caliper", "brake-fluid"},
    Trigger{"master cylinder", "brake-fluid"},
    Trigger{"brake hose", "brake-fluid"},
    Trigger{"caliper", "brake-proof"},
    Trigger{"exhaust", "hot-parts"},
    Trigger{"silencer", "hot-parts"},
    Trigger{"clutch", "spring"},
    Trigger{"shock", "spring"},
    Trigger{"stand spring", "spring"},
};

} // namespace

std::span<const Caution> cautions() {
    return texts;
}

std::string_view englishCaution(std::string_view key) {
    const auto found =
        std::find_if(texts.begin(), texts.end(), [key](const Caution& c) { return c.key == key; });
    return found == texts.end() ? std::string_view{} : found->english;
}

std::vector<std::string> cautionsFor(std::string_view title) {
    const std::string small = inTradeWords(title);
    std::vector<std::string> keys;
    for (const Caution& caution : texts)
        if (std::any_of(triggers.begin(), triggers.end(), [&](const Trigger& trigger) {
                return trigger.key == caution.key && small.find(trigger.word) != std::string::npos;
            }))
            keys.emplace_back(caution.key);
    return keys;
}

} // namespace undercowl::job
