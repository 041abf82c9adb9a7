#pragma once

#include "blinding/draw.h"
#include "canon/digest.h"
#include "domain/plan.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <string>

namespace oddglass::session {

/// A sealed plan and what stands beside it, read inside a transaction. Problem notSealed.
struct PlanNow {
  std::string title;
  std::string guestTitle;
  std::string text;   ///< canonical, as hashed
  Plan plan;
  canon::Digest commitment{};
  std::string sealMark;
};
PlanNow planNow(SQLite::Database& db, std::int64_t session);

/// How much of what is drawn for a plan.
blinding::Shape shapeOf(const Plan& plan);

/// Writes what follows from a plan: plan, lots, items, places, cups.
void writePlan(SQLite::Database& db, std::int64_t session, const Plan& plan, const std::string& text, const canon::Digest& commitment, const std::string& sealMark);

}  // namespace oddglass::session
