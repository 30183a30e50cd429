#include "core/talk/intent.h"

namespace undercowl::talk {

std::string_view name(Command command) {
    switch (command) {
    case Command::Next: return "next";
    case Command::Again: return "again";
    case Command::Back: return "back";
    case Command::Done: return "done";
    case Command::DoesNotMatch: return "does not match";
    case Command::Photo: return "photo";
    case Command::Memo: return "memo";
    case Command::Stop: return "stop";
    case Command::Undo: return "undo";
    case Command::Slower: return "slower";
    }
    return {};
}

std::string_view name(Measured what) {
    switch (what) {
    case Measured::Torque: return "torque";
    case Measured::FrontTyre: return "front tyre";
    case Measured::RearTyre: return "rear tyre";
    case Measured::Battery: return "battery";
    case Measured::Tread: return "tread";
    }
    return {};
}

} // namespace undercowl::talk
