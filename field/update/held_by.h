// Who writes from now on, and for which role the screens are.
#pragma once

#include "field/update/session.h"

namespace hemline {

void held_by(Session& session, const Person& person);

}  // namespace hemline
