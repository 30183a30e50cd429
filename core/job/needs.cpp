#include "core/job/needs.h"

#include "core/job/text.h"

#include <algorithm>
#include <array>

namespace undercowl::job {
namespace {

enum class Bans : std::uint8_t { Neither, Start, Ride, Both };

// Common practice, no source. 'renew', 'apply' and 'afterwards' may be empty.
struct Rule {
    std::string_view word; // in the title
    std::string_view renew;
    std::string_view apply;
    std::string_view afterwards;
    Bans bans{Bans::Neither};
};

constexpr std::array rules{
    Rule{"brake hose", "crush washers of the banjo", "none", "bleed the brake until the lever stays hard",
         Bans::Ride},
    Rule{"caliper", "crush washers of the banjo, if it was opened", "",
         "pump the lever until the brake holds; bleed it if the hose was opened", Bans::Ride},
    Rule{"master cylinder", "crush washers of the banjo", "", "bleed the brake until the lever stays hard",
         Bans::Ride},
    Rule{"brake", "", "", "try the brake: it holds, and it lets go", Bans::Ride},
    Rule{"brake cable", "", "", "adjust the free play of the brake", Bans::Ride},
    Rule{"brake shoe", "", "grease on the cam only, none near the linings",
         "centre the shoes and adjust the free play of the brake", Bans::Ride},
    Rule{"drum", "", "", "adjust the free play of the brake", Bans::Ride},
    Rule{"wheel", "self-locking nut or split pin of the axle", "thin grease on the axle",
         "turn the wheel: it runs free and true", Bans::Ride},
    Rule{"axle", "self-locking nut or split pin of the axle", "thin grease on the axle",
         "turn the wheel: it runs free and true", Bans::Ride},
    Rule{"tyre", "", "", "set the pressure cold", Bans::Ride},
    Rule{"fork", "", "", "push the fork down: it comes back smoothly and nothing leaks", Bans::Ride},
    Rule{"steering", "", "", "turn the steering from stop to stop: no play, no notch, nothing pulls",
         Bans::Ride},
    Rule{"handlebar clamp", "", "", "turn the steering from stop to stop: nothing pulls or pinches",
         Bans::Ride},
    Rule{"shock", "self-locking nuts of the shock", "", "push the tail down: nothing touches or knocks",
         Bans::Ride},
    Rule{"swing arm", "self-locking nut of its axle", "grease on the bushes", "move it by hand: no side play",
         Bans::Ride},
    Rule{"chain", "spring clip of the joining link", "",
         "set the slack of the chain; clip closed to the front", Bans::Ride},
    Rule{"throttle cable", "", "", "throttle: free play set, and it snaps shut in every place of the bars",
         Bans::Both},
    Rule{"carburettor", "gaskets of the inlet", "", "fuel on: no drip for five minutes; throttle snaps shut",
         Bans::Both},
    Rule{"fuel", "hose clips that have lost their spring", "", "fuel on: no drip for five minutes",
         Bans::Start},
    Rule{"tank", "", "", "fuel on: no drip for five minutes", Bans::Start},
    Rule{"clutch cable", "", "", "adjust the free play of the clutch", Bans::Ride},
    Rule{"drain plug", "sealing washer of the plug", "none", "fill with oil and look at the level",
         Bans::Start},
    Rule{"oil pump", "", "", "bleed the oil pump; set it to its mark", Bans::Start},
    Rule{"radiator", "", "", "fill and bleed the cooling", Bans::Start},
    Rule{"water pump", "gasket and seal", "", "fill and bleed the cooling", Bans::Start},
    Rule{"cylinder head", "head gasket", "none", "turn the engine over by hand: it turns freely",
         Bans::Start},
    Rule{"barrel", "base gasket", "oil on the bore", "turn the engine over by hand: it turns freely",
         Bans::Start},
    Rule{"piston", "circlips of the pin", "oil", "turn the engine over by hand: it turns freely",
         Bans::Start},
    Rule{"crankcase", "gasket and oil seals", "", "look at the oil level", Bans::Start},
    Rule{"oil seal", "the seal", "oil on its lip", "", Bans::Neither},
    Rule{"exhaust", "exhaust gasket", "copper paste on the studs", "", Bans::Neither},
    Rule{"spark plug", "", "none", "", Bans::Neither},
    Rule{"battery", "", "terminal grease", "negative lead on last; tight, and covered", Bans::Neither},
};

// Hardware that is never used twice. Common practice, no source.
constexpr std::array newEveryTime{
    std::string_view{"split pin"},      std::string_view{"crush washer"},
    std::string_view{"sealing washer"}, std::string_view{"self-locking nut"},
    std::string_view{"nyloc"},          std::string_view{"circlip"},
    std::string_view{"tab washer"},     std::string_view{"o-ring"},
    std::string_view{"oil seal"},       std::string_view{"gasket"},
    std::string_view{"cable tie"},
};

void addOnce(std::vector<std::string>& list, std::string_view text) {
    if (!text.empty() && std::find(list.begin(), list.end(), text) == list.end())
        list.emplace_back(text);
}

// What is still to be done for the ban to fall; left out is not done.
bool done(const StripStep& step, std::string_view what) {
    const SeenTo* seen = seenTo(step, what);
    return seen != nullptr && !seen->leftOut;
}

void addBan(std::vector<Banned>& found, const StripStep& step, const RefitNeeds& needs, Ban ban) {
    Banned banned{ban, &step, !step.refitted.has_value(), {}, false};
    for (const std::string& what : needs.afterwards)
        if (!done(step, what))
            banned.missing.push_back(what);
    if (!banned.apart && banned.missing.empty())
        return;
    banned.leftOut = !banned.apart && openAfterwards(step).empty();
    found.push_back(std::move(banned));
}

} // namespace

RefitNeeds suggestedNeeds(std::string_view title, const std::vector<Hardware>& hardware) {
    const std::string small = inTradeWords(title);
    RefitNeeds needs;
    for (const Rule& rule : rules) {
        if (!saysWord(small, rule.word))
            continue;
        addOnce(needs.renew, rule.renew);
        addOnce(needs.afterwards, rule.afterwards);
        if (needs.apply.empty() || needs.apply == "none")
            needs.apply = rule.apply.empty() ? needs.apply : std::string(rule.apply);
        needs.doNotStart = needs.doNotStart || rule.bans == Bans::Start || rule.bans == Bans::Both;
        needs.doNotRide = needs.doNotRide || rule.bans == Bans::Ride || rule.bans == Bans::Both;
    }
    for (const Hardware& piece : hardware)
        for (const std::string_view single : newEveryTime)
            if (inTradeWords(piece.what).find(single) != std::string::npos)
                addOnce(needs.renew, piece.thread.empty() ? piece.what : piece.what + " " + piece.thread);
    return needs;
}

std::vector<std::string_view> suggestions() {
    std::vector<std::string_view> all;
    for (const Rule& rule : rules)
        for (const std::string_view text : {rule.renew, rule.apply, rule.afterwards})
            if (!text.empty() && std::find(all.begin(), all.end(), text) == all.end())
                all.push_back(text);
    return all;
}

RefitNeeds needsOf(const StripStep& step) {
    return step.needs ? *step.needs : suggestedNeeds(step.title, step.hardware);
}

const SeenTo* seenTo(const StripStep& step, std::string_view what) {
    const auto found = std::find_if(step.seenTo.begin(), step.seenTo.end(),
                                    [what](const SeenTo& seen) { return seen.what == what; });
    return found == step.seenTo.end() ? nullptr : &*found;
}

std::vector<std::string> openAfterwards(const StripStep& step) {
    std::vector<std::string> open;
    for (std::string& what : needsOf(step).afterwards)
        if (seenTo(step, what) == nullptr)
            open.push_back(std::move(what));
    return open;
}

std::vector<Banned> bans(const Job& job) {
    std::vector<Banned> found;
    for (const Ban ban : {Ban::Start, Ban::Ride})
        for (const StripStep& step : job.steps) {
            const RefitNeeds needs = needsOf(step);
            if (ban == Ban::Start ? needs.doNotStart : needs.doNotRide)
                addBan(found, step, needs, ban);
        }
    return found;
}

std::vector<Afterwards> openAfterwards(const Job& job) {
    std::vector<Afterwards> open;
    for (const StripStep& step : job.steps)
        if (step.refitted)
            for (std::string& what : openAfterwards(step))
                open.push_back({&step, std::move(what)});
    return open;
}

std::string_view code(Ban ban) {
    return ban == Ban::Start ? "do not start" : "do not ride";
}

} // namespace undercowl::job
