// The moments of the main job, each done by hand from the page before it.
#pragma once

#include "tests/e2e/hand.h"

namespace undercowl::e2e {

void begin(Hand& hand);          // first start: who works here; ends on the home page
void takeIn(Hand& hand);         // ends on the page of the job
void lookOver(Hand& hand);       // a photo as found, a finding with its photo
void stripLever(Hand& hand);     // ends on the next strip step
void stripConnector(Hand& hand); // with its wires mapped; ends on the page of the job
void comeBack(Hand& hand);       // from the home page, three weeks later
void refit(Hand& hand);          // with the wires read back
void handOver(Hand& hand);       // ends on the home page

} // namespace undercowl::e2e
