// One function for each calculation, each in a file of its own name; registry.cpp collects them.
#pragma once

#include "core/trade/registry.h"

namespace undercowl::trade {

Calculation airDensity();
Calculation batteryChargeState();
Calculation boltPreload();
Calculation boltTorque();
Calculation brakeFluid();
Calculation chargingCheck();
Calculation compression();
Calculation compressionRatio();
Calculation convert();
Calculation flushVolume();
Calculation gearing();
Calculation headlampAim();
Calculation jetting();
Calculation lampBudget();
Calculation leakDown();
Calculation nextDue();
Calculation premix();
Calculation resistanceCheck();
Calculation shim();
Calculation speedometer();
Calculation standingDrain();
Calculation tighteningOrder();
Calculation timing();
Calculation torqueAdapter();
Calculation tread();
Calculation tyreDate();
Calculation tyreMarking();
Calculation tyrePressureShift();
Calculation vin();
Calculation voltageDrop();
Calculation wear();
Calculation wireAndFuse();

} // namespace undercowl::trade
