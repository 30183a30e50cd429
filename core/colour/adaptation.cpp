#include "core/colour/adaptation.h"

#include <algorithm>

namespace undercowl::colour {
namespace {

struct Cones {
    Matrix3 to;
    Matrix3 from;
};

// The matrices as published; the inverses to the digits that close the round trip.
constexpr Cones cat02{{{{0.7328, 0.4296, -0.1624}, {-0.7036, 1.6975, 0.0061}, {0.0030, 0.0136, 0.9834}}},
                      {{{1.096123820835514, -0.278869000218287, 0.182745179382773},
                        {0.454369041975359, 0.473533154307412, 0.072097803717229},
                        {-0.009627608738429, -0.005698031216113, 1.015325639954543}}}};
constexpr Cones bradford{{{{0.8951, 0.2664, -0.1614}, {-0.7502, 1.7135, 0.0367}, {0.0389, -0.0685, 1.0296}}},
                         {{{0.986992905466712, -0.147054256420990, 0.159962651663731},
                           {0.432305269723394, 0.518360271536777, 0.049291228212856},
                           {-0.008528664575177, 0.040042821654085, 0.968486695787550}}}};

} // namespace

Xyz adapt(const Xyz& colour, const Xyz& fromWhite, const Xyz& toWhite, ConeSpace space) {
    const Cones& cones = space == ConeSpace::Cat02 ? cat02 : bradford;
    const auto from = multiply(cones.to, fromWhite.x, fromWhite.y, fromWhite.z);
    const auto to = multiply(cones.to, toWhite.x, toWhite.y, toWhite.z);
    const auto seen = multiply(cones.to, colour.x, colour.y, colour.z);
    const auto back =
        multiply(cones.from, seen[0] * to[0] / from[0], seen[1] * to[1] / from[1], seen[2] * to[2] / from[2]);
    return {back[0], back[1], back[2]};
}

Xyz planckianWhite(double kelvin) {
    const double t = std::clamp(kelvin, 1667.0, 25000.0);
    const double u = 1.0e3 / t;
    const double x = t <= 4000.0 ? ((-0.2661239 * u - 0.2343589) * u + 0.8776956) * u + 0.179910
                                 : ((-3.0258469 * u + 2.1070379) * u + 0.2226347) * u + 0.240390;
    double y = 0.0;
    if (t <= 2222.0)
        y = ((-1.1063814 * x - 1.34811020) * x + 2.18555832) * x - 0.20219683;
    else if (t <= 4000.0)
        y = ((-0.9549476 * x - 1.37418593) * x + 2.09137015) * x - 0.16748867;
    else
        y = ((3.0817580 * x - 5.87338670) * x + 3.75112997) * x - 0.37001483;
    return {x / y, 1.0, (1.0 - x - y) / y};
}

} // namespace undercowl::colour
