// Vibration beside the tones, where the device has it.
#pragma once

#include "platform/signals/signaller.h"

#include <memory>

namespace undercowl::platform {

// Whoever gives these tones also vibrates; the tones alone where nothing can. Each system has its own, in the
// folder of its name.
[[nodiscard]] std::unique_ptr<Signaller> withVibration(std::unique_ptr<Signaller> tones);

} // namespace undercowl::platform
