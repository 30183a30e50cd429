#include "core/sight/reading.h"

#include <array>
#include <cstddef>

namespace undercowl::sight {
namespace {

struct Words {
    std::string_view code;
    std::string_view english;
};

// In the order of the enumeration.
constexpr std::array<Words, 11> words{
    {{"glare", "glare covers it: tilt the phone"},
     {"shadow", "too dark here: bring a lamp or move your shadow away"},
     {"too thin", "narrower than 4 px: go closer"},
     {"no white in view", "no white in view: lay a sheet of paper beside it"},
     {"hidden", "too little of it is free: push aside what crosses it"},
     {"close colours", "two answers are about as likely: compare the wire itself"},
     {"no wire found", "no wire found here: tap nearer to it, or stroke across it"},
     {"burnt out", "burnt out: take the lamp away or tap the photo darker"},
     {"uneven light", "two lights mix on it: switch one off"},
     {"not proven", "likely, but not certain: compare the wire itself"},
     {"beside the wire", "the tap lies beside this wire: see that the outlined one is meant"}}};

} // namespace

std::string_view code(Doubt doubt) {
    return words.at(static_cast<std::size_t>(doubt)).code;
}

std::string_view englishWords(Doubt doubt) {
    return words.at(static_cast<std::size_t>(doubt)).english;
}

} // namespace undercowl::sight
