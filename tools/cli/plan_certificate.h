// The proof of every choice of a plan, for programs that check it.
#pragma once

#include "engine/plan/pool_choices.h"
#include "tools/cli/print.h"

namespace hemline {

struct PlanCertificate {
    Json json;
    int not_shown = 0;  ///< choices whose bound rests on more than the certificate can hold
};

/// `{"prefer","pools":[{"pool","trim","kerf","stock","edges","choices":[…]}]}`, each choice with
/// its figures, `divisions`, `layouts` and `parts`; lengths in nanometers.
PlanCertificate certificate_of(const std::vector<PoolChoices>& pools, Prefer prefer);

}  // namespace hemline
