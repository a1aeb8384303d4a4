// The only way in: what happened goes in; out come what the program then knows and what is to be
// done outside.
//
//   touch ─▶ wish ─▶ update(session, news) ─▶ session ─▶ screens
//                        ▲                └─▶ deeds ─▶ App: saver, crew, search, files
//                        └────────────── news ◀─────────┘
//
// It opens no file, starts no thread and reads no clock.
#pragma once

#include <vector>

#include "field/update/deed.h"
#include "field/update/news.h"
#include "field/update/session.h"

namespace hemline {

struct Updated {
    Session session;
    std::vector<Deed> deeds;
};

Updated update(Session session, const News& what);

}  // namespace hemline
