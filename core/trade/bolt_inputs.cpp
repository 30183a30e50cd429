#include "core/trade/bolt_inputs.h"

#include <fmt/format.h>

namespace undercowl::trade {

std::vector<Input> boltInputs() {
    return {
        text("thread", "Thread", "a metric thread such as M8 or M8x1.25: measure it, or read the parts list"),
        choice("class", "Property class",
               {{"4.6", "4.6"}, {"5.8", "5.8"}, {"8.8", "8.8"}, {"10.9", "10.9"}, {"12.9", "12.9"}},
               "stamped on the head; no mark means unknown, not 8.8"),
        number("nut_factor", "Nut factor K",
               "torque factor of the surface, about 0.2 dry steel, 0.15 oiled; give this or friction")
            .optional()
            .range(0.05, 0.6),
        number("friction", "Coefficient of friction", "in thread and under the head; give this or nut_factor")
            .optional()
            .range(0.03, 0.6),
        number("friction_head", "Friction under the head", "where it differs from the thread's")
            .optional()
            .range(0.03, 0.6),
        quantity("bearing_diameter", "Mean bearing diameter", units::Dimension::Length, "mm",
                 "half of washer face plus hole; an ordinary hexagon head over a medium hole is assumed")
            .optional()
            .range(3, 60),
    };
}

tl::expected<Bolt, Problem> readBolt(const Given& given) {
    const auto thread = parseThread(given.text("thread"));
    if (!thread)
        return given.problem("thread", "is not a thread that is known here", thread.error());
    const auto grade = propertyClass(given.text("class"));
    if (!grade)
        return given.problem("class", "is not a property class of ISO 898-1",
                             std::string(propertyClassNames));
    Bolt bolt{*thread, *grade, 0, {}};
    if (given.has("nut_factor") == given.has("friction"))
        return given.problem(given.has("friction") ? "friction" : "nut_factor",
                             given.has("friction")
                                 ? "stands beside a nut_factor: they are two ways to say one thing"
                                 : "is missing, and so is friction",
                             "one of nut_factor (0.05 to 0.6) and friction (0.03 to 0.6)");
    if (given.has("nut_factor")) {
        for (const char* key : {"friction_head", "bearing_diameter"})
            if (given.has(key))
                return given.problem(key, "has no part in a sum with nut_factor, which covers all friction",
                                     "friction in place of nut_factor, or without it");
        bolt.nutFactor = given.number("nut_factor");
        bolt.friction = fmt::format("K = {:.4g} as given", bolt.nutFactor);
        return bolt;
    }
    const auto hexagon = hexagonBearing(thread->diameter);
    if (!hexagon && !given.has("bearing_diameter"))
        return given.problem("bearing_diameter", "is not known for this thread", "give it in mm");
    const double bearing = given.has("bearing_diameter") ? given.number("bearing_diameter") : *hexagon;
    const double mu = given.number("friction");
    const double head = given.has("friction_head") ? given.number("friction_head") : mu;
    bolt.nutFactor = nutFactor(*thread, mu, head, bearing);
    bolt.friction = fmt::format(
        "K = [P/(2 pi) + mu d2/(2 cos 30) + mu_head D/2]/d = {:.4f} with mu = {:.3g}, mu_head = {:.3g}, "
        "d2 = {:.4f} mm, D = {:.4g} mm",
        bolt.nutFactor, mu, head, pitchDiameter(*thread), bearing);
    return bolt;
}

std::vector<std::string> boltSources() {
    return {"ISO 898-1:2013 tables 3 to 5 (proof stress, proof load), clause 9.1.6 (stress area)",
            "T = K d F: Machinery's Handbook; Shigley & Mischke; Bickford 1990",
            "K from friction: VDI 2230-1 long form; ISO 724 (pitch diameter)"};
}

std::vector<std::string> boltCautions() {
    return {"worked out here: the manual wins",
            "published nut factors for the same words differ by up to half, and preload scatters by 25 to 35 "
            "% at one "
            "torque: a torque never proves a preload",
            "steel bolts in steel; soft threads, studs, seals and plastic need the manual's figure"};
}

} // namespace undercowl::trade
